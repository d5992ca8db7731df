#include "workshop/fit.hpp"
#include "data/fits.hpp"
#include "matter/metal.hpp"
#include "numeric/root.hpp"
#include "quantity/require.hpp"
#include "workshop/detail/measuring.hpp"
#include "workshop/detail/tube_heating.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::workshop {
namespace {
constexpr Length no_length = 0.0 * mm;

void check(const FitInput& input) {
  require_band("chimney bore", input.bore, "mm");
  require_band("tube outside diameter", input.outside, "mm");
  require_not_negative("measuring uncertainty of the bore", input.bore_measured_within, "mm");
  require_not_negative("measuring uncertainty of the tube", input.outside_measured_within, "mm");
  require_not_negative("seam ridge", input.seam_ridge, "mm");
  require_that("seam ridge", input.seam_ridge, input.seam_ridge < 0.5 * input.bore.low, "less than half the bore",
               "mm");
  if (input.chimney_wall) require_above_zero("chimney wall", *input.chimney_wall, "mm");
  if (input.depth) require_above_zero("chimney depth", *input.depth, "mm");
  if (input.engaged) require_above_zero("engaged length", *input.engaged, "mm");
  require_above_zero("tube wall", input.tube_wall, "mm");
  require_that("tube wall", input.tube_wall, 2.0 * input.tube_wall < input.outside.low, "thin enough to leave a bore",
               "mm");
  require_not_negative("soot", input.soot, "mm");
  require_not_negative("running clearance", input.running_clearance, "mm");
}

Band<Length> clearance(const Band<Length>& bore, const Band<Length>& outside) {
  return {bore.value - outside.value, bore.low - outside.high, bore.high - outside.low};
}
Band<Length> scaled(const Band<Length>& size, double strain) {
  return {size.value * (1.0 + strain), size.low * (1.0 + strain), size.high * (1.0 + strain)};
}
Band<Length> shifted(const Band<Length>& size, Length by) { return {size.value + by, size.low + by, size.high + by}; }

HotClearance hot(const FitInput& input, const Band<Length>& bore, const WallPair& at) {
  const double grown = matter::strain(input.tube_metal, at.tube).most;
  const double opened = matter::strain(input.chimney_metal, at.chimney).least;
  return {.tube = at.tube,
          .chimney = at.chimney,
          .tube_strain = grown,
          .chimney_strain = opened,
          .clearance = shifted(clearance(scaled(bore, opened), scaled(input.outside, grown)), -2.0 * input.soot),
          .needed = needed_clearance({.outside = input.outside.high,
                                      .tube_strain = grown,
                                      .chimney_strain = opened,
                                      .soot = input.soot,
                                      .running_clearance = input.running_clearance})};
}

struct Hottest {  // walls where the gap is least
  WallPair lighting_up, both_hot;
  std::optional<WallPair> put_back;
};
HeatWall wall_of(const data::MetalRow& metal, Length thickness) {
  if (!metal.density || !metal.specific_heat || !metal.conductivity)
    throw ModelError(fmt::format("how heat goes through {} is not known", metal.name));
  return {thickness, *metal.density, *metal.specific_heat, *metal.conductivity};
}
/// By the mean coefficients, which tell one place from another well enough.
WallPair least_gap(const FitInput& input, const Band<Length>& bore, const std::vector<HeatingMoment>& moments) {
  const matter::LinearStrain tube(input.tube_metal), chimney(input.chimney_metal);
  const auto closes = [&](const WallPair& at) {
    return input.outside.value * tube.at(at.tube) - bore.value * chimney.at(at.chimney);
  };
  const WallPair* worst = &moments.front().places.front();
  Length most = closes(*worst);
  for (const HeatingMoment& moment : moments)
    for (const WallPair& at : moment.places)
      if (const Length now = closes(at); now > most) most = now, worst = &at;
  return *worst;
}
Hottest hottest(const FitInput& input, const Band<Length>& bore) {
  if (!input.heat) return {{input.tube_hot, input.chimney_cold}, {input.tube_hot, input.chimney_hot}, std::nullopt};
  constexpr Duration first_minutes = 5.0 * minute;
  constexpr double long_enough = 3.0;  // engaged lengths: more fins than matter
  const FitHeat& heat = *input.heat;
  const Length engaged = input.engaged.value_or(input.depth.value_or(2.0 * input.outside.value));
  const TubeInChimney walls{.tube = wall_of(input.tube_metal, input.tube_wall),
                            .chimney = wall_of(input.chimney_metal, heat.chimney_wall),
                            .outside = input.outside.value,
                            .gap = 0.5 * std::max(bore.value - input.outside.value, no_length),
                            .engaged = engaged,
                            .free = heat.free.value_or(long_enough * engaged),
                            .gas_side = heat.gas_side,
                            .gap_factor = heat.gap_factor,
                            .air_side = heat.air_side,
                            .gas = input.tube_hot,
                            .air = input.chimney_cold};
  const HeatingCourse cold = heat_tube(walls, first_minutes);
  std::vector<Temperature> left;
  for (const WallPair& at : cold.settled.places) left.push_back(at.chimney);
  return {.lighting_up = least_gap(input, bore, cold.moments),
          .both_hot = least_gap(input, bore, {cold.settled}),
          .put_back = least_gap(input, bore, heat_tube(walls, left, first_minutes).moments)};
}

std::optional<Temperature> seizing_temperature(const FitInput& input, const Band<Length>& bore) {
  const double opened = matter::strain(input.chimney_metal, input.chimney_cold).least;
  const Length room = bore.low * (1.0 + opened) - 2.0 * input.soot;
  const auto gap = [&](double celsius) {
    const Length left = room - input.outside.high * (1.0 + matter::strain(input.tube_metal, degC(celsius)).most);
    return in(left, mm);
  };
  const double from = 20.0, to = std::nextafter(in_degC(matter::highest_temperature(input.tube_metal)), from);
  if (gap(from) <= 0.0) return degC(from);
  if (gap(to) > 0.0) return std::nullopt;
  return degC(numeric::bracketed_root(gap, from, to, "seizing temperature"));
}

Area gap_area(const LeakGap& gap) {
  return gap.bore > gap.outside ? circle(gap.bore) - circle(gap.outside) : 0.0 * mm2;
}

std::optional<RidgeFlat> ridge_flat(const FitInput& input, Length allowance) {
  const Length depth = input.seam_ridge + data::length_rule("flat beyond ridge").value.value;
  if (input.seam_ridge == no_length || depth >= input.tube_wall) return std::nullopt;
  const Length wall_left = input.tube_wall - depth;
  const Area half_width_squared = depth * (input.outside.value - depth);
  return RidgeFlat{.depth = depth,
                   .width = 2.0 * square_root(half_width_squared),
                   .wall_left = wall_left,
                   .strong_enough = wall_left >= data::number_rule("flat wall share").value.value * input.tube_wall,
                   .margin = clearance(input.bore, input.outside).low - allowance};
}

// `allowance`: what the worst cold clearance must be, measuring uncertainty included
Skim skim(const FitInput& input, Length allowance, bool fits) {
  const Length wanted = input.outside.high + allowance;
  const Length off = fits || wanted <= input.bore.low ? no_length : wanted - input.bore.low;
  const Length finish = data::length_rule("finishing cut").value.value;
  const Length rough = data::length_rule("roughing cut").value.value;
  Skim skim{.bore = off > no_length ? wanted : input.bore.value,
            .on_diameter = off,
            .ridge_only = !fits && off == no_length,
            .roughing_cuts = off > finish ? static_cast<int>(std::ceil((off - finish) / rough)) : 0,
            .finishing_cuts = off > no_length ? 1 : 0,
            .wall_left = std::nullopt,
            .wall_needed = std::nullopt,
            .heavy = off > data::length_rule("heavy skim").value.value};
  if (!input.chimney_wall) return skim;
  const double share = data::number_rule("wall left share").value.value;
  skim.wall_left = *input.chimney_wall - 0.5 * off - (off > no_length ? 0.5 * input.bore_measured_within : no_length);
  if (const auto limit = data::wall_limit(input.chimney_metal.name))
    skim.wall_needed = std::max(limit->least, share * *input.chimney_wall);
  return skim;
}

std::optional<Engagement> engagement(const FitInput& input, const Band<Length>& cold) {
  if (!input.engaged) return std::nullopt;
  return Engagement{
      .over_outside = *input.engaged / input.outside.value,
      .tilt = cold.value / *input.engaged,
      .share_of_depth = input.depth ? std::optional<double>(*input.engaged / *input.depth) : std::nullopt};
}
}  // namespace

Length needed_clearance(const ColdNeed& need) {
  return need.outside * (need.tube_strain - need.chimney_strain) + 2.0 * need.soot + need.running_clearance;
}

double leak_share(const LeakGap& gap) {
  require_above_zero("chimney bore", gap.bore, "mm");
  require_above_zero("tube outside diameter", gap.outside, "mm");
  require_above_zero("tube bore", gap.tube_bore, "mm");
  return gap_area(gap) / circle(gap.tube_bore);
}

Fit fit(const FitInput& input) {
  check(input);
  const Band<Length> bore = shifted(input.bore, -input.seam_ridge);
  const Band<Length> cold = clearance(bore, input.outside);
  const Length uncertainty = combined_uncertainty({input.bore_measured_within, input.outside_measured_within});
  const Hottest walls = hottest(input, bore);
  const HotClearance lighting_up = hot(input, bore, walls.lighting_up);
  const HotClearance both_hot = hot(input, bore, walls.both_hot);
  const auto put_back = walls.put_back ? std::optional(hot(input, bore, *walls.put_back)) : std::nullopt;
  const Length needed = std::max({lighting_up.needed, both_hot.needed, put_back ? put_back->needed : no_length});
  const Length margin = cold.low - uncertainty - needed;
  const auto gap = [&](Length chimney, Length tube) {
    return LeakGap{.bore = chimney, .outside = tube, .tube_bore = tube - 2.0 * input.tube_wall};
  };
  const Band<LeakGap> gaps = {gap(input.bore.value, input.outside.value), gap(input.bore.low, input.outside.high),
                              gap(input.bore.high, input.outside.low)};
  return {.effective_bore = bore,
          .cold = cold,
          .uncertainty = uncertainty,
          .lighting_up = lighting_up,
          .both_hot = both_hot,
          .put_back = put_back,
          .needed = needed,
          .margin = margin,
          .seizes_at = seizing_temperature(input, bore),
          .leak_area = {gap_area(gaps.value), gap_area(gaps.low), gap_area(gaps.high)},
          .leak_share = {leak_share(gaps.value), leak_share(gaps.low), leak_share(gaps.high)},
          .ridge_flat = ridge_flat(input, needed + uncertainty),
          .skim = skim(input, needed + uncertainty, margin >= no_length),
          .engagement = engagement(input, cold)};
}
}  // namespace lumwright::workshop
