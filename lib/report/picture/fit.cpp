#include "model/solved_fit.hpp"
#include "report/answers.hpp"
#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double fit_height = 118.0, beneath_fit = 108.0;
double title_room(double panel) { return panel < 150.0 ? 56.0 : 40.0; }

/// Faces of one side, in millimetres from the bore of the cold chimney towards the axis.
struct Faces {
  std::string title;
  double chimney, soot, tube;  // where each begins
  Band<Length> clearance;      // on the diameter
  std::string_view result;     // that says the same, with its band
  double gap() const { return soot - chimney; }
};
Faces faces(std::string title, const model::SolvedFit& s, double chimney_strain, double tube_strain, Length soot,
            const Band<Length>& clearance, std::string_view result) {
  const Length bore = s.fit.effective_bore.value;
  const double tube = in(0.5 * (bore - s.input.outside.value * (1.0 + tube_strain)), mm);
  return {std::move(title), -0.5 * in(bore, mm) * chimney_strain, tube - in(soot, mm), tube, clearance, result};
}
std::vector<Faces> all_faces(const model::SolvedFit& s) {
  const workshop::HotClearance &lighting = s.fit.lighting_up, &hot = s.fit.both_hot;
  return {
      faces("cold and clean", s, 0.0, 0.0, 0.0 * mm, s.fit.cold, "fit.clearance_cold"),
      faces("lighting up: tube hotter than chimney", s, lighting.chimney_strain, lighting.tube_strain, s.input.soot,
            lighting.clearance, "fit.clearance_hot"),
      faces("both hot", s, hot.chimney_strain, hot.tube_strain, s.input.soot, hot.clearance, "fit.clearance_both_hot")};
}
/// How the panels are blown up, all alike: the widest gap takes a third of a panel and the deepest clash nearly so; no
/// less than a twentieth of a millimetre is made that wide.
struct Lens {
  double scale;       // px for a millimetre
  double wall_share;  // of a panel that the cold chimney's wall takes
};
Lens lens_for(const std::vector<Faces>& all, double width) {
  double widest = 0.05, deepest = 0.0;
  for (const Faces& f : all) {
    widest = std::max(widest, f.tube - f.chimney);
    deepest = std::max(deepest, f.chimney - f.soot);
  }
  const bool clash = deepest > 0.0;
  return {clash ? std::min(0.33 * width / widest, 0.3 * width / deepest) : 0.36 * width / widest, clash ? 0.44 : 0.3};
}
std::string verdict_words(const Faces& f, const plan::ReportData& data, const TextStyle& style) {
  const Length clearance = f.clearance.value;
  const std::string told = in_page_figures(
      data.assessment, {clearance < 0.0 * mm ? -clearance : clearance, data.units.of(clearance)}, style);
  return told + (clearance > 0.0 * mm ? " free" : " too tight");
}
/// What the line with two ends spans: the gap on the radius, to the same place as the page has it on the diameter.
std::string half_words(const Faces& f, const plan::ReportData& data, const TextStyle& style) {
  const Length half = f.gap() < 0.0 ? -f.gap() * mm : f.gap() * mm;
  const model::Measure on_diameter{f.clearance.value, data.units.of(f.clearance.value)};
  const std::string unit = page_unit(on_diameter, style);
  const auto place = [&](AnyQuantity q) { return std::floor(std::log10(std::abs(number_in(q, unit)))); };
  int digits = plan::figures_of(data.assessment.results, on_diameter, style.units);
  if (half > 0.0 * mm) digits = std::max(1, digits - static_cast<int>(place(f.clearance.value) - place(half)));
  return format(half, unit, digits) + (f.gap() < 0.0 ? " a side too tight" : " a side");
}

struct PanelWords {
  std::string a_side, on_diameter;
};
void draw_section_panel(Figure& figure, const Faces& f, const Faces& cold, const Pane& room, const Lens& lens,
                        const PanelWords& said) {
  const double zero = room.left + lens.wall_share * room.width();
  const auto x = [&](double millimetres) { return std::clamp(zero + lens.scale * millimetres, room.left, room.right); };
  double y = room.top - title_room(room.width()) + letter;
  for (const std::string& words : lines_of(f.title, room.width(), letter)) {
    figure.words({room.left, y}, words, "label strong");
    y += 1.2 * letter;
  }
  const Pane chimney{room.left, room.top, x(f.chimney), room.bottom},
      tube{x(f.tube), room.top, room.right, room.bottom};
  figure.box(chimney, "metal");
  figure.hatched(chimney, Hatch::slant);
  figure.box(tube, "metal-warm");
  figure.hatched(tube, Hatch::counter);
  if (f.tube > f.soot) {
    const Pane soot{x(f.soot), room.top, x(f.tube), room.bottom};
    figure.box(soot, "soot");
    figure.hatched(soot, Hatch::dots);
  }
  if (f.gap() < 0.0) figure.box({x(f.soot), room.top, x(f.chimney), room.bottom}, "clash");
  if (&f != &cold) figure.line({x(cold.tube), room.top - 3.0}, {x(cold.tube), room.bottom + 3.0}, "ghost");
  const double middle = 0.5 * (room.top + room.bottom), a = x(f.chimney), b = x(f.soot);
  figure.line({a, middle}, {b, middle}, "axis");
  for (const double end : {a, b}) figure.line({end, middle - 6.0}, {end, middle + 6.0}, "axis");
  double base = room.bottom + 1.4 * letter;
  for (const std::string& words : lines_of(said.a_side, 0.75 * room.width(), letter)) {
    figure.words({room.left, base}, words, f.gap() < 0.0 ? "label strong bad" : "label strong");
    base += 1.2 * letter;
  }
  for (const std::string& words : lines_of("on the diameter: " + said.on_diameter, room.width(), 0.9 * letter)) {
    figure.words({room.left, base}, words, "small");
    base += 1.1 * letter;
  }
}
/// A length of 1, 2 or 5 times a power of ten that shows how much the panels are blown up; `scale` is px for a unit.
void draw_scale_bar(Figure& figure, Spot at, double scale, double longest, const AxisUnit& unit) {
  double length = std::pow(10.0, std::floor(std::log10(longest / scale)));
  for (const double times : {5.0, 2.0})
    if (times * length * scale <= longest) {
      length *= times;
      break;
    }
  figure.line(at, {at.x + scale * length, at.y}, "axis");
  for (const double x : {at.x, at.x + scale * length}) figure.line({x, at.y - 4.0}, {x, at.y + 4.0}, "axis");
  figure.words({at.x + scale * length + 8.0, at.y + 4.0},
               format_number(length, 1) + " " + unit.symbol() + " in all three", "small");
}
/// Chimney and tube cut along the axis, in their true proportions.
void draw_section(Figure& figure, const model::SolvedFit& s, const Pane& room) {
  const double bore = in(s.input.bore.value, mm), outside = in(s.input.outside.value, mm);
  const double wall = in(s.input.chimney_wall.value_or(0.1 * s.input.bore.value), mm),
               sheet = in(s.input.tube_wall, mm);
  const Length engaged = s.input.engaged.value_or(1.5 * s.input.bore.value);
  const double depth = in(s.input.depth.value_or(engaged), mm), reach = in(engaged, mm);
  const double above = 0.35 * std::max(depth, reach);
  const double scale = std::min(room.width() / (bore + 2.0 * wall), room.height() / (above + std::max(depth, reach)));
  const double axis = 0.5 * (room.left + room.right), lip = room.top + scale * above;
  for (const double side : {-1.0, 1.0}) {
    const auto x = [&](double radius) { return axis + side * scale * radius; };
    const auto pane = [&](double r1, double r2, double top, double bottom) {
      return Pane{std::min(x(r1), x(r2)), top, std::max(x(r1), x(r2)), bottom};
    };
    const Pane chimney = pane(0.5 * bore, 0.5 * bore + wall, lip, lip + scale * depth);
    const Pane tube = pane(0.5 * outside - sheet, 0.5 * outside, room.top, lip + scale * reach);
    figure.box(chimney, "metal");
    figure.hatched(chimney, Hatch::slant);
    figure.box(tube, "metal-warm");
  }
  figure.line({axis, room.top - 6.0}, {axis, lip + scale * std::max(depth, reach) + 6.0}, "centre");
  figure.mark({axis + scale * 0.25 * (bore + outside), lip + 0.4 * scale * std::min(depth, reach)}, Marker::ring,
              "lens");
}
void draw_fit(const plan::ReportData& data, const TextStyle& style, Tag parent, const About& about, double width) {
  const model::SolvedFit& s = *data.fit;
  const std::vector<Faces> all = all_faces(s);
  const AxisUnit unit(s.fit.cold.value, data, style);
  const std::vector<Key> keys{{"chimney", "", "metal", -1, static_cast<int>(Hatch::slant)},
                              {"tube", "", "metal-warm", -1, static_cast<int>(Hatch::counter)},
                              {"soot", "", "soot", -1, static_cast<int>(Hatch::dots)},
                              {"where the cold tube stood", "ghost"}};
  const bool phone = width < 500.0;
  const double left = phone ? 0.0 : 160.0, apart = phone ? 10.0 : 20.0, each = (width - left - 2.0 * apart) / 3.0;
  const double top = title_room(each), bottom = top + fit_height, legend_top = bottom + beneath_fit + 28.0;
  Figure figure(parent, about, width, legend_top + legend_height(keys, width));
  if (!phone) draw_section(figure, s, {8.0, top, 122.0, bottom + 34.0});
  const Lens lens = lens_for(all, each);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double from = left + (each + apart) * static_cast<double>(i);
    draw_section_panel(figure, all[i], all.front(), {from, top, from + each, bottom}, lens,
                       {half_words(all[i], data, style), told(data.assessment, all[i].result, style)});
  }
  draw_scale_bar(figure, {left + 1.0, bottom + beneath_fit + 10.0}, lens.scale / unit(1.0 * mm), 0.6 * each, unit);
  legend(figure, keys, 0.0, legend_top, width);
}
std::string fit_in_a_sentence(const plan::ReportData& data, const TextStyle& style) {
  const workshop::Fit& fit = data.fit->fit;
  const auto on_page = [&](Length length) {
    return in_page_figures(data.assessment, {AnyQuantity(length), data.units.of(length)}, style);
  };
  const Length hot = fit.lighting_up.clearance.value;
  if (fit.cold.value < 0.0 * mm)
    return fmt::format("Cold, the tube is {} larger than the bore: it does not enter.", on_page(-fit.cold.value));
  std::string text = fmt::format("Cold, the tube has {} of play on the diameter. ", on_page(fit.cold.value));
  text += "Lighting up, with soot on it and hotter than the chimney, ";
  text += hot > 0.0 * mm ? fmt::format("{} are left", on_page(hot))
                         : fmt::format("it is {} too thick: it seizes", on_page(-hot));
  return text + fmt::format("; to keep sliding it needs {} cold.", on_page(fit.needed + fit.uncertainty));
}
std::string fit_described(const plan::ReportData& data, const TextStyle& style) {
  std::string text = "An enlarged section through chimney wall, gap and tube, three times to one scale.";
  for (const Faces& f : all_faces(*data.fit)) text += " " + f.title + ": " + verdict_words(f, data, style) + ".";
  return text;
}
}  // namespace

Picture picture_of_fit(const plan::ReportData& data, const TextStyle& style) {
  Picture picture{.id = "fit", .title = "The tube in the chimney", .says = "", .description = ""};
  if (!data.fit) {
    picture.not_drawn = why_missing(data.fit);
    return picture;
  }
  return drawn(
      std::move(picture), fit_in_a_sentence(data, style), fit_described(data, style),
      [&data, style](Tag parent, const About& about, double width) { draw_fit(data, style, parent, about, width); });
}
}  // namespace lumwright::report
