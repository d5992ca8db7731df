// What the fan unit is made of, item by item: the parts list of its drawing.
#pragma once
#include "description/build.hpp"
#include "model/fan_unit.hpp"
#include "quantity/format.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::report {
/// In the order of ISO 7573: item, number off, what it is cut from in the stockist's terms, size, mass of all of them.
struct UnitItem {
  std::string part;
  int count;
  std::string stock;
  std::string size;          // "44 mm"; empty for what is bought whole
  std::optional<Mass> mass;  // nothing where it is not known
};
std::vector<UnitItem> unit_items(const model::FanUnit& unit, const description::Build& build, UnitSystem units);
}  // namespace lumwright::report
