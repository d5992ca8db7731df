// A picture within a page: shapes and words whose looks are classes of the page's style sheet (html/style.cpp).
#pragma once
#include "report/markup.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report::chart {
struct Spot {
  double x, y;  // px, y runs down
};
struct Pane {
  double left, top, right, bottom;
  double width() const { return right - left; }
  double height() const { return bottom - top; }
};
enum class Anchor { start, middle, end };
enum class Marker { circle, ring, diamond, square, cross, speck };
enum class Hatch { slant, counter, dots };

/// What stands for the picture where it is not seen.
struct About {
  std::string id;  // unlike any other on the page
  std::string title, description;
};

inline constexpr double letter = 12.5;  // size of the words, px

class Figure {
 public:
  Figure(Tag parent, const About& about, double width, double height);
  double width() const { return width_; }
  bool narrow() const { return width_ < 500.0; }

  void line(Spot from, Spot to, std::string_view look);
  void trace(const std::vector<Spot>& spots, std::string_view look, std::string_view clip = {});
  void shape(const std::vector<Spot>& spots, std::string_view look, std::string_view clip = {});
  /// The head of an arrow that comes from `from` and ends at `at`.
  void arrow_head(Spot at, Spot from, double length, double half_width, std::string_view look);
  void box(const Pane& area, std::string_view look);
  void hatched(const Pane& area, Hatch hatch);
  void hatched(const std::vector<Spot>& spots, Hatch hatch, std::string_view clip = {});
  void words(Spot at, std::string_view text, std::string_view look, Anchor anchor = Anchor::start);
  void mark(Spot at, Marker marker, std::string_view look);
  void circle(Spot middle, double radius, std::string_view look);
  /// Small crosses, all in one shape.
  void specks(const std::vector<Spot>& spots, std::string_view look, std::string_view clip = {});
  /// A clip path of this area; its name is for `trace` and `shape`.
  std::string clip(const Pane& area);
  /// What is drawn from here to `end_place` is one place of a key of the description, with this title.
  void begin_place(std::string_view key, std::string_view title, std::string_view look);
  void end_place() { into_ = svg_; }

 private:
  Tag drawn(const char* shape, std::string_view look, std::string_view clip = {});
  std::string hatch_fill(Hatch hatch);
  std::string id_;
  double width_;
  Tag svg_, defs_, into_;
  int clips_ = 0;
  bool hatches_[3] = {false, false, false};
};

/// One thing that a legend explains: how it is drawn, and its words.
struct Key {
  std::string words;
  std::string look;            // of a line; empty for none
  std::string area = {};       // of a patch behind the line
  int marker = -1;             // a Marker
  int hatch = -1;              // a Hatch on the patch
  std::string mark_look = {};  // of the marker, where it has no line
};
/// Height that a legend of these keys takes across the figure.
double legend_height(const std::vector<Key>& keys, double width);
/// Keys side by side, on as many lines as they need. The first line's words stand at `top` + letter.
void legend(Figure& figure, const std::vector<Key>& keys, double left, double top, double width);
}  // namespace lumwright::report::chart
