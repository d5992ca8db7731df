// A fan's curve through test readings, with a band that holds the whole of it: as smooth as fans are, falling
// throughout unless the readings show a hump beyond their noise.
#pragma once
#include "draught/fan.hpp"
#include <optional>
#include <vector>

namespace lumwright::draught {
/// One reading, carried to the air and speed of the curve. Uncertainties are single standard deviations.
struct TestPoint {
  VolumeFlow flow;
  Pressure pressure;
  Pressure pressure_sigma;    // of this reading alone
  double flow_with_pressure;  // relative change of the flow with that of the pressure: 0.5 where one U-tube gives both
  double flow_sigma;          // relative, of this reading alone
};
/// What moves all readings together: relative changes of flow and pressure at one standard deviation.
struct CommonError {
  double flow;
  double pressure;
};
struct TestedFan {
  data::FanKind kind;
  Length thickness;               // chooses the usual shape, which closes the curve beyond the readings
  std::vector<TestPoint> points;  // any order
  std::vector<CommonError> common;
};

struct CurveBandPoint {
  VolumeFlow flow;
  Pressure pressure;
  Pressure low, high;  // may be below zero near free air: the fan may be driven there
  bool beyond;         // no reading lies at this or a larger flow, or at this or a smaller one
};
/// A stretch where pressure climbs with flow.
struct FanHump {
  VolumeFlow dip, top;
  Pressure rise;
  double sigmas;  // the rise over its own standard deviation
};
struct FanFit {
  std::vector<CurveBandPoint> curve;  // from shut to free air, evenly spaced; the last has no pressure
  Band<Pressure> shut_off;
  Band<VolumeFlow> free_air;
  bool shut_off_read, free_air_near;  // the closed lid was read; the last reading lies under a tenth of the pressure
  std::optional<FanHump> hump;        // kept, since it exceeds the noise
  double cover;                       // standard deviations that hold the whole curve with 95 %
  double misfit, freedom;             // sum of squared residuals, in sigmas, and what it should be
  double widened;                     // factor on the readings' uncertainty, for readings that disagree; 1 or more
  /// Straight between the points of the curve; flow from zero to free air, else ModelError.
  CurveBandPoint at(VolumeFlow flow) const;
};
/// Smoothing spline whose stiffness is that of usual curves (data::fan_shape), as a Gaussian process (Wahba 1978) on
/// the readings, with errors of flow projected along the fan's slope; where it would rise by less than twice the
/// standard deviation of the rise it is made to fall (isotonic regression). Beyond the last reading it leans on the
/// usual shape. Needs readings at two flows or more, the pressure not highest at the largest flow; all pressures above
/// zero. Throws ModelError.
FanFit fit_fan_curve(const TestedFan& fan);

/// The closed lid against the trend of the open plates.
struct LeakSuspicion {
  Pressure read, expected;
  double sigmas;
  VolumeFlow flow;  // what would have to leak in
};
/// Nothing if no reading was at zero flow, under two others remain, or the closed lid reads within two sigmas of the
/// trend or above it.
std::optional<LeakSuspicion> leak_suspicion(const TestedFan& fan);
}  // namespace lumwright::draught
