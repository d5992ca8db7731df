// Points that fill a cube more evenly than chance does, the same on every machine for the same seed.
#pragma once
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace lumwright::numeric {
/// Points in the open unit cube, co-ordinates in pairs. Each pair is the first `count` points of the first two
/// dimensions of Sobol's sequence (1967; Boost.Random), which fill every dyadic box evenly, each co-ordinate scrambled
/// by a hashed nested permutation of its binary digits (Owen 1995; the hash of Laine and Karras 2011, constants of
/// Burley 2020); and each pair is taken in a random order of its own (Kollig and Keller 2002). So every co-ordinate is
/// as even as a Latin hypercube, and no two of different pairs go together: higher dimensions of the sequence itself
/// do, for some thousand points. Powers of two are the most even. Up to 1000 dimensions and 2^24 points; throws
/// ModelError beyond.
class QuasiRandom {
 public:
  struct Size {
    std::size_t count, dimensions;
  };
  QuasiRandom(Size size, std::uint64_t seed);
  /// 0 < value < 1; point < count, dimension < dimensions.
  double at(std::size_t point, std::size_t dimension) const { return points_[point * size_.dimensions + dimension]; }
  std::size_t count() const { return size_.count; }
  std::size_t dimensions() const { return size_.dimensions; }

 private:
  Size size_;
  std::vector<double> points_;
};

/// One more co-ordinate for point `point`, even by itself and unrelated to others of other names: for what turns up
/// while sampling.
double stray_coordinate(std::size_t point, std::string_view name, std::uint64_t seed);
}  // namespace lumwright::numeric
