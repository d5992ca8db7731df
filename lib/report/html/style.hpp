// The looks of the pages: colours, and what is drawn with them.
#pragma once
#include <span>
#include <string>
#include <string_view>

namespace lumwright::report::html {
/// A colour by its name, as "#1f5f99" each: on a light page, on a dark one, on paper.
struct Colour {
  const char *name, *light, *dark, *paper;
};
std::span<const Colour> colours();
extern const std::string_view chart_style;  // the classes that figures are drawn with
extern const std::string_view guide_style;  // of the guide alone, on a screen
/// All of it, for any page.
const std::string& style_sheet();
}  // namespace lumwright::report::html
