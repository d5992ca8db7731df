#include "report/answers.hpp"
#include "report/detail/standing.hpp"
#include "report/html/parts.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace lumwright::report::html {
namespace {
void write_values(Tag part, const Writing& w, bool of_tuning, const std::string& caption) {
  const plan::Assessment& a = w.assessment();
  if (std::none_of(a.assumed.begin(), a.assumed.end(),
                   [&](const model::Assumed& x) { return tuned(a, x) == of_tuning; }))
    return;
  const Tag values = part.add("div").set("class", "values");  // on a phone its rows are stacked
  const Tag body = table(values, caption, {"key, and why", "value", "may lie between", "source"});
  for (const model::Assumed& one : a.assumed) {
    if (tuned(a, one) != of_tuning) continue;
    const Tag row = body.add("tr");
    const Tag name = row.add("th").set("scope", "row");
    name.add("code", one.key);
    if (!one.why.empty()) name.add("span", " " + one.why).set("class", "faint");
    row.add("td", one.value).set("class", "number");
    row.add("td", one.band).set("class", one.band.empty() ? "faint" : "band-of");
    row.add("td", source_in_words(one.basis)).set("class", "faint source");
  }
}
/// Bytes that are not plain letters, digits or "-._" as per cent and two digits (RFC 3986, 2.1).
std::string address_of(std::string_view name) {
  std::string out;
  for (const char c : name) {
    const bool plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '_';
    out += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return out;
}
}  // namespace

void write_numbers(Tag folded, const Writing& w) {
  if (w.assessment().results.empty()) folded.add("p", "Nothing can be worked out yet.");
  const Tag groups = folded.add("div").set("class", "tables");
  for (const NumberGroup& group : number_groups(w.assessment(), w.style)) {
    const std::string_view caption = group.heading.empty() ? "What is wanted first" : std::string_view(group.heading);
    const Tag body =
        table(groups, caption, {"what", w.assessment().bands ? "value, and where eight samples of ten lie" : "value"});
    for (const Page::Row& row : group.rows) {
      const Tag line = body.add("tr");
      line.add("th", row.cells[0]).set("scope", "row");
      line.add("td", row.cells[1]).set("class", "number");
    }
  }
}
void write_assumed(Tag folded, const Writing& w) {
  write_values(folded, w, true, "Tuned: in place of what is written or usual");
  write_values(folded, w, false, "Usual values, because the description does not say");
  if (w.assessment().assumed.empty()) folded.add("p", "Nothing: the description says it all.");
}

void write_sources(Tag folded, const Writing& w) {
  std::map<std::string, std::set<std::string>> sources;
  for (const plan::Finding& f : w.assessment().checks)
    if (!f.basis.source.empty()) sources[source_in_words(f.basis)].insert(f.title.empty() ? f.id : f.title);
  for (const model::Assumed& one : w.assessment().assumed)
    if (!one.basis.source.empty()) sources[source_in_words(one.basis)].insert(one.key);
  for (const plan::Caution& one : w.assessment().cautions)
    if (!one.authority.empty()) sources[one.authority].insert(one.title);
  if (sources.empty()) return static_cast<void>(folded.add("p", "None: nothing could be judged."));
  const Tag list = folded.add("ul").set("class", "sources");
  for (const auto& [source, used] : sources) {
    const Tag item = list.add("li", source);
    item.add("span", fmt::format(" ({})", fmt::join(used, "; "))).set("class", "faint");
  }
}

void write_links(Tag parent, const std::vector<Beside>& beside) {
  const Tag list = parent.add("ul");
  for (const Beside& one : beside) {
    const Tag item = list.add("li");
    item.add("a", one.name).set("href", "./" + address_of(one.name));
    item.say(": " + one.what);
  }
}
void write_beside(Tag main, const std::vector<Beside>& beside) {
  if (!beside.empty()) write_links(section(main, "beside", "Beside this file"), beside);
}
}  // namespace lumwright::report::html
