// What the label of a small fan is worth: laws through printed rows, bodies of blowers, spreads by where a curve comes
// from.
#pragma once
#include "data/basis.hpp"
#include "data/fans.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// See fan_label.yaml for its form.
struct FanLaw {
  std::string id;
  double factor, depth_over_frame, frame, depth, tip_speed, power, of_maximum;
  Band<double> spread;
  Basis basis{};
};
struct FlowLeft {
  double follows;
  Band<double> spread;
  double together;
};
struct BlowerBody {
  std::string id;
  Length frame, thickness;
  double psi, phi;
  Power power;
  Rotation speed;
  Basis basis{};
};
struct BlowerLaw {
  double power_exponent, of_maximum;
  Band<double> psi, phi, speed, power;
  double together, far;
  Basis basis{};
};
struct FanDepthGuess {
  FanKind kind;
  Length up_to;
  Band<Length> thickness;
  Basis basis{};
};
/// Factors on a curve's pressures and flows.
struct CurveSpread {
  std::string id;
  Band<double> pressure, flow;
  double together;
  bool tails;  // the bands leave out ten of a hundred at each end
  Basis basis{};
};

/// For ids that our own code writes: std::logic_error where there is none.
const FanLaw& fan_law(std::string_view id);
const FlowLeft& flow_left();
const std::vector<BlowerBody>& blower_bodies();
const BlowerLaw& blower_law();
/// For a frame of which the depth is not told.
const FanDepthGuess& usual_depth(FanKind kind, Length frame);
double current_most_over_usual();
const std::vector<CurveSpread>& curve_spreads();
const CurveSpread& curve_spread(std::string_view id);
}  // namespace lumwright::data
