#include "data/fan_pairs.hpp"
#include "data/table.hpp"
#include <stdexcept>
#include <vector>

namespace lumwright::data {
namespace {
Band<double> with_band(const Row& row, const std::string& key) {
  const Band<double> band = row.band<double>(key + "_band");
  return {row.number(key), band.low, band.high};
}
const std::vector<FanPairRow>& fan_pairs() {
  static const std::vector<FanPairRow> all = [] {
    std::vector<FanPairRow> found;
    for (const Row& row : rows("fan_pairs", "pairs"))
      found.push_back(
          {row.text("id"), with_band(row, "pressure"), with_band(row, "flow"), row.basis()});
    return found;
  }();
  return all;
}
}  // namespace

const FanPairRow& fan_pair(std::string_view id) {
  for (const FanPairRow& row : fan_pairs())
    if (row.id == id) return row;
  throw std::logic_error("fan_pairs.yaml has no pair with the id " + std::string(id));
}
}  // namespace lumwright::data
