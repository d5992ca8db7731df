// The one table of unit symbols: what is accepted, what it is worth, how it is printed.
#pragma once
#include "quantity/kind.hpp"
#include <span>
#include <string_view>

namespace lumwright {
struct UnitRow {
  std::string_view symbol;
  std::string_view spellings;  // other accepted ways to write it, with bars between
  Dimension dimension;
  double factor;      // SI value of one
  double offset = 0;  // SI value of zero: only temperature scales have one
  enum class Reads : unsigned char { anything, points, gauge, absolute } reads = Reads::anything;
};
std::span<const UnitRow> unit_table();

/// The row with this symbol or spelling that can express `kind`; null if there is none.
const UnitRow* find_unit(std::string_view symbol, Kind kind);
/// Any row with this symbol or spelling, whatever it measures.
const UnitRow* find_unit(std::string_view symbol);
bool fits(const UnitRow& row, Kind kind);
/// Inch, thou, foot, ounce, pound: read off a rule or scales of the imperial system.
bool is_imperial(std::string_view symbol);
/// The symbol that `word` most likely misspells among the units of `kind`, or empty.
std::string_view nearest_unit(std::string_view word, Kind kind);
/// "mm, cm, m, in, thou": the symbols accepted for `kind`.
std::string accepted_units(Kind kind);
}  // namespace lumwright
