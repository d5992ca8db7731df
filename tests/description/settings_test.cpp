#include "description/settings.hpp"
#include "description/random_build.hpp"
#include "description/reader.hpp"
#include "description/writer.hpp"
#include "input/yaml_tree.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
/// Every value of a written description as a setting. What stands on several lines keeps its text from the file.
void list_settings(const Node& node, const std::string& path, const std::vector<std::string>& lines,
                   std::vector<Setting>& out) {
  for (const Node& inner : node.children) {
    const std::string key = (path.empty() ? "" : path + ".") + inner.key;
    if (inner.kind == Node::Kind::map) {
      list_settings(inner, key, lines, out);
      continue;
    }
    const std::string& line = lines.at(static_cast<std::size_t>(inner.at.line) - 1);
    out.push_back({key, line.substr(static_cast<std::size_t>(inner.at.column) - 1)});
  }
}
std::vector<Setting> settings_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t from = 0; from < text.size();) {
    const auto end = text.find('\n', from);
    lines.push_back(text.substr(from, end - from));
    from = end + 1;
  }
  std::vector<Fault> faults;
  std::vector<Setting> all;
  list_settings(read_yaml({"b.yaml", text}, faults), "", lines, all);
  REQUIRE(faults.empty());
  return all;
}
std::string complaint_on(const Build& build, const std::vector<Setting>& settings) {
  try {
    with_settings(build, settings);
  } catch (const InputError& e) {
    return e.what();
  }
  return "";
}
}  // namespace

TEST_CASE("a build set key by key is the build that was read") {
  for (unsigned seed = 0; seed < 60; ++seed) {
    const Build read = read_build({"b.yaml", RandomBuild(9000 + seed, 0.8, seed % 2 == 0).text()});
    const std::string text = write_build(read);
    CAPTURE(text);
    CHECK(write_build(with_settings(Build{}, settings_of(text))) == text);
    CHECK(write_build(with_settings(read, {})) == text);
  }
}
TEST_CASE("a setting replaces what was written, and an empty one forgets it") {
  const Build build = read_build({"b.yaml",
                                  "adapter: { tube: { outside: 17 mm, wall: 0.5 mm } }\n"
                                  "fan: { curve: [ [0 l/min, 50 Pa], [100 l/min, 0 Pa] ] }\n"});
  const Build other =
      with_settings(build, {{"adapter.tube.outside", "5/8 in"},
                            {"adapter.tube.wall", ""},
                            {"fan.curve", "[ [0 l/min, 60 Pa], [90 l/min, 9 Pa], [100 l/min, 0 Pa] ]"}});
  CHECK(write_build(other).find("outside: 5/8 in") != std::string::npos);
  CHECK_FALSE(other.adapter.tube.wall);
  CHECK(other.fan.curve.points.size() == 3);
  CHECK_FALSE(with_settings(build, {{"adapter.tube", ""}}).adapter.tube.outside);
}
TEST_CASE("what cannot be set is told with the setting and its place") {
  const Build build = read_build({"b.yaml", "adapter: { tube: { outside: 17 mm, wall: 0.5 mm } }"});
  const std::string told = complaint_on(build, {{"adapter.tub.wall", "1 mm"},
                                             {"fuel.bed", "3 V"},
                                             {"adapter.tube.length", "40 mm"},
                                             {"adapter.tube.length", "41 mm"},
                                             {"fuel.lump", "[1 mm"}});
  CAPTURE(told);
  for (const char* words : {"--set:1:9: adapter.tub: this key is not known", "did you mean `tube`?",
                            "--set:2:12: fuel.bed: expected a length, got '3 V'",
                            "--set:4:1: adapter.tube.length: this key is set twice", "--set:5:"})
    CHECK(told.find(words) != std::string::npos);
  CHECK(
      complaint_on(build, {{"adapter.tube.wall", "9 mm"}}).find("--set:1:1: adapter.tube.wall: expected less than half") !=
      std::string::npos);
  CHECK(complaint_on(build, {{"", "9 mm"}}) != "");
  CHECK(complaint_on(build, {{"adapter.tube", "9 mm"}}) != "");
  CHECK_FALSE(read_setting("fuel.bed").complete);
  CHECK(read_setting("fuel.bed = 3 mm ").setting.value == "3 mm");
}
