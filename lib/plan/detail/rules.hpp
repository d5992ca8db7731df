// Rules of thumb that checks judge by: constants that no solve needs, kept with the typical values so that they can be
// edited.
#pragma once
#include "model/inputs.hpp"
#include "plan/assessment.hpp"
#include <string>
#include <string_view>

namespace lumwright::plan {
struct Rule {
  std::string key;
  model::Input input;  // the rule's value and band
  Term term(std::string_view symbol, std::string_view meaning) const {
    return {std::string(symbol), std::string(meaning), {input.value, input.unit}, model::Origin::assumed, key};
  }
};
/// The rule under `key` of data/typical.yaml. Throws std::logic_error for a key that is not there: our mistake.
template <class Q>
Rule rule(std::string_view key) {
  model::Inputs inputs;
  inputs.constant<Q>(key);
  return {std::string(key), *inputs.find(key)};
}
}  // namespace lumwright::plan
