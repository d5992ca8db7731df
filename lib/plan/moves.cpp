#include "plan/moves.hpp"
#include "description/key_value.hpp"
#include "plan/check.hpp"
#include "plan/detail/changed_builds.hpp"
#include "plan/workers.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <thread>

namespace lumwright::plan {
namespace {
constexpr std::size_t samples_to_confirm = 64;
constexpr double sure_in_samples = 0.95;  // of few samples, so that nine in ten of many hold as well

int gravity_of(Verdict verdict) { return verdict == Verdict::fail ? 2 : verdict == Verdict::watch ? 1 : 0; }

/// The build as described, and what a change of it may not make worse.
struct Bench {
  const description::Build& build;
  UnitSystem units;
  const model::Tuning* tuning;
  SamplesAsked samples;
  Assessment now;  // without samples
  model::Solved central;
  ChangedBuilds& changed;
};
const Check& check_named(std::string_view id) {
  const auto& all = all_checks();
  return *std::find_if(all.begin(), all.end(), [&](const Check& check) { return check.id == id; });
}
Verdict judged_alone(const Check& check, const model::Solved& solved) {
  try {
    const auto finding = check.judge(solved);
    return finding ? finding->verdict : Verdict::unknown;
  } catch (const ModelError&) {
    return Verdict::fail;
  }
}
/// It looks at the fire's course, which is most of the work of solving.
bool asks_of_the_raise(std::string_view id) { return id.starts_with("raise.") || id == "power.light_ups"; }
/// The one check on the changed build, without the fire's course where it does not look at it.
struct SoughtCheck {
  const Bench& bench;
  const Check& check;
  Verdict verdict_then(const Change& change) const {
    ChangedBuild* const then = bench.changed.with(change);
    if (then == nullptr) return Verdict::fail;
    Verdict verdict = Verdict::unknown;
    if (!asks_of_the_raise(check.id)) verdict = judged_alone(check, then->cold());
    if (verdict == Verdict::unknown) verdict = judged_alone(check, then->solved());
    return verdict;
  }
};
/// As good as is wanted: a pass, or at least no failure.
bool good_enough(Verdict verdict, Verdict wanted) {
  return verdict == Verdict::pass || (wanted == Verdict::watch && verdict == Verdict::watch);
}
/// Nearer to failing, as its bound lies.
bool nearer(const Finding& was, const Finding& is) {
  if (!was.value || !is.value) return false;
  const double change = is.value->quantity.si - was.value->quantity.si;
  return is.bound == Bound::at_most ? change > 0.0 : change < 0.0;
}
/// What fails that did not; what is to be watched and passed, where the check to clear is itself only to be watched;
/// and what can burn, burst or ruin, where it does not pass and is worse than it was.
bool is_spoilt(const Finding* was, const Finding& is, const Finding& target) {
  if (is.verdict == Verdict::pass) return false;
  const bool judged_before = was != nullptr && was->verdict != Verdict::unknown;
  if (is.verdict == Verdict::unknown) return judged_before;  // a part of the build no longer works at all
  // what a part that did not work at all kept from being judged was no better before
  if (!judged_before) return is.verdict == Verdict::fail && target.stands_still.empty();
  if (is.verdict > was->verdict && (is.verdict == Verdict::fail || target.verdict == Verdict::watch) && !data::is_habit(is.id))
    return true;
  return data::never_worse(is.id) && (is.verdict > was->verdict || nearer(*was, is));
}
bool spoils_another(const Assessment& before, const Assessment& after, std::string_view id) {
  const Finding& target = *find_check(before, id);
  return std::any_of(after.checks.begin(), after.checks.end(),
                     [&](const Finding& f) { return f.id != id && is_spoilt(find_check(before, f.id), f, target); });
}
bool holds_in_samples(const Bench& bench, const description::Build& build, std::string_view id, Verdict wanted) {
  if (bench.samples.count == 0) return true;
  SamplesAsked few = bench.samples;
  few.count = std::min(few.count, samples_to_confirm);
  few.progress = {};
  const Assessment sampled = assess(build, bench.units, bench.tuning, few);
  const Finding* f = find_check(sampled, id);
  return f != nullptr && good_enough(f->verdict, wanted) && f->holds.value_or(1.0) >= sure_in_samples;
}
/// The check looks at the very size that was changed: told once is enough.
bool is_what_was_set(const description::Build& build, const Change& change,
                     const std::optional<model::Measure>& found) {
  return found && std::any_of(change.settings.begin(), change.settings.end(), [&](const description::Setting& one) {
           const description::KeyValue set = description::value_at(build, one.key);
           return set.kind == found->quantity.kind && std::abs(set.si - found->quantity.si) <= 1e-9 * std::abs(set.si);
         });
}
/// What the change gives, judged as a whole; nothing where it does not clear the check or spoils another.
std::optional<Move> confirmed(const Bench& bench, std::string_view id, const Change& change, Verdict wanted) {
  ChangedBuild* const then = bench.changed.with(change);
  if (then == nullptr) return std::nullopt;
  const Assessment& after = then->judged();
  const Finding* cleared = find_check(after, id);
  if (cleared == nullptr || !good_enough(cleared->verdict, wanted) || spoils_another(bench.now, after, id))
    return std::nullopt;
  if (!holds_in_samples(bench, then->build(), id, wanted)) return std::nullopt;
  Move move{.words = change.words,
            .settings = {},
            .verdict = cleared->verdict,
            .value = is_what_was_set(then->build(), change, cleared->value) ? std::nullopt : cleared->value,
            .limit = cleared->limit,
            .bound = cleared->bound,
            .steam = {}};
  for (const description::Setting& one : change.settings) move.settings.push_back(one.key + "=" + one.value);
  if (const model::Result* steam = find_result(after, "raise.to_own_blower"))
    move.steam = std::get<model::Measure>(steam->value);
  return move;
}
/// The least of the changes that is good enough by itself, if a larger one is; changes grow along the list.
std::optional<std::size_t> least_that_does(const SoughtCheck& sought, const std::vector<Change>& changes, Verdict wanted) {
  const auto does = [&](std::size_t i) { return good_enough(sought.verdict_then(changes[i]), wanted); };
  std::size_t good = changes.size();
  for (std::size_t reach = changes.size(); reach > 0; reach /= 4)  // where the farthest goes too far, a nearer one
    if (does(reach - 1)) {
      good = reach - 1;
      break;
    }
  if (good == changes.size()) return std::nullopt;
  for (std::size_t bad = 0; bad < good;) {  // all before `bad` do not
    const std::size_t middle = (bad + good) / 2;
    if (does(middle))
      good = middle;
    else
      bad = middle + 1;
  }
  return good;
}
std::optional<Move> least_move(const SoughtCheck& sought, const data::MoveRow& row, Verdict wanted) {
  const std::vector<Change> changes = changes_of(row, sought.bench.build, sought.bench.central);
  if (!row.table.empty()) {  // no order in which they do: one by one
    for (const Change& one : changes)
      if (good_enough(sought.verdict_then(one), wanted))
        if (auto move = confirmed(sought.bench, sought.check.id, one, wanted)) return move;
    return std::nullopt;
  }
  const auto found = least_that_does(sought, changes, wanted);
  return found ? confirmed(sought.bench, sought.check.id, changes[*found], wanted) : std::nullopt;
}
/// What makes it pass; where nothing does, and it fails, what leaves it to be watched.
void try_for(const Bench& bench, Finding& finding) {
  const SoughtCheck sought{bench, check_named(finding.id)};
  for (const Verdict wanted : {Verdict::pass, Verdict::watch}) {
    if (wanted == Verdict::watch && find_check(bench.now, finding.id)->verdict != Verdict::fail) return;
    for (const data::MoveRow& row : data::moves()) {
      if (std::find(row.clears.begin(), row.clears.end(), finding.id) == row.clears.end()) continue;
      // what stops a part is mended in the description: that no row helps says nothing
      finding.moves_tried = finding.stands_still.empty();
      finding.move = least_move(sought, row, wanted);
      if (finding.move) return;
    }
  }
}
}  // namespace

void try_moves(Assessment& assessment, const description::Build& build, UnitSystem units, const model::Tuning* tuning,
               const SamplesAsked& samples, std::size_t most) {
  std::vector<Finding*> open;
  for (Finding& f : assessment.checks)
    if ((f.verdict == Verdict::fail || f.verdict == Verdict::watch) && !data::is_habit(f.id)) open.push_back(&f);
  if (open.empty()) return;
  model::Solved central = solved_to_judge(build, units, tuning);
  Assessment now = judged(central, tuning);
  ChangedBuilds changed(build, units, tuning);
  const Bench bench{build, units, tuning, samples, std::move(now), std::move(central), changed};
  std::erase_if(open, [&](const Finding* f) {
    const Finding* described = find_check(bench.now, f->id);
    return described == nullptr || gravity_of(described->verdict) == 0;  // only samples say so: measure first
  });
  std::stable_sort(open.begin(), open.end(),
                   [](const Finding* a, const Finding* b) { return gravity_of(a->verdict) > gravity_of(b->verdict); });
  if (open.size() > most) open.resize(most);
  share_out(open.size(), std::thread::hardware_concurrency(), [&](std::size_t i) { try_for(bench, *open[i]); });
}
}  // namespace lumwright::plan
