// A root that is proved to lie between two ends: Boost.Math's TOMS 748 behind one door.
#pragma once
#include "quantity/errors.hpp"
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace lumwright::numeric {
struct Bracket {
  double low, high;
};
/// The root of f in [low, high], to `bits` of the double. Algorithm 748 (Alefeld, Potra and Shi, 1995).
/// Throws ModelError unless f has opposite signs at the ends, or when an end is not finite. `what` names the unknown.
template <class F>
double bracketed_root(F&& f, double low, double high, const char* what = "root", int bits = 50) {
  const double f_low = f(low), f_high = f(high);
  if (f_low == 0.0) return low;
  if (f_high == 0.0) return high;
  if (!std::isfinite(f_low) || !std::isfinite(f_high) || (f_low > 0) == (f_high > 0))
    throw ModelError(std::string("no ") + what + " between " + std::to_string(low) + " and " + std::to_string(high));
  std::uintmax_t steps = 200;
  const auto [a, b] = boost::math::tools::toms748_solve(f, low, high, f_low, f_high,
                                                        boost::math::tools::eps_tolerance<double>(bits), steps);
  return 0.5 * (a + b);
}
}  // namespace lumwright::numeric
