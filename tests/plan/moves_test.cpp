#include "plan/moves.hpp"
#include "description/random_build.hpp"
#include "plan/describe.hpp"
#include <doctest/doctest.h>
#include <map>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
Assessment tried(const Build& build, const SamplesAsked& samples = {}, std::size_t most = 40) {
  Assessment a = assess(build, UnitSystem::as_written, nullptr, samples);
  try_moves(a, build, UnitSystem::as_written, nullptr, samples, most);
  return a;
}
std::vector<Setting> settings_of(const Move& move) {
  std::vector<Setting> all;
  for (const std::string& one : move.settings) all.push_back(read_setting(one).setting);
  return all;
}
/// Every move of an assessment, set as it is printed, does what it says.
std::size_t moves_that_hold(const Build& build, const Assessment& a) {
  std::size_t count = 0;
  for (const Finding& f : a.checks) {
    if (!f.move) continue;
    CAPTURE(f.id);
    CAPTURE(f.move->words);
    CHECK(f.verdict != Verdict::pass);
    const Assessment after = assess(with_settings(build, settings_of(*f.move)));
    const Finding* cleared = find_check(after, f.id);
    REQUIRE(cleared != nullptr);
    CHECK(cleared->verdict == f.move->verdict);
    if (f.move->verdict != Verdict::pass) {
      CHECK(f.verdict == Verdict::fail);
      CHECK(f.move->verdict == Verdict::watch);
    }
    for (const Finding& other : after.checks) {
      const Finding* before = find_check(a, other.id);
      CAPTURE(other.id);
      if (other.verdict == Verdict::unknown)
        CHECK((before == nullptr || before->verdict == Verdict::unknown));  // no part stops working for it
      const bool judged_before = before != nullptr && before->verdict != Verdict::unknown;
      if (other.verdict == Verdict::fail && (judged_before || f.stands_still.empty()))
        CHECK((before != nullptr && before->verdict == Verdict::fail));
      if (f.id == other.id || other.verdict == Verdict::pass || before == nullptr) continue;
      if (other.id == "power.over_discharge" || other.id == "power.fuse_wire" || other.id == "raise.water") {
        CHECK(other.verdict <= before->verdict);
        if (before->value && other.value) {  // no nearer to failing
          const double change = other.value->quantity.si - before->value->quantity.si;
          CHECK((other.bound == Bound::at_most ? change <= 0.0 : change >= 0.0));
        }
      }
    }
    ++count;
  }
  return count;
}
}  // namespace

TEST_CASE("what is advised after trying clears its check and spoils none") {
  std::size_t moves = 0;
  for (unsigned seed = 0; seed < how_many_builds(25); ++seed) {
    const Build build = read_build({"r.yaml", RandomBuild(5100 + seed, seed % 3 == 0 ? 0.8 : 1.0, false).text()});
    CAPTURE(seed);
    moves += moves_that_hold(build, tried(build));
  }
  for (const char* name : {"tarn-beck", "great-fell-5in", "high-tarn-32mm"})
    moves += moves_that_hold(example(name), tried(example(name)));
  CHECK(moves > 25);
}
TEST_CASE("the least change is advised: one step less does not clear it") {
  const Build narrow = example("tarn-beck", {{"diameter: 78 mm", "diameter: 60 mm"}});
  const Assessment a = tried(narrow);
  const Finding* lid = find_check(a, "make.lid");
  REQUIRE(lid != nullptr);
  REQUIRE(lid->move);
  REQUIRE(lid->move->settings.size() == 1);
  const double width = parse_band(read_setting(lid->move->settings[0]).setting.value, kind_of<Length>).value * 1000.0;
  CHECK(width > 60.0);
  const Assessment less =
      assess(with_settings(narrow, {{"adapter.box.diameter", std::to_string(width - 1.0) + " mm"}}));
  CHECK(find_check(less, "make.lid")->verdict != Verdict::pass);
}
TEST_CASE("holes that run into the cut-out ask for a smaller cut-out, whether the table or the owner gives its size") {
  for (const char* opening : {"", ", opening: 49 mm"}) {
    const Build build = read_build(
        {"lid.yaml", "adapter: {box: {diameter: 90 mm, height: 40 mm, sheet: 0.25 mm, shape: square}}\n"
                     "fan: {kind: axial, frame: 50 mm, holes: {pitch: 40 mm, diameter: 11 mm" +
                         std::string(opening) + "}}\n"});
    const Assessment a = tried(build);
    const Finding* lid = find_check(a, "make.lid");
    REQUIRE(lid != nullptr);
    CAPTURE(lid->why);
    REQUIRE(lid->verdict != Verdict::pass);
    REQUIRE(lid->move);
    CHECK(lid->move->settings[0].starts_with("fan.holes.opening="));
    CHECK(moves_that_hold(build, a) > 0);
  }
}
TEST_CASE("a tube that is too large is turned down, in the owner's unit") {
  const Assessment a = tried(example("tarn-beck", {{"outside: 17.24 mm +- 0.01 mm", "outside: 0.688 in"}}));
  const Finding* hot = find_check(a, "fit.hot");
  REQUIRE(hot != nullptr);
  REQUIRE(hot->verdict != Verdict::pass);
  REQUIRE(hot->move);
  CHECK(hot->move->words.find(" in") != std::string::npos);
  CHECK(hot->move->words.find("mm") == std::string::npos);
}
TEST_CASE("habits are no work for the bench, and what only samples say asks for a measurement") {
  const Assessment a = tried(example("tarn-beck"));
  for (const char* id : {"draught.cold", "fire.top_up"}) {
    REQUIRE(find_check(a, id) != nullptr);
    CHECK(find_check(a, id)->verdict == Verdict::watch);
    CHECK_FALSE(find_check(a, id)->moves_tried);
  }
}
TEST_CASE("no move lowers the water, raises a pressure, or shuts a valve") {  // by the keys that rows may name
  for (const data::MoveRow& row : data::moves()) {
    CAPTURE(row.id);
    std::vector<std::string> touched{row.key};
    for (const auto& along : row.along) touched.push_back(along.key);
    for (const auto& fixed : row.with) touched.push_back(fixed.key);
    for (const std::string& key : touched) CHECK(key.find("engine.boiler") == std::string::npos);
    CHECK_FALSE(row.clears.empty());
    for (const std::string& check : row.clears) {
      CAPTURE(check);
      const auto names = check_names();
      CHECK(std::any_of(names.begin(), names.end(), [&](const CheckName& one) { return one.id == check; }));
    }
  }
}
