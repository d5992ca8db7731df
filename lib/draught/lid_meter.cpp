#include "draught/lid_meter.hpp"
#include "data/fan_test.hpp"
#include "draught/orifice.hpp"
#include "quantity/errors.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::draught {
namespace {
void check(const RoomAir& air) {
  require_above_zero("density of the room's air", air.density);
  require_above_zero("viscosity of the room's air", air.viscosity);
}
void check(const LidPlate& plate) {
  require_above_zero("hole of a test plate", plate.hole);
  require_above_zero("thickness of a test plate", plate.thickness);
  if (plate.holes < 1) throw ModelError("a test plate needs a hole, got " + std::to_string(plate.holes));
}
Band<double> between(const Band<double>& a, const Band<double>& b, double share) {
  const auto mix = [share](double x, double y) { return x + share * (y - x); };
  return {.value = mix(a.value, b.value), .low = mix(a.low, b.low), .high = mix(a.high, b.high)};
}
Band<double> sharp_coefficient(double reynolds) {
  const auto& rows = data::plate_discharges();
  require_within("Reynolds number of a test plate's hole", reynolds, {rows.front().reynolds, 1e7});
  std::size_t upper = 1;
  while (upper < rows.size() && reynolds > rows[upper].reynolds) ++upper;
  if (upper == rows.size()) return rows.back().value;
  const data::PlateDischarge &a = rows[upper - 1], &b = rows[upper];
  return between(a.value, b.value, std::log(reynolds / a.reynolds) / std::log(b.reynolds / a.reynolds));
}
Area open_area(const LidPlate& plate) { return double(plate.holes) * circle(plate.hole); }
}  // namespace

Band<double> plate_coefficient(double hole_reynolds, double thickness_over_hole) {
  const double sharp_to = data::fan_test_rule("edge over hole").value;
  const double thick_from = data::fan_test_rule("thick edge over hole").value;
  require_within("thickness of a test plate over its hole", thickness_over_hole,
                 {0.0, data::fan_test_rule("longest edge over hole").value});
  const Band<double> sharp = sharp_coefficient(hole_reynolds);
  if (thickness_over_hole <= sharp_to) return sharp;
  const Band<double> thick = discharge_coefficient("thick hole");
  if (thickness_over_hole >= thick_from) return thick;
  // On the way the jet clings or does not, as the edge pleases.
  const double share = (thickness_over_hole - sharp_to) / (thick_from - sharp_to);
  const Band<double> middle = between(sharp, thick, share);
  const double either = share * (1.0 - share) * (thick.value - sharp.value) * 2.0;
  return {.value = middle.value, .low = middle.low - either, .high = middle.high + either};
}

MeteredFlow plate_flow(const LidPlate& plate, Pressure depression, const RoomAir& air,
                       const std::optional<Band<double>>& discharge) {
  check(plate);
  check(air);
  require_above_zero("depression of the test box", depression);
  const double edge = plate.thickness / plate.hole;
  const Area area = open_area(plate);
  const auto reynolds_at = [&](MassFlow flow) { return flow * plate.hole / (area * air.viscosity); };
  Band<double> cd = discharge ? *discharge : discharge_coefficient("test plate");
  MassFlow flow = orifice_flow(cd.value, area, air.density, depression);
  // Cd falls by less than a sixth in a decade of Reynolds number, so that each step shrinks the error tenfold.
  for (int step = 0; step < 60 && !discharge; ++step) {
    cd = plate_coefficient(reynolds_at(flow), edge);
    const MassFlow next = orifice_flow(cd.value, area, air.density, depression);
    const bool settled = std::abs(next / flow - 1.0) < 1e-13;
    flow = next;
    if (settled) break;
  }
  return {.flow = flow, .reynolds = reynolds_at(flow), .coefficient = cd};
}

double jet_recovery(const LidPlate& plate, double discharge, Area box) {
  check(plate);
  require_above_zero("cross-section of the test box", box);
  require_within("discharge coefficient", discharge, {0.0, 1.0});
  return discharge * open_area(plate) / box;
}

Velocity pitot_velocity(Pressure velocity_head, Density density) {
  require_not_negative("velocity head", velocity_head);
  require_above_zero("density of the room's air", density);
  return square_root(2.0 * velocity_head / density);
}

MeteredFlow tube_flow(const StraightTube& tube, Velocity on_axis, const RoomAir& air,
                      const std::optional<Band<double>>& share) {
  check(air);
  require_above_zero("bore of the test tube", tube.bore);
  require_above_zero("length of the test tube", tube.length);
  require_above_zero("air speed in the test tube", on_axis);
  const double reynolds = on_axis * tube.bore * air.density / air.viscosity;
  const double lengths = tube.length / tube.bore;
  constexpr double turbulent_from = 3000.0;
  const char* id = lengths < data::tube_share("middling").shortest ? "short"
                   : lengths < data::tube_share("long").shortest   ? "middling"
                   : reynolds < turbulent_from                     ? "laminar"
                                                                   : "long";
  const Band<double> mean = share ? *share : data::tube_share(id).value;
  require_above_zero("mean over axial speed in the test tube", mean.value);
  return {.flow = mean.value * on_axis * circle(tube.bore) * air.density,
          .reynolds = mean.value * reynolds,
          .coefficient = mean};
}

Pressure u_tube_sigma(const UTube& tube) {
  require_above_zero("reading of the U-tube", tube.reads_to);
  require_within("incline of the U-tube", tube.incline, {1.0, 100.0});
  const Pressure limit =
      tube.incline > 1.0 ? std::max(tube.reads_to / tube.incline, data::laid_down_u_tube().least) : tube.reads_to;
  return limit / std::sqrt(3.0);
}
}  // namespace lumwright::draught
