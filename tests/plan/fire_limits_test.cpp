// Checks of the fire at their limits and a hair on either side. What is judged is set by hand in a solved example, or
// written into a description; the limits stand here a second time.
#include "draught/bed.hpp"
#include "limits.hpp"
#include "model/solved_draught.hpp"
#include <fmt/format.h>

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::boiler;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
std::string fire_of(const std::string& fuel) { return small_engine("kind: lump charcoal, " + fuel, "0.4 g/s"); }
const std::string steady_fire = fire_of("lump: 6 mm, bed: 34 mm, bed_mass: 16 g");

const LimitTests bed_at_limits("what the gas does to the bed and to small char, at the limits", [] {
  const std::string text = example_text("tarn-beck");
  // what carries the weight of the bed, and 70 % of it (estimate)
  at_limits({"fire.bed_lift", text,
             [](Bench& b, double x) {
               SolvedDraught& d = b.draught();
               d.hot_flow.loss[static_cast<std::size_t>(Element::bed)] =
                   x * bed_lifting_pressure(*d.path.bed, *d.fuel_piece);
             },
             Bound::at_most, 0.7, 1.0, true});
  // the flux that floats a lump, and 70 % of it (estimate); that flux itself is held against a separate calculation in
  // raise_checks_test.cpp, and so are the speeds at which char hangs
  Bench plain(text);
  const double floats = term(plain.judge("fire.flux").value(), "G_mf");
  at_limits({"fire.flux", text,
             [](Bench& b, double x) { b.draught().hot_flow.bed = x * kg_per_s / m2 * b.draught().path.grate->area; },
             Bound::at_most, 0.7 * floats, floats, true});
  const Finding sparks = plain.judge("fire.sparks").value();
  const double gas = term(sparks, "rho_gas");
  at_limits({"fire.sparks", text,
             [gas](Bench& b, double x) {
               b.draught().hot_flow.tubes = x * m / unit::s * (gas * kg_per_m3) * b.draught().path.grate->area;
             },
             Bound::at_most, term(sparks, "v_0.5"), term(sparks, "v_1"), true});
});

const LimitTests depth_at_limits("depth of the fire in lumps, at the limits", [] {
  // oxygen is used up in 2 to 3 lumps (US Bureau of Mines Technical Paper 139, 1918); 1, 6 and 10 are estimates
  const auto deep = [](double lumps) {
    Bench b(fire_of(fmt::format("lump: 4 mm, bed: {:.15g} mm", 4.0 * lumps)));
    auto found = b.judge("fire.depth");
    CHECK(value(*found) == doctest::Approx(lumps).epsilon(1e-12));
    return found;
  };
  either_side({.id = "fire.depth", .judge = deep, .limit = 1.0, .below = 'f', .above = 'w'});
  either_side({.id = "fire.depth", .judge = deep, .limit = 2.0, .below = 'w', .above = 'p'});
  either_side({.id = "fire.depth", .judge = deep, .limit = 6.0, .below = 'p', .above = 'w'});
  either_side({.id = "fire.depth", .judge = deep, .limit = 10.0, .below = 'w', .above = 'f'});
  CHECK(limit(*deep(0.99)) == 1.0);
  CHECK(limit(*deep(1.01)) == 2.0);
  CHECK(limit(*deep(6.01)) == 6.0);
  CHECK(limit(*deep(10.01)) == 10.0);
  // in one sample of many it is told without the words: the same verdict
  for (const double lumps : {0.99, 1.01, 4.0, 6.01, 9.99, 10.01}) {
    Bench b(fire_of(fmt::format("lump: 4 mm, bed: {:.15g} mm", 4.0 * lumps)));
    CHECK(fails(named("fire.depth"), b.all()) == (letter(b.judge("fire.depth")) == 'f'));
  }
  Bench unlit(steady_fire);
  unlit.draught().fire.reset();
  not_asked(unlit, "fire.depth");
});

const LimitTests start_of_fire("what the fire is lit on", [] {
  const auto lit = [](const std::string& fuel) {
    return letter(Bench(small_engine("bed: 30 mm, " + fuel, "0.4 g/s")).judge("fire.start"));
  };
  CHECK(lit("kind: steam coal, started_on: bright charcoal") == 'p');
  CHECK(lit("kind: steam coal") == 'w');
  CHECK(lit("kind: steam coal, started_on: soaked charcoal") == 'f');
  CHECK(lit("kind: lump charcoal") == '-');
});

const LimitTests topping_up("a fire that is half burnt by own-blower pressure, at the limit", [] {
  // half of the bed: common practice
  at_limits({"fire.top_up",
             steady_fire,
             [](Bench& b, double x) {
               for (RaiseEvent& event : b.raised().raise.events)
                 if (event.kind == RaiseEventKind::own_blower) event.account.fuel = x * kg;
             },
             Bound::at_most,
             8e-3,
             {},
             true});
  Bench dry("fuel: { kind: lump charcoal, lump: 6 mm, bed: 34 mm }");
  CHECK(letter(dry.judge("fire.top_up")) == 'u');
  Bench never(steady_fire);  // no steam: how often to feed the fire is not the question
  never.raised().raise.events.clear();
  never.raised().raise.end = boiler::RaiseEnd::out_of_time;
  not_asked(never, "fire.top_up");
});
}  // namespace
