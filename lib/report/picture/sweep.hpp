// What a sweep shows, as a picture by itself: the chief answers along one key, or the minutes over two.
#pragma once
#include "plan/sweep.hpp"
#include "report/page.hpp"
#include <string>
#include <vector>

namespace lumwright::report {
/// An SVG document with its own style. Where the points were assessed in samples the bands lie behind the lines. Throws
/// std::logic_error where there is no point.
std::string sweep_picture(const std::string& name, const std::vector<plan::SweepAxis>& axes,
                          const std::vector<plan::SweepPoint>& points, const TextStyle& style);
}  // namespace lumwright::report
