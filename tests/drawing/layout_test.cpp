#include "drawing/detail/page.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <map>
#include <random>
using namespace lumwright;
using namespace lumwright::drawing;

namespace {
/// The room for views on every sheet.
Box drawing_area(const Paper& paper) {
  const Extent area = regions(paper).area;
  return {{area.low.x * mm, area.low.y * mm}, {area.high.x * mm, area.high.y * mm}};
}
View block(double width, double height) {
  View v{.name = ""};
  add_rectangle(v, {{0.0 * mm, 0.0 * mm}, {width * mm, height * mm}});
  return v;
}
Extent on_paper(const Placed& placed) {
  Inks all = captioned_ink(placed.view);
  if (placed.turned) all = turned(std::move(all));
  return extent(shifted(std::move(all), spot(placed.at)));
}
bool inside(const Extent& e, const Box& area) {
  return e.low.x >= in(area.low.x, mm) - 1e-6 && e.low.y >= in(area.low.y, mm) - 1e-6 &&
         e.high.x <= in(area.high.x, mm) + 1e-6 && e.high.y <= in(area.high.y, mm) + 1e-6;
}
bool apart(const Extent& a, const Extent& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y;
}
void check_sheets(const Drawing& d, std::size_t views) {
  std::size_t count = 0;
  for (const Sheet& sheet : d.sheets)
    for (std::size_t i = 0; i < sheet.views.size(); ++i, ++count) {
      CHECK(inside(on_paper(sheet.views[i]), drawing_area(d.paper)));
      for (std::size_t k = 0; k < i; ++k) CHECK(apart(on_paper(sheet.views[i]), on_paper(sheet.views[k])));
    }
  CHECK(count == views);
}
Drawing laid(const std::vector<View>& views, Oversize oversize = Oversize::refuse, const char* on = "A4") {
  return lay_out({.name = "test"}, paper(on), views, oversize);
}
}  // namespace

TEST_CASE("paper sizes") {  // ISO 216; 8.5 in x 11 in
  CHECK(paper("a4").width == near(210.0 * mm, 1e-12));
  CHECK(paper("A4").height == near(297.0 * mm, 1e-12));
  CHECK(paper("letter").width == near(215.9 * mm, 1e-12));
  CHECK(paper("LETTER").height == near(279.4 * mm, 1e-12));
  CHECK(paper("A3").height == near(420.0 * mm, 1e-12));
  CHECK_THROWS_WITH_AS(paper("A5"), "paper `A5` is none of A4, Letter and A3", ModelError);
  CHECK_THROWS_AS(paper(""), ModelError);
}
TEST_CASE("views lie side by side on few sheets") {
  CHECK(laid({}).sheets.empty());
  CHECK(laid({block(170, 220)}).sheets.size() == 1);
  CHECK(laid({block(80, 100), block(80, 100), block(80, 100), block(80, 100)}).sheets.size() == 1);
  CHECK(laid({block(170, 100), block(170, 100), block(170, 100)}).sheets.size() == 2);
  // 30 blocks of 50 x 50, three by four on a sheet of 173 x 228 with 6 mm between: three sheets
  check_sheets(laid(std::vector<View>(30, block(50, 50))), 30);
  CHECK(laid(std::vector<View>(30, block(50, 50))).sheets.size() == 3);
}
TEST_CASE("a quarter turn saves a sheet, and nothing else is turned") {
  const Drawing flat = laid({block(220, 60)});
  REQUIRE(flat.sheets.size() == 1);
  CHECK(flat.sheets[0].views[0].turned);
  check_sheets(flat, 1);
  CHECK_FALSE(laid({block(100, 60)}).sheets[0].views[0].turned);
}
TEST_CASE("random views never overlap and never leave the room there is") {
  std::mt19937 random(20240501);
  std::uniform_real_distribution<double> size(5.0, 170.0);
  for (const char* on : {"A4", "Letter"})
    for (int run = 0; run < 40; ++run) {
      std::vector<View> views;
      for (int i = 0; i < 1 + run % 12; ++i) views.push_back(block(size(random), size(random)));
      check_sheets(laid(views, Oversize::refuse, on), views.size());
    }
}
TEST_CASE("a view larger than a sheet is refused with its size, or split") {
  View large = block(400, 50);
  large.name = "strip";
  CHECK_THROWS_WITH_AS(laid({large}), doctest::Contains("drawing `strip` of 400.0 x "), ModelError);
  CHECK_THROWS_AS(laid({block(9000, 9000)}, Oversize::split), ModelError);
  const Drawing said = laid({block(9000, 9000), block(50, 50)}, Oversize::say);
  CHECK(said.sheets.size() == 1);
  CHECK(said.sheets.front().views.size() == 2);  // a sentence in its place, and the other as before
  const Drawing d = laid({large, block(50, 50)}, Oversize::split);
  CHECK(d.sheets.size() == 3);
}
TEST_CASE("pieces overlap, cover the view, and their crosses lie on the same spots of it") {
  for (const auto& [width, height] : {std::pair{420.0, 60.0}, {60.0, 420.0}, {400.0, 500.0}}) {
    CAPTURE(width);
    View large = block(width, height);
    large.name = "large";
    const Drawing d = laid({large}, Oversize::split);
    std::map<std::string, std::vector<Spot>> crosses;  // by label, in co-ordinates of the view
    double covered = 0.0;
    for (const Sheet& sheet : d.sheets) {
      REQUIRE(sheet.views.size() == 2);
      const Placed& part = sheet.views[0];
      REQUIRE(part.window);
      const Extent window{spot(part.window->low), spot(part.window->high)};
      CHECK(inside(window, drawing_area(d.paper)));
      CHECK(inside(on_paper(sheet.views[1]), drawing_area(d.paper)));
      covered += (window.high.x - window.low.x) * (window.high.y - window.low.y);
      for (const Entity& entity : sheet.views[1].view.entities)
        if (const auto* text = std::get_if<Text>(&entity); text && text->words.size() <= 3)
          crosses[text->words].push_back(spot(text->at) + spot(sheet.views[1].at) - spot(part.at));
    }
    CHECK(covered > width * height);
    CHECK(crosses.size() >= 2 * (d.sheets.size() - 1));
    for (const auto& [label, places] : crosses) {
      CAPTURE(label);
      REQUIRE(places.size() == 2);
      CHECK(std::hypot(places[0].x - places[1].x, places[0].y - places[1].y) < 1e-9);
    }
  }
}
TEST_CASE(
    "all ink keeps 6 mm from the edge of the paper even at the largest stretch") {  // what household printers reach
  for (const char* on : {"A4", "Letter"}) {
    View large = block(400, 500);
    large.name = "large";
    const Drawing d = laid({large, block(160, 200)}, Oversize::split, on);
    for (std::size_t i = 0; i < d.sheets.size(); ++i) {
      const Page page = compose(d, i);
      std::vector<Extent> all{extent(page.fixed)};
      for (const Patch& patch : page.to_scale) {
        const Extent e = patch.window ? *patch.window : extent(patch.inks);
        const PrintOptions most{1.03, 1.03};
        all.push_back({stretched(e.low, page.pivot, most), stretched(e.high, page.pivot, most)});
      }
      for (const Extent& e : all) {
        CHECK(e.low.x >= 6.0);
        CHECK(e.low.y >= 6.0);
        CHECK(e.high.x <= page.width - 6.0);
        CHECK(e.high.y <= page.height - 6.0);
      }
    }
  }
}
