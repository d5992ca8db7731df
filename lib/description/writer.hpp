// A Build back to the text of a description.
#pragma once
#include "description/build.hpp"
#include <string>

namespace lumwright::description {
/// YAML with the keys that are given, in the order of the schema, each value in the unit it was written in. Reads back
/// to the same numbers and spreads. Throws std::logic_error for a unit that cannot express its quantity.
std::string write_build(const Build& build);
}  // namespace lumwright::description
