#include "plan/assess.hpp"
#include "plan/cautions.hpp"
#include "plan/check.hpp"
#include "plan/detail/bands.hpp"
#include "plan/results.hpp"
#include "plan/slips.hpp"
#include "quantity/format.hpp"
#include <fmt/format.h>
#include <map>
#include <set>
#include <stdexcept>

namespace lumwright::plan {
namespace {
std::optional<Finding> run(const Check& check, const model::Solved& solved) {
  std::optional<Finding> finding;
  try {
    finding = check.judge(solved);
  } catch (const ModelError& e) {
    finding = Finding{.verdict = Verdict::fail,
                      .why = std::string("this cannot be worked out: ") + e.what(),
                      .action = std::string(model::look_for_a_slip),
                      .basis = {data::Standing::derived, "the model"}};
  }
  if (!finding) return std::nullopt;
  finding->id = check.id;
  finding->title = check.title;
  return finding;
}
const Check& check_called(const std::string& id) {
  for (const Check& check : all_checks())
    if (check.id == id) return check;
  throw std::logic_error("no check " + id);
}
/// The finding of that check, one of all_checks(); put in, in their order, where it was not asked.
Finding& finding_of(const Check& check, std::vector<Finding>& findings) {
  for (Finding& f : findings)
    if (f.id == check.id) return f;
  auto at = findings.begin();
  while (at != findings.end() && &check_called(at->id) < &check) ++at;
  return *findings.insert(at, Finding{.id = std::string(check.id), .title = std::string(check.title)});
}
// One cause fails once, in the check that asks after it: all others that it stops wait for that one.
void wait_for_the_one(std::vector<Finding>& findings) {
  std::map<std::string, Finding> causes;  // by what stops it
  std::set<std::string_view> telling;
  for (const Finding& f : findings)
    if (!f.stands_still.empty()) causes.try_emplace(f.why, f);
  for (auto& [why, cause] : causes) {
    const Check& owner = check_called(cause.told_by);
    for (Finding& f : findings)
      if (f.why == why && !f.stands_still.empty() && f.id != owner.id)
        f = Finding{.id = f.id,
                    .title = f.title,
                    .why = fmt::format("no answer while {} does not work: see \"{}\"", f.stands_still, owner.title)};
    Finding& told = finding_of(owner, findings);
    const bool first = telling.insert(owner.id).second;
    if (told.why == why) continue;
    if (!first || (told.verdict == Verdict::fail && told.stands_still.empty())) {  // it fails already: both are said
      told.why += "; " + why;
      continue;
    }
    cause.id = owner.id;
    cause.title = owner.title;
    told = cause;
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

Assessment assess(const description::Build& build, UnitSystem units, const model::Tuning* tuning) {
  return assess(build, units, tuning, SamplesAsked{});
}

Assessment assess(const description::Build& build, UnitSystem units, const model::Tuning* tuning,
                  const SamplesAsked& samples) {
  return judged(solved_to_judge(build, units, tuning, samples), tuning, samples);
}

model::Solved solved_to_judge(const description::Build& build, UnitSystem units, const model::Tuning* tuning,
                              const SamplesAsked& samples) {
  model::Solved solved = model::solve(build, {}, tuning);
  solved.units = units;
  solved.spread_tried = samples.count > 0;
  return solved;
}

Assessment judged(const model::Solved& solved, const model::Tuning* tuning, const SamplesAsked& samples) {
  const description::Build& build = solved.build;
  std::optional<Samples> tried;
  if (samples.count > 0) tried = try_samples(build, solved, tuning, samples);
  model::Solved on_page = solved;  // sentences round a result as its band lets them
  on_page.results = results_of(solved);
  if (tried) add_result_bands(on_page.results, *tried);
  Assessment assessment{.build = build.name ? *build.name : std::string(),
                        .file = build.file,
                        .tuned = tuning != nullptr ? tuning->file : std::string(),
                        .verdict = Verdict::unknown,
                        .results = on_page.results,
                        .checks = {},
                        .assumed = solved.inputs.assumed(solved.units, solved.page),
                        .cautions = {},
                        .series = series_of(solved),
                        .events = events_of(solved)};
  for (const Check& check : all_checks())
    if (auto finding = run(check, on_page)) assessment.checks.push_back(std::move(*finding));
  wait_for_the_one(assessment.checks);
  if (tried) {
    add_bands(assessment, solved, *tried, samples);
    for (model::Assumed& one : measuring_spreads(build)) assessment.assumed.push_back(std::move(one));
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
}  // namespace lumwright::plan
