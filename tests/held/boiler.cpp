#include "boiler/boiler.hpp"
#include "boiler/stores.hpp"
#include "held/held.hpp"
#include "held/solved.hpp"
#include "matter/water.hpp"
#include "numeric/curve.hpp"
#include "published.hpp"
#include <cmath>

namespace lumwright::held {
namespace {
using namespace boiler;

/// For each square metre and degree, at this rise over air of 15 degC, under so much felt.
double plate(Length felt, double rise) {
  Plates plates = plates_that_lose(1.0 * m2, 16.6 * W_per_m2_K);
  plates.lagging = lagging_lets_through(felt);
  return in(outside_loss(plates, degC(15.0 + rise), degC(15)) / (rise * K) / (1.0 * m2), W_per_m2_K);
}
Reckoned felt(Length thickness) { return {exactly(plate(thickness, 120.0))}; }

/// The power of the rate with which the heat that the tubes catch falls: of their transfer units.
Reckoned units_with_rate() {
  std::vector<double> measured;
  for (const data::Row& row : published("trials", "forced")) {
    const std::vector<double> rate = row.numbers("rate"), over = row.numbers("over_steam");
    // the fire 1100 degrees over the steam
    measured.push_back(std::log(std::log(1100.0 / over[1]) / std::log(1100.0 / over[0])) / std::log(rate[1] / rate[0]));
  }
  const HotPath path("great-fell-5in");
  const double ours =
      std::log(path.heat(1.4).tubes.transfer_units / path.heat(1.0).tubes.transfer_units) / std::log(1.4);
  return {exactly(ours), span(measured)};
}
Reckoned efficiency_lost() {
  std::vector<double> measured;
  for (const data::Row& row : published("trials", "forced"))
    measured.push_back(row.numbers("efficiency")[1] - row.numbers("efficiency")[0]);
  const HotPath path("great-fell-5in");
  return {exactly(100.0 * (path.efficiency(1.3) - path.efficiency(1.0))), span(measured)};
}
/// When the pressure passes so many psi, in minutes.
double passes(const numeric::LinearCurve& time, double psi_shown) { return time(psi_shown); }
Reckoned pressure_shape() {
  const data::Row row = published("trials", "fire_engine").front();
  const numeric::LinearCurve measured(row.numbers("psi"), row.numbers("minutes"));
  const HotPath path("great-fell-5in");
  std::vector<double> shown, minutes;
  for (const RaiseInstant& now : path.solved().raise->raise.series) {
    const double pounds = in(now.gauge.above_barometer, psi);
    if (pounds <= 0.0 || (!shown.empty() && pounds <= shown.back())) continue;
    shown.push_back(pounds);
    minutes.push_back(in(now.time, minute));
  }
  const auto ratio = [](const numeric::LinearCurve& t) {
    return (passes(t, 75.0) - passes(t, 40.0)) / (passes(t, 40.0) - passes(t, 10.0));
  };
  const double said = ratio(measured);
  return {exactly(ratio(numeric::LinearCurve(shown, minutes))), {{said, said}}};
}
Reckoned barrel_by_laws() {
  const Barrel barrel{.diameter = 60.0 * mm, .surface = 1.0 * m2, .emissivity = 0.9, .bare_share = 1.0};
  return {exactly(in(barrel_coefficient(barrel, degC(135), degC(15)), W_per_m2_K))};
}
Reckoned smokebox_gas() {
  return {
      sampled("tarn-beck", [](const model::Solved& s) { return in(s.draught->hot_flow.smokebox_gas - degC(0), K); })};
}
}  // namespace

const Cases& boiler_cases() {
  static const Cases cases = {
      {"plate bare", [] { return felt(0.0 * mm); }},
      {"plate 6 mm", [] { return felt(6.35 * mm); }},
      {"plate 13 mm", [] { return felt(12.7 * mm); }},
      {"plate 19 mm", [] { return felt(19.05 * mm); }},
      {"plate 25 mm", [] { return felt(25.4 * mm); }},
      {"plate 38 mm", [] { return felt(38.1 * mm); }},
      {"barrel by laws", [] { return barrel_by_laws(); }},
      {"bare cooling", [] { return Reckoned{exactly(plate(0.0 * mm, 45.0) / plate(0.0 * mm, 120.0))}; }},
      {"lagged over bare", [] { return Reckoned{exactly(plate(6.0 * mm, 125.0) / plate(0.0 * mm, 125.0))}; }},
      {"units with rate", [] { return units_with_rate(); }},
      {"efficiency lost", [] { return efficiency_lost(); }},
      {"efficiency three times",
       [] {
         const HotPath path("great-fell-5in");
         return Reckoned{exactly(100.0 * (path.efficiency(1.5) - path.efficiency(0.5)))};
       }},
      {"slow fire exit",
       [] {
         const HotPath path("great-fell-5in");
         const BoilerHeat slow = path.heat(0.25);
         return Reckoned{exactly(in(slow.tubes.exit - path.solved().draught->water, K))};
       }},
      {"smokebox over casing", [] { return smokebox_gas(); }},
      {"pressure shape", [] { return pressure_shape(); }},
  };
  return cases;
}
}  // namespace lumwright::held
