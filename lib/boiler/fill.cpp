#include "boiler/fill.hpp"
#include "matter/water.hpp"
#include "numeric/root.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"

namespace lumwright::boiler {
namespace {
constexpr Temperature hottest = degC(300);

void check(const Fill& fill) {
  require_above_zero("share of the boiler that water fills", fill.water_share);
  require_above_zero("share of the boiler that is left for steam", 1.0 - fill.water_share);
  require_above_zero("barometer", fill.barometer);
}
/// Above one when the water has no room left.
double swollen(const Fill& fill, Temperature hot) {
  require_within("water temperature", hot, {273.16, 573.15});
  return fill.water_share * (matter::saturation(fill.cold).water_density / matter::saturation(hot).water_density);
}
}  // namespace

double water_share_at(const Fill& fill, Temperature hot) {
  check(fill);
  const double share = swollen(fill, hot);
  require_above_zero("share of the boiler that is left for steam", 1.0 - share);
  return share;
}

GaugePressure gauge_with_air(const Fill& fill, Temperature hot) {
  const double room = (1.0 - fill.water_share) / (1.0 - water_share_at(fill, hot));
  const Pressure air = fill.barometer - matter::saturation_pressure(fill.cold);
  require_above_zero("pressure of the air in the cold boiler", air);
  return {matter::saturation_pressure(hot) + air * room * (above_absolute_zero(hot) / above_absolute_zero(fill.cold)) -
          fill.barometer};
}

Temperature false_reading(const Fill& fill, GaugePressure reading) {
  require_above_zero("gauge reading", reading.above_barometer);
  check(fill);
  const Temperature boiling = matter::saturation_temperature(reading.above_barometer + fill.barometer);
  // At the temperature of steam alone the air comes on top; should the water fill the boiler before, it squeezes the
  // air to any pressure.
  double high = in(above_absolute_zero(std::min(boiling, hottest)), K);
  const double low = in(above_absolute_zero(fill.cold), K);
  if (swollen(fill, kelvin(high)) >= 1.0)
    high = numeric::bracketed_root([&](double t) { return swollen(fill, kelvin(t)) - (1.0 - 1e-6); }, low, high,
                                   "temperature at which the boiler is full");
  const auto excess = [&](double t) {
    return in(gauge_with_air(fill, kelvin(t)).above_barometer - reading.above_barometer, Pa);
  };
  return kelvin(numeric::bracketed_root(excess, low, high, "temperature of a false gauge reading"));
}

Mass purge_steam(Volume steam_space, double changes, Pressure barometer) {
  if (steam_space < 0.0 * ml) throw ModelError("there is more water than the boiler holds");
  require_not_negative("changes of the steam space", changes);
  return changes * steam_space * matter::saturation_at(barometer).steam_density;
}
}  // namespace lumwright::boiler
