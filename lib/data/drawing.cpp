#include "data/drawing.hpp"
#include "data/table.hpp"
#include <stdexcept>

namespace lumwright::data {
const std::vector<Pen>& pens() {
  static const std::vector<Pen> all = [] {
    std::vector<Pen> found;
    for (const Row& row : rows("drawing", "pens")) {
      const std::vector<double> rgb = row.numbers("colour");
      if (rgb.size() != 3) throw std::logic_error("drawing.yaml: a colour has three numbers");
      found.push_back({.layer = row.text("layer"),
                       .dxf_layer = row.text("dxf"),
                       .dxf_colour = static_cast<int>(row.number("dxf_colour")),
                       .dxf_line = row.text("dxf_line"),
                       .width = row.quantity<Length>("width"),
                       .dashes = row.list<Length>("dashes"),
                       .colour = {static_cast<int>(rgb[0]), static_cast<int>(rgb[1]), static_cast<int>(rgb[2])},
                       .legend = row.text("legend"),
                       .basis = row.basis()});
    }
    return found;
  }();
  return all;
}
const std::vector<PaperRow>& papers() {
  static const std::vector<PaperRow> all = [] {
    std::vector<PaperRow> found;
    for (const Row& row : rows("drawing", "papers"))
      found.push_back({row.text("name"), row.quantity<Length>("width"), row.quantity<Length>("height"), row.basis()});
    return found;
  }();
  return all;
}
Length letter_height(std::string_view use) {
  for (const Row& row : rows("drawing", "lettering"))
    if (row.text("use") == use) return row.quantity<Length>("height");
  throw std::logic_error("drawing.yaml: no letter height for " + std::string(use));
}
Length frame_margin() { return rows("drawing", "margins").front().quantity<Length>("width"); }
}  // namespace lumwright::data
