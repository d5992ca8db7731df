#include "draught/fan_estimate.hpp"
#include "matter/air.hpp"
#include "matter/range.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright {
namespace {
constexpr double widest_frame_step = 1.4;
constexpr double spread_per_frame_step = 0.1;  // estimate: what carrying a curve to another frame adds to its spread

void check(const FanLabel& label) {
  require_above_zero("fan frame", label.frame);
  require_above_zero("rated voltage", label.rated_voltage);
  if (label.thickness) require_above_zero("fan thickness", *label.thickness);
  if (label.rated_current) require_above_zero("rated current", *label.rated_current);
  if (label.rated_speed) require_above_zero("rated speed", *label.rated_speed);
}

// Unmarked fans are mostly 25 mm deep or less, and the weaker of the two families: the careful guess.
Length depth_of(std::optional<Length> thickness) { return thickness.value_or(25.0 * mm); }

Band<double> either_way(double spread) { return {.value = 1.0, .low = 1.0 - spread, .high = 1.0 + spread}; }
Band<double> relative(const Band<double>& b) {
  return {.value = 1.0, .low = b.low / b.value, .high = b.high / b.value};
}

std::string spread_text(const CurveBasis& basis) {
  const auto side = [](double factor) { return (factor < 1.0 ? "-" : "+") + percent(std::abs(factor - 1.0), 2); };
  return "pressure " + side(basis.pressure.low) + " to " + side(basis.pressure.high) + ", flow " +
         side(basis.flow.low) + " to " + side(basis.flow.high);
}

struct CurveEnds {
  Pressure shut_off;
  VolumeFlow free_air;
};
std::vector<FanPoint> shaped(const data::FanShape& shape, const CurveEnds& ends) {
  std::vector<FanPoint> points;
  for (std::size_t i = 0; i < shape.flow.size(); ++i)
    points.push_back({.flow = shape.flow[i] * ends.free_air, .pressure = shape.pressure[i] * ends.shut_off});
  return points;
}

struct Wheel {
  Velocity tip_speed;
  Pressure head;         // 1.2 kg/m3 u^2 / 2
  VolumeFlow disc_flow;  // pi/4 D^2 u
};
Wheel wheel(double share, Length frame, Rotation speed) {
  const Length diameter = share * frame;
  const Velocity u = std::numbers::pi * diameter * speed;
  return {.tip_speed = u, .head = 0.5 * standard_fan_air * u * u, .disc_flow = circle(diameter) * u};
}

double log_ratio(double a) { return std::abs(std::log(a)); }
// Frame decides, then depth, then power. The weights only order a handful of rows.
double unlikeness(const data::GenericFan& fan, const FanLabel& label) {
  double sum = 10.0 * log_ratio(fan.frame / label.frame);
  if (label.thickness) sum += 2.0 * log_ratio(fan.thickness / *label.thickness);
  if (label.rated_current) {
    const Power power = label.rated_voltage * *label.rated_current;
    sum += log_ratio(fan.rated_voltage * fan.rated_current / power);
  }
  return sum;
}
}  // namespace

FanCurve curve_from_sheet(const FanSheet& sheet) {
  const data::FanTolerance& usual = data::fan_tolerance();
  CurveBasis basis{.origin = CurveOrigin::data_sheet,
                   .sentence = "",
                   .standing = usual.standing,
                   .pressure = either_way(usual.pressure),
                   .flow = either_way(usual.flow)};
  const bool stops_short = !sheet.points.empty() && sheet.points.back().pressure > 0.0 * Pa;
  basis.sentence = "from the points given" +
                   std::string(stops_short ? ", carried on straight from the last two to free air" : "") +
                   "; as data sheets go, " + spread_text(basis);
  return {sheet.kind, sheet.speed, sheet.points, basis};
}

FanCurve curve_from_label(const FanLabel& label) {
  if (label.rated_speed) return curve_from_tip_speed(label);
  const data::GenericFan* fan = nearest_generic(label);
  if (!fan)
    throw ModelError("no usual " + std::string(data::name(label.kind)) + " fan comes near a frame of " +
                     format(label.frame, "mm") + "; its speed or its curve is needed");
  return curve_from_generic(*fan, label.frame);
}

FanCurve curve_from_tip_speed(const FanLabel& label) {
  check(label);
  if (!label.rated_speed) throw ModelError("a curve by tip speed needs the fan's speed");
  const Length depth = depth_of(label.thickness);
  const data::FanTipSpeed& usual = data::fan_tip_speed(label.kind, depth);
  const Wheel w = wheel(usual.wheel_share, label.frame, *label.rated_speed);
  CurveBasis basis{.origin = CurveOrigin::tip_speed,
                   .sentence = "",
                   .standing = usual.standing,
                   .pressure = relative(usual.psi),
                   .flow = relative(usual.phi)};
  basis.sentence = "estimated from kind, frame and tip speed (" + format(w.tip_speed, "m/s") +
                   (label.thickness ? ")" : "; thickness not given, taken as 25 mm)") + " for want of a data sheet; " +
                   spread_text(basis);
  const CurveEnds ends{.shut_off = usual.psi.value * w.head, .free_air = usual.phi.value * w.disc_flow};
  return {label.kind, *label.rated_speed, shaped(data::fan_shape(label.kind, depth), ends), basis};
}

const data::GenericFan* nearest_generic(const FanLabel& label) {
  check(label);
  const data::GenericFan* best = nullptr;
  for (const data::GenericFan& fan : data::generic_fans()) {
    if (fan.kind != label.kind || log_ratio(fan.frame / label.frame) > std::log(widest_frame_step)) continue;
    if (!best || unlikeness(fan, label) < unlikeness(*best, label)) best = &fan;
  }
  return best;
}

FanCurve curve_from_generic(const data::GenericFan& fan, Length frame) {
  require_above_zero("fan frame", frame);
  const double size = frame / fan.frame;
  const bool other_frame = log_ratio(size) > 0.02;
  const double extra = other_frame ? spread_per_frame_step : 0.0;
  CurveBasis basis{.origin = CurveOrigin::generic_table,
                   .sentence = "",
                   .standing = fan.standing,
                   .pressure = either_way(fan.pressure_spread + extra),
                   .flow = either_way(fan.flow_spread + extra)};
  basis.sentence = "taken from the usual fan `" + fan.id + "`" +
                   (other_frame ? " and carried over to a frame of " + format(frame, "mm") : "") +
                   ", for want of a data sheet and a speed; " + spread_text(basis);
  const FanPoint free_air =
      similar({.flow = fan.free_air, .pressure = fan.shut_off}, {.speed = 1.0 / size, .size = size, .density = 1.0});
  const CurveEnds ends{.shut_off = free_air.pressure, .free_air = free_air.flow};
  return {fan.kind, fan.rated_speed / size, shaped(data::fan_shape(fan.kind, fan.thickness), ends), basis};
}

FanCoefficients coefficients(const FanClaim& claim) {
  require_above_zero("fan frame", claim.frame);
  require_above_zero("fan speed", claim.speed);
  require_above_zero("shut-off pressure", claim.shut_off);
  require_above_zero("free-air flow", claim.free_air);
  const double share = data::fan_tip_speed(claim.kind, depth_of(claim.thickness)).wheel_share;
  const Wheel w = wheel(share, claim.frame, claim.speed);
  const double psi = claim.shut_off / w.head, phi = claim.free_air / w.disc_flow;
  const data::FanCredibility& usual = data::fan_credibility(claim.kind);
  const auto within = [](double x, const Band<double>& range) { return x >= range.low && x <= range.high; };
  const Credibility verdict = psi > usual.psi_reject                             ? Credibility::not_credible
                              : within(psi, usual.psi) && within(phi, usual.phi) ? Credibility::usual
                                                                                 : Credibility::unusual;
  return {.tip_speed = w.tip_speed, .psi = psi, .phi = phi, .verdict = verdict};
}
}  // namespace lumwright
