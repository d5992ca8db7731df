// The holes that a fan needs, or why it must be measured before anything is drawn.
#pragma once
#include "data/basis.hpp"
#include "data/fans.hpp"
#include "workshop/plane.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::workshop {
/// What the user can say about the fan in hand. What is measured stands before the table.
struct FanInHand {
  data::FanKind kind;
  Length frame;  // side; of a blower the longer side
  std::optional<Length> thickness;
  bool measured;                     // the user has compared the table's sizes with the fan
  std::optional<Length> hole_pitch;  // axial: between holes along a side
  std::vector<PlanePoint> lugs;      // blower: from the corner of the body, outlet edge at the bottom
  std::optional<Length> hole;        // in frame or lug
  std::optional<Length> opening;     // bore of the air passage or of the inlet
};

struct FanPattern {
  std::string name;  // "60 mm frame", "50 mm x 15 mm blower"
  Length width;      // of the frame or body
  Length height;
  std::vector<PlanePoint> holes;  // from the lower left corner of the frame; of a blower with the outlet at the bottom
  Length hole;                    // in the fan
  std::vector<std::string> screws;
  std::optional<Length> opening;       // round cut-out over the air passage or inlet
  std::optional<Length> outlet_width;  // of a blower: cut-out with its margin
  std::optional<Length> outlet_height;
  std::string note;
  data::Basis basis{};
};

struct FanDrawing {
  std::optional<FanPattern> pattern;   // to draw from; nothing until the fan is measured
  std::optional<FanPattern> expected;  // what the table says, to compare the fan with
  std::string measure_first;           // what to measure and why; empty when the pattern may be drawn
};
/// Square frames whose pitch several sources agree on (40, 50, 60, 80, 92, 120, 140 mm) may be drawn from; any other
/// frame and every blower must be measured: no standard fixes them. A frame belongs to a row within 0.5 mm of its side.
/// With holes and opening all measured any fan may be drawn. Throws ModelError for a size not above zero or a pitch
/// that is not shorter than the frame.
FanDrawing fan_drawing(const FanInHand& fan);
}  // namespace lumwright::workshop
