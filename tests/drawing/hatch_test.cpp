#include "drawing/at.hpp"
#include "drawing/detail/ink.hpp"
#include "near.hpp"
using namespace lumwright;
using namespace lumwright::drawing;

namespace {
struct Hatched {
  double area;  // length of all lines times their distance
  int lines;
};
Hatched measure(const Hatch& hatch) {
  Hatched out{0.0, 0};
  for (const Ink& i : ink({.name = "", .entities = {hatch}})) {
    const auto& s = std::get<Stroke>(i.shape);
    const Spot d = s.points[1] - s.points[0];
    CHECK(d.y / d.x == doctest::Approx(std::tan(hatch.slant.in_radians())).epsilon(1e-9));
    out.area += std::hypot(d.x, d.y) * in(hatch.spacing, mm);
    ++out.lines;
  }
  return out;
}
}  // namespace

TEST_CASE("hatching covers the area it is given, by lines at 45 degrees") {
  // elementary areas: rectangle 30 x 20; ring pi (20^2 - 10^2); L of 20 x 20 less 10 x 10; square with a round hole
  const std::vector<Point> rectangle = {at(0, 0), at(30, 0), at(30, 20), at(0, 20)};
  CHECK(measure({{rectangle}, 0.25 * mm}).area == doctest::Approx(600.0).epsilon(2e-3));
  const Boundary outer = Disc{at(5, 5), 40.0 * mm}, inner = Disc{at(5, 5), 20.0 * mm};
  CHECK(measure({{outer, inner}, 0.25 * mm}).area == doctest::Approx(pi * 300.0).epsilon(2e-3));
  const std::vector<Point> angle = {at(0, 0), at(20, 0), at(20, 10), at(10, 10), at(10, 20), at(0, 20)};
  CHECK(measure({{angle}, 0.25 * mm}).area == doctest::Approx(300.0).epsilon(2e-3));
  CHECK(measure({{rectangle, Disc{at(15, 10), 10.0 * mm}}, 0.25 * mm}).area ==
        doctest::Approx(600.0 - pi * 25.0).epsilon(2e-3));
  CHECK(measure({{rectangle}, 0.25 * mm, degrees(-60.0)}).area == doctest::Approx(600.0).epsilon(2e-3));
}
TEST_CASE("two parts hatched beside each other share one grid, and nothing is drawn twice") {
  const std::vector<Point> left = {at(0, 0), at(10, 0), at(10, 10), at(0, 10)};
  const std::vector<Point> right = {at(10, 0), at(20, 0), at(20, 10), at(10, 10)};
  const std::vector<Point> both = {at(0, 0), at(20, 0), at(20, 10), at(0, 10)};
  const double apart = measure({{left}}).area + measure({{right}}).area;
  CHECK(apart == doctest::Approx(measure({{both}}).area).epsilon(1e-9));
  CHECK(measure({{both, both}}).lines == 0);
}
TEST_CASE("nothing to hatch") {
  CHECK(measure({{}}).lines == 0);
  CHECK(measure({{std::vector<Point>{}}}).lines == 0);
  CHECK(measure({{std::vector<Point>{at(1, 1), at(5, 5)}}}).lines == 0);
}
