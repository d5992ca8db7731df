// Writes made-up drawings for drawing_measure.py: drawing_probe FOLDER. Beside each, what it was asked to draw, as
// JSON.
#include "../drawing/polar.hpp"
#include "drawing/detail/lettering.hpp"
#include "drawing/drawing.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fstream>
#include <iostream>

namespace {
using namespace lumwright;
using namespace lumwright::drawing;

struct Hole {
  Point at;
  Length diameter;
};
// A flange: three 8BA clearance holes on 30 mm, a bore, in 1.2 mm brass. `shift` moves the first hole, for the test
// that the measuring finds it.
View flange(Length shift, std::vector<Hole>& holes) {
  View v{.name = "chimney flange",
         .material = "brass",
         .thickness = 1.2 * mm,
         .note = "make 1",
         .figures = Figures::mm_inches};
  const Point centre{20.0 * mm, 20.0 * mm};
  const Length pitch_circle = 30.0 * mm, bore = 16.1 * mm, clear = 2.3 * mm, outside = 40.0 * mm;
  v.entities.push_back(Circle{centre, outside, Layer::cut});
  add_bore(v, centre, bore);
  add_centre_lines(v, centre, 23.0 * mm);
  v.entities.push_back(Circle{centre, pitch_circle, Layer::centre});
  for (int i = 0; i < 3; ++i) {
    Point at = polar(centre, pitch_circle / 2.0, degrees(90.0 + 120.0 * i));
    if (i == 0) at.x += shift;
    holes.push_back({at, clear});
    add_hole(v, at, clear);
  }
  v.entities.push_back(
      LinearDimension{.from = {0.0 * mm, 20.0 * mm}, .to = {40.0 * mm, 20.0 * mm}, .away = -36.0 * mm});
  v.entities.push_back(DiameterDimension{
      .centre = centre, .diameter = bore, .at = degrees(18.0), .away = 16.0 * mm, .after = " +0.05/\u22120"});
  v.entities.push_back(DiameterDimension{
      .centre = centre, .diameter = pitch_circle, .at = degrees(150.0), .away = 12.0 * mm, .after = " \u00B10.1 PCD"});
  v.entities.push_back(Leader{.tip = polar(holes[0].at, clear / 2.0, degrees(40.0)),
                              .elbow = {32.0 * mm, 44.0 * mm},
                              .note = "3 \u00D7 \u23002.3, 8BA clear\nevery 120\u00B0, deburr 50 \u00B5m"});
  v.entities.push_back(AngularDimension{
      .apex = centre, .from = degrees(210.0), .to = degrees(330.0), .radius = 25.0 * mm, .inner = 19.0 * mm});
  return v;
}
View section() {
  View v{.name = "flange, section", .material = "brass", .thickness = 1.2 * mm};
  const auto web = [&](Length left, Length right) {
    const Box box{{left, 0.0 * mm}, {right, 1.2 * mm}};
    add_rectangle(v, box, Layer::outline);
    v.entities.push_back(
        Hatch{.boundaries = {std::vector<Point>{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}},
              .spacing = 1.0 * mm});
  };
  web(0.0 * mm, 11.95 * mm);
  web(28.05 * mm, 40.0 * mm);
  for (const Length& y : {0.0 * mm, 1.2 * mm})
    v.entities.push_back(Line{{11.95 * mm, y}, {28.05 * mm, y}, Layer::outline});
  v.entities.push_back(Line{{20.0 * mm, -3.0 * mm}, {20.0 * mm, 5.0 * mm}, Layer::centre});
  v.entities.push_back(LinearDimension{
      .from = {40.0 * mm, 0.0 * mm}, .to = {40.0 * mm, 1.2 * mm}, .along = Along::vertical, .away = 6.0 * mm});
  v.entities.push_back(Arrow{{{20.0 * mm, -12.0 * mm}, {20.0 * mm, 12.0 * mm}}});
  return v;
}
View strip() {  // a tube rolled from a strip, with its fold lines
  View v{.name = "adapter strip", .material = "tinplate", .thickness = 0.3 * mm, .note = "roll round 16 mm bar"};
  add_rectangle(v, {{0.0 * mm, 0.0 * mm}, {56.5 * mm, 45.0 * mm}});
  for (const Length& x : {3.0 * mm, 53.5 * mm}) v.entities.push_back(Line{{x, 0.0 * mm}, {x, 45.0 * mm}, Layer::fold});
  v.entities.push_back(LinearDimension{.from = {0.0 * mm, 0.0 * mm}, .to = {56.5 * mm, 0.0 * mm}, .away = -14.0 * mm});
  v.entities.push_back(LinearDimension{.from = {0.0 * mm, 0.0 * mm}, .to = {3.0 * mm, 0.0 * mm}, .away = -7.0 * mm});
  v.entities.push_back(LinearDimension{
      .from = {56.5 * mm, 0.0 * mm}, .to = {56.5 * mm, 45.0 * mm}, .along = Along::vertical, .away = 8.0 * mm});
  v.entities.push_back(Arc{{28.25 * mm, 45.0 * mm}, 6.0 * mm, degrees(180.0), degrees(360.0)});
  v.entities.push_back(RadiusDimension{{28.25 * mm, 45.0 * mm}, 6.0 * mm, degrees(-60.0), 5.0 * mm});
  return v;
}
View plate(Length width, Length height, std::vector<Hole>& holes) {  // larger than a sheet
  View v{.name = "long plate", .material = "tinplate", .thickness = 0.3 * mm};
  add_rectangle(v, {{0.0 * mm, 0.0 * mm}, {width, height}});
  for (Length x = 15.0 * mm; x < width; x += 40.0 * mm) {
    holes.push_back({{x, height / 2.0}, 3.0 * mm});
    add_hole(v, holes.back().at, 3.0 * mm);
  }
  v.entities.push_back(LinearDimension{.from = {0.0 * mm, 0.0 * mm}, .to = {width, 0.0 * mm}, .away = -10.0 * mm});
  return v;
}
View hostile() {
  const std::string words =
      "<b>&amp;\"'</b>]]> (a\\) %%c %% 5%\u00B1 \\U+0041 \\P ^J \x01\x02\xff\xc3 \u202E\u200B \u65E5\u672C \U0001F525 ";
  View v{.name = words, .material = words + "\r\n0\nEOF\n", .note = std::string("nul\0here", 8)};
  add_rectangle(v, {{0.0 * mm, 0.0 * mm}, {60.0 * mm, 30.0 * mm}});
  v.entities.push_back(Text{.at = {5.0 * mm, 20.0 * mm}, .words = words});
  v.entities.push_back(Text{.at = {5.0 * mm, 5.0 * mm}, .words = "0\nEOF\n999\nend", .height = 1.8 * mm});
  return v;
}

void save(const std::string& path, const std::string& bytes) {
  std::ofstream file(path, std::ios::binary);
  file << bytes;
  if (!file.flush()) throw std::runtime_error("cannot write " + path);
}
// Where the holes of a placed view are on the paper.
void save_holes(const std::string& path, const Drawing& d, const std::string& of, const std::vector<Hole>& holes) {
  std::string out = "{\"holes\": [";
  for (const Hole& hole : holes)
    for (std::size_t sheet = 0; sheet < d.sheets.size(); ++sheet) {
      const auto& views = d.sheets[sheet].views;
      const auto found = std::find_if(views.begin(), views.end(), [&](const Placed& p) { return p.view.name == of; });
      if (found == views.end()) continue;
      const Placed& p = *found;
      const Length x = p.turned ? p.at.x - hole.at.y : p.at.x + hole.at.x;
      const Length y = p.turned ? p.at.y + hole.at.x : p.at.y + hole.at.y;
      if (p.window && !(x - 5.0 * mm > p.window->low.x && x + 5.0 * mm < p.window->high.x &&
                        y - 5.0 * mm > p.window->low.y && y + 5.0 * mm < p.window->high.y))
        continue;
      out += fmt::format(
          "{}{{\"sheet\": {}, \"x\": {:.9f}, \"y\": {:.9f}, \"view_x\": {:.9f}, \"view_y\": {:.9f}, "
          "\"diameter\": {:.9f}}}",
          out.back() == '[' ? "" : ", ", sheet, in(x, mm), in(y, mm), in(hole.at.x, mm), in(hole.at.y, mm),
          in(hole.diameter, mm));
    }
  save(path, out + "]}\n");
}
void write(const std::string& stem, const Drawing& d, const std::vector<Hole>& holes,
           const PrintOptions& options = {}) {
  save(stem + ".pdf", pdf(d, options));
  int n = 0;
  for (const std::string& sheet : svg(d, options)) save(fmt::format("{}-{}.svg", stem, ++n), sheet);
  save_holes(stem + ".json", d, d.sheets.size() > 1 ? "long plate" : "chimney flange", holes);
}
// Words of every character that is measured exactly, for the second opinion on their widths.
void write_widths(const std::string& folder) {
  View v{.name = "widths"};
  std::string json = "{";
  Length y = 0.0 * mm;
  for (const std::string word : {"!#$%&'()*+,-./012345", "6789:;=?@ABCDEFGHIJ", "KLMNOPQRSTUVWXYZ[]^_",
                                 "`abcdefghijklmnopqrst", "uvwxyz{|}~", "5\u00B0\u00B1\u00B5\u2300\u00D79"}) {
    v.entities.push_back(Text{.at = {0.0 * mm, y}, .words = word, .height = 5.0 * mm});
    json += fmt::format("{}\"{}\": {:.6f}", y == 0.0 * mm ? "" : ", ", word, 5.0 * width_to_height(word));
    y -= 10.0 * mm;
  }
  save(folder + "widths.json", json + "}\n");
  save(folder + "widths.pdf", pdf(lay_out({.name = "widths"}, paper("A4"), {v}, Oversize::refuse)));
}
}  // namespace

int main(int count, char** arguments) {
  try {
    if (count != 2) throw std::runtime_error("usage: drawing_probe FOLDER");
    const std::string folder = arguments[1] + std::string("/");
    const TitleBlock title{
        .name = "Chimney adapter", .number = "adapter-01", .date = "2024-05-01", .tolerance = "ISO 2768-m"};
    for (const std::string name : {"A4", "Letter"}) {
      std::vector<Hole> holes;
      const View part = flange(0.0 * mm, holes);
      const Drawing d = lay_out(title, paper(name), {part, section(), strip()}, Oversize::refuse);
      write(folder + name, d, holes);
      write(folder + name + "-again", d, holes);
      write(folder + name + "-stretched", d, holes, {stretch(100.0 * mm, 99.2 * mm), stretch(150.0 * mm, 150.6 * mm)});
      save(folder + name + "_mm.dxf", dxf(part, title));
    }
    write_widths(folder);
    std::vector<Hole> shifted, straight, across, none;
    flange(0.0 * mm, straight);
    TitleBlock draft = title;
    draft.draft = true;
    const Drawing moved = lay_out(draft, paper("A4"), {flange(0.3 * mm, shifted)}, Oversize::refuse);
    write(folder + "shifted", moved, straight);  // drawn 0.3 mm off what its JSON says
    save(folder + "shifted_mm.dxf", dxf(flange(0.3 * mm, none), draft));
    save(folder + "section_mm.dxf", dxf(section(), title));
    save(folder + "strip_mm.dxf", dxf(strip(), title));
    const View large = plate(420.0 * mm, 60.0 * mm, across);
    write(folder + "split", lay_out(title, paper("A4"), {large}, Oversize::split), across);
    std::vector<Hole> square;
    const View huge = plate(260.0 * mm, 330.0 * mm, square);
    write(folder + "tiles", lay_out(title, paper("Letter"), {huge}, Oversize::split), square);
    TitleBlock bad{.name = hostile().name + std::string(5000, 'W'), .number = std::string(300, 'n'), .date = "\n\n"};
    write(folder + "hostile", lay_out(bad, paper("A4"), {hostile()}, Oversize::split), {});
    save(folder + "hostile_mm.dxf", dxf(hostile(), bad));
    return 0;
  } catch (const std::exception& e) {
    std::cerr << e.what() << '\n';
    return 1;
  }
}
