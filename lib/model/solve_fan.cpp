#include "data/fan_sound.hpp"
#include "data/fans.hpp"
#include "model/solved.hpp"
#include "model/solved_fan.hpp"
#include "model/solving.hpp"
#include <cmath>

namespace lumwright::model {
namespace {
using Missing = std::vector<std::string>;
std::vector<draught::FanPoint> sheet_points(const description::part::FanPart& fan) {
  std::vector<draught::FanPoint> points;
  for (const auto& p : fan.curve.points) points.push_back({p.x, p.y});
  return points;
}
std::optional<draught::FanLabel> label_of(const description::Build& build, Inputs& inputs, Missing& missing) {
  const description::part::FanPart& fan = build.fan;
  note_missing(fan.kind, missing);
  const auto frame = fan.curve ? inputs.known(fan.frame) : needed(inputs, fan.frame, missing);
  // What a step-up is set to says nothing of what the fan behind it stands.
  const auto voltage = needed(inputs, fan.rated.voltage, missing);
  if (!missing.empty()) return std::nullopt;
  return draught::FanLabel{.kind = *fan.kind == "axial" ? data::FanKind::axial : data::FanKind::centrifugal,
                           .frame = frame.value_or(0.0 * mm),
                           .thickness = inputs.known(fan.thickness),
                           .rated_voltage = *voltage,
                           .rated_current = inputs.known(fan.rated.current),
                           .rated_speed = inputs.known(fan.rated.speed)};
}
std::vector<draught::SpeedPoint> measured_speeds(const description::part::FanPart& fan) {
  std::vector<draught::SpeedPoint> points;
  for (const auto& p : fan.speed_at.points) points.push_back({p.x, p.y});
  return points;
}
Voltage most_voltage(const description::part::FanPart& fan, Inputs& inputs, Voltage usual) {
  const data::FanVoltage& allowed = data::fan_voltage();
  return inputs.otherwise(fan.voltage_most, exactly(usual),
                          because("a little above the rated voltage, as sheets allow", allowed.basis));
}

/// Label, what stands in for what it does not say, and the curve.
class FanSolver {
 public:
  FanSolver(const description::Build& build, Inputs& inputs, const draught::FanLabel& label)
      : fan_(build.fan), load_(static_cast<bool>(build.load.power)), inputs_(inputs), label_(label) {}
  SolvedFan solve() {
    inside_ = inputs_.usual(fan_.mount) == "inside";
    const bool only_two = fan_.curve && draught::only_ends(sheet_points(fan_));
    thickness_ = label_.thickness;
    if (sized() && (!fan_.curve || (only_two && label_.kind == data::FanKind::axial) || inside_)) take_thickness();
    if (!fan_.curve) {
      if (label_.rated_current && !label_.rated_speed)
        label_.current_is_most = inputs_.usual(fan_.rated.current_is) == "maximum";
      taken_.thickness = thickness_.value();
    } else if (sized()) {
      taken_.thickness =
          thickness_.value_or(draught::depth_by_size(label_).value);  // of nothing but the usual current and speed
    }
    take_current();
    take_speed();
    draught::FanCurve curve = curve_with_spread();
    draught::MotorLaw motor = motor_of();
    motor.highest = most_voltage(fan_, inputs_, motor.highest);
    const data::FanGasLimit& limits = data::fan_gas_limit();
    const auto sounds = sounding();
    return SolvedFan{.label = label_,
                     .thickness = thickness_,
                     .curve = std::move(curve),
                     .motor = motor,
                     .current = current_,
                     .gas_limit = inputs_.otherwise(fan_.gas_limit, {limits.watch, limits.watch, limits.stop},
                                                    because("usual limit of small fans", limits.basis)),
                     .inside = inside_,
                     .sounds = sounds,
                     .sound_power = sounds ? sound_power() : 1.0};
  }

 private:
  bool sized() const { return label_.frame > 0.0 * mm; }
  void take_thickness() {
    const data::FanDepthGuess& usual = data::usual_depth(label_.kind, label_.frame);
    thickness_ = inputs_.otherwise(fan_.thickness, draught::depth_by_size(label_),
                                   because("usual depth of such a frame", usual.basis));
  }
  void take_current() {
    if (label_.rated_current) {
      taken_.current = *label_.rated_current;
      const bool most = fan_.rated.current_is && *fan_.rated.current_is == "maximum";
      current_ = *label_.rated_current / (most ? data::current_most_over_usual() : 1.0);
    } else if (sized() && (!fan_.curve || !load_)) {
      const data::FanLaw& law = data::fan_law("axial power");
      taken_.current = inputs_.scattered(fan_.rated.current, draught::current_by_size(label_, taken_.thickness),
                                         because("as fans of this size take", law.basis));
      current_ = taken_.current;
    }
  }
  void take_speed() {
    if (label_.rated_speed) {
      taken_.speed = *label_.rated_speed;
    } else if (fan_.curve) {  // only ratios of speed enter
      const bool known = sized() && current_;
      const Rotation usual =
          known ? draught::speed_by_power(label_, taken_.thickness, taken_.current).value : 4000.0 * rpm;
      taken_.speed = inputs_.otherwise(
          fan_.rated.speed, exactly(usual),
          because("any value: the curve is given", data::Basis{data::Standing::derived, "similarity laws"}));
    } else {
      const data::FanLaw& law = data::fan_law("axial speed");
      taken_.speed =
          inputs_.scattered(fan_.rated.speed, draught::speed_by_power(label_, taken_.thickness, taken_.current),
                            because("by size and power", law.basis));
    }
  }
  std::optional<draught::SoundingFan> sounding() {
    if (!sized() || (fan_.curve && !label_.rated_speed)) return std::nullopt;
    if (!thickness_ && label_.kind == data::FanKind::centrifugal) take_thickness();
    const Length depth = thickness_.value_or(draught::depth_by_size(label_).value);  // an axial fan's does not matter
    return draught::SoundingFan{label_.kind, label_.frame, depth, taken_.speed, taken_.speed};
  }
  double sound_power() {
    const data::FanSoundLaw& law = data::fan_sound_law(label_.kind);
    const auto power = [](double level) { return std::pow(10.0, 0.1 * level); };
    return inputs_.scattered<double>(
        "unit.fan_sound", {power(law.spread.value), power(law.spread.low), power(law.spread.high)},
        because("how much sound this fan makes over others of its size and speed", law.basis));
  }
  draught::FanCurve curve_as_told() {
    if (!fan_.curve) {
      draught::FanCurve curve = draught::curve_from_label(label_, taken_);
      inputs_.note({"fan.curve",
                    "estimated",
                    "",
                    curve.basis().sentence,
                    {curve.basis().standing, "printed rows of small fans"}});
      return curve;
    }
    if (!fan_.curve_from)
      inputs_.note({"fan.curve_from", "data sheet", "", "not said; as good as one",
                    data::Basis{data::Standing::practice, "common practice, no source"}});
    return draught::curve_from_sheet({.kind = label_.kind,
                                      .speed = taken_.speed,
                                      .points = sheet_points(fan_),
                                      .thickness = thickness_,
                                      .from = fan_.curve_from ? *fan_.curve_from : std::string(),
                                      .within = inputs_.known(fan_.curve_within)});
  }
  double factor(std::string_view key, const Band<double>& band, bool tails, const draught::CurveBasis& basis) {
    const Assumed why = because("spread of the curve", {basis.standing, basis.sentence});
    return tails ? inputs_.scattered(key, band, why) : inputs_.taken(key, band, why);
  }
  draught::FanCurve curve_with_spread() {
    const draught::FanCurve curve = curve_as_told();
    const draught::CurveBasis& basis = curve.basis();
    const double pressure = factor("tuned.fan_pressure", basis.pressure_left, basis.tails, basis);
    double flow = std::pow(pressure, basis.together);
    if (basis.flow_left.low < basis.flow_left.high)
      flow *= factor("fan.flow_factor", basis.flow_left, basis.tails, basis);
    if (pressure == 1.0 && flow == 1.0) return curve;
    return draught::stretched(curve, {.pressure = pressure, .flow = flow});
  }
  draught::MotorLaw motor_of() {
    const data::FanVoltage& usual = data::fan_voltage();
    const auto starts = inputs_.known(fan_.starts_at);
    if (!starts)
      inputs_.note({"fan.starts_at", format(usual.starts.value * label_.rated_voltage, "V"),
                    format(usual.starts.low * label_.rated_voltage, "V") + " .. " +
                        format(usual.starts.high * label_.rated_voltage, "V"),
                    "usual share of the rated voltage", usual.basis});
    std::optional<double> zero;
    if (!fan_.speed_at)
      zero = inputs_.taken(
          "fan.zero_speed", usual.zero_speed,
          because("share of the rated voltage at which its speed, carried on straight, is nothing", usual.basis));
    return draught::motor_law({label_.rated_voltage, taken_.speed, starts, measured_speeds(fan_)}, zero);
  }

  const description::part::FanPart& fan_;
  bool load_;
  Inputs& inputs_;
  draught::FanLabel label_;
  draught::FilledLabel taken_{};
  std::optional<Length> thickness_{};
  std::optional<Current> current_{};
  bool inside_ = false;
};
}  // namespace

Outcome<SolvedFan> solve_fan(const description::Build& build, Inputs& inputs) {
  return attempt<SolvedFan>([&](Missing& missing) -> std::optional<SolvedFan> {
    const auto label = label_of(build, inputs, missing);
    if (!label) return std::nullopt;
    if (const auto& curve = build.fan.curve; curve && curve.points.front().x > 0.0 * m3_per_s)
      throw Refused("fan.curve",
                    "the fan's curve begins at " +
                        format(curve.points.front().x,
                               choose_unit(curve.points.front().x, curve.x_unit, UnitSystem::as_written)) +
                        ": what it develops with nothing flowing is not told",
                    "put the pressure with the fan's opening shut first into `fan.curve`, at no flow");
    return FanSolver(build, inputs, *label).solve();
  });
}
}  // namespace lumwright::model
