// A shop's own forms: gauge numbers, strands, water by its weight, second words.
#include "description/detail/shop_forms.hpp"
#include "data/gauges.hpp"
#include "description/bin.hpp"
#include "description/description.hpp"
#include "description/log.hpp"
#include "description/schema.hpp"
#include "description/writer.hpp"
#include "near.hpp"
#include "published.hpp"
#include <doctest/doctest.h>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;

namespace {
Length wall(const std::string& text) { return *read("adapter: { tube: { wall: " + text + " } }\n").adapter.tube.wall; }
Area section(const std::string& text) {
  return *read("supply: { leads: { section: \"" + text + "\" } }\n").supply.leads.section;
}
std::string refused(const std::string& text) { return complaint(text + "\n"); }
bool has(const std::string& text, const std::string& words) {
  CAPTURE(text);
  return text.find(words) != std::string::npos;
}
}  // namespace

TEST_CASE("gauge numbers are those of the published tables") {
  int seen = 0;
  for (const data::Row& row : published("fits", "gauges")) {
    const int number = static_cast<int>(row.number("number"));
    CAPTURE(number);
    CHECK(wall(row.text("id") + " swg") == near(row.quantity<Length>("swg"), 1e-3));
    // rounded to 0.001 mm there
    CHECK(*data::awg(number) == near(row.quantity<Length>("awg"), 2e-3));
    ++seen;
  }
  CHECK(seen >= 15);
  // BS 3737, from memory: 22 is 0.028 in; 36 is 0.0076 in. ASTM B258: 36 is 0.0050 in, 0 is 0.3249 in.
  CHECK(in(wall("22 swg"), inch) == near(0.028, 1e-12));
  CHECK(in(wall("36 swg"), inch) == near(0.0076, 1e-12));
  CHECK(in(*data::awg(36), inch) == near(0.005, 1e-12));
  CHECK(in(*data::awg(0), inch) == near(0.3249, 2e-4));
  CHECK_FALSE(data::awg(41));
  CHECK_FALSE(data::swg(2));
}

TEST_CASE("a wire by its gauge or its strands") {
  // hand: pi/4 d2 with d of 0.028 in, 0.5106 mm; 7 x pi/4 x 0.2 mm x 0.2 mm; handbooks give 0.205 mm2 for 24 AWG
  CHECK(in(section("22 swg"), mm2) == near(0.39726, 1e-4));
  CHECK(in(section("24 AWG"), mm2) == near(0.2047, 1e-3));
  CHECK(in(section("AWG 24"), mm2) == near(in(section("24awg"), mm2), 0));
  CHECK(in(section("7/0.2"), mm2) == near(0.21991, 1e-4));
  CHECK(in(section("7/0,2 mm"), mm2) == near(0.21991, 1e-4));
  CHECK(in(section("14/0.0076 in"), mm2) == near(0.40974, 1e-4));
  CHECK(in(section("1/2 mm2"), mm2) == near(0.5, 1e-12));
  for (const std::string text : {"0/0.2", "1000/0.2", "7/0.2 mm2", "7/0.0", "7/0.2 kg", "41 AWG", "2 swg", "-24 AWG",
                                 "22 gauge", "240 AWG", "24.5 AWG", "24 AWG copper", "7/36", "7/0.2/0.2"}) {
    CAPTURE(text);
    CHECK(has(refused("supply: { leads: { section: \"" + text + "\" } }"), "supply.leads.section: expected an area"));
  }
  for (const std::string form : {"`22 swg`", "`24 AWG`", "`7/0.2`"})
    CHECK(has(refused("supply: { leads: { section: 22 gauge } }"), form));
  CHECK(has(refused("supply: { leads: { section: 41 AWG } }"), "the numbers known here go from 0 to 40"));
}

TEST_CASE("a gauge number is taken for sheet and wall alone, and there the British one alone") {
  CHECK(*read("adapter: { box: { sheet: 26 SWG } }\n").adapter.box.sheet == near(0.018 * inch, 1e-12));
  for (const std::string text :
       {"adapter: { box: { sheet: 26 AWG } }", "adapter: { box: { sheet: 26 gauge } }",
        "engine: { chimney: { bore: 22 swg } }", "engine: { firebox: { heating_surface: 22 swg } }",
        "adapter: { tube: { wall: 7/0.2 } }", "adapter: { tube: { wall: 2 swg } }"}) {
    CAPTURE(text);
    CHECK(has(refused(text), ": expected a"));
  }
  CHECK(has(refused("adapter: { box: { sheet: 26 gauge } }"), "or `22 swg`"));
  CHECK_FALSE(has(refused("engine: { chimney: { bore: 22 swg } }"), "or `22 swg`"));
}

TEST_CASE("water may be weighed, and the description says how that was read") {
  const Build build = read("engine: { boiler: { water: 300 g +- 5 g } }\n");
  CHECK(in(*build.engine.boiler.water, ml) == near(300.0, 1e-12));
  CHECK(in(build.engine.boiler.water.band->high, ml) == near(305.0, 1e-12));
  REQUIRE(build.renamed.size() == 1);
  CHECK(build.renamed[0].why == Renamed::Why::weighed_water);
  CHECK(build.renamed[0].now == "300 ml +- 5 ml");
  CHECK(read("engine: { boiler: { water: 300 ml } }\n").renamed.empty());
  const Log log = read_log({"l.yaml", "water: 428 g\nreadings: [ {time: 6:30, water: 58 degC} ]\n"});
  CHECK(in(*log.water, ml) == near(428.0, 1e-12));
  CHECK(in(*log.readings[0].time, unit::s) == near(390.0, 1e-12));
  CHECK(has(refused("engine: { boiler: { water: 1 g } }"), "expected a volume from 5 ml to 200 l, got '1 g'"));
  CHECK(has(refused("engine: { boiler: { water: 300 gg } }"), "is not a unit known here"));
  CHECK(has(refused("fuel: { bed_mass: 30 ml }"), "`ml` measures a volume: weigh it"));
}

TEST_CASE("a joint by its other names is read, and written by its usual one") {
  for (const std::string word : {"silver solder", "silver soldered", "hard solder", "silver braze"})
    CHECK(write_build(read("adapter: { joint: " + word + " }\n")) == "adapter:\n  joint: silver braze\n");
  CHECK(*read("adapter: { joint: soft soldered }\n").adapter.joint == "soft solder");
  CHECK(has(refused("adapter: { joint: solder }"), "expected one of the words known here, got 'solder'"));
  for (const std::string& word : other_words("adapter.joint")) CHECK(has(json_schema(), "\"" + word + "\""));
  CHECK(usual_word("silver solder", "engine.chimney.material") == "silver solder");
}
