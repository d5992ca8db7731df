// What the solves of the parts are written with: what becomes of what they lack, and of a refusal.
#pragma once
#include "description/given.hpp"
#include "model/inputs.hpp"
#include "model/outcome.hpp"
#include "model/part_name.hpp"
#include <optional>
#include <string_view>

namespace lumwright::model {
/// Runs a part's solve: what it lacks goes to `missing`, why it cannot be to `impossible`. An equation that refuses its
/// inputs speaks of itself: the part is named before it.
template <class T, class F>
Outcome<T> attempt(F&& solve_part) {
  Outcome<T> outcome;
  const PartName part = part_name(outcome);
  try {
    if (std::optional<T> made = solve_part(outcome.missing)) outcome.value = Part<T>::holding(std::move(*made));
  } catch (const Refused& e) {
    outcome.impossible = e.what();
    outcome.told_by = e.told_by;
    outcome.action = e.action;
  } catch (const ModelError& e) {
    outcome.impossible = std::string(part.words) + " cannot be worked out from these sizes: " + e.what();
    outcome.told_by = part.told_by;
    outcome.action = part.action;
  }
  return outcome;
}
/// Throws why another part, which this one needs, cannot be.
template <class T>
[[noreturn]] void refuse_with(const Outcome<T>& part) {
  throw Refused(part.told_by, part.impossible, part.action);
}
/// Runs `make`; what it refuses is told by that check, after `before`.
template <class F>
auto told_by(std::string_view check, std::string_view before, std::string_view action, F&& make) {
  try {
    return make();
  } catch (const Refused&) {
    throw;
  } catch (const ModelError& e) {
    throw Refused(std::string(check), std::string(before) + e.what(), std::string(action));
  }
}
/// The value of a key that a part cannot do without; a missing one is noted.
template <class Q>
std::optional<Q> needed(Inputs& inputs, const description::Given<Q>& given, std::vector<std::string>& missing) {
  std::optional<Q> value = inputs.known(given);
  if (!value) missing.emplace_back(given.key.text());
  return value;
}
}  // namespace lumwright::model
