#include "drawing/layer.hpp"
#include <stdexcept>
#include <vector>

namespace lumwright::drawing {
const data::Pen& pen(Layer layer) {
  static const std::vector<const data::Pen*> in_order = [] {
    constexpr std::array names = {"stamp", "hatch", "centre", "hidden",    "outline", "flow",        "cut",
                                  "drill", "fold",  "mark",   "dimension", "text",    "calibration", "frame"};
    std::vector<const data::Pen*> found;
    for (const std::string_view name : names)
      for (const data::Pen& row : data::pens())
        if (row.layer == name) found.push_back(&row);
    if (found.size() != names.size()) throw std::logic_error("drawing.yaml: each layer needs one pen");
    return found;
  }();
  return *in_order.at(static_cast<std::size_t>(layer));
}
}  // namespace lumwright::drawing
