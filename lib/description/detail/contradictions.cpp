#include "description/detail/contradictions.hpp"
#include "description/written.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::description {
namespace {
// Points at the key that is more likely wrong, and names the line of the other.
class Finder {
 public:
  std::vector<input::Fault> faults;

  void say(std::string_view key, input::Position at, std::string message, std::string help = "") {
    faults.push_back({at, std::string(key), std::move(message), std::move(help)});
  }
  enum class Equal { allowed, refused };
  template <class Q>
  struct Side {
    std::string_view name;  // "the tube's length"
    const Given<Q>& given;
    double share = 1.0;
  };
  /// Spreads count in favour: only what no value inside them could satisfy is a contradiction.
  template <class Q>
  void keep_below(std::string_view key, const Given<Q>& small, Side<Q> large, Equal equal) {
    if (!small || !large.given) return;
    using T = QuantityTraits<Q>;
    const double least = T::to_si(small.band->low), most = large.share * T::to_si(large.given.band->high);
    if (equal == Equal::allowed ? least <= most : least < most) return;
    say(key, small.at,
        fmt::format("expected {} {}, {} on line {}, got '{}'", equal == Equal::allowed ? "no more than" : "less than",
                    large.name, written(large.given), large.given.at.line, written(small)));
  }
};

void adapter(const part::Adapter& adapter, Finder& finder) {
  const part::AdapterTube& tube = adapter.tube;
  const part::Flange& flange = adapter.flange;
  using Equal = Finder::Equal;
  finder.keep_below("adapter.tube.engaged", tube.engaged, {"the tube's length", tube.length}, Equal::allowed);
  finder.keep_below("adapter.tube.wall", tube.wall, {"half of the tube's outside", tube.outside, 0.5}, Equal::refused);
  finder.keep_below("adapter.tube.outside", tube.outside, {"the flange's outside", flange.outside}, Equal::refused);
  finder.keep_below("adapter.flange.holes.pitch_circle", flange.holes.pitch_circle,
                    {"the flange's outside", flange.outside}, Equal::refused);
}
void engine(const part::Engine& engine, Finder& finder) {
  const part::Boiler& boiler = engine.boiler;
  finder.keep_below("engine.boiler.own_blower_from", boiler.own_blower_from, {"the working pressure", boiler.working},
                    Finder::Equal::refused);
  finder.keep_below("engine.boiler.water", boiler.water, {"what the boiler holds", boiler.volume},
                    Finder::Equal::refused);
  finder.keep_below("engine.cylinders.blast_nozzle", engine.cylinders.blast_nozzle,
                    {"the cylinder bore", engine.cylinders.bore}, Finder::Equal::refused);
}
void fan(const part::FanPart& fan, Finder& finder) {
  finder.keep_below("fan.starts_at", fan.starts_at, {"the rated voltage", fan.rated.voltage}, Finder::Equal::allowed);
  finder.keep_below("fan.rated.voltage", fan.rated.voltage, {"the most that the fan stands", fan.voltage_most},
                    Finder::Equal::allowed);
  if (!fan.curve) {
    constexpr const char* needs = "this needs `fan.curve`, which it speaks of";
    if (fan.curve_from) finder.say("fan.curve_from", fan.curve_from.at, needs);
    if (fan.curve_within) finder.say("fan.curve_within", fan.curve_within.at, needs);
    return;
  }
  const Pressure first = fan.curve.points.front().y, last = fan.curve.points.back().y;
  const auto text = [&](Pressure p) { return written(AnyQuantity(p), fan.curve.y_unit); };
  if (last > first)
    finder.say(
        "fan.curve", fan.curve.at,
        fmt::format("expected a pressure that falls towards free air, got {} at the first point and {} at the last",
                    text(first), text(last)),
        "the first member of each pair is the flow, the second the pressure");
  else if (std::all_of(fan.curve.points.begin(), fan.curve.points.end(),
                       [](const auto& point) { return point.y == 0.0 * Pa; }))
    finder.say("fan.curve", fan.curve.at, "expected a pressure above 0 somewhere, got none");
}
void control(const part::SupplyPart& supply, Finder& finder) {
  const part::ControlPart& control = supply.control;
  const std::string kind = control.kind ? *control.kind : "";
  const bool pwm = kind == "chopped supply", sets_voltage = kind == "lower output" || kind == "series regulator";
  if (pwm && !control.duty)
    finder.say("supply.control.kind", control.kind.at, "a chopped supply needs `duty`", "as in `duty: 60 %`");
  if (sets_voltage && !control.output)
    finder.say("supply.control.kind", control.kind.at, fmt::format("a {} needs `output`", kind), "as in `output: 9 V`");
  if (control.duty && !pwm)
    finder.say("supply.control.duty", control.duty.at, "this has a meaning only with `kind: chopped supply`");
  if (control.output && !sets_voltage)
    finder.say("supply.control.output", control.output.at,
               "this has a meaning only with `kind: lower output` or `kind: series regulator`");
  finder.keep_below("supply.control.output", control.output, {"the step-up's output", supply.step_up.output},
                    Finder::Equal::allowed);
  finder.keep_below("supply.step_up.input_min", supply.step_up.input_min,
                    {"the step-up's output", supply.step_up.output}, Finder::Equal::refused);
}
void load(const part::MeasuredLoad& load, Finder& finder) {
  if (load.power && !load.voltage)
    finder.say("load.power", load.power.at, "this needs `load.voltage`, the voltage at which it was measured");
  if (load.voltage && !load.power)
    finder.say("load.voltage", load.voltage.at, "this needs `load.power`, the power that was measured");
}
}  // namespace

std::vector<input::Fault> contradictions(const Build& build) {
  Finder finder;
  engine(build.engine, finder);
  adapter(build.adapter, finder);
  fan(build.fan, finder);
  control(build.supply, finder);
  load(build.load, finder);
  return std::move(finder.faults);
}
}  // namespace lumwright::description
