// Two alike fans as one: one behind the other, or side by side.
#pragma once
#include "data/fan_pairs.hpp"
#include "draught/fan.hpp"

namespace lumwright::draught {
enum class FanPairing { one, series, side_by_side };
const data::FanPairRow& pair_row(FanPairing pairing);  // throws std::logic_error for one

/// The pair's curve at the speed of `curve`: in series the pressures add at one flow, side by side the flows at one
/// pressure, less what working together costs (data/fan_pairs.yaml: 5 to 10 %, with bands to 25 %; estimate). In a gas
/// path that asks for nearly the shut-off pressure series helps and side by side does next to nothing. Both fans run at
/// the same voltage: the pair takes twice the current.
FanCurve paired(const FanCurve& curve, FanPairing pairing);
}  // namespace lumwright::draught
