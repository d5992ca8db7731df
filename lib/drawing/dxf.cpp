// DXF R12 (AC1009): header, line types, layers, one text style, entities. Group codes after the published reference.
#include "drawing/detail/ink.hpp"
#include "drawing/detail/lettering.hpp"
#include <cmath>
#include <fmt/format.h>
#include <map>

namespace lumwright::drawing {
namespace {
class DxfWriter {
 public:
  void tag(int code, std::string_view value) { text_ += fmt::format("{:>3}\n{}\n", code, value); }
  void tag(int code, int value) { tag(code, std::to_string(value)); }
  void real(int code, double value) { tag(code, fmt::format("{:.6f}", value == 0.0 ? 0.0 : value)); }
  void at(int code, Spot p) { real(code, p.x), real(code + 10, p.y), real(code + 20, 0.0); }
  void begin(std::string_view entity, Layer layer) { tag(0, entity), tag(8, pen(layer).dxf_layer); }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

void write_header(DxfWriter& w, const Extent& box) {
  w.tag(999, "lumwright: true scale, units are millimetres");
  w.tag(0, "SECTION");
  w.tag(2, "HEADER");
  w.tag(9, "$ACADVER");
  w.tag(1, "AC1009");
  w.tag(9, "$EXTMIN");
  w.at(10, box.low);
  w.tag(9, "$EXTMAX");
  w.at(10, box.high);
  w.tag(0, "ENDSEC");
}
void begin_table(DxfWriter& w, std::string_view name, int count) {
  w.tag(0, "TABLE"), w.tag(2, name), w.tag(70, count);
}
void write_line_types(DxfWriter& w) {
  std::map<std::string, const data::Pen*> types;  // the pens that share a name share their dashes
  for (const data::Pen& pen : data::pens()) types.emplace(pen.dxf_line, &pen);
  begin_table(w, "LTYPE", static_cast<int>(types.size()));
  for (const auto& [name, pen] : types) {
    double length = 0.0;
    for (const Length& dash : pen->dashes) length += in(dash, mm);
    w.tag(0, "LTYPE");
    w.tag(2, name);
    w.tag(70, 0);
    w.tag(3, pen->dashes.empty() ? "Solid line" : "dashes in mm");
    w.tag(72, 65);
    w.tag(73, static_cast<int>(pen->dashes.size()));
    w.real(40, length);
    for (std::size_t i = 0; i < pen->dashes.size(); ++i) w.real(49, (i % 2 == 0 ? 1.0 : -1.0) * in(pen->dashes[i], mm));
  }
  w.tag(0, "ENDTAB");
}
void write_tables(DxfWriter& w) {
  w.tag(0, "SECTION");
  w.tag(2, "TABLES");
  write_line_types(w);
  begin_table(w, "LAYER", static_cast<int>(all_layers.size()) + 1);
  const auto layer = [&](const std::string& name, int colour, const std::string& line) {
    w.tag(0, "LAYER"), w.tag(2, name), w.tag(70, 0), w.tag(62, colour), w.tag(6, line);
  };
  layer("0", 7, "CONTINUOUS");
  for (const Layer l : all_layers) layer(pen(l).dxf_layer, pen(l).dxf_colour, pen(l).dxf_line);
  w.tag(0, "ENDTAB");
  begin_table(w, "STYLE", 1);
  w.tag(0, "STYLE"), w.tag(2, "STANDARD"), w.tag(70, 0), w.real(40, 0.0), w.real(41, 1.0), w.real(50, 0.0);
  w.tag(71, 0), w.real(42, 2.5), w.tag(3, "txt"), w.tag(4, "");
  w.tag(0, "ENDTAB");
  w.tag(0, "ENDSEC");
}

void write(DxfWriter& w, const Stroke& s, Layer layer) {
  if (s.filled) {
    w.begin("SOLID", layer);
    w.at(10, s.points[0]), w.at(11, s.points[1]), w.at(12, s.points[2]), w.at(13, s.points[2]);
    return;
  }
  if (s.points.size() == 2 && !s.closed) {
    w.begin("LINE", layer);
    w.at(10, s.points[0]), w.at(11, s.points[1]);
    return;
  }
  w.begin("POLYLINE", layer);
  w.tag(66, 1);
  w.at(10, {0.0, 0.0});
  w.tag(70, s.closed ? 1 : 0);
  for (const Spot& p : s.points) w.begin("VERTEX", layer), w.at(10, p);
  w.begin("SEQEND", layer);
}
void write(DxfWriter& w, const Bow& b, Layer layer) {
  w.begin(b.whole() ? "CIRCLE" : "ARC", layer);
  w.at(10, b.centre);
  w.real(40, b.radius);
  if (!b.whole()) {
    const auto within = [](double degrees) { return degrees - 360.0 * std::floor(degrees / 360.0); };
    w.real(50, within(b.from * 180.0 / pi));
    w.real(51, within((b.from + b.sweep) * 180.0 / pi));
  }
  if (b.whole() && layer == Layer::drill) w.begin("POINT", layer), w.at(10, b.centre);  // where a machine drills
}
void write(DxfWriter& w, const Words& words, Layer layer) {
  w.begin("TEXT", layer);
  w.at(10, words.at);
  w.real(40, words.height);
  w.tag(1, to_dxf(words.text));
  if (words.turn != 0.0) w.real(50, words.turn * 180.0 / pi);
  if (words.across == Across::left) return;
  w.tag(72, words.across == Across::centre ? 1 : 2);
  w.at(11, words.at);  // the point that counts where text is not set from its left
}

// Beneath the part: what it is, and a line to check the units by.
void add_foot(Inks& out, const TitleBlock& title) {
  const Extent box = extent(out);
  const double note = in(data::letter_height("note"), mm);
  const Spot from{box.empty() ? 0.0 : box.low.x, (box.empty() ? 0.0 : box.low.y) - 8.0};
  stroke(out, {from, from + Spot{100.0, 0.0}}, Layer::calibration);
  letter(out, from + Spot{0.0, -4.5}, "the line above is 100 mm long", {note}, Layer::calibration);
  double base = -9.5;
  for (const std::string& words : {(title.draft ? "DRAFT " : "") + title.name, title.number, title.date}) {
    if (words.empty()) continue;
    letter(out, from + Spot{0.0, base}, clean(words), {note}, Layer::text);
    base -= 4.0;
  }
}
}  // namespace

std::string dxf(const View& view, const TitleBlock& title) {
  Inks all = captioned_ink(view);
  add_foot(all, title);
  DxfWriter w;
  write_header(w, extent(all));
  write_tables(w);
  w.tag(0, "SECTION");
  w.tag(2, "ENTITIES");
  for (const Ink& ink : all) std::visit([&](const auto& shape) { write(w, shape, ink.layer); }, ink.shape);
  w.tag(0, "ENDSEC");
  w.tag(0, "EOF");
  return w.take();
}
}  // namespace lumwright::drawing
