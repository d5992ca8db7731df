#include "data/monoxide.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<MonoxideRow>& monoxide_shares() {
  static const std::vector<MonoxideRow> table = read_all("monoxide", "shares", [](const Row& row) {
    return MonoxideRow{.lumps = row.number("lumps"),
                       .loss = row.triple<double>("loss"),
                       .source = row.source(),
                       .standing = row.standing()};
  });
  return table;
}

const OverFireAir& over_fire_air() {
  static const OverFireAir air = [] {
    const Row row = section("monoxide", "over_fire");
    return OverFireAir{.leak = row.number("leak"),
                       .power = row.number("power"),
                       .most = row.number("most"),
                       .source = row.source(),
                       .standing = row.standing()};
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
                        .source = row.source(),
                        .standing = row.standing()};
  }();
  return depth;
}
}  // namespace lumwright::data
