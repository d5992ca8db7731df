// A picture that is a file of its own: SVG on white paper, with its style, its title and the two lines before
// everything.
#pragma once
#include "report/chart/figure.hpp"
#include "report/markup.hpp"
#include <functional>
#include <string>

namespace lumwright::report {
inline constexpr double own_width = 700.0, own_head = 62.0;  // px; what the head takes
/// The whole document; `draw` draws into its root and says how tall it came out.
std::string own_picture(const std::function<double(Tag root)>& draw);
/// Title, what the picture shows, and the first words.
void write_own_head(chart::Figure& figure, const chart::About& about);
}  // namespace lumwright::report
