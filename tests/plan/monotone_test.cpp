// Laws of direction that any build must obey, swept over the examples.
#include "describe.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <functional>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
using Change = std::function<void(Build&, double)>;
template <class Q>
void scale(Given<Q>& given, double factor) {
  if (!given) return;
  given.band->value = given.band->value * factor;
  given.band->low = given.band->low * factor;
  given.band->high = given.band->high * factor;
}
std::vector<double> sweep(const std::string& name, const std::string& key, const Change& change,
                          std::initializer_list<double> factors) {
  std::vector<double> found;
  for (double factor : factors) {
    Build build = example(name);
    change(build, factor);
    found.push_back(number(assess(build), key));
  }
  return found;
}
void check_rises(const std::vector<double>& values, double slack = 1e-9) {
  for (std::size_t i = 1; i < values.size(); ++i) {
    CAPTURE(i);
    CHECK(values[i] >= values[i - 1] * (1.0 - slack));
  }
  CHECK(values.back() > values.front());
}
void check_falls(std::vector<double> values) {
  std::reverse(values.begin(), values.end());
  check_rises(values);
}
}  // namespace

TEST_CASE("more bore never draws less air") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    // the chimney grows with the tube, so that the gap, and with it the leak, stays
    const Change wider_tube = [](Build& b, double f) {
      const Length more = *b.adapter.tube.outside * (f - 1.0);
      for (Given<Length>* size : {&b.adapter.tube.outside, &b.engine.chimney.bore})
        size->band = Band<Length>{size->band->value + more, size->band->low + more, size->band->high + more};
    };
    check_rises(sweep(name, "draught.air_flow", wider_tube, {0.7, 0.85, 1.0, 1.2, 1.5, 2.0}));
    check_rises(sweep(name, "draught.cold_air_flow", wider_tube, {0.7, 0.85, 1.0, 1.2, 1.5, 2.0}));
    check_rises(sweep(name, "draught.air_flow", [](Build& b, double f) { scale(b.engine.tubes.bore, f); },
                      {0.6, 0.8, 1.0, 1.3, 1.8}));
    check_rises(sweep(name, "draught.air_flow", [](Build& b, double f) { scale(b.engine.grate.width, f); },
                      {0.6, 0.8, 1.0, 1.3, 1.8}));
  }
}

TEST_CASE("a deeper or finer bed never draws more air") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    check_falls(
        sweep(name, "draught.air_flow", [](Build& b, double f) { scale(b.fuel.bed, f); }, {0.5, 0.8, 1.0, 1.5, 2.5}));
    check_rises(
        sweep(name, "draught.air_flow", [](Build& b, double f) { scale(b.fuel.lump, f); }, {0.3, 0.6, 1.0, 1.5}));
  }
}

// Behind a step-up the power is what counts. A fan straight on the pack is another matter: see the case below.
TEST_CASE("more resistance never runs longer behind a step-up, more capacity never shorter") {
  for (const std::string name : {"tarn-beck", "high-tarn-32mm"}) {
    CAPTURE(name);
    const Change more_resistance = [](Build& b, double ohms) { b.supply.pack.resistance.band = exactly(ohms * ohm); };
    std::vector<double> runs;
    for (double ohms : {0.0, 0.05, 0.1, 0.2, 0.4}) {
      Build build = example(name);
      more_resistance(build, ohms);
      const Assessment a = assess(build);
      runs.push_back(find_result(a, "power.runtime") ? number(a, "power.runtime") : 0.0);
    }
    check_falls(runs);
    check_rises(sweep(name, "power.runtime", [](Build& b, double f) { scale(b.supply.pack.capacity, f); },
                      {0.5, 0.8, 1.0, 1.5}));
  }
  check_rises(sweep("great-fell-5in", "power.runtime",
                    [](Build& b, double f) { b.supply.pack.capacity.band = exactly(f * 7.0 * Ah); },
                    {0.5, 0.8, 1.0, 1.5}));
}

TEST_CASE("a fan straight on the pack turns slower with more resistance, and so runs longer") {
  const Change more_resistance = [](Build& b, double ohms) { b.supply.pack.resistance.band = exactly(ohms * ohm); };
  const auto ohms = {0.05, 0.1, 0.2, 0.4};
  check_falls(sweep("great-fell-5in", "draught.air_flow", more_resistance, ohms));
  check_falls(sweep("great-fell-5in", "power.fan", more_resistance, ohms));
  check_rises(sweep("great-fell-5in", "power.runtime", more_resistance, ohms));
}

TEST_CASE("a larger chimney never has less clearance; a larger tube never more") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    check_rises(sweep(name, "fit.clearance_hot", [](Build& b, double f) { scale(b.engine.chimney.bore, f); },
                      {1.0, 1.005, 1.02, 1.1}),
                -1e-12);
    check_falls(sweep(name, "fit.clearance_cold", [](Build& b, double f) { scale(b.adapter.tube.outside, f); },
                      {0.9, 0.95, 0.98}));
  }
}

// From half of a working flow on: a smaller fire works mostly against the loss to the room, and there twice the air is
// more than twice the heat.
TEST_CASE("more air never takes longer, and twice the air never takes half the time") {
  for (const std::string name : {"tarn-beck", "great-fell-5in"}) {
    CAPTURE(name);
    const Change measured = [](Build& b, double f) {
      b.draught.air_flow.band = exactly(f * number(assess(b), "draught.air_flow") * kg_per_s);
    };
    const std::vector<double> times = sweep(name, "raise.to_own_blower", measured, {0.5, 1.0, 2.0, 4.0});
    check_falls(times);
    for (std::size_t i = 1; i < times.size(); ++i) CHECK(times[i] > 0.5 * times[i - 1]);
  }
}

TEST_CASE("more water, a colder day and more leakage never raise steam sooner") {
  for (const std::string name : {"tarn-beck", "great-fell-5in"}) {
    CAPTURE(name);
    check_rises(sweep(name, "raise.to_own_blower", [](Build& b, double f) { scale(b.engine.boiler.water, f); },
                      {0.7, 1.0, 1.3}));
    check_rises(sweep(name, "raise.to_own_blower",
                      [](Build& b, double f) { b.engine.leakage.past_bed.band = exactly(0.2 * f); }, {0.5, 1.0, 1.5}));
    check_rises(
        sweep(name, "raise.to_own_blower", [](Build& b, double f) { scale(b.fuel.catches_in, f); }, {0.5, 1.0, 2.0}));
  }
}

TEST_CASE("a stronger battery voltage never turns a direct fan slower, nor draws less air") {
  check_rises(sweep("great-fell-5in", "draught.air_flow",
                    [](Build& b, double duty) { b.supply.control.duty.band = exactly(duty); }, {0.4, 0.6, 0.8, 1.0}));
}
