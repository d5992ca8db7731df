#include "quantity/inches.hpp"
#include <cmath>
#include <fmt/format.h>
#include <numeric>

namespace lumwright {
std::string inch_fraction(double inches) {
  constexpr long finest = 64;
  constexpr double largest = 1e4, same = 1e-9;  // the last: what a factor of 0.0254 leaves of a written fraction
  const double parts = static_cast<double>(finest) * std::abs(inches);
  if (!(std::abs(inches) < largest) || std::abs(parts - std::round(parts)) > same * parts) return "";
  const long all = std::lround(parts), whole = all / finest, rest = all % finest;
  const std::string sign = inches < 0.0 && all > 0 ? "-" : "";
  if (rest == 0) return fmt::format("{}{}", sign, whole);
  const long common = std::gcd(rest, finest);
  return fmt::format("{}{}{}/{}", sign, whole > 0 ? fmt::format("{} ", whole) : "", rest / common, finest / common);
}
std::string inch_fraction(AnyQuantity q) { return q.kind == kind_of<Length> ? inch_fraction(q.si / 0.0254) : ""; }
}  // namespace lumwright
