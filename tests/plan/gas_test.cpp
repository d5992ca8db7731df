// Builds whose gas, tube or boiler is out of the common.
#include "describe.hpp"
#include "findings.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

// A tube does not take the gas's temperature: its fit closes by 0.01 to 0.03 mm (derived), not by 0.07.
TEST_CASE("a tube of 17.46 mm slides in a cold chimney of 17.60 mm") {
  const Assessment a = assess(example("tarn-beck", {{"outside: 17.24 mm", "outside: 17.46 mm"}}));
  for (const char* key : {"fit.clearance_hot", "fit.clearance_both_hot"}) {
    CAPTURE(key);
    CHECK(number(a, key) > 0.01e-3);
    CHECK(number(a, key) < 0.03e-3);
  }
  CHECK(verdict(a, "fit.hot") == Verdict::watch);  // less than the 0.03 mm that sliding wants
}
TEST_CASE("a heat loss with a slipped decimal point is solved as fast as another") {
  for (const char* loss : {"0.42 W/K", "4.2 W/K", "42 W/K", "200 W/K"}) {
    CAPTURE(loss);
    const Build build = example("tarn-beck", {{"heat_loss: 0.42 W/K", std::string("heat_loss: ") + loss}});
    const Solved solved = solve(build);
    REQUIRE(solved.raise);
    CHECK(solved.raise->raise.effort.rates < 1000);
    CHECK(solved.raise->raise.effort.instants < 2000);
  }
}
// A fan that moves less than the engine draws by itself: the box stands above the room's pressure.
TEST_CASE("gas that blows out of the bleed holes fails, and is not cooled by them") {
  const std::string curve =
      "[ [0 l/min, 290 Pa], [240 l/min, 282 Pa], [480 l/min, 258 Pa], [720 l/min, 214 Pa], [950 l/min, 138 Pa], "
      "[1180 l/min, 0 Pa] ]";
  const Build build = example("great-fell-5in", {{curve, "[ [0 l/min, 3 Pa], [5 l/min, 2 Pa], [8 l/min, 0 Pa] ]"}});
  const Solved solved = solve(build);
  REQUIRE(solved.draught);
  const PathFlow& hot = solved.draught->hot_flow;
  REQUIRE(hot.bleed < 0.0 * kg_per_s);
  CHECK(hot.fan_gas > solved.draught->ambient.temperature + 20.0 * K);
  const Assessment a = assess(build);
  CHECK(verdict(a, "heat.bleed") == Verdict::fail);
  CHECK(says(finding(a, "heat.bleed"), "blows out of the bleed holes"));
  CHECK(verdict(assess(example("great-fell-5in")), "heat.bleed") != Verdict::fail);
}
TEST_CASE("the draught that is left when the fan is off is a small part of what it gives") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Assessment a = assess(example(name));
    CHECK(number(a, "draught.fan_off_air_flow") > 0.0);
    CHECK(number(a, "draught.fan_off_air_flow") < 0.5 * number(a, "draught.air_flow"));
    CHECK(number(a, "draught.fan_off_smokebox_depression") < number(a, "draught.smokebox_depression"));
  }
}
