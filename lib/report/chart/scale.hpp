// From a quantity's number to a place on the paper, and where the ticks of an axis stand.
#pragma once
#include <string>
#include <vector>

namespace lumwright::report::chart {
struct Range {
  double low, high;
};
/// Numbers of a quantity over a stretch of paper; `from` may lie beyond `to` (upwards is minus).
struct Ruler {
  Range numbers;
  double from, to;
  double at(double x) const { return from + (x - numbers.low) / (numbers.high - numbers.low) * (to - from); }
};

struct Ticks {
  std::vector<double> at;
  int decimals;  // that every one of them needs
};
/// Between `about` / 2 and 2 `about` ticks within the range, at multiples of 1, 2 or 5 times a power of ten. Throws
/// std::logic_error for a range that is empty, turned round or not finite, or for fewer than two ticks.
Ticks nice_ticks(Range range, int about);
/// The range widened to whole steps of its ticks; one without width gets some.
Range rounded_out(Range range, int about);
/// "0.5", "1200"; no "-0".
std::string tick_text(double x, int decimals);
}  // namespace lumwright::report::chart
