#include "data/fits.hpp"
#include "data/measuring.hpp"
#include "description/stock_name.hpp"
#include "matter/metal.hpp"
#include "model/solving.hpp"
#include "model/solved.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fit.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::model {
namespace {
// A spread in the description is the measuring uncertainty unless that is given by itself.
Length measured_within(Inputs& inputs, const description::Given<Length>& size, const description::Given<Length>& within,
                       const char* method) {
  if (!within && size.has_spread) return 0.0 * mm;
  const data::MeasuringMethod& usual = data::measuring_method(method);
  return inputs.otherwise(within, exactly(usual.uncertainty),
                          because("as measured with a " + usual.name, usual.basis));
}
Band<Length> band(const Inputs& inputs, const description::Given<Length>& given, Length used) {
  return inputs.one_of_many() ? exactly(used) : Band<Length>{used, given.band->low, given.band->high};
}
workshop::FitHeat heat_of(const description::Build& build, Inputs& inputs) {
  const auto length = inputs.known(build.adapter.tube.length);
  const auto engaged = engaged_length(build, inputs);
  if (!engaged) inputs.stands_in(build.adapter.tube.engaged);
  if (!length || !engaged) inputs.stands_in(build.adapter.tube.length);
  const auto wall = inputs.known(build.engine.chimney.wall);
  return {.gas_side = inputs.constant<HeatTransfer>("gas.tube_wall_heat"),
          .gap_factor = inputs.constant<double>("gas.tube_gap_heat"),
          .air_side = inputs.constant<HeatTransfer>("gas.chimney_outside_heat"),
          .chimney_wall = wall ? *wall : inputs.constant<Length>("gas.chimney_wall"),
          .free = length && engaged ? std::optional(std::max(*length - *engaged, 0.0 * mm)) : std::nullopt};
}
}  // namespace

std::optional<Length> engaged_length(const description::Build& build, Inputs& inputs) {
  const description::part::AdapterTube& tube = build.adapter.tube;
  const description::part::Chimney& chimney = build.engine.chimney;
  if (auto engaged = inputs.known(tube.engaged)) return engaged;
  const auto length = inputs.known(tube.length),
             depth = inputs.known(chimney.depth);
  if (!length || !depth) return std::nullopt;
  const Length engaged = std::min(*length, *depth);
  inputs.taken(tube.engaged.key.text(), exactly(engaged),
               {"", "", "", "as far as tube and chimney allow", data::Basis{data::Standing::derived, "geometry"}});
  return engaged;
}

Outcome<SolvedFit> solve_fit(const description::Build& build, Inputs& inputs, const Outcome<SolvedDraught>& draught) {
  return attempt<SolvedFit>([&](std::vector<std::string>& missing) -> std::optional<SolvedFit> {
    const description::part::Chimney& chimney = build.engine.chimney;
    const description::part::AdapterTube& tube = build.adapter.tube;
    const auto bore = needed(inputs, chimney.bore, missing);
    const auto outside = needed(inputs, tube.outside, missing);
    if (!bore || !outside) return std::nullopt;
    const Temperature air = inputs.usual(build.place.air);
    const Temperature gas = draught ? draught->hot_flow.smokebox_gas : inputs.constant<Temperature>("gas.tube_exit");
    const auto& running = data::length_rule("running clearance");
    const auto& soot = data::length_rule("soot");
    workshop::FitInput in{
        .bore = band(inputs, chimney.bore, *bore),
        .bore_measured_within = measured_within(inputs, chimney.bore, chimney.measured_within, "caliper_inside"),
        .chimney_wall = inputs.known(chimney.wall),
        .seam_ridge = inputs.usual(chimney.seam_ridge),
        .depth = inputs.known(chimney.depth),
        .chimney_metal = matter::metal(inputs.usual(chimney.material)),
        .outside = band(inputs, tube.outside, *outside),
        .outside_measured_within = measured_within(inputs, tube.outside, tube.measured_within, "micrometer"),
        .tube_wall = inputs.usual(tube.wall),
        .engaged = engaged_length(build, inputs),
        .tube_metal = matter::metal(inputs.usual(tube.material)),
        .tube_hot = gas,
        .chimney_cold = air,
        .chimney_hot = gas,
        .soot = inputs.otherwise(tube.soot, soot.value, because("between two cleanings", soot.basis)),
        .running_clearance = running.value.value,
        .heat = heat_of(build, inputs),
    };
    if (!(in.seam_ridge < 0.5 * in.bore.low))
      throw Refused("fit.cold",
                    fmt::format("a seam ridge of {} leaves no way for a tube in a bore of {}",
                                description::length_on_page(in.seam_ridge, build),
                                description::length_on_page(in.bore.low, build)),
                    "measure the ridge and the bore once more");
    return SolvedFit{in, workshop::fit(in)};
  });
}
}  // namespace lumwright::model
