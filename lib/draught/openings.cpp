#include "draught/openings.hpp"
#include "draught/orifice.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"

namespace lumwright::draught {
namespace {
std::optional<Area> opening(const std::optional<Leak>& leak, MassFlow flow, Pressure suction, Density air,
                            const char* what) {
  if (!leak) return std::nullopt;
  if (const auto* known = std::get_if<Area>(&*leak)) return *known;
  if (flow == 0.0 * kg_per_s) return 0.0 * m2;
  if (!(suction > 0.0 * Pa))
    throw ModelError("air is said to leak in at " + std::string(what) +
                     ", but nothing draws it in there: the hot gas " + "stands at " + format(-suction, "Pa") +
                     " above the air outside");
  return flow / orifice_flow(1.0, 1.0 * m2, air, suction) * m2;
}
}  // namespace

Openings openings(const GasNetwork& network, const PathFlow& hot) {
  const Density air = network.ambient_density();
  return {.past_bed = opening(network.path().past_bed, hot.past_bed, hot.firebox_suction, air, "the firebox"),
          .smokebox = opening(network.path().smokebox, hot.smokebox_leak, hot.smokebox_suction, air, "the smokebox")};
}

GasPath with_openings(GasPath path, const Openings& openings) {
  if (openings.past_bed) path.past_bed = *openings.past_bed;
  if (openings.smokebox) path.smokebox = *openings.smokebox;
  return path;
}
}  // namespace lumwright::draught
