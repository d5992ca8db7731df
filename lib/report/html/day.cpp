#include "report/day.hpp"
#include "data/first_words.hpp"
#include "report/html/parts.hpp"

namespace lumwright::report {
std::string day_page(const DayCard& card) {
  Markup page("html");
  const Tag root = page.root().set("lang", "en");
  html::write_head(root, "Card of the day: " + card.name);
  const Tag body = root.add("body").set("class", "report");
  const Tag header = body.add("header");
  for (const std::string& words : data::first_words()) header.add("p", words).set("class", "first-words");
  header.add("h1", "Card of the day: " + card.name);
  header.add("p", html::tied(card.weather)).set("class", "small-print");
  const Tag main = body.add("main");
  int number = 0;
  for (const DaySection& section : card.sections) {
    const std::string id = "part-" + std::to_string(++number);
    const Tag part = html::section(main, id.c_str(), section.heading);
    const Tag rows = part.add("div").set("class", "scroll").add("table").add("tbody");
    for (const auto& [what, text] : section.rows) {
      const Tag row = rows.add("tr");
      row.add("th", html::tied(what)).set("scope", "row");
      row.add("td", html::tied(text));
    }
  }
  const Tag hurts = html::section(main, "cautions", "What can hurt").add("ul");
  for (const std::string& one : card.cautions) hurts.add("li", one);
  html::write_footer(body, "Made for one day: print it anew when the weather, the fuel or the pack is another.");
  return page.html();
}
}  // namespace lumwright::report
