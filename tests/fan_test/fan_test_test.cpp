#include "fan_test/fan_test.hpp"
#include "description/reader.hpp"
#include "draught/fan_estimate.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <numbers>
#include <random>

using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::draught;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::fan_test;

namespace {
/// Normal numbers that are the same everywhere (Box and Muller 1958 on mt19937, whose sequence the standard fixes).
class Noise {
 public:
  explicit Noise(unsigned seed) : bits_(seed) {}
  double uniform() { return (static_cast<double>(bits_()) + 0.5) / 4294967296.0; }
  double normal() {
    const double radius = std::sqrt(-2.0 * std::log(uniform()));  // in this order, so that compilers agree
    return radius * std::cos(2.0 * std::numbers::pi * uniform());
  }

 private:
  std::mt19937 bits_;
};

/// An invented fan, pressure against flow; nothing of it comes from the program's own shapes.
struct SyntheticFan {
  const char* name;
  const char* kind;
  double pascals, litres;  // shut, in free air (per second)
  double (*shape)(double share);
  double pressure(double flow) const { return pascals * shape(flow / litres); }
};
double straight(double x) { return 1.0 - x; }
double bent(double x) { return 1.0 - 0.7 * x - 0.3 * x * x * x; }
double kneed(double x) {  // a soft knee at half flow
  return (1.0 - 0.75 * x) * (1.0 - std::pow(x, 6)) / (1.0 - 0.05 * x);
}
double flat(double x) { return 1.0 - x * x * (0.4 + 0.6 * x); }

constexpr double mm_water = 9.80665;
/// Where fan and plate agree: p(Q) = rho/2 (Q / Cd A)^2, by halving.
double meeting_flow(const SyntheticFan& fan, double cd_area, double rho) {
  double low = 0.0, high = fan.litres;
  for (int i = 0; i < 60; ++i) {
    const double q = 0.5 * (low + high);
    (fan.pressure(q) > 0.5 * rho * std::pow(1e-3 * q / cd_area, 2) ? low : high) = q;
  }
  return 0.5 * (low + high);
}
enum class Reading { normal, even };
/// A day at the bench: room air of 1.2 kg/m3, one discharge coefficient for all plates, drawn with its own spread,
/// holes as good as a caliper, and a U-tube read to half a millimetre.
std::string bench_day(const SyntheticFan& fan, unsigned seed, Reading reading) {
  Noise noise(seed);
  const double cd = 0.62 * (1.0 + 0.015 * noise.normal()), rho = 1.2;
  std::string text = fmt::format(
      "place: {{ air: 293.15 K, barometer: 100979 Pa }}\n"  // 1.2 R T, R = 287.05 J/kgK
      "fan: {{ kind: {}, frame: 50 mm, thickness: 20 mm, rated: {{ voltage: 12 V }} }}\n"
      "box: {{ width: 160 mm, height: 160 mm, length: 260 mm }}\n"
      "meter: {{ plate: 0.25 mm }}\nreadings:\n",
      fan.kind);
  for (const double d : {0.0, 6.0, 8.0, 10.0, 14.0, 20.0, 28.0, 36.0}) {
    const double area = std::numbers::pi / 4.0 * std::pow(1e-3 * (d + 0.025 * noise.normal()), 2);
    const double truth = fan.pressure(d > 0.0 ? meeting_flow(fan, cd * area, rho) : 0.0) / mm_water;
    const double off = reading == Reading::normal ? 0.25 * noise.normal() : noise.uniform() - 0.5;
    text +=
        fmt::format("  - {{ plate: {} mm, depression: {:.6f} mmH2O, voltage: 12 V }}\n", d, std::max(0.0, truth + off));
  }
  return text;
}
FanTest tested(const std::string& text) { return fan_test::fan_test(read_fan_readings({"bench.yaml", text})); }
const FanTestWarning* find(const FanTest& test, const std::string& id) {
  const auto found = std::find_if(test.warnings.begin(), test.warnings.end(), [&](auto& w) { return w.id == id; });
  return found == test.warnings.end() ? nullptr : &*found;
}
std::string readings_text(const std::string& box, const std::string& rows, const std::string& fan = "") {
  return "place: { air: 20 degC, barometer: 1013.25 mbar }\nfan: { kind: axial, frame: 50 mm, thickness: 20 mm, rated: "
         "{ "
         "voltage: 12 V" +
         fan + " } }\nbox: " + box + "\nmeter: { plate: 0.25 mm, reads_to: 0.1 mmH2O }\nreadings:\n" + rows;
}
const std::string good_box = "{ width: 160 mm, height: 160 mm, length: 260 mm }";
std::string row(double plate, double depression, const std::string& more = "") {
  return fmt::format("  - {{ plate: {} mm, depression: {} mmH2O{} }}\n", plate, depression, more);
}
const std::string good_rows =
    row(0, 8.0) + row(8, 7.4) + row(12, 6.7) + row(16, 5.9) + row(22, 4.6) + row(32, 2.8) + row(40, 1.9);
std::string without(const std::string& rows, const std::string& one) {
  std::string out = rows;
  return out.erase(out.find(one), one.size());
}
}  // namespace

TEST_CASE("a synthetic fan through the whole chain lies inside its band in 85 of 100 days") {
  const SyntheticFan fans[] = {{"straight", "axial", 58, 6.5, straight},
                               {"bent", "axial", 85, 7.0, bent},
                               {"kneed", "axial", 120, 9.0, kneed},
                               {"flat", "centrifugal", 118, 2.2, flat}};
  for (const SyntheticFan& fan : fans)
    for (const Reading reading : {Reading::normal, Reading::even}) {
      CAPTURE(std::string(fan.name));
      CAPTURE(reading == Reading::normal);
      int inside = 0;
      double width = 0.0;
      for (unsigned seed = 1; seed <= 100; ++seed) {
        const FanTest test = tested(bench_day(fan, seed, reading));
        bool held = true;
        for (int i = 0; i <= 50; ++i) {
          const double q = fan.litres * i / 50.0;
          if (q * litre_per_s > test.fit.free_air.value) break;
          const CurveBandPoint p = test.fit.at(q * litre_per_s);
          held = held && p.low <= fan.pressure(q) * Pa && fan.pressure(q) * Pa <= p.high;
        }
        held = held && test.fit.free_air.low <= fan.litres * litre_per_s &&
               fan.litres * litre_per_s <= test.fit.free_air.high;
        inside += held ? 1 : 0;
        width += test.pressure_within / 100.0;
      }
      CHECK(inside >= 85);
      CHECK(width < 0.45);  // a band that holds everything tells nothing
    }
}

TEST_CASE("one reading by hand, from the U-tube to the standard point") {
  const FanTest test = tested(
      "place: { air: 20 degC, barometer: 1013.25 mbar }\n"
      "fan: { kind: axial, frame: 50 mm, thickness: 20 mm, rated: { voltage: 12 V, speed: 5000 rpm } }\n"
      "meter: { plate: 0.25 mm, discharge: 0.60, incline: 10 }\nreadings:\n" +
      row(0, 60.0, ", speed: 5000 rpm") + row(20, 50.0, ", speed: 4800 rpm") + row(30, 20.0, ", speed: 5000 rpm"));
  const TestedPoint& p = test.points.at(1);
  REQUIRE(p.left_out.empty());
  CHECK(p.depression == near(5.0 * mmH2O, 1e-12));
  // Hand: 2.04831 g/s through 20 mm at 49.03325 Pa and 1.20412 kg/m3; the air at the fan thinner by 49/101325; Q ~ n
  // and p ~ rho n^2 (ISO 5801)
  CHECK(p.metered->flow == near(2.04831 * g_per_s, 2e-5));
  CHECK(p.point.flow == near(1.70109e-3 * (1.0 + 4.8393e-4) * (5000.0 / 4800.0) * m3_per_s, 3e-5));
  CHECK(p.point.pressure ==
        near(49.03325 * (1.2 / (1.20412 * (1.0 - 4.8393e-4))) * std::pow(5000.0 / 4800.0, 2) * Pa, 3e-5));
  CHECK(test.speed_basis.find("3 of 3 readings tell the fan's speed") != std::string::npos);
}

TEST_CASE("a sound test has nothing to warn of") {
  const FanTest test = tested(readings_text(good_box, good_rows));
  for (const FanTestWarning& w : test.warnings) MESSAGE(w.id << ": " << w.text);
  CHECK(test.warnings.empty());
}

TEST_CASE("each weakness is warned of by itself") {
  struct Row {
    const char* id;
    std::string box, rows;
  };
  const std::string closed = row(0, 8.0);
  const Row rows[] = {
      {"no_closed_lid", good_box, without(good_rows, closed)},
      {"leak", good_box, row(0, 6.4) + without(good_rows, closed)},
      {"small_box", "{ width: 90 mm, height: 90 mm, length: 260 mm }", good_rows},
      {"short_box", "{ width: 160 mm, height: 160 mm, length: 150 mm }", good_rows},
      {"box_unknown", "{ length: 260 mm }", good_rows},
      {"near_shut_off", good_box, closed + row(22, 4.6) + row(28, 3.4) + row(32, 2.8) + row(40, 1.9)},
      {"coverage", good_box, closed + row(4, 7.9) + row(5, 7.8) + row(6, 7.7) + row(8, 7.4)},
      {"few_readings", good_box, closed + row(8, 7.4) + row(12, 6.7) + row(40, 1.9)},
      {"meter_range", good_box, good_rows + row(2, 7.9)},
      {"left_out", good_box, good_rows + row(40, 0.05)},
      {"other_voltage", good_box, good_rows + row(10, 4.4, ", voltage: 9.5 V")},
  };
  const FanTest sound = tested(readings_text(good_box, good_rows));
  for (const Row& r : rows) {
    CAPTURE(r.id);
    const FanTest test = tested(readings_text(r.box, r.rows));
    REQUIRE(find(test, r.id) != nullptr);
    CHECK_FALSE(find(test, r.id)->action.empty());
    CHECK(find(sound, r.id) == nullptr);
  }
  // 60 Pa at a tip speed of 2 m/s: psi of 25, where blades reach 0.9 at most (Eck 1973, from memory)
  CHECK(find(tested(readings_text(good_box, good_rows, ", speed: 800 rpm")), "not_credible") != nullptr);
}

TEST_CASE("the lines read back as a description, whose fan has the same curve") {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/readings/unmarked-fan.yaml", std::ios::binary);
  REQUIRE(in);
  const FanTest test = tested({std::istreambuf_iterator<char>(in), {}});
  const Build build = read_build({"lines.yaml", curve_lines(test)});
  CHECK(*build.fan.rated.voltage == 12.0 * V);
  CHECK(*build.fan.frame == 60.0 * mm);
  std::vector<FanPoint> points;
  for (const auto& [flow, pressure] : build.fan.curve.points) points.push_back({flow, pressure});
  const FanCurve curve = curve_from_sheet({.kind = data::FanKind::axial, .speed = 4000.0 * rpm, .points = points});
  CHECK(curve.free_air() == near(test.fit.free_air.value, 5e-3));
  for (double share = 0.0; share < 0.95; share += 0.05)
    CHECK(curve.static_pressure(share * test.fit.free_air.value) ==
          near(test.fit.at(share * test.fit.free_air.value).pressure, 2e-2));
}

TEST_CASE("a straight tube with a pitot tube, and one with an anemometer") {
  const std::string head =
      "fan: { kind: centrifugal, frame: 75 mm, thickness: 30 mm }\nplace: { air: 20 degC, barometer: 1013.25 mbar }\n"
      "meter: { kind: straight tube, reads_to: 0.1 mmH2O, tube: { bore: 30 mm, length: 400 mm, mean: 0.8 } "
      "}\nreadings:\n"
      "  - { plate: 0 mm, depression: 20 mmH2O }\n";
  const FanTest pitot = tested(head +
                               "  - { depression: 18 mmH2O, velocity_head: 3 mmH2O }\n"
                               "  - { depression: 9 mmH2O, velocity_head: 8 mmH2O }\n");
  // hand: sqrt(2 3 mmH2O / 1.20412) 0.8 (pi/4) (30 mm)^2
  CHECK(pitot.points[1].metered->flow / (1.20412 * kg_per_m3) == near(3.95298e-3 * m3_per_s, 1e-4));
  const FanTest wheel = tested(head +
                               "  - { depression: 18 mmH2O, air_speed: 6.990 m/s }\n"
                               "  - { depression: 9 mmH2O, air_speed: 11.41 m/s }\n");
  CHECK(wheel.points[1].metered->flow == near(pitot.points[1].metered->flow, 1e-3));
}

TEST_CASE("what is not said is assumed and listed, and no curve from too little") {
  const FanTest test = tested("readings:\n" + good_rows);
  for (const char* key :
       {"fan.kind", "fan.thickness", "place.air", "place.barometer", "meter.plate", "meter.reads_to"}) {
    CAPTURE(key);
    CHECK(std::any_of(test.assumed.begin(), test.assumed.end(), [&](const Assumed& a) { return a.key == key; }));
  }
  CHECK_THROWS_AS(tested("readings:\n" + row(0, 8.0)), ModelError);
  CHECK_THROWS_WITH_AS(
      tested("readings:\n" + row(0, 8.0) + row(20, 0.1)),
      "a fan's curve needs readings at two flows or more (reading 2, 20.0 mm, is not used: too little to "
      "tell from nothing by a U-tube read to 0.500 mmH2O)",
      ModelError);
  CHECK_THROWS_AS(expected_fan(read_fan_readings({"b.yaml", "readings:\n" + good_rows})), ModelError);
}

TEST_CASE("cautions of the bench") {
  const auto cautions = fan_test_cautions();
  REQUIRE(cautions.size() == 2);
  CHECK(cautions[0].id == "moving-blades");
  CHECK(cautions[1].id == "sharp-edges");
}

namespace {
/// The fault that a test of these readings ends in; without a message where it ends in none.
Fault fault_of(const std::string& text) {
  try {
    static_cast<void>(tested(text));
  } catch (const ReadingFault& e) {
    return e.fault;
  }
  return {};
}
}  // namespace

TEST_CASE("a reading that cannot be is named, and no number that is none leaves the bench") {
  // a speed with a slipped decimal point once came out as -nan in the table
  const Fault slipped = fault_of(
      "readings:\n- { depression: 21.72 mmH2O, plate: 0 mm }\n"
      "- { depression: 18.36 mmH2O, plate: 0 mm, speed: 80000 rpm }\n"
      "- { depression: 14.34 mmH2O, plate: 0 mm, voltage: 5.85 V, speed: 217.81 rpm }\n"
      "- { depression: 5.86 mmH2O, plate: 17.27 mm }\n");
  CHECK(slipped.message.find("3. of the list: ") == 0);
  CHECK(slipped.key == "readings.speed");
  CHECK(slipped.at.line == 4);
  const Fault rising = fault_of(readings_text(good_box, row(0, 4.0) + row(8, 5.0) + row(20, 6.0)));
  CHECK(rising.message.find("3. of the list: ") == 0);
  CHECK(rising.key == "readings.depression");
  // more than a description takes: 20 kPa, by speeds that the laws still carry
  const Fault strong = fault_of(readings_text(good_box,
                                              row(0, 1900.0, ", speed: 2000 rpm") + row(8, 900, ", speed: 2000 rpm") +
                                                  row(20, 100, ", speed: 2000 rpm"),
                                              ", speed: 6000 rpm"));
  CHECK(strong.message.find("1. of the list: ") == 0);
  CHECK(strong.message.find("fan.curve") != std::string::npos);
}

TEST_CASE("lines hold what was given and no more, and a description takes them") {
  const std::string rows = "readings:\n" + good_rows;
  const std::string silent = curve_lines(tested(rows));
  CHECK(silent.find("thickness") == std::string::npos);
  CHECK(silent.find("\n  kind") == std::string::npos);
  CHECK_NOTHROW(read_build({"lines.yaml", silent}));
  const std::string told = curve_lines(tested("fan: { kind: axial, thickness: 15 mm }\n" + rows));
  CHECK(told.find("thickness: 15.0 mm") != std::string::npos);
  CHECK(told.find("\n  kind: axial") != std::string::npos);
  // whatever random readings come to: a fault, no curve, or lines that read back
  Noise noise(7);
  for (int trial = 0; trial < 60; ++trial) {
    std::string text = "readings:\n";
    for (int i = 0; i < 4; ++i)
      text += row(i * 12.0 * noise.uniform(), std::pow(10.0, 3.3 * noise.uniform()),
                  fmt::format(", speed: {:.0f} rpm", std::pow(10.0, 2.5 + 2.3 * noise.uniform())));
    try {
      const FanTest test = tested(text);
      CHECK_NOTHROW(read_build({"lines.yaml", curve_lines(test)}));
      for (const CurveBandPoint& p : test.fit.curve) CHECK(std::isfinite(in(p.high - p.low, Pa)));
    } catch (const ModelError&) {
    } catch (const InputError&) {
    }
  }
}
