#include "report/html/html.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include "report/html/parts.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace html {
namespace {
struct Icon {
  plan::Verdict verdict;
  const char* shape;  // a disc, a triangle, an octagon, a diamond
  const char* cut;
};
constexpr Icon icons[] = {
    {plan::Verdict::pass, "M12 1A11 11 0 1 1 12 23A11 11 0 1 1 12 1Z", "M7 12.5L10.7 16L17 8.5"},
    {plan::Verdict::watch, "M12 1.5L23.5 22H0.5Z", "M12 8.5V14.5M12 18.2V18.3"},
    {plan::Verdict::fail, "M7.5 1H16.5L23 7.5V16.5L16.5 23H7.5L1 16.5V7.5Z", "M8 8L16 16M16 8L8 16"},
    {plan::Verdict::unknown, "M12 0.5L23.5 12L12 23.5L0.5 12Z",
     "M9.4 9.6C9.4 6.4 14.8 6.4 14.8 9.6C14.8 12 12 11.8 12 14.2M12 17.4V17.5"}};
struct Part {
  const char *id, *words;
};
constexpr Part contents[] = {{"pictures", "Pictures"}, {"cautions", "Cautions"},       {"checks", "Checks"},
                             {"more", "More pictures"}, {"numbers", "Numbers"},         {"assumed", "Assumed"},
                             {"sources", "Sources"},    {"description", "Description"}};

void write_contents(Tag body) {
  const Tag list = body.add("nav").set("aria-label", "Contents").add("ul");
  for (const Part& part : contents) list.add("li").add("a", part.words).set("href", std::string("#") + part.id);
}
}  // namespace

std::string tied(std::string_view text) {
  std::string out;
  const std::vector<std::string_view> all = words(text);
  for (std::size_t i = 0; i < all.size(); ++i) {
    std::string_view unit = all[i];
    while (!unit.empty() && std::string_view(".,;:)").find(unit.back()) != std::string_view::npos)
      unit.remove_suffix(1);
    const bool behind_number = i > 0 && all[i - 1].back() >= '0' && all[i - 1].back() <= '9';
    if (i > 0) out += behind_number && find_unit(unit) != nullptr ? "\u00A0" : " ";
    out += all[i];
  }
  return out;
}
void badge(Tag parent, plan::Verdict verdict, std::string_view word) {
  const Icon& icon =
      *std::find_if(std::begin(icons), std::end(icons), [&](const Icon& i) { return i.verdict == verdict; });
  const Tag mark = parent.add("span").set("class", std::string("badge ") + plan::verdict_word(verdict));
  const Tag svg = mark.add("svg").set("class", "icon").set("viewBox", "0 0 24 24").set("aria-hidden", "true");
  svg.add("path").set("d", icon.shape);
  svg.add("path").set("class", "cut").set("d", icon.cut);
  mark.add("span", word.empty() ? plan::verdict_word(verdict) : word);
}
Tag section(Tag parent, const char* id, std::string_view heading) {
  const Tag made = parent.add("section").set("aria-labelledby", id);
  made.add("h2", heading).set("id", id);
  return made;
}
Tag table(Tag parent, std::string_view caption, const std::vector<std::string_view>& headings) {
  const Tag box = parent.add("div").set("class", "scroll").set("role", "region").set("tabindex", "0");
  box.set("aria-label", "table: " + std::string(caption));
  const Tag table = box.add("table");
  table.add("caption", caption);
  const Tag row = table.add("thead").add("tr");
  for (const std::string_view heading : headings) row.add("th", heading).set("scope", "col");
  return table.add("tbody");
}
void write_cautions(Tag parent, const std::vector<const plan::Caution*>& cautions, bool with_authority) {
  if (cautions.empty()) return;
  const Tag list = parent.add("ul").set("class", "cautions");
  for (const plan::Caution* one : cautions) {
    const Tag item = list.add("li").set("class", one->brief.empty() ? "caution" : "caution kills");
    item.add("h3", one->title);
    item.add("p", one->text);
    if (with_authority && !one->authority.empty())
      item.add("p", "Authority: " + one->authority).set("class", "small-print");
  }
}
void write_cautions(Tag main, const Writing& w) {
  std::vector<const plan::Caution*> all;
  for (const plan::Caution& one : w.assessment().cautions) all.push_back(&one);
  // what can kill comes first, then what this build brings with it, then what every lighting-up does
  const auto rank = [](const plan::Caution* c) { return !c->brief.empty() ? 0 : c->general ? 2 : 1; };
  std::stable_sort(all.begin(), all.end(),
                   [&](const plan::Caution* x, const plan::Caution* y) { return rank(x) < rank(y); });
  const Tag part = section(main, "cautions", "Cautions that apply here, in full");
  if (all.empty()) part.add("p", "None is known to apply.");
  write_cautions(part, all, false);  // the sources stand in the appendix
}
void write_head(Tag html, const std::string& title) {
  const Tag head = html.add("head");
  head.add("meta").set("charset", "utf-8");
  head.add("meta")
      .set("http-equiv", "Content-Security-Policy")
      .set("content",
           "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'");
  head.add("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1");
  head.add("meta").set("name", "referrer").set("content", "no-referrer");
  head.add("meta").set("name", "generator").set("content", "lumwright");
  head.add("title", title);
  head.add_style(style_sheet());
}
void write_footer(Tag body, std::string_view last) {
  const Tag footer = body.add("footer").set("class", "small-print");
  footer.add("p",
             "Lumwright judges draught, time, supply and fit; it never judges a boiler safe. For boiler, gas, fire and "
             "electricity the codes of your place and the people licensed for that work come first, and the makers' "
             "instructions for what you use.");
  footer.add("p", last);
}
}  // namespace html

std::string html_report(const plan::ReportData& data, const TextStyle& style, const std::vector<Beside>& beside) {
  const html::Writing w{data, style};
  const Markup page("html");
  page.root().set("lang", "en");
  const plan::Assessment& a = data.assessment;
  html::write_head(page.root(),
                   fmt::format("{}: {}", a.build.empty() ? a.file : a.build, plan::verdict_word(a.verdict)));
  const Tag body = page.root().add("body").set("class", "report");
  html::write_verdict(body, w);
  html::write_contents(body);
  const Tag main = body.add("main");
  html::write_chief_pictures(main, w);
  html::write_cautions(main, w);
  html::write_appendix(main, w, beside);
  html::write_footer(body,
                     "Every figure is worked out from the description and from what is assumed. A measured "
                     "lighting-up is worth more than any of them.");
  return page.html();
}
}  // namespace lumwright::report
