#include "data/wires.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<WireRow>& wires() {
  static const std::vector<WireRow> table = [] {
    std::vector<WireRow> out;
    for (const Row& row : rows("wires", "wires"))
      out.push_back({.section = row.quantity<Area>("section"),
                     .make = row.text("make"),
                     .resistance = row.quantity<LineResistance>("resistance"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const std::vector<Ampacity>& ampacities() {
  static const std::vector<Ampacity> table = [] {
    std::vector<Ampacity> out;
    for (const Row& row : rows("wires", "ampacities")) {
      const std::vector<Current> current = row.list<Current>("current");
      out.push_back({.section = row.quantity<Area>("section"),
                     .current = {.value = current.at(1), .low = current.at(0), .high = current.at(2)},
                     .in_a_bundle = row.number("in_a_bundle"),
                     .basis = row.basis()});
    }
    return out;
  }();
  return table;
}
}  // namespace lumwright::data
