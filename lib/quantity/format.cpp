#include "quantity/format.hpp"
#include "quantity/inches.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright {
namespace {
struct Usual {
  Kind kind;
  double below;
  std::string_view metric, imperial;
};  // the first row whose `below` exceeds |si|
constexpr double any = 1e300;
const Usual usual[] = {{kind_of<Length>, 0.0025, "mm", "thou"},
                       {kind_of<Length>, 3.0, "mm", "in"},
                       {kind_of<Length>, any, "m", "ft"},
                       {kind_of<Area>, any, "mm2", "in2"},
                       {kind_of<Volume>, 2e-3, "ml", "ml"},
                       {kind_of<Volume>, any, "l", "l"},
                       {kind_of<Mass>, 1.0, "g", "oz"},
                       {kind_of<Mass>, any, "kg", "lb"},
                       {kind_of<Duration>, 120.0, "s", "s"},
                       {kind_of<Duration>, 7200.0, "min", "min"},
                       {kind_of<Duration>, any, "h", "h"},
                       {kind_of<Velocity>, any, "m/s", "m/s"},
                       {kind_of<Density>, any, "kg/m3", "kg/m3"},
                       {kind_of<Pressure>, 3000.0, "Pa", "inH2O"},
                       {kind_of<Pressure>, any, "mbar", "psi"},
                       {kind_of<GaugePressure>, any, "bar", "psi"},
                       {kind_of<MassFlow>, 5e-5, "mg/s", "mg/s"},
                       {kind_of<MassFlow>, any, "g/s", "g/s"},
                       {kind_of<MassFlux>, any, "kg/m2/s", "kg/m2/s"},
                       {kind_of<VolumeFlow>, any, "l/min", "CFM"},
                       {kind_of<Rotation>, any, "rpm", "rpm"},
                       {kind_of<Voltage>, 0.1, "mV", "mV"},
                       {kind_of<Voltage>, any, "V", "V"},
                       {kind_of<Current>, 0.1, "mA", "mA"},
                       {kind_of<Current>, any, "A", "A"},
                       {kind_of<Resistance>, 1.0, "mohm", "mohm"},
                       {kind_of<Resistance>, any, "ohm", "ohm"},
                       {kind_of<Charge>, 3600.0 * 3, "mAh", "mAh"},
                       {kind_of<Charge>, any, "Ah", "Ah"},
                       {kind_of<Power>, any, "W", "W"},
                       {kind_of<Energy>, any, "kJ", "kJ"},
                       {kind_of<Temperature>, any, "degC", "degF"},
                       {kind_of<TemperatureRise>, any, "K", "K"},
                       {kind_of<ThermalConductance>, any, "W/K", "W/K"},
                       {kind_of<HeatTransfer>, any, "W/m2/K", "W/m2/K"},
                       {kind_of<SpecificEnergy>, any, "MJ/kg", "MJ/kg"},
                       {kind_of<SpecificHeat>, any, "J/kg/K", "J/kg/K"},
                       {kind_of<Expansion>, any, "um/m/K", "um/m/K"},
                       {kind_of<Inductance>, any, "uH", "uH"},
                       {kind_of<LineResistance>, any, "ohm/km", "ohm/km"},
                       {kind_of<Conductivity>, any, "W/m/K", "W/m/K"},
                       {kind_of<ThermalResistance>, any, "K/W", "K/W"},
                       {kind_of<Viscosity>, any, "Pa s", "Pa s"}};

const UnitRow& row_for(std::string_view symbol, Kind kind) {
  const UnitRow* row = find_unit(symbol, kind);
  if (row == nullptr) throw std::logic_error(fmt::format("`{}` cannot express {}", symbol, kind_name(kind)));
  return *row;
}
/// Nobody reads "0.0123 min", "20117 um" or "0.032 ft": such a number is told in the usual unit for its size.
bool readable(AnyQuantity q, std::string_view symbol) {
  constexpr double most = 1e4;
  const UnitRow& row = row_for(symbol, q.kind);
  const bool long_unit = q.kind == kind_of<Length> && row.factor >= 0.01 && symbol != "in";
  // a draught of 0.002 inH2O is told so: one unit a page
  const double least = long_unit ? 0.1 : q.kind == kind_of<Pressure> ? 1e-4 : 0.02;
  const double number = std::abs(q.si / row.factor);
  return row.offset != 0.0 || q.si == 0.0 || (number >= least && number < most);
}
}  // namespace

std::string choose_unit(AnyQuantity q, std::string_view symbol, UnitSystem system) {
  if (q.kind.dimension == Dimension{}) return symbol == "%" ? "%" : "";
  if (system == UnitSystem::as_written && !symbol.empty() && find_unit(symbol, q.kind) != nullptr) {
    if (symbol == "in" && std::abs(q.si) < 0.0025 && inch_fraction(q).empty())
      return "thou";  // nobody speaks of 0.0014 in, though of 1/16 in
    if (readable(q, symbol)) return std::string(symbol);
  }
  for (const Usual& row : usual)
    if (row.kind == q.kind && std::abs(q.si) < row.below)
      return std::string(system == UnitSystem::imperial ? row.imperial : row.metric);
  throw std::logic_error("no usual unit for " + kind_name(q.kind));
}

double number_in(AnyQuantity q, std::string_view symbol) {
  if (symbol.empty()) return q.si;
  const UnitRow& row = row_for(symbol, q.kind);
  return (q.si - row.offset) / row.factor;
}

std::string fixed_number(double x, int decimals) {
  constexpr double last_bits = 1e-6;  // of the last decimal
  const double steps = std::pow(10.0, decimals), whole = std::floor(std::abs(x) * steps + 0.5 + last_bits);
  return fmt::format("{:.{}f}", whole == 0.0 ? 0.0 : std::copysign(whole / steps, x), decimals);
}
std::string format_number(double x, int digits) {
  if (!std::isfinite(x)) throw std::logic_error("a number that is not finite reached the printer");
  if (x == 0.0) return "0";
  const double size = std::abs(x);
  if (size < 1e-12 || size >= 1e15) return fmt::format("{:.{}g}", x, digits);  // of no use to anyone, but true
  if (size >= 1e7) {
    const double step = std::pow(10.0, std::floor(std::log10(size)) - digits + 1);
    return fmt::format("{:.0f}", step > 1.0 ? std::round(x / step) * step : x);
  }
  const std::string rounded =
      fmt::format("{:.{}e}", size, digits - 1);  // 9.996 has two digits before the point once rounded
  const int before = std::stoi(rounded.substr(rounded.find('e') + 1));
  std::string text = fmt::format("{:.{}f}", x, std::max(0, digits - 1 - before));
  if (text.find_first_not_of("-0.") == std::string::npos) return "0";
  return text;
}

// Inches that are whole 64ths are told as the fraction, however many digits are asked for: "9/16 in" is a name in the
// shop.
std::string format(AnyQuantity q, std::string_view symbol, int digits) {
  const double x = number_in(q, symbol);
  if (symbol == "in")
    if (const std::string fraction = inch_fraction(x); !fraction.empty()) return fraction + " in";
  const bool whole = symbol.empty() && std::abs(x) < 1e6 && x == std::round(x);  // a count has no decimals
  const std::string number = whole ? fmt::format("{:.0f}", x) : format_number(x, digits);
  return symbol.empty() ? number : number + " " + std::string(symbol);
}
std::string percent(double share, int digits) { return format(share, "%", digits); }

std::string si_symbol(Kind kind) {
  if (kind.dimension == Dimension{}) return "1";
  for (const UnitRow& row : unit_table())
    if (row.dimension == kind.dimension && row.factor == 1.0 && row.offset == 0.0 &&
        row.reads == UnitRow::Reads::anything)
      return std::string(row.symbol);
  throw std::logic_error("no SI symbol for " + kind_name(kind));
}
}  // namespace lumwright
