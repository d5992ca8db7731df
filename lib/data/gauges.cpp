#include "data/gauges.hpp"
#include "data/table.hpp"

namespace lumwright::data {
std::vector<GaugeMeaning> gauge_candidates(int number) {
  std::vector<GaugeMeaning> found;
  for (const Row& row : rows("gauges", "gauges")) {
    if (row.number("number") != number) continue;
    for (const Row& series : rows("gauges", "series"))
      found.push_back({series.text("short"), series.text("name"), row.quantity<Length>(series.text("id")), row.source(),
                       row.standing()});
  }
  return found;
}
}  // namespace lumwright::data
