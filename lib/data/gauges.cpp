#include "data/gauges.hpp"
#include "data/table.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::data {
std::vector<GaugeMeaning> gauge_candidates(int number) {
  std::vector<GaugeMeaning> found;
  for (const Row& row : rows("gauges", "gauges")) {
    if (row.number("number") != number) continue;
    for (const Row& series : rows("gauges", "series"))
      found.push_back(
          {series.text("short"), series.text("name"), row.quantity<Length>(series.text("id")), row.basis()});
  }
  return found;
}

std::optional<Length> swg(int number) {
  for (const Row& row : rows("gauges", "gauges"))
    if (row.number("number") == number) return row.quantity<Length>("swg");
  return std::nullopt;
}
std::optional<Length> awg(int number) {
  const Row law = section("gauges", "awg");
  if (number < law.number("least") || number > law.number("most")) return std::nullopt;
  const double steps = (law.number("at") - number) / law.number("steps");
  return law.quantity<Length>("diameter") * std::pow(law.number("ratio"), steps);
}
std::string swg_numbers() {
  const auto all = rows("gauges", "gauges");
  return fmt::format("{} to {}", all.front().number("number"), all.back().number("number"));
}
std::string awg_numbers() {
  const Row law = section("gauges", "awg");
  return fmt::format("{} to {}", law.number("least"), law.number("most"));
}
}  // namespace lumwright::data
