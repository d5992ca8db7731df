// Drills, step drills and ways to cut a hole in sheet that a small workshop has.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct DrillRow {
  std::string name;    // "1.80 mm", "no. 43", "7/64 in"
  std::string series;  // "metric", "number", "fractional"
  Length diameter;
  Basis basis{};
};
/// Thinnest first.
const std::vector<DrillRow>& drills();

struct StepDrill {
  std::string name;
  std::string series;  // "metric", "inch"
  Length first;
  Length last;
  Length step;    // from one diameter to the next
  Length height;  // of one step: the sheet must be thinner
  Basis basis{};
};
const std::vector<StepDrill>& step_drills();
}  // namespace lumwright::data
