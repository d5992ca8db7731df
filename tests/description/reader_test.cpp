#include "description/reader.hpp"
#include "description/description.hpp"
#include "near.hpp"
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;

TEST_CASE("a full description is read whole, each value with its spread and its unit") {
  const Build build = read(full_description);
  CHECK(build.file == "b.yaml");
  CHECK(*build.name == "Tarn Beck lighting-up fan");
  CHECK(*build.engine.boiler.water == near(420.0 * ml, 1e-15));
  CHECK(in(build.engine.boiler.working.band->value.above_barometer, bar) == near(3.5, 1e-15));
  CHECK(build.engine.chimney.bore.band->low == near(17.17 * mm, 1e-15));
  CHECK(build.engine.chimney.bore.band->high == near(17.23 * mm, 1e-15));
  CHECK(build.engine.chimney.bore.has_spread);
  CHECK(build.engine.chimney.bore.at.line == 14);
  CHECK_FALSE(build.engine.chimney.depth.has_spread);
  CHECK(*build.adapter.tube.outside == near(15.875 * mm, 1e-15));  // hand: 5/8 x 25.4
  CHECK(build.adapter.tube.outside.unit == "in");
  CHECK(*build.engine.tubes.count == 8);
  CHECK(*build.fuel.kind == "lump charcoal");
  CHECK(build.fuel.lit_at_start.band->high == near(0.15, 1e-14));
  CHECK(build.fuel.lit_at_start.unit == "%");
  CHECK(build.fuel.carbon_monoxide_share.unit.empty());
  CHECK(in_degC(*build.fan.gas_limit) == near(70.0, 1e-12));  // hand: (158 - 32) / 1.8
  REQUIRE(build.fan.curve.points.size() == 4);
  CHECK(build.fan.curve.points[1].x == near(2e-3 * m3_per_s, 1e-15));
  CHECK(build.fan.curve.points[1].y == near(44.0 * Pa, 1e-15));
  CHECK(build.fan.curve.x_unit == "l/min");
  REQUIRE(build.supply.step_up.efficiency.points.size() == 2);
  CHECK(build.supply.step_up.efficiency.points[1].share == near(0.85, 1e-15));
  CHECK(*build.draught.air_flow == near(0.4 * g_per_s, 1e-15));
}

TEST_CASE("any part may be missing, and a section whose keys are all commented out says nothing") {
  CHECK_FALSE(read("name: x\n").engine.chimney.bore);
  CHECK(*read("fan: { frame: 40 mm }\n").fan.frame == near(40.0 * mm, 1e-15));
  CHECK_FALSE(read("fan:\n  # frame: 40 mm\nengine:\n").fan.frame);
  CHECK(*read("name: \"304\"\nengine: {chimney: {material: 304}}\n").engine.chimney.material == "304");
}

TEST_CASE("each kind of fault, as the user sees it") {
  struct Row {
    std::string text, expected;
  };
  const std::vector<Row> rows{
      {"engine:\n  chimney: { bore: 14 V }\n",
       "b.yaml:2:23: engine.chimney.bore: expected a length, got '14 V'\n"
       "    2 |   chimney: { bore: 14 V }\n"
       "      |                       ^\n"
       "        `V` measures a voltage; use one of mm, cm, m, um, in, thou, ft"},
      {"engine:\n  chimney:\n    bore: \"17,250 mm\"\n",
       "b.yaml:3:14: engine.chimney.bore: expected a length, got '17,250 mm'\n"
       "    3 |     bore: \"17,250 mm\"\n"
       "      |              ^\n"
       "        a comma before three digits may mean thousands: write 17250 or 17.250"},
      {"engine:\n  chimney: { bore: 17,2 mm, depth: 36 mm }\n",
       "b.yaml:2:20: engine.chimney.bore: the comma in '17,2 mm' ends the value here, as commas do in braces\n"
       "    2 |   chimney: { bore: 17,2 mm, depth: 36 mm }\n"
       "      |                    ^^^^^^^\n"
       "        write 17.2 mm, or put it in quotes: \"17,2 mm\""},
      {"engine:\n  chimney:\n    bore:17.2 mm\n",
       "b.yaml:3:9: engine.chimney: a blank is missing behind this colon\n"
       "    3 |     bore:17.2 mm\n"
       "      |         ^\n"
       "        write `bore: 17.2 mm`"},
      {"engine:\n  chimney: { bore:17.2 mm, depth: 36 mm }\n",
       "b.yaml:2:18: engine.chimney: a blank is missing behind this colon\n"
       "    2 |   chimney: { bore:17.2 mm, depth: 36 mm }\n"
       "      |                  ^\n"
       "        write `bore: 17.2 mm`"},
      {"engine:\n  chimney:{ bore: 17.2 mm }\n",
       "b.yaml:2:10: engine: a blank is missing behind this colon\n"
       "    2 |   chimney:{ bore: 17.2 mm }\n"
       "      |          ^\n"
       "        write `chimney: ` before the value"},
      {"bore:17.2 mm\n",
       "b.yaml:1:5: a blank is missing behind this colon\n"
       "    1 | bore:17.2 mm\n"
       "      |     ^\n"
       "        write `bore: 17.2 mm`"},
      {"engine:\n  chimney:\n    brore: 17 mm\n",
       "b.yaml:3:5: engine.chimney.brore: this key is not known\n"
       "    3 |     brore: 17 mm\n"
       "      |     ^^^^^\n"
       "        did you mean `bore`?"},
      {"adapter: { depth: 17 mm }\n",
       "b.yaml:1:12: adapter.depth: this key is not known\n"
       "    1 | adapter: { depth: 17 mm }\n"
       "      |            ^^^^^\n"
       "        `depth` belongs under engine.chimney"},
      {"bore: 17 mm\n",
       "b.yaml:1:1: bore: this key is not known\n"
       "    1 | bore: 17 mm\n"
       "      | ^^^^\n"
       "        `bore` belongs under engine.tubes, engine.chimney or engine.cylinders"},
      {"engine: { name: x }\n",
       "b.yaml:1:11: engine.name: this key is not known\n"
       "    1 | engine: { name: x }\n"
       "      |           ^^^^\n"
       "        `name` belongs at the top level"},
      {"want: { colour: red }\n",
       "b.yaml:1:9: want.colour: this key is not known\n"
       "    1 | want: { colour: red }\n"
       "      |         ^^^^^^\n"
       "        known here: steam_within, light_ups_per_charge"},
      {"place:\n  air: 5 degC\n  air: 6 degC\n",
       "b.yaml:3:3: place.air: this key is given twice\n"
       "    3 |   air: 6 degC\n"
       "      |   ^^^\n"
       "        it stands first on line 2"},
      {"place:\n  air: [12 degC]\n",
       "b.yaml:2:8: place.air: expected a temperature, got a list\n"
       "    2 |   air: [12 degC]\n"
       "      |        ^"},
      {"place:\n  air: 12\n    degC\n",
       "b.yaml:2:8: place.air: expected a temperature, got text over several lines\n"
       "    2 |   air: 12\n"
       "      |        ^^\n"
       "        write it on one line"},
      {"engine: 5 mm\n",
       "b.yaml:1:9: engine: expected a section of keys and values, got '5 mm'\n"
       "    1 | engine: 5 mm\n"
       "      |         ^^^^\n"
       "        known here: boiler, firebox, grate, air_entry, tubes, chimney, leakage, cylinders"},
      {"engine: { tubes: { count: 8.5 } }\n",
       "b.yaml:1:27: engine.tubes.count: expected a whole number from 1 to 500, got '8.5'\n"
       "    1 | engine: { tubes: { count: 8.5 } }\n"
       "      |                           ^^^"},
      {"engine: { tubes: { count: 501 } }\n",
       "b.yaml:1:27: engine.tubes.count: expected a whole number from 1 to 500, got '501'\n"
       "    1 | engine: { tubes: { count: 501 } }\n"
       "      |                           ^^^"},
      {"fan: { kind: axail }\n",
       "b.yaml:1:14: fan.kind: expected one of the words known here, got 'axail'\n"
       "    1 | fan: { kind: axail }\n"
       "      |              ^^^^^\n"
       "        did you mean `axial`? known: axial, centrifugal"},
      {"fan: { mount: \"\" }\n",
       "b.yaml:1:15: fan.mount: expected one of the words known here, got ''\n"
       "    1 | fan: { mount: \"\" }\n"
       "      |               ^^\n"
       "        known: outside, inside"},
      {"name: \"\"\n",
       "b.yaml:1:7: name: expected a short text, got nothing\n"
       "    1 | name: \"\"\n"
       "      |       ^^\n"
       "        1 to 200 characters"},
      {"name: \"bell \\a\"\n",
       "b.yaml:1:7: name: expected a short text, got 'bell ?'\n"
       "    1 | name: \"bell \\a\"\n"
       "      |       ^^^^^^^^^\n"
       "        it holds a control character"},
      {"engine: { chimney: { bore: 2 m } }\n",
       "b.yaml:1:28: engine.chimney.bore: expected a length from 3 mm to 300 mm, got '2 m'\n"
       "    1 | engine: { chimney: { bore: 2 m } }\n"
       "      |                            ^^^"},
      {"engine: { chimney: { bore: 3.02 mm +- 0.05 mm } }\n",
       "b.yaml:1:28: engine.chimney.bore: expected a length from 3 mm to 300 mm, got '3.02 mm +- 0.05 mm'\n"
       "    1 | engine: { chimney: { bore: 3.02 mm +- 0.05 mm } }\n"
       "      |                            ^^^^^^^^^^^^^^^^^^\n"
       "        its spread reaches 2.970 mm"},
      {"engine: { grate: { open_share: 350 } }\n",
       "b.yaml:1:32: engine.grate.open_share: expected a pure number or a percentage from 2 % to 95 %, got '350'\n"
       "    1 | engine: { grate: { open_share: 350 } }\n"
       "      |                                ^^^"},
      {"adapter: { tube: { outside: 22 swg } }\n",  // BS 3737, ASTM B258, US manufacturers' standard gauge: 0.028,
                                                    // 0.02535, 0.0299 in
       "b.yaml:1:29: adapter.tube.outside: expected a length, got the gauge number '22 swg'\n"
       "    1 | adapter: { tube: { outside: 22 swg } }\n"
       "      |                             ^^^^^^\n"
       "        number 22 is 0.711 mm (0.0280 in) in SWG, 0.644 mm (0.0254 in) in AWG, 0.759 mm (0.0299 in)\n"
       "        in US steel: measure it, and write mm or thou"},
      {"adapter: { tube: { wall: 99 gauge } }\n",
       "b.yaml:1:26: adapter.tube.wall: expected a length, got the gauge number '99 gauge'\n"
       "    1 | adapter: { tube: { wall: 99 gauge } }\n"
       "      |                          ^^^^^^^^\n"
       "        measure it, and write mm or thou, or `22 swg`"},
      {"fan: { curve: 5 Pa }\n",
       "b.yaml:1:15: fan.curve: expected a list of pairs, got '5 Pa'\n"
       "    1 | fan: { curve: 5 Pa }\n"
       "      |               ^^^^\n"
       "        as in [ [0 l/min, 58 Pa], [120 l/min, 44 Pa], [240 l/min, 26 Pa], [390 l/min, 0 Pa] ]"},
      {"fan: { speed_at: [ [7 V, 3100 rpm] ] }\n",
       "b.yaml:1:18: fan.speed_at: expected 2 to 100 points, got 1\n"
       "    1 | fan: { speed_at: [ [7 V, 3100 rpm] ] }\n"
       "      |                  ^\n"
       "        as in [ [7 V, 3100 rpm], [12 V, 5200 rpm] ]"},
      {"fan: { speed_at: [ [7 V, 3100 rpm], [12 V], [13 V, 5 V], [6 V, 1 rpm +- 1 rpm] ] }\n",
       "b.yaml:1:37: fan.speed_at: point 2: expected a pair, got 1 value\n"
       "    1 | fan: { speed_at: [ [7 V, 3100 rpm], [12 V], [13 V, 5 V], [6 V, 1 rpm +- 1 rpm] ] }\n"
       "      |                                     ^\n"
       "        as in [ [7 V, 3100 rpm], [12 V, 5200 rpm] ]\n"
       "b.yaml:1:54: fan.speed_at: point 3: expected a speed of rotation, got '5 V'\n"
       "    1 | fan: { speed_at: [ [7 V, 3100 rpm], [12 V], [13 V, 5 V], [6 V, 1 rpm +- 1 rpm] ] }\n"
       "      |                                                      ^\n"
       "        `V` measures a voltage; use one of rpm, Hz, kHz, MHz\n"
       "b.yaml:1:59: fan.speed_at: point 4: expected more than 13 V of the point before, got '6 V'\n"
       "    1 | fan: { speed_at: [ [7 V, 3100 rpm], [12 V], [13 V, 5 V], [6 V, 1 rpm +- 1 rpm] ] }\n"
       "      |                                                           ^^^\n"
       "b.yaml:1:64: fan.speed_at: point 4: expected a speed of rotation without a spread, got '1 rpm +- 1 rpm'\n"
       "    1 | fan: { speed_at: [ [7 V, 3100 rpm], [12 V], [13 V, 5 V], [6 V, 1 rpm +- 1 rpm] ] }\n"
       "      |                                                                ^^^^^^^^^^^^^^"},
      {"supply: { step_up: { efficiency: [ [6 V, 1 W, 88 %], [6000 mV, 1 W, 0.9], [6 V, 2 W, 120 %] ] } }\n",
       "b.yaml:1:54: supply.step_up.efficiency: point 2: this input and output are given twice\n"
       "    1 | supply: { step_up: { efficiency: [ [6 V, 1 W, 88 %], [6000 mV, 1 W, 0.9], [6 V, 2 W, 120 %] ] } }\n"
       "      |                                                      ^\n"
       "b.yaml:1:86: supply.step_up.efficiency: point 3: expected a pure number or a percentage from 1 % to 100 %, got "
       "'120 %'\n"
       "    1 | supply: { step_up: { efficiency: [ [6 V, 1 W, 88 %], [6000 mV, 1 W, 0.9], [6 V, 2 W, 120 %] ] } }\n"
       "      |                                                                                      ^^^^^"},
      {"name=x\n",
       "b.yaml:1:1: expected a description of keys and values, got 'name=x'\n"
       "    1 | name=x\n"
       "      | ^^^^^^\n"
       "        a key ends with a colon and a blank, as in `name: my build`"},
      {"- name: x\n",
       "b.yaml:1:1: expected a description of keys and values, got a list\n"
       "    1 | - name: x\n"
       "      | ^\n"
       "        a key ends with a colon and a blank, as in `name: my build`"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(complaint(row.text) == row.expected);
  }
}

TEST_CASE("all faults of a file come in one pass, in the order of their places") {
  CHECK(complaint("naem: x\n"
                  "engine:\n"
                  "  chimney: { bore: 14 V, bore: 15 mm, depht: 36 mm }\n"
                  "place: { air: 15 C }\n"
                  "supply: { pack: { series: none } }\n") ==
        "b.yaml:1:1: naem: this key is not known\n"
        "    1 | naem: x\n"
        "      | ^^^^\n"
        "        did you mean `name`?\n"
        "b.yaml:3:23: engine.chimney.bore: expected a length, got '14 V'\n"
        "    3 |   chimney: { bore: 14 V, bore: 15 mm, depht: 36 mm }\n"
        "      |                       ^\n"
        "        `V` measures a voltage; use one of mm, cm, m, um, in, thou, ft\n"
        "b.yaml:3:26: engine.chimney.bore: this key is given twice\n"
        "    3 |   chimney: { bore: 14 V, bore: 15 mm, depht: 36 mm }\n"
        "      |                          ^^^^\n"
        "        it stands first on line 3\n"
        "b.yaml:3:39: engine.chimney.depht: this key is not known\n"
        "    3 |   chimney: { bore: 14 V, bore: 15 mm, depht: 36 mm }\n"
        "      |                                       ^^^^^\n"
        "        did you mean `depth`?\n"
        "b.yaml:4:18: place.air: expected a temperature, got '15 C'\n"
        "    4 | place: { air: 15 C }\n"
        "      |                  ^\n"
        "        did you mean `degC`?\n"
        "b.yaml:5:27: supply.pack.series: expected a whole number from 1 to 40, got 'none'\n"
        "    5 | supply: { pack: { series: none } }\n"
        "      |                           ^^^^");
}

TEST_CASE("the caret stands under characters, whatever stands before it") {
  CHECK(complaint("name: \xC3\xA9t\xC3\xA9\nplace: { \xC3\xA9: 1, air: \"12 \xC2\xB0V\" }\n") ==
        "b.yaml:2:10: place.\xC3\xA9: this key is not known\n"
        "    2 | place: { \xC3\xA9: 1, air: \"12 \xC2\xB0V\" }\n"
        "      |          ^\n"
        "        known here: air, barometer\n"
        "b.yaml:2:25: place.air: expected a temperature, got '12 \xC2\xB0V'\n"
        "    2 | place: { \xC3\xA9: 1, air: \"12 \xC2\xB0V\" }\n"
        "      |                         ^^\n"
        "        `\xC2\xB0V` is not a unit known here; did you mean `degC`?");
}

TEST_CASE("a long free text is refused, one of 200 characters is not") {
  std::string letters;
  for (int i = 0; i < 200; ++i) letters += "\xC3\xA9";
  CHECK(complaint("name: " + letters + "\n").empty());
  CHECK(complaint("name: " + letters + "x\n").find("expected a short text, got 201 characters of text") !=
        std::string::npos);
}
