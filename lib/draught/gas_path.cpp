#include "draught/gas_path.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>

namespace lumwright::draught {
namespace {
constexpr MassFlow no_flow = 0.0 * kg_per_s;

Length bore_of(Area section) { return 2.0 * square_root(section / std::numbers::pi); }
Area section(const FireTubes& tubes) { return static_cast<double>(tubes.count) * circle(tubes.each.bore); }

void check(const Hole& hole, const char* what) {
  require_above_zero(what, hole.area);
  require_above_zero("discharge coefficient", hole.discharge);
  require_within("discharge coefficient", hole.discharge, {0.0, 1.0});
}
void check(const Leak& leak, const char* what) {
  if (const auto* part = std::get_if<LeakShare>(&leak)) {
    require_within(what, part->share, {0.0, 1.0});
    if (part->share == 1.0) throw ModelError(std::string(what) + " 1 leaves nothing for the rest of the gas");
  } else {
    require_not_negative(what, std::get<Area>(leak));
  }
}
void check(const FireTubes& tubes) {
  if (tubes.count < 1) throw ModelError("number of fire tubes " + std::to_string(tubes.count) + " is below 1");
  require_above_zero("fire tube bore", tubes.each.bore);
  require_above_zero("fire tube length", tubes.each.length);
  require_above_zero("firebox section", tubes.firebox);
  require_finite("rise of the fire tubes", tubes.rise);
  require_finite("height of the fire tubes over the bed", tubes.above_bed);
}
void check(const Adapter& adapter) {
  require_above_zero("adapter bore", adapter.tube.bore);
  require_above_zero("adapter length", adapter.tube.length);
  require_not_negative("loss factor of the fittings", adapter.fittings);
  require_finite("loss factor of the fittings", adapter.fittings);
  require_finite("rise of the adapter", adapter.rise);
}
void check(const GasPath& path) {
  if (path.air_entry) check(*path.air_entry, "air entry area");
  if (path.grate) require_above_zero("grate area", path.grate->area);
  if (path.past_bed) check(*path.past_bed, "leak past the bed");
  if (path.tubes) check(*path.tubes);
  if (path.smokebox) check(*path.smokebox, "smokebox leak");
  if (path.adapter) check(*path.adapter);
  if (path.box) require_finite("rise of the box", path.box->rise);
  if (path.bleed) check(*path.bleed, "bleed hole area");
  if (path.guard) {
    require_not_negative("loss factor of the guard", path.guard->loss_factor);
    require_above_zero("opening under the guard", path.guard->area);
  }
  require_finite("rise in the smokebox", path.smokebox_rise);
  if (path.blast_pipe_gap && !path.adapter)
    throw ModelError("a blast pipe stands in the way of an adapter: none is given");
}

double narrowing(const FireTubes& tubes) {
  return sudden_contraction({.small = bore_of(section(tubes)), .large = bore_of(tubes.firebox)});
}
double inlet_factor(const Adapter& adapter) {
  InletShape shape = adapter.inlet;
  shape.bore = adapter.tube.bore;
  return inlet_loss(shape);
}
double box_entry_factor(const GasPath& path) {
  if (!path.adapter) return 0.0;
  return path.box ? sudden_expansion({.small = path.adapter->tube.bore, .large = path.box->bore}) : free_exit;
}
Temperature between(Temperature a, Temperature b) { return a + 0.5 * (b - a); }
}  // namespace

GasNetwork::GasNetwork(const GasPath& path, const Ambient& ambient)
    : path_(path),
      ambient_(ambient),
      rho_(matter::air_density(ambient.temperature, ambient.pressure)),
      mu_(matter::air_viscosity(ambient.temperature)),
      cp_(matter::air_heat_capacity(ambient.temperature)) {
  check(path);
  grate_ = path.grate ? perforated_plate(path.grate->open_share) : 0.0;
  firebox_ = path.tubes ? narrowing(*path.tubes) : 0.0;
  inlet_ = path.adapter ? inlet_factor(*path.adapter) : 0.0;
  blast_ = path.blast_pipe_gap
               ? blast_pipe_obstruction({.tube_bore = path.adapter->tube.bore, .gap = *path.blast_pipe_gap})
               : 0.0;
  box_entry_ = box_entry_factor(path);
  shadow_ = path.box ? box_shadow(path.box->depth) : 0.0;
}

// One walk along the path. A flow may run backwards on the way to a solution (a firebox that blows out): its losses and
// leaks then change sign, so that the search sees one continuous function.
struct GasNetwork::Walk {
  const GasNetwork& net;
  const TemperatureSource& source;
  WallGuess& walls;
  PathFlow f;
  Pressure suction;

  template <class Loss>
  void lose(Element element, MassFlow flow, Loss of) {
    const Pressure lost = flow < no_flow ? -of(-flow) : of(flow);
    f.loss[static_cast<std::size_t>(element)] = lost;
    suction += lost;
  }
  void lose_heads(Element element, MassFlow flow, double k, Area area, Density density) {
    lose(element, flow, [&](MassFlow m) { return loss(k, m, area, density); });
  }
  void climb(Length rise, Temperature gas) {
    if (gas == net.ambient_.temperature) return;
    const Pressure draught = natural_draught({.height = rise, .ambient = net.rho_, .gas = density(gas)});
    f.natural_draught += draught;
    suction -= draught;
  }
  Density density(Temperature gas) const {
    return gas == net.ambient_.temperature ? net.rho_ : matter::air_density(gas, net.ambient_.pressure);
  }
  MassFlow hole(double cd, Area area, Temperature inside) const {
    if (suction < 0.0 * Pa) return -orifice_flow(cd, area, density(inside), -suction);
    return orifice_flow(cd, area, net.rho_, suction);
  }
  MassFlow leak(const std::optional<Leak>& way, MassFlow rest, Temperature inside) const {
    if (!way) return no_flow;
    if (const auto* part = std::get_if<LeakShare>(&*way)) return rest * (part->share / (1.0 - part->share));
    return hole(1.0, std::get<Area>(*way), inside);
  }
  MassFlow ring() const {
    if (!net.path_.annulus) return no_flow;
    if (suction < 0.0 * Pa) return -annulus_flow(*net.path_.annulus, -suction, net.rho_, net.mu_);
    return annulus_flow(*net.path_.annulus, suction, net.rho_, net.mu_);
  }
  // Room air joining gas; what blows out takes the gas's own temperature with it.
  Temperature joined(MassFlow gas_flow, Temperature gas, MassFlow air) const {
    if (!(air > no_flow) || gas == net.ambient_.temperature) return gas;
    const std::array streams = {Stream{std::max(gas_flow, no_flow), matter::air_heat_capacity(gas), gas},
                                Stream{air, net.cp_, net.ambient_.temperature}};
    return mixing_temperature(streams);
  }

  void to_firebox(MassFlow air);
  void to_smokebox();
  void to_box();
  void to_fan();
  Temperature along_adapter(const Adapter& adapter, Temperature gas);
  Temperature in_box(Temperature gas, MassFlow passing);
};

void GasNetwork::Walk::to_firebox(MassFlow air) {
  const GasPath& path = net.path_;
  f.bed = air;
  f.bed_gas = source.bed_mean(air);
  if (path.air_entry)
    lose(Element::air_entry, air,
         [&](MassFlow m) { return orifice_drop(path.air_entry->discharge, path.air_entry->area, net.rho_, m); });
  f.ash_pan_suction = suction;
  if (path.grate) lose_heads(Element::grate, air, net.grate_, path.grate->area, net.rho_);
  if (path.bed) {
    const Viscosity mu = matter::air_viscosity(f.bed_gas);
    const MassFlow gas = air * (1.0 + source.fuel_in_bed());
    lose(Element::bed, gas, [&](MassFlow m) { return bed_drop(*path.bed, m, density(f.bed_gas), mu); });
    climb(path.bed->depth, f.bed_gas);
  }
  f.firebox_suction = suction;
  f.past_bed = leak(path.past_bed, air, f.bed_gas);
  f.engine = air + f.past_bed;
}

void GasNetwork::Walk::to_smokebox() {
  const GasTemperatures t = source.after_bed(f.bed, f.past_bed);
  require_not_negative("fuel that has become gas, over the bed's air", t.fuel_per_air);
  f.fuel = t.fuel_per_air * f.bed;
  f.tubes = f.engine + f.fuel;
  f.firebox_gas = t.firebox;
  f.tube_gas = t.tube_mean;
  f.tube_exit_gas = t.tube_exit;
  if (net.path_.tubes) {
    const FireTubes& tubes = *net.path_.tubes;
    const Area area = section(tubes);
    climb(tubes.above_bed, t.firebox);
    lose_heads(Element::firebox, f.tubes, net.firebox_, area, density(t.firebox));
    const Viscosity mu = matter::air_viscosity(t.tube_mean);
    const double share = 1.0 / tubes.count;
    // Gas that cools slows down, and what it gives back of its momentum lowers the loss.
    lose(Element::tubes, f.tubes, [&](MassFlow m) {
      const Pressure given_back = loss(1.0, m, area, density(t.firebox)) - loss(1.0, m, area, density(t.tube_exit));
      return tube_friction(share * m, tubes.each, density(t.tube_mean), mu) - given_back;
    });
    lose_heads(Element::smokebox, f.tubes, free_exit, area, density(t.tube_exit));
    climb(tubes.rise, t.tube_mean);
  }
  f.smokebox_suction = suction;
}

void GasNetwork::Walk::to_box() {
  f.smokebox_leak = leak(net.path_.smokebox, f.tubes, f.tube_exit_gas);
  f.annulus = ring();
  f.chimney = f.tubes + f.smokebox_leak + f.annulus;
  const MassFlow air = std::max(f.smokebox_leak, no_flow) + std::max(f.annulus, no_flow);
  f.smokebox_gas = joined(f.tubes, f.tube_exit_gas, air);
  f.adapter_exit_gas = f.smokebox_gas;
  climb(net.path_.smokebox_rise, f.smokebox_gas);
  if (net.path_.adapter) {
    const Adapter& adapter = *net.path_.adapter;
    const Area area = circle(adapter.tube.bore);
    f.adapter_exit_gas = along_adapter(adapter, f.smokebox_gas);
    const Temperature mean = between(f.smokebox_gas, f.adapter_exit_gas);
    const Density entry = density(f.smokebox_gas), middle = density(mean);
    if (net.path_.blast_pipe_gap) lose_heads(Element::blast_pipe, f.chimney, net.blast_, area, entry);
    lose_heads(Element::adapter_inlet, f.chimney, net.inlet_, area, entry);
    const Viscosity mu = matter::air_viscosity(mean);
    lose(Element::adapter_friction, f.chimney, [&](MassFlow m) { return tube_friction(m, adapter.tube, middle, mu); });
    lose_heads(Element::fittings, f.chimney, adapter.fittings, area, middle);
    lose_heads(Element::box_entry, f.chimney, net.box_entry_, area, density(f.adapter_exit_gas));
    climb(adapter.rise, mean);
  }
  f.box_suction = suction;
}

void GasNetwork::Walk::to_fan() {
  if (const auto& bleed = net.path_.bleed) {
    // What blows out has been cooled by the box like the rest.
    const Temperature inside = suction < 0.0 * Pa ? in_box(f.adapter_exit_gas, f.chimney) : f.adapter_exit_gas;
    f.bleed = hole(bleed->discharge, bleed->area, inside);
  }
  f.fan = f.chimney + f.bleed;
  f.fan_gas = in_box(joined(f.chimney, f.adapter_exit_gas, f.bleed), f.chimney + std::max(f.bleed, no_flow));
  f.fan_density = density(f.fan_gas);
  f.fan_volume = f.fan / f.fan_density;
  if (net.path_.box) {
    lose_heads(Element::box_to_fan, f.fan, net.shadow_, circle(net.path_.box->depth.fan_opening), f.fan_density);
    climb(net.path_.box->rise, f.fan_gas);
  }
  if (const auto& guard = net.path_.guard)
    lose_heads(Element::fan_guard, f.fan, guard->loss_factor, guard->area, f.fan_density);
  f.fan_suction = suction;
}

Temperature GasNetwork::Walk::along_adapter(const Adapter& adapter, Temperature gas) {
  const Temperature room = net.ambient_.temperature;
  if (!adapter.wall || adapter.wall->length == 0.0 * mm || gas == room || !(f.chimney > no_flow)) return gas;
  const WallBalance wall = tube_conductance(*adapter.wall, f.chimney, gas, room, walls.tube);
  walls.tube = in(wall.wall - room, gas - room);
  return cooled_along_tube({.flow = f.chimney,
                            .heat_capacity = matter::air_heat_capacity(gas),
                            .conductance = wall.conductance,
                            .inlet = gas,
                            .ambient = room});
}

Temperature GasNetwork::Walk::in_box(Temperature gas, MassFlow passing) {
  const Temperature room = net.ambient_.temperature;
  if (!net.path_.box || !net.path_.box->wall || gas == room || !(passing > no_flow)) return gas;
  const WallBalance wall = box_conductance(*net.path_.box->wall, gas, room, walls.box);
  walls.box = in(wall.wall - room, gas - room);
  return cooled_well_mixed({.flow = passing,
                            .heat_capacity = matter::air_heat_capacity(gas),
                            .conductance = wall.conductance,
                            .inlet = gas,
                            .ambient = room});
}

PathFlow GasNetwork::follow(MassFlow bed_air, const TemperatureSource& source) const {
  WallGuess usual;
  return follow(bed_air, source, usual);
}

PathFlow GasNetwork::follow(MassFlow bed_air, const TemperatureSource& source, WallGuess& guess) const {
  require_not_negative("air through the bed", bed_air);
  Walk walk{.net = *this, .source = source, .walls = guess, .f = {}, .suction = 0.0 * Pa};
  walk.to_firebox(bed_air);
  walk.to_smokebox();
  walk.to_box();
  walk.to_fan();
  require_finite("suction in front of the fan", walk.suction);
  return walk.f;
}
}  // namespace lumwright::draught
