#include "workshop/box_development.hpp"
#include "data/sheet.hpp"
#include "quantity/require.hpp"
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::workshop {
namespace {
constexpr double right_angle = 0.5 * std::numbers::pi;

Length in_steps(Length size, Length step) { return step == 0.0 * mm ? size : std::round(in(size, step)) * step; }

// one wall of the net from its rim inwards
struct Wall {
  Length hem_fold;  // middle of the hem's bend; zero without a hem
  Length rim;       // where the wall begins behind the hem
  Length bend;      // begin of the bend into the floor
};
Wall wall_of(const SquareBox& box) {
  const Length floor_side = box.height - box.inside_radius;
  if (box.hem == 0.0 * mm) return {0.0 * mm, 0.0 * mm, floor_side};
  require_that("hem", box.hem, box.hem > box.sheet, "wider than the sheet is thick", "mm");
  const Length fold =
      bend_allowance({.angle = std::numbers::pi, .inside = 0.0 * mm, .sheet = box.sheet, .metal = box.metal});
  const Length flat = box.hem - box.sheet;  // the fold itself stands out by one thickness
  return {flat + 0.5 * fold, flat + fold, flat + fold + floor_side - box.sheet};
}
NetAxis axis_of(Length inside, const SquareBox& box, const Wall& wall, Length bend) {
  const Length floor = inside - 2.0 * box.inside_radius;
  require_that("floor of the box between its bends", floor, floor > 0.0 * mm, "above zero", "mm");
  const Length fold = in_steps(wall.bend + 0.5 * bend, box.wall_step), between = in_steps(bend + floor, box.floor_step);
  NetAxis axis{{fold, fold + between}, 2.0 * fold + between};
  if (box.hem > 0.0 * mm) {
    axis.folds.insert(axis.folds.begin(), wall.hem_fold);
    axis.folds.push_back(axis.total - wall.hem_fold);
  }
  return axis;
}
Area area_within(const std::vector<PlanePoint>& outline) {
  Area twice = 0.0 * mm2;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const PlanePoint &a = outline[i], &b = outline[(i + 1) % outline.size()];
    twice += a.x * b.y - b.x * a.y;
  }
  return 0.5 * twice;
}
// the lower right corner, from the bottom wall to the right wall; the others are its images
std::vector<PlanePoint> corner_of(const SquareBoxNet& net, Length rim, Length tab) {
  const Length x = net.across.total, c = net.corner;
  std::vector<PlanePoint> points{{x - c, 0.0 * mm}, {x - c, c}};
  if (tab > 0.0 * mm) {
    points.push_back({x - c + 0.5 * tab, c - tab});
    points.push_back({x - rim - 0.5 * tab, c - tab});
    points.push_back({x - rim, c});
  }
  points.push_back({x, c});
  return points;
}
void outline_and_tabs(SquareBoxNet& net, Length rim, Length tab) {
  const std::vector<PlanePoint> corner = corner_of(net, rim, tab);
  const auto left_right = [&](PlanePoint p) { return PlanePoint{net.across.total - p.x, p.y}; };
  const auto up_down = [&](PlanePoint p) { return PlanePoint{p.x, net.along.total - p.y}; };
  auto& out = net.outline;
  out = corner;
  for (auto p = corner.rbegin(); p != corner.rend(); ++p) out.push_back(up_down(*p));
  for (const PlanePoint& p : corner) out.push_back(left_right(up_down(p)));
  for (auto p = corner.rbegin(); p != corner.rend(); ++p) out.push_back(left_right(*p));
  if (tab == 0.0 * mm) return;
  const NetLine fold{{net.across.total - net.corner, net.corner}, {net.across.total - rim, net.corner}};
  net.folds.push_back(fold);
  net.folds.push_back({left_right(fold.from), left_right(fold.to)});
  net.folds.push_back({up_down(fold.from), up_down(fold.to)});
  net.folds.push_back({left_right(up_down(fold.from)), left_right(up_down(fold.to))});
}
void wall_folds(SquareBoxNet& net) {
  const Length c = net.corner;
  for (const Length& x : net.across.folds) net.folds.push_back({{x, c}, {x, net.along.total - c}});
  for (const Length& y : net.along.folds) net.folds.push_back({{c, y}, {net.across.total - c, y}});
}
void check(const SquareBox& box) {
  require_above_zero("width of the box", box.width, "mm");
  require_above_zero("length of the box", box.length, "mm");
  require_above_zero("height of the box", box.height, "mm");
  require_above_zero("sheet of the box", box.sheet, "mm");
  require_not_negative("inside radius of the folds", box.inside_radius, "mm");
  require_not_negative("tab", box.tab, "mm");
  require_not_negative("hem", box.hem, "mm");
}
}  // namespace

Length bend_allowance(const Bend& bend) {
  if (!(bend.angle > 0.0 && bend.angle <= std::numbers::pi))
    throw ModelError(fmt::format("bend of {:.6g} degrees is not above 0 up to 180", bend.angle / degree));
  require_not_negative("inside radius of the bend", bend.inside, "mm");
  require_above_zero("thickness of the sheet", bend.sheet, "mm");
  return (data::bend_row(bend.metal).per_thickness * bend.sheet + right_angle * bend.inside) *
         (bend.angle / right_angle);
}

RoundBoxPieces round_box(const RoundBox& box) {
  require_above_zero("diameter of the box", box.diameter, "mm");
  require_above_zero("height of the box", box.height, "mm");
  require_above_zero("sheet of the box", box.sheet, "mm");
  require_that("sheet of the box", box.sheet, box.sheet < 0.1 * box.diameter, "below a tenth of its diameter", "mm");
  require_not_negative("lap of the seam", box.lap, "mm");
  require_not_negative("skirt of the disc", box.skirt, "mm");
  const bool on_top = box.fit == DiscFit::on_top, skirted = box.skirt > 0.0 * mm;
  const Length outside = box.diameter + 2.0 * box.sheet;
  const Length disc = on_top ? outside + (skirted ? 2.0 * box.sheet : 0.0 * mm) : box.diameter;
  const Length middle = disc - box.sheet;  // of the skirt's wall
  const Length blank =
      skirted ? Length(square_root(pow<2>(middle) + 4.0 * middle * (box.skirt + 0.5 * box.sheet))) : disc;
  const Length width = on_top ? box.height : box.height + 2.0 * (box.sheet + box.skirt);
  const Length strip = std::numbers::pi * (box.diameter + box.sheet) + box.lap;
  return {.strip_length = strip,
          .strip_width = width,
          .disc = disc,
          .disc_blank = blank,
          .outside = outside,
          .metal = (strip * width + 2.0 * circle(blank)) * box.sheet};
}

SquareBoxNet square_box(const SquareBox& box) {
  check(box);
  const Length bend =
      bend_allowance({.angle = right_angle, .inside = box.inside_radius, .sheet = box.sheet, .metal = box.metal});
  const Wall wall = wall_of(box);
  require_that("height of the box", box.height, wall.bend > wall.rim, "enough for its bends", "mm");
  SquareBoxNet net{.across = axis_of(box.width, box, wall, bend),
                   .along = axis_of(box.length, box, wall, bend),
                   .corner = in_steps(wall.bend + 0.5 * bend, box.wall_step),
                   .outline = {},
                   .folds = {},
                   .metal = {}};
  require_that("tab", box.tab, box.tab < net.corner - wall.rim, "shorter than the wall is high", "mm");
  wall_folds(net);
  outline_and_tabs(net, wall.rim, box.tab);
  net.metal = area_within(net.outline) * box.sheet;
  return net;
}
}  // namespace lumwright::workshop
