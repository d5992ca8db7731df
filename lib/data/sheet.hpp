// Thin sheet: the saw blades that cut it, and what a bend takes.
#pragma once
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct SawBlade {
  std::string name;  // "8/0"
  Length thickness;
  Length depth;
  Length tooth_pitch;
  std::string source;
  std::string standing;
};
/// Finest first.
const std::vector<SawBlade>& saw_blades();

/// Sheet in a right-angle bend: per_thickness x thickness + pi/2 x inside radius.
struct BendRow {
  std::string id;
  std::vector<std::string> metals;  // as in metals.yaml
  double per_thickness;
  std::string source;
  std::string standing;
};
/// The row for that metal; throws ModelError for one that the table lacks.
const BendRow& bend_row(std::string_view metal);
}  // namespace lumwright::data
