// A fan's static pressure against its volume flow, and the laws that carry it to another speed, size and gas.
#pragma once
#include "data/basis.hpp"
#include "data/fans.hpp"
#include "numeric/curve.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <functional>
#include <string>
#include <vector>

namespace lumwright::draught {
/// Static pressure is that of ISO 5801: at the outlet, less the total pressure at the inlet. A fan that draws from a
/// still box and blows into the open holds exactly this suction in the box; no outlet loss may be added.
struct FanPoint {
  VolumeFlow flow;  // at the fan's inlet
  Pressure pressure;
};

/// Ratios of the second fan over the first.
struct FanSimilarity {
  double speed;
  double size;
  double density;
};
/// The same point of the curve on a similar fan: Q ~ n D^3, p ~ rho n^2 D^2 (ISO 5801, AMCA 210). On published families
/// of small fans the flow agrees within 4 % and the pressure within 6 %. Ratios above zero, else ModelError.
FanPoint similar(FanPoint point, FanSimilarity ratio);

/// Where a curve comes from: points that are given, by what is said of them; or worked out from the label, or from kind
/// and size alone.
enum class CurveOrigin { data_sheet, bench, not_said, label, guess };
struct CurveBasis {
  CurveOrigin origin;
  std::string sentence;  // for the reader: what was used, and how far it can be trusted
  data::Standing standing;
  Band<double> pressure;  // factor on every pressure: 1 with its spread
  Band<double> flow;      // factor on every flow
  // What is left of both where the speed and the power are drawn by themselves; the flow goes with the pressure's
  // factor to the power of `together`, times its own. With tails, ten of a hundred lie beyond each end of a band.
  Band<double> pressure_left{1.0, 1.0, 1.0}, flow_left{1.0, 1.0, 1.0};
  double together = 0.5;
  bool tails = false;
};

/// Static pressure against flow at one speed and 1.2 kg/m3. Monotone cubic through the points (straight pieces under
/// four), so a dip of the points is kept and none is added. A last point above zero pressure is carried on straight to
/// free air.
class FanCurve {
 public:
  /// Points in rising order of flow, the first at zero flow, no pressure below zero and none but the last at zero;
  /// speed above zero. Throws ModelError otherwise.
  FanCurve(data::FanKind kind, Rotation speed, const std::vector<FanPoint>& points, CurveBasis basis);

  /// From zero flow to free air. Beyond, where the air drives the fan, it falls below zero with the square of the flow:
  /// an assumption that only closes the search for an operating point.
  Pressure static_pressure(VolumeFlow flow) const;
  VolumeFlow free_air() const { return free_air_; }
  Pressure shut_off() const { return shut_off_; }
  Pressure highest() const { return highest_; }
  bool rises() const { return rises_; }  // pressure climbs with flow somewhere: several operating points are possible
  data::FanKind kind() const { return kind_; }
  Rotation speed() const { return speed_; }
  const CurveBasis& basis() const { return basis_; }
  const std::vector<FanPoint>& points() const { return points_; }

 private:
  data::FanKind kind_;
  Rotation speed_;
  std::vector<FanPoint> points_;
  CurveBasis basis_;
  numeric::MonotoneCurve curve_;  // Pa against m3/s
  VolumeFlow free_air_;
  Pressure shut_off_, highest_;
  double fall_;  // Pa s2/m6 of the fall beyond free air
  bool rises_;
};

struct CurveFactors {
  double pressure;
  double flow;
};
/// The curve with its pressures and flows multiplied; how its spread is sampled. Factors above zero, else ModelError.
FanCurve stretched(const FanCurve& curve, CurveFactors factors);

/// A fan at the speed it runs at: all that the gas path needs to know of it.
struct RunningFan {
  std::function<Pressure(VolumeFlow)> static_pressure;  // at 1.2 kg/m3; below zero beyond free air
  VolumeFlow free_air;
  Pressure highest;  // not exceeded anywhere: bounds the search
  bool rises;        // the pressure may climb with flow somewhere: the search looks closely
  data::FanKind kind;
};
/// `curve` carried to `speed` by the similarity laws. Below half of the curve's speed small fans fall 5 to 10 % short
/// of the pressure (estimate). Speed above zero, else ModelError.
RunningFan running(const FanCurve& curve, Rotation speed);
/// Static pressure with gas of this density at the inlet: p ~ rho at one flow and speed.
Pressure static_pressure(const RunningFan& fan, VolumeFlow flow, Density inlet);
}  // namespace lumwright::draught
