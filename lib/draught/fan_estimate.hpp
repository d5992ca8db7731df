// The curve of a fan from what is at hand: points that are given, its label, or only its size; and whether a claim is
// credible.
#pragma once
#include "draught/fan.hpp"
#include "draught/fan_label.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::draught {
struct FanSheet {
  data::FanKind kind;
  Rotation speed;  // at which the points hold
  std::vector<FanPoint> points;
  std::optional<Length> thickness{};  // chooses the shape where only the two ends are given; 20 mm without it
  std::string from{};                 // a row of data::curve_spreads(); empty: not said
  std::optional<double> within{};     // its pressures are not further off than this in 19 of 20
};
/// Whether the points are no more than the two ends, between which the usual shape of the kind is drawn.
bool only_ends(const std::vector<FanPoint>& points);
/// Curve through given points, with the spread of where they come from. Throws ModelError as FanCurve does.
FanCurve curve_from_sheet(const FanSheet& sheet);

/// Curve from the label by the laws of data/fan_label.yaml, with the usual shape between its ends. `taken` is what
/// stands in where the label is silent.
FanCurve curve_from_label(const FanLabel& label, const FilledLabel& taken);
FanCurve curve_from_label(const FanLabel& label);

/// The two ends of a stated curve.
struct FanClaim {
  data::FanKind kind;
  Length frame;
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
/// Judged by data::fan_credibility: not credible above psi 0.9 (axial) or 4 (blower, whose printed speed is that of free
/// air). All sizes above zero, else ModelError.
FanCoefficients coefficients(const FanClaim& claim);
}  // namespace lumwright::draught
