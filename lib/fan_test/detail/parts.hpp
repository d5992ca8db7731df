// What the files of the fan test share; no other file includes this.
#pragma once
#include "draught/fan_test.hpp"
#include "fan_test/fan_test.hpp"
#include "model/inputs.hpp"

namespace lumwright::fan_test {
/// The room, the box, the meter and the motor, with what is assumed of them.
struct Setting {
  explicit Setting(const description::FanReadings& readings);
  const description::FanReadings& file;
  model::Inputs inputs;
  data::FanKind kind;
  Length thickness;
  std::optional<Length> frame;
  std::optional<Area> box;     // cross-section
  std::optional<Length> side;  // the smaller one, or the diameter
  Pressure barometer;
  Temperature air;
  double density_sigma;  // relative
  bool tube;
  Length tube_length;  // meaningless without a tube
  Length plate;
  draught::UTube u_tube;
  bool reads_to_written;
  std::optional<Voltage> voltage;  // at which the curve holds
  std::optional<Rotation> speed;
  std::string speed_basis;
};
/// Ratio of speeds and its relative standard deviation, which all readings share.
struct SpeedRatio {
  double value, sigma;
};
SpeedRatio speed_ratio(const Setting& setting, const description::part::FanTestReading& reading);

TestedPoint tested_point(const Setting& setting, const description::part::FanTestReading& reading, std::size_t number);
std::vector<draught::CommonError> common_errors(const Setting& setting, const std::vector<TestedPoint>& points,
                                                std::vector<SharedError>& shared);
/// Each throws ReadingFault. By the speed it had, a reading was carried further than the laws go; the largest flow has
/// the highest pressure; numbers that are none came out; a description would not take the lines.
void refuse_slipped_speeds(const Setting& setting, const std::vector<TestedPoint>& points);
void refuse_rising(const Setting& setting, const std::vector<TestedPoint>& points);
void refuse_unfinite(const Setting& setting, const FanTest& test);
void refuse_unwritable(const Setting& setting, const FanTest& test);
/// Of the finished test.
std::vector<FanTestWarning> warnings(const Setting& setting, const FanTest& test, const draught::TestedFan& fitted);

/// Half of a written spread, as a standard deviation, over the value; `otherwise` (two deviations) where there is none.
template <class Q>
double relative_sigma(const description::Given<Q>& given, double otherwise) {
  if (!given || !given.has_spread) return 0.5 * otherwise;
  using T = QuantityTraits<Q>;
  const double value = T::to_si(*given);
  return 0.25 * (T::to_si(given.band->high) - T::to_si(given.band->low)) / value;
}
}  // namespace lumwright::fan_test
