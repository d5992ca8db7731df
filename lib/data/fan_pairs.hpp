// What two alike fans lose by working together.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include <string>
#include <string_view>

namespace lumwright::data {
struct FanPairRow {
  std::string id;               // "series", "side by side"
  Band<double> pressure, flow;  // over the sum without loss
  Basis basis{};
};
/// Throws std::logic_error for a pair that is not in the table.
const FanPairRow& fan_pair(std::string_view id);
}  // namespace lumwright::data
