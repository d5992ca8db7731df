// The ISO 286 tables: tolerance grades and fundamental deviations of shafts, 3 to 50 mm.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <map>
#include <string>
#include <vector>

namespace lumwright::data {
struct ToleranceGradeRow {
  Length over;  // a step holds over < size <= upto: 30.000 mm belongs to 18-30
  Length upto;
  std::map<int, Length> grades;  // 6 -> IT6
  Basis basis{};
};
const std::vector<ToleranceGradeRow>& tolerance_grades();

/// Upper deviations of shafts a to h; the letter table splits steps that the grade table does not.
struct ShaftDeviationRow {
  Length over;
  Length upto;
  std::map<char, Length> upper;  // 'd' -> es, negative or zero
  Basis basis{};
};
const std::vector<ShaftDeviationRow>& shaft_deviations();
}  // namespace lumwright::data
