// The gases of a fire: heat of each against temperature, and what air and fuel are made of.
#pragma once
#include "quantity/quantity.hpp"
#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// Seven coefficients for each of two ranges of temperature; species.yaml says how they are used.
struct SpeciesRow {
  std::string id;
  std::string formula;
  double relative_mass;  // of the molecule: grams for each mole
  Temperature from, middle, to;
  std::array<double, 7> low, high;
  std::string source;
  std::string standing;
};
const std::vector<SpeciesRow>& species();
/// The row with this id ("carbon dioxide") or formula ("CO2"). Throws ModelError that lists the ids for any other.
const SpeciesRow& species(std::string_view name);

struct DryAir {
  double oxygen_share;        // of the molecules
  double rest_relative_mass;  // nitrogen with argon
  std::string source;
  std::string standing;
};
const DryAir& dry_air();

struct RelativeAtomicMasses {
  double carbon, hydrogen, oxygen, nitrogen, sulphur;
};
const RelativeAtomicMasses& relative_atomic_masses();
}  // namespace lumwright::data
