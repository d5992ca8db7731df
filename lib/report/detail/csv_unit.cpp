#include "report/detail/csv_unit.hpp"
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report {
namespace {
std::string symbol_for(AnyQuantity largest, UnitSystem units) {
  if (largest.kind == kind_of<double>) return "";
  return units == UnitSystem::as_written ? si_symbol(largest.kind) : choose_unit(largest, "", units);
}
}  // namespace

CsvUnit::CsvUnit(AnyQuantity largest, UnitSystem units)
    : symbol_(symbol_for(largest, units)), si_(units == UnitSystem::as_written) {}
std::string CsvUnit::head(std::string_view name) const {
  return std::string(name) + (symbol_.empty() ? "" : "_" + name_of_unit(symbol_));
}
std::string CsvUnit::operator()(AnyQuantity q) const {
  return csv_number(si_ || symbol_.empty() ? q.si : number_in(q, symbol_));
}
std::string name_of_unit(std::string_view symbol) {
  std::string out;
  for (const char c : symbol) out += c == '/' ? std::string("_per_") : std::string(1, c);
  return out;
}
std::string csv_number(double x) {
  if (!std::isfinite(x)) throw std::logic_error("a number that is not finite reached a table");
  return fmt::format("{:.6g}", x);
}
}  // namespace lumwright::report
