#include "matter/metal.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <algorithm>

namespace lumwright::matter {
namespace {

std::string lower_case(std::string_view word) {
  std::string out(word);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}
bool called(const data::MetalRow& row, const std::string& word) {
  return lower_case(row.name) == word ||
         std::any_of(row.also.begin(), row.also.end(), [&](const auto& other) { return lower_case(other) == word; });
}
const data::ElongationForm* form_of(const data::MetalRow& metal) {
  if (!metal.elongation_form) return nullptr;
  for (const data::ElongationForm& form : data::elongation_forms())
    if (form.id == *metal.elongation_form) return &form;
  throw std::logic_error("metals.yaml has no elongation form " + *metal.elongation_form);
}
[[noreturn]] void refuse_outside(const data::MetalRow& metal, Temperature t, Temperature low, Temperature high) {
  const std::string at = is_finite(t) ? format(t, "degC") : "that is no number";
  throw ModelError(metal.name + " temperature " + at + " is not between " + format(low, "degC") + " and " +
                   format(high, "degC"));
}
}  // namespace

const data::MetalRow& metal(std::string_view name) {
  const std::string word = lower_case(name);
  std::string known;
  for (const data::MetalRow& row : data::metals()) {
    if (called(row, word)) return row;
    known += (known.empty() ? "" : ", ") + row.name;
  }
  throw ModelError("metal `" + std::string(name) + "` is not one of " + known);
}

Temperature highest_temperature(const data::MetalRow& metal) {
  if (!metal.solidus) throw ModelError("no melting point is known for " + metal.name);
  const data::ElongationForm* form = form_of(metal);
  return form == nullptr ? *metal.solidus : std::min(*metal.solidus, form->to);
}

LinearStrain::LinearStrain(const data::MetalRow& metal)
    : metal_(metal.expansion ? &metal
                             : throw ModelError("no expansion coefficient is known for " + metal.name)),
      highest_(highest_temperature(metal)) {}
void LinearStrain::refuse(Temperature t) const { refuse_outside(*metal_, t, coldest, highest_); }

double linear_strain(const data::MetalRow& metal, Temperature t) { return LinearStrain(metal).at(t); }

double tabulated_strain(const data::MetalRow& metal, Temperature t) {
  const data::ElongationForm* form = form_of(metal);
  if (form == nullptr) throw ModelError("no standard's elongation curve is known for " + metal.name);
  const Temperature low = form->from, high = std::min(form->to, highest_temperature(metal));
  if (!(t >= low && t <= high)) refuse_outside(metal, t, low, high);  // so that a NaN is refused
  double strain = 0.0;
  for (auto c = form->celsius_coefficients.rbegin(); c != form->celsius_coefficients.rend(); ++c)
    strain = strain * in_degC(t) + *c;
  return strain;
}

StrainRange strain(const data::MetalRow& metal, Temperature t) {
  const double linear = linear_strain(metal, t);
  const data::ElongationForm* form = form_of(metal);
  if (form == nullptr || t < form->from) return {linear, linear};
  const double curve = tabulated_strain(metal, t);
  return {std::min(linear, curve), std::max(linear, curve)};
}
}  // namespace lumwright::matter
