#include "model/fan_unit.hpp"
#include "model/solved_fan.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
constexpr Length last_bit = 1e-9 * mm;  // what is set out exactly at the limit must not fail by it
// Least metal between the cut-out and a screw hole, and between a hole and the edge of the box.
struct Least {
  workshop::MetalLeft web, rim;
  bool fits;  // all holes and the cut-out within the inside of the box
};
Length from_middle(workshop::PlanePoint p) { return workshop::distance(p, {0.0 * mm, 0.0 * mm}); }
// To the inside of the box: straight out to a round wall, to the nearer side of a square one.
Length to_wall(const model::MadeBox& box, workshop::PlanePoint p) {
  if (!box.square) return 0.5 * box.across - from_middle(p);
  return 0.5 * box.across - std::max(std::max(p.x, -p.x), std::max(p.y, -p.y));
}
Least least(const model::LidHoles& lid, const model::MadeBox& box) {
  const Length opening = lid.opening.value_or(0.0 * mm);
  Length web = box.across, rim = 0.5 * box.across - 0.5 * opening;
  for (const workshop::PlanePoint& hole : lid.screws) {
    web = std::min(web, workshop::web_to_opening({from_middle(hole), opening, lid.screw_hole}));
    rim = std::min(rim, to_wall(box, hole) - 0.5 * lid.screw_hole);
  }
  return {workshop::judge_web(web), workshop::judge_web(rim), rim >= 0.0 * mm};
}
// Inside width at which every hole keeps its distance: a millimetre of room at the wall costs two of width.
Length width_needed(const model::MadeBox& box, const workshop::MetalLeft& rim) {
  const double millimetres = in(box.across + 2.0 * (rim.prefer - rim.has), mm);
  return std::ceil(millimetres - 1e-6) * mm;
}
std::string what_to_change(const model::Solved& solved, const model::LidHoles& lid, const model::MadeBox& box,
                           const Least& l) {
  std::string text;
  if (l.web.room != workshop::Room::enough && lid.opening && l.web.room <= l.rim.room) {
    const Length smaller = *lid.opening - 2.0 * (l.web.prefer - l.web.has);
    if (smaller > 0.5 * *lid.opening)
      text = fmt::format("make the cut-out {}: the fan loses next to nothing", say(solved, smaller));
    else
      text = "holes and cut-out of this fan run into each other: measure them once more";
  }
  if (l.rim.room == workshop::Room::enough) return text;
  return text + (text.empty() ? "" : "; ") +
         fmt::format("a box {} wide inside at least: the fan's holes then stand clear of its wall",
                     say(solved, width_needed(box, l.rim)));
}
/// What is left between the cut-out, the holes and the wall; where nothing is, by how much they run into each other.
std::string metal_words(const model::Solved& solved, const Least& l) {
  const std::string web = say(solved, l.web.has < 0.0 * mm ? -l.web.has : l.web.has),
                    rim = say(solved, l.rim.has < 0.0 * mm ? -l.rim.has : l.rim.has);
  return fmt::format("{}; {}",
                     l.web.has < 0.0 * mm ? fmt::format("cut-out and holes run {} into each other", web)
                                          : fmt::format("{} of sheet is left between cut-out and holes", web),
                     l.rim.has < 0.0 * mm
                         ? fmt::format("holes or cut-out reach {} beyond the inside of the box", rim)
                         : fmt::format("{} is left between holes or cut-out and the wall of the box", rim));
}
std::optional<Finding> must_be_measured(const model::MadeFan& fan, const description::part::FanHoles& holes) {
  Finding f = lacking(holes.measured);
  f.why = fan.drawing.measure_first;
  if (fan.drawing.measure_first.empty()) {  // a blower whose inlet has no place yet
    f.missing = {"fan.holes.inlet_x", "fan.holes.inlet_y"};
    f.why = "the inlet of the fan goes over the middle of the lid: measure where it lies";
  }
  return f;
}
std::optional<Finding> judge_make_lid(const model::Solved& solved) {
  if (!solved.unit || !solved.unit->box || !solved.unit->fan) return std::nullopt;
  const model::MadeBox& box = *solved.unit->box;
  const auto lid = model::lid_holes(*solved.unit->fan);
  if (!lid) return must_be_measured(*solved.unit->fan, solved.build.fan.holes);
  const Least l = least(*lid, box);
  const workshop::FanPattern& pattern = *solved.unit->fan->drawing.pattern;
  Finding f;
  const bool web = std::pair(l.web.room, l.web.has) < std::pair(l.rim.room, l.rim.has);
  const workshop::MetalLeft& shown = web ? l.web : l.rim;
  judge_by(f, measure(solved, shown.has),
           {Bound::at_least, AnyQuantity(shown.prefer - last_bit), AnyQuantity(shown.least - last_bit)});
  f.why = fmt::format("{}: {} screw holes of {}{}; {}", pattern.name, lid->screws.size(), say(solved, lid->screw_hole),
                      lid->opening ? " and a cut-out of " + say(solved, *lid->opening) : "", metal_words(solved, l));
  if (f.verdict != Verdict::pass) f.action = what_to_change(solved, *lid, box, l);
  f.basis = pattern.basis;
  f.formula = "web: distance of the holes from the middle - (cut-out + hole) / 2";
  f.terms = {computed(solved, "d", "screw hole", lid->screw_hole), computed(solved, "B", "box inside", box.across)};
  if (lid->opening) f.terms.push_back(computed(solved, "O", "cut-out", *lid->opening));
  return f;
}
}  // namespace

Check make_lid() {
  return {"make.lid",
          "The fan on the lid",
          "Do cut-out and screw holes of the fan fit on the box?",
          judge_make_lid,
          nullptr,
          false};
}
}  // namespace lumwright::plan
