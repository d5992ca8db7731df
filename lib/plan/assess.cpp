#include "plan/assess.hpp"
#include "plan/bands.hpp"
#include "plan/cautions.hpp"
#include "plan/check.hpp"
#include "plan/results.hpp"
#include "plan/slips.hpp"
#include "quantity/format.hpp"
#include <fmt/format.h>
#include <map>

namespace lumwright {
namespace {
std::optional<Finding> run(const Check& check, const Solved& solved) {
  std::optional<Finding> finding;
  try {
    finding = check.judge(solved);
  } catch (const ModelError& e) {
    finding = Finding{.verdict = Verdict::fail,
                      .why = e.what(),
                      .action = "change what is named here and check again",
                      .source = "the model",
                      .standing = "derived"};
  }
  if (!finding) return std::nullopt;
  finding->id = check.id;
  finding->title = check.title;
  return finding;
}
// One cause fails once: of the checks that the same part stops, the first fails and the others wait for it.
void wait_for_the_first(std::vector<Finding>& findings) {
  std::map<std::string, std::string> first;  // what stops it, and the title of the check that says so
  for (Finding& f : findings) {
    if (f.stands_still.empty()) continue;
    const auto [found, is_first] = first.try_emplace(f.why, f.title);
    if (is_first) continue;
    f = Finding{.id = f.id,
                .title = f.title,
                .verdict = Verdict::unknown,
                .why = fmt::format("no answer while {} does not work: see \"{}\"", f.stands_still, found->second)};
  }
}
// A build with open questions is never more than `watch`: what is not known has not passed.
Verdict overall(const std::vector<Finding>& findings) {
  Verdict verdict = Verdict::pass;
  for (const Finding& finding : findings) {
    if (finding.verdict == Verdict::fail) return Verdict::fail;
    if (finding.verdict != Verdict::pass) verdict = Verdict::watch;
  }
  return verdict;
}
}  // namespace

Assessment assess(const Build& build, UnitSystem units, const Tuning* tuning) {
  return assess(build, units, tuning, WorldsAsked{});
}

Assessment assess(const Build& build, UnitSystem units, const Tuning* tuning, const WorldsAsked& worlds) {
  return judged(solved_to_judge(build, units, tuning, worlds), tuning, worlds);
}

Solved solved_to_judge(const Build& build, UnitSystem units, const Tuning* tuning, const WorldsAsked& worlds) {
  Solved solved = solve(build, {}, tuning);
  solved.units = units;
  solved.spread_tried = worlds.count > 0;
  return solved;
}

namespace {
/// What is assumed, its temperatures in the one unit of the page.
std::vector<Assumed> assumed_on_page(const Solved& solved) {
  std::vector<Assumed> all = solved.inputs.assumed(solved.units);
  const std::string unit = temperature_unit(solved);
  if (unit.empty() || solved.units != UnitSystem::as_written) return all;
  for (Assumed& one : all) {
    const Input* input = solved.inputs.find(one.key);
    if (input == nullptr || input->value.kind != kind_of<Temperature> || input->unit == unit) continue;
    one.value = format(input->value, unit);
    if (input->low < input->high)
      one.band = format({input->low, input->value.kind}, unit) + " .. " + format({input->high, input->value.kind}, unit);
  }
  return all;
}
}  // namespace

Assessment judged(const Solved& solved, const Tuning* tuning, const WorldsAsked& worlds) {
  const Build& build = solved.build;
  Assessment assessment{.build = build.name ? *build.name : std::string(),
                        .file = build.file,
                        .tuned = tuning != nullptr ? tuning->file : std::string(),
                        .verdict = Verdict::unknown,
                        .results = results_of(solved),
                        .checks = {},
                        .assumed = assumed_on_page(solved),
                        .cautions = {},
                        .series = series_of(solved),
                        .events = events_of(solved)};
  for (const Check& check : all_checks())
    if (auto finding = run(check, solved)) assessment.checks.push_back(std::move(*finding));
  wait_for_the_first(assessment.checks);
  if (worlds.count > 0) {
    add_bands(assessment, solved, try_worlds(build, solved, tuning, worlds), worlds);
    for (Assumed& one : measuring_spreads(build)) assessment.assumed.push_back(std::move(one));
  }
  assessment.verdict = overall(assessment.checks);
  assessment.remarks = older_names(build.renamed);
  for (Remark& one : likely_slips(build)) assessment.remarks.push_back(std::move(one));
  assessment.cautions = cautions_for(build, assessment);
  require_sound(assessment);
  return assessment;
}

std::vector<CheckName> check_names() {
  std::vector<CheckName> names;
  for (const Check& check : all_checks()) names.push_back({check.id, check.title, check.asks});
  return names;
}
}  // namespace lumwright
