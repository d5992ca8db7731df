// What an owner can measure with workshop means, and how well.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct MeasurementRow {
  std::string id;
  std::string what;    // is measured, in words: "the fan's shut-off pressure"
  std::string of;      // a key, or a result
  std::string within;  // expanded uncertainty (k = 2) as written: "0.5 mmH2O", or "5 %" of the value
  std::string needs;   // "nothing", "any fan", "the fan unit", ...
  std::string tool, how;
  std::string write;  // where the reading goes
  Basis basis{};
};
const std::vector<MeasurementRow>& measurements();
}  // namespace lumwright::data
