// How heavy and how strong the metals of an adapter and its chimney are.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct StrengthRow {
  std::string metal;  // as in metals.yaml
  Density density;
  Pressure modulus;  // of elasticity
  Pressure proof;    // 0.2 % proof stress at its softest, cold
  double hot_share;  // of `proof` that is left at 300 degC
  Basis basis{};
};
const std::vector<StrengthRow>& strengths();

/// The row for that metal (its name in metals.yaml); throws ModelError for one that the table lacks.
const StrengthRow& strength(std::string_view metal);
}  // namespace lumwright::data
