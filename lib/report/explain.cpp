#include "report/explain.hpp"
#include "description/stock_name.hpp"
#include "plan/assess.hpp"
#include "quantity/words.hpp"
#include "report/answers.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/standing.hpp"
#include "report/detail/wrap.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::report {
namespace {
[[noreturn]] void refuse(const plan::Assessment& assessment, std::string_view id) {
  std::vector<std::string_view> ids;
  for (const plan::Finding& f : assessment.checks) ids.push_back(f.id);
  std::string message = fmt::format("no check of this build is called `{}`", legible(id));
  if (const std::string_view near = nearest(id, ids); !near.empty())
    message += fmt::format("; did you mean `{}`?", near);
  message += "\nthe checks are:";
  for (const plan::Finding& f : assessment.checks) message += fmt::format("\n  {:<28} {}", f.id, f.title);
  throw UnknownCheck(message);
}
const plan::CheckName* name_of(const std::vector<plan::CheckName>& names, std::string_view id) {
  const auto found =
      std::find_if(names.begin(), names.end(), [id](const plan::CheckName& name) { return name.id == id; });
  return found == names.end() ? nullptr : &*found;
}
std::string origin(const plan::Term& term) {
  switch (term.origin) {
    case model::Origin::written:
      return fmt::format("you wrote {}", term.key);
    case model::Origin::assumed:
      return fmt::format("assumed for {}", term.key);
    case model::Origin::tuned:
      return fmt::format("tuned by a lighting-up: {}", term.key);
    case model::Origin::computed:
      return "worked out";
  }
  throw std::logic_error("a term without an origin");
}
/// " (14.29 mm)" behind a tube that its stockist sells in inches.
std::string by_other_rule(const plan::Term& term, UnitSystem units) {
  if (units != UnitSystem::as_written) return "";  // the value itself is then in what is asked for
  const bool tube =
      term.origin == model::Origin::written && (term.key == "adapter.tube.outside" || term.key == "adapter.tube.wall");
  return tube ? description::other_rule_of(term.value.quantity, term.value.unit, units) : "";
}
std::vector<Page::Row> rows(const plan::Assessment& a, const plan::Finding& f, const TextStyle& style) {
  const auto is_value = [&](const plan::Term& term) {  // it stands below once more
    return f.value && f.value->quantity.kind == term.value.quantity.kind &&
           f.value->quantity.si == term.value.quantity.si;
  };
  std::vector<Page::Row> out{{{"sign", "value", "meaning", "from"}, "", Ink::faint}};
  for (const plan::Term& term : f.terms) {
    const std::string value = in_page_figures(a, term.value, style, is_value(term) ? 3 : 4);
    out.push_back({{term.symbol, value + by_other_rule(term, style.units), term.meaning, origin(term)}, ""});
  }
  return out;
}
void write_lines(Page& page, std::string_view text) {  // a formula may have several
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    page.paragraph(text.substr(0, end), 2);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
}
void write_result(Page& page, const plan::Assessment& assessment, const plan::Finding& f) {
  page.heading("Result");
  page.gap();
  const auto value = [&] { return in_page_figures(assessment, *f.value, page.style()); };
  page.hung(plan::verdict_word(f.verdict), f.value ? value() : "no value", ink_of(f.verdict), Ink::strong);
  if (f.limit) page.hung("limit", limit_in_words(f, page.style()));
  if (f.holds) page.hung("", holds_in(f, assessment));
  if (!f.why.empty()) page.hung("why", f.why);
  if (!f.action.empty()) page.hung("do", action_of(f, page.style().front));
}
void write_source(Page& page, const plan::Finding& f) {
  if (f.basis.source.empty()) return;
  page.heading("Where the rule comes from");
  page.paragraph(f.basis.source, 2);
  if (f.basis.standing != data::Standing::unsaid)
    page.paragraph(fmt::format("Standing: {}.", standing_in_words(f.basis.standing)), 2);
}
void write_missing(Page& page, const plan::Finding& f) {
  if (f.missing.empty()) return;
  page.heading("To settle it, write in the description");
  for (const std::string& key : f.missing) page.paragraph(key, 2);
}
}  // namespace

std::string explain_report(const plan::Assessment& assessment, std::string_view id, const TextStyle& style) {
  const std::vector<plan::CheckName> names = plan::check_names();
  const plan::CheckName* name = name_of(names, id);
  const plan::Finding* finding = plan::find_check(assessment, id);
  if (finding == nullptr && name != nullptr)
    throw UnknownCheck(fmt::format("the check `{}` ({}) does not apply to this build", name->id, name->title));
  if (finding == nullptr) refuse(assessment, id);
  Page page(style);
  page.paragraph(fmt::format("{} [{}]", finding->title, finding->id), 0, Ink::strong);
  if (name != nullptr) page.paragraph(name->asks);
  if (!finding->formula.empty()) {
    page.heading("Formula");
    write_lines(page, finding->formula);
  }
  if (!finding->terms.empty()) {
    page.heading("The numbers in it");
    page.gap();
    page.table(rows(assessment, *finding, style));
  }
  write_result(page, assessment, *finding);
  write_missing(page, *finding);
  write_source(page, *finding);
  return page.finish();
}
}  // namespace lumwright::report
