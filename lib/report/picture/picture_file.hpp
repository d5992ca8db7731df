// A picture as a file of its own, to stand where there is no page round it.
#pragma once
#include "report/picture/picture.hpp"
#include <string>

namespace lumwright::report {
/// SVG with its looks in it, in the colours of a light page, as wide as given. The picture must be one that is drawn.
std::string picture_file(const Picture& picture, double width);
}  // namespace lumwright::report
