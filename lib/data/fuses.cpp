#include "data/fuses.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<FuseRow>& fuses() {
  static const std::vector<FuseRow> table = [] {
    std::vector<FuseRow> out;
    for (const Row& row : rows("fuses", "fuses")) {
      const std::vector<Resistance> cold = row.list<Resistance>("cold");
      out.push_back({.rating = row.quantity<Current>("rating"),
                     .cold = {.value = cold.at(1), .low = cold.at(0), .high = cold.at(2)},
                     .basis = row.basis()});
    }
    return out;
  }();
  return table;
}

const std::vector<FuseRule>& fuse_rules() {
  static const std::vector<FuseRule> table = [] {
    std::vector<FuseRule> out;
    for (const Row& row : rows("fuses", "rules"))
      out.push_back({.id = row.text("id"),
                     .continuous = row.number("continuous"),
                     .opens = row.number("opens"),
                     .opens_within = row.quantity<Duration>("opens_within"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const FuseOverWire& fuse_over_wire() {
  static const FuseOverWire row = [] {
    const Row wire = section("fuses", "wire");
    return FuseOverWire{.share = wire.number("share"), .basis = wire.basis()};
  }();
  return row;
}
}  // namespace lumwright::data
