// The curve of a fan from what is at hand: its data sheet, its label, or only its size; and whether a claim is
// credible.
#pragma once
#include "draught/fan.hpp"
#include <optional>
#include <vector>

namespace lumwright {
/// What can be read off the fan.
struct FanLabel {
  FanKind kind;
  Length frame;
  std::optional<Length> thickness;
  Voltage rated_voltage;
  std::optional<Current> rated_current;
  std::optional<Rotation> rated_speed;
};

struct FanSheet {
  FanKind kind;
  Rotation speed;  // at which the points hold
  std::vector<FanPoint> points;
};
/// Curve from a data sheet's points, with the usual tolerance of sheets. Throws ModelError as FanCurve does.
FanCurve curve_from_sheet(const FanSheet& sheet);

/// Curve from the label: by tip speed if the speed is known, else from the table of usual fans. Throws ModelError for
/// sizes that are not above zero and, without a speed, for a frame that no usual fan comes near.
FanCurve curve_from_label(const FanLabel& label);

/// psi and phi of usual fans on the wheel's tip speed (data::fan_tip_speed), with the usual shape between the two ends.
/// Pressure +-30 %, flow +-30 % for axial fans, wider for blowers. `rated_speed` must be there.
FanCurve curve_from_tip_speed(const FanLabel& label);

/// The usual fan nearest to the label in frame, then depth, then power (so that a strong fan is told from a weak one by
/// its current); null if no frame of this kind is within 40 %.
const data::GenericFan* nearest_generic(const FanLabel& label);
/// Its curve at its own speed; for another frame carried over at the same tip speed, which fan makers keep to.
FanCurve curve_from_generic(const data::GenericFan& fan, Length frame);

/// The two ends of a stated curve.
struct FanClaim {
  FanKind kind;
  Length frame;
  std::optional<Length> thickness;
  Rotation speed;
  Pressure shut_off;
  VolumeFlow free_air;
};
enum class Credibility { usual, unusual, not_credible };
struct FanCoefficients {
  Velocity tip_speed;
  double psi;  // shut-off pressure over 1.2 kg/m3 u^2 / 2
  double phi;  // free-air flow over pi/4 D^2 u
  Credibility verdict;
};
/// Judged by data::fan_credibility: not credible above psi 0.9 (axial) or 2.5 (blower). All sizes above zero, else
/// ModelError.
FanCoefficients coefficients(const FanClaim& claim);
}  // namespace lumwright
