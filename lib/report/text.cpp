#include "report/text.hpp"
#include "report/answers.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/moves.hpp"
#include "report/detail/standing.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
namespace {
std::string title_of(const plan::Finding& f) { return f.title.empty() ? f.id : fmt::format("{} [{}]", f.title, f.id); }

void write_slips(Page& page, const plan::Assessment& a) {
  if (a.remarks.empty()) return;
  page.heading("Look at these first");
  for (const plan::Remark& remark : a.remarks) page.hung("look", remark.text);
}
}  // namespace

void write_check(Page& page, const plan::Assessment& a, const plan::Finding& f) {
  page.gap();
  page.hung(plan::verdict_word(f.verdict), title_of(f), ink_of(f.verdict), Ink::strong);
  std::string numbers = f.value || f.limit ? against_limit(f, a, page.style()) : "";
  if (f.holds) numbers += (numbers.empty() ? "" : "; ") + holds_in(f, a);
  if (!numbers.empty()) page.hung("", numbers);
  if (!f.why.empty()) page.hung("why", f.why);
  if (f.move) {  // tried: no other advice beside it
    page.hung("do", move_text(f, page.style()));
    page.hung("", move_settings(f, page.style().front));
  } else if (!f.action.empty()) {
    page.hung("do", action_of(f, page.style().front));
  }
  if (!f.move && f.moves_tried) page.hung("tried", "no change by itself of those that were tried clears it");
  if (!f.basis.source.empty()) page.hung("source", source_in_words(f.basis), Ink::faint, Ink::faint);
}

void write_open_question(Page& page, const std::vector<const plan::Finding*>& alike) {
  page.gap();
  const plan::Finding& f = *alike.front();
  for (const plan::Finding* one : alike)
    page.hung(one == &f ? plan::verdict_word(f.verdict) : "", title_of(*one), ink_of(f.verdict), Ink::strong);
  if (!f.why.empty()) page.hung("why", f.why);
  if (!f.action.empty()) page.hung("do", action_of(f, page.style().front));
  if (!f.missing.empty()) page.hung("write", fmt::format("{}", fmt::join(f.missing, ", ")));
}

namespace {
void write_checks(Page& page, const plan::Assessment& a) {
  const std::vector<const plan::Finding*> judged = gravest_first(a);
  if (judged.empty()) return;
  page.heading(judged.front()->verdict == plan::Verdict::pass ? "Checks" : "Checks, the gravest first");
  for (const plan::Finding* f : judged) write_check(page, a, *f);
}
void write_unknown(Page& page, const plan::Assessment& a) {
  const auto groups = open_questions(a);
  if (groups.empty()) return;
  page.heading("Not known yet");
  for (const std::vector<const plan::Finding*>& alike : groups) write_open_question(page, alike);
}
void write_inputs(Page& page, const plan::Assessment& a, bool of_tuning, const std::string& heading) {
  std::vector<Page::Row> rows{{{"key, and why", "value", "may lie between"}, "", Ink::faint}};
  for (const model::Assumed& one : a.assumed)
    if (tuned(a, one) == of_tuning) rows.push_back({{one.key, one.value, one.band}, one.why});
  if (rows.size() == 1) return;
  page.heading(heading);
  page.gap();
  page.table(rows);
}
void write_assumed(Page& page, const plan::Assessment& a) {
  write_inputs(page, a, true, "Tuned: from " + a.tuned + ", in place of what is written or usual");
  write_inputs(page, a, false, "Assumed, because the description does not say");
}
void write_next_step(Page& page, const plan::Assessment& a) {
  if (a.checks.empty()) return;
  const auto worst = std::min_element(a.checks.begin(), a.checks.end(), graver);
  page.gap();
  page.paragraph(fmt::format("How a check came about, number by number: lumwright explain {} FILE", worst->id), 0,
                 Ink::faint);
}
}  // namespace

void write_cautions(Page& page, const std::vector<plan::Caution>& cautions) {
  if (cautions.empty()) return;
  page.heading("Cautions that apply here");
  for (const plan::Caution& one : cautions) {
    page.gap();
    page.paragraph(one.title, 2, Ink::strong);
    page.paragraph(one.text, 4);
    if (!one.authority.empty()) page.paragraph("Authority: " + one.authority, 4, Ink::faint);
  }
}

std::string text_report(const plan::Assessment& assessment, const TextStyle& style) {
  plan::require_sound(assessment);
  Page page(style);
  page.paragraph(verdict_sentence(assessment), 0, ink_of(assessment.verdict));
  write_slips(page, assessment);
  write_answers(page, assessment);
  write_meaning_of_bands(page, assessment);
  write_bands(page, assessment);
  write_checks(page, assessment);
  write_unknown(page, assessment);
  write_numbers(page, assessment);
  write_assumed(page, assessment);
  write_cautions(page, assessment.cautions);
  write_next_step(page, assessment);
  return page.finish();
}
}  // namespace lumwright::report
