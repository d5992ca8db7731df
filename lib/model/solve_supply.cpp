#include "data/cells.hpp"
#include "data/speed_control.hpp"
#include "model/detail/supply_wires.hpp"
#include "model/solved.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_supply.hpp"
#include "model/solving.hpp"
#include "power/cell.hpp"
#include "power/step_up.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::model {
namespace {
using Missing = std::vector<std::string>;

std::optional<power::FanLaw> fan_law(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan,
                                     Missing& missing) {
  const auto& electrics = data::fan_electrics();
  const double exponent = inputs.taken("fan.current_exponent", electrics.current_exponent,
                                       because("how current rises with voltage: 1 in step, 2 with its square", electrics.basis));
  const auto power = inputs.known(build.load.power);
  const auto voltage = inputs.known(build.load.voltage);
  if (power && voltage) return power::FanLaw{*voltage, *power / *voltage, exponent};
  if (!fan) {
    missing.insert(missing.end(), fan.missing.begin(), fan.missing.end());
    if (fan.missing.empty()) note_missing(build.load.power, missing);
    return std::nullopt;
  }
  if (!fan->current) {
    note_missing(build.fan.rated.current, missing);
    return std::nullopt;
  }
  return power::FanLaw{fan->label.rated_voltage, *fan->current, exponent};
}

power::Control control_of(const description::Build& build, Inputs& inputs) {
  const std::string kind = inputs.usual(build.supply.control.kind);
  power::Control control = power::uncontrolled();
  if (kind == "chopped supply")
    control = {power::Control::Kind::chopped_supply, inputs.known(build.supply.control.duty).value(), control.voltage};
  if (kind == "lower output" || kind == "series regulator")
    control = {kind == "lower output" ? power::Control::Kind::lower_output : power::Control::Kind::series_regulator,
               1.0, inputs.known(build.supply.control.output).value()};
  return control;
}

bool has_step_up(const description::part::StepUpPart& part) {
  return part.module || part.output || part.efficiency || part.input_limit || part.input_min || part.input_most ||
         part.output_most;
}

power::StepUp step_up(const description::Build& build, Inputs& inputs, Voltage rated,
                      std::optional<data::StepUpRow>& module) {
  const description::part::StepUpPart& part = build.supply.step_up;
  std::string name = part.module ? *part.module : std::string();
  if (name.empty() && !part.efficiency) {
    name = "small 1.2 MHz";
    inputs.note({"supply.step_up.module", name, "", "the usual small one",
                 data::Basis{data::Standing::practice, "common practice, no source"}});
  }
  if (!name.empty())
    module = data::step_up(name);
  else
    inputs.note({"supply.step_up.module", "not known", "", "its diode as most have it",
                 data::Basis{data::Standing::practice, "common practice, no source"}});
  const Voltage output = inputs.otherwise(
      part.output, exactly(rated),
      because("set to the fan's rated voltage", data::Basis{data::Standing::practice, "common practice, no source"}));
  const auto measured_min = inputs.known(part.input_min);
  Voltage least = measured_min.value_or(0.0 * V);
  if (!measured_min && module) {
    least = inputs.otherwise(part.input_min, exactly(power::real_minimum(*module, std::nullopt)),
                             because("below this, step-ups of this kind misbehave", module->basis));
  } else if (!measured_min) {
    least = inputs.otherwise(
        part.input_min, Band<Voltage>{2.5 * V, 0.9 * V, 4.0 * V},
        because("least input of small step-ups", data::Basis{data::Standing::secondary, "tests of hobby step-ups"}));
  }
  power::StepUp made = module ? power::step_up_of(*module, output, least)
                              : power::StepUp{.output = output,
                                              .efficiency = 1.0,
                                              .passing_drop = data::unknown_step_up().diode_drop,
                                              .input_min = least,
                                              .runs_away = false};
  if (!part.efficiency)
    inputs.note({"supply.step_up.efficiency", "by its load", "", "as one of this kind was measured", module->basis});
  if (part.efficiency.share)
    made.efficiency = *part.efficiency.share;
  else if (part.efficiency) {
    std::vector<power::EfficiencyPoint> points;
    for (const auto& p : part.efficiency.points) points.push_back({p.input, p.output, p.share});
    made.efficiency = points;
  }
  return made;
}

void must_stand(const data::ChemistryRow& cells, Temperature t) {
  const Temperature coldest = cells.temperatures.front(), hottest = cells.temperatures.back();
  if (t >= coldest && t <= hottest) return;
  throw Refused("power.cells",
                fmt::format("{} cells do not work at {}: nothing is known of them beyond {} to {}", cells.id,
                            format(t, "degC"), format(coldest, "degC"), format(hottest, "degC")),
                "keep the pack out of frost and heat, and write how warm it is as `supply.pack.temperature`");
}

/// As written, else what lying has left of a full charge, else usual.
double charged_of(const description::part::PackPart& part, Inputs& inputs, const data::CellRow& cell) {
  if (part.charged || !part.days_since_charge) return inputs.usual(part.charged);
  const Duration lain = static_cast<double>(*part.days_since_charge) * 24.0 * hour;
  const auto kept = [&](double loss) { return power::charge_kept(cell.chemistry, loss, lain, degC(20)); };
  const Band<double>& loss = cell.chemistry.loss_per_month;
  return inputs.otherwise(part.charged, {kept(loss.value), kept(loss.high), kept(loss.low)},
                          because("what lying since it was charged has left", cell.chemistry.basis));
}

power::PackInput pack_input(const description::Build& build, Inputs& inputs, InTheWay outside) {
  const description::part::PackPart& part = build.supply.pack;
  const data::CellRow& cell = data::cell(*part.cell);
  const int series = inputs.count(part.series, 1, "one cell or block");
  const data::ConditionRow& condition = data::condition(inputs.usual(part.condition));
  const auto note = [&](const char* why) { return because(why, cell.basis); };
  if (cell.bank && series != 1)
    throw Refused("power.bank", fmt::format("{} power banks in series are written: a bank stands alone", series),
                  "write `supply.pack.series: 1`");
  const Temperature air = inputs.usual(build.place.air);
  return power::PackInput{
      .cell = cell,
      .series = series,
      .parallel = inputs.count(part.parallel, 1, "one string of cells"),
      .capacity = inputs.otherwise(part.capacity, cell.capacity, note("usual for this cell")),
      .capacity_factor = inputs.taken("supply.pack.capacity_factor", condition.capacity,
                                      because("what the condition leaves of the capacity", condition.basis)),
      .resistance_factor = part.resistance
                               ? 1.0
                               : inputs.taken("supply.pack.resistance_factor", condition.resistance,
                                              because("what the condition does to the resistance", condition.basis)),
      .charged = charged_of(part, inputs, cell),
      .rate_exponent = inputs.otherwise(part.rate_exponent, cell.rate_exponent,
                                        note("how capacity shrinks as the current rises: 1 not at all")),
      .temperature =
          inputs.otherwise(part.temperature, exactly(air),
                           because("as the air", data::Basis{data::Standing::practice, "common practice, no source"})),
      .measured = inputs.known(part.resistance),
      .contacts = contacts_of(part, inputs, cell, series),
      .outside = outside.resistance,
      .drop = outside.drop,
      .cell_resistance = std::nullopt,
      .weakest = std::nullopt,
  };
}

std::optional<Voltage> stop_voltage(const description::Build& build, Inputs& inputs, const data::CellRow& cell,
                                    int series) {
  if (auto stop = inputs.known(build.supply.stop_at)) return stop;
  if (cell.bank) return std::nullopt;  // a power bank switches itself off
  const Voltage usual = cell.chemistry.end * static_cast<double>(series * cell.cells_inside);
  return inputs.otherwise(build.supply.stop_at, exactly(usual),
                          because("end of discharge of this chemistry", cell.chemistry.basis));
}

// Cells lose their charge by themselves in less, which the model leaves out. Common practice, no source.
constexpr Duration longest_run = 10.0 * 365.25 * 24.0 * hour;
void check_run(const power::Run& run, std::optional<Voltage> stop, double charged) {
  if (!run.starts)
    throw Refused("power.light_ups",
                  "the pack, " + (charged < 1.0 ? percent(charged) + " charged" : std::string("even when charged")) +
                      ", cannot drive this load: it sinks to " + format(run.start.voltage, "V") +
                      (stop && run.start.voltage < *stop ? ", the stop is at " + format(*stop, "V") : ""),
                  std::string(charged < 1.0 ? "charge the pack first; if that is not enough, " : "") +
                      "more or better cells, or a fan that asks less");
  if (run.runtime > longest_run)
    throw Refused(
        "power.light_ups",
        "the load, " + format(run.start.current, "mA") + " at the pack, is too small for a fan: it would run for years",
        "read the fan's volts and amps once more");
}

// Not the state at the socket's open voltage: the supply answers to what is left behind leads and fuse.
power::SupplyState state_at(const power::FanSupply& feed, const power::Sample& sample) {
  return power::supply_state(feed, sample.voltage);
}

// What the step-up stands: as written, else as its kind does.
void add_limits(SolvedSupply& s, const description::Build& build, Inputs& inputs) {
  const description::part::StepUpPart& part = build.supply.step_up;
  s.input_limit = inputs.known(part.input_limit);
  s.input_most = inputs.known(part.input_most);
  s.output_most = inputs.known(part.output_most);
  if (!s.module) return;
  if (!s.input_limit) s.input_limit = s.module->input_limit;
  if (!s.input_most) s.input_most = s.module->input_most;
  if (!s.output_most) s.output_most = s.module->output_most;
}

/// One cell of the string that gives less than its fellows and has more resistance than they.
power::Pack pack_of(const power::PackInput& input, Inputs& inputs) {
  power::Pack pack = power::make_pack(input);
  const Voltage lost = inputs.hidden<Voltage>("fault.cell_voltage_lost");
  if (lost <= 0.0 * V) return pack;
  for (Voltage& v : pack.curve.voltage) v = std::max(v - lost, 0.05 * v);
  const Resistance more = inputs.hidden<Resistance>("fault.cell_resistance");
  pack.inside += more;
  if (pack.inside_at_once) *pack.inside_at_once += more;
  return pack;
}

void add_weak_cell(SolvedSupply& s, const data::ConditionRow& condition) {
  const data::CellRow& cell = s.pack_input.cell;
  s.weakest = condition.weakest.value;
  const bool matters = !cell.chemistry.reversed_soc.empty() || cell.chemistry.spoilt_below_end;
  if (s.pack_input.series < 2 || cell.cells_inside > 1 || !matters) return;
  power::PackInput uneven = s.pack_input;
  uneven.weakest = condition.weakest.value;
  s.with_weak_cell = power::discharge(power::make_pack(uneven), s.feed, s.stop_at);
}
}  // namespace

Outcome<SolvedSupply> solve_supply(const description::Build& build, Inputs& inputs, const Outcome<SolvedFan>& fan) {
  return attempt<SolvedSupply>([&](Missing& missing) -> std::optional<SolvedSupply> {
    note_missing(build.supply.pack.cell, missing);
    const auto law = fan_law(build, inputs, fan, missing);
    if (!law || !build.supply.pack.cell) return std::nullopt;
    const Resistance leads = leads_of(build, inputs);
    InTheWay outside = in_the_way(build, inputs);
    outside.resistance += leads + fuse_of(build, inputs) + inputs.hidden<Resistance>("fault.contact");
    const power::PackInput input = pack_input(build, inputs, outside);
    must_stand(input.cell.chemistry, input.temperature);
    std::optional<data::StepUpRow> module;
    power::FanSupply feed{.fan = *law,
                          .control = control_of(build, inputs),
                          .step_up = std::nullopt,
                          .motor = data::motor_shares(),
                          .regulator_dropout = data::fan_electrics().regulator_dropout};
    if (has_step_up(build.supply.step_up)) feed.step_up = step_up(build, inputs, law->rated_voltage, module);
    const power::Pack pack = pack_of(input, inputs);
    const auto stop = stop_voltage(build, inputs, input.cell, input.series);
    const power::Run run = power::discharge(pack, feed, stop);
    check_run(run, stop, input.charged);
    SolvedSupply solved{.pack_input = input,
                        .pack = pack,
                        .feed = feed,
                        .stop_at = stop,
                        .run = run,
                        .start = state_at(feed, run.start),
                        .end = std::nullopt,
                        .leads = leads,
                        .module = module,
                        .input_limit = std::nullopt,
                        .input_most = std::nullopt,
                        .output_most = std::nullopt,
                        .with_weak_cell = std::nullopt,
                        .weakest = 1.0};
    add_limits(solved, build, inputs);
    if (run.runtime > 0.0 * s) {
      try {
        solved.end = state_at(feed, run.end);
      } catch (const ModelError&) {  // at the very end of a collapsing pack nothing runs any more
      }
    }
    add_weak_cell(solved, data::condition(inputs.usual(build.supply.pack.condition)));
    return solved;
  });
}
}  // namespace lumwright::model
