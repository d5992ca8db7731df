// Roots that the inner loops take thousands of times: the library's cube root is the dearest function in a raise.
#pragma once
#include <cmath>
#include <cstdint>
#include <cstring>

namespace lumwright::numeric {
/// Cube root, to 1e-15 of itself. A third of the exponent for a start (within 6 %), then twice the series of
/// (1 - e)^(-1/3) in what the cube of the guess still lacks. Anything but a normal number above zero is left to the
/// library.
inline double cube_root(double x) {
  if (!(x > 1e-300 && x < 1e300)) return std::cbrt(x);
  std::uint64_t bits;  // by memcpy: emscripten's library has no std::bit_cast yet
  std::memcpy(&bits, &x, sizeof bits);
  bits = bits / 3 + 0x2A9F7893782DA1CEull;
  double root;
  std::memcpy(&root, &bits, sizeof root);
  const double over = 1.0 / x;
  const double e = 1.0 - root * root * root * over;
  root += root * e * (1.0 / 3 + e * (2.0 / 9 + e * (14.0 / 81 + e * (35.0 / 243 + e * (91.0 / 729)))));
  const double left = 1.0 - root * root * root * over;
  return root + root * left * (1.0 / 3 + left * (2.0 / 9));
}
inline double sixth_root(double x) { return cube_root(std::sqrt(x)); }
}  // namespace lumwright::numeric
