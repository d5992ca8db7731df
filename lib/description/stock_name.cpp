#include "description/stock_name.hpp"
#include "description/page_units.hpp"
#include "description/written.hpp"
#include "quantity/units.hpp"
#include <fmt/format.h>

namespace lumwright::description {
namespace {
/// The rule that the name does not speak of: empty where it need not be told.
std::string other_rule(std::string_view unit, UnitSystem units) {
  if (is_imperial(unit)) return "mm";
  return units == UnitSystem::imperial ? "in" : "";
}
std::string on(AnyQuantity size, std::string_view rule) {
  return fmt::format("{:.{}f}", number_in(size, rule), rule == "in" ? 3 : 2);
}
}  // namespace

std::string as_its_owner(AnyQuantity q, std::string_view unit) {
  constexpr std::size_t longest = 14;
  const std::string text = written(q, unit);
  const bool endless =
      text.size() >= longest || text.find("e-") != std::string::npos || text.find("e+") != std::string::npos;
  return endless ? format(q, unit, 4) : text;
}
std::string other_rule_of(AnyQuantity size, std::string_view unit, UnitSystem units) {
  const std::string rule = other_rule(unit, units);
  return rule.empty() ? "" : fmt::format(" ({} {})", on(size, rule), rule);
}
std::string stock_size(const Given<Length>& size, UnitSystem units) {
  if (!size) return "";
  return as_its_owner(*size, size.unit) + other_rule_of(*size, size.unit, units);
}
std::string stock_tube(const Given<Length>& outside, const Given<Length>& wall, UnitSystem units) {
  if (!outside || !wall) return stock_size(outside ? outside : wall, units);
  const std::string name = as_its_owner(*outside, outside.unit) + " x " + as_its_owner(*wall, wall.unit),
                    rule = other_rule(is_imperial(outside.unit) ? outside.unit : wall.unit, units);
  return rule.empty() ? name : fmt::format("{} ({} x {} {})", name, on(*outside, rule), on(*wall, rule), rule);
}
std::string length_on_page(Length length, const Build& build) {
  const AnyQuantity q(length);
  return format(q, choose_unit(q, PageUnits(build).of(q), UnitSystem::as_written));
}
std::string stock_unit(const data::TubeRow& tube) { return tube.name.substr(tube.name.rfind(' ') + 1); }
std::string stock_tube(const data::TubeRow& tube, UnitSystem units) {
  const std::string unit = stock_unit(tube), rule = other_rule(unit, units);
  return rule.empty() ? tube.name
                      : fmt::format("{} ({} x {} {})", tube.name, on(tube.outside, rule), on(tube.wall, rule), rule);
}
}  // namespace lumwright::description
