#include "workshop/solids.hpp"
#include "data/strengths.hpp"
#include "quantity/require.hpp"
#include <fmt/format.h>

namespace lumwright::workshop {
Volume tube_volume(const TubeShape& tube) {
  require_above_zero("tube outside diameter", tube.outside, "mm");
  require_above_zero("tube wall", tube.wall, "mm");
  require_above_zero("tube length", tube.length, "mm");
  require_that("tube wall", tube.wall, 2.0 * tube.wall < tube.outside, "thin enough to leave a bore", "mm");
  return (circle(tube.outside) - circle(tube.outside - 2.0 * tube.wall)) * tube.length;
}

Volume plate_volume(const PlateShape& plate) {
  require_above_zero("plate outside diameter", plate.outside, "mm");
  require_above_zero("plate thickness", plate.thickness, "mm");
  require_not_negative("opening of the plate", plate.opening, "mm");
  require_not_negative("hole of the plate", plate.hole, "mm");
  if (plate.holes < 0) throw ModelError(fmt::format("number of holes {} is negative", plate.holes));
  const Area left =
      circle(plate.outside) - circle(plate.opening) - static_cast<double>(plate.holes) * circle(plate.hole);
  if (!(left > 0.0 * mm2)) throw ModelError("the holes take away more than the whole plate");
  return left * plate.thickness;
}

Volume box_volume(const BoxShape& box) {
  require_above_zero("side or diameter of the box", box.diameter, "mm");
  require_above_zero("height of the box", box.height, "mm");
  require_above_zero("sheet of the box", box.sheet, "mm");
  require_not_negative("opening of the lid", box.lid_opening, "mm");
  require_not_negative("opening of the bottom", box.bottom_opening, "mm");
  const auto area = [&](Length side) { return box.square ? Area(side * side) : circle(side); };
  const Area end = area(box.diameter + 2.0 * box.sheet), wall = end - area(box.diameter);
  const Area lid = end - circle(box.lid_opening), bottom = end - circle(box.bottom_opening);
  if (!(lid > 0.0 * mm2))
    throw ModelError(fmt::format("an opening of {:.3g} mm leaves nothing of a lid of {:.3g} mm",
                                 in(box.lid_opening, mm), in(box.diameter, mm)));
  if (!(bottom > 0.0 * mm2))
    throw ModelError(fmt::format("an opening of {:.3g} mm for the tube leaves nothing of a bottom of {:.3g} mm",
                                 in(box.bottom_opening, mm), in(box.diameter, mm)));
  return wall * box.height + (lid + bottom) * box.sheet;
}

Mass mass_of(Volume volume, std::string_view metal) { return volume * data::strength(metal).density; }
}  // namespace lumwright::workshop
