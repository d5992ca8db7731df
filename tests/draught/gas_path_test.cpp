#include "draught/gas_path.hpp"
#include "draught/duty.hpp"
#include "draught/mass_balance.hpp"
#include "draught/openings.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include "random_path.hpp"
#include <algorithm>
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;

namespace {
Pressure loss_of(const PathFlow& flow, Element element) { return flow.loss[static_cast<std::size_t>(element)]; }
FixedTemperatures all_at(double celsius) {
  const Temperature t = degC(celsius);
  return FixedTemperatures({.bed_mean = t, .firebox = t, .tube_mean = t, .tube_exit = t, .fuel_per_air = 0.0});
}
Adapter plain_adapter() {
  return {
      .tube = {.bore = 13.5 * mm, .length = 38.0 * mm, .roughness = 0.0 * mm},
      .inlet = {.kind = Inlet::square, .bore = 13.5 * mm, .wall = 0.0 * mm, .projection = 0.0 * mm, .radius = 0.0 * mm},
      .fittings = 0.0,
      .rise = 0.0 * mm,
      .wall = std::nullopt};
}
}  // namespace

TEST_CASE("an adapter's tube loses its inlet, its friction and its widening, each at its own section") {
  // 13.5 x 38 mm tube, gas 200 degC of 0.74604 kg/m3 and 2.57133e-5 Pa s (air, ideal gas and Sutherland), 4.682 m/s:
  // Re 1833.87 as in the general library `fluids`; square inlet 0.5; Borda-Carnot 13.5 -> 60 mm 0.901313;
  // Shah at Re 1828 gives f L/D 0.548980, so 0.5490 here within 1 %, to which the blend adds nothing.
  GasPath path;
  path.adapter = plain_adapter();
  path.box = Box{.bore = 60.0 * mm, .depth = {60.0 * mm, 300.0 * mm}, .rise = 0.0 * mm, .wall = std::nullopt};
  const Ambient hot_room{.temperature = degC(200.0), .pressure = atmosphere};  // no natural draught
  const GasNetwork network(path, hot_room);
  const Pressure head = 0.5 * 0.74604 * kg_per_m3 * pow<2>(4.682 * m_per_s);
  const MassFlow flow = 0.74604 * kg_per_m3 * 4.682 * m_per_s * circle(13.5 * mm);
  const PathFlow f = network.follow(flow, unlit(hot_room));
  CHECK(loss_of(f, Element::adapter_inlet) == near(0.5 * head, 1e-4));
  CHECK(loss_of(f, Element::box_entry) == near(0.901313 * head, 1e-4));
  CHECK(loss_of(f, Element::adapter_friction) == near(0.5490 * head, 0.01));
  const Pressure sum = loss_of(f, Element::adapter_inlet) + loss_of(f, Element::adapter_friction) +
                       loss_of(f, Element::box_entry) + loss_of(f, Element::box_to_fan);
  CHECK(f.fan_suction == near(sum, 1e-12));
  CHECK(f.smokebox_suction == 0.0 * Pa);
}

TEST_CASE("each fire tube takes its share of the gas, and narrowing and exit are those of all the tubes") {
  // Shah 1978 at Re 276, L/D 15 (python3-fluids): f L/D = 4.62734. Eight tubes 8 x 120 mm at 400 degC, mu 3.24966e-5 Pa
  // s, rho 0.52438: 276 pi 0.008 mu / 4 = 5.6355e-5 kg/s each; v = 2.1380 m/s, head 1.19850 Pa.
  GasPath path;
  path.tubes = FireTubes{.count = 8,
                         .each = {.bore = 8.0 * mm, .length = 120.0 * mm, .roughness = 0.0 * mm},
                         .firebox = 16.0 * circle(8.0 * mm),
                         .rise = 0.0 * mm};
  const PathFlow f = GasNetwork(path, room).follow(8.0 * 5.6355e-5 * kg_per_s, all_at(400.0));
  CHECK(loss_of(f, Element::tubes) == near(4.62734 * 1.19850 * Pa, 2e-4));
  CHECK(loss_of(f, Element::smokebox) == near(1.19850 * Pa, 2e-4));
  CHECK(loss_of(f, Element::firebox) == near(0.5 * std::pow(0.5, 0.75) * 1.19850 * Pa, 2e-4));  // Idelchik, diagram 3-9
  CHECK(f.smokebox_suction == near((4.62734 + 1.0 + 0.297302) * 1.19850 * Pa, 2e-4));
}

TEST_CASE("door and grate lose as cold air, blast pipe and box as what stands in the way") {
  GasPath path;
  path.air_entry = Hole{.area = circle(10.0 * mm), .discharge = 0.61};
  path.grate = Grate{.area = 18.0 * cm2, .open_share = 0.3};
  path.adapter = plain_adapter();
  path.blast_pipe_gap = 0.5 * path.adapter->tube.bore;
  path.box = Box{.bore = 60.0 * mm, .depth = {40.0 * mm, 10.0 * mm}, .rise = 0.0 * mm, .wall = std::nullopt};
  const MassFlow flow = 0.470218 * g_per_s;
  const PathFlow f = GasNetwork(path, room).follow(flow, all_at(200.0));
  // orifice equation: a hole of 10 mm passes 0.470218 g/s of air of 20 degC at 40 Pa
  CHECK(loss_of(f, Element::air_entry) == near(40.0 * Pa, 1e-5));
  CHECK(f.ash_pan_suction == near(40.0 * Pa, 1e-5));
  // Idelchik ch. 8: 18.53 heads at an open share of 0.3; hand: v = 0.470218e-3 / (1.20412 * 1.8e-3) = 0.216946 m/s
  CHECK(loss_of(f, Element::grate) == near(18.53 * 0.5 * 1.20412 * 0.216946 * 0.216946 * Pa, 3e-4));
  // estimates (D / 4h)^2: 0.25 heads of the tube at a gap of half a bore, 1 head of the fan's opening at a quarter of
  // it
  const auto head = [&](Area area) { return 0.5 * flow * flow / (0.74604 * kg_per_m3 * area * area); };
  CHECK(loss_of(f, Element::blast_pipe) == near(0.25 * head(circle(13.5 * mm)), 1e-4));
  CHECK(loss_of(f, Element::box_to_fan) == near(1.0 * head(circle(40.0 * mm)), 1e-4));
}

TEST_CASE("a finger guard costs heads of the fan's opening, and the fan must hold them") {
  GasPath path;
  path.adapter = plain_adapter();
  const MassFlow flow = 0.470218 * g_per_s;
  const PathFlow bare = GasNetwork(path, room).follow(flow, all_at(200.0));
  CHECK(loss_of(bare, Element::fan_guard) == 0.0 * Pa);
  path.guard = FanGuard{.loss_factor = 0.3, .area = circle(40.0 * mm)};
  const PathFlow guarded = GasNetwork(path, room).follow(flow, all_at(200.0));
  // hand: 0.3 heads of 0.470218 g/s through 12.566 cm2 at the 0.74604 kg/m3 of air of 200 degC
  const Pressure lost = 0.3 * 0.5 * flow * flow / (0.74604 * kg_per_m3 * circle(40.0 * mm) * circle(40.0 * mm));
  CHECK(loss_of(guarded, Element::fan_guard) == near(lost, 1e-4));
  CHECK(guarded.fan_suction - bare.fan_suction == near(lost, 1e-4));
  CHECK(guarded.box_suction == bare.box_suction);
  const auto told = losses(path, guarded);
  CHECK(told.back().name == "fan_guard");
  path.guard->area = 0.0 * cm2;
  CHECK_THROWS_AS(GasNetwork(path, room), ModelError);
}

TEST_CASE("a burning bed is Ergun's on the expanded gas") {
  // python3-fluids, Ergun(dp=.0049, voidage=.47, vs=.844, rho=.32893, mu=4.33053e-5, L=.025) = 26.1243 Pa:
  // 0.5 g/s at 800 degC on 18 cm2 (vs = 0.84449 m/s, rounded there to 0.844; hence 0.1 %)
  GasPath path;
  path.bed = Bed{.particle = 7.0 * mm, .sphericity = 0.7, .voidage = 0.47, .depth = 25.0 * mm, .grate = 18.0 * cm2};
  const PathFlow f = GasNetwork(path, room).follow(0.5 * g_per_s, all_at(800.0));
  CHECK(loss_of(f, Element::bed) == near(26.1243 * Pa, 1e-3));
  // The same bed passes 1.35231 g/s cold at the same drop: `fluids`.
  const PathFlow cold = GasNetwork(path, room).follow(1.35231 * g_per_s, unlit(room));
  CHECK(loss_of(cold, Element::bed) == near(26.146 * Pa, 1e-4));
}

TEST_CASE("gas that cools in the tubes gives its momentum back, and a bed's own gas weighs on it") {
  GasPath path;
  path.tubes = FireTubes{7, {8.0 * mm, 150.0 * mm, 0.0 * mm}, 22.0 * cm2, 0.0 * mm};
  const auto lost = [&](double hot, double cold) {
    const FixedTemperatures t({.bed_mean = degC(20),
                               .firebox = degC(hot),
                               .tube_mean = degC(500),
                               .tube_exit = degC(cold),
                               .fuel_per_air = 0.0});
    return loss_of(GasNetwork(path, room).follow(0.5 * g_per_s, t), Element::tubes);
  };
  // momentum of a straight tube: (m/A)^2 (1/rho_1 - 1/rho_2) of static pressure, of which the exit's head takes half
  // and the entry's half; hand: A = 7 pi/4 8^2 = 351.86 mm2, G = 1.42102 kg/m2s; air at 800 and 250 degC 0.32893 and
  // 0.67474
  const double back = 0.5 * 1.42102 * 1.42102 * (1.0 / 0.32893 - 1.0 / 0.67474);
  CHECK(in(lost(500.0, 500.0) - lost(800.0, 250.0), Pa) == near(back, 1e-3));
  class Burning : public TemperatureSource {
   public:
    explicit Burning(double fuel) : fuel_(fuel) {}
    Temperature bed_mean(MassFlow) const override { return degC(800); }
    double fuel_in_bed() const override { return fuel_; }
    GasTemperatures after_bed(MassFlow, MassFlow) const override {
      return {.bed_mean = degC(800),
              .firebox = degC(800),
              .tube_mean = degC(800),
              .tube_exit = degC(800),
              .fuel_per_air = fuel_};
    }

   private:
    double fuel_;
  };
  GasPath bed;
  bed.bed = Bed{.particle = 7.0 * mm, .sphericity = 0.7, .voidage = 0.47, .depth = 25.0 * mm, .grate = 18.0 * cm2};
  const GasNetwork network(bed, room);
  CHECK(loss_of(network.follow(0.5 * g_per_s, Burning(0.1)), Element::bed) ==
        near(loss_of(network.follow(0.55 * g_per_s, Burning(0.0)), Element::bed), 1e-12));
}

TEST_CASE("a chimney draws by the weight of the gas in it") {
  // hand: 0.30 m at 200 degC in 20 degC air: 9.80665 * 0.30 * (1.20412 - 0.74604) = 1.34767 Pa
  GasPath path;
  path.adapter = plain_adapter();
  path.adapter->rise = 0.30 * m;
  const PathFlow up = GasNetwork(path, room).follow(0.1 * g_per_s, all_at(200.0));
  CHECK(up.natural_draught == near(1.34767 * Pa, 1e-4));
  path.adapter->rise = -0.30 * m;
  const PathFlow down = GasNetwork(path, room).follow(0.1 * g_per_s, all_at(200.0));
  CHECK(in(down.fan_suction - up.fan_suction, Pa) == near(2.0 * 1.34767, 1e-4));
}

TEST_CASE("bleed air cools the gas by the balance of heat") {
  // 0.5 g/s at 250 degC and 1.5 g/s at 20 degC mix to 77.5 degC at one cp; air's own cp (1035 against 1007) adds 1.2 K.
  GasPath path;
  path.adapter = plain_adapter();
  const GasNetwork closed(path, room);
  const PathFlow before = closed.follow(0.5 * g_per_s, all_at(250.0));
  const Density rho = closed.ambient_density();
  const Area hole = 1.5 * g_per_s / orifice_flow(1.0, 1.0 * m2, rho, before.box_suction) * m2;
  path.bleed = Hole{.area = hole / 0.61, .discharge = 0.61};
  const PathFlow f = GasNetwork(path, room).follow(0.5 * g_per_s, all_at(250.0));
  CHECK(f.bleed == near(1.5 * g_per_s, 1e-9));
  CHECK(in_degC(f.fan_gas) == near(77.5, 0.02));
  CHECK(f.fan_volume == near(2.0 * g_per_s / air_density(f.fan_gas, atmosphere), 1e-12));
}

TEST_CASE("leaks by share are the shares that they are defined as") {
  Dice dice(11);
  GasPath path = random_path(dice, true);
  path.past_bed = LeakShare{0.25};
  path.smokebox = LeakShare{0.05};
  path.annulus = std::nullopt;
  const PathFlow f = GasNetwork(path, room).follow(0.3 * g_per_s, random_fire(dice));
  CHECK(f.engine == near(0.4 * g_per_s, 1e-12));  // hand: 0.3 / (1 - 0.25)
  CHECK(f.smokebox_leak == near(0.05 * f.chimney, 1e-12));
}

TEST_CASE("at every node what comes in goes out, and the suctions drive the leaks, over 200 paths") {
  Dice dice(1);
  for (int i = 0; i < 200; ++i) {
    CAPTURE(i);
    GasPath path = random_path(dice, i % 2 == 0);
    if (i % 3 == 0) path = with_walls(path);
    const FixedTemperatures fire = i % 5 == 0 ? unlit(room) : random_fire(dice);
    const GasNetwork network(path, room);
    const PathFlow f = network.follow(dice.decade(0.05, 2.0) * g_per_s, fire);
    for (const NodeBalance& node : mass_balance(f)) {
      CAPTURE(node.node);
      CHECK(std::abs(node.residual / f.fan) < 1e-9);
    }
    CHECK((f.fan - f.bed - f.past_bed - f.fuel - f.smokebox_leak - f.annulus - f.bleed) / f.fan ==
          doctest::Approx(0.0).scale(1.0).epsilon(1e-9));

    // The suctions again from the reported losses, and the leaks again from the suctions.
    Pressure sum = 0.0 * Pa;
    for (const ElementLoss& element : losses(path, f)) sum += element.loss;
    CHECK(f.fan_suction == near(sum - f.natural_draught, 1e-9));
    const Density rho = network.ambient_density();
    if (path.bleed && f.box_suction > 0.0 * Pa)
      CHECK(f.bleed == near(orifice_flow(path.bleed->discharge, path.bleed->area, rho, f.box_suction), 1e-9));
    if (path.annulus && f.smokebox_suction > 0.0 * Pa)
      CHECK(f.annulus ==
            near(annulus_flow(*path.annulus, f.smokebox_suction, rho, air_viscosity(room.temperature)), 1e-9));
    if (path.smokebox && std::holds_alternative<Area>(*path.smokebox) && f.smokebox_suction > 0.0 * Pa)
      CHECK(f.smokebox_leak == near(orifice_flow(1.0, std::get<Area>(*path.smokebox), rho, f.smokebox_suction), 1e-9));
    const auto highest = std::max({f.bed_gas, f.firebox_gas, f.tube_exit_gas});
    CHECK(f.fan_gas >= room.temperature);
    CHECK(f.fan_gas <= highest);
  }
}

TEST_CASE("only the elements that a path has are reported, in the order of the flow") {
  GasPath path;
  path.grate = Grate{.area = 18.0 * cm2, .open_share = 0.35};
  path.adapter = plain_adapter();
  const PathFlow f = GasNetwork(path, room).follow(0.5 * g_per_s, unlit(room));
  std::vector<std::string_view> names;
  for (const ElementLoss& element : losses(path, f)) names.push_back(element.name);
  CHECK(names == std::vector<std::string_view>{"grate", "adapter_inlet", "adapter_friction", "box_entry"});
}

TEST_CASE("openings leak what the shares leaked, and keep leaking when the fire is out") {
  Dice dice(5);
  for (int i = 0; i < 50; ++i) {
    CAPTURE(i);
    GasPath path = random_path(dice, true);
    path.past_bed = LeakShare{dice.between(0.05, 0.4)};
    path.smokebox = LeakShare{dice.between(0.02, 0.2)};
    const FixedTemperatures fire = random_fire(dice);
    const GasNetwork network(path, room);
    const MassFlow bed = 1.0 * g_per_s;
    const PathFlow hot = network.follow(bed, fire);
    if (!(hot.firebox_suction > 0.0 * Pa)) continue;
    const GasPath fixed = with_openings(path, openings(network, hot));
    const PathFlow again = GasNetwork(fixed, room).follow(bed, fire);
    CHECK(again.past_bed == near(hot.past_bed, 1e-9));
    CHECK(again.smokebox_leak == near(hot.smokebox_leak, 1e-9));
    const PathFlow cold = GasNetwork(fixed, room).follow(bed, unlit(room));
    CHECK(cold.fan_suction < hot.fan_suction);
    CHECK(cold.past_bed < hot.past_bed);  // less suction behind a cold bed
  }
}

TEST_CASE("a measured air flow is met whether the leaks are shares or openings") {
  Dice dice(6);
  for (int i = 0; i < 60; ++i) {
    CAPTURE(i);
    const GasPath path = random_path(dice, i % 2 == 0);
    const GasNetwork network(path, room);
    const FixedTemperatures fire = i % 3 == 0 ? unlit(room) : random_fire(dice);
    const MassFlow engine = dice.decade(0.05, 2.0) * g_per_s;
    const PathFlow f = at_engine_flow(network, fire, engine);
    CHECK(f.engine == near(engine, 1e-12));
    CHECK(f.bed + f.past_bed == near(engine, 1e-12));
  }
  CHECK_THROWS_AS(at_engine_flow(GasNetwork({}, room), unlit(room), 0.0 * g_per_s), ModelError);
}

TEST_CASE("a firebox that has no suction cannot leak a share") {
  GasPath path;  // no grate, no bed: nothing holds the air back
  path.past_bed = LeakShare{0.2};
  path.adapter = plain_adapter();
  const GasNetwork network(path, room);
  CHECK_THROWS_WITH_AS(openings(network, network.follow(0.3 * g_per_s, unlit(room))),
                       doctest::Contains("air is said to leak in at the firebox, but nothing draws it in there"), ModelError);
}

TEST_CASE("parts that cannot be are refused with a sentence") {
  Dice dice(7);
  const GasPath good = random_path(dice, true);
  const auto refused = [&](auto change) {
    GasPath path = good;
    change(path);
    CHECK_THROWS_AS(GasNetwork(path, room), ModelError);
  };
  refused([](GasPath& p) { p.air_entry = Hole{.area = 0.0 * m2, .discharge = 0.6}; });
  refused([](GasPath& p) { p.bleed = Hole{.area = 1.0 * cm2, .discharge = 1.4}; });
  refused([](GasPath& p) { p.grate = Grate{.area = 1.0 * cm2, .open_share = 0.0}; });
  refused([](GasPath& p) { p.past_bed = LeakShare{1.0}; });
  refused([](GasPath& p) { p.smokebox = LeakShare{-0.1}; });
  refused([](GasPath& p) { p.smokebox = -1.0 * cm2; });
  refused([](GasPath& p) { p.tubes->count = 0; });
  refused([](GasPath& p) { p.tubes->each.bore = -4.0 * mm; });
  refused([](GasPath& p) { p.adapter->tube.bore = 0.0 * mm; });
  refused([](GasPath& p) { p.adapter->fittings = -1.0; });
  refused([](GasPath& p) {
    p.adapter = std::nullopt;
    p.blast_pipe_gap = 10.0 * mm;
  });
  CHECK_THROWS_AS(GasNetwork(good, {.temperature = degC(-200.0), .pressure = atmosphere}), ModelError);
  CHECK_THROWS_AS(GasNetwork(good, room).follow(-0.1 * g_per_s, unlit(room)), ModelError);
}
