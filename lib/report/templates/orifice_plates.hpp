// The orifice plates of a test box at true size, and the box itself.
#pragma once
#include "draught/test_box.hpp"
#include "drawing/drawing.hpp"
#include "report/named_text.hpp"
#include <vector>

namespace lumwright::report {
/// One square plate for each of the box's, with its holes to bore, and a blank one. Throws ModelError as `pdf` does.
std::vector<drawing::View> plate_views(const draught::TestBox& box);
/// "plates.pdf" and "plates-1.svg"... for that paper: the box with its sizes on the first sheet.
std::vector<NamedText> plate_files(const draught::TestBox& box, const draught::ExpectedFan& fan,
                                   const std::string& paper, const drawing::PrintOptions& print);
}  // namespace lumwright::report
