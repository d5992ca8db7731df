#include "matter/range.hpp"
#include "quantity/format.hpp"
#include <charconv>
#include <cmath>

namespace lumwright {
namespace {
std::string text(double x) {  // not format_number: what is refused may be NaN
  char buffer[32];
  return {buffer, std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::general, 6).ptr};
}
void require(bool holds, const char* name, AnyQuantity q, const char* wanted) {
  if (holds) return;
  const std::string symbol = q.kind == kind_of<double> ? "" : " " + si_symbol(q.kind);
  throw ModelError(std::string(name) + " " + text(q.si) + symbol + " is not " + wanted);
}
}  // namespace

void require_above_zero(const char* name, AnyQuantity q) {
  require(q.si > 0.0 && std::isfinite(q.si), name, q, "above zero");
}
void require_not_negative(const char* name, AnyQuantity q) {
  require(q.si >= 0.0 && std::isfinite(q.si), name, q, "zero or more");
}
void require_finite(const char* name, AnyQuantity q) { require(std::isfinite(q.si), name, q, "a finite number"); }

void require_within(const char* name, AnyQuantity q, Range range) {
  if (q.si >= range.low && q.si <= range.high) return;
  require(false, name, q, ("between " + text(range.low) + " and " + text(range.high)).c_str());
}
}  // namespace lumwright
