// The unit and the figures of a column of numbers: named in its head, the same in every cell.
#pragma once
#include "quantity/format.hpp"
#include <string>
#include <string_view>

namespace lumwright::report {
class CsvUnit {
 public:
  /// SI; where a system is asked for, what suits the column's largest number in it.
  CsvUnit(AnyQuantity largest, UnitSystem units);
  /// "pressure_Pa", "air_flow_g_per_s"; the bare name for a pure number.
  std::string head(std::string_view name) const;
  /// Six figures. Throws std::logic_error for a number that is not finite.
  std::string operator()(AnyQuantity q) const;
  const std::string& symbol() const { return symbol_; }

 private:
  std::string symbol_;  // empty for a pure number
  bool si_;
};
/// "kg/s" becomes "kg_per_s": fit for a column's name.
std::string name_of_unit(std::string_view symbol);
/// Six figures, with a point whatever the locale. Throws std::logic_error for a number that is not finite.
std::string csv_number(double x);
}  // namespace lumwright::report
