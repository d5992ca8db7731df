#include "drawing/detail/ink.hpp"
#include "drawing/detail/lettering.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::drawing {
namespace {
constexpr double line_pitch = 1.6;  // base line to base line, in heights: ISO 3098-1 asks for 1.4 at least, from memory
constexpr double furthest = 1e4;    // mm: what no part of a garden-railway engine reaches

void require(bool good, const View& view, std::string_view what) {
  if (!good) throw ModelError(fmt::format("drawing `{}`: {}", clean(view.name), what));
}
double positive(Length size, const View& view, std::string_view what) {
  const double number = in(size, mm);
  require(std::isfinite(number) && number > 0.0, view, fmt::format("{} {} mm is not above 0", what, number));
  return number;
}
void check_text_sizes(const View& view, const Words& w) {
  require(w.height > 0.0 && w.height < 1e3 && std::isfinite(w.turn), view,
          fmt::format("letter height {} mm is not between 0 and 1000", w.height));
}
// Every number of the ink, so that no format ever gets one it cannot hold.
void check_reach(const View& view, const Inks& inks) {
  const auto reach = [&](Spot p) {
    for (const double number : {p.x, p.y})
      require(std::abs(number) < furthest, view, fmt::format("co-ordinate {} mm is not within 10 m", number));
  };
  for (const Ink& ink : inks) {
    if (const auto* s = std::get_if<Stroke>(&ink.shape)) std::for_each(s->points.begin(), s->points.end(), reach);
    if (const auto* b = std::get_if<Bow>(&ink.shape)) reach(b->centre), reach(b->centre + Spot{b->radius, b->sweep});
    if (const auto* w = std::get_if<Words>(&ink.shape)) reach(w->at), check_text_sizes(view, *w);
  }
}

struct Maker {
  const View& view;
  Inks out{};
  Written written{view.figures, view.scale};
  Spot on_paper(Point p) const { return view.scale * spot(p); }

  void operator()(const Line& l) { stroke(out, {on_paper(l.from), on_paper(l.to)}, l.layer); }
  void operator()(const Polyline& p) {
    require(p.points.size() >= 2, view, "a polyline needs two points");
    std::vector<Spot> points;
    for (const Point& point : p.points) points.push_back(on_paper(point));
    stroke(out, std::move(points), p.layer, p.closed);
  }
  void operator()(const Circle& c) {
    const double radius = view.scale * positive(c.diameter, view, "diameter") / 2.0;
    out.push_back({Bow{on_paper(c.centre), radius, 0.0, 2.0 * pi}, c.layer, c.layer});
  }
  void operator()(const Arc& a) {
    double sweep = std::fmod(a.to.in_radians() - a.from.in_radians(), 2.0 * pi);
    require(std::isfinite(sweep), view, "the angle of an arc is not finite");
    if (sweep <= 0.0) sweep += 2.0 * pi;
    out.push_back({Bow{on_paper(a.centre), view.scale * positive(a.radius, view, "radius"), a.from.in_radians(), sweep},
                   a.layer, a.layer});
  }
  void operator()(const Text& t) {
    const double height = t.height > 0.0 * mm ? in(t.height, mm) : in(data::letter_height("note"), mm);
    letter(out, on_paper(t.at), t.words, {height, t.across, t.up, t.rotation.in_radians()}, t.layer);
  }
  void operator()(const LinearDimension& d) { add_dimension(out, d, written); }
  void operator()(const DiameterDimension& d) {
    positive(d.diameter, view, "diameter");
    add_dimension(out, d, written);
  }
  void operator()(const RadiusDimension& d) {
    positive(d.radius, view, "radius");
    add_dimension(out, d, written);
  }
  void operator()(const AngularDimension& d) {
    positive(d.radius, view, "radius");
    require(std::isfinite((d.to - d.from).in_radians()), view, "an angle is not finite");
    add_dimension(out, d, view.scale);
  }
  void operator()(const CentreMark& m) {
    const double arm = positive(m.arm, view, "arm of a centre mark");
    const Spot at = on_paper(m.at);
    stroke(out, {at - Spot{arm, 0.0}, at + Spot{arm, 0.0}}, Layer::mark);
    stroke(out, {at - Spot{0.0, arm}, at + Spot{0.0, arm}}, Layer::mark);
  }
  void operator()(const Leader& l) { add_leader(out, l, view.scale); }
  void operator()(const Arrow& a) {
    require(a.points.size() >= 2, view, "an arrow needs two points");
    std::vector<Spot> points;
    for (const Point& point : a.points) points.push_back(on_paper(point));
    const Spot tip = points.back(), way = tip - points[points.size() - 2];
    stroke(out, std::move(points), a.layer);
    arrowhead(out, tip, way, a.layer);
  }
  void operator()(const Hatch& h) {
    positive(h.spacing, view, "spacing of hatching");
    require(in(h.spacing, mm) >= 0.2, view, "hatching closer than 0.2 mm is a black area");
    require(std::isfinite(h.slant.in_radians()), view, "the slant of hatching is not finite");
    add_hatch(out, h, view.scale);
  }
};

void reach_words(Extent& box, const Words& w) {
  const double width = wider * width_to_height(w.text) * w.height;
  const double start = w.across == Across::left ? 0.0 : w.across == Across::centre ? -width / 2.0 : -width;
  const Spot along = toward(w.turn), up = left_of(along);
  for (const double x : {start, start + width})
    for (const double y : {-0.3 * w.height, 1.05 * w.height}) box.add(w.at + x * along + y * up);
}
// The same words in the same place, begun at the other end.
Words the_other_way_up(const Words& w) {
  const Across across = w.across == Across::left    ? Across::right
                        : w.across == Across::right ? Across::left
                                                    : Across::centre;
  return {w.at + w.height * left_of(toward(w.turn)), w.height, w.turn - pi, across, w.text};
}
}  // namespace

void Extent::add(Spot p) {
  low = {std::min(low.x, p.x), std::min(low.y, p.y)};
  high = {std::max(high.x, p.x), std::max(high.y, p.y)};
}
Extent extent(const Inks& inks) {
  Extent box;
  for (const Ink& ink : inks) {
    if (const auto* s = std::get_if<Stroke>(&ink.shape))
      for (const Spot& p : s->points) box.add(p);
    if (const auto* w = std::get_if<Words>(&ink.shape)) reach_words(box, *w);
    if (const auto* b = std::get_if<Bow>(&ink.shape)) {  // an arc counts as its ends and the quarter points on it
      box.add(b->centre + b->radius * toward(b->from));
      box.add(b->centre + b->radius * toward(b->from + b->sweep));
      const double first = std::ceil(b->from / (pi / 2.0));
      for (int i = 0; i < 4 && (first + i) * (pi / 2.0) < b->from + b->sweep; ++i)
        box.add(b->centre + b->radius * toward((first + i) * (pi / 2.0)));
    }
  }
  return box;
}
Inks turned(Inks inks) {
  const auto turn = [](Spot& p) { p = left_of(p); };
  for (Ink& ink : inks) {
    if (auto* s = std::get_if<Stroke>(&ink.shape)) std::for_each(s->points.begin(), s->points.end(), turn);
    if (auto* b = std::get_if<Bow>(&ink.shape)) turn(b->centre), b->from += pi / 2.0;
    if (auto* w = std::get_if<Words>(&ink.shape)) {
      turn(w->at);
      w->turn += pi / 2.0;
      if (w->turn > pi / 2.0 + 1e-9) *w = the_other_way_up(*w);
    }
  }
  return inks;
}
Inks shifted(Inks inks, Spot by) {
  for (Ink& ink : inks) {
    if (auto* s = std::get_if<Stroke>(&ink.shape))
      for (Spot& p : s->points) p = p + by;
    if (auto* b = std::get_if<Bow>(&ink.shape)) b->centre = b->centre + by;
    if (auto* w = std::get_if<Words>(&ink.shape)) w->at = w->at + by;
  }
  return inks;
}

void stroke(Inks& out, std::vector<Spot> points, Layer layer, bool closed) {
  out.push_back({Stroke{std::move(points), closed, false}, layer, layer});
}
void arrowhead(Inks& out, Spot tip, Spot pointing, Layer layer) {
  constexpr double length = 2.2, half_width = 0.4;
  const double size = std::hypot(pointing.x, pointing.y);
  if (size == 0.0) return;
  const Spot way = (1.0 / size) * pointing, back = tip - length * way;
  out.push_back(
      {Stroke{{tip, back + half_width * left_of(way), back - half_width * left_of(way)}, true, true}, layer, layer});
}
void letter(Inks& out, Spot at, const std::string& words, Lettering how, Layer layer) {
  const std::vector<std::string> lines = clean_lines(words);
  const Spot up = left_of(toward(how.turn));
  const double below = line_pitch * how.height * static_cast<double>(lines.size() - 1);
  double base = how.up == Up::base ? 0.0 : how.up == Up::top ? -how.height : (below - how.height) / 2.0;
  for (const std::string& line : lines) {
    if (!line.empty()) out.push_back({Words{at + base * up, how.height, how.turn, how.across, line}, layer, layer});
    base -= line_pitch * how.height;
  }
}

Inks ink(const View& view) {
  require(view.scale > 0.0 && view.scale < 100.0, view,
          fmt::format("a scale of {} is not between 0 and 100", view.scale));
  Maker maker{view};
  for (const Entity& entity : view.entities) std::visit(maker, entity);
  check_reach(view, maker.out);
  return std::move(maker.out);
}
std::vector<std::string> caption_lines(const View& view) {
  std::string second = clean(view.material);
  const auto append = [&](const std::string& more) { second += (second.empty() || more.empty() ? "" : ", ") + more; };
  if (view.thickness) {
    positive(*view.thickness, view, "thickness");
    append(size_text(*view.thickness, view.figures) + " thick");
  }
  std::vector<std::string> lines{clean(view.name), second};
  for (std::size_t at = 0; at < view.note.size();) {  // each remark on a line of its own, so that parts stay narrow
    const std::size_t end = std::min(view.note.find("; ", at), view.note.size());
    lines.push_back(clean(view.note.substr(at, end - at)));
    at = end + 2;
  }
  std::erase_if(lines, [](const std::string& line) { return line.empty(); });
  return lines;
}
Inks captioned_ink(const View& view) {
  Inks all = ink(view);
  const Extent box = extent(all);
  if (box.empty()) return all;
  const double name_height = in(data::letter_height("name"), mm), note_height = in(data::letter_height("note"), mm);
  const double centre = (box.low.x + box.high.x) / 2.0;
  double base = box.low.y - 3.0 - name_height, height = name_height;
  for (const std::string& line : caption_lines(view)) {
    letter(all, {centre, base}, line, {height, Across::centre}, Layer::text);
    height = note_height;
    base -= line_pitch * note_height;
  }
  return all;
}

Box bounds(const View& view) {
  const Extent box = extent(captioned_ink(view));
  if (box.empty()) return {{0.0 * mm, 0.0 * mm}, {0.0 * mm, 0.0 * mm}};
  return {{box.low.x * mm, box.low.y * mm}, {box.high.x * mm, box.high.y * mm}};
}
}  // namespace lumwright::drawing
