#include "report/day.hpp"
#include "data/first_words.hpp"
#include "report/detail/day_steps.hpp"
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
namespace {
std::vector<std::string> cautions_of(const plan::Assessment& a) {
  std::vector<std::string> out, titles;
  for (const plan::Caution& one : a.cautions) {
    const bool at_lighting =
        std::find(one.steps.begin(), one.steps.end(), std::string("light")) != one.steps.end() || one.near == "steam";
    if (!one.brief.empty())
      out.push_back(one.brief);
    else if (at_lighting)
      titles.push_back(one.title);
  }
  if (!titles.empty()) out.push_back(fmt::format("Read once before the first time: {}.", fmt::join(titles, ", ")));
  return out;
}
}  // namespace

DayCard day_card(const plan::Assessment& assessment, const model::Solved& solved, const TextStyle& wanted) {
  TextStyle style = wanted;
  style.page = solved.page;
  const DayOf day{assessment, solved, style};
  DayCard card{.name = assessment.build.empty() ? assessment.file : assessment.build,
               .weather = weather_of(day),
               .sections = {},
               .cautions = cautions_of(assessment)};
  for (DaySection section : {before_the_match(day), by_the_clock(day), about_the_pack(day), about_the_noise(day)})
    if (!section.rows.empty()) card.sections.push_back(std::move(section));
  return card;
}

std::string day_text(const DayCard& card, const TextStyle& style) {
  Page page(style);
  page.paragraph(fmt::format("Card of the day: {}", card.name), 0, Ink::strong);
  page.paragraph(card.weather, 0, Ink::faint);
  for (const DaySection& section : card.sections) {
    page.heading(section.heading);
    for (const auto& [what, text] : section.rows) page.hung(what, text);
  }
  page.heading("What can hurt");
  for (const std::string& one : card.cautions) page.paragraph(one, 2, Ink::care);
  return page.finish();
}
}  // namespace lumwright::report
