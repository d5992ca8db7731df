// A gas path's solution is guarded: what no gas can do is named with its element, and is never an answer.
#include "quantity/sound.hpp"
#include "draught/duty.hpp"
#include "quantity/errors.hpp"
#include "random_path.hpp"
#include <doctest/doctest.h>
#include <limits>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::unit;

namespace {
constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
const Ambient room{degC(15), 1013.25 * mbar};
PathFlow tube_at(MassFlow flow) {
  GasPath path{};
  path.adapter = Adapter{.tube = {5.0 * mm, 40.0 * mm, 0.0 * mm},
                         .inlet = {Inlet::square, 5.0 * mm, 0.4 * mm, 0.0 * mm, 0.0 * mm},
                         .fittings = 0.0,
                         .rise = 0.0 * mm,
                         .wall = {}};
  return at_engine_flow(GasNetwork(path, room), unlit(room), flow);
}
std::string complaint(const PathFlow& flow) {
  try {
    check_sound(flow, room.pressure);
  } catch (const UnsoundNumber& error) {
    return error.what();
  }
  return "";
}
}  // namespace

TEST_CASE("a solution passes its guard") { CHECK(complaint(tube_at(0.4 * g_per_s)).empty()); }

TEST_CASE("a loss, a temperature or a density that no gas has is named") {
  PathFlow flow = tube_at(0.4 * g_per_s);
  flow.loss[static_cast<std::size_t>(Element::adapter_friction)] = no_number * Pa;
  CHECK(complaint(flow).starts_with(
      "adapter_friction: pressure loss came to nan Pa from air through the bed 0.0004 kg/s"));
  flow = tube_at(0.4 * g_per_s);
  flow.firebox_gas = kelvin(-1.0);
  CHECK(complaint(flow).starts_with("firebox: gas temperature came to -1 K from gas flow 0.0004 kg/s"));
  flow = tube_at(0.4 * g_per_s);
  flow.fan_density = 0.0 * kg_per_m3;
  CHECK(complaint(flow).starts_with("fan: density of the gas came to 0 kg/m3 from gas temperature 288.15 K"));
  flow = tube_at(0.4 * g_per_s);
  flow.chimney = no_number * g_per_s;
  CHECK(complaint(flow).starts_with("smokebox: gas flow came to nan kg/s"));
}

TEST_CASE("no absolute pressure falls below zero: a measured flow that would take that is refused") {
  // hand: 20 g/s through 5 mm at 1.23 kg/m3 is 830 m/s, a velocity head of 4 bar
  CHECK_THROWS_AS(tube_at(20.0 * g_per_s), ModelError);
}
