#include "report/chart/callouts.hpp"
#include "report/chart/labels.hpp"
#include "report/chart/plot.hpp"
#include "report/chart/scale.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <limits>
#include <pugixml.hpp>
#include <random>
#include <stdexcept>

using namespace lumwright;
using namespace lumwright::report;
using namespace lumwright::report::chart;

TEST_CASE("ticks stand at multiples of 1, 2 or 5 times a power of ten") {
  // hand: the steps that every engineer's axis has (common practice, no source)
  struct Row {
    Range range;
    int about;
    std::vector<double> at;
    int decimals;
  };
  const Row rows[] = {{{0.0, 100.0}, 5, {0, 20, 40, 60, 80, 100}, 0},
                      {{0.0, 1.0}, 5, {0.0, 0.2, 0.4, 0.6, 0.8, 1.0}, 1},
                      {{3.1, 4.9}, 4, {3.5, 4.0, 4.5}, 1},
                      {{-0.05, 0.05}, 2, {-0.05, 0.0, 0.05}, 2},
                      {{0.0, 6.4e-4}, 6, {0, 1e-4, 2e-4, 3e-4, 4e-4, 5e-4, 6e-4}, 4},
                      {{1000.0, 5000.0}, 4, {1000, 2000, 3000, 4000, 5000}, 0}};
  for (const Row& row : rows) {
    CAPTURE(row.range.high);
    const Ticks ticks = nice_ticks(row.range, row.about);
    REQUIRE(ticks.at.size() == row.at.size());
    CHECK(ticks.decimals == row.decimals);
    for (std::size_t i = 0; i < row.at.size(); ++i)
      CHECK(std::abs(ticks.at[i] - row.at[i]) < 1e-9 * (row.range.high - row.range.low));
  }
}

TEST_CASE("whatever the range, there are about as many ticks as were asked for, and their words differ") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> exponent(-7.0, 7.0), share(-1.0, 1.0);
  for (int i = 0; i < 4000; ++i) {
    const double width = std::pow(10.0, exponent(random)), low = 3.0 * width * share(random);
    const Range range{low, low + width};
    CAPTURE(range.low);
    CAPTURE(range.high);
    const Ticks ticks = nice_ticks(range, 6);
    CHECK(ticks.at.size() >= 3);
    CHECK(ticks.at.size() <= 12);
    for (std::size_t k = 0; k < ticks.at.size(); ++k) {
      CHECK(ticks.at[k] >= range.low - 1e-9 * width);
      CHECK(ticks.at[k] <= range.high + 1e-9 * width);
      if (k > 0) CHECK(tick_text(ticks.at[k], ticks.decimals) != tick_text(ticks.at[k - 1], ticks.decimals));
    }
    const Range out = rounded_out(range, 6);
    CHECK(out.low <= range.low + 1e-9 * width);
    CHECK(out.high >= range.high - 1e-9 * width);
  }
}

TEST_CASE("no axis is made of nothing, and nothing below zero is zero") {
  CHECK_THROWS_AS(nice_ticks({1.0, 1.0}, 5), std::logic_error);
  CHECK_THROWS_AS(nice_ticks({2.0, 1.0}, 5), std::logic_error);
  CHECK_THROWS_AS(nice_ticks({0.0, std::numeric_limits<double>::infinity()}, 5), std::logic_error);
  CHECK_THROWS_AS(nice_ticks({0.0, 1.0}, 1), std::logic_error);
  CHECK(rounded_out({0.0, 0.0}, 4).low < rounded_out({0.0, 0.0}, 4).high);
  CHECK(tick_text(-0.0, 1) == "0.0");
  CHECK(tick_text(-1e-12, 2) == "0.00");
  CHECK(tick_text(-0.5, 1) == "-0.5");
}

TEST_CASE("labels that lie on each other move apart, as little as can be") {
  // hand: two that want 10 must stand 4 apart, so each gives way by 2; the one at 50 stays
  CHECK(nudged({10.0, 10.0, 50.0}, 4.0, {0.0, 100.0}) == std::vector<double>{8.0, 12.0, 50.0});
  CHECK(nudged({50.0, 10.0}, 4.0, {0.0, 100.0}) == std::vector<double>{50.0, 10.0});
  CHECK(nudged({}, 4.0, {0.0, 100.0}).empty());
  std::mt19937 random(3);
  std::uniform_real_distribution<double> at(-20.0, 120.0);
  for (int i = 0; i < 500; ++i) {
    std::vector<double> wanted(static_cast<std::size_t>(1 + i % 12));
    for (double& w : wanted) w = at(random);
    std::vector<double> got = nudged(wanted, 9.0, {0.0, 100.0});
    std::sort(got.begin(), got.end());
    const double apart = std::min(9.0, 100.0 / std::max<double>(1.0, static_cast<double>(got.size()) - 1.0));
    for (std::size_t k = 1; k < got.size(); ++k) CHECK(got[k] - got[k - 1] >= apart - 1e-9);
    CHECK(got.front() >= -1e-9);
    CHECK(got.back() <= 100.0 + 1e-9);
  }
}

TEST_CASE("labels in lanes never touch and stay in the room") {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> at(0.0, 340.0), size(20.0, 150.0);
  for (int i = 0; i < 500; ++i) {
    std::vector<Wanted> wanted(8);
    for (Wanted& w : wanted) w = {at(random), size(random)};
    std::sort(wanted.begin(), wanted.end(), [](const Wanted& a, const Wanted& b) { return a.mark < b.mark; });
    const std::vector<Placed> placed = in_lanes(wanted, {0.0, 340.0}, 4.0);
    for (std::size_t a = 0; a < placed.size(); ++a) {
      CHECK(placed[a].x >= 0.0);
      CHECK(placed[a].x + wanted[a].width <= 340.0 + 1e-9);
      for (std::size_t b = a + 1; b < placed.size(); ++b)
        if (placed[a].lane == placed[b].lane) {
          const bool clear =
              placed[a].x + wanted[a].width <= placed[b].x || placed[b].x + wanted[b].width <= placed[a].x;
          CHECK(clear);
        }
    }
  }
}

TEST_CASE("numbers beside crowded marks never lie on each other, on a mark or outside") {
  std::mt19937 random(11);
  std::normal_distribution<double> near(0.0, 12.0);
  std::uniform_real_distribution<double> across(60.0, 300.0), down(60.0, 240.0);
  const Pane room{46.0, 20.0, 330.0, 290.0};
  for (int i = 0; i < 300; ++i) {
    const double x = across(random), y = down(random);
    std::vector<Called> marks;
    for (int k = 1; k <= 10; ++k)
      marks.push_back(
          {{std::clamp(x + near(random), 50.0, 326.0), std::clamp(y + near(random), 26.0, 284.0)}, std::to_string(k)});
    const auto cover = [&](const Pane& p) {
      double cost =
          p.left < room.left || p.right > room.right || p.top < room.top || p.bottom > room.bottom ? 1000.0 : 0.0;
      for (const Called& m : marks)
        if (m.mark.x + 7.0 > p.left && m.mark.x - 7.0 < p.right && m.mark.y + 7.0 > p.top && m.mark.y - 7.0 < p.bottom)
          cost += 100.0;
      return cost;
    };
    const std::vector<Callout> placed = beside_marks(marks, room, cover);
    REQUIRE(placed.size() == marks.size());
    for (std::size_t a = 0; a < placed.size(); ++a) {
      const Pane& p = placed[a].words;
      CHECK(cover(p) == 0.0);
      for (std::size_t b = 0; b < a; ++b) {
        const Pane& q = placed[b].words;
        const bool apart = p.right <= q.left + 1e-9 || q.right <= p.left + 1e-9 || p.bottom <= q.top + 1e-9 ||
                           q.bottom <= p.top + 1e-9;
        CHECK(apart);
      }
    }
  }
}

TEST_CASE("a picture is named for those who do not see it, and draws what lies outside its axes no further") {
  const Markup page("div");
  Figure figure(page.root(), {"one", "A title <b>", "Words & more"}, 340.0, 200.0);
  Plot plot(figure, {46.0, 20.0, 330.0, 160.0}, {{0.0, 10.0}, "flow, l/min", 4}, {{0.0, 5.0}, "suction, Pa", 4});
  plot.curve({{0.0, 0.0}, {10.0, 500.0}}, "line hot");
  pugi::xml_document read;
  REQUIRE(read.load_string(page.html().c_str()));
  const pugi::xml_node svg = read.child("div").child("svg");
  CHECK(svg.attribute("role").value() == std::string("img"));
  CHECK(svg.attribute("aria-labelledby").value() == std::string("one-t one-d"));
  CHECK(svg.child("title").child_value() == std::string("A title <b>"));
  CHECK(svg.child("desc").child_value() == std::string("Words & more"));
  CHECK(svg.child("polyline").attribute("clip-path").value() == std::string("url(#one-c1)"));
  CHECK_THROWS_AS(plot.curve({{0.0, std::nan("")}}, "line"), std::logic_error);
}
