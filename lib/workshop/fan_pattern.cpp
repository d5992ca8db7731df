#include "workshop/fan_pattern.hpp"
#include "data/fan_frames.hpp"
#include "data/shop_rules.hpp"
#include "quantity/require.hpp"
#include "workshop/hole_circle.hpp"
#include "workshop/thread.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::workshop {
namespace {
bool within(Length a, Length b, Length by) { return std::abs(in(a - b, mm)) <= in(by, mm) + 1e-9; }

std::vector<PlanePoint> square_in(Length frame, Length pitch) {
  std::vector<PlanePoint> holes = hole_square({.pitch = pitch, .datum = Datum::lower_left_tangents});
  const Length inset = 0.5 * (frame - pitch);
  for (PlanePoint& hole : holes) hole = {hole.x + inset, hole.y + inset};
  return holes;
}

FanPattern axial_pattern(const data::FanFrame& row) {
  return {.name = fmt::format("{:.4g} mm frame", in(row.frame, mm)),
          .width = row.frame,
          .height = row.frame,
          .holes = square_in(row.frame, row.pitch),
          .hole = row.hole,
          .screws = row.screws,
          .opening = row.opening,
          .outlet_width = std::nullopt,
          .outlet_height = std::nullopt,
          .note = row.note,
          .basis = row.basis};
}

FanPattern blower_pattern(const data::BlowerFrame& row, Length hole) {
  const Length margin = 2.0 * data::shop_length("outlet margin").value.value;
  const auto cut = [&](std::optional<Length> side) { return side ? std::optional(*side + margin) : std::nullopt; };
  FanPattern pattern{.name = row.name + " centrifugal fan",
                     .width = row.width,
                     .height = row.height,
                     .holes = {},
                     .hole = hole,
                     .screws = {row.screw},
                     .opening = row.inlet,
                     .outlet_width = cut(row.outlet_width),
                     .outlet_height = cut(row.outlet_height),
                     .note = "",
                     .basis = row.basis};
  for (const data::LugHole& at : row.holes) pattern.holes.push_back({at.x, at.y});
  return pattern;
}

std::vector<const data::FanFrame*> frames_of(Length frame) {
  std::vector<const data::FanFrame*> found;
  for (const data::FanFrame& row : data::fan_frames())
    if (within(row.frame, frame, data::fan_frame_within().frame)) found.push_back(&row);
  return found;
}

FanDrawing axial_drawing(const FanInHand& fan) {
  const auto rows = frames_of(fan.frame);
  if (rows.empty())
    return {
        std::nullopt, std::nullopt,
        fmt::format("no table has a frame of {:.4g} mm: measure hole pitch, hole and air passage", in(fan.frame, mm))};
  const data::FanFrame& row = *rows.front();
  const FanPattern expected = axial_pattern(row);
  if (row.firm || (fan.measured && rows.size() == 1)) return {expected, expected, ""};
  const std::string why = rows.size() > 1 ? row.note : "the pitch comes from " + row.basis.source;
  return {std::nullopt, expected,
          fmt::format("measure the hole pitch along one side (expected {:.4g} mm): {}", in(row.pitch, mm), why)};
}

FanDrawing blower_drawing(const FanInHand& fan) {
  const Length off = data::fan_frame_within().frame;
  for (const data::BlowerFrame& row : data::blower_frames()) {
    const Length nominal = std::round(in(row.width, mm) / 5.0) * 5.0 * mm;  // 51.3 mm is sold as 50
    const bool side = within(row.width, fan.frame, off) || within(nominal, fan.frame, off);
    if (!side || (fan.thickness && !within(row.thickness, *fan.thickness, off))) continue;
    if (row.holes.empty() || !row.hole)
      return {std::nullopt, std::nullopt,
              "no source gives lugs, inlet and outlet of a " + row.name + " centrifugal fan: measure all of them"};
    const FanPattern expected = blower_pattern(row, *row.hole);
    if (fan.measured) return {expected, expected, ""};
    return {std::nullopt, expected,
            "centrifugal fans follow no standard: measure lugs, inlet and outlet of the one in hand before drawing it"};
  }
  return {
      std::nullopt, std::nullopt,
      fmt::format("no table has a centrifugal fan of {:.4g} mm: measure lugs, inlet and outlet", in(fan.frame, mm))};
}
// what was measured over what the table says; complete: holes, their size and the opening are all known
FanDrawing with_measured(const FanInHand& fan, FanDrawing drawing) {
  const bool axial = fan.kind == data::FanKind::axial, placed = axial ? fan.hole_pitch.has_value() : !fan.lugs.empty();
  if (!placed && !fan.hole && !fan.opening) return drawing;
  const bool whole = placed && fan.hole && fan.opening;
  if (!whole && !drawing.expected) return drawing;
  FanPattern pattern = drawing.expected ? *drawing.expected
                                        : FanPattern{.name = fmt::format("{:.4g} mm fan", in(fan.frame, mm)),
                                                     .width = fan.frame,
                                                     .height = fan.frame,
                                                     .holes = {},
                                                     .hole = *fan.hole,
                                                     .screws = {},
                                                     .opening = fan.opening,
                                                     .outlet_width = std::nullopt,
                                                     .outlet_height = std::nullopt,
                                                     .note = "",
                                                     .basis = {data::Standing::measured, "measured on the fan"}};
  if (placed && axial) {
    pattern.width = pattern.height = fan.frame;
    pattern.holes = square_in(fan.frame, *fan.hole_pitch);
  } else if (placed) {
    pattern.holes = fan.lugs;
  }
  pattern.hole = fan.hole.value_or(pattern.hole);
  // a screw of the table that does not pass the hole in hand is no screw for it
  if (fan.hole) std::erase_if(pattern.screws, [&](const std::string& name) { return thread(name).major > *fan.hole; });
  if (fan.opening) pattern.opening = fan.opening;
  if (whole) {
    pattern.basis = {data::Standing::measured, "measured on the fan"};
  }
  if (placed || drawing.pattern) {
    drawing.pattern = pattern;
    drawing.measure_first.clear();
  }
  return drawing;
}
}  // namespace

FanDrawing fan_drawing(const FanInHand& fan) {
  require_above_zero("frame of the fan", fan.frame, "mm");
  if (fan.thickness) require_above_zero("thickness of the fan", *fan.thickness, "mm");
  if (fan.hole_pitch) {
    require_above_zero("hole pitch of the fan", *fan.hole_pitch, "mm");
    require_that("hole pitch of the fan", *fan.hole_pitch, *fan.hole_pitch < fan.frame, "shorter than its frame", "mm");
  }
  if (fan.hole) require_above_zero("screw hole of the fan", *fan.hole, "mm");
  if (fan.opening) require_above_zero("air passage of the fan", *fan.opening, "mm");
  return with_measured(fan, fan.kind == data::FanKind::axial ? axial_drawing(fan) : blower_drawing(fan));
}
}  // namespace lumwright::workshop
