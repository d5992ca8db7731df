// What the program tells people to do, on builds that nobody wrote: no remedy lowers the water, raises the pressure,
// shuts a valve, enlarges a fuse beyond its wire or goes under an end voltage. What must not be said is common practice
// of the boiler codes (water, pressure, valves), IEC 60364-4-43 with IEC 60127 (fuse and wire, read at second hand) and
// the rows of the cells (end voltages).
#include "data/cells.hpp"
#include "describe.hpp"
#include "description/random_build.hpp"
#include "near.hpp"
#include <algorithm>
#include <array>
#include <cctype>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}
bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }
/// A phrase of a remedy that could hurt somebody; nothing where it has none.
std::string forbidden_in(const std::string& remedy) {
  static constexpr std::array phrases = {
      "less water",       "fewer millilitres", "lower the water",  "lower water",       "let water out",
      "drain the boiler", "half the water",    "raise the pressure", "higher pressure in the boiler", "above working pressure",
      "shut the valve",   "close the valve",   "load the valve",   "screw down",        "weight on the valve",
      "close the blower", "shut the blower",   "close the vent",   "shut the vent",     "larger fuse",
      "bigger fuse",      "without a fuse",    "bridge the fuse",  "remove the fuse",   "touch the frame",
      "feel the"};
  const std::string text = lower(remedy);
  for (const char* phrase : phrases)
    if (holds(text, phrase)) return phrase;
  return "";
}
/// The voltage behind "stop at" or "a stop at", where a remedy names one.
std::optional<double> stop_in(const std::string& remedy) {
  for (const std::string words : {"stop at ", "stops at ", "cut-out at "}) {
    const auto at = remedy.find(words);
    if (at == std::string::npos || std::isdigit(static_cast<unsigned char>(remedy[at + words.size()])) == 0) continue;
    std::size_t end = 0;
    const double number = std::stod(remedy.substr(at + words.size()), &end);
    const std::string unit = remedy.substr(at + words.size() + end, 3);
    return unit.starts_with(" mV") ? 1e-3 * number : number;
  }
  return std::nullopt;
}
std::optional<double> end_voltage(const Build& build) {
  const part::PackPart& pack = build.supply.pack;
  if (!pack.cell || !pack.series) return std::nullopt;
  for (const data::CellRow& row : data::cells())
    if (row.id == *pack.cell && !row.bank && row.chemistry.id.starts_with("Li"))
      return *pack.series * row.cells_inside * in(row.chemistry.end, V);
  return std::nullopt;
}
}  // namespace

TEST_CASE("the words that a remedy must not hold are found in the ones that did hold them") {
  CHECK(forbidden_in("a fan that draws more air, a fuller pack, or less water to heat") == "less water");
  CHECK(forbidden_in("Feel the frame during the first firing") == "feel the");
  CHECK(forbidden_in("more water before anything is lit").empty());
  CHECK(stop_in("stop at 4.9 V or above") == 4.9);
  CHECK_FALSE(stop_in("stop at the voltage you set").has_value());
}
TEST_CASE("no remedy on 300 random builds lowers water, raises pressure, shuts a valve or drives a cell too low") {
  std::size_t told = 0;
  const unsigned builds = how_many_builds(300);
  for (unsigned seed = 1; seed <= builds; ++seed) {
    const Build build = described(RandomBuild(seed, seed % 3 == 0 ? 0.5 : 0.95, seed % 2 == 0).text());
    const Assessment a = assess(build);
    const auto end = end_voltage(build);
    for (const Finding& f : a.checks) {
      if (f.action.empty()) continue;
      ++told;
      CAPTURE(seed);
      CAPTURE(f.id);
      CAPTURE(f.action);
      CHECK(forbidden_in(f.action).empty());
      const auto stop = stop_in(f.action);
      if (stop && end) CHECK(*stop >= 0.99 * *end);
    }
  }
  CHECK(told > builds);
}
