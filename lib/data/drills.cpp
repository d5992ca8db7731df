#include "data/drills.hpp"
#include "data/table.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numeric>
#include <stdexcept>

namespace lumwright::data {
namespace {
std::string drill_name(const std::string& series, Length diameter) {
  if (series == "metric") return fmt::format("{:.2f} mm", in(diameter, mm));
  const long sixty_fourths = std::lround(in(diameter, inch) * 64.0), common = std::gcd(sixty_fourths, 64L);
  return fmt::format("{}/{} in", sixty_fourths / common, 64 / common);
}
std::vector<DrillRow> read_drills() {
  std::vector<DrillRow> found;
  for (const Row& row : rows("drills", "series")) {
    const std::string series = row.text("name");
    const Length first = row.quantity<Length>("first"), step = row.quantity<Length>("step");
    const long steps = std::lround((row.quantity<Length>("last") - first) / step);
    for (long k = 0; k <= steps; ++k) {
      const Length diameter = first + static_cast<double>(k) * step;
      found.push_back({drill_name(series, diameter), series, diameter, row.source(), row.standing()});
    }
  }
  for (const Row& row : rows("drills", "numbered")) {
    int number = static_cast<int>(row.number("first"));
    for (const double size : row.numbers("inches"))
      found.push_back({fmt::format("no. {}", number++), "number", size * inch, row.source(), row.standing()});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const DrillRow& a, const DrillRow& b) { return a.diameter < b.diameter; });
  return found;
}
}  // namespace

const std::vector<DrillRow>& drills() {
  static const std::vector<DrillRow> all = read_drills();
  return all;
}

const std::vector<StepDrill>& step_drills() {
  static const std::vector<StepDrill> all = [] {
    std::vector<StepDrill> found;
    for (const Row& row : rows("drills", "step_drills"))
      found.push_back({row.text("name"), row.quantity<Length>("first"), row.quantity<Length>("last"),
                       row.quantity<Length>("step"), row.quantity<Length>("height"), row.source(), row.standing()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
