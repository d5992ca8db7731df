// Metals by the names that users write, and how much they swell when hot.
#pragma once
#include "data/metals.hpp"
#include <string_view>

namespace lumwright::matter {
/// The metal of that name or of one of its other names (letter case does not matter).
/// Throws ModelError, listing the known names, for any other.
const data::MetalRow& metal(std::string_view name);

/// The hottest that its rows describe: the solidus, or the end of its elongation curve if that comes first.
/// Throws ModelError for a metal whose solidus is not known.
Temperature highest_temperature(const data::MetalRow& metal);

/// Elongation per unit length from 20 degC to `t` with the mean coefficient of the row. Sources differ by 2-4 %.
/// t: -50 degC to `highest_temperature`. Throws ModelError outside, or when the row has no expansion.
double linear_strain(const data::MetalRow& metal, Temperature t);

/// `linear_strain` of one metal with its range looked up once, for loops over many temperatures.
/// Throws as that does.
class LinearStrain {
 public:
  explicit LinearStrain(const data::MetalRow& metal);
  double at(Temperature t) const {
    if (!(t >= coldest && t <= highest_)) refuse(t);
    return *metal_->expansion * (t - measured_at);
  }

 private:
  static constexpr Temperature measured_at = degC(20);  // ISO 1: lengths are true at 20 degC
  static constexpr Temperature coldest = degC(-50);
  [[noreturn]] void refuse(Temperature t) const;

  const data::MetalRow* metal_;
  Temperature highest_;
};

/// The same by the temperature-dependent curve that a standard gives for this metal (EN 1993-1-2:2005, 3.4.1.1 and
/// annex C; EN 1999-1-2:2007, 3.3.1). Throws ModelError when there is none or `t` lies outside its range.
double tabulated_strain(const data::MetalRow& metal, Temperature t);

struct StrainRange {
  double least;
  double most;
};
/// Least and most that the forms above allow; alike where there is only one. A fit takes the least for the bore and
/// the most for the tube. Throws as `linear_strain`.
StrainRange strain(const data::MetalRow& metal, Temperature t);
}  // namespace lumwright::matter
