#include "data/fan_label.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
double number_or(const Row& row, std::string_view key, double otherwise) {
  return row.has(key) ? row.number(key) : otherwise;
}
/// A factor of one with its ends.
Band<double> about_one(const Row& row, std::string_view key) {
  const Band<double> ends = row.band<double>(key);
  return {.value = 1.0, .low = ends.low, .high = ends.high};
}
FanLaw read_law(const Row& row) {
  return {.id = row.text("id"),
          .factor = row.number("factor"),
          .depth_over_frame = number_or(row, "depth_over_frame", 0.0),
          .frame = number_or(row, "frame", 0.0),
          .depth = number_or(row, "depth", 0.0),
          .tip_speed = number_or(row, "tip_speed", 0.0),
          .power = number_or(row, "power", 0.0),
          .of_maximum = number_or(row, "of_maximum", 1.0),
          .spread = about_one(row, "spread"),
          .basis = row.basis()};
}
BlowerBody read_body(const Row& row) {
  return {.id = row.text("id"),
          .frame = row.quantity<Length>("frame"),
          .thickness = row.quantity<Length>("thickness"),
          .psi = row.number("psi"),
          .phi = row.number("phi"),
          .power = row.quantity<Power>("power"),
          .speed = row.quantity<Rotation>("speed"),
          .basis = row.basis()};
}
BlowerLaw read_blower(const Row& row) {
  return {.power_exponent = row.number("power_exponent"),
          .of_maximum = row.number("of_maximum"),
          .psi = about_one(row, "psi_spread"),
          .phi = about_one(row, "phi_spread"),
          .speed = about_one(row, "speed_spread"),
          .power = about_one(row, "power_spread"),
          .together = row.number("together"),
          .far = row.number("far"),
          .basis = row.basis()};
}
FanDepthGuess read_depth_guess(const Row& row) {
  const Band<Length> ends = row.band<Length>("band");
  return {.kind = row.text("kind") == name(FanKind::axial) ? FanKind::axial : FanKind::centrifugal,
          .up_to = row.quantity<Length>("up_to"),
          .thickness = {.value = row.quantity<Length>("thickness"), .low = ends.low, .high = ends.high},
          .basis = row.basis()};
}
CurveSpread read_curve_spread(const Row& row) {
  return {.id = row.text("id"),
          .pressure = about_one(row, "pressure"),
          .flow = about_one(row, "flow"),
          .together = row.number("together"),
          .tails = row.yes("tails"),
          .basis = row.basis()};
}
}  // namespace

const FanLaw& fan_law(std::string_view id) {
  static const std::vector<FanLaw> all = read_all("fan_label", "laws", read_law);
  return by_id("fan_label", all, id);
}
const FlowLeft& flow_left() {
  static const FlowLeft left = [] {
    const Row row = rows("fan_label", "left").at(0);
    return FlowLeft{row.number("follows"), about_one(row, "spread"), row.number("together")};
  }();
  return left;
}
const std::vector<BlowerBody>& blower_bodies() {
  static const std::vector<BlowerBody> all = read_all("fan_label", "bodies", read_body);
  return all;
}
const BlowerLaw& blower_law() {
  static const BlowerLaw law = read_all("fan_label", "blower", read_blower).front();
  return law;
}
const FanDepthGuess& usual_depth(FanKind kind, Length frame) {
  static const std::vector<FanDepthGuess> all = read_all("fan_label", "depths", read_depth_guess);
  for (const FanDepthGuess& row : all)
    if (row.kind == kind && frame <= row.up_to) return row;
  throw ModelError("fan frame " + format(frame, "mm") + " is larger than any in the table");
}
double current_most_over_usual() {
  static const double ratio = rows("fan_label", "current").at(0).number("value");
  return ratio;
}
const std::vector<CurveSpread>& curve_spreads() {
  static const std::vector<CurveSpread> all = read_all("fan_label", "curves", read_curve_spread);
  return all;
}
const CurveSpread& curve_spread(std::string_view id) { return by_id("fan_label", curve_spreads(), id); }
}  // namespace lumwright::data
