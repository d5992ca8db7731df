#include "report/held.hpp"
#include "report/html/parts.hpp"

namespace lumwright::report::html {
namespace {
void write_held_line(Tag body, const HeldLine& line) {
  const Tag row = body.add("tr");
  row.add("th", tied(line.what)).set("scope", "row");
  const Tag where = row.add("td");
  where.say(tied(line.where) + ": ");
  where.add("span", line.source).set("class", "faint");
  row.add("td", tied(line.measured)).set("class", "as-measured");
  row.add("td", tied(line.ours)).set("class", "as-reckoned");
  row.add("td", tied(line.apart));
}
}  // namespace

void write_held(Tag folded, const Writing& w) {
  folded.add("p", held_summary());
  const Tag values = folded.add("div").set("class", "values");  // on a phone its rows are stacked
  const std::vector<HeldLine> lines = held_lines();
  std::string part;
  Tag body = values;
  for (const HeldLine& line : lines) {
    if (line.part != part) body = table(values, line.part, {"what was measured", "where", "measured", "ours", "apart"});
    part = line.part;
    write_held_line(body, line);
  }
  folded.add("h4", "What nobody has published");
  const Tag list = folded.add("ul");
  for (const NeverLine& line : never_lines(w.style.front)) {
    const Tag item = list.add("li", line.what + ". ");
    item.add("span", "Meanwhile: " + line.meanwhile + ".").set("class", "faint");
    item.say(" To close it in an afternoon: " + line.afternoon + ".");
  }
}
}  // namespace lumwright::report::html
