// What the licences of copied facts ask for: a notice that goes with the program.
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <string>

namespace {
std::string text_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  REQUIRE(in);
  return {std::istreambuf_iterator<char>(in), {}};
}
}  // namespace

TEST_CASE("every licence that a table names stands in the notices") {
  const std::filesystem::path data = std::filesystem::path(SOURCE_DIR) / "lib" / "data";
  const std::string notices = text_of(data / "NOTICES.txt");
  std::set<std::string> named;
  const std::regex asks(R"(MIT licence|BSD licence|CC BY[-A-Z]* [0-9.]+|library fluids [0-9.]+)");
  for (const auto& entry : std::filesystem::directory_iterator(data)) {
    if (entry.path().extension() != ".yaml") continue;
    const std::string text = text_of(entry.path());
    for (std::sregex_iterator it(text.begin(), text.end(), asks), end; it != end; ++it) named.insert(it->str());
  }
  CHECK(named.size() >= 3);
  for (std::string name : named) {
    if (name.starts_with("library fluids ")) name = "\"fluids\" " + name.substr(15);
    CAPTURE(name);
    CHECK(notices.find(name) != std::string::npos);
  }
}
