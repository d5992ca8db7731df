// Two axes, and what is drawn between them.
#pragma once
#include "report/chart/figure.hpp"
#include "report/chart/scale.hpp"
#include <string>
#include <vector>

namespace lumwright::report::chart {
struct Point {
  double x, y;  // in the units of the axes
};
struct Slice {
  double x, low, high;
};
struct Axis {
  Range range;
  std::string title;  // with the unit: "flow at the fan, l/min"
  int ticks;          // about
  bool numbered = true;
};

struct Level {
  double y;
  std::string words, look;
  Anchor end = Anchor::start;  // where the words stand
  bool either_end = false;     // or at whichever end they cover less
};

class Plot {
 public:
  /// Draws frame, grid, ticks and titles; the area is that between the axes. Pane for the numbers must lie around it:
  /// 46 px to the left, 20 px beneath, 40 px with a title beneath.
  Plot(Figure& figure, const Pane& area, const Axis& x, const Axis& y);
  Spot at(Point p) const { return {x_.at(p.x), y_.at(p.y)}; }
  const Pane& area() const { return area_; }
  const Ruler& x() const { return x_; }

  void curve(const std::vector<Point>& points, std::string_view look);
  void band(const std::vector<Slice>& slices, std::string_view look);
  /// From one x to another, over the whole height.
  void stripe(Range x, std::string_view look);
  void stripe(Range x, Hatch hatch);
  void moment(double x, std::string_view look);
  /// Lines across, each with its words above or beneath it, where they cover less of the curves that are there
  /// already, and never on those of another.
  void levels(const std::vector<Level>& all);
  void mark(Point p, Marker marker, std::string_view look);
  /// Small crosses; what lies outside the axes is left out.
  void specks(const std::vector<Point>& points, std::string_view look);
  /// Short words beside marks that are there already, and lines to those that stand apart from theirs.
  void call_out(const std::vector<Point>& points, const std::vector<std::string>& words, std::string_view look);
  /// Words near a point, where they cover least of what is drawn already and no other note; with a thin line to the
  /// point if that is not close by.
  void note(Point p, std::string_view words, std::string_view look);

 private:
  void axes(const Axis& x, const Axis& y);
  double cover(const Pane& words) const;
  std::vector<Spot> spots(const std::vector<Point>& points) const;
  Figure& figure_;
  Pane area_;
  Ruler x_, y_;
  std::string clip_;
  std::vector<Spot> drawn_;  // along the curves, closely
  std::vector<Pane> taken_;  // by marks and notes
};
}  // namespace lumwright::report::chart
