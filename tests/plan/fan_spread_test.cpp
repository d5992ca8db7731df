#include "description/reader.hpp"
#include "model/solved.hpp"
#include "model/solved_fan.hpp"
#include "plan/draws.hpp"
#include "plan/samples.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <numbers>
#include <random>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::input;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
struct Ends {
  double pressure, flow;
};
double even(std::mt19937& bits) { return (static_cast<double>(bits()) + 0.5) / 4294967296.0; }
/// The ends of one fan of many that fit the description.
Ends drawn_ends(const Build& build, std::mt19937& bits) {
  Inputs inputs([&](std::string_view key, const Input& input) {
    return is_drawn(key, input) ? drawn_from(input, key, even(bits)) : input.value.si;
  });
  const Outcome<SolvedFan> fan = solve_fan(build, inputs);
  REQUIRE(fan);
  return {in(fan->curve.shut_off(), Pa), in(fan->curve.free_air(), litre_per_s)};
}
double normal(std::mt19937& bits) {  // Box and Muller 1958
  const double radius = std::sqrt(-2.0 * std::log(even(bits)));
  return radius * std::cos(2.0 * std::numbers::pi * even(bits));
}
/// A factor of which ten of a hundred lie below the first and ten above the second (lognormal).
double scatter(std::mt19937& bits, double low, double high) {
  const double z = normal(bits);
  return std::exp(z / 1.28155 * (z < 0.0 ? -std::log(low) : std::log(high)));
}
/// A factor between two ends, one most likely, by rejection.
double tilted(std::mt19937& bits, double low, double high) {
  for (;;) {
    const double x = low + (high - low) * even(bits), height = x < 1.0 ? (x - low) / (1.0 - low) : (high - x) / (high - 1.0);
    if (even(bits) < height) return x;
  }
}
double quantile_of(std::vector<double> all, double share) {
  std::sort(all.begin(), all.end());
  return all[static_cast<std::size_t>(share * static_cast<double>(all.size() - 1))];
}
}  // namespace

TEST_CASE("the band of the curve holds made-up fans in 75 to 85 of 100, whatever it comes from") {
  const char* curve = "curve: [ [0 l/min, 60 Pa], [100 l/min, 40 Pa], [200 l/min, 0 Pa] ]";
  const std::string axial = "fan: { kind: axial, frame: 60 mm, thickness: 25 mm, rated: { voltage: 12 V";
  const std::string given = axial + " }, " + curve;
  const std::vector<std::pair<std::string, double (*)(std::mt19937&)>> bases = {
      {given + ", curve_from: data sheet }\n", [](std::mt19937& b) { return tilted(b, 0.75, 1.20); }},
      {given + ", curve_from: bench, curve_within: 9 % }\n", [](std::mt19937& b) { return 1.0 + 0.045 * normal(b); }},
      {given + ", curve_from: guess }\n", [](std::mt19937& b) { return scatter(b, 0.55, 1.86); }},
      {axial + ", speed: 4500 rpm } }\n", [](std::mt19937& b) { return scatter(b, 0.85, 1.29); }},
      {axial + ", current: 0.15 A } }\n",
       [](std::mt19937& b) { return scatter(b, 0.85, 1.29) * std::pow(scatter(b, 0.75, 1.39), 2); }},
      {axial + " } }\n", [](std::mt19937& b) {
         return scatter(b, 0.85, 1.29) * std::pow(scatter(b, 0.75, 1.39) * std::pow(scatter(b, 0.32, 3.7), 0.41), 2);
       }}};
  for (const auto& [text, made_up] : bases) {
    CAPTURE(text);
    const Build build = read_build({"fan.yaml", text});
    Inputs middle;
    const Outcome<SolvedFan> fan = solve_fan(build, middle);
    REQUIRE(fan);
    std::mt19937 bits(13);
    std::vector<double> pressures, flows;
    for (int i = 0; i < 1000; ++i) {
      const Ends ends = drawn_ends(build, bits);
      pressures.push_back(ends.pressure), flows.push_back(ends.flow);
    }
    const double low = quantile_of(pressures, 0.1), high = quantile_of(pressures, 0.9);
    int inside = 0;
    for (int i = 0; i < 300; ++i) {
      const double truth = in(fan->curve.shut_off(), Pa) * made_up(bits);
      inside += truth >= low && truth <= high ? 1 : 0;
    }
    CHECK(inside >= 225);
    CHECK(inside <= 255);
    CHECK(quantile_of(flows, 0.9) > 1.02 * quantile_of(flows, 0.1));
  }
}

TEST_CASE("what stands in for the label is listed as assumed") {
  struct Row {
    const char* fan;
    std::vector<const char*> keys;
  };
  const Row rows[] = {
      {"fan: { kind: axial, frame: 60 mm, rated: { voltage: 12 V } }\n",
       {"fan.thickness", "fan.rated.current", "fan.rated.speed", "fan.curve", "fan.starts_at", "fan.zero_speed",
        "fan.mount", "fan.gas_limit"}},
      {"fan: { kind: axial, frame: 60 mm, rated: { voltage: 12 V, current: 0.2 A } }\n",
       {"fan.thickness", "fan.rated.speed", "fan.rated.current_is", "fan.curve"}},
      {"fan: { kind: axial, frame: 60 mm, mount: inside, rated: { voltage: 12 V }, curve: [ [0 l/min, 60 Pa], "
       "[100 l/min, 40 Pa], [200 l/min, 0 Pa] ] }\n",
       {"fan.thickness", "fan.curve_from", "fan.rated.current"}},
  };
  for (const Row& row : rows) {
    CAPTURE(std::string(row.fan));
    const Build build = read_build({"fan.yaml", row.fan});
    Inputs inputs;
    REQUIRE(solve_fan(build, inputs));
    for (const char* key : row.keys) {
      CAPTURE(std::string(key));
      const auto& all = inputs.assumed();
      CHECK(std::any_of(all.begin(), all.end(), [&](const Assumed& a) { return a.key == key; }));
    }
  }
  CHECK_THROWS_AS(read_build({"fan.yaml", "fan: { kind: axial, curve_from: bench }\n"}), InputError);
}
