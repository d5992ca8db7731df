#include "drawing/at.hpp"
#include "drawing/crowding.hpp"
#include "drawing/detail/ink.hpp"
#include "drawing/polar.hpp"
#include "near.hpp"
#include <algorithm>
using namespace lumwright;
using namespace lumwright::drawing;

namespace {
std::vector<std::string> words(const View& view) {
  std::vector<std::string> out;
  for (const Ink& i : ink(view))
    if (const auto* w = std::get_if<Words>(&i.shape)) out.push_back(w->text);
  return out;
}
View with(Entity entity, Figures figures = Figures::mm) {
  return {.name = "", .figures = figures, .entities = {std::move(entity)}};
}
using Strings = std::vector<std::string>;
}  // namespace

TEST_CASE("a dimension says the distance it was given, in the direction it was asked for") {
  // hand: 3-4-5 triangle, 30 and 40 mm
  CHECK(words(with(LinearDimension{at(0, 0), at(30, 40), Along::horizontal})) == Strings{"30"});
  CHECK(words(with(LinearDimension{at(0, 0), at(30, 40), Along::vertical})) == Strings{"40"});
  CHECK(words(with(LinearDimension{at(0, 0), at(30, 40), Along::aligned})) == Strings{"50"});
  CHECK(words(with(LinearDimension{at(30, 40), at(0, 0), Along::aligned})) == Strings{"50"});
  CHECK(words(with(LinearDimension{.from = at(0, 0), .to = at(25.4, 0), .before = "2 x ", .after = " min"},
                   Figures::mm_inches)) == Strings{"2 x 25.4 min", "(1 in)"});
  CHECK(words(with(DiameterDimension{.centre = at(0, 0), .diameter = 38.1 * mm}, Figures::mm_inches)) ==
        Strings{"\u230038.1", "(\u23001 1/2 in)"});
  // hand: 38.1 mm are 1 1/2 in, 30 mm are 1.181 in
  CHECK(words(with(DiameterDimension{.centre = at(0, 0), .diameter = 38.1 * mm}, Figures::inches_mm)) ==
        Strings{"\u23001 1/2\"", "(\u230038.1 mm)"});
  CHECK(words(with(LinearDimension{at(0, 0), at(30, 0)}, Figures::inches)) == Strings{"1.181\""});
  CHECK(size_text(30.0 * mm, Figures::inches_mm) == "1.181 in (30 mm)");
  CHECK(size_text(1.0 / 16.0 * inch, Figures::mm_inches) == "1.59 mm (1/16 in)");
  CHECK(words(with(RadiusDimension{.centre = at(0, 0), .radius = 6.0 * mm})) == Strings{"R6"});
  CHECK(words(with(AngularDimension{at(0, 0), degrees(210.0), degrees(-30.0), 20.0 * mm})) == Strings{"120\u00B0"});
}
TEST_CASE("numbers are read from below or from the right") {  // ISO 129-1, from memory
  for (int angle = 0; angle < 360; angle += 15) {
    CAPTURE(angle);
    const View view = with(LinearDimension{at(0, 0), polar(at(0, 0), 40.0 * mm, degrees(angle)), Along::aligned});
    for (const Ink& i : ink(view))
      if (const auto* w = std::get_if<Words>(&i.shape)) {
        CHECK(w->turn > -pi / 2.0 + 1e-6);
        CHECK(w->turn < pi / 2.0 + 1e-6);
      }
  }
}
TEST_CASE("narrow and wide dimensions, any side, keep their own lines out of their number") {
  for (const Along along : {Along::horizontal, Along::vertical, Along::aligned})
    for (const double length : {0.5, 1.2, 3.0, 5.0, 6.0, 8.0, 12.0, 20.0, 200.0})
      for (const double away : {-12.0, -6.0, 6.0, 12.0})
        for (const Figures figures : {Figures::mm, Figures::mm_inches, Figures::inches_mm, Figures::inches})
          for (const double sign : {-1.0, 1.0}) {
            CAPTURE(length);
            CAPTURE(away);
            CAPTURE(static_cast<int>(figures));
            const Point to = along == Along::vertical ? at(0, sign * length) : at(sign * length, 0);
            const auto found = crowding(with(LinearDimension{at(0, 0), to, along, away * mm}, figures));
            CHECK_MESSAGE(found.empty(), (found.empty() ? "" : found.front()));
          }
  for (int angle = 0; angle < 360; angle += 10) {
    CAPTURE(angle);
    View view = with(Circle{at(0, 0), 20.0 * mm}, Figures::mm_inches);
    view.entities.push_back(DiameterDimension{.centre = at(0, 0), .diameter = 20.0 * mm, .at = degrees(angle)});
    const auto found = crowding(view);
    CHECK_MESSAGE(found.empty(), (found.empty() ? "" : found.front()));
  }
}
TEST_CASE("angles keep their arc out of their number") {
  for (int from = 0; from < 360; from += 15)
    for (const double sweep : {5.0, 30.0, 60.0, 120.0, 270.0}) {
      CAPTURE(from);
      CAPTURE(sweep);
      const auto found =
          crowding(with(AngularDimension{at(0, 0), degrees(from), degrees(from + sweep), 20.0 * mm, 12.0 * mm}));
      CHECK_MESSAGE(found.empty(), (found.empty() ? "" : found.front()));
    }
}
TEST_CASE("crowding is found") {
  View view{.name = "crowded"};
  view.entities.push_back(Text{.at = at(0, 0), .words = "one"});
  view.entities.push_back(Text{.at = at(2, 1), .words = "two"});
  CHECK(crowding(view) == Strings{"`one` and `two` overlap"});
  view.entities.back() = Line{at(1, -5), at(2, 5)};
  CHECK(crowding(view) == Strings{"a line of layer CUT runs through `one`"});
  view.entities.back() = Circle{at(10, 0), 18.0 * mm};
  CHECK(crowding(view) == Strings{"a line of layer CUT runs through `one`"});
  view.entities.back() = Text{.at = at(2, -4), .words = "upwards", .rotation = degrees(90.0)};
  CHECK(crowding(view) == Strings{"`one` and `upwards` overlap"});
  view.entities.back() = Circle{at(2, 1), 40.0 * mm};  // round it
  CHECK(crowding(view).empty());
}
TEST_CASE("a centre mark runs through its middle") {
  const Inks marks = ink(with(CentreMark{at(5, 7), 4.0 * mm}));
  REQUIRE(marks.size() == 2);
  for (const Ink& i : marks) {
    const auto& s = std::get<Stroke>(i.shape);
    CHECK((s.points.front().x + s.points.back().x) / 2.0 == doctest::Approx(5.0));
    CHECK((s.points.front().y + s.points.back().y) / 2.0 == doctest::Approx(7.0));
    CHECK(pen(i.layer).dashes.empty());
  }
}
TEST_CASE("boxes hold arcs by their quarter points") {
  // hand: the upper half of a circle of radius 10 about the origin, then the quarter from 45 to 135 degrees
  const Box half = bounds(with(Arc{at(0, 0), 10.0 * mm, degrees(0.0), degrees(180.0)}));
  CHECK(half.width() == near(20.0 * mm, 1e-12));
  CHECK(half.height() == near(10.0 * mm, 1e-12));
  const Box quarter = bounds(with(Arc{at(0, 0), 10.0 * mm, degrees(45.0), degrees(135.0)}));
  CHECK(quarter.width() == near(14.142135623730951 * mm, 1e-12));
  CHECK(quarter.high.y == near(10.0 * mm, 1e-12));
  const Box whole = bounds(with(Circle{at(3, 4), 6.0 * mm}));
  CHECK(whole.low.x + 1.0 * mm == near(1.0 * mm, 1e-9));
  CHECK(whole.high.y == near(7.0 * mm, 1e-12));
}
