#include "description/written.hpp"
#include "quantity/decimal.hpp"
#include "quantity/format.hpp"
#include "quantity/inches.hpp"
#include "quantity/units.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::description {
namespace {
std::string with_unit(std::string number, std::string_view symbol) {
  return symbol.empty() ? number : number + " " + std::string(symbol);
}
/// "8:10": minutes with whole seconds that no short decimal gives; else empty.
std::string on_a_clock(double si) {
  const double seconds = std::round(si);
  if (!(seconds > 0.0 && seconds < 36000.0) || std::abs(si - seconds) > 1e-9 * seconds) return "";
  const int whole = static_cast<int>(seconds);
  return whole % 15 == 0 ? "" : fmt::format("{}:{:02}", whole / 60, whole % 60);
}
// `x` rounded to some digits, as the shortest text of that number; no exponent for everyday sizes.
std::string rounded(double x, int digits) {
  const std::string text = fmt::format("{:.{}e}", x, digits - 1);
  return fmt::format("{}", read_decimal(text).value);
}
template <class Test>
std::string shortest(double x, Test&& is_right) {  // empty if none is right
  for (int digits = 1; digits <= 17; ++digits)
    if (std::string text = rounded(x, digits); is_right(text)) return text;
  return "";
}
std::string number_text(double si, Kind kind, std::string_view symbol) {
  const double near = number_in({si, kind}, symbol);
  const auto same = [&](const std::string& text) { return parse_band(with_unit(text, symbol), kind).value == si; };
  if (symbol == "in")
    if (const std::string fraction = inch_fraction(near); !fraction.empty() && same(fraction)) return fraction;
  if (symbol == "min" && kind == kind_of<Duration>)
    if (const std::string clock = on_a_clock(si); !clock.empty() && parse_band(clock, kind).value == si) return clock;
  for (double x :
       {near, std::nextafter(near, -HUGE_VAL), std::nextafter(near, HUGE_VAL)})  // the unit's factor is rounded too
    if (std::string text = shortest(x, same); !text.empty()) return text;
  return fmt::format("{}", near);
}
}  // namespace

std::string written(AnyQuantity q, std::string_view symbol) {
  const std::string number = number_text(q.si, q.kind, symbol);
  return number.find(':') == std::string::npos ? with_unit(number, symbol) : number;
}

std::string written(const WrittenBand& band, Kind kind) {
  std::string centre = written(AnyQuantity(band.value, kind), band.unit);
  if (!band.has_spread) return centre;
  const auto same = [&](const std::string& text) {
    const WrittenBand read = parse_band(text, kind);
    return read.low == band.low && read.high == band.high && read.value == band.value;
  };
  const UnitRow* row = find_unit(band.unit, kind);
  const double half = 0.5 * (band.high - band.low) / (row != nullptr ? row->factor : 1.0);
  const auto spread = [&](const std::string& by) { return centre + " +- " + with_unit(by, band.unit); };
  const std::string by = shortest(half, [&](const std::string& text) { return same(spread(text)); });
  if (!by.empty()) return spread(by);
  const std::string low = number_text(band.low, kind, band.unit), high = number_text(band.high, kind, band.unit);
  const std::string range = low + ".." + with_unit(high, band.unit);
  const double uneven = std::abs((band.high - band.value) - (band.value - band.low));
  return same(range) || uneven > 1e-9 * (band.high - band.low) ? range : spread(fmt::format("{}", half));
}
}  // namespace lumwright::description
