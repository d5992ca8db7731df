// Copper wire: listed line resistances by section, and how much current a wire carries in free air.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
/// Greatest d.c. resistance at 20 degC that the standard allows for a section.
struct WireRow {
  Area section;
  std::string make;  // "class 5" flexible, "class 1/2" solid or stranded, "small" equipment wire
  LineResistance resistance;
  Basis basis{};
};
const std::vector<WireRow>& wires();

struct Ampacity {
  Area section;
  Band<Current> current;  // one wire in free air, 30 K rise
  double in_a_bundle;     // factor in a bundle or a hot cab
  Basis basis{};
};
/// By rising section.
const std::vector<Ampacity>& ampacities();
}  // namespace lumwright::data
