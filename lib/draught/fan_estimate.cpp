#include "draught/fan_estimate.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::draught {
namespace {

// 19 of 20 lie within 1.960 standard deviations, 10 of 100 above 1.282 of them (normal law).
constexpr double ninety_over_sure = 1.2816 / 1.9600;

Band<double> either_way(double spread) { return {.value = 1.0, .low = 1.0 - spread, .high = 1.0 + spread}; }

std::string spread_text(const CurveBasis& basis) {
  const auto side = [](double factor) { return (factor < 1.0 ? "-" : "+") + percent(std::abs(factor - 1.0), 2); };
  return "pressure " + side(basis.pressure.low) + " to " + side(basis.pressure.high) + ", flow " +
         side(basis.flow.low) + " to " + side(basis.flow.high) + (basis.tails ? " (80 of 100 such fans)" : "");
}
std::vector<FanPoint> shaped(const data::FanShape& shape, const CurveEnds& ends) {
  std::vector<FanPoint> points;
  for (std::size_t i = 0; i < shape.flow.size(); ++i)
    points.push_back({.flow = shape.flow[i] * ends.free_air, .pressure = shape.pressure[i] * ends.shut_off});
  return points;
}

CurveOrigin origin_of(const std::string& from) {
  if (from == "data sheet") return CurveOrigin::data_sheet;
  if (from == "bench") return CurveOrigin::bench;
  if (from == "label") return CurveOrigin::label;
  if (from == "guess") return CurveOrigin::guess;
  return CurveOrigin::not_said;
}
std::string words_of(CurveOrigin origin) {
  switch (origin) {
    case CurveOrigin::data_sheet:
      return "from the points given, of a data sheet";
    case CurveOrigin::bench:
      return "from the points given, measured on a bench";
    case CurveOrigin::label:
      return "from the points given, worked out from a label";
    case CurveOrigin::guess:
      return "from the points given, a guess";
    default:
      return "from the points given; where they come from is not said, and they are taken to be as good as those of a "
             "data sheet";
  }
}
CurveBasis basis_of(const FanSheet& sheet) {
  const CurveOrigin origin = origin_of(sheet.from);
  const data::CurveSpread& usual = data::curve_spread(origin == CurveOrigin::not_said ? "data sheet" : sheet.from);
  CurveBasis basis{.origin = origin,
                   .sentence = "",
                   .standing = usual.basis.standing,
                   .pressure = usual.pressure,
                   .flow = usual.flow,
                   .pressure_left = usual.pressure,
                   .flow_left = exactly(1.0),
                   .together = usual.together,
                   .tails = usual.tails};
  if (sheet.within) {
    const double ninety = ninety_over_sure * std::min(*sheet.within, 0.95);
    basis.pressure = basis.pressure_left = either_way(ninety);
    basis.flow = either_way(usual.together * ninety);
    basis.tails = true;
  } else if (usual.tails) {
    basis.flow_left = usual.flow;
  }
  return basis;
}
}  // namespace

bool only_ends(const std::vector<FanPoint>& points) {
  return points.size() == 2 && points.front().flow == 0.0 * m3_per_s && points.back().pressure == 0.0 * Pa;
}

FanCurve curve_from_sheet(const FanSheet& sheet) {
  CurveBasis basis = basis_of(sheet);
  const bool ends = only_ends(sheet.points);
  const bool stops_short = !sheet.points.empty() && sheet.points.back().pressure > 0.0 * Pa;
  basis.sentence = words_of(basis.origin);
  if (stops_short) basis.sentence += ", carried on straight from the last two to free air";
  if (ends) basis.sentence += "; only the two ends are given, and the usual shape of its kind goes between them";
  basis.sentence += "; " + spread_text(basis);
  if (!ends) return {sheet.kind, sheet.speed, sheet.points, basis};
  const data::FanShape& shape = data::fan_shape(sheet.kind, sheet.thickness.value_or(20.0 * mm));
  return {sheet.kind, sheet.speed,
          shaped(shape, {.shut_off = sheet.points.front().pressure, .free_air = sheet.points.back().flow}), basis};
}

FanCurve curve_from_label(const FanLabel& label, const FilledLabel& taken) {
  const CurveEnds ends = ends_by_label(label, taken);
  const LabelSpread spread = spread_by_label(label);
  const bool by_size = !label.rated_speed && !label.rated_current;
  const data::FanLaw& law = data::fan_law("axial pressure");
  const bool axial = label.kind == data::FanKind::axial;
  CurveBasis basis{.origin = by_size ? CurveOrigin::guess : CurveOrigin::label,
                   .sentence = "",
                   .standing = axial ? law.basis.standing : data::blower_law().basis.standing,
                   .pressure = spread.pressure,
                   .flow = spread.flow,
                   .pressure_left = spread.pressure_left,
                   .flow_left = spread.flow_left,
                   .together = spread.together,
                   .tails = true};
  const std::string as =
      axial ? "printed fans go"
            : "centrifugal fans of a body near " + nearest_body(label.frame, taken.thickness).id + " go";
  if (label.rated_speed)
    basis.sentence = fmt::format("estimated from kind, size and speed (tip speed {}), as {}",
                                 format(wheel(label.kind, label.frame, taken.speed).tip_speed, "m/s"), as);
  else
    basis.sentence = fmt::format("estimated from kind, size and {}, as {}", by_size ? "nothing else" : "power", as);
  basis.sentence += ", for want of a data sheet; " + spread_text(basis);
  return {label.kind, taken.speed, shaped(data::fan_shape(label.kind, taken.thickness), ends), basis};
}
FanCurve curve_from_label(const FanLabel& label) { return curve_from_label(label, filled(label)); }

FanCoefficients coefficients(const FanClaim& claim) {
  require_above_zero("fan frame", claim.frame);
  require_above_zero("fan speed", claim.speed);
  require_above_zero("shut-off pressure", claim.shut_off);
  require_above_zero("free-air flow", claim.free_air);
  const Wheel w = wheel(claim.kind, claim.frame, claim.speed);
  const double psi = claim.shut_off / w.head, phi = claim.free_air / w.disc_flow;
  const data::FanCredibility& usual = data::fan_credibility(claim.kind);
  const auto within = [](double x, const Band<double>& range) { return x >= range.low && x <= range.high; };
  const Credibility verdict = psi > usual.psi_reject                             ? Credibility::not_credible
                              : within(psi, usual.psi) && within(phi, usual.phi) ? Credibility::usual
                                                                                 : Credibility::unusual;
  return {.tip_speed = w.tip_speed, .psi = psi, .phi = phi, .verdict = verdict};
}
}  // namespace lumwright::draught
