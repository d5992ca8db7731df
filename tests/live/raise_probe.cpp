// Tells raise_reference.py what a description means and what comes of it: every number that the raise was worked out
// from, and the answers, as one JSON object in SI. Use: raise_probe FILE
#include "data/air.hpp"
#include "data/species.hpp"
#include "description/reader.hpp"
#include "fire/heating_value.hpp"
#include "model/solved.hpp"
#include "stopwatch.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_light_ups.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include <fstream>
#include <iostream>
#include <iterator>
#include <nlohmann/json.hpp>

namespace {
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::fire;
using namespace lumwright::power;
using namespace lumwright::boiler;
using namespace lumwright::description;
using namespace lumwright::model;
using Json = nlohmann::json;

template <class Q>
double si_of(const Q& q) {
  return QuantityTraits<Q>::to_si(q);
}
template <class Q>
Json si_of(const std::optional<Q>& q) {
  return q ? Json(si_of(*q)) : Json();
}
template <class Items, class F>
Json list(const Items& items, F each) {
  Json out = Json::array();
  for (const auto& item : items) out.push_back(each(item));
  return out;
}
template <class Q>
Json numbers(const std::vector<Q>& items) {
  return list(items, [](const Q& q) { return si_of(q); });
}

Json inputs(const Inputs& all) {
  Json out;
  for (const auto& [key, input] : all.all()) out[key] = input.value.si;
  return out;
}

Json matter() {
  Json species;
  for (const data::SpeciesRow& row : data::species())
    species[row.formula] = {{"mass", row.relative_mass}, {"low", row.low}, {"high", row.high}};
  Json air = Json::array();
  for (const data::AirHeatCapacity& row : data::air_heat_capacities())
    air.push_back({si_of(row.temperature), si_of(row.value)});
  const data::DryAir& dry = data::dry_air();
  return {{"species", species},
          {"air_heat_capacity", air},
          {"oxygen_share", dry.oxygen_share},
          {"rest_mass", dry.rest_relative_mass}};
}

Json fire(const FireInput& f) {
  return {{"carbon", f.fuel.carbon},
          {"hydrogen", f.fuel.hydrogen},
          {"oxygen", f.fuel.oxygen},
          {"nitrogen", f.fuel.nitrogen},
          {"sulphur", f.fuel.sulphur},
          {"moisture", f.fuel.moisture},
          {"ash", f.fuel.ash},
          {"net_heat", si_of(f.net_heat)},
          {"analysis_heat", si_of(net_heat(f.fuel))},
          {"bed_depth", si_of(f.depth.bed)},
          {"burn_depth", si_of(f.depth.burn)},
          {"ash_left", f.ash_left},
          {"monoxide_loss", f.monoxide_loss},
          {"bed_mass", si_of(f.bed)},
          {"bed_capacity", si_of(f.bed_capacity)},
          {"glow", si_of(f.glow)},
          {"bed_exit", si_of(f.bed_exit)},
          {"lit_at_start", f.kindling.lit_at_start},
          {"kindling", si_of(f.kindling.duration)}};
}

Json outside(const OutsideLoss& loss) {
  if (const auto* conductance = std::get_if<ThermalConductance>(&loss)) return si_of(*conductance);
  const auto& plates = std::get<Plates>(loss);
  return {{"surface", si_of(plates.surface)}, {"bare", si_of(plates.bare)}, {"lagging", si_of(plates.lagging)}};
}
Json boiler(const Boiler& b) {
  return {{"water", si_of(b.water)},
          {"metal", si_of(b.metal)},
          {"surface", si_of(b.firebox.surface)},
          {"emissivity", b.firebox.emissivity},
          {"convection", si_of(b.firebox.convection)},
          {"tubes", b.tubes.count},
          {"tube_bore", si_of(b.tubes.bore)},
          {"tube_length", si_of(b.tubes.length)},
          {"loss", outside(b.outside)},
          {"heat_factor", b.heat_factor}};
}

Json hole(const std::optional<Hole>& h) {
  return h ? Json{{"area", si_of(h->area)}, {"discharge", h->discharge}} : Json();
}
Json tube(const Tube& t) {
  return {{"bore", si_of(t.bore)}, {"length", si_of(t.length)}, {"roughness", si_of(t.roughness)}};
}
const char* word(Inlet inlet) {
  return inlet == Inlet::square ? "square" : inlet == Inlet::projecting ? "projecting" : "rounded";
}
Json adapter(const Adapter& a) {
  return {{"tube", tube(a.tube)},
          {"inlet", word(a.inlet.kind)},
          {"edge", si_of(a.inlet.wall)},
          {"projection", si_of(a.inlet.projection)},
          {"radius", si_of(a.inlet.radius)},
          {"fittings", a.fittings},
          {"rise", si_of(a.rise)},
          {"outside", si_of(a.wall->outside)},
          {"cooled", si_of(a.wall->length)},
          {"emissivity", a.wall->emissivity}};
}
Json box(const std::optional<Box>& b) {
  if (!b) return {};
  return {{"bore", si_of(b->bore)},
          {"fan_opening", si_of(b->depth.fan_opening)},
          {"distance", si_of(b->depth.distance)},
          {"rise", si_of(b->rise)},
          {"height", si_of(b->wall->height)},
          {"area", si_of(b->wall->area)},
          {"emissivity", b->wall->emissivity},
          {"stirring", b->wall->stirring}};
}
Json ring(const std::optional<Annulus>& a) {
  if (!a) return {};
  return {{"mean_diameter", si_of(a->mean_diameter)},
          {"gap", si_of(a->radial_gap)},
          {"engaged", si_of(a->engaged)},
          {"eccentricity", a->eccentricity}};
}
Json path(const GasPath& p) {
  return {{"air_entry", hole(p.air_entry)},
          {"grate", si_of(p.grate->area)},
          {"grate_open", p.grate->open_share},
          {"particle", si_of(p.bed->particle)},
          {"sphericity", p.bed->sphericity},
          {"voidage", p.bed->voidage},
          {"bed_depth", si_of(p.bed->depth)},
          {"past_bed", std::get<LeakShare>(*p.past_bed).share},
          {"smokebox_leak", std::get<LeakShare>(*p.smokebox).share},
          {"tube", tube(p.tubes->each)},
          {"firebox", si_of(p.tubes->firebox)},
          {"firebox_height", si_of(p.tubes->above_bed)},
          {"smokebox_height", si_of(p.smokebox_rise)},
          {"blast_pipe_gap", si_of(p.blast_pipe_gap)},
          {"ring", ring(p.annulus)},
          {"adapter", adapter(p.adapter.value())},
          {"box", box(p.box)},
          {"bleed", hole(p.bleed)}};
}

Json fan(const SolvedFan& f) {
  const MotorLaw& motor = f.motor.value();
  return {{"points", list(f.curve.points(),
                          [](const FanPoint& p) {
                            return Json{si_of(p.flow), si_of(p.pressure)};
                          })},
          {"speed", si_of(f.curve.speed())},
          {"speed_line", list(motor.line,
                              [](const SpeedPoint& p) {
                                return Json{si_of(p.voltage), si_of(p.speed)};
                              })},
          {"rated_voltage", si_of(motor.rated_voltage)},
          {"stops", si_of(motor.stops.value)}};
}

Json step_up(const std::optional<StepUp>& made) {
  if (!made) return {};
  const auto& parts = std::get<StepUpLosses>(made->efficiency);
  return {{"output", si_of(made->output)},
          {"input_min", si_of(made->input_min)},
          {"switch", si_of(parts.switch_resistance)},
          {"coil", si_of(parts.coil_resistance)},
          {"diode", si_of(parts.diode_drop)},
          {"switching", si_of(parts.switching_time) * si_of(parts.frequency)},
          {"quiescent", si_of(parts.quiescent)}};
}
Json battery(const SolvedSupply& s) {
  const data::MotorShares& motor = s.feed.motor;
  const bool chopped = s.feed.control.kind == Control::Kind::chopped_supply;
  if (!chopped && s.feed.control.kind != Control::Kind::none)
    throw std::runtime_error("this probe knows no other control than a chopped lead");
  return {
      {"series", s.pack_input.series},
      {"cells_inside", s.pack_input.cell.cells_inside},
      {"soc", s.pack_input.cell.soc},
      {"ocv", numbers(s.pack_input.cell.ocv)},
      {"resistance", si_of(s.pack.resistance())},
      {"full", si_of(s.pack.full)},
      {"drawn", si_of(s.pack.drawn)},
      {"rated_current", si_of(s.pack.rated_current)},
      {"rate_exponent", s.pack.rate_exponent},
      {"stop_at", si_of(s.stop_at)},
      {"fan_voltage", si_of(s.feed.fan.rated_voltage)},
      {"fan_current", si_of(s.feed.fan.rated_current)},
      {"current_exponent", s.feed.fan.current_exponent},
      {"duty", chopped ? Json(s.feed.control.duty) : Json()},
      {"motor", {{"winding", motor.winding}, {"back_emf", motor.back_emf}, {"idle", motor.idle}, {"air", motor.air}}},
      {"step_up", step_up(s.feed.step_up)}};
}

Json account(const RaiseAccount& a) {
  return {{"fuel", si_of(a.fuel)},       {"chemical", si_of(a.chemical)}, {"monoxide", si_of(a.carbon_monoxide)},
          {"bed", si_of(a.bed)},         {"absorbed", si_of(a.absorbed)}, {"stack", si_of(a.stack)},
          {"outside", si_of(a.outside)}, {"steam", si_of(a.steam)}};
}
Json instant(const RaiseInstant& at) {
  return {{"t", si_of(at.time)},
          {"water", si_of(at.water)},
          {"air", si_of(at.air)},
          {"firebox", si_of(at.heat.firebox.gas)},
          {"tube_exit", si_of(at.heat.tubes.exit)},
          {"fan_gas", si_of(at.path->fan_gas)},
          {"box_suction", si_of(at.path->box_suction)},
          {"volts", si_of(at.supply->pack)},
          {"amperes", si_of(at.supply->current)},
          {"charge_left", at.supply->charge_left}};
}
Json event(const Raise& raise, RaiseEventKind kind) {
  const RaiseEvent* found = raise.find(kind);
  return found ? Json{{"at", instant(found->at)}, {"account", account(found->account)}} : Json();
}

Json answers(const SolvedRaise& r) {
  const RaiseInput& in = r.input;
  const Raise& raise = r.raise;
  const auto gauge = [](const std::optional<GaugePressure>& p) { return p ? Json(si_of(*p)) : Json(); };
  return {{"start", si_of(in.water)},
          {"own_blower_at", gauge(in.own_blower)},
          {"working_at", gauge(in.working)},
          {"give_up", si_of(in.give_up)},
          {"boils", event(raise, RaiseEventKind::boils)},
          {"own_blower", event(raise, RaiseEventKind::own_blower)},
          {"working", event(raise, RaiseEventKind::working)},
          {"pack_stops", event(raise, RaiseEventKind::pack_stops)},
          {"account", account(raise.account)},
          {"series", list(raise.series, [](const RaiseInstant& at) { return instant(at); })}};
}

template <class T>
const T& solved_part(const Outcome<T>& part, const char* what) {
  if (part) return *part;
  std::string why = std::string(what) + " is not solved: " + part.impossible;
  for (const std::string& key : part.missing) why += " " + key;
  throw std::runtime_error(why);
}

Json probe(const char* file, int runs) {
  std::ifstream stream(file);
  if (!stream) throw std::runtime_error(std::string("cannot read ") + file);
  const Build build = read_build({file, std::string(std::istreambuf_iterator<char>(stream), {})});
  const Solved solved = solve(build);
  const SolvedRaise& raise = solved_part(solved.raise, "the raise");
  return {{"inputs", inputs(solved.inputs)},
          {"matter", matter()},
          {"air", si_of(raise.input.ambient.temperature)},
          {"barometer", si_of(raise.input.ambient.pressure)},
          {"fire", fire(raise.input.fire.input())},
          {"boiler", boiler(raise.input.boiler)},
          {"path", path(raise.input.path->path())},
          {"fan", fan(solved_part(solved.fan, "the fan"))},
          {"battery", battery(solved_part(solved.supply, "the supply"))},
          {"raise", answers(raise)},
          {"light_ups",
           {{"count", solved.light_ups->count},
            {"first", si_of(solved.light_ups->first)},
            {"last", si_of(solved.light_ups->last)},
            {"within", solved.build.want.steam_within ? Json(si_of(raise.within)) : Json()}}},
          {"seconds", median_seconds(runs, [&] { lumwright::boiler::raise(raise.input); })}};
}
}  // namespace

int main(int argc, char** argv) {
  try {
    if (argc < 2) throw std::runtime_error("use: raise_probe FILE [how often to take the time]");
    std::cout << probe(argv[1], argc > 2 ? std::stoi(argv[2]) : 0) << '\n';
    return 0;
  } catch (const std::exception& e) {
    std::cerr << e.what() << '\n';
    return 1;
  }
}
