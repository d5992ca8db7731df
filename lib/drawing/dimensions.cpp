// Dimensions after ISO 129-1 (from memory): numbers over their line, read from below or from the right; what the other
// rule reads stands beneath.
#include "drawing/detail/ink.hpp"
#include "drawing/detail/lettering.hpp"
#include "quantity/inches.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <tuple>

namespace lumwright::drawing {
namespace {
constexpr double foot_gap = 0.8, overrun = 1.5, arrow = 2.2, over_line = 0.9;
constexpr double share_beneath = 0.8;  // height of what stands beneath
constexpr Layer drawn_on = Layer::dimension;
double note_height() { return in(data::letter_height("note"), mm); }

struct Number {
  std::string over, under;  // the second may be empty
  double width() const {
    return wider * note_height() *
           std::max(width_to_height(clean(over)), share_beneath * width_to_height(clean(under)));
  }
};
struct Around {
  const std::string& before;
  const std::string& after;
};
std::string in_inches(Length size) {
  const std::string fraction = inch_fraction(AnyQuantity(size));
  return fraction.empty() ? dimension_number(in(size, inch), 3) : fraction;
}
Number number(Length size, std::string_view sign, Around around, Figures figures) {
  const bool inches_first = figures == Figures::inches_mm || figures == Figures::inches;
  const std::string millimetres = dimension_number(in(size, mm)), inches = in_inches(size);
  const std::string over = inches_first ? inches + "\"" : millimetres;
  const std::string under = figures == Figures::mm_inches   ? fmt::format("({}{} in)", sign, inches)
                            : figures == Figures::inches_mm ? fmt::format("({}{} mm)", sign, millimetres)
                                                            : "";
  return {fmt::format("{}{}{}{}", around.before, sign, over, around.after), under};
}
// Over and under a line through `at` that runs along `way`.
void put(Inks& out, const Number& n, Spot at, Spot way, Across across) {
  const double h = note_height(), small = share_beneath * h, turn = std::atan2(way.y, way.x);
  const Spot up = left_of(way);
  letter(out, at + over_line * up, n.over, {h, across, Up::base, turn}, drawn_on);
  if (!n.under.empty()) letter(out, at - (over_line + small) * up, n.under, {small, across, Up::base, turn}, drawn_on);
}
void extension(Inks& out, Spot from, Spot foot) {
  const Spot way = foot - from;
  const double length = std::hypot(way.x, way.y);
  if (length <= foot_gap) return;
  const Spot unit = (1.0 / length) * way;
  stroke(out, {from + foot_gap * unit, foot + overrun * unit}, drawn_on);
}
// From `left` to `right` in reading direction.
void dimension_line(Inks& out, Spot left, Spot right, const Number& n, bool at_start) {
  const Spot span = right - left;
  const double length = std::hypot(span.x, span.y);
  if (length == 0.0) return;
  const Spot way = (1.0 / length) * span;
  const bool words_fit = n.width() + 1.0 <= length, arrows_fit = length >= 2.0 * arrow + 1.5;
  if (arrows_fit) {
    stroke(out, {left, right}, drawn_on);
    arrowhead(out, left, -1.0 * way, drawn_on);
    arrowhead(out, right, way, drawn_on);
  } else {
    arrowhead(out, left, way, drawn_on);
    arrowhead(out, right, -1.0 * way, drawn_on);
    stroke(out, {left - 2.0 * arrow * way, right + 2.0 * arrow * way}, drawn_on);
  }
  if (words_fit && (arrows_fit || n.under.empty())) return put(out, n, left + 0.5 * span, way, Across::centre);
  const double start = (arrows_fit ? 0.0 : 2.0 * arrow) + (arrows_fit ? overrun : 0.0);
  if (at_start) {
    stroke(out, {left - (start + n.width()) * way, left}, drawn_on);
    return put(out, n, left - start * way, way, Across::right);
  }
  stroke(out, {right, right + (start + n.width()) * way}, drawn_on);
  put(out, n, right + start * way, way, Across::left);
}
// A line that points at a curve from outside, with the number on a level shoulder.
void shoulder(Inks& out, Spot tip, Spot elbow, const Number& n) {
  const bool to_right = elbow.x >= tip.x - 1e-9;
  const Spot end = elbow + Spot{to_right ? n.width() + 1.0 : -n.width() - 1.0, 0.0};
  stroke(out, {tip, elbow, end}, drawn_on);
  arrowhead(out, tip, tip - elbow, drawn_on);
  put(out, n, to_right ? elbow + Spot{0.7, 0.0} : elbow - Spot{0.7, 0.0}, {1.0, 0.0},
      to_right ? Across::left : Across::right);
}
}  // namespace

std::string size_text(Length size, Figures figures) {
  const std::string millimetres = dimension_number(in(size, mm)) + " mm", inches = in_inches(size) + " in";
  if (figures == Figures::mm) return millimetres;
  if (figures == Figures::inches) return inches;
  const bool first = figures == Figures::inches_mm;
  return fmt::format("{} ({})", first ? inches : millimetres, first ? millimetres : inches);
}

std::string limits_text(Length least, Length most, Figures figures) {
  const bool inches = figures == Figures::inches_mm || figures == Figures::inches;
  const double low = inches ? in(least, inch) : in(least, mm), high = inches ? in(most, inch) : in(most, mm);
  constexpr double last_bit = 1e-9;
  for (int decimals = inches ? 3 : 2;; ++decimals) {
    const double steps = std::pow(10.0, decimals);
    const double from = std::ceil(low * steps - last_bit) / steps, to = std::floor(high * steps + last_bit) / steps;
    if (from < to || decimals == 5)
      return fmt::format("{} to {}", dimension_number(from, decimals), dimension_number(to, decimals));
  }
}

void add_dimension(Inks& out, const LinearDimension& d, const Written& w) {
  const Spot a = w.scale * spot(d.from), b = w.scale * spot(d.to);
  const double away = in(d.away, mm);
  Spot way{1.0, 0.0}, side{0.0, 1.0};
  if (d.along == Along::vertical) std::tie(way, side) = std::pair{Spot{0.0, 1.0}, Spot{1.0, 0.0}};
  if (d.along == Along::aligned) {
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    if (length > 0.0) way = (1.0 / length) * (b - a);
    side = left_of(way);
  }
  const double level =
      (away >= 0.0 ? std::max(dot(a, side), dot(b, side)) : std::min(dot(a, side), dot(b, side))) + away;
  const Spot foot_a = a + (level - dot(a, side)) * side, foot_b = b + (level - dot(b, side)) * side;
  extension(out, a, foot_a);
  extension(out, b, foot_b);
  const Spot span = foot_b - foot_a;
  const bool reads_on = span.x > 1e-9 || (std::abs(span.x) <= 1e-9 && span.y > 0.0);
  const Number n = number(std::abs(dot(b - a, way)) / w.scale * mm, "", {d.before, d.after}, w.figures);
  if (reads_on)
    dimension_line(out, foot_a, foot_b, n, d.at_start);
  else
    dimension_line(out, foot_b, foot_a, n, d.at_start);
}
void add_dimension(Inks& out, const DiameterDimension& d, const Written& w) {
  const Spot way = toward(d.at.in_radians());
  const Spot tip = w.scale * (spot(d.centre) + in(d.diameter, mm) / 2.0 * way);
  shoulder(out, tip, tip + in(d.away, mm) * way, number(d.diameter, "\u2300", {d.before, d.after}, w.figures));
}
void add_dimension(Inks& out, const RadiusDimension& d, const Written& w) {
  const Spot way = toward(d.at.in_radians());
  const Spot tip = w.scale * (spot(d.centre) + in(d.radius, mm) * way);
  shoulder(out, tip, tip + in(d.away, mm) * way, number(d.radius, "R", {d.before, d.after}, w.figures));
}
void add_dimension(Inks& out, const AngularDimension& d, double scale) {
  const double radius = scale * in(d.radius, mm), from = d.from.in_radians();
  double sweep = std::fmod(d.to.in_radians() - from, 2.0 * pi);
  if (sweep <= 0.0) sweep += 2.0 * pi;
  const Spot apex = scale * spot(d.apex);
  const bool inside = sweep * radius >= 2.0 * arrow + 1.5;
  const double tail = inside ? 0.0 : 2.0 * arrow / radius;
  out.push_back({Bow{apex, radius, from - tail, std::min(sweep + 2.0 * tail, 2.0 * pi)}, drawn_on, drawn_on});
  for (const double ray : {from, from + sweep}) {
    const Spot way = toward(ray), end = apex + radius * way;
    extension(out, apex + scale * in(d.inner, mm) * way, end);
    const bool outward_is_left = (ray != from) == inside;
    arrowhead(out, end, outward_is_left ? left_of(way) : -1.0 * left_of(way), drawn_on);
  }
  const std::string words = clean(fmt::format("{}{}\u00B0{}", d.before, dimension_number(sweep * 180.0 / pi), d.after));
  const Spot way = toward(from + sweep / 2.0);
  const double half = wider * note_height() * width_to_height(words) / 2.0;
  const bool between_rays = sweep * radius > 2.0 * (half + note_height());  // else over the ends of the rays
  const double clear =
      radius + (between_rays ? 1.2 : overrun + 0.5) + half * std::abs(way.x) + note_height() / 2.0 * std::abs(way.y);
  letter(out, apex + clear * way, words, {note_height(), Across::centre, Up::middle}, drawn_on);
}
void add_leader(Inks& out, const Leader& l, double scale) {
  const Spot tip = scale * spot(l.tip), elbow = scale * spot(l.elbow);
  const double h = note_height();
  double width = 0.0;
  for (const std::string& line : clean_lines(l.note)) width = std::max(width, wider * h * width_to_height(line));
  const bool to_right = elbow.x >= tip.x;
  stroke(out, {tip, elbow, elbow + Spot{to_right ? width + 1.0 : -width - 1.0, 0.0}}, l.layer);
  arrowhead(out, tip, tip - elbow, l.layer);
  const Spot start = elbow + Spot{to_right ? 0.7 : -width - 0.7, 0.0};
  double base = over_line;
  for (const std::string& line : clean_lines(l.note)) {
    letter(out, start + Spot{0.0, base}, line, {h}, l.layer);
    base -= base > 0.0 ? 2.0 * over_line + h : 1.6 * h;
  }
}
}  // namespace lumwright::drawing
