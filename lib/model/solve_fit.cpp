#include "data/fits.hpp"
#include "data/measuring.hpp"
#include "description/stock_name.hpp"
#include "matter/metal.hpp"
#include "model/solved.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright {
namespace {
// A spread in the description is the measuring uncertainty unless that is given by itself.
Length measured_within(Inputs& inputs, std::string_view key, const Given<Length>& size, const Given<Length>& within,
                       const char* method) {
  if (!within && size.has_spread) return 0.0 * mm;
  const data::MeasuringMethod& usual = data::measuring_method(method);
  return inputs.otherwise(key, within, exactly(usual.uncertainty),
                          because("as measured with a " + usual.name, usual.source, usual.standing));
}
Band<Length> band(const Inputs& inputs, const Given<Length>& given, Length used) {
  return inputs.one_of_many() ? exactly(used) : Band<Length>{used, given.band->low, given.band->high};
}
FitHeat heat_of(const Build& build, Inputs& inputs) {
  const auto length = inputs.known("adapter.tube.length", build.adapter.tube.length);
  const auto engaged = engaged_length(build, inputs);
  if (!engaged) inputs.stands_in("adapter.tube.engaged");
  if (!length || !engaged) inputs.stands_in("adapter.tube.length");
  const auto wall = inputs.known("engine.chimney.wall", build.engine.chimney.wall);
  return {.gas_side = inputs.constant<HeatTransfer>("gas.tube_wall_heat"),
          .gap_factor = inputs.constant<double>("gas.tube_gap_heat"),
          .air_side = inputs.constant<HeatTransfer>("gas.chimney_outside_heat"),
          .chimney_wall = wall ? *wall : inputs.constant<Length>("gas.chimney_wall"),
          .free = length && engaged ? std::optional(std::max(*length - *engaged, 0.0 * mm)) : std::nullopt};
}
}  // namespace

std::optional<Length> engaged_length(const Build& build, Inputs& inputs) {
  const part::AdapterTube& tube = build.adapter.tube;
  const part::Chimney& chimney = build.engine.chimney;
  if (auto engaged = inputs.known("adapter.tube.engaged", tube.engaged)) return engaged;
  const auto length = inputs.known("adapter.tube.length", tube.length),
             depth = inputs.known("engine.chimney.depth", chimney.depth);
  if (!length || !depth) return std::nullopt;
  const Length engaged = std::min(*length, *depth);
  inputs.otherwise("adapter.tube.engaged", Given<Length>{}, exactly(engaged),
                   {"", "", "", "as far as tube and chimney allow", "geometry", "derived"});
  return engaged;
}

Outcome<SolvedFit> solve_fit(const Build& build, Inputs& inputs, const Outcome<SolvedDraught>& draught) {
  return attempt<SolvedFit>([&](std::vector<std::string>& missing) -> std::optional<SolvedFit> {
    const part::Chimney& chimney = build.engine.chimney;
    const part::AdapterTube& tube = build.adapter.tube;
    const auto bore = needed(inputs, "engine.chimney.bore", chimney.bore, missing);
    const auto outside = needed(inputs, "adapter.tube.outside", tube.outside, missing);
    if (!bore || !outside) return std::nullopt;
    const Temperature air = inputs.usual("place.air", build.place.air);
    const Temperature gas = draught ? draught->hot_flow.smokebox_gas : inputs.constant<Temperature>("gas.tube_exit");
    const auto& running = data::length_rule("running clearance");
    const auto& soot = data::length_rule("soot");
    FitInput in{
        .bore = band(inputs, chimney.bore, *bore),
        .bore_measured_within = measured_within(inputs, "engine.chimney.measured_within", chimney.bore,
                                                chimney.measured_within, "caliper_inside"),
        .chimney_wall = inputs.known("engine.chimney.wall", chimney.wall),
        .seam_ridge = inputs.usual("engine.chimney.seam_ridge", chimney.seam_ridge),
        .depth = inputs.known("engine.chimney.depth", chimney.depth),
        .chimney_metal = metal(inputs.usual("engine.chimney.material", chimney.material)),
        .outside = band(inputs, tube.outside, *outside),
        .outside_measured_within =
            measured_within(inputs, "adapter.tube.measured_within", tube.outside, tube.measured_within, "micrometer"),
        .tube_wall = inputs.usual("adapter.tube.wall", tube.wall),
        .engaged = engaged_length(build, inputs),
        .tube_metal = metal(inputs.usual("adapter.tube.material", tube.material)),
        .tube_hot = gas,
        .chimney_cold = air,
        .chimney_hot = gas,
        .soot = inputs.otherwise("adapter.tube.soot", tube.soot, soot.value,
                                 because("between two cleanings", soot.source, soot.standing)),
        .running_clearance = running.value.value,
        .heat = heat_of(build, inputs),
    };
    if (!(in.seam_ridge < 0.5 * in.bore.low))
      throw Refused("fit.cold",
                    fmt::format("a seam ridge of {} leaves no way for a tube in a bore of {}",
                                length_on_page(in.seam_ridge, build), length_on_page(in.bore.low, build)),
                    "measure the ridge and the bore once more");
    const Fit result = fit(in);
    return SolvedFit{in, result, inputs.one_of_many() ? std::vector<StockTube>{} : stock_tubes(in, 3)};
  });
}
}  // namespace lumwright
