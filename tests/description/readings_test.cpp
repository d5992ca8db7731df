#include "description/readings.hpp"
#include "description/keys.hpp"
#include "description/taken_up.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
std::string readings_complaint(const std::string& text) {
  try {
    read_fan_readings({"r.yaml", text});
  } catch (const InputError& e) {
    return e.what();
  }
  return "";
}
const std::string one = "readings:\n  - { plate: 0 mm, depression: 5 mmH2O }\n";
std::string times(const std::string& text, const std::string& what) {
  int count = 0;
  for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++count;
  return std::to_string(count);
}
}  // namespace

TEST_CASE("readings with everything in them") {
  const FanReadings r = read_fan_readings(
      {"r.yaml",
       "name: bay fan\nday: 3 May\nplace: { air: 16 degC +- 1 K, barometer: 29.8 inHg }\n"
       "fan:\n  kind: axial\n  frame: 2 3/8 in\n  thickness: 25 mm\n"
       "  rated: { voltage: 12 V, current: 0.17 A, speed: 4300 rpm }\n  speed_at: [ [6 V, 2100 rpm], [12 V, 4300 rpm] "
       "]\n"
       "box: { width: 170 mm, height: 6 3/4 in, length: 260 mm }\n"
       "meter: { kind: plates in the lid, plate: 10 thou, hole_within: 0.1 mm, reads_to: 0.5 mmH2O, incline: 10 }\n"
       "readings:\n"
       "  - { plate: 0 mm, depression: 74 mmH2O +- 0.5 mmH2O, voltage: 11.9 V, current: 0.17 A, speed: 4200 rpm }\n"
       "  - { plate: 1/2 in +- 1 thou, holes: 2, depression: 0.2 inH2O, air: 61 degF }\n"});
  CHECK(*r.fan.frame == near(60.325 * mm, 1e-12));  // 2 3/8 x 25.4
  CHECK(*r.box.height == near(171.45 * mm, 1e-12));
  CHECK(*r.meter.plate == near(0.254 * mm, 1e-12));
  REQUIRE(r.readings.size() == 2);
  CHECK(r.readings[0].depression.has_spread);
  CHECK(*r.readings[1].plate == near(12.7 * mm, 1e-12));
  CHECK(*r.readings[1].depression == near(49.81778 * Pa, 1e-6));  // conventional inch of water, 249.0889 Pa
  CHECK(*r.readings[1].holes == 2);
  CHECK(r.fan.speed_at.points.size() == 2);
}

TEST_CASE("faults of readings, each with its place and what to write instead") {
  struct Row {
    std::string text, expected;
  };
  const Row rows[] = {
      {"name: none\n",
       "r.yaml:1:1: readings: a fan test needs readings\n"
       "    1 | name: none\n"
       "      | ^\n"
       "        as in `readings: [ {plate: 10 mm, depression: 4.5 mmH2O} ]`"},
      {"readings:\n  - { plate: 10 mm }\n",
       "r.yaml:2:5: readings: 1. of the list: `depression` is missing\n"
       "    2 |   - { plate: 10 mm }\n"
       "      |     ^\n"
       "        as in `depression: 4.5 mmH2O`"},
      {"readings:\n  - { depression: 5 mmH2O }\n", "r.yaml:2:5: readings: 1. of the list: `plate` is missing"},
      {"readings:\n  - { plate: 10 mm, depresion: 5 mmH2O }\n",
       "r.yaml:2:5: readings: 1. of the list: `depression` is missing"},
      {"readings:\n  - { plate: 10 V, depression: 5 mmH2O }\n",
       "r.yaml:2:17: readings.plate: 1. of the list: expected a length, got '10 V'"},
      {"readings:\n  - { plate: 10 mm, depression: -5 mmH2O }\n",
       "r.yaml:2:33: readings.depression: 1. of the list: expected a pressure from 0 Pa to 20 kPa"},
      {one + "box: { diameter: 100 mm, width: 90 mm }\n",
       "r.yaml:3:18: box.diameter: a round box has no width and height"},
      {one + "box: { width: 90 mm }\n", "r.yaml:3:15: box.width: a box with four sides needs width and height"},
      {one + "meter: { kind: straight tube }\n", "r.yaml:3:16: meter.tube: a straight tube needs its bore"},
      {one + "meter: { tube: { bore: 30 mm } }\n", "r.yaml:3:24: meter.tube: plates in the lid have no tube"},
      {"readings:\n  - { plate: 10 mm, depression: 5 mmH2O, air_speed: 3 m/s }\n",
       "r.yaml:2:53: readings.air_speed: 1. of the list: plates in the lid need no speed of the air"},
      {"readings:\n  - { plate: 0 mm, holes: 2, depression: 5 mmH2O }\n",
       "r.yaml:2:27: readings.holes: 1. of the list: a closed lid has no holes"},
      {"meter: { kind: straight tube, tube: { bore: 30 mm } }\nreadings:\n  - { depression: 5 mmH2O }\n",
       "r.yaml:3:5: readings: 1. of the list: the speed of the air is missing"},
      {"meter: { kind: pipe }\n" + one, "r.yaml:1:16: meter.kind: expected one of "},
      {"fan: { frmae: 50 mm }\n" + one, "r.yaml:1:8: fan.frmae: this key is not known"},
      {"- 5\n", "r.yaml:1:1: expected the readings of a fan test of keys and values, got a list"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const std::string said = readings_complaint(row.text);
    CHECK(said.substr(0, row.expected.size()) == row.expected);
  }
  CHECK(readings_complaint("fan: { frmae: 50 mm }\n" + one).find("did you mean `frame`?") != std::string::npos);
}

TEST_CASE("all faults in one pass") {
  const std::string said = readings_complaint(
      "place: { air: 16 V }\nfan: { frame: fifty, kind: radial }\nreadings:\n"
      "  - { plate: 10 mm }\n  - { plate: 10, depression: 5 mmH2O }\n  - { depression: 5 bar }\n");
  CHECK(times(said, "r.yaml:") == "7");
}

TEST_CASE("hostile readings are faults, nothing worse") {
  for (const std::string text :
       {"readings:\n  - { plate: 1e999 mm, depression: 5 mmH2O }\n",
        "readings:\n  - { plate: nan mm, depression: .inf }\n", "readings: { plate: 0 mm }\n",
        "readings:\n  - - - - 5\n", "readings: &a [ *a ]\n", "readings:\n  - {}\n", ",", "",
        "readings:\n  - { plate: 10 mm, plate: 12 mm, depression: 5 mmH2O }\n", "\xff\xfe", "readings: []\n",
        "readings:\n  - { plate: 10 mm, holes: 1000000000000, depression: 5 mmH2O }\n"}) {
    CAPTURE(text);
    CHECK(readings_complaint(text).starts_with("r.yaml:"));
  }
  std::string many = "readings:\n";
  for (int i = 0; i < 201; ++i) many += "  - { plate: 0 mm, depression: 5 Pa }\n";
  CHECK(readings_complaint(many).find("expected 1 to 200 of them, got 201") != std::string::npos);
}

TEST_CASE("the template names every key and reads back without a fault") {
  const std::string text = new_fan_readings();
  CHECK(readings_complaint(text).starts_with("r.yaml:1:1: readings: a fan test needs readings"));
  CHECK_NOTHROW(read_fan_readings({"r.yaml", text}, ReadingsAre::to_come));
  std::string used = taken_up(text);
  for (const std::string two : {"  diameter: ", "    bore: ", "    length: ", "    mean: "})  // of a round box, of a tube
    used.insert(used.find("\n" + two) + 1, "#");
  CHECK(readings_complaint(used).empty());
  CHECK(read_fan_readings({"r.yaml", used}).readings.size() == 5);
  for (const Key& key : list_keys<FanReadings>()) {
    CAPTURE(std::string(key.field.key));
    CHECK(text.find(std::string(key.field.key) + ":") != std::string::npos);
    if (key.section != "readings" && !key.is_section && key.field.key != "name")
      CHECK(text.find(std::string(key.field.example)) != std::string::npos);
  }
  std::size_t start = 0;
  for (auto end = text.find('\n'); end != std::string::npos; start = end + 1, end = text.find('\n', start))
    CHECK(end - start <= 80);
}
