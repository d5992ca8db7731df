// What every JSON document of ours is made of: numbers in SI with their unit, none that is not finite.
#pragma once
#include "plan/assessment.hpp"
#include "quantity/band.hpp"
#include "quantity/kind.hpp"
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace lumwright::report {
using Json = nlohmann::ordered_json;  // keys stay in the order they are written

/// The number itself; std::logic_error for one that is not finite, which our own mistake alone can bring here.
double finite(double x);
/// {"value": 0.012, "unit": "m"}
Json object(AnyQuantity quantity);
Json object(const model::Measure& measure);
Json object(const model::Assumed& assumed);
Json object(const plan::Caution& caution);
/// The document's text. Bytes that are no UTF-8 become U+FFFD.
std::string text_of(const Json& document);

template <class Q>
Json object(const std::optional<Q>& quantity) {
  return quantity ? object(*quantity) : Json();
}
template <class Q>
Json object(const Band<Q>& band) {
  Json out = object(AnyQuantity(band.value));
  out["low"] = finite(AnyQuantity(band.low).si);
  out["high"] = finite(AnyQuantity(band.high).si);
  return out;
}
/// An array of what `as` makes of each.
template <class T>
Json list(const std::vector<T>& items, Json (*as)(const std::type_identity_t<T>&)) {
  Json out = Json::array();
  for (const T& item : items) out.push_back(as(item));
  return out;
}
}  // namespace lumwright::report
