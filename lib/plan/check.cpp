#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/figures.hpp"
#include "quantity/format.hpp"

namespace lumwright::plan {
bool fails(const Check& check, const model::Solved& solved) {
  try {
    if (check.holds != nullptr) return !check.holds(solved);
    const auto finding = check.judge(solved);
    return finding && finding->verdict == Verdict::fail;
  } catch (const ModelError&) {
    return true;
  }
}

model::Measure measure(const model::Solved& solved, AnyQuantity quantity) {
  return {quantity, solved.page.of(quantity)};
}
std::string say(const model::Solved& solved, AnyQuantity quantity, int digits) {
  const model::Measure m = measure(solved, quantity);
  return format(m.quantity, choose_unit(m.quantity, m.unit, solved.units),
                figures_of(solved.results, m, solved.units, digits));
}
std::string say_like(const model::Solved& solved, AnyQuantity quantity, AnyQuantity like) {
  return say(solved, quantity, figures_of(solved.results, {like}, solved.units));
}
std::string roughly(const model::Solved& solved, AnyQuantity quantity) { return say(solved, quantity, 2); }
std::string say_share(const model::Solved& solved, double share, int digits) {
  return percent(share, figures_of(solved.results, {AnyQuantity(share), "%"}, solved.units, digits));
}
Term term(const model::Solved& solved, std::string_view symbol, std::string_view meaning, std::string_view key) {
  const model::Input* input = solved.inputs.find(key);
  if (input == nullptr) throw std::logic_error("no input " + std::string(key));
  const bool written = input->origin == model::Origin::written;
  const bool quoted = written && input->value.kind != kind_of<Temperature>;  // temperatures are never mixed
  return {std::string(symbol), std::string(meaning),
          quoted ? model::Measure{input->value, input->unit} : measure(solved, input->value), input->origin,
          std::string(key)};
}
Term computed(const model::Solved& solved, std::string_view symbol, std::string_view meaning, AnyQuantity quantity) {
  return {std::string(symbol), std::string(meaning), measure(solved, quantity)};
}
Finding lacking_keys(std::vector<std::string> keys) {
  Finding finding;
  finding.missing = std::move(keys);
  return finding;
}
std::optional<Finding> waits_for_the_tube(const model::Solved& solved) {
  if (solved.fit->fit.cold.value > 0.0 * mm) return std::nullopt;
  Finding finding;
  finding.why = "no answer while the tube does not enter the chimney: see \"Tube in the chimney, cold\"";
  return finding;
}
}  // namespace lumwright::plan
