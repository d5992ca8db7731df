#include "drawing/at.hpp"
#include "drawing/drawing.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <limits>
#include <locale>
using namespace lumwright;
using namespace lumwright::drawing;

namespace {
View part(Entity entity) { return {.name = "part", .entities = {std::move(entity)}}; }
Drawing drawing_of(const View& view) { return lay_out({.name = "test"}, paper("A4"), {view}, Oversize::refuse); }
bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }
std::string all_formats(const View& view) {
  const Drawing d = drawing_of(view);
  return pdf(d) + svg(d).front() + dxf(view, {.name = "test"});
}
struct Comma : std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\1"; }
};
}  // namespace

TEST_CASE("what cannot be drawn is refused, whatever the format") {
  const double nan = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
  const Entity bad[] = {Line{at(nan, 0), at(1, 1)},
                        Line{at(0, 0), at(0, endless)},
                        Line{at(0, 0), at(2e4, 0)},
                        Circle{at(0, 0), 0.0 * mm},
                        Circle{at(0, 0), -1.0 * mm},
                        Circle{at(0, 0), nan * mm},
                        Circle{at(0, nan), 1.0 * mm},
                        Arc{at(0, 0), 1.0 * mm, degrees(nan), degrees(90)},
                        Arc{at(0, 0), 0.0 * mm, degrees(0), degrees(90)},
                        Polyline{{at(0, 0)}},
                        Arrow{{}},
                        Text{.at = at(0, 0), .words = "x", .height = 5e3 * mm},
                        Text{.at = at(0, 0), .words = "x", .rotation = degrees(endless)},
                        CentreMark{at(0, 0), 0.0 * mm},
                        DiameterDimension{.centre = at(0, 0), .diameter = nan * mm},
                        LinearDimension{at(0, 0), at(nan, 0)},
                        AngularDimension{at(0, 0), degrees(0), degrees(nan), 5.0 * mm},
                        Hatch{{std::vector<Point>{at(0, 0), at(1, 0), at(0, nan)}}},
                        Hatch{{Disc{at(0, 0), endless * mm}}},
                        Hatch{{Disc{at(0, 0), 10.0 * mm}}, 0.0 * mm},
                        Hatch{{Disc{at(0, 0), 10.0 * mm}}, 1e-6 * mm}};
  int number = 0;
  for (const Entity& entity : bad) {
    CAPTURE(number);
    ++number;
    const View view = part(entity);
    const Drawing by_hand{{.name = "test"}, paper("A4"), {Sheet{{Placed{view, at(50, 100)}}}}};
    CHECK_THROWS_AS(pdf(by_hand), ModelError);
    CHECK_THROWS_AS(svg(by_hand), ModelError);
    CHECK_THROWS_AS(dxf(view, {.name = ""}), ModelError);
    CHECK_THROWS_AS(bounds(view), ModelError);
  }
  View thin = part(Circle{at(0, 0), 1.0 * mm});
  thin.thickness = 0.0 * mm;
  CHECK_THROWS_WITH_AS(dxf(thin, {.name = ""}), "drawing `part`: thickness 0 mm is not above 0", ModelError);
}
TEST_CASE("stretch is what the bar should measure over what it does, and no more than 3 %") {
  CHECK(stretch(100.0 * mm, 99.2 * mm) == doctest::Approx(1.0080645161290323));  // hand: 100 / 99.2
  CHECK(stretch(150.0 * mm, 150.0 * mm) == 1.0);
  // A4 fitted to Letter, hand: 279.4 / 297 = 0.9407
  CHECK_THROWS_WITH_AS(stretch(100.0 * mm, 94.1 * mm), "a bar of 100 mm that measures 94.1 mm was not printed at 100 %",
                       ModelError);
  CHECK_THROWS_AS(stretch(100.0 * mm, 0.0 * mm), ModelError);
  CHECK_THROWS_AS(stretch(100.0 * mm, std::numeric_limits<double>::quiet_NaN() * mm), ModelError);
  const Drawing d = drawing_of(part(Circle{at(0, 0), 10.0 * mm}));
  CHECK_THROWS_AS(pdf(d, {.stretch_x = 1.05}), ModelError);
  CHECK_THROWS_AS(svg(d, {.stretch_y = std::numeric_limits<double>::quiet_NaN()}), ModelError);
}
TEST_CASE("a locale with decimal commas changes no byte") {
  View view = part(Circle{at(1.25, 2.5), 10.125 * mm});
  view.thickness = 1.2 * mm;
  view.figures = Figures::mm_inches;
  view.entities.push_back(LinearDimension{at(0, 0), at(12.5, 0)});
  const std::string before = all_formats(view);
  const std::locale kept = std::locale::global(std::locale(std::locale::classic(), new Comma));
  const std::string after = all_formats(view);
  std::locale::global(kept);
  CHECK(before == after);
  CHECK(holds(before, "10.125") == false);  // a radius is written
  CHECK(holds(before, "5.0625"));
}
TEST_CASE("a draft is stamped in every format, a sound drawing in none") {
  const View view = part(Circle{at(0, 0), 10.0 * mm});
  CHECK_FALSE(holds(all_formats(view), "DRAFT"));
  Drawing d = drawing_of(view);
  d.title.draft = true;
  CHECK(holds(pdf(d), "(DRAFT)"));
  CHECK(holds(svg(d).front(), ">DRAFT</text>"));
  CHECK(holds(dxf(view, d.title), "DRAFT test"));
}
TEST_CASE("PDF: one page a sheet, asks not to be scaled, carries no date") {
  View large{.name = "large"};
  add_rectangle(large, {at(0, 0), at(160, 200)});
  const Drawing d = lay_out({.name = "two"}, paper("A4"), {large, large}, Oversize::refuse);
  const std::string text = pdf(d);
  CHECK(text.starts_with("%PDF-1."));
  CHECK(holds(text, "/PrintScaling /None"));
  CHECK(holds(text, "/Count 2"));
  CHECK_FALSE(holds(text, "Date"));
  CHECK(svg(d).size() == 2);
  CHECK(pdf(d) == text);
}
TEST_CASE("SVG: lines are named by what is to be done with them") {
  View view{.name = "part"};
  add_hole(view, at(0, 0), 3.4 * mm);
  add_bore(view, at(20, 0), 10.0 * mm);
  view.entities.push_back(Line{at(-5, -10), at(25, -10), Layer::fold});
  const std::string text = svg(drawing_of(view)).front();
  for (const char* id : {"CUT", "DRILL", "BEND", "MARK", "CALIB", "FRAME", "TEXT"})
    CHECK(holds(text, "id=\"" + std::string(id) + "\""));
  CHECK(holds(text, "r=\"1.7\""));
  CHECK(holds(text, "r=\"5\""));
  CHECK_FALSE(holds(text, "px"));
  // the legend shows a line as it is cut, but nothing outside the part lies in the layer that is cut
  const std::size_t cut = text.find("id=\"CUT\""), end = text.find("</g>", cut);
  CHECK_FALSE(holds(text.substr(cut, end - cut), "<line"));
}
TEST_CASE("DXF: R12 with millimetres said in words, for it has no unit of its own") {
  View view{.name = "part"};
  add_hole(view, at(1.0 / 3.0, -2.0), 3.4 * mm);
  const std::string text = dxf(view, {.name = "test"});
  CHECK(text.starts_with("999\nlumwright: true scale, units are millimetres\n"));
  CHECK(holds(text, "AC1009"));
  CHECK_FALSE(holds(text, "INSUNITS"));
  CHECK(holds(text, " 10\n0.333333\n 20\n-2.000000\n"));
  CHECK(holds(text, "POINT\n  8\nDRILL\n"));
  CHECK(text.ends_with("  0\nENDSEC\n  0\nEOF\n"));
}
TEST_CASE("every pen differs from every other in more than colour") {
  for (const Layer one :
       {Layer::cut, Layer::drill, Layer::fold, Layer::centre, Layer::hidden, Layer::outline, Layer::flow})
    for (const Layer other :
         {Layer::cut, Layer::drill, Layer::fold, Layer::centre, Layer::hidden, Layer::outline, Layer::flow})
      if (one != other) {
        CAPTURE(pen(one).layer);
        CAPTURE(pen(other).layer);
        CHECK((pen(one).width != pen(other).width || pen(one).dashes != pen(other).dashes));
        const auto& c = pen(one).colour;  // ITU-R BT.601 luma: dark enough to print black
        CHECK(0.299 * c[0] + 0.587 * c[1] + 0.114 * c[2] < 110.0);
      }
}
TEST_CASE("an empty drawing and an empty view") {
  CHECK(drawing_of({.name = "nothing"}).sheets.empty());
  CHECK(holds(dxf({.name = "nothing"}, {.name = ""}), "EOF"));
  CHECK(svg(drawing_of({.name = "nothing"})).empty());
  CHECK_THROWS_AS(pdf(drawing_of({.name = "nothing"})), ModelError);
}
