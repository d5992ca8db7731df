// A sketch with the places marked where it is measured: each has a letter, which the legend gives its name and value.
#pragma once
#include "report/chart/figure.hpp"
#include "report/places/sizes.hpp"
#include <algorithm>
#include <functional>
#include <string_view>
#include <vector>

namespace lumwright::report::places {
using chart::Pane;
using chart::Spot;

/// A place that a drawing marks: the key it stands for, and its name there.
struct Mark {
  std::string_view key, name;
};
inline constexpr double sketch_width = 340.0;  // px; every sketch is drawn for it

/// Where the legend has each of its marks.
struct Legend {
  std::vector<Spot> at;
  double height;
};
/// Flows from left to right and down, within this width, from 0.
Legend legend_of(const std::vector<Mark>& marks, const Sizes& sizes, double width);

/// Draws at `sketch_width`; the legend stands at `legend`, its corner at `corner`.
class Sketch {
 public:
  Sketch(chart::Figure& figure, const Sizes& sizes, const std::vector<Mark>& marks, const Legend& legend, Spot corner);
  const Sizes& sizes() const { return sizes_; }
  chart::Figure& figure() { return figure_; }
  /// The place of a key between two spots, with arrows; the line stands off them by `aside` px, to the right of the way
  /// from one to the other.
  void between(std::string_view key, Spot from, Spot to, double aside = 0.0);
  /// The place of a key at a spot, its letter elsewhere.
  void at(std::string_view key, Spot spot, Spot letter);
  /// The line of a wall that is cut through.
  void wall(const Pane& area) { figure_.box(area, "cut-metal"); }
  /// Throws std::logic_error where a mark was never drawn.
  void finish() const;

 private:
  std::size_t begin(std::string_view key);
  void letter(std::size_t mark, Spot at);
  void tip(Spot at, Spot from);
  chart::Figure& figure_;
  const Sizes& sizes_;
  const std::vector<Mark>& marks_;
  const Legend& legend_;
  Spot corner_;
  std::vector<bool> drawn_;
};

/// Px of one length where another is `px` long, held between two ends so that it is seen.
inline double scaled(Length length, Length other, double px, double least, double most) {
  return std::clamp(px * (length / other).value(), least, most);
}

/// A drawing of one part: what it shows, what it marks, and how it is drawn.
struct Drawing {
  std::string_view id;
  std::string_view part;  // of the description; where it is described the drawing belongs
  std::string_view title;
  std::string_view shows;  // what it looks like, for those who do not see it
  double height;           // px
  std::vector<Mark> marks;
  std::function<void(Sketch&)> draw;
};
/// What is marked may depend on the build.
Drawing boiler();
Drawing cylinders();
Drawing grate();
Drawing chimney();
Drawing fire();
Drawing tube();
Drawing box();
Drawing fan(const description::Build& build);
Drawing supply();
}  // namespace lumwright::report::places
