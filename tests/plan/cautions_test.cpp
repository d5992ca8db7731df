#include "plan/cautions.hpp"
#include "data/embedded.hpp"
#include "data/table.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <set>

using namespace lumwright;
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
Change fuel(const char* kind) {
  return [kind](Build& b) { b.fuel.kind = word(kind); };
}
Change module(const char* name) {
  return [name](Build& b) { b.supply.step_up.module = word(name); };
}
void rated_12_volt(Build& b) { b.fan.rated.voltage = given(12.0 * V); }
void nothing(Build&) {}
void engine(Build& b) { b.engine.chimney.bore = given(16.0 * mm); }
void fan(Build& b) { b.fan.frame = given(50.0 * mm); }

const std::vector<Case>& cases() {
  static const std::vector<Case> all = {
      {"always", true, "an empty description"},
      {"charcoal_fire", true, "lump charcoal", fuel("lump charcoal")},
      {"charcoal_fire", true, "an engine whose fuel is not named: charcoal is taken", engine},
      {"charcoal_fire", false, "coal", fuel("steam coal")},
      {"charcoal_fire", false, "a fan by itself", fan},
      {"solid_fuel", true, "an engine", engine},
      {"solid_fuel", true, "a fuel", fuel("steam coal")},
      {"solid_fuel", false, "a fan by itself", fan},
      {"fan_on_fire", true, "a fan and an engine", [](Build& b) { fan(b), engine(b); }},
      {"fan_on_fire", false, "a fan by itself", fan},
      {"fan_on_fire", false, "an engine by itself", engine},
      {"fan_described", true, "its frame", fan},
      {"fan_described", true, "a key deep inside", rated_12_volt},
      {"fan_described", false, "an engine by itself", engine},
      {"adapter_described", true, "the wall of the tube", [](Build& b) { b.adapter.tube.wall = given(0.4 * mm); }},
      {"adapter_described", false, "an engine by itself", engine},
      {"boiler_described", true, "the copper in it", [](Build& b) { b.engine.boiler.metal.copper = given(1.0 * kg); }},
      {"boiler_described", false, "a chimney", engine},
      {"box_described", true, "its height", [](Build& b) { b.adapter.box.height = given(50.0 * mm); }},
      {"box_described", false, "a tube", [](Build& b) { b.adapter.tube.wall = given(0.4 * mm); }},
      {"coated_sheet", true, "tinplate", box_of("tinplate")},
      {"coated_sheet", true, "tinplate by another name", box_of("tinned sheet")},
      {"coated_sheet", true, "steel", box_of("mild steel")},
      {"coated_sheet", true, "a box whose metal is not named: tinplate is taken",
       [](Build& b) { b.adapter.box.sheet = given(0.3 * mm); }},
      {"coated_sheet", false, "brass", box_of("brass")},
      {"coated_sheet", false, "a metal that is not in the table", box_of("unobtainium")},
      {"coated_sheet", false, "no box", fan},
      {"silver_brazed", true, "silver braze", joint("silver braze")},
      {"silver_brazed", false, "soft solder", joint("soft solder")},
      {"silver_brazed", false, "not named", nothing},
      {"soft_soldered", true, "soft solder", joint("soft solder")},
      {"soft_soldered", false, "silver braze", joint("silver braze")},
      {"clearance_short", true, "too little cold", nothing, found("fit.cold", Verdict::fail)},
      {"clearance_short", true, "tight hot", nothing, found("fit.hot", Verdict::watch)},
      {"clearance_short", true, "a seam in the way", nothing, found("fit.seam", Verdict::fail)},
      {"clearance_short", false, "enough", nothing, found("fit.cold", Verdict::pass)},
      {"clearance_short", false, "not known", nothing, found("fit.cold", Verdict::unknown)},
      {"clearance_short", false, "another check fails", nothing, found("fit.leak", Verdict::fail)},
      {"hot_gas_at_fan", true, "too hot", nothing, found("heat.fan_gas", Verdict::fail)},
      {"hot_gas_at_fan", true, "nearly too hot", nothing, found("heat.fan_gas", Verdict::watch)},
      {"hot_gas_at_fan", false, "cool", nothing, found("heat.fan_gas", Verdict::pass)},
      {"fan_inside_box", true, "inside", [](Build& b) { b.fan.mount = word("inside"); }},
      {"fan_inside_box", false, "outside", [](Build& b) { b.fan.mount = word("outside"); }},
      {"overdrawn_fire", true, "lifted", nothing, found("fire.bed_lift", Verdict::fail)},
      {"overdrawn_fire", true, "floated", nothing, found("fire.flux", Verdict::watch)},
      {"overdrawn_fire", true, "sparks", nothing, found("fire.sparks", Verdict::watch)},
      {"overdrawn_fire", false, "at rest", nothing, found("fire.bed_lift", Verdict::pass)},
      {"false_gauge_reading", true, "worked out", nothing, found("raise.trapped_air", Verdict::pass)},
      {"false_gauge_reading", false, "not known", nothing, found("raise.trapped_air", Verdict::unknown)},
      {"false_gauge_reading", false, "not asked", nothing},
      {"boils_away", true, "soon", nothing, found("raise.left_running", Verdict::watch)},
      {"boils_away", false, "slowly", nothing, found("raise.left_running", Verdict::pass)},
      {"lithium_cells", true, "Li-ion", cell("Li-ion 18650")},
      {"lithium_cells", true, "LiPo", cell("LiPo pouch")},
      {"lithium_cells", true, "LiFePO4", cell("LiFePO4 18650")},
      {"lithium_cells", true, "a power bank is lithium inside", cell("power bank")},
      {"lithium_cells", false, "NiMH", cell("NiMH AA")},
      {"lithium_cells", false, "no pack", fan},
      {"lead_acid_cells", true, "a block", cell("lead-acid 12 V 2.2 Ah")},
      {"lead_acid_cells", false, "NiMH", cell("NiMH AA")},
      {"alkaline_cells", true, "AA", cell("alkaline AA")},
      {"alkaline_cells", false, "NiMH", cell("NiMH AA")},
      {"nickel_pack", true, "five", [](Build& b) { cell("NiMH AA")(b), b.supply.pack.series = Count{.value = 5}; }},
      {"nickel_pack", true, "a number not stated", cell("NiMH AAA")},
      {"nickel_pack", false, "one alone",
       [](Build& b) { cell("NiMH AA")(b), b.supply.pack.series = Count{.value = 1}; }},
      {"nickel_pack", false, "alkaline", cell("alkaline AA")},
      {"unfused_pack", true, "a pack without", cell("NiMH AA")},
      {"unfused_pack", false, "a pack with", [](Build& b) { cell("NiMH AA")(b), b.supply.fuse = given(1.25 * A); }},
      {"unfused_pack", false, "a power bank limits itself", cell("power bank")},
      {"unfused_pack", false, "no pack", fan},
      {"step_up_described", true, "its output", [](Build& b) { b.supply.step_up.output = given(12.0 * V); }},
      {"step_up_described", true, "its efficiency", [](Build& b) { b.supply.step_up.efficiency.share = 0.88; }},
      {"step_up_described", false, "a pack by itself", cell("NiMH AA")},
      {"step_up_runs_away", true, "the kind that does", module("3-35 V 400 kHz")},
      {"step_up_runs_away", false, "a small one", module("small 1.2 MHz")},
      {"step_up_runs_away", false, "none", nothing},
      // Data sheets allow 10 to 15 % above the rated voltage: 11 V on 12 V is in, 24 V on 12 V is out.
      {"fan_over_voltage", true, "24 V on a 12 V fan", rated_12_volt, with_fan_voltage(24.0 * V)},
      {"fan_over_voltage", false, "11 V on a 12 V fan", rated_12_volt, with_fan_voltage(11.0 * V)},
      {"fan_over_voltage", false, "a fan of unknown rating", fan, with_fan_voltage(24.0 * V)},
      {"fan_over_voltage", false, "a supply not known", rated_12_volt},
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
    CAPTURE(row.condition);
    CAPTURE(row.what);
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

TEST_CASE("an empty description gets the cautions that always hold, the invisible killer first, and no others") {
  CHECK(ids(cautions_for({}, {})) ==
        std::vector<std::string>{"carbon-monoxide", "licensed-inspection", "water-before-fire"});
}
TEST_CASE("the always-on cautions lead whatever else applies, and none comes twice") {
  Build build;
  engine(build), fan(build), cell("LiPo pouch")(build), joint("silver braze")(build), box_of("tinplate")(build);
  const std::vector<std::string> found = ids(cautions_for(build, {}));
  CHECK(std::vector(found.begin(), found.begin() + 3) ==
        std::vector<std::string>{"carbon-monoxide", "licensed-inspection", "water-before-fire"});
  CHECK(std::set(found.begin(), found.end()).size() == found.size());
  for (const char* id : {"lithium-cells", "silver-brazing", "pickling-acid", "sharp-edges", "coated-sheet",
                         "moving-blades", "unfused-pack", "charcoal-indoors"})
    CHECK_MESSAGE(std::find(found.begin(), found.end(), id) != found.end(), id);
  for (const char* id : {"lead-acid", "nickel-cells", "soft-solder", "step-up-runaway", "fan-in-the-gas", "skimming"})
    CHECK_MESSAGE(std::find(found.begin(), found.end(), id) == found.end(), id);
}

TEST_CASE(
    "every caution is whole: id of its file, a condition that exists, part, text, authority, standing; every condition "
    "is "
    "used") {
  const std::set<std::string> standings = {"standard", "secondary", "derived", "measured",
                                           "memory",   "practice",  "estimate"};
  const std::set<std::string> parts = {"everything", "air", "steam", "pack", "making"};
  std::set<std::string> used;
  std::size_t count = 0;
  for (const data::EmbeddedFile& file : data::embedded_files()) {
    if (!file.name.starts_with("cautions/")) continue;
    CAPTURE(file.name);
    ++count;
    std::vector<Fault> faults;
    const Node root = read_yaml({file.name, file.text}, faults);
    CHECK(faults.empty());
    const data::Row row(file.name, root);
    CHECK("cautions/" + row.text("id") == file.name);
    CHECK_NOTHROW(condition(row.text("when")));
    used.insert(row.text("when"));
    for (const char* key : {"title", "text", "authority"}) CHECK(row.text(key).size() > 5);
    CHECK(standings.contains(row.text("standing")));
    CHECK(parts.contains(row.text("near")));  // of the report
    CHECK(root.children.size() == 7);
  }
  CHECK(count >= 20);
  for (const CautionCondition& c : conditions()) CHECK_MESSAGE(used.contains(std::string(c.name)), c.name);
}
