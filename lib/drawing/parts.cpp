// What templates draw again and again.
#include "drawing/drawing.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::drawing {
Paper paper(std::string_view name) {
  const auto same = [&](const std::string& other) {
    return std::equal(name.begin(), name.end(), other.begin(), other.end(),
                      [](char a, char b) { return (a | 0x20) == (b | 0x20); });
  };
  for (const data::PaperRow& row : data::papers())
    if (same(row.name)) return {row.name, row.width, row.height};
  throw ModelError(fmt::format("paper `{}` is none of A4, Letter and A3", name));
}
double stretch(Length true_length, Length measured) {
  const double factor = in(true_length, mm) / in(measured, mm);
  if (!(factor >= 0.97 && factor <= 1.03))
    throw ModelError(fmt::format("a bar of {:g} mm that measures {:g} mm was not printed at 100 %", in(true_length, mm),
                                 in(measured, mm)));
  return factor;
}
void add_centre_lines(View& view, Point centre, Length reach) {
  view.entities.push_back(Line{{centre.x - reach, centre.y}, {centre.x + reach, centre.y}, Layer::centre});
  view.entities.push_back(Line{{centre.x, centre.y - reach}, {centre.x, centre.y + reach}, Layer::centre});
}
void add_hole(View& view, Point centre, Length diameter) {
  view.entities.push_back(Circle{centre, diameter, Layer::drill});
  view.entities.push_back(CentreMark{centre, std::max(diameter / 2.0 + 1.5 * mm, 3.0 * mm)});
}
void add_bore(View& view, Point centre, Length diameter) {
  view.entities.push_back(Circle{centre, diameter, Layer::cut});
  view.entities.push_back(CentreMark{centre, 3.0 * mm});
}
void add_rectangle(View& view, Box box, Layer layer) {
  view.entities.push_back(Polyline{{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}, true, layer});
}
}  // namespace lumwright::drawing
