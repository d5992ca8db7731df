// What the label of a small fan tells of its motor and its wheel, by the laws of data/fan_label.yaml.
#pragma once
#include "data/fan_label.hpp"
#include "draught/fan.hpp"
#include <optional>

namespace lumwright::draught {
/// What can be read off the fan.
struct FanLabel {
  data::FanKind kind;
  Length frame;
  std::optional<Length> thickness;
  Voltage rated_voltage;
  std::optional<Current> rated_current;
  std::optional<Rotation> rated_speed;
  bool current_is_most = false;  // of a maximum, as many labels print it
};
/// The label with nothing left open: as printed, else as usual fans are.
struct FilledLabel {
  Length thickness;
  Current current;
  Rotation speed;
};

// Each throws ModelError for sizes and ratings that are not above zero.

/// Depth of a frame; printed, or the usual one with its band.
Band<Length> depth_by_size(const FanLabel& label);
/// Current that fans of this size take at the rated voltage. Ten of a hundred lie below the band, ten above; so also
/// with the next.
Band<Current> current_by_size(const FanLabel& label, Length thickness);
/// Free-air speed by size and power. Whether the current is a maximum is taken from the label.
Band<Rotation> speed_by_power(const FanLabel& label, Length thickness, Current current);
FilledLabel filled(const FanLabel& label);

/// The wheel at a speed: psi = p0 / head, phi = V0 / disc_flow.
struct Wheel {
  Velocity tip_speed;
  Pressure head;         // 1.2 kg/m3 u^2 / 2
  VolumeFlow disc_flow;  // pi/4 D^2 u
};
Wheel wheel(data::FanKind kind, Length frame, Rotation speed);

struct CurveEnds {
  Pressure shut_off;
  VolumeFlow free_air;
};
/// Shut-off pressure by speed; free-air flow by speed where the label prints it, else by power, from which a speed that
/// differs moves it.
CurveEnds ends_by_label(const FanLabel& label, const FilledLabel& taken);
/// Spread of those ends, as the label leaves it; and what is left of it once `taken` is drawn by itself.
struct LabelSpread {
  Band<double> pressure, flow;
  Band<double> pressure_left, flow_left;
  double together;
};
LabelSpread spread_by_label(const FanLabel& label);
/// The body that blowers of this size are taken for.
const data::BlowerBody& nearest_body(Length frame, Length thickness);
}  // namespace lumwright::draught
