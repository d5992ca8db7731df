// Solid fuels by the names that users write: what they are made of, and how they lie on a grate.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// Mass shares as fired. Moisture, ash and the five elements add up to one; volatiles are part of the elements.
struct FuelAnalysis {
  double moisture;
  double volatiles;
  double ash;
  double carbon;
  double hydrogen;
  double oxygen;
  double nitrogen;
  double sulphur;
  Basis basis{};
};
struct FuelRow {
  std::string name;
  FuelAnalysis analysis;
  Band<Length> lump;            // by sieve, as broken for a small grate
  Band<double> sphericity;      // surface of a ball of the same volume over its own
  Band<double> voidage;         // gaps in a bed without dust; dust lowers it to 35 to 40 % and doubles the resistance
  Band<Density> piece_density;  // of one piece, pores included
  Band<Density> bulk_density;   // of a heap
  Basis basis{};
};
const std::vector<FuelRow>& fuels();

/// The row of this name. Throws ModelError that lists the known names for any other.
const FuelRow& fuel(std::string_view name);
}  // namespace lumwright::data
