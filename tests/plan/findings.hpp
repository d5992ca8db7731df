// What tests ask of the checks of an assessment.
#pragma once
#include "describe.hpp"
#include <stdexcept>
#include <string>

namespace lumwright {
inline const plan::Finding& finding(const plan::Assessment& a, const std::string& id) {
  const plan::Finding* found = plan::find_check(a, id);
  if (found == nullptr) throw std::runtime_error("no check " + id);
  return *found;
}
inline double value(const plan::Finding& f) { return f.value.value().quantity.si; }
inline double limit(const plan::Finding& f) { return f.limit.value().quantity.si; }
inline double term(const plan::Finding& f, const std::string& symbol) {
  for (const plan::Term& t : f.terms)
    if (t.symbol == symbol) return t.value.quantity.si;
  throw std::runtime_error("no term " + symbol);
}
inline bool says(const plan::Finding& f, const std::string& text) {
  return f.why.find(text) != std::string::npos || f.action.find(text) != std::string::npos;
}
/// The change that takes the bleed holes out of the example tarn-beck.
inline const std::pair<std::string, std::string> no_bleed = {"  bleed: { holes: 8, diameter: 8 mm }\n", ""};
}  // namespace lumwright
