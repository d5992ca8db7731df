#include "report/places/sketch.hpp"
#include "report/chart/labels.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report::places {
namespace {
constexpr double radius = 8.0, row_height = 20.0, name_gap = 6.0, mark_gap = 14.0;

std::string value_words(const Told& told) {
  switch (told.standing) {
    case Told::Standing::known:
      return told.text;
    case Told::Standing::assumed:
      return told.text + ", assumed";
    case Told::Standing::not_known:
      return "not known";
  }
  throw std::logic_error("a size without a standing");
}
const char* look_of(Told::Standing standing) {
  return standing == Told::Standing::known     ? "place known"
         : standing == Told::Standing::assumed ? "place assumed"
                                               : "place not-known";
}
std::string words_of(const Mark& mark, const Sizes& sizes) {
  return fmt::format("{} {}", mark.name, value_words(sizes.told(mark.key)));
}
}  // namespace

Legend legend_of(const std::vector<Mark>& marks, const Sizes& sizes, double width) {
  Legend legend{{}, 0.0};
  double x = 0.0, y = 0.0;
  for (const Mark& mark : marks) {
    const double wide = 2.0 * radius + name_gap + chart::text_width(words_of(mark, sizes), chart::letter);
    if (x > 0.0 && x + wide > width) {
      x = 0.0;
      y += row_height;
    }
    legend.at.push_back({x, y});
    x += wide + mark_gap;
  }
  legend.height = y + row_height;
  return legend;
}

Sketch::Sketch(chart::Figure& figure, const Sizes& sizes, const std::vector<Mark>& marks, const Legend& legend,
               Spot corner)
    : figure_(figure), sizes_(sizes), marks_(marks), legend_(legend), corner_(corner), drawn_(marks.size(), false) {}

std::size_t Sketch::begin(std::string_view key) {
  const auto mark = std::find_if(marks_.begin(), marks_.end(), [&](const Mark& one) { return one.key == key; });
  if (mark == marks_.end()) throw std::logic_error("the drawing does not mark " + std::string(key));
  const auto number = static_cast<std::size_t>(mark - marks_.begin());
  if (drawn_[number]) throw std::logic_error("the drawing marks twice " + std::string(key));
  drawn_[number] = true;
  figure_.begin_place(key, fmt::format("{}: {}", key, words_of(*mark, sizes_)), look_of(sizes_.told(key).standing));
  return number;
}
void Sketch::letter(std::size_t mark, Spot at) {
  const std::string name(1, static_cast<char>('A' + mark));
  const auto balloon = [&](Spot middle) {
    figure_.circle(middle, radius, "balloon");
    figure_.words({middle.x, middle.y + 4.0}, name, "letter", chart::Anchor::middle);
  };
  balloon(at);
  const Spot row{corner_.x + legend_.at[mark].x + radius, corner_.y + legend_.at[mark].y + 0.5 * row_height};
  balloon(row);
  figure_.words({row.x + radius + name_gap, row.y + 4.0}, words_of(marks_[mark], sizes_), "value");
  figure_.end_place();
}
void Sketch::tip(Spot at, Spot from) { figure_.arrow_head(at, from, 7.0, 2.5, "tip"); }
void Sketch::between(std::string_view key, Spot from, Spot to, double aside) {
  constexpr double beyond = 3.0, room = 34.0;  // of the lines that lead out; for two tips and a letter
  const std::size_t mark = begin(key);
  const double far = std::max(1e-6, std::hypot(to.x - from.x, to.y - from.y));
  const Spot along{(to.x - from.x) / far, (to.y - from.y) / far}, off{-along.y, along.x};
  const auto moved = [&](Spot at, double by) { return Spot{at.x + by * off.x, at.y + by * off.y}; };
  const Spot a = moved(from, aside), b = moved(to, aside);
  if (aside != 0.0) {
    const double end = aside + std::copysign(beyond, aside);
    figure_.line(from, moved(from, end), "lead");
    figure_.line(to, moved(to, end), "lead");
  }
  Spot middle{0.5 * (a.x + b.x), 0.5 * (a.y + b.y)};
  if (far < room) {  // the arrows come from outside, and the letter stands behind one of them
    const Spot before{a.x - 12.0 * along.x, a.y - 12.0 * along.y}, behind{b.x + 12.0 * along.x, b.y + 12.0 * along.y};
    figure_.line(before, a, "size");
    figure_.line(behind, b, "size");
    tip(a, before);
    tip(b, behind);
    middle = {behind.x + radius * along.x, behind.y + radius * along.y};
  } else {
    figure_.line(a, b, "size");
    tip(a, b);
    tip(b, a);
  }
  letter(mark, middle);
}
void Sketch::at(std::string_view key, Spot spot, Spot where) {
  const std::size_t mark = begin(key);
  figure_.line(spot, where, "size");
  figure_.circle(spot, 2.5, "tip");
  letter(mark, where);
}
void Sketch::finish() const {
  for (std::size_t i = 0; i < marks_.size(); ++i)
    if (!drawn_[i]) throw std::logic_error("the drawing never marks " + std::string(marks_[i].key));
}
}  // namespace lumwright::report::places
