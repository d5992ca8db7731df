#include "report/picture/fan_test.hpp"
#include "report/answers.hpp"
#include "report/chart/plot.hpp"
#include "report/fan_test.hpp"
#include "report/picture/own.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
using namespace chart;
constexpr double plot_left = 56.0, plot_height = 330.0, under = 96.0;

/// Numbers along the two axes, in the units of the page.
struct FanAxes {
  std::string flow, pressure;  // units
  double x(VolumeFlow q) const { return number_in(AnyQuantity(q), flow); }
  double y(Pressure p) const { return number_in(AnyQuantity(p), pressure); }
};
Range reach_of(const fan_test::FanTest& test, const FanAxes& axes) {
  double most = 0.0;
  for (const draught::CurveBandPoint& p : test.curve) most = std::max(most, axes.y(p.high));
  for (const fan_test::TestedPoint& p : test.points)
    if (p.left_out.empty()) most = std::max(most, axes.y(p.point.pressure));
  return rounded_out({0.0, most}, 6);
}
void draw_test(Figure& figure, const fan_test::FanTest& test, const std::optional<fan_test::NextPlate>& next,
               const FanAxes& axes) {
  const Axis x{rounded_out({0.0, axes.x(test.curve.back().flow)}, 8), "flow, " + axes.flow, 8},
      y{reach_of(test, axes), "static pressure at 1.2 kg/m3, " + axes.pressure, 6};
  Plot plot(figure, {plot_left, own_head + 24.0, own_width - 14.0, own_head + 24.0 + plot_height}, x, y);
  std::vector<Slice> band;
  std::vector<Point> line, read;
  for (const draught::CurveBandPoint& p : test.curve) {
    band.push_back({axes.x(p.flow), std::max(axes.y(p.low), 0.0), axes.y(p.high)});
    line.push_back({axes.x(p.flow), axes.y(p.pressure)});
  }
  for (const fan_test::TestedPoint& p : test.points)
    if (p.left_out.empty()) read.push_back({axes.x(p.point.flow), axes.y(p.point.pressure)});
  plot.band(band, "band cold");
  plot.curve(line, "line cold");
  for (const Point& p : read) plot.mark(p, Marker::circle, "dot-hot");
  if (!next) return;
  const Point wanted{axes.x(next->at.flow), axes.y(next->at.pressure)};
  plot.mark(wanted, Marker::cross, "dot-bad");
  plot.note(wanted, "read this next", "strong");
}
}  // namespace

std::string fan_test_picture(const fan_test::FanTest& test, const std::optional<fan_test::NextPlate>& next,
                             const TextStyle& style) {
  const FanAxes axes{page_unit({AnyQuantity(test.curve.back().flow), "l/min"}, style),
                     page_unit({AnyQuantity(test.fit.shut_off.value), "Pa"}, style)};
  const About about{"fan-test", "Fan test: " + test.name,
                    "Light: the band that holds the whole curve with 95 %. Dots: your readings."};
  return own_picture([&](Tag root) {
    const double height = own_head + 24.0 + plot_height + under;
    Figure figure(root, about, own_width, height);
    figure.box({0.0, 0.0, own_width, height}, "paper");
    write_own_head(figure, about);
    draw_test(figure, test, next, axes);
    const double foot = own_head + 24.0 + plot_height + 62.0;
    figure.words({14.0, foot}, fan_test_summary(test, style), "small");
    figure.words({14.0, foot + 18.0}, next ? next_words(*next, style) : "Every plate of the set has been read.",
                 "small");
    return height;
  });
}
}  // namespace lumwright::report
