#include "quantity/require.hpp"
#include "quantity/format.hpp"
#include <cmath>
#include <fmt/format.h>
#include <string>

namespace lumwright {
namespace {
std::string refused_number(double x) {  // not format_number: what is refused may be NaN
  if (std::abs(x) >= 1e6 && std::abs(x) < 1e15) return format_number(x, 6);
  return fmt::format("{:.6g}", x);
}
}  // namespace

void detail::refuse(const char* name, AnyQuantity q, const char* wanted, const char* unit) {
  const std::string symbol = *unit != '\0' ? unit : q.kind == kind_of<double> ? "" : si_symbol(q.kind);
  const double x = *unit != '\0' ? number_in(q, unit) : q.si;
  const std::string behind = symbol.empty() ? "" : " " + symbol;
  throw ModelError(std::string(name) + " " + refused_number(x) + behind + " is not " + wanted);
}
void detail::refuse(const char* name, AnyQuantity q, Range range) {
  refuse(name, q, ("between " + refused_number(range.low) + " and " + refused_number(range.high)).c_str(), "");
}
}  // namespace lumwright
