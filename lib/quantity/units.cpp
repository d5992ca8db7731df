#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <vector>

namespace lumwright {
namespace {
using Reads = UnitRow::Reads;
template <class Q>
constexpr UnitRow row(std::string_view symbol, Q one, std::string_view spellings = "") {
  return {symbol, spellings, kind_of<Q>.dimension, QuantityTraits<Q>::to_si(one)};
}
constexpr UnitRow pressure_row(std::string_view symbol, Pressure one, Reads reads, std::string_view spellings = "") {
  return {symbol, spellings, kind_of<Pressure>.dimension, in(one, Pa), 0, reads};
}
constexpr Dimension kelvins = kind_of<Temperature>.dimension;

constexpr UnitRow table[] = {
    row("mm", mm, "millimetre|millimeter|millimetres|millimeters"),
    row("cm", cm),
    row("m", m),
    row("um", um, "µm|μm"),
    row("in", inch, "inch|inches|\"|″"),
    row("thou", thou),
    row("ft", foot, "foot|feet"),
    row("mm2", mm2, "mm²|sq mm|sqmm"),
    row("cm2", cm2, "cm²|sq cm"),
    row("m2", m2, "m²"),
    row("in2", in2, "in²|sq in"),
    row("ml", ml, "mL"),
    row("l", litre, "L|litre|liter|litres|liters"),
    row("cm3", cm3, "cm³|cc"),
    row("m3", m3, "m³"),
    row("g", g),
    row("kg", kg),
    row("mg", mg),
    row("oz", ounce),
    row("lb", pound),
    row("s", s, "sec"),
    row("min", minute, "minute|minutes"),
    row("h", hour, "hour|hours|hr"),
    row("ms", ms),
    row("us", us, "µs|μs"),
    row("ns", ns),
    row("m/s", m_per_s),
    row("g/cm3", g_per_cm3, "g/cm³"),
    row("kg/m3", kg_per_m3, "kg/m³"),
    row("Pa", Pa),
    row("hPa", hPa),
    row("kPa", kPa),
    row("mbar", mbar),
    row("bar", bar),
    row("psi", psi, "lbf/in2"),
    row("MPa", MPa),
    // conventional water of 1 kg/l and conventional mercury of 13.5951 kg/l (NIST SP 811, 2008, app. B.8)
    row("mmH2O", mmH2O, "mmH₂O|mmWG|mmwg"),
    row("inH2O", inH2O, "inH₂O|inWG|inwg"),
    row("mmHg", 133.322387415 * Pa),
    row("inHg", 25.4 * 133.322387415 * Pa),
    pressure_row("bar g", bar, Reads::gauge, "barg|bar(g)"),
    pressure_row("psig", psi, Reads::gauge, "psi g|psi(g)"),
    pressure_row("bar a", bar, Reads::absolute, "bara|bar(a)"),
    pressure_row("psia", psi, Reads::absolute, "psi a|psi(a)"),
    row("g/s", g_per_s),
    row("kg/s", kg_per_s),
    row("mg/s", mg_per_s),
    row("g/min", g_per_min),
    row("kg/m2/s", kg_per_m2_s),
    row("l/min", litre_per_min, "L/min|lpm"),
    row("l/s", litre_per_s, "L/s"),
    row("m3/h", m3_per_h, "m³/h"),
    row("m3/min", m3_per_min, "m³/min"),
    row("m3/s", m3_per_s, "m³/s"),
    row("CFM", cubic_foot_per_min, "cfm|ft3/min"),
    row("rpm", rpm, "r/min|1/min"),
    row("Hz", hertz, "1/s"),
    row("kHz", 1e3 * hertz),
    row("MHz", 1e6 * hertz),
    row("V", V, "volt|volts"),
    row("mV", mV),
    row("A", A, "amp|amps"),
    row("mA", mA),
    row("ohm", ohm, "\u03A9|\u2126|ohms"),
    row("mohm", mohm, "m\u03A9|m\u2126"),
    row("ohm/km", ohm_per_km),
    row("ohm/m", ohm_per_m),
    row("uH", microhenry, "µH|μH"),
    row("mH", 1e3 * microhenry),
    row("H", 1e6 * microhenry),
    row("Ah", Ah),
    row("mAh", mAh),
    row("C", A* s),
    row("W", W, "watt|watts"),
    row("mW", mW),
    row("kW", kW),
    row("Wh", Wh),
    row("kWh", kWh),
    row("J", J),
    row("kJ", kJ),
    row("MJ", MJ),
    {"degC", "°C|℃|deg C|° C", kelvins, 1.0, 273.15, Reads::points},
    {"degF", "°F|℉|deg F|° F", kelvins, 5.0 / 9.0, 459.67 * 5.0 / 9.0, Reads::points},
    row("K", K),
    row("W/K", W_per_K),
    row("K/W", K_per_W),
    row("W/m2/K", W_per_m2_K, "W/m2K|W/m²K|W/(m2K)|W/(m2.K)"),
    row("W/m/K", W_per_m_K, "W/mK"),
    row("J/kg/K", J_per_kg_K, "J/kgK"),
    row("MJ/kg", MJ_per_kg),
    row("kJ/kg", kJ_per_kg),
    row("J/kg", J_per_kg),
    row("1/K", per_K, "/K"),
    row("um/m/K", 1e-6 * per_K, "µm/m/K|μm/m/K"),
    row("Pa s", Pa_s, "Pa.s"),
    {"%", "percent", Dimension{}, 0.01}};

bool spelled(const UnitRow& unit, std::string_view word) {
  if (unit.symbol == word) return true;
  const auto others = words(unit.spellings, '|');
  return std::find(others.begin(), others.end(), word) != others.end();
}
}  // namespace

std::span<const UnitRow> unit_table() { return table; }

bool is_imperial(std::string_view symbol) {
  return symbol == "in" || symbol == "thou" || symbol == "ft" || symbol == "oz" || symbol == "lb";
}

bool fits(const UnitRow& row, Kind kind) {
  if (row.dimension != kind.dimension) return false;
  switch (row.reads) {
    case Reads::anything:
      return true;
    case Reads::points:
      return kind.scale == Scale::point;
    case Reads::gauge:
      return kind.scale == Scale::gauge;
    case Reads::absolute:
      return kind.scale == Scale::ratio;
  }
  return false;
}
const UnitRow* find_unit(std::string_view symbol, Kind kind) {
  for (const UnitRow& row : table)
    if (fits(row, kind) && spelled(row, symbol)) return &row;
  return nullptr;
}
const UnitRow* find_unit(std::string_view symbol) {
  for (const UnitRow& row : table)
    if (spelled(row, symbol)) return &row;
  return nullptr;
}
std::string_view nearest_unit(std::string_view word, Kind kind) {
  std::vector<std::string_view> all;
  for (const UnitRow& row : table) {
    if (!fits(row, kind)) continue;
    all.push_back(row.symbol);
    for (std::string_view one : words(row.spellings, '|')) all.push_back(one);
  }
  const std::string_view found = nearest(word, all);
  return found.empty() ? found : find_unit(found, kind)->symbol;
}
std::string accepted_units(Kind kind) {
  std::string list;
  for (const UnitRow& row : table)
    if (fits(row, kind)) list += (list.empty() ? "" : ", ") + std::string(row.symbol);
  return list;
}

std::string kind_name(Kind kind) {
  struct Name {
    Kind kind;
    std::string_view name;
  };
  static constexpr Name names[] = {{kind_of<double>, "a pure number or a percentage"},
                                   {kind_of<Length>, "a length"},
                                   {kind_of<Area>, "an area"},
                                   {kind_of<Volume>, "a volume"},
                                   {kind_of<Mass>, "a mass"},
                                   {kind_of<Duration>, "a time"},
                                   {kind_of<Velocity>, "a speed"},
                                   {kind_of<Density>, "a density"},
                                   {kind_of<Pressure>, "a pressure"},
                                   {kind_of<GaugePressure>, "a gauge pressure"},
                                   {kind_of<MassFlow>, "a mass flow"},
                                   {kind_of<MassFlux>, "a mass flow per area"},
                                   {kind_of<VolumeFlow>, "a volume flow"},
                                   {kind_of<Rotation>, "a speed of rotation"},
                                   {kind_of<Voltage>, "a voltage"},
                                   {kind_of<Current>, "a current"},
                                   {kind_of<Resistance>, "a resistance"},
                                   {kind_of<Charge>, "a charge"},
                                   {kind_of<Power>, "a power"},
                                   {kind_of<Energy>, "an energy"},
                                   {kind_of<Temperature>, "a temperature"},
                                   {kind_of<TemperatureRise>, "a temperature rise"},
                                   {kind_of<ThermalConductance>, "a heat loss per degree"},
                                   {kind_of<HeatTransfer>, "a heat transfer coefficient"},
                                   {kind_of<SpecificEnergy>, "an energy per mass"},
                                   {kind_of<SpecificHeat>, "a specific heat"},
                                   {kind_of<Expansion>, "an expansion coefficient"},
                                   {kind_of<Inductance>, "an inductance"},
                                   {kind_of<LineResistance>, "a resistance per length"},
                                   {kind_of<ThermalResistance>, "a thermal resistance"},
                                   {kind_of<Conductivity>, "a thermal conductivity"},
                                   {kind_of<Viscosity>, "a viscosity"}};
  for (const Name& row : names)
    if (row.kind == kind) return std::string(row.name);
  return "another kind of quantity";
}
}  // namespace lumwright
