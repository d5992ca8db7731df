#include "report/detail/wrap.hpp"
#include "quantity/units.hpp"
#include <doctest/doctest.h>
#include <random>
#include <stdexcept>

using namespace lumwright;
using namespace lumwright::report;
namespace {
using Lines = std::vector<std::string>;
std::string joined(const Lines& lines) {
  std::string text;
  for (const std::string& line : lines) text += (text.empty() ? "" : " ") + line;
  return text;
}
/// Words, numbers and units of every width, as reports mix them.
std::string random_text(std::mt19937& random) {
  static const Lines pieces = {"the",
                               "chimney",
                               "±0.05",
                               "°",
                               "µm",
                               "tube;",
                               "(0.31",
                               "17.2 mm",
                               "1 1/2 in",
                               "240 degC",
                               "3.5 bar g",
                               "engine.boiler.own_blower_from",
                               "0.25 g/s,",
                               "煙突",
                               "é",
                               "a",
                               "35 %",
                               "12",
                               "ferrule-and-flange"};
  std::uniform_int_distribution<std::size_t> pick(0, pieces.size() - 1), length(1, 60);
  std::string text;
  for (std::size_t n = length(random); n > 0; --n) text += (text.empty() ? "" : " ") + pieces[pick(random)];
  return text;
}
}  // namespace

TEST_CASE("columns are what a terminal shows, not bytes") {
  // Unicode Standard Annex 11: ideographs are wide (W); annex 44: U+0301 is a non-spacing mark.
  CHECK(columns("17.2 mm ± 0.05 µm °C") == 20);
  CHECK(columns("煙突") == 4);
  CHECK(columns("e\u0301") == 1);
}

TEST_CASE("no line of any text is wider than the page, and no word is lost") {
  std::mt19937 random(20240601);
  for (int round = 0; round < 500; ++round) {
    const std::string text = random_text(random);
    for (const std::size_t width : {80u, 69u, 40u}) {
      const Lines lines = wrap(text, width);
      for (const std::string& line : lines) CHECK(columns(line) <= width);
      CHECK(joined(lines) == text);
    }
  }
}

TEST_CASE("a number keeps its unit on its line, wherever the line ends") {
  const std::string sentence =
      "the gap is 0.25 mm, 1 1/2 in or (3.5 bar g) at 240 degC with ±0.05 mm and 35 % of 2 W/m2/K.";
  for (std::size_t width = 12; width < 100; ++width) {
    CAPTURE(width);
    const Lines lines = wrap(sentence, width);
    for (const std::string_view whole :
         {"0.25 mm,", "1 1/2 in", "(3.5 bar g)", "240 degC", "±0.05 mm", "35 %", "2 W/m2/K."}) {
      std::size_t found = 0;
      for (const std::string& line : lines) found += line.find(whole) != std::string::npos ? 1 : 0;
      CHECK_MESSAGE(found == 1, whole);
    }
  }
}

TEST_CASE("every unit of the table stays with its number") {
  for (const UnitRow& row : unit_table()) {
    const std::string number = "12.5 " + std::string(row.symbol);
    const Lines wanted{"x", number};
    CHECK_MESSAGE(wrap("x " + number, columns(number)) == wanted, row.symbol);
  }
}

TEST_CASE("a word wider than the page is cut between characters") {
  CHECK(wrap("aaaaaaaaaa", 4) == Lines{"aaaa", "aaaa", "aa"});
  CHECK(wrap("±±±±± b", 4) == Lines{"±±±±", "± b"});
  CHECK(wrap("煙突煙", 3) == Lines{"煙", "突", "煙"});
  CHECK_THROWS_AS(wrap("a", 1), std::logic_error);
}

TEST_CASE("text that would steer the terminal is made harmless") {
  CHECK(legible("\x1b[31mred\x1b[0m") == "?[31mred?[0m");
  CHECK(legible("a\tb\nc\rd") == "a b c d");
  CHECK(legible("a\u202Eb\u2066c\u0085d") == "a?b?c?d");
  CHECK(legible("a\xFF\xFE"
                "b\xC3") == "a??b?");
  CHECK(legible(std::string_view("a\0b", 3)) == "a?b");
  CHECK(legible("15 °C, 0.05 µm, 煙突") == "15 °C, 0.05 µm, 煙突");
}
