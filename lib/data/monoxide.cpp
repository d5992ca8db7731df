#include "data/monoxide.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<MonoxideRow>& monoxide_shares() {
  static const std::vector<MonoxideRow> table = read_all("monoxide", "shares", [](const Row& row) {
    return MonoxideRow{.lumps = row.number("lumps"),
                       .loss = row.triple<double>("loss"),
                       .basis = row.basis()};
  });
  return table;
}

const OverFireAir& over_fire_air() {
  static const OverFireAir air = [] {
    const Row row = section("monoxide", "over_fire");
    return OverFireAir{.leak = row.number("leak"),
                       .power = row.number("power"),
                       .most = row.number("most"),
                       .basis = row.basis()};
  }();
  return air;
}

const DepthInLumps& depth_in_lumps() {
  static const DepthInLumps depth = [] {
    const Row row = section("monoxide", "depth");
    return DepthInLumps{.thin = row.number("thin"),
                        .least = row.number("least"),
                        .good = row.number("good"),
                        .most = row.number("most"),
                        .deep = row.number("deep"),
                        .basis = row.basis()};
  }();
  return depth;
}
}  // namespace lumwright::data
