// Heat of a gas by polynomials in temperature (NASA's seven coefficients): one species, or a mixture that is one
// polynomial.
#pragma once
#include "data/species.hpp"
#include "quantity/quantity.hpp"
#include <array>

namespace lumwright::matter {
/// A gas whose heat capacity is a fourth-degree polynomial in each of two ranges, for a unit of mass. The upper range
/// is shifted, by under 1e-5 of the enthalpy, to join the lower one without a step. Ideal gas; 200 to 3500 K, else
/// ModelError. A mixture costs no more to evaluate than one species.
class IdealGas {
 public:
  /// One species by itself.
  explicit IdealGas(const data::SpeciesRow& row);
  /// The same molecules' heat with another relative mass: nitrogen standing for the rest of the air.
  IdealGas(const data::SpeciesRow& row, double relative_mass);

  static constexpr Temperature coldest = kelvin(200.0), hottest = kelvin(3500.0);

  /// Enthalpy of formation at 25 degC and all heat since.
  SpecificEnergy enthalpy(Temperature t) const;
  SpecificHeat heat_capacity(Temperature t) const;
  /// Both at once.
  struct Heat {
    SpecificEnergy enthalpy;
    SpecificHeat capacity;
  };
  Heat heat(Temperature t) const;
  /// The temperature at which `enthalpy` has this value; the inverse to 1e-12 of the temperature. Newton's method,
  /// fenced in by the range. Throws ModelError if the value lies outside the range of the polynomials.
  Temperature temperature(SpecificEnergy enthalpy) const;
  /// Throws that ModelError, and costs less than the search.
  void require_reached(SpecificEnergy enthalpy) const;
  /// Of one molecule: grams for each mole.
  double relative_mass() const { return relative_mass_; }

 private:
  friend IdealGas mixed(const IdealGas& a, const IdealGas& b, double share_of_b);
  IdealGas() = default;
  double h(double t) const;   // J/kg
  double cp(double t) const;  // J/kgK

  // cp = c0 + c1 t + ... + c4 t^4; h = c0 t + c1 t^2/2 + ... + c5: as plain numbers of J, kg and K, so that a mixture
  // is a weighted sum.
  std::array<double, 6> low_{}, high_{};
  double middle_ = 1000.0, relative_mass_ = 1.0, at_25_ = 0.0;
};

/// A mixture of `share_of_b` of b, by mass, with a. Shares outside 0 to 1 throw ModelError.
IdealGas mixed(const IdealGas& a, const IdealGas& b, double share_of_b);
}  // namespace lumwright::matter
