#include "report/detail/json_parts.hpp"
#include "data/first_words.hpp"
#include "quantity/format.hpp"
#include <cmath>
#include <stdexcept>

namespace lumwright::report {
double finite(double x) {
  if (!std::isfinite(x)) throw std::logic_error("a number that is not finite reached a JSON document");
  return x;
}
Json object(AnyQuantity quantity) { return {{"value", finite(quantity.si)}, {"unit", si_symbol(quantity.kind)}}; }
Json object(const model::Measure& measure) { return object(measure.quantity); }
Json object(const plan::Caution& c) {
  return {{"id", c.id}, {"title", c.title}, {"text", c.text}, {"authority", c.authority}};
}
Json object(const model::Assumed& a) {
  return {{"key", a.key}, {"value", a.value},         {"band", a.band},
          {"why", a.why}, {"source", a.basis.source}, {"standing", data::word_of(a.basis.standing)}};
}
std::string text_of(const Json& document) {
  Json headed = document;
  headed["safety"] = data::first_words();
  return headed.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}
}  // namespace lumwright::report
