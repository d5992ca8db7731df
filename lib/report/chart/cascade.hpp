// Bars one below the other, each begun where the last one ended: parts of a whole, in their order.
#pragma once
#include "report/chart/figure.hpp"
#include "report/chart/scale.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::report::chart {
struct Bar {
  double from, to;    // in the unit of the axis
  std::string words;  // beside it
  std::string look;
  std::optional<Hatch> hatch = {};
};
struct CascadeRow {
  std::string name;
  std::vector<Bar> bars;  // one or two, the first one thicker
  bool total = false;     // set off from what is above
};
struct CascadeLook {
  std::string axis_title;
  std::vector<Key> keys;
};
/// Height of the picture, for its figure.
double cascade_height(const std::vector<CascadeRow>& steps, const CascadeLook& look, double width);
/// Throws std::logic_error where there is nothing to draw.
void draw_cascade(Figure& figure, const std::vector<CascadeRow>& steps, const CascadeLook& look);
}  // namespace lumwright::report::chart
