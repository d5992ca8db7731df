// Visits every number that a file gave and holds that it is a number, within its spread.
#pragma once
#include "description/given.hpp"
#include "oracle.hpp"
#include <cmath>
#include <vector>

namespace lumwright::fuzz {
using namespace description;
struct Finite {
  template <class Q>
  void operator()(const Field&, const Given<Q>& given, Limits) {
    if (!given) return;
    using T = QuantityTraits<Q>;
    const double low = T::to_si(given.band->low), value = T::to_si(given.band->value),
                 high = T::to_si(given.band->high);
    must(std::isfinite(low) && std::isfinite(high), "what was read is finite");
    must(low <= value && value <= high, "a value lies within its spread");
  }
  template <class X, class Y>
  void operator()(const Field&, const Points<X, Y>& points, Limits, Limits) {
    for (const auto& p : points.points)
      must(std::isfinite(QuantityTraits<X>::to_si(p.x)) && std::isfinite(QuantityTraits<Y>::to_si(p.y)),
           "a point is finite");
  }
  void operator()(const Field&, const Count&, int, int) {}
  void operator()(const Field&, const Text& text, Allowed) {
    if (text) must(showable(*text), "a text can be shown");
  }
  void operator()(const Field&, const EfficiencyTable& table) {
    if (table.share) must(*table.share > 0.0 && *table.share <= 1.0, "an efficiency is a share");
  }
  template <class Part>
  void section(const Field&, const Part& part) {
    Part::fields(part, *this);
  }
  template <class Part>
  void list(const Field&, const std::vector<Part>& parts) {
    for (const Part& part : parts) Part::fields(part, *this);
  }
};
template <class Root>
void all_finite(const Root& root) {
  Finite visitor;
  Root::fields(root, visitor);
}
}  // namespace lumwright::fuzz
