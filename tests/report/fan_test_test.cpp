#include "report/fan_test.hpp"
#include "draught/orifice.hpp"
#include "near.hpp"
#include "report/picture/fan_test.hpp"
#include "report/templates/orifice_plates.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::description;
using namespace lumwright::fan_test;
using namespace lumwright::report;

namespace {
FanReadings example() {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/readings/unmarked-fan.yaml", std::ios::binary);
  return read_fan_readings({"unmarked-fan.yaml", {std::istreambuf_iterator<char>(in), {}}});
}
bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }
std::size_t widest(const std::string& text) {
  std::istringstream in(text);
  std::size_t most = 0;
  for (std::string line; std::getline(in, line);) most = std::max(most, line.size());
  return most;
}
}  // namespace

TEST_CASE("the report tells the ends, every reading and the lines to copy") {
  const FanTest test = fan_test::fan_test(example());
  const std::string text = fan_test_report(test, {});
  CHECK(has(text, "unmarked fan from a drive bay: "));
  CHECK(text.ends_with(curve_lines(test)));
  CHECK(has(text, "2 x 40.0 mm"));
  CHECK(has(text, "the speed was not measured"));
  CHECK(has(text, "discharge of the holes"));
  CHECK(widest(text.substr(0, text.find("Lines for a description"))) <= 80);
  for (const int width : {40, 60, 120}) CHECK_NOTHROW(fan_test_report(test, {.width = width}));
  CHECK(has(fan_test_report(test, {.units = UnitSystem::imperial}), "inH2O"));
}

TEST_CASE("what to read next lies on the curve, far from what was read, where the band is widest") {
  FanReadings readings = example();
  readings.readings.erase(readings.readings.begin() + 5, readings.readings.begin() + 8);  // between 114 and 477 l/min
  const FanTest test = fan_test::fan_test(readings);
  const TestBox box = test_box_for(expected_fan(readings));
  const auto next = next_plate(test, box);
  REQUIRE(next);
  const double litres = in(next->at.flow, m3_per_s) * 60000.0;
  CHECK(litres > 114.0);
  CHECK(litres < 477.0);
  // the plate's own law, p goes with the square of q, through what is expected of it
  const double share = next->at.flow / next->plate.flow;
  CHECK(in(next->at.pressure, Pa) == near(in(next->plate.depression, Pa) * share * share, 1e-6));
  CHECK(in(test.fit.at(next->at.flow).pressure, Pa) == near(in(next->at.pressure, Pa), 0.03));
  CHECK(has(fan_test_report(test, {}, next), "Read next: the plate with a hole of"));
  const std::string picture = fan_test_picture(test, next, {});
  CHECK(has(picture, "read this next"));
  CHECK(has(picture, "<svg"));
  std::size_t dots = 0;
  for (auto at = picture.find("dot-hot\""); at != std::string::npos; at = picture.find("dot-hot\"", at + 1)) ++dots;
  CHECK(dots == readings.readings.size());
}

TEST_CASE("the test box is drawn with its sizes before the plates, on one sheet of any paper") {
  const draught::ExpectedFan fan = expected_fan(example());
  const TestBox box = test_box_for(fan);
  for (const char* paper : {"A4", "Letter", "A3"}) {
    const auto files = plate_files(box, fan, paper, {});
    REQUIRE(files.size() > 2);
    CHECK(has(files[1].text, "to the U-tube"));
    for (const Length& size : {box.side, box.length, box.screen})
      CHECK(has(files[1].text, fmt::format("{:.0f}", in(size, mm))));
    CHECK_FALSE(has(files[2].text, "to the U-tube"));
  }
}

TEST_CASE("warnings come first, with what to do") {
  FanReadings readings = example();
  readings.readings.erase(readings.readings.begin());
  const std::string text = fan_test_report(fan_test::fan_test(readings), {});
  CHECK(text.find("There is no reading with the lid closed") < text.find("Curve"));
  CHECK(has(text, "close the lid with a blank plate"));
}

TEST_CASE("JSON says what the test says, in SI") {
  FanReadings readings = example();
  readings.readings[3].depression.band = exactly(0.5 * Pa);
  const FanTest test = fan_test::fan_test(readings);
  const auto json = nlohmann::json::parse(fan_test_json(test));
  CHECK(json["format"] == "lumwright/1");
  const auto& t = json["fan_test"];
  CHECK(t["shut_off"]["value"].get<double>() == near(in(test.fit.shut_off.value, Pa), 1e-12));
  CHECK(t["shut_off"]["unit"] == "Pa");
  CHECK(t["free_air"]["unit"] == "m3/s");
  CHECK(t["curve"].size() == test.curve.size());
  CHECK(t["curve"][0]["pressure"]["low"].get<double>() < t["curve"][0]["pressure"]["high"].get<double>());
  CHECK(t["readings"].size() == 9);
  CHECK(t["readings"][3]["left_out"].is_string());
  CHECK_FALSE(t["readings"][3].contains("flow"));
  CHECK(t["readings"][4]["left_out"].is_null());
  CHECK(t["warnings"][0]["id"] == "left_out");
  CHECK(t["description"] == curve_lines(test));
}

TEST_CASE("the table has seven columns in every line") {
  const std::string csv = fan_test_csv(fan_test::fan_test(example()));
  std::istringstream in(csv);
  std::size_t curve = 0, readings = 0;
  for (std::string line; std::getline(in, line);) {
    CHECK(std::count(line.begin(), line.end(), ',') == 6);
    curve += line.starts_with("curve,") ? 1 : 0;
    readings += line.starts_with("reading,") ? 1 : 0;
  }
  CHECK(curve == 41);
  CHECK(readings == 9);
  CHECK(has(csv, "reading,1,0,"));
}

TEST_CASE("the sheet of the box: sizes from its rules, costs from their laws, cautions") {
  const ExpectedFan fan{.kind = data::FanKind::axial,
                        .frame = 60.0 * mm,
                        .thickness = 25.0 * mm,
                        .shut_off = 40.0 * Pa,
                        .free_air = 11.1 * litre_per_s};
  const std::string text = test_box_sheet(fan, {});
  // 60 mm by the root of 8 is 169.7 mm
  CHECK(has(text, "inside 170 mm by 170 mm"));
  // hand: 0.78 / 0.61 - 1 = 28 %
  CHECK(has(text, "28 % more air"));
  CHECK(has(text, "`incline: 10`"));  // 40 Pa is 4 mm of water, half a millimetre more than a tenth of it
  CHECK(has(text, "Moving blades."));
  CHECK(has(text, "Sharp sheet edges, and the drill."));
  CHECK(widest(text) <= 80);
  const ExpectedFan strong{.kind = data::FanKind::axial,
                           .frame = 40.0 * mm,
                           .thickness = 28.0 * mm,
                           .shut_off = 415.0 * Pa,
                           .free_air = 12.7 * litre_per_s};
  CHECK_FALSE(has(test_box_sheet(strong, {}), "incline"));
  CHECK(has(test_box_sheet(expected_fan(example()), {}), "A test box for a fan of 60.0 mm"));
  CHECK_NOTHROW(test_box_sheet(fan, {.units = UnitSystem::imperial, .width = 60}));
}
