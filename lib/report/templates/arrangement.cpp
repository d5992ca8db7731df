// Sheet 1: the whole unit on one sheet, at the largest of the usual scales that it has room for (ISO 5455, from
// memory).
#include "model/shop_steps.hpp"
#include "quantity/format.hpp"
#include "report/chart/labels.hpp"
#include "report/templates/parts.hpp"
#include "report/templates/templates.hpp"
#include "report/unit_items.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lumwright::report {
namespace templates_of {
using namespace drawing;
namespace {
// A number in a ring, or words, at the right of the section, with an arrow to what they are about.
struct Callout {
  Point tip;
  std::string words;
  bool ring;
};
class SideColumn {
 public:
  SideColumn(View& view, Length at) : view_(view), left_(at) {}
  void add(Point tip, std::string words, bool ring) { all_.push_back({tip, std::move(words), ring}); }
  /// Down the page in the order of what they point at, so that no two arrows cross, and clear of each other.
  void write(Length top, Length foot) {
    constexpr double step = 8.5;
    std::stable_sort(all_.begin(), all_.end(), [](const Callout& a, const Callout& b) { return a.tip.y > b.tip.y; });
    std::vector<double> down;
    for (const Callout& one : all_) down.push_back(view_.scale * in(top - one.tip.y, mm));
    const double lowest = view_.scale * in(top - foot, mm), needs = step * (static_cast<double>(down.size()) - 1.0);
    down = chart::nudged(down, step, {std::min(-step, lowest - needs), lowest});
    for (std::size_t i = 0; i < all_.size(); ++i) write(all_[i], top - paper(down[i]));
  }

 private:
  Length paper(double millimetres) const { return millimetres / view_.scale * mm; }
  void write(const Callout& one, Length level) {
    constexpr double ring = 6.0;
    const Point edge{left_, level};
    view_.entities.push_back(Arrow{{edge, one.tip}, Layer::dimension});
    const Point middle{left_ + paper(0.5 * ring), level};
    if (one.ring) view_.entities.push_back(Circle{middle, paper(ring), Layer::dimension});
    view_.entities.push_back(Text{.at = one.ring ? middle : Point{left_ + paper(1.0), level},
                                  .words = one.words,
                                  .across = one.ring ? Across::centre : Across::left,
                                  .up = Up::middle});
  }
  View& view_;
  Length left_;
  std::vector<Callout> all_;
};

struct Whole {
  const model::FanUnit& unit;
  const description::Build& build;
  Figures figures;
  double scale;
  Length paper(double millimetres) const { return millimetres / scale * mm; }
};
void add_screw(View& view, Length x, Length low, Length high, Length thick) {
  view.entities.push_back(Line{{x, low - thick}, {x, high + thick}, Layer::centre});
  add_rectangle(view, {{x - 0.5 * thick, low}, {x + 0.5 * thick, high}}, Layer::outline);
  add_rectangle(view, {{x - thick, high}, {x + thick, high + 0.7 * thick}}, Layer::outline);
}
void add_small_things(View& view, const Whole& whole, const SectionLevels& at) {
  const model::FanUnit& unit = whole.unit;
  if (unit.flange && unit.flange->screws) {
    const model::FlangeScrews& s = *unit.flange->screws;
    const Length x = 0.5 * s.pitch_circle;  // turned into the plane of the section
    add_screw(view, x, s.tapped ? 0.0 * mm : -0.8 * s.thread.major, at.box.inside, s.thread.major);
    if (s.count % 2 == 0)
      add_screw(view, -x, s.tapped ? 0.0 * mm : -0.8 * s.thread.major, at.box.inside, s.thread.major);
  }
  const Length level = 0.5 * (at.box.inside + at.box.lid);
  if (unit.box->bleed)
    for (const double side : {-0.55, 0.0, 0.55})  // some of the row, in the wall behind
      view.entities.push_back(Circle{{side * at.half_box, level}, unit.box->bleed->diameter, Layer::outline});
}
// Where the balloon of an item points.
Point place_of(const std::string& part, const Whole& whole, const SectionLevels& at) {
  const model::FanUnit& unit = whole.unit;
  const Length half_tube = 0.5 * unit.tube->outside, wall = at.half_box + 0.5 * unit.box->sheet;
  if (part == "tube") return {half_tube - 0.5 * unit.tube->wall, -0.45 * at.engaged};
  if (part == "flange")
    return {0.5 * unit.flange->outside - 0.2 * (0.5 * unit.flange->outside - half_tube), 0.5 * at.box.floor};
  if (part == "joint of tube and flange") return {half_tube, 0.1 * at.box.floor};
  if (part == "screws of the flange") return {0.5 * unit.flange->screws->pitch_circle, at.box.inside};
  if (part == "bottom and lid" || part == "lid")
    return {0.5 * (at.half_box + at.opening), at.box.lid + 0.5 * unit.box->sheet};
  if (part == "guard over the fan") return {0.3 * at.opening, at.fan_head};
  if (part == "fan") return {0.0 * mm, at.fan_foot + 0.7 * (at.fan_head - at.fan_foot)};
  if (part == "screws of the fan") {
    const auto lid = model::lid_holes(*unit.fan);
    Length x = 0.5 * at.half_box;
    if (lid)
      for (const workshop::PlanePoint& hole : lid->screws) x = std::max(x, hole.x);
    return {x, unit.fan->inside ? at.box.lid : at.box.roof};
  }
  const double up = part == "grommet" ? 0.3 : 0.7;
  return {wall, at.box.inside + up * (at.box.lid - at.box.inside)};
}
void add_heights(View& view, const Whole& whole, const SectionLevels& at) {
  const Length edge = -std::max(at.half_box + whole.unit.box->sheet, half_flange(whole.unit));
  const auto upright = [&](Length low, Length high, double away, const char* before) {
    view.entities.push_back(LinearDimension{
        {edge, low}, {edge, high}, Along::vertical, -away * mm, before, "", low < 0.0 * mm && high <= 0.0 * mm});
  };
  upright(at.box.floor, at.box.roof, 8.0, "");
  upright(-at.engaged, 0.0 * mm, 17.0, "goes in ");
  upright(-at.engaged, at.top, 26.0, "in all ");
  const Length half_tube = 0.5 * whole.unit.tube->outside;
  const auto level = [&](Length half, double down, const std::string& after) {
    view.entities.push_back(
        LinearDimension{{-half, -at.deep}, {half, -at.deep}, Along::horizontal, -down * mm, "\u2300", after});
  };
  level(half_tube, 9.0, between(whole.unit.tube->limits().tube, whole.figures) + " tube");
  const auto& bore = whole.build.engine.chimney.bore;
  if (bore)
    level(0.5 * *bore, 18.0,
          whole.unit.tube->limits().bore
              ? " chimney, to bore out" + between(whole.unit.tube->limits().bore, whole.figures)
              : " chimney as measured");
}
View section_of_whole(const Whole& whole, const std::vector<UnitItem>& items) {
  View view{.name = "", .figures = whole.figures, .scale = whole.scale};
  const SectionLevels at = add_section(view, whole.unit, whole.build);
  add_small_things(view, whole, at);
  add_heights(view, whole, at);
  const Length right = std::max(at.half_box + whole.unit.box->sheet, half_flange(whole.unit));
  SideColumn column(view, right + whole.paper(12.0));
  for (std::size_t i = 0; i < items.size(); ++i)
    column.add(place_of(items[i].part, whole, at), fmt::format("{}", i + 1), true);
  if (const auto& stands = whole.unit.stability; stands) {
    const bool inches = one_rule(whole.figures) == Figures::inches;
    const Point centre{0.0 * mm, stands->centre};
    view.entities.push_back(Circle{centre, whole.paper(4.0), Layer::dimension});
    view.entities.push_back(CentreMark{centre, 3.0 * mm});
    column.add({whole.paper(2.0), stands->centre},
               fmt::format("centre of mass\n{} over the mouth",
                           size_text(model::in_steps(stands->centre, inches ? 1.0 / 16.0 * inch : 1.0 * mm),
                                     one_rule(whole.figures))),
               false);
  }
  column.write(at.top, -at.deep);
  return view;
}
View plan_of_whole(const Whole& whole) {
  const model::MadeBox& box = *whole.unit.box;
  View view{.name = "", .figures = whole.figures, .scale = whole.scale};
  const Length half = 0.5 * box.plate;
  if (box.square) {
    add_rectangle(view, {{-half, -half}, {half, half}}, Layer::outline);
    view.entities.push_back(LinearDimension{{-half, -half}, {half, -half}, Along::horizontal, -8.0 * mm});
  } else {
    view.entities.push_back(Circle{middle, box.plate, Layer::outline});
    view.entities.push_back(
        DiameterDimension{.centre = middle, .diameter = box.plate, .at = degrees(-75.0), .away = 10.0 * mm});
  }
  add_centre_lines(view, middle, half + whole.paper(3.0));
  view.entities.push_back(Circle{middle, whole.unit.tube->outside, Layer::hidden});
  const auto lid = whole.unit.fan ? model::lid_holes(*whole.unit.fan) : std::nullopt;
  if (!lid) return view;
  const Layer fan = whole.unit.fan->inside ? Layer::hidden : Layer::outline;
  add_rectangle(view, {point(lid->frame_low), point(lid->frame_high)}, fan);
  if (lid->opening) view.entities.push_back(Circle{middle, *lid->opening, fan});
  for (const workshop::PlanePoint& hole : lid->screws)
    view.entities.push_back(Circle{point(hole), lid->screw_hole, Layer::outline});
  view.entities.push_back(LinearDimension{{lid->frame_high.x, lid->frame_low.y},
                                          point(lid->frame_high),
                                          Along::vertical,
                                          whole.scale * (half - lid->frame_high.x) + 8.0 * mm,
                                          "fan "});
  return view;
}
// ISO 7573: item, number off, what it is, of what, how large, how heavy.
View list_of_parts(const std::vector<UnitItem>& items, Figures figures, Length width) {
  View view{.name = "General arrangement", .figures = figures};
  const std::array<double, 6> starts{0.0, 8.0, 16.0, 56.0, in(width, mm) - 52.0, in(width, mm) - 14.0};
  constexpr double step = 4.6, inset = 1.2;
  constexpr Length letters = 2.0 * mm;
  double level = 0.0;
  const auto row = [&](const std::array<std::string, 6>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i)
      if (!cells.at(i).empty())
        view.entities.push_back(
            Text{.at = {(starts.at(i) + inset) * mm, (level + 1.3) * mm}, .words = cells.at(i), .height = letters});
    view.entities.push_back(Line{{0.0 * mm, level * mm}, {width, level * mm}, Layer::text});
    level -= step;
  };
  row({"item", "off", "part", "of", "size", "mass"});
  Mass all{};
  const auto weight = [](Mass mass) { return format(AnyQuantity(mass), "g", 2); };
  for (std::size_t i = 0; i < items.size(); ++i) {
    const UnitItem& item = items[i];
    row({fmt::format("{}", i + 1), fmt::format("{}", item.count), item.part, item.stock, item.size,
         item.mass ? weight(*item.mass) : "-"});
    if (item.mass) all += *item.mass;
  }
  row({"", "", "all, without screws and wires", "", "", weight(all)});
  return view;
}
bool inside(const Box& box, const Box& room) { return box.width() <= room.width() && box.height() <= room.height(); }
Box around(const Box& a, const Box& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

/// First angle: what is seen from above stands beneath.
std::optional<Sheet> arranged(const Whole& whole, const std::vector<UnitItem>& items, const Box& room) {
  constexpr Length gap = 7.0 * mm;
  const View section = section_of_whole(whole, items), plan = plan_of_whole(whole),
             list = list_of_parts(items, whole.figures, room.width());
  const Box upper = bounds(section), lower = bounds(plan);
  View bare = list;
  bare.name.clear();
  const Box table = bounds(bare);
  const Length down = upper.low.y - gap - lower.high.y;  // of the plan under the section
  const Box both = around(upper, {{lower.low.x, lower.low.y + down}, {lower.high.x, lower.high.y + down}});
  const Box left{room.low, {room.high.x, room.high.y - table.height() - gap}};
  if (!inside(both, left)) return std::nullopt;
  const Length x = 0.5 * (room.low.x + room.high.x - both.low.x - both.high.x), y = room.high.y - both.high.y;
  Sheet sheet;
  sheet.to_cut = false;
  sheet.views.push_back({list, {room.low.x, room.low.y - table.low.y}, false, std::nullopt, false});
  sheet.views.push_back({section, {x, y}, false, std::nullopt, false});
  sheet.views.push_back({plan, {x, y + down}, false, std::nullopt, false});
  return sheet;
}
}  // namespace
}  // namespace templates_of

std::optional<drawing::Sheet> general_arrangement(const model::FanUnit& unit, const description::Build& build,
                                                  UnitSystem units, const drawing::Paper& paper) {
  if (!unit.tube || !unit.box) return std::nullopt;
  const auto items = unit_items(unit, build, units);
  const drawing::Box room = drawing::room_on(paper, false);
  for (const double scale : {2.0, 1.0, 0.5, 0.2, 0.1})
    if (auto sheet = templates_of::arranged({unit, build, figures_for(build, units), scale}, items, room)) return sheet;
  return std::nullopt;
}
}  // namespace lumwright::report
