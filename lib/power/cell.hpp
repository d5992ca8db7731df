// What one cell gives now: age, cold, current and shelf time applied to the values of its row.
#pragma once
#include "data/cells.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::power {
/// Factors of a temperature on capacity and on resistance, straight between the row's points.
/// Throws ModelError outside them. The scatter between makes is wide: +-10 % at 0 degC, +-20 % at -20 degC.
struct TemperatureFactors {
  double capacity;
  double resistance;
};
TemperatureFactors temperature_factors(const data::ChemistryRow& chemistry, Temperature t);

/// Charge given at one constant current, against the charge and current of the rating.
struct Rating {
  Charge capacity;
  Current current;
  double exponent;  // 1: capacity does not depend on current
};
/// Q = Qr (I/Ir)^(1-k) for I >= Ir; below the rated current the rated capacity holds (the law is not fitted there).
/// W. Peukert, Elektrotechnische Zeitschrift 18 (1897) 287. Within some 5 % inside the range that k was fitted over.
/// Throws ModelError unless all are positive and 1 <= k < 2.
Charge capacity_at(const Rating& rating, Current current);
/// capacity_at over the current: how long it lasts.
Duration time_at(const Rating& rating, Current current);

struct RatePoint {
  Current current;
  Charge capacity;
};
/// The exponent k that carries the law through two measured capacities. Throws ModelError if the currents are alike.
double rate_exponent(RatePoint one, RatePoint other);

struct LoadPoint {
  Current current;
  Voltage voltage;
};
/// D.c. resistance from two loads a moment apart. Throws ModelError unless the heavier load has the lower voltage.
Resistance pulse_resistance(LoadPoint light, LoadPoint heavy);

/// The share of charge that is left after lying at `t` for `time`: exponential, with the first day's extra loss where
/// the chemistry has one. `loss_per_month` is a share, from the row's band. Throws ModelError for a negative time.
double charge_kept(const data::ChemistryRow& chemistry, double loss_per_month, Duration time, Temperature t);
}  // namespace lumwright::power
