// The SVG writer: drawings name pugixml here alone. One user unit is one millimetre; y runs down.
#include "drawing/detail/lettering.hpp"
#include "drawing/detail/page.hpp"
#include <fmt/format.h>
#include <map>
#include <pugixml.hpp>
#include <sstream>

namespace lumwright::drawing {
namespace {
constexpr const char* family = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

std::string number(double x) { return dimension_number(x, 5); }
std::string colour(const data::Pen& pen) {
  return fmt::format("#{:02x}{:02x}{:02x}", pen.colour[0], pen.colour[1], pen.colour[2]);
}
void set(pugi::xml_node node, const char* name, const std::string& value) {
  node.append_attribute(name).set_value(value.c_str());
}
void set_pen(pugi::xml_node node, const data::Pen& pen) {
  set(node, "stroke", colour(pen));
  set(node, "stroke-width", number(in(pen.width, mm)));
  std::string dashes;
  for (const Length& dash : pen.dashes) dashes += (dashes.empty() ? "" : " ") + number(in(dash, mm));
  if (!dashes.empty()) set(node, "stroke-dasharray", dashes);
}

class SvgWriter {
 public:
  SvgWriter(pugi::xml_node parent, double page_height) : parent_(parent), height_(page_height) {}
  void write(const Inks& inks, const std::string& clip = "") {
    for (const Layer layer : all_layers)
      for (const Ink& ink : inks)
        if (ink.layer == layer) {
          pugi::xml_node element =
              std::visit([&](const auto& s) { return draw(group(layer, clip), s, layer); }, ink.shape);
          if (ink.look != layer) set_pen(element, pen(ink.look));
        }
  }
  // Groups in the order of the layers, whatever came first.
  void sort() {
    for (const Layer layer : all_layers)
      if (const auto found = layers_.find(layer); found != layers_.end()) parent_.append_move(found->second);
  }

 private:
  pugi::xml_node group(Layer layer, const std::string& clip) {
    pugi::xml_node& whole = layers_[layer];
    if (!whole) {
      whole = parent_.append_child("g");
      set(whole, "id", pen(layer).dxf_layer);
      set(whole, "fill", "none");
      set_pen(whole, pen(layer));
    }
    if (clip.empty()) return whole;
    pugi::xml_node& part = clipped_[{layer, clip}];
    if (!part) {
      part = whole.append_child("g");
      set(part, "clip-path", "url(#" + clip + ")");
    }
    return part;
  }
  std::string at(Spot p) const { return number(p.x) + "," + number(height_ - p.y); }
  pugi::xml_node draw(pugi::xml_node in_group, const Stroke& s, Layer layer) {
    if (s.points.size() == 2 && !s.closed) {
      pugi::xml_node line = in_group.append_child("line");
      set(line, "x1", number(s.points[0].x));
      set(line, "y1", number(height_ - s.points[0].y));
      set(line, "x2", number(s.points[1].x));
      set(line, "y2", number(height_ - s.points[1].y));
      return line;
    }
    pugi::xml_node shape = in_group.append_child(s.closed ? "polygon" : "polyline");
    std::string points;
    for (const Spot& p : s.points) points += (points.empty() ? "" : " ") + at(p);
    set(shape, "points", points);
    if (s.filled) {
      set(shape, "fill", colour(pen(layer)));
      set(shape, "stroke", "none");
    }
    return shape;
  }
  pugi::xml_node draw(pugi::xml_node in_group, const Bow& b, Layer) {
    if (b.whole()) {
      pugi::xml_node circle = in_group.append_child("circle");
      set(circle, "cx", number(b.centre.x));
      set(circle, "cy", number(height_ - b.centre.y));
      set(circle, "r", number(b.radius));
      return circle;
    }
    pugi::xml_node path = in_group.append_child("path");
    const Spot from = b.centre + b.radius * toward(b.from), to = b.centre + b.radius * toward(b.from + b.sweep);
    set(path, "d",
        fmt::format("M{} A{} {} 0 {} 0 {}", at(from), number(b.radius), number(b.radius), b.sweep > pi ? 1 : 0,
                    at(to)));
    return path;
  }
  pugi::xml_node draw(pugi::xml_node in_group, const Words& w, Layer layer) {
    pugi::xml_node text = in_group.append_child("text");
    const std::string x = number(w.at.x), y = number(height_ - w.at.y);
    set(text, "x", x);
    set(text, "y", y);
    set(text, "font-size", number(w.height / capital_share));
    if (w.across != Across::left) set(text, "text-anchor", w.across == Across::centre ? "middle" : "end");
    if (w.turn != 0.0) set(text, "transform", fmt::format("rotate({} {} {})", number(-w.turn * 180.0 / pi), x, y));
    set(text, "fill", colour(pen(layer)));
    set(text, "stroke", "none");
    text.text().set(w.text.c_str());
    return text;
  }

  pugi::xml_node parent_;
  double height_;
  std::map<Layer, pugi::xml_node> layers_;
  std::map<std::pair<Layer, std::string>, pugi::xml_node> clipped_;
};

std::string write(const Drawing& drawing, std::size_t sheet, const PrintOptions& options) {
  const Page page = compose(drawing, sheet);
  pugi::xml_document document;
  pugi::xml_node declaration = document.append_child(pugi::node_declaration);
  set(declaration, "version", "1.0");
  set(declaration, "encoding", "UTF-8");
  pugi::xml_node root = document.append_child("svg");
  set(root, "xmlns", "http://www.w3.org/2000/svg");
  set(root, "width", number(page.width) + "mm");
  set(root, "height", number(page.height) + "mm");
  set(root, "viewBox", fmt::format("0 0 {} {}", number(page.width), number(page.height)));
  set(root, "font-family", family);
  root.append_child("title").text().set(clean(drawing.title.name).c_str());

  pugi::xml_node fixed = root.append_child("g");
  SvgWriter fixed_writer(fixed, page.height);
  fixed_writer.write(page.fixed);
  fixed_writer.sort();
  pugi::xml_node scaled = root.append_child("g");
  set(scaled, "id", "true-scale");
  if (options.stretch_x != 1.0 || options.stretch_y != 1.0) {
    const Spot pivot{page.pivot.x, page.height - page.pivot.y};
    set(scaled, "transform",
        fmt::format("matrix({:.8f} 0 0 {:.8f} {} {})", options.stretch_x, options.stretch_y,
                    number(pivot.x * (1.0 - options.stretch_x)), number(pivot.y * (1.0 - options.stretch_y))));
  }
  SvgWriter writer(scaled, page.height);
  int windows = 0;
  for (const Patch& patch : page.to_scale) {
    std::string clip;
    if (patch.window) {
      clip = fmt::format("window{}", ++windows);
      pugi::xml_node path = scaled.append_child("clipPath");
      set(path, "id", clip);
      pugi::xml_node box = path.append_child("rect");
      set(box, "x", number(patch.window->low.x));
      set(box, "y", number(page.height - patch.window->high.y));
      set(box, "width", number(patch.window->high.x - patch.window->low.x));
      set(box, "height", number(patch.window->high.y - patch.window->low.y));
    }
    writer.write(patch.inks, clip);
  }
  writer.sort();
  std::ostringstream out;
  document.save(out, " ", pugi::format_default, pugi::encoding_utf8);
  return out.str();
}
}  // namespace

std::vector<std::string> svg(const Drawing& drawing, const PrintOptions& options) {
  require_stretch(options);
  std::vector<std::string> out;
  for (std::size_t sheet = 0; sheet < drawing.sheets.size(); ++sheet) out.push_back(write(drawing, sheet, options));
  return out;
}
}  // namespace lumwright::drawing
