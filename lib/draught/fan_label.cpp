#include "draught/fan_label.hpp"
#include "matter/air.hpp"
#include "quantity/require.hpp"
#include <array>
#include <cmath>
#include <numbers>

namespace lumwright::draught {
namespace {
void check(const FanLabel& label) {
  require_above_zero("fan frame", label.frame);
  require_above_zero("rated voltage", label.rated_voltage);
  if (label.thickness) require_above_zero("fan thickness", *label.thickness);
  if (label.rated_current) require_above_zero("rated current", *label.rated_current);
  if (label.rated_speed) require_above_zero("rated speed", *label.rated_speed);
}
bool axial(const FanLabel& label) { return label.kind == data::FanKind::axial; }

/// What the laws are of; power and tip speed only where the law has them.
struct Powers {
  Length frame, thickness;
  double watts = 1.0;
  Velocity tip_speed = 10.0 * m_per_s;
  bool of_maximum = false;
};
double by_law(const data::FanLaw& law, const Powers& p) {
  return law.factor * std::pow(static_cast<double>(p.thickness / p.frame), law.depth_over_frame) *
         std::pow(in(p.frame, mm) / 60.0, law.frame) * std::pow(in(p.thickness, mm) / 20.0, law.depth) *
         std::pow(in(p.tip_speed, m_per_s) / 10.0, law.tip_speed) * std::pow(p.watts, law.power) *
         (p.of_maximum ? law.of_maximum : 1.0);
}
Powers powers_of(const FanLabel& label, Length thickness, Current current) {
  return {.frame = label.frame,
          .thickness = thickness,
          .watts = in(label.rated_voltage * current, W),
          .of_maximum = label.current_is_most && label.rated_current};
}

/// A spread that a factor to this exponent takes over.
struct Share {
  Band<double> spread;
  double exponent;
};
template <std::size_t n>
Band<double> combined(const std::array<Share, n>& shares) {
  double below = 0.0, above = 0.0;
  for (const Share& s : shares) {
    below += std::pow(s.exponent * std::log(s.spread.low), 2);
    above += std::pow(s.exponent * std::log(s.spread.high), 2);
  }
  return {.value = 1.0, .low = std::exp(-std::sqrt(below)), .high = std::exp(std::sqrt(above))};
}
/// Factors of two between a fan and the body it is taken for.
double distance(const data::BlowerBody& body, Length frame, Length thickness) {
  const auto twos = [](double ratio) { return std::abs(std::log2(ratio)); };
  return 2.0 * twos(body.frame / frame) + twos(body.thickness / thickness);
}
Band<double> farther(const Band<double>& spread, double twos) {
  const double more = data::blower_law().far * twos;
  const auto wider = [more](double end) { return std::hypot(std::log(end), more); };
  return {.value = 1.0, .low = std::exp(-wider(spread.low)), .high = std::exp(wider(spread.high))};
}
template <class Q>
Band<Q> about(Q value, const Band<double>& spread) {
  return {.value = value, .low = spread.low * value, .high = spread.high * value};
}
LabelSpread axial_spread(const FanLabel& label) {
  const data::FanLaw &psi = data::fan_law("axial pressure"), &phi = data::fan_law("axial flow"),
                     &speed = data::fan_law("axial speed"), &flow = data::fan_law("axial flow by label"),
                     &power = data::fan_law("axial power");
  const data::FlowLeft& left = data::flow_left();
  if (label.rated_speed) return {psi.spread, phi.spread, psi.spread, phi.spread, left.together};
  if (label.rated_current)
    return {combined(std::array{Share{psi.spread, 1.0}, Share{speed.spread, 2.0}}), flow.spread, psi.spread,
            left.spread, left.together};
  return {combined(std::array{Share{psi.spread, 1.0}, Share{speed.spread, 2.0}, Share{power.spread, 2.0 * speed.power}}),
          combined(std::array{Share{flow.spread, 1.0}, Share{power.spread, flow.power}}), psi.spread, left.spread,
          left.together};
}
LabelSpread blower_spread(const FanLabel& label, Length thickness) {
  const data::BlowerLaw& law = data::blower_law();
  const double twos = distance(nearest_body(label.frame, thickness), label.frame, thickness);
  const Band<double> psi = farther(law.psi, twos), phi = farther(law.phi, twos), speed = farther(law.speed, twos);
  if (label.rated_speed) return {psi, phi, psi, phi, law.together};
  const double by_power = label.rated_current ? 0.0 : law.power_exponent;
  const Share power{law.power, by_power};
  return {combined(std::array{Share{psi, 1.0}, Share{speed, 2.0}, Share{power.spread, 2.0 * by_power}}),
          combined(std::array{Share{phi, 1.0}, Share{speed, 1.0}, power}), psi, phi, law.together};
}
}  // namespace

const data::BlowerBody& nearest_body(Length frame, Length thickness) {
  const std::vector<data::BlowerBody>& all = data::blower_bodies();
  const data::BlowerBody* best = &all.front();
  for (const data::BlowerBody& body : all)
    if (distance(body, frame, thickness) < distance(*best, frame, thickness)) best = &body;
  return *best;
}

Band<Length> depth_by_size(const FanLabel& label) {
  check(label);
  if (label.thickness) return exactly(*label.thickness);
  return data::usual_depth(label.kind, label.frame).thickness;
}
Band<Current> current_by_size(const FanLabel& label, Length thickness) {
  check(label);
  require_above_zero("fan thickness", thickness);
  if (label.rated_current) return exactly(*label.rated_current);
  if (axial(label)) {
    const data::FanLaw& law = data::fan_law("axial power");
    const Power usual = by_law(law, {.frame = label.frame, .thickness = thickness}) * W;
    return about(Current(usual / label.rated_voltage), law.spread);
  }
  // the frame's side to the power of 2.5: between the bodies of the table
  const data::BlowerBody& body = nearest_body(label.frame, thickness);
  const Power usual = body.power * std::pow(static_cast<double>(label.frame / body.frame), 2.5);
  return about(Current(usual / label.rated_voltage), data::blower_law().power);
}
Band<Rotation> speed_by_power(const FanLabel& label, Length thickness, Current current) {
  check(label);
  require_above_zero("fan thickness", thickness);
  require_above_zero("rated current", current);
  if (label.rated_speed) return exactly(*label.rated_speed);
  const Powers powers = powers_of(label, thickness, current);
  const data::FanLaw& law = data::fan_law("axial speed");
  if (axial(label)) return about(by_law(law, powers) * rpm, law.spread);
  const data::BlowerBody& body = nearest_body(label.frame, thickness);
  const data::BlowerLaw& blower = data::blower_law();
  const double slower = std::pow(static_cast<double>(label.frame / body.frame), law.frame);
  const Rotation usual = body.speed * slower * std::pow(powers.watts / in(body.power, W), blower.power_exponent) *
                         (powers.of_maximum ? blower.of_maximum : 1.0);
  return about(usual, farther(blower.speed, distance(body, label.frame, thickness)));
}
FilledLabel filled(const FanLabel& label) {
  const Length thickness = depth_by_size(label).value;
  const Current current = current_by_size(label, thickness).value;
  return {.thickness = thickness, .current = current, .speed = speed_by_power(label, thickness, current).value};
}

Wheel wheel(data::FanKind kind, Length frame, Rotation speed) {
  const Length diameter = data::fan_wheel_share(kind) * frame;
  const Velocity u = std::numbers::pi * diameter * speed;
  return {.tip_speed = u, .head = 0.5 * matter::standard_fan_air * u * u, .disc_flow = circle(diameter) * u};
}

CurveEnds ends_by_label(const FanLabel& label, const FilledLabel& taken) {
  check(label);
  require_above_zero("rated speed", taken.speed);
  const Wheel w = wheel(label.kind, label.frame, taken.speed);
  if (!axial(label)) {
    const data::BlowerBody& body = nearest_body(label.frame, taken.thickness);
    return {.shut_off = body.psi * w.head, .free_air = body.phi * w.disc_flow};
  }
  Powers powers = powers_of(label, taken.thickness, taken.current);
  powers.tip_speed = w.tip_speed;
  const Pressure shut_off = by_law(data::fan_law("axial pressure"), powers) * w.head;
  if (label.rated_speed)
    return {.shut_off = shut_off, .free_air = by_law(data::fan_law("axial flow"), powers) * w.disc_flow};
  const Rotation usual = speed_by_power(label, taken.thickness, taken.current).value;
  const double moved = std::pow(static_cast<double>(taken.speed / usual), data::flow_left().follows);
  return {.shut_off = shut_off, .free_air = moved * by_law(data::fan_law("axial flow by label"), powers) * litre_per_s};
}
LabelSpread spread_by_label(const FanLabel& label) {
  return axial(label) ? axial_spread(label) : blower_spread(label, depth_by_size(label).value);
}
}  // namespace lumwright::draught
