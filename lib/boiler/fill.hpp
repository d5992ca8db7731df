// What the water level allows: room to swell, and what a gauge shows when the boiler was shut with air in it.
#pragma once
#include "quantity/kind.hpp"
#include "quantity/quantity.hpp"

namespace lumwright::boiler {
struct Fill {
  double water_share;  // of the boiler's inside that cold water fills; above 0, below 1
  Temperature cold;
  Pressure barometer;
};
/// The share that the same water fills when hot: 6 % more at 1 bar on the gauge, 8 % at 3 bar. Throws ModelError for a
/// share out of range, a temperature outside 0.01 to 300 degC, or a boiler that is full before it is hot.
double water_share_at(const Fill& fill, Temperature hot);

/// What the gauge shows of a boiler that was shut cold: steam's pressure and that of the air, which the water squeezes
/// as it swells: p_sat(T) + p_air (T/T0) (V0/V) - barometer. Throws as above.
GaugePressure gauge_with_air(const Fill& fill, Temperature hot);
/// The temperature at which such a gauge shows `reading`: lower than steam alone would have, so that the pressure
/// collapses when steam is drawn. Bracketed root. `reading` above zero, else ModelError.
Temperature false_reading(const Fill& fill, GaugePressure reading);

/// Steam that drives the air from a steam space: `changes` times its volume at the barometer's pressure; each change
/// leaves 1/e of the air.
Mass purge_steam(Volume steam_space, double changes, Pressure barometer);
}  // namespace lumwright::boiler
