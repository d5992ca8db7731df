#include "quantity/words.hpp"
#include "quantity/gauge_text.hpp"
#include <doctest/doctest.h>
#include <string>
#include <vector>
using namespace lumwright;

TEST_CASE("words are split at the separator, empty ones dropped") {
  CHECK(words(" a  bc d ") == std::vector<std::string_view>{"a", "bc", "d"});
  CHECK(words("psi g|psi(g)", '|') == std::vector<std::string_view>{"psi g", "psi(g)"});
  CHECK(words("").empty());
}

TEST_CASE("the nearest word allows for one slip in three letters") {
  const std::vector<std::string_view> keys{"bore", "depth", "wall", "material", "seam_ridge"};
  struct Row {
    std::string word;
    std::string_view expected;
  };
  const Row rows[] = {{"bor", "bore"},
                      {"depht", "depth"},
                      {"Wall", "wall"},
                      {"BORE", "bore"},
                      {"materail", "material"},
                      {"seamridge", "seam_ridge"},
                      {"voltage", ""},
                      {"xy", ""},
                      {"", ""},
                      {"wdall", "wall"},
                      {std::string(100, 'a'), ""}};
  for (const Row& row : rows) {
    CAPTURE(row.word);
    CHECK(nearest(row.word, keys) == row.expected);
  }
  const std::vector<std::string_view> brief{"m", "mm"};
  CHECK(nearest("C", brief).empty());  // one letter has no misspelling
}

TEST_CASE("a gauge number is told from a measure") {
  struct Row {
    std::string text;
    std::optional<int> expected;
  };
  const Row rows[] = {{"22 swg", 22},  {"22g", 22},   {"22 ga.", 22}, {"No.22", 22}, {"16 B&S", 16},
                      {"16 gage", 16}, {"#8", 8},     {"0.5 g", {}},  {"22 mm", {}}, {"22", {}},
                      {"22 kg", {}},   {"8/9 g", {}}, {"swg", {}},    {"", {}},      {"99999999999 swg", {}}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(gauge_number(row.text) == row.expected);
  }
}
