// A check: one question, its answer from the solved model. Each lives in a file of its own under checks/, as a function
// of the file's name that returns it; the build writes the list from the files, in the order of checks/order.txt.
#pragma once
#include "data/basis.hpp"
#include "model/part_name.hpp"
#include "model/solved.hpp"
#include "plan/assessment.hpp"
#include <string_view>
#include <vector>

namespace lumwright::plan {
struct Check {
  std::string_view id;                                    // "fit.hot"
  std::string_view title;                                 // "Tube in the chimney, hot"
  std::string_view asks;                                  // "Does the hot tube still slide in a cold chimney?"
  std::optional<Finding> (*judge)(const model::Solved& solved);  // nothing where the question does not arise
  /// Whether it does not fail, for one sample of many, where judging costs too much; null: judge() tells.
  bool (*holds)(const model::Solved& solved) = nullptr;
  bool in_samples = true;  // no: it is about the sizes as described
};
/// Whether it fails in one sample of many; physics that gives no answer there is a failure.
bool fails(const Check& check, const model::Solved& solved);
/// Every check, in the order they are shown. Written by lib/plan/registry.cmake.
const std::vector<Check>& all_checks();

// What checks are written with.

/// The quantity in the one unit that things of its kind have on the page.
model::Measure measure(const model::Solved& solved, AnyQuantity quantity);
/// "0.12 mm", in the unit system of the run. A number that is a result of the page has the figures that it has there;
/// `digits` is for all others.
std::string say(const model::Solved& solved, AnyQuantity quantity, int digits = 3);
/// In the figures that `like` has: numbers of a row look alike.
std::string say_like(const model::Solved& solved, AnyQuantity quantity, AnyQuantity like);
/// The same for numbers that no check shows beside its limit: two figures.
std::string roughly(const model::Solved& solved, AnyQuantity quantity);
/// "35 %", with the figures that it has as a result.
std::string say_share(const model::Solved& solved, double share, int digits = 3);
/// A number that was read from the description, in the unit in which it was written; or assumed, or looked up under
/// `key`.
Term term(const model::Solved& solved, std::string_view symbol, std::string_view meaning, std::string_view key);
template <class Q>
Term term(const model::Solved& solved, std::string_view symbol, std::string_view meaning,
          const description::Given<Q>& given) {
  return term(solved, symbol, meaning, given.key.text());
}
/// A number that the model worked out.
Term computed(const model::Solved& solved, std::string_view symbol, std::string_view meaning, AnyQuantity quantity);

/// For a part that could not be solved: unknown with its keys, or a failure with why it cannot be.
template <class T>
Finding unsolved(const model::Outcome<T>& part) {
  Finding finding;
  finding.missing = part.missing;
  finding.why = part.impossible;
  if (!part.impossible.empty()) {
    finding.verdict = Verdict::fail;
    finding.stands_still = model::part_name(part).words;
    finding.told_by = part.told_by;
    finding.action = part.action;
    finding.basis.source = "the model";
    finding.basis.standing = data::Standing::derived;
  }
  return finding;
}
/// Gap over engaged length at which a tube no longer leans but lies: half its length. An estimate of ours.
constexpr double no_stand = 0.5;
/// Unknown for want of these keys.
Finding lacking_keys(std::vector<std::string> keys);
/// Unknown for want of these fields of the description.
template <class... Fields>
Finding lacking(const Fields&... fields) {
  return lacking_keys({std::string(fields.key.text())...});
}
/// Unknown where the tube does not enter the chimney, and so has no place in it; nothing where it does.
std::optional<Finding> waits_for_the_tube(const model::Solved& solved);
}  // namespace lumwright::plan
