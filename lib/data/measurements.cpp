#include "data/measurements.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<MeasurementRow>& measurements() {
  static const std::vector<MeasurementRow> all = [] {
    std::vector<MeasurementRow> found;
    for (const Row& row : rows("measurements", "rows"))
      found.push_back({row.text("id"), row.text("what"), row.text("of"), row.text("within"), row.text("needs"),
                       row.text("tool"), row.text("how"), row.text("write"), row.basis()});
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
