// Where the screws of small fans sit, and which of these sizes may be trusted.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::data {
/// A square frame with four holes on a square.
struct FanFrame {
  Length frame;
  Length pitch;  // between holes along a side
  Length hole;
  Length opening;                   // bore of the air passage and usual cut-out
  std::vector<std::string> screws;  // threads; the fuller fit first
  bool firm;                        // may be drawn from; otherwise measure the fan in hand first
  std::string note;                 // may be empty
  Basis basis{};
};
/// Smallest first; a size on which sources disagree has a row for each.
const std::vector<FanFrame>& fan_frames();

/// How far a fan in hand may stray from its row, either way.
struct FanFrameWithin {
  Length frame;
  Length pitch;
  Length hole;
  Basis basis{};
};
const FanFrameWithin& fan_frame_within();

struct LugHole {
  Length x;  // from the corner of the body, outlet edge at the bottom
  Length y;
};
struct BlowerFrame {
  std::string name;
  Length width;
  Length height;
  Length thickness;
  std::vector<LugHole> holes;  // empty when no source gives them
  std::optional<Length> hole;
  std::string screw;
  std::optional<Length> inlet;  // bore of the inlet
  std::optional<Length> outlet_width;
  std::optional<Length> outlet_height;
  Basis basis{};
};
/// Every one must be measured before it is drawn.
const std::vector<BlowerFrame>& blower_frames();
}  // namespace lumwright::data
