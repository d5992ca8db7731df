// Every row of tests/published/gas_path.yaml under `rows`, sent to the function that its `what` names.
#include "draught/annulus.hpp"
#include "draught/bed.hpp"
#include "draught/cooling.hpp"
#include "draught/fittings.hpp"
#include "draught/friction.hpp"
#include "draught/orifice.hpp"
#include "draught/other_bed_laws.hpp"
#include "draught/other_friction.hpp"
#include "laws.hpp"
#include "matter/air.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
#include <map>
#include <numbers>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::draught;
using data::Row;

namespace {
template <class Q>
void check(const Row& row, Q actual) {
  CHECK(actual == near(row.quantity<Q>("expect"), row.number("tolerance")));
}
Length length(const Row& row, const char* key) { return row.quantity<Length>(key); }
Handbook handbook(const Row& row) {
  static const std::map<std::string, Handbook> names = {{"idelchik", Handbook::idelchik},
                                                        {"rennels", Handbook::rennels},
                                                        {"crane", Handbook::crane},
                                                        {"miller", Handbook::miller},
                                                        {"harris", Handbook::harris}};
  return names.at(row.text("handbook"));
}
double lengths(const Row& row) { return length(row, "length") / length(row, "bore"); }
Step step(const Row& row) { return {.small = length(row, "small"), .large = length(row, "large")}; }
BedFlow bed_flow_of(const Row& row) {
  return {.particle = length(row, "particle"),
          .sphericity = row.number("sphericity"),
          .voidage = row.number("voidage"),
          .depth = length(row, "depth"),
          .superficial = row.quantity<Velocity>("speed"),
          .density = row.quantity<Density>("density"),
          .viscosity = row.quantity<Viscosity>("viscosity")};
}
Pressure bed_by_law(const Row& row) {
  static const std::map<std::string, Pressure (*)(const BedFlow&)> laws = {
      {"ergun", ergun}, {"carman", carman}, {"erdim", erdim}, {"kta", kta}, {"brauer", brauer}};
  return laws.at(row.text("law"))(bed_flow_of(row));
}
Density room_air(const Row& row) { return air_density(row.quantity<Temperature>("temperature"), atmosphere); }

struct Gap {
  Annulus annulus;
  Pressure drop;
  Density density;
  Viscosity viscosity;
};
Gap gap(const Row& row) {
  return {{.mean_diameter = 14.0 * mm,
           .radial_gap = length(row, "gap"),
           .engaged = 20.0 * mm,
           .eccentricity = row.number("eccentricity")},
          30.0 * Pa,
          air_density(degC(20), atmosphere),
          air_viscosity(degC(20))};
}
MassFlow through_gap(const Gap& g) { return annulus_flow(g.annulus, g.drop, g.density, g.viscosity); }

using Law = void (*)(const Row&);
const std::map<std::string, Law> laws = {
    {"churchill", [](const Row& r) { check(r, friction_long_tube(r.number("re"), r.number("roughness"))); }},
    {"colebrook", [](const Row& r) { check(r, friction_colebrook(r.number("re"), r.number("roughness"))); }},
    {"developing friction", [](const Row& r) { check(r, friction_developing(r.number("re"), lengths(r))); }},
    {"developing loss", [](const Row& r) { check(r, friction_developing(r.number("re"), lengths(r)) * lengths(r)); }},
    {"square inlet", [](const Row& r) { check(r, square_inlet(handbook(r))); }},
    {"projecting inlet",
     [](const Row& r) {
       check(r, projecting_inlet(
                    {.bore = length(r, "bore"), .wall = length(r, "wall"), .projection = length(r, "projection")},
                    handbook(r)));
     }},
    {"rounded inlet",
     [](const Row& r) {
       check(r, rounded_inlet({.bore = length(r, "bore"), .radius = length(r, "radius")}, handbook(r)));
     }},
    {"sudden expansion", [](const Row& r) { check(r, sudden_expansion(step(r))); }},
    {"sudden contraction", [](const Row& r) { check(r, sudden_contraction(step(r), handbook(r))); }},
    {"perforated plate", [](const Row& r) { check(r, perforated_plate(r.number("open"))); }},
    {"orifice flow",
     [](const Row& r) {
       check(r, orifice_flow(r.number("cd"), circle(length(r, "hole")), room_air(r), r.quantity<Pressure>("drop")));
     }},
    {"orifice diameter",
     [](const Row& r) {
       check(r,
             orifice_diameter(r.number("cd"), room_air(r), r.quantity<Pressure>("drop"), r.quantity<MassFlow>("flow")));
     }},
    {"reynolds",
     [](const Row& r) {
       const Length bore = length(r, "bore");
       const MassFlow flow = r.quantity<Density>("density") * r.quantity<Velocity>("speed") * circle(bore);
       check(r, reynolds_tube(flow, bore, r.quantity<Viscosity>("viscosity")));
     }},
    {"friction lengths",
     [](const Row& r) {
       const Tube tube{.bore = length(r, "bore"), .length = length(r, "length"), .roughness = 0.0 * mm};
       check(r, friction_heads(r.number("friction"), tube));
     }},
    {"heads",
     [](const Row& r) {
       const Density rho = r.quantity<Density>("density");
       const Area area = circle(13.5 * mm);
       check(r, loss(r.number("k"), rho * r.quantity<Velocity>("speed") * area, area, rho));
     }},
    {"terminal velocity",
     [](const Row& r) {
       check(r, terminal_velocity({.diameter = length(r, "size"), .density = r.quantity<Density>("piece")},
                                  r.quantity<Density>("density"), r.quantity<Viscosity>("viscosity")));
     }},
    {"bed", [](const Row& r) { check(r, bed_by_law(r)); }},
    {"bed flow",
     [](const Row& r) {
       const Bed bed{.particle = length(r, "particle"),
                     .sphericity = r.number("sphericity"),
                     .voidage = r.number("voidage"),
                     .depth = length(r, "depth"),
                     .grate = r.quantity<Area>("grate")};
       check(r, flow_that_makes(bed, r.quantity<Pressure>("drop"), room_air(r),
                                air_viscosity(r.quantity<Temperature>("temperature"))));
     }},
    {"packed voidage",
     [](const Row& r) {
       const double across = length(r, "box") / length(r, "particle");
       check(r, 0.1504 + 0.2024 / r.number("sphericity") + wall_voidage(across));  // the whole of their equation
     }},
    {"lifting pressure",
     [](const Row& r) {
       const Bed bed{.particle = 5.0 * mm,
                     .sphericity = 1.0,
                     .voidage = r.number("voidage"),
                     .depth = length(r, "depth"),
                     .grate = 18.0 * cm2};
       check(r, bed_lifting_pressure(bed, r.quantity<Density>("piece")));
     }},
    {"gap", [](const Row& r) { check(r, through_gap(gap(r))); }},
    {"natural draught",
     [](const Row& r) {
       check(r, natural_draught({.height = length(r, "height"),
                                 .ambient = air_density(r.quantity<Temperature>("air"), atmosphere),
                                 .gas = air_density(r.quantity<Temperature>("gas"), atmosphere)}));
     }},
    {"cooling",
     [](const Row& r) {
       check(r, cooled_along_tube({.flow = r.quantity<MassFlow>("flow"),
                                   .heat_capacity = r.quantity<SpecificHeat>("cp"),
                                   .conductance = r.quantity<ThermalConductance>("conductance"),
                                   .inlet = r.quantity<Temperature>("inlet"),
                                   .ambient = r.quantity<Temperature>("air")}));
     }},
    {"mixing",
     [](const Row& r) {
       const Stream streams[] = {{0.5 * g_per_s, 1010.0 * J_per_kg_K, degC(250)},
                                 {1.5 * g_per_s, 1010.0 * J_per_kg_K, degC(20)}};
       check(r, mixing_temperature(streams));
     }},
    {"bleed ratio",
     [](const Row& r) {
       check(r, bleed_ratio({.gas = r.quantity<Temperature>("gas"), .bleed = degC(20), .hold = degC(65)}));
     }},
};
}  // namespace

TEST_CASE("published values of the gas path come out of our functions") { CHECK(follow("gas_path", laws) >= 96); }
