#include "data/fan_test.hpp"
#include "data/measuring.hpp"
#include "draught/orifice.hpp"
#include "matter/air.hpp"
#include "report/fan_test.hpp"
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::report {
namespace {
class Sheet {
 public:
  Sheet(const draught::ExpectedFan& fan, const TextStyle& style)
      : fan_(fan), box_(draught::test_box_for(fan)), page_(style) {}
  std::string write() {
    page_.paragraph(fmt::format("A test box for a fan of {}", shown(fan_.frame, "mm")), 0, Ink::strong);
    page_.paragraph(
        "The fan sucks at a box, the air comes in through a sharp hole in the lid, and one U-tube between box and room "
        "tells both: its depression is the fan's static pressure, and drives the air through the hole.");
    making();
    plates();
    reading();
    shortcuts();
    cautions();
    return page_.finish();
  }

 private:
  template <class Q>
  std::string shown(Q q, const char* unit, int digits = 3) const {
    return show({AnyQuantity(q), unit}, page_.style(), digits);
  }
  void item(const char* label, const std::string& text) { page_.hung(label, text); }

  void making() {
    const std::string side = shown(box_.side, "mm"), length = shown(box_.length, "mm");
    page_.heading("Make");
    page_.gap();
    item("box", fmt::format("of stout cardboard, tin or ply, inside {} by {} and {} long: {:.0f} times the face of the "
                            "fan or more, so that the air stands still before it. A round tin of {} does as well.",
                            side, side, length, data::fan_test_rule("box over fan face").value,
                            shown(box_.side * std::sqrt(4.0 / std::numbers::pi), "mm")));
    item("fan",
         "on the middle of one end, blowing out, its frame taped all round; the opening in the box as wide as "
         "the fan's own.");
    item("screen", fmt::format("of gauze or a perforated sheet, half of it open, right across the box, {} from the lid "
                               "and no nearer to the fan than its frame is wide. It breaks up the jet.",
                               shown(box_.screen, "mm")));
    item("lid",
         "at the other end, with an opening larger than the largest hole, and a flat rim of foam that the "
         "plates are held against with clips.");
    item("tap",
         "a thin tube flush with the inside of a side wall near a corner, on the fan's side of the screen, "
         "without a burr, out of every draught.");
    const bool laid = box_.tube.incline > 1.0;
    item(
        "U-tube",
        fmt::format("of clear hose of 6 mm bore or more, {} high on each leg, half filled with water and a drop of "
                    "washing-up liquid, in front of a millimetre rule.{}",
                    shown(box_.u_tube, "mm", 2),
                    laid ? fmt::format(" The pressures are small: lay the leg that is read down, so that it rises 1 in "
                                       "{:.0f}, and write `incline: {:.0f}` under `meter`.",
                                       box_.tube.incline, box_.tube.incline)
                         : ""));
  }
  void plates() {
    page_.heading("Plates");
    page_.gap();
    page_.paragraph(
        fmt::format("Of tin or stiff card no thicker than {}, flat, each hole drilled or cut clean, its edge sharp and "
                    "free of burr towards the room, measured across two directions. Several holes: middles {:.0f} "
                    "diameters apart. And one blank plate.",
                    shown(box_.thickest_plate, "mm", 2), data::fan_test_rule("hole spacing").value),
        2);
    page_.gap();
    std::vector<Page::Row> rows{{{"hole", "holes", "expected", "at", "read to"}, "", Ink::faint}};
    for (const draught::PlannedPlate& p : box_.plates)
      rows.push_back({{shown(p.hole, "mm"), fmt::format("{}", p.holes), shown(p.depression, "mmH2O", 2),
                       shown(p.flow, "l/min", 2), percent(p.reading, 2)},
                      "",
                      Ink::plain});
    page_.table(rows);
    page_.gap();
    page_.paragraph(
        fmt::format(
            "Expected of a fan like this: {} shut, {} in free air. The plates reach {} of that; a lighting-up fan "
            "works below {}.",
            shown(fan_.shut_off, "Pa", 2), shown(fan_.free_air, "l/min", 2), percent(box_.covered, 2), percent(0.5, 2)),
        2, Ink::faint);
  }
  void reading() {
    page_.heading("Read");
    page_.gap();
    item("1", "Level the U-tube with the fan off. Set the voltage that the fan will have, measured at its own leads.");
    item("2",
         "The blank plate first: wait until the water stands. Then tape every seam and the fan's frame and read "
         "again. If it reads more than before there was a leak: find it.");
    item("3",
         "Each plate from the smallest to the largest, then the blank one once more. Note hole, depression, "
         "voltage, current, and the fan's speed if you can count it.");
    item("4", "Air temperature and barometer of the room, not reduced to sea level.");
  }
  void shortcuts() {
    page_.heading("What each shortcut costs");
    page_.gap();
    const draught::PlannedPlate &small = box_.plates.front(), &large = box_.plates.back();
    const double density =
        matter::air_density(degC(0), 1035.0 * mbar) / matter::air_density(degC(30), 975.0 * mbar) - 1.0;
    item("weather",
         fmt::format("no thermometer and no barometer: up to {} of the pressure and {} of the flow from one day to "
                     "another.",
                     percent(density, 2), percent(0.5 * density, 2)));
    const double thick =
        draught::discharge_coefficient("thick hole").value / draught::discharge_coefficient("sharp hole").value - 1.0;
    item("thick",
         fmt::format("plates as thick as half of the hole, {} here: {} more air passes than a sharp edge lets.",
                     shown(0.5 * small.hole, "mm", 2), percent(thick, 2)));
    const Length rule = data::measuring_method("steel_rule").uncertainty;
    item("rule", fmt::format("the smallest hole measured with a rule in place of a caliper: {} of its flow.",
                             percent(2.0 * rule / small.hole, 2)));
    const draught::UTube upright{.reads_to = box_.tube.reads_to, .incline = 1.0};
    item("upright",
         fmt::format("a U-tube that stands upright and is read to {}: {} of the pressure and {} of the flow at "
                     "the largest plate, {} of the pressure at the smallest.",
                     shown(upright.reads_to, "mmH2O"), share(upright, large, 1.0), share(upright, large, 0.5),
                     share(upright, small, 1.0)));
    const Area half = 0.25 * box_.side * box_.side;
    const Velocity through = large.flow / half;
    item("box",
         fmt::format("half as wide: the air in it carries {} of the pressure at the largest plate. That is allowed "
                     "for; its whirls are not, and may be as much again.",
                     percent(0.5 * matter::standard_fan_air * through * through / large.depression, 2)));
    const double leak = 10.0 * mm2 / (static_cast<double>(small.holes) * circle(small.hole));
    item("leak", fmt::format("a slit of 20 mm by 0.5 mm anywhere: the flow of the smallest plate reads {} too small.",
                             percent(leak / (1.0 + leak), 2)));
    item("voltage", "read at the pack in place of the fan, 5 % too high: 10 % of the pressure, 5 % of the flow.");
    item("closed",
         "no reading with the blank plate: no check for leaks, and the end of the curve that matters most is "
         "guessed.");
  }
  static std::string share(const draught::UTube& tube, const draught::PlannedPlate& plate, double of) {
    return percent(of * 2.0 * draught::u_tube_sigma(tube) / plate.depression, 2);
  }
  void cautions() {
    page_.heading("Take care");
    for (const plan::Caution& c : fan_test::fan_test_cautions()) {
      page_.gap();
      page_.paragraph(c.title + ". " + c.text, 2, Ink::care);
      page_.paragraph(c.authority, 2, Ink::faint);
    }
  }

  const draught::ExpectedFan fan_;
  const draught::TestBox box_;
  Page page_;
};
}  // namespace

std::string test_box_sheet(const draught::ExpectedFan& fan, const TextStyle& style) {
  return Sheet(fan, style).write();
}
}  // namespace lumwright::report
