#include "guide/table.hpp"

namespace lumwright::cli {
GuideTable::GuideTable(report::Tag parent, const std::string& name, std::vector<std::string> headings)
    : headings_(std::move(headings)), body_(parent), row_(parent) {
  const report::Tag box = parent.add("div").set("class", "scroll rows").set("role", "region").set("tabindex", "0");
  box.set("aria-label", "table: " + name);
  const report::Tag table = box.add("table");
  const report::Tag head = table.add("thead").add("tr");
  for (const std::string& heading : headings_) head.add("th", heading).set("scope", "col");
  body_ = table.add("tbody");
}
void GuideTable::begin_row() {
  row_ = body_.add("tr");
  next_ = 0;
}
report::Tag GuideTable::cell() {
  const std::size_t at = next_++;
  if (at == 0) return row_.add("th").set("scope", "row");
  return row_.add("td").set("data-heading", headings_.at(at));
}
}  // namespace lumwright::cli
