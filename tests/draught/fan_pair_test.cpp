// Two fans as one.
#include "draught/fan_pair.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::unit;

namespace {
const CurveBasis basis{CurveOrigin::data_sheet, "", data::Standing::derived, {1.0, 0.8, 1.2}, {1.0, 0.9, 1.1}};
const FanCurve one(data::FanKind::axial, 5000.0 * rpm,
                   {{0.0 * m3_per_s, 60.0 * Pa}, {0.002 * m3_per_s, 40.0 * Pa}, {0.005 * m3_per_s, 0.0 * Pa}}, basis);
// flow at which the curve meets p = k q^2, by halving
double flow_against(const FanCurve& fan, double k) {
  double low = 0.0, high = in(fan.free_air(), m3_per_s);
  for (int i = 0; i < 60; ++i) {
    const double q = 0.5 * (low + high);
    (in(fan.static_pressure(q * m3_per_s), Pa) > k * q * q ? low : high) = q;
  }
  return low;
}
}  // namespace

TEST_CASE("a pair is never better than the plain sum of two fans, and never worse than one") {
  const FanCurve series = paired(one, FanPairing::series), side = paired(one, FanPairing::side_by_side);
  // laws of adding: 2 x 60 Pa shut, 2 x 5 l/s free
  CHECK(series.shut_off() <= 120.0 * Pa);
  CHECK(series.shut_off() > one.shut_off());
  CHECK(series.free_air() <= one.free_air());
  CHECK(side.free_air() <= 2.0 * one.free_air());
  CHECK(side.free_air() > one.free_air());
  CHECK(side.shut_off() <= one.shut_off());
  CHECK(paired(one, FanPairing::one).shut_off() == near(60.0 * Pa, 1e-12));
}

// Common practice (trade notes on fans in series and parallel), no source: near shut-off the second fan behind gives a
// third to a half more flow, the second beside next to nothing; in free air it is the other way round.
TEST_CASE("near shut-off series helps and side by side does not; near free air the reverse") {
  const FanCurve series = paired(one, FanPairing::series), side = paired(one, FanPairing::side_by_side);
  const double tight = 58.0 / (0.0003 * 0.0003), open = 2.0 / (0.0045 * 0.0045);
  CHECK(flow_against(series, tight) / flow_against(one, tight) > 1.25);
  CHECK(flow_against(series, tight) / flow_against(one, tight) < 1.5);
  CHECK(flow_against(side, tight) / flow_against(one, tight) < 1.05);
  CHECK(flow_against(side, open) / flow_against(one, open) > 1.3);
  CHECK(flow_against(series, open) / flow_against(one, open) < 1.1);
}
