#include "power/cell.hpp"
#include "numeric/curve.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::power {
TemperatureFactors temperature_factors(const data::ChemistryRow& chemistry, Temperature t) {
  std::vector<double> points;
  for (const Temperature& point : chemistry.temperatures) points.push_back(in_degC(point));
  const double at = in_degC(t);
  if (!(at >= points.front() && at <= points.back()))
    throw ModelError("temperature " + format(t, "degC") + " of " + chemistry.id + " cells is not between " +
                     format(chemistry.temperatures.front(), "degC") + " and " +
                     format(chemistry.temperatures.back(), "degC"));
  return {.capacity = numeric::LinearCurve(points, chemistry.capacity_share)(at),
          .resistance = numeric::LinearCurve(points, chemistry.resistance_factor)(at)};
}

Charge capacity_at(const Rating& rating, Current current) {
  require_above_zero("capacity", rating.capacity, "Ah");
  require_above_zero("rated current", rating.current, "A");
  require_above_zero("discharge current", current, "A");
  if (!(rating.exponent >= 1.0 && rating.exponent < 2.0))
    throw ModelError("rate exponent " + format_number(rating.exponent) + " is not between 1 and 2");
  if (current <= rating.current) return rating.capacity;
  return rating.capacity * std::pow(in(current, rating.current), 1.0 - rating.exponent);
}
Duration time_at(const Rating& rating, Current current) { return capacity_at(rating, current) / current; }

double rate_exponent(RatePoint one, RatePoint other) {
  for (const RatePoint& point : {one, other}) {
    require_above_zero("discharge current", point.current, "A");
    require_above_zero("capacity", point.capacity, "Ah");
  }
  const double span = std::log(in(other.current, one.current));
  if (std::abs(span) < 1e-6)
    throw ModelError("discharge current " + format(one.current, "A") +
                     " is the same in both points: no rate exponent follows");
  return 1.0 - std::log(in(other.capacity, one.capacity)) / span;
}

Resistance pulse_resistance(LoadPoint light, LoadPoint heavy) {
  const Current step = heavy.current - light.current;
  const Voltage sag = light.voltage - heavy.voltage;
  require_above_zero("step of current", step, "A");
  require_above_zero("fall of voltage", sag, "V");
  return sag / step;
}

double charge_kept(const data::ChemistryRow& chemistry, double loss_per_month, Duration time, Temperature t) {
  require_not_negative("time on the shelf", time, "h");
  if (!(loss_per_month >= 0.0 && loss_per_month < 1.0))
    throw ModelError("self-discharge " + format_number(loss_per_month) + " a month is not between 0 and 1");
  const Duration day = 24.0 * hour, month = 30.4375 * day;
  double pace = 1.0;
  if (chemistry.loss_doubles_per)
    pace = std::exp2(in(above_absolute_zero(t) - above_absolute_zero(degC(20.0)), *chemistry.loss_doubles_per));
  const double first_day = 1.0 - chemistry.loss_on_first_day * std::min(1.0, in(time, day));
  return first_day * std::pow(1.0 - loss_per_month, pace * in(time, month));
}
}  // namespace lumwright::power
