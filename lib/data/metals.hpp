// The metals of a small boiler and of its adapter: how much each swells, holds heat and stands before it melts.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
/// One row of metals.yaml. What no source gives is absent: silver solder has no expansion here.
struct MetalRow {
  std::string name;                           // as users write it: "brass", "cast iron"
  std::vector<std::string> also;              // other words for the same row: "CuZn30"
  std::optional<Expansion> expansion;         // mean from 20 degC, near room temperature
  std::optional<SpecificHeat> specific_heat;  // mean over 20-150 degC
  std::optional<Temperature> solidus;         // where it begins to melt
  std::optional<Density> density;
  std::optional<Conductivity> conductivity;    // of heat, mean over 20-150 degC
  std::optional<std::string> elongation_form;  // id of the curve in `elongation_forms`, if a standard gives one
  Basis basis{};
};
const std::vector<MetalRow>& metals();

/// Elongation per unit length from 20 degC as a polynomial of the temperature on the Celsius scale.
struct ElongationForm {
  std::string id;
  std::vector<double> celsius_coefficients;  // constant first
  Temperature from;
  Temperature to;
  Basis basis{};
};
const std::vector<ElongationForm>& elongation_forms();
}  // namespace lumwright::data
