// A season as a picture by itself: minutes expected and as they were, the heat that reached the water, the pack.
#pragma once
#include "report/page.hpp"
#include "tune/season_story.hpp"
#include <string>

namespace lumwright::report {
/// An SVG document with its own style.
std::string season_picture(const tune::SeasonStory& story, const description::Season& season, const TextStyle& style);
}  // namespace lumwright::report
