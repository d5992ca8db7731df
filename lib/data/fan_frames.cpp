#include "data/fan_frames.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<FanFrame>& fan_frames() {
  static const std::vector<FanFrame> all = [] {
    std::vector<FanFrame> found;
    for (const Row& row : rows("fan_frames", "axial"))
      found.push_back({row.quantity<Length>("frame"), row.quantity<Length>("pitch"), row.quantity<Length>("hole"),
                       row.quantity<Length>("opening"), row.texts("screws"), row.yes("firm"), row.text("note", ""),
                       row.basis()});
    return found;
  }();
  return all;
}

const FanFrameWithin& fan_frame_within() {
  static const FanFrameWithin within = [] {
    const Row row = section("fan_frames", "within");
    return FanFrameWithin{row.quantity<Length>("frame"), row.quantity<Length>("pitch"), row.quantity<Length>("hole"),
                          row.basis()};
  }();
  return within;
}

const std::vector<BlowerFrame>& blower_frames() {
  static const std::vector<BlowerFrame> all = [] {
    std::vector<BlowerFrame> found;
    for (const Row& row : rows("fan_frames", "blowers")) {
      std::vector<LugHole> holes;
      if (row.has("holes"))
        for (const auto& at : row.rows_of_numbers("holes")) holes.push_back({at.at(0) * mm, at.at(1) * mm});
      found.push_back({row.text("name"), row.quantity<Length>("width"), row.quantity<Length>("height"),
                       row.quantity<Length>("thickness"), holes, row.optional<Length>("hole"), row.text("screw"),
                       row.optional<Length>("inlet"), row.optional<Length>("outlet_width"),
                       row.optional<Length>("outlet_height"), row.basis()});
    }
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
