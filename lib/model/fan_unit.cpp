#include "model/fan_unit.hpp"
#include "workshop/solids.hpp"

namespace lumwright::model {
BoxLevels box_levels(const FanUnit& unit) {
  const Length floor = unit.flange ? unit.flange->thickness : 0.0 * mm, inside = floor + unit.box->sheet;
  const Length lid = inside + unit.box->height;
  return {floor, inside, lid, lid + unit.box->sheet};
}
Mass mass_of(const MadeTube& tube) {
  return workshop::mass_of(workshop::tube_volume({tube.outside, tube.wall, tube.length}), tube.metal.name);
}
Mass mass_of(const MadeFlange& flange) {
  const FlangeScrews* screws = flange.screws ? &*flange.screws : nullptr;
  return workshop::mass_of(
      workshop::plate_volume({flange.outside, flange.thickness, flange.tube_hole.value_or(0.0 * mm),
                              screws ? screws->count : 0, screws ? screws->drill : 1.0 * mm}),
      flange.metal.name);
}
}  // namespace lumwright::model
