#include "matter/range.hpp"
#include "quantity/format.hpp"
#include <charconv>
#include <cmath>

namespace lumwright {
namespace {
std::string text(double x) {  // not format_number: what is refused may be NaN
  if (std::abs(x) >= 1e6 && std::abs(x) < 1e15) return format_number(x, 6);
  char buffer[32];
  return {buffer, std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::general, 6).ptr};
}
}  // namespace

void detail::refuse(const char* name, AnyQuantity q, const char* wanted) {
  const std::string symbol = q.kind == kind_of<double> ? "" : " " + si_symbol(q.kind);
  throw ModelError(std::string(name) + " " + text(q.si) + symbol + " is not " + wanted);
}
void detail::refuse(const char* name, AnyQuantity q, Range range) {
  refuse(name, q, ("between " + text(range.low) + " and " + text(range.high)).c_str());
}
}  // namespace lumwright
