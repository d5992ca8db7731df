#include "plan/cautions.hpp"
#include "data/table.hpp"
#include "describe.hpp"
#include "description/random_build.hpp"
#include "near.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <set>

using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
namespace {
std::vector<std::string> ids(const std::vector<Caution>& cautions) {
  std::vector<std::string> out;
  for (const Caution& c : cautions) out.push_back(c.id);
  return out;
}
template <class Q>
Given<Q> given(Q q) {
  return {.band = exactly(q)};
}
Text word(const char* text) { return {.value = text}; }
Assessment also(Assessment a, std::string check, Verdict verdict) {
  a.checks.push_back({.id = std::move(check), .verdict = verdict});
  return a;
}
Assessment found(std::string check, Verdict verdict) {
  Assessment a;
  a.checks.push_back({.id = std::move(check), .verdict = verdict});
  return a;
}
Assessment with_fan_voltage(Voltage voltage) {
  Assessment a;
  a.results.push_back({.key = "power.fan_voltage", .value = Measure{voltage}});
  return a;
}
using Change = std::function<void(Build&)>;
/// A build and what was found, that only just meet a condition or only just miss it.
struct Case {
  const char* condition;
  bool holds;
  const char* what;
  Change change = [](Build&) {};
  Assessment so_far{};
};
Change cell(const char* name) {
  return [name](Build& b) { b.supply.pack.cell = word(name); };
}
Change joint(const char* name) {
  return [name](Build& b) { b.adapter.joint = word(name); };
}
Change box_of(const char* metal) {
  return [metal](Build& b) { b.adapter.box.material = word(metal); };
}
Change module(const char* name) {
  return [name](Build& b) { b.supply.step_up.module = word(name); };
}
void rated_12_volt(Build& b) { b.fan.rated.voltage = given(12.0 * V); }
void nothing(Build&) {}
void fan(Build& b) { b.fan.frame = given(50.0 * mm); }

const Assessment fits = also(found("fit.cold", Verdict::pass), "fit.hot", Verdict::pass);
void stands_70(Build& b) { b.fan.gas_limit = given(degC(70)); }
Change pack_of(const char* name, int series) {
  return [=](Build& b) { cell(name)(b), b.supply.pack.series = Count{.value = series}; };
}
Change driven(const char* name, int series) {
  return [=](Build& b) { pack_of(name, series)(b), rated_12_volt(b); };
}

const std::vector<Case>& cases() {
  static const std::vector<Case> all = {
      {"always", true, "an empty description"},
      {"always", true, "a fan by itself", fan},
      {"tinplate_box", true, "tinplate", box_of("tinplate")},
      {"tinplate_box", true, "tinplate by another name", box_of("tinned sheet")},
      {"tinplate_box", true, "a metal that is not known", box_of("unobtainium")},
      {"tinplate_box", true, "no box described", fan},
      {"tinplate_box", false, "brass", box_of("brass")},
      {"tinplate_box", false, "bare steel", box_of("mild steel")},
      {"coal_burnt", true, "anthracite", [](Build& b) { b.fuel.kind = word("anthracite"); }},
      {"coal_burnt", true, "coke", [](Build& b) { b.fuel.kind = word("coke"); }},
      {"coal_burnt", true, "not named", nothing},
      {"coal_burnt", false, "charcoal", [](Build& b) { b.fuel.kind = word("lump charcoal"); }},
      {"silver_brazed", true, "silver braze", joint("silver braze")},
      {"silver_brazed", true, "not named", nothing},
      {"silver_brazed", false, "soft solder", joint("soft solder")},
      {"silver_brazed", false, "screwed", joint("screwed")},
      {"soft_soldered", true, "soft solder", joint("soft solder")},
      {"soft_soldered", true, "the seams of a box, whatever holds the tube",
       [](Build& b) { joint("silver braze")(b), box_of("tinplate")(b); }},
      {"soft_soldered", true, "a square box",
       [](Build& b) { joint("screwed")(b), b.adapter.box.shape = word("square"); }},
      {"soft_soldered", true, "not named", nothing},
      {"soft_soldered", false, "a brazed tube on a box of aluminium, which takes none",
       [](Build& b) { joint("silver braze")(b), box_of("aluminium")(b); }},
      {"clearance_short", true, "too little cold", nothing, found("fit.cold", Verdict::fail)},
      {"clearance_short", true, "tight hot", nothing, also(found("fit.cold", Verdict::pass), "fit.hot", Verdict::watch)},
      {"clearance_short", true, "a seam in the way", nothing, also(fits, "fit.seam", Verdict::fail)},
      {"clearance_short", true, "not known", nothing, found("fit.cold", Verdict::unknown)},
      {"clearance_short", true, "nothing known", nothing},
      {"clearance_short", false, "enough", nothing, fits},
      {"clearance_short", false, "another check fails", nothing, also(fits, "fit.leak", Verdict::fail)},
      {"hot_gas_at_fan", true, "too hot", stands_70, found("heat.fan_gas", Verdict::fail)},
      {"hot_gas_at_fan", true, "nearly too hot", stands_70, found("heat.fan_gas", Verdict::watch)},
      {"hot_gas_at_fan", true, "not known how hot", stands_70},
      {"hot_gas_at_fan", true, "not known what the fan stands", fan, found("heat.fan_gas", Verdict::pass)},
      {"hot_gas_at_fan", false, "cool", stands_70, found("heat.fan_gas", Verdict::pass)},
      {"fan_inside_box", true, "inside", [](Build& b) { b.fan.mount = word("inside"); }},
      {"fan_inside_box", true, "not said", fan},
      {"fan_inside_box", false, "outside", [](Build& b) { b.fan.mount = word("outside"); }},
      {"lithium_cells", true, "Li-ion", cell("Li-ion 18650")},
      {"lithium_cells", true, "LiPo", cell("LiPo pouch")},
      {"lithium_cells", true, "LiFePO4", cell("LiFePO4 18650")},
      {"lithium_cells", true, "no cell named", fan},
      {"lithium_cells", false, "a power bank balances its own", cell("power bank")},
      {"lithium_cells", false, "NiMH", cell("NiMH AA")},
      {"power_bank", true, "one", cell("power bank")},
      {"power_bank", true, "no cell named", nothing},
      {"power_bank", false, "bare lithium cells", cell("Li-ion 18650")},
      {"lead_acid_cells", true, "a block", cell("lead-acid 12 V 2.2 Ah")},
      {"lead_acid_cells", true, "no cell named", nothing},
      {"lead_acid_cells", false, "NiMH", cell("NiMH AA")},
      {"alkaline_cells", true, "AA", cell("alkaline AA")},
      {"alkaline_cells", true, "no cell named", nothing},
      {"alkaline_cells", false, "NiMH", cell("NiMH AA")},
      {"nickel_cells", true, "five", pack_of("NiMH AA", 5)},
      {"nickel_cells", true, "a number not stated", cell("NiMH AAA")},
      {"nickel_cells", true, "one, with others beside it",
       [](Build& b) { pack_of("NiMH AA", 1)(b), b.supply.pack.parallel = Count{.value = 3}; }},
      {"nickel_cells", true, "no cell named", nothing},
      {"nickel_cells", false, "alkaline", cell("alkaline AA")},
      {"nickel_cells", false, "a power bank", cell("power bank")},
      {"unfused_pack", true, "a pack without", cell("NiMH AA")},
      {"unfused_pack", true, "no pack described", fan},
      {"unfused_pack", false, "a pack with", [](Build& b) { cell("NiMH AA")(b), b.supply.fuse = given(1.25 * A); }},
      {"unfused_pack", false, "a power bank limits itself", cell("power bank")},
      {"step_up_possible", true, "its output", [](Build& b) { b.supply.step_up.output = given(12.0 * V); }},
      {"step_up_possible", true, "its efficiency", [](Build& b) { b.supply.step_up.efficiency.share = 0.88; }},
      {"step_up_possible", true, "nothing known", nothing},
      {"step_up_possible", true, "five cells of 1.2 V for a fan of 12 V", driven("NiMH AA", 5)},
      {"step_up_possible", false, "a block of 12 V for a fan of 12 V", driven("lead-acid 12 V 7 Ah", 1)},
      {"step_up_runs_away", true, "the kind that does", module("3-35 V 400 kHz")},
      {"step_up_runs_away", true, "a kind that is not named",
       [](Build& b) { b.supply.step_up.output = given(12.0 * V); }},
      {"step_up_runs_away", false, "a small one", module("small 1.2 MHz")},
      {"step_up_runs_away", false, "a pack that needs none", driven("lead-acid 12 V 7 Ah", 1)},
      // Data sheets allow 10 to 15 % above the rated voltage: 11 V on 12 V is in, 24 V on 12 V is out.
      {"fan_over_voltage", true, "24 V on a 12 V fan", rated_12_volt, with_fan_voltage(24.0 * V)},
      {"fan_over_voltage", true, "a fan of unknown rating", fan, with_fan_voltage(24.0 * V)},
      {"fan_over_voltage", true, "a supply not known", rated_12_volt},
      {"fan_over_voltage", false, "11 V on a 12 V fan", rated_12_volt, with_fan_voltage(11.0 * V)},
  };
  return all;
}
const CautionCondition& condition(std::string_view name) {
  for (const CautionCondition& c : conditions())
    if (c.name == name) return c;
  throw std::logic_error("no condition " + std::string(name));
}
}  // namespace

TEST_CASE("each condition holds where it should and not where it should not") {
  for (const Case& row : cases()) {
    const std::string of = row.condition, what = row.what;
    CAPTURE(of);
    CAPTURE(what);
    Build build;
    row.change(build);
    CHECK(condition(row.condition).holds(build, row.so_far) == row.holds);
  }
}
TEST_CASE("each condition is tried both ways, and its name is its own") {
  std::set<std::string_view> names;
  for (const CautionCondition& c : conditions()) {
    CAPTURE(c.name);
    CHECK(names.insert(c.name).second);
    CHECK(!c.meaning.empty());
    const auto tried = [&](bool holds) {
      return std::any_of(cases().begin(), cases().end(),
                         [&](const Case& row) { return row.condition == c.name && row.holds == holds; });
    };
    CHECK(tried(true));
    if (c.name != "always") CHECK(tried(false));
  }
}

TEST_CASE("an empty description gets every caution: what is not known counts as present") {
  std::size_t files = 0;
  for (const data::Table& file : data::tables()) files += file.name.starts_with("cautions/") ? 1 : 0;
  const std::vector<std::string> found = ids(cautions_for({}, {}));
  CHECK(found.size() == files);
  CHECK(std::set(found.begin(), found.end()).size() == found.size());
  CHECK(std::vector(found.begin(), found.begin() + 2) ==
        std::vector<std::string>{"carbon-monoxide", "water-before-fire"});
}
TEST_CASE("a known build is spared what is known to be absent, and nothing else") {
  const auto has = [](const std::string& example_name, const std::string& id) {
    const auto found = ids(assess(example(example_name)).cautions);
    return std::find(found.begin(), found.end(), id) != found.end();
  };
  for (const char* id : {"lithium-cells", "silver-brazing", "pickling-acid", "tinplate", "soft-solder",
                         "step-up-setting", "charcoal-indoors", "ash", "sparks", "fan-left-running", "trapped-air"})
    CHECK_MESSAGE(has("tarn-beck", id), std::string(id));
  for (const char* id : {"lead-acid", "nickel-cells", "alkaline-cells", "power-bank", "unfused-pack",
                         "step-up-runaway", "fan-in-the-gas", "over-voltage"})
    CHECK_MESSAGE(!has("tarn-beck", id), std::string(id));
  for (const char* id : {"lead-acid", "charcoal-indoors", "fan-in-the-gas"}) CHECK_MESSAGE(has("great-fell-5in", id), std::string(id));
  for (const char* id : {"step-up-setting", "step-up-runaway", "tinplate", "lithium-cells"})
    CHECK_MESSAGE(!has("great-fell-5in", id), std::string(id));
}
namespace {
struct Strike {
  const char* part;
  void (*strike)(Build&);
  std::set<std::string> judged;  // cautions that a check decides, and that are of this part's hazard
};
const std::vector<Strike>& strikes() {
  static const std::vector<Strike> all = {
      {"engine", [](Build& b) { b.engine = {}; }, {"skimming", "hot-gas-at-fan"}},
      {"engine.boiler", [](Build& b) { b.engine.boiler = {}; }, {}},
      {"engine.grate", [](Build& b) { b.engine.grate = {}; }, {"hot-gas-at-fan"}},
      {"engine.chimney", [](Build& b) { b.engine.chimney = {}; }, {"skimming"}},
      {"fuel", [](Build& b) { b.fuel = {}; }, {}},
      {"adapter", [](Build& b) { b.adapter = {}; }, {"skimming", "hot-gas-at-fan"}},
      {"adapter.box", [](Build& b) { b.adapter.box = {}; }, {}},
      {"fan", [](Build& b) { b.fan = {}; }, {"hot-gas-at-fan", "over-voltage"}},
      {"fan.rated", [](Build& b) { b.fan.rated = {}; }, {"over-voltage"}},
      {"supply", [](Build& b) { b.supply = {}; }, {"over-voltage"}},
      {"supply.pack", [](Build& b) { b.supply.pack = {}; }, {}},
      {"supply.step_up", [](Build& b) { b.supply.step_up = {}; }, {}},
      {"supply.fuse", [](Build& b) { b.supply.fuse = {}; }, {}},
  };
  return all;
}
}  // namespace
TEST_CASE("of random builds a part is struck out: no caution of its hazard vanishes") {
  const std::set<std::string> by_a_check = {"skimming", "hot-gas-at-fan", "over-voltage"};
  for (unsigned seed = 1; seed <= how_many_builds(25); ++seed) {
    const Build whole = described(RandomBuild(seed, 0.9, false).text());
    const std::vector<std::string> before = ids(assess(whole).cautions);
    for (const Strike& one : strikes()) {
      Build struck = whole;
      one.strike(struck);
      const std::vector<std::string> after = ids(assess(struck).cautions);
      for (const std::string& id : before) {
        if (by_a_check.contains(id) && !one.judged.contains(id)) continue;
        // Without the step-up a pack of the fan's own voltage is known to need none.
        if (id.starts_with("step-up") && std::string(one.part) == "supply.step_up") continue;
        CAPTURE(seed);
        CAPTURE(one.part);
        CHECK_MESSAGE(std::find(after.begin(), after.end(), id) != after.end(), id);
      }
    }
  }
}
TEST_CASE("what one lighting-up does to the air of a garage comes from the program's own figures") {
  const Assessment a = assess(example("tarn-beck"));
  // hand: the heat lost as carbon monoxide over 10.10 MJ/kg (heats of formation), in 40 m3
  const double grams = 1e3 * number(a, "raise.carbon_monoxide");
  CHECK(grams > 2.0);
  CHECK(grams < 10.0);
  const auto words = garage_reckoning(a);
  REQUIRE(words.has_value());
  const auto at = words->find("that is ");
  REQUIRE(at != std::string::npos);
  CHECK(std::stod(words->substr(at + 8)) == near(grams * 1e3 / 40.0, 0.05));
  CHECK(a.cautions.front().text.ends_with(*words));
  CHECK_FALSE(garage_reckoning({}).has_value());
}

TEST_CASE(
    "every caution is whole: id of its file, a condition that exists, part, text, authority, standing; every condition "
    "is "
    "used") {
  const std::set<std::string> standings = {"standard", "secondary", "derived", "measured",
                                           "memory",   "practice",  "estimate"};
  const std::set<std::string> parts = {"everything", "air", "steam", "pack", "making"};
  const std::set<std::string> steps = {"measure", "flange",   "tube", "join", "cut",
                                       "shape",   "assemble", "wire", "try",  "light"};  // of the build sheet
  std::set<std::string> used;
  std::size_t count = 0;
  for (const data::Table& table : data::tables()) {
    if (!table.name.starts_with("cautions/")) continue;
    const data::Row row(table);
    CAPTURE(table.name);
    ++count;
    CHECK("cautions/" + row.text("id") + ".yaml" == table.name);
    CHECK_NOTHROW(condition(row.text("when")));
    used.insert(row.text("when"));
    for (const char* key : {"title", "text", "authority"}) CHECK(row.text(key).size() > 5);
    CHECK(standings.contains(row.text("standing")));
    CHECK(parts.contains(row.text("near")));  // of the report
    CHECK(table.nodes.front().count ==
          8 + (row.has("head") ? 1u : 0u) + (row.has("adds") ? 1u : 0u) + (row.has("brief") ? 1u : 0u));
    CHECK(!row.texts("steps").empty());
    for (const std::string& step : row.texts("steps")) CHECK_MESSAGE(steps.contains(step), step);
  }
  CHECK(count >= 20);
  for (const CautionCondition& c : conditions()) CHECK_MESSAGE(used.contains(std::string(c.name)), c.name);
}
