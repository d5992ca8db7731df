#include "plan/detail/taken_off.hpp"
#include "data/fits.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::plan {
TakenOff taken_off(const model::Solved& solved, Length least, const char* step) {
  const std::string unit = choose_unit(least, solved.page.of(least), solved.units);
  const bool inches = unit == "thou" || unit == "in";
  Length by = data::length_rule(step).value.value;
  if (inches) by = std::round(in(by, thou)) * thou;
  const Length whole = std::ceil(in(least, by) - 1e-9) * by;
  return {whole, fmt::format("{:.4g} {}", number_in(whole, unit), unit)};
}
}  // namespace lumwright::plan
