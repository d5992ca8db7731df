// Drills, step drills and ways to cut a hole in sheet that a small workshop has.
#pragma once
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
  std::string source;
  std::string standing;
};
/// Thinnest first.
const std::vector<DrillRow>& drills();

struct StepDrill {
  std::string name;
  Length first;
  Length last;
  Length step;    // from one diameter to the next
  Length height;  // of one step: the sheet must be thinner
  std::string source;
  std::string standing;
};
const std::vector<StepDrill>& step_drills();
}  // namespace lumwright::data
