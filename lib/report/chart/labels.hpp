// Where words go so that none lies on another.
#pragma once
#include "report/chart/scale.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report::chart {
/// About the width of a line of text in a sans-serif face of this size; wide on purpose.
double text_width(std::string_view text, double size);

/// Places at least `apart` from each other and within the range, as near as can be to the wanted ones (least squares:
/// pool adjacent violators, Ayer and others 1955), in their order. Where the range is too short for all of them they
/// stand closer, evenly.
std::vector<double> nudged(const std::vector<double>& wanted, double apart, Range within);

/// A label beside its mark on a line from left to right.
struct Placed {
  double x;   // where the text begins
  int lane;   // 0 is nearest to what is labelled
  bool left;  // it stands to the left of its mark
};
struct Wanted {
  double mark;
  double width;
};
/// Puts each label to the right of its mark, or to the left where the room ends, on the lowest lane where it does not
/// touch another. Marks in rising order.
std::vector<Placed> in_lanes(const std::vector<Wanted>& labels, Range room, double gap);

/// Lines no wider than `width` at this size, broken at blanks; at least one.
std::vector<std::string> lines_of(std::string_view text, double width, double size);
}  // namespace lumwright::report::chart
