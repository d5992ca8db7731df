#include "prove/detail/predict.hpp"
#include "data/fan_frames.hpp"
#include "draught/duty.hpp"
#include "draught/orifice.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "numeric/root.hpp"
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <stdexcept>

namespace lumwright::prove {
namespace {
bool is_chopped(const model::Solved& solved) {
  return solved.supply->feed.control.kind == power::Control::Kind::chopped_supply;
}
bool cells_in_reach(const model::Solved& solved) {
  const power::PackInput& pack = solved.supply->pack_input;
  return !pack.cell.bank && pack.cell.cells_inside == 1 && pack.series > 1;
}

/// One unit, reading by reading.
class Instruments {
 public:
  explicit Instruments(const PredictionOf& of) : of_(of), solved_(of.solved) {}
  double read(std::string_view id) const;

 private:
  using Show = double (Instruments::*)() const;
  static const std::pair<std::string_view, Show> shows[];

  bool stands() const { return of_.supposed.stands(); }
  /// The share of its pressure with which a fan that is the wrong way round blows back; below zero.
  double way() const { return of_.supposed.blows() ? -of_.supposed.added("fan.back_flow") : 1.0; }
  const draught::Duty* cold() const {
    return solved_.draught && solved_.draught->cold ? &*solved_.draught->cold : nullptr;
  }
  double suction_si(Pressure running) const { return stands() ? 0.0 : way() * in(running, Pa); }
  draught::RunningFan fan() const { return draught::running(solved_.fan->curve, solved_.draught->fan_speed); }
  bool steady() const { return solved_.supply && !is_chopped(solved_); }
  const power::Sample& start() const { return solved_.supply->run.start; }
  /// While on.
  Current flows() const {
    const Current full = (start().open_circuit - start().voltage) / solved_.supply->pack.resistance();
    return stands() ? of_.supposed.added("fan.idle") * full : full;
  }

  double paper() const { return cold() ? suction_si(cold()->flow.firebox_suction) : not_predicted; }
  double pack_rest() const { return solved_.supply ? in(start().open_circuit, V) : not_predicted; }
  double pack_loaded() const {
    return steady() ? in(start().open_circuit - flows() * solved_.supply->pack.resistance(), V) : not_predicted;
  }
  double current() const {
    if (!solved_.supply) return not_predicted;
    return in(start().current, A) * (stands() ? of_.supposed.added("fan.idle") : 1.0);
  }
  double fan_voltage() const { return steady() ? in(solved_.supply->start.fan_voltage, V) : not_predicted; }
  double suction() const { return cold() ? suction_si(cold()->flow.smokebox_suction) : not_predicted; }
  double shut_off() const {
    if (!cold()) return not_predicted;
    const Area leak = of_.supposed.added("fault.box_leak") * m2;
    return suction_si(capped_suction(fan(), leak, cold()->flow.fan_density));
  }
  double suction_packed() const {
    if (!cold()) return not_predicted;
    const model::SolvedDraught& d = *solved_.draught;
    if (!d.cold_path.annulus || stands()) return suction();
    draught::GasPath packed = d.cold_path;
    packed.annulus.reset();
    const draught::Duty duty =
        draught::solve_duty(draught::GasNetwork(packed, d.ambient), draught::unlit(d.ambient), fan());
    return suction_si(duty.flow.smokebox_suction);
  }
  double air_speed() const {
    if (!cold() || !of_.outlet || of_.supposed.blows()) return not_predicted;
    return stands() ? 0.0 : in(cold()->flow.fan_volume / *of_.outlet, m_per_s);
  }
  double cells() const {
    if (!steady() || !cells_in_reach(solved_)) return not_predicted;
    const power::PackInput& pack = solved_.supply->pack_input;
    const double each = in(start().open_circuit, V) / pack.series;
    return each * data::uneven_cells() * of_.unevenness + of_.supposed.added("fault.cell_voltage_lost") +
           of_.supposed.added("fault.cell_resistance") * in(flows(), A);
  }
  double cells_loaded() const {
    if (!steady() || !cells_in_reach(solved_)) return not_predicted;
    return in(start().open_circuit - flows() * cells_alone(*solved_.supply), V);
  }
  double fan_speed() const {
    if (!solved_.draught || !solved_.draught->cold) return not_predicted;
    return stands() ? 0.0 : in(solved_.draught->fan_speed, hertz);
  }
  double gas() const;

  const PredictionOf& of_;
  const model::Solved& solved_;
};
const std::pair<std::string_view, Instruments::Show> Instruments::shows[] = {
    {"paper", &Instruments::paper},
    {"pack_rest", &Instruments::pack_rest},
    {"pack_loaded", &Instruments::pack_loaded},
    {"current", &Instruments::current},
    {"fan_voltage", &Instruments::fan_voltage},
    {"suction", &Instruments::suction},
    {"shut_off", &Instruments::shut_off},
    {"suction_packed", &Instruments::suction_packed},
    {"air_speed", &Instruments::air_speed},
    {"cells", &Instruments::cells},
    {"cells_loaded", &Instruments::cells_loaded},
    {"fan_speed", &Instruments::fan_speed},
    {"gas", &Instruments::gas}};

double Instruments::read(std::string_view id) const {
  for (const auto& [name, show] : shows)
    if (name == id) return (this->*show)();
  throw std::logic_error("proofs.yaml: nothing predicts the reading " + std::string(id));
}
/// Straight between the instants of the raise; its end where steam is up before. No fire burns on a fan that stands or
/// blows back.
double Instruments::gas() const {
  if (stands() || of_.supposed.blows() || !solved_.raise) return not_predicted;
  const auto& series = solved_.raise->raise.series;
  const Duration at = data::gas_is_read_after();
  const boiler::RaiseInstant* before = nullptr;
  for (const boiler::RaiseInstant& instant : series) {
    if (!instant.path) continue;
    const double here = in(above_absolute_zero(instant.path->fan_gas), K);
    if (instant.time >= at && before != nullptr && instant.time > before->time) {
      const double first = in(above_absolute_zero(before->path->fan_gas), K);
      return first + (here - first) * in(at - before->time, instant.time - before->time);
    }
    before = &instant;
  }
  return before != nullptr ? in(above_absolute_zero(before->path->fan_gas), K) : not_predicted;
}

std::string lacks(const std::vector<std::string>& keys, const std::string& impossible) {
  if (!keys.empty()) return fmt::format("write {}", fmt::join(keys, ", "));
  return impossible.empty() ? "it cannot be worked out from this description" : impossible;
}
}  // namespace

std::optional<Area> outlet_of(const model::Solved& solved, std::optional<Area> measured) {
  if (measured) return measured;
  if (!solved.fan || solved.fan->label.frame <= 0.0 * mm) return std::nullopt;
  const model::SolvedFan& fan = *solved.fan;
  const auto near = [](Length a, Length b) { return a - b < 2.0 * mm && b - a < 2.0 * mm; };
  if (fan.label.kind == data::FanKind::centrifugal) {
    for (const data::BlowerFrame& row : data::blower_frames())
      if (row.outlet_width && row.outlet_height && fan.thickness && near(row.width, fan.label.frame) &&
          near(row.thickness, *fan.thickness))
        return *row.outlet_width * *row.outlet_height;
    return std::nullopt;
  }
  const double open = 1.0 - data::hub_share() * data::hub_share();
  if (solved.build.fan.holes.opening) return open * circle(*solved.build.fan.holes.opening);
  for (const data::FanFrame& row : data::fan_frames())
    if (near(row.frame, fan.label.frame)) return open * circle(row.opening);
  return std::nullopt;
}

Pressure capped_suction(const draught::RunningFan& fan, Area leak, Density density) {
  const auto holds = [&](VolumeFlow flow) { return draught::static_pressure(fan, flow, density); };
  if (leak <= 0.0 * m2) return holds(0.0 * m3_per_s);
  const double cd = draught::discharge_coefficient("sharp hole").value;
  const auto over = [&](double flow) {
    const VolumeFlow through = flow * m3_per_s;
    return in(holds(through) - draught::orifice_drop(cd, leak, density, through * density), Pa);
  };
  return holds(numeric::bracketed_root(over, 0.0, in(fan.free_air, m3_per_s), "flow through the leak", 30) * m3_per_s);
}

std::vector<double> predicted(const PredictionOf& of) {
  const Instruments instruments(of);
  std::vector<double> all;
  for (const data::ProofRow& row : data::proofs()) all.push_back(instruments.read(row.id));
  return all;
}

std::string why_not_predicted(const data::ProofRow& row, const PredictionOf& planned) {
  const model::Solved& solved = planned.solved;
  const bool electric =
      row.id.starts_with("pack_") || row.id == "current" || row.id == "fan_voltage" || row.id.starts_with("cells");
  if (electric && !solved.supply) return lacks(solved.supply.missing, solved.supply.impossible);
  if (electric && is_chopped(solved)) return "the lead is chopped (supply.control): a meter does not read it truly";
  if (electric) return "the cells of this pack cannot be got at one by one (supply.pack.cell)";
  if (!solved.draught) return lacks(solved.draught.missing, solved.draught.impossible);
  if (!solved.draught->cold) return "the air was measured (draught.air_flow): describe the fan in its place";
  if (row.id == "air_speed") return "what the fan's outlet measures is not known: write `outlet` into the readings";
  return lacks(solved.raise.missing, solved.raise.impossible);
}
}  // namespace lumwright::prove
