// Runs the tests of checks at their limits and holds what they saw against what each check can say: a check, a verdict
// or a limit that no test has seen is told here.
#include "limits.hpp"
#include "description/random_build.hpp"
#include <fmt/format.h>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
/// What a check can say, and what its limits part; letters as in limits.hpp.
struct Says {
  const char* id;
  std::string verdicts;
  std::set<std::string> parts;
};
const std::vector<Says>& all_that_is_said() {
  static const std::vector<Says> all = {
      {"draught.cold", "pwus", {"pw"}},
      {"draught.flow", "pus", {}},
      {"draught.leak", "pwfus-", {"pw", "wf"}},
      {"draught.steady", "pwus-", {"pw"}},
      {"engine.blast_nozzle", "pwu-", {"pw"}},
      {"fan.curve", "pwfus-", {"pw", "wf"}},
      {"fan.voltage", "pwfus", {"pw", "wf", "pf"}},
      {"fire.bed_lift", "pwfus", {"pw", "wf"}},
      {"fire.depth", "pwfus-", {"pw", "wf"}},
      {"fire.flux", "pwfus", {"pw", "wf"}},
      {"fire.sparks", "pwfus", {"pw", "wf"}},
      {"fire.start", "pwf-", {}},
      {"fire.top_up", "pwus-", {"pw"}},
      {"fit.cold", "pwfus", {"pw", "wf"}},
      {"fit.engaged", "pwfus", {"pw", "wf"}},
      {"fit.hot", "pwfus", {"pw", "wf"}},
      {"fit.leak", "pwfus", {"pw", "wf"}},
      {"fit.seam", "pw-", {"pw"}},
      {"fit.stock", "pwus", {"pw"}},
      {"heat.bleed", "pwf-", {"pw", "wf", "-w"}},
      {"heat.fan_gas", "pwfus-", {"pw", "wf"}},
      {"heat.joint", "pwfus-", {"pw", "wf"}},
      {"heat.tin", "pwfus-", {"pw", "pf"}},
      {"make.flange", "pwf-", {"pw", "wf"}},
      {"make.lid", "pwfu-", {"pw", "wf"}},
      {"make.stability", "pwu-", {"pw"}},
      {"make.thread", "pws-", {"pw"}},
      {"make.tube", "pf-", {"pf"}},
      {"power.bank", "pwf-", {"pw", "wf"}},
      {"power.cells", "pwf-", {"pw", "wf"}},
      {"power.charging", "pfus-", {"pf"}},
      {"power.fuse", "pwf-", {"pf"}},
      {"power.fuse_wire", "pfu-", {"pf"}},
      {"power.leads", "pwus", {"pw"}},
      {"power.left_on", "pw-", {"pw"}},
      {"power.light_ups", "pfus", {"pf"}},
      {"power.over_discharge", "pwf-", {"pw", "pf"}},
      {"power.pass_through", "wf-", {"-w", "wf"}},
      {"power.sag", "pw-", {"pw"}},
      {"power.start", "pwfus-", {"pw", "wf", "pf"}},
      {"power.step_up_heat", "pwfu-", {"pw", "wf"}},
      {"power.step_up_input", "pwfus-", {"pw", "wf"}},
      {"power.step_up_minimum", "pwf-", {"pw", "pf"}},
      {"power.step_up_output", "pfu-", {"pf"}},
      {"power.stop", "pwus", {"pw"}},
      {"power.storage", "pw-", {"pw"}},
      {"power.weak_cell", "pwf-", {"pw", "pf"}},
      {"raise.heat", "pf-", {"pf"}},
      {"raise.left_running", "pwus-", {"pw"}},
      {"raise.swelling", "pwfus", {"pw", "wf"}},
      {"raise.time", "pwfus", {"pw", "wf", "pf"}},
      {"raise.trapped_air", "pus", {}},
      {"raise.water", "pwfu-", {"pw", "wf", "pf"}},
      {"raise.working", "pwus", {}},
  };
  return all;
}
const Says& said_by(std::string_view id) {
  static const Says nothing{};
  for (const Says& says : all_that_is_said())
    if (says.id == id) return says;
  return nothing;
}
std::string joined(const std::set<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += word + " ";
  return all;
}
std::string sorted(std::string letters) {
  std::sort(letters.begin(), letters.end());
  return letters;
}

const LimitTests of_nothing("of nothing, nothing is judged: a check is not asked, or unknown with what would settle it",
                            [] {
                              Bench none("name: none");
                              for (const Check& check : all_checks()) {
                                CAPTURE(check.id);
                                const auto found = none.judge(check.id);
                                if (!found) continue;
                                CHECK(found->verdict == Verdict::unknown);
                                CHECK_FALSE(found->missing.empty());
                                CHECK_FALSE(found->value);
                                CHECK_FALSE(found->limit);
                              }
                            });

/// The checks that say so where this part of a solved build has no physical answer.
template <class Part>
std::set<std::string> stand_still(Part part) {
  Bench b(example_text("tarn-beck"));
  auto& outcome = part(b);
  outcome.value = {};
  // there is no duty without a fan, and no raise without a draught
  if (!b.all().fan) b.all().draught.value = {};
  outcome.impossible = "no flow gets through";
  outcome.action = "open it";
  std::set<std::string> still;
  for (const Check& check : all_checks()) {
    CAPTURE(check.id);
    const auto found = b.judge(check.id);
    if (letter(found) != 's') continue;
    still.insert(std::string(check.id));
    CHECK(found->verdict == Verdict::fail);
    CHECK(found->why == "no flow gets through");
    CHECK_FALSE(found->action.empty());
  }
  return still;
}
const LimitTests standing_still(
    "where a part has no physical answer, the checks that need it fail and say which part", [] {
      using Ids = std::set<std::string>;
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().draught; }) ==
            Ids{"draught.cold", "draught.flow", "draught.leak", "draught.steady", "fire.bed_lift", "fire.depth",
                "fire.flux", "fire.sparks", "fire.top_up", "heat.fan_gas", "heat.joint", "heat.tin"});
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().fan; }) == Ids{"fan.curve", "fan.voltage"});
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().supply; }) ==
            Ids{"fan.voltage", "power.leads", "power.light_ups", "power.start", "power.step_up_input", "power.stop"});
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().fit; }) ==
            Ids{"fit.cold", "fit.engaged", "fit.hot", "fit.leak", "fit.stock"});
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().raise; }) == Ids{"fire.top_up", "raise.left_running",
                                                                                 "raise.swelling", "raise.time",
                                                                                 "raise.trapped_air", "raise.working"});
      CHECK(stand_still([](Bench & b) -> auto& { return b.all().unit; }) == Ids{"make.thread"});
    });

const LimitTests nozzle_at_limits("the blast nozzle at its limits", [] {
  const auto bored = [](double millimetres) {
    return Bench(fmt::format("engine: {{ cylinders: {{ count: 2, bore: 15.5 mm, blast_nozzle: {:.15g} mm }} }}",
                             millimetres))
        .judge("engine.blast_nozzle");
  };
  // 0.10 to 0.14 of the cylinder's bore: common practice, no source
  either_side({.id = "engine.blast_nozzle", .judge = bored, .limit = 1.55, .below = 'w', .above = 'p'});
  either_side({.id = "engine.blast_nozzle", .judge = bored, .limit = 2.17, .below = 'p', .above = 'w'});
  CHECK(limit(*bored(1.5)) == doctest::Approx(1.55e-3));
  CHECK(limit(*bored(2.2)) == doctest::Approx(2.17e-3));
  Bench bare("engine: { cylinders: { count: 2 } }");
  unknown(bare, "engine.blast_nozzle", {"engine.cylinders.bore", "engine.cylinders.blast_nozzle"});
});
}  // namespace

TEST_CASE("every check at its limits, and no check, verdict or limit without a test") {
  ledger().clear();
  for (const auto& [words, run] : LimitTests::all()) {
    CAPTURE(words);
    run();
  }
  for (const Check& check : all_checks()) {
    CAPTURE(check.id);
    const SeenOf& seen = ledger()[std::string(check.id)];
    CHECK(std::string(seen.verdicts.begin(), seen.verdicts.end()) == sorted(said_by(check.id).verdicts));
    CHECK(joined(seen.parted) == joined(said_by(check.id).parts));
  }
  CHECK(all_that_is_said().size() == all_checks().size());
}

TEST_CASE("no check of three hundred builds says what the table above does not know") {
  for (unsigned number = 0; number < how_many_builds(300); ++number) {
    const Build build = described(RandomBuild(61000 + number, number % 3 == 0 ? 0.5 : 0.95, number % 2 == 0).text());
    const Solved solved = solve(build);
    for (const Check& check : all_checks()) {
      CAPTURE(number);
      CAPTURE(check.id);
      try {
        CHECK(said_by(check.id).verdicts.find(letter(check.judge(solved))) != std::string::npos);
      } catch (const ModelError&) {  // physics that gives no answer there
      }
    }
  }
}
