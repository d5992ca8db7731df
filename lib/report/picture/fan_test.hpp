// A shop-made fan test as a picture by itself: the curve in its band, the readings, and what to read next.
#pragma once
#include "fan_test/fan_test.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// An SVG document with its own style. `next` is told where it is known.
std::string fan_test_picture(const fan_test::FanTest& test, const std::optional<fan_test::NextPlate>& next,
                             const TextStyle& style);
}  // namespace lumwright::report
