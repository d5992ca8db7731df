// The card of the day: what to put in, when to do what, what the pack still has, and what can hurt.
#pragma once
#include "model/solved.hpp"
#include "report/page.hpp"
#include <string>
#include <utility>
#include <vector>

namespace lumwright::report {
struct DaySection {
  std::string heading;
  std::vector<std::pair<std::string, std::string>> rows;  // what or when, and what of it
};
struct DayCard {
  std::string name, weather;
  std::vector<DaySection> sections;
  std::vector<std::string> cautions;  // what can kill, in full; the others of lighting up by their titles, last
};
/// Of a build solved for the day's weather. `style.page` is taken from the build.
DayCard day_card(const plan::Assessment& assessment, const model::Solved& solved, const TextStyle& style);
std::string day_text(const DayCard& card, const TextStyle& style);
/// One sheet of A4, self-contained, as html_report is.
std::string day_page(const DayCard& card);
}  // namespace lumwright::report
