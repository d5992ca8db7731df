#include "plan/check.hpp"
#include "quantity/format.hpp"

namespace lumwright {
bool fails(const Check& check, const Solved& solved) {
  try {
    if (check.holds != nullptr) return !check.holds(solved);
    const auto finding = check.judge(solved);
    return finding && finding->verdict == Verdict::fail;
  } catch (const ModelError&) {
    return true;
  }
}

std::string temperature_unit(const Solved& solved) {
  for (const char* key : {"place.air", "fan.gas_limit"})
    if (const Input* input = solved.inputs.find(key); input != nullptr && input->origin == Origin::written)
      return input->unit;
  return "";
}
Measure measure(const Solved& solved, AnyQuantity quantity, std::string_view like) {
  if (quantity.kind == kind_of<Temperature>) return {quantity, temperature_unit(solved)};
  const Input* input = solved.inputs.find(like);
  return {quantity, input != nullptr ? input->unit : ""};
}
std::string say(const Solved& solved, AnyQuantity quantity, std::string_view like, int digits) {
  const Measure m = measure(solved, quantity, like);
  return format(m.quantity, choose_unit(m.quantity, m.unit, solved.units), digits);
}
Term term(const Solved& solved, std::string_view symbol, std::string_view meaning, std::string_view key) {
  const Input* input = solved.inputs.find(key);
  if (input == nullptr) throw std::logic_error("no input " + std::string(key));
  const char* origin = input->origin == Origin::written ? "written"
                       : input->origin == Origin::tuned ? "tuned"
                                                        : "assumed";
  return {std::string(symbol), std::string(meaning), measure(solved, input->value, key),
          std::string(key) + " (" + origin + ")"};
}
Term computed(const Solved& solved, std::string_view symbol, std::string_view meaning, AnyQuantity quantity,
              std::string_view like) {
  return {std::string(symbol), std::string(meaning), measure(solved, quantity, like), "computed"};
}
Finding lacking(std::vector<std::string> keys) {
  Finding finding;
  finding.missing = std::move(keys);
  return finding;
}
std::optional<Finding> waits_for_the_tube(const Solved& solved) {
  if (solved.fit->fit.cold.value > 0.0 * mm) return std::nullopt;
  Finding finding;
  finding.why = "no answer while the tube does not enter the chimney: see \"Tube in the chimney, cold\"";
  return finding;
}
}  // namespace lumwright
