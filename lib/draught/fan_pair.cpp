#include "draught/fan_pair.hpp"
#include <stdexcept>

namespace lumwright::draught {
const data::FanPairRow& pair_row(FanPairing pairing) {
  if (pairing == FanPairing::one) throw std::logic_error("one fan is no pair");
  return data::fan_pair(pairing == FanPairing::series ? "series" : "side by side");
}

FanCurve paired(const FanCurve& curve, FanPairing pairing) {
  if (pairing == FanPairing::one) return curve;
  const data::FanPairRow& row = pair_row(pairing);
  const bool series = pairing == FanPairing::series;
  return stretched(
      curve, {.pressure = (series ? 2.0 : 1.0) * row.pressure.value, .flow = (series ? 1.0 : 2.0) * row.flow.value});
}
}  // namespace lumwright::draught
