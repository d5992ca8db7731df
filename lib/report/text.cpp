#include "report/text.hpp"
#include "report/answers.hpp"
#include "report/bands.hpp"
#include "report/judged.hpp"
#include "report/moves.hpp"
#include "report/standing.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright {
namespace {
std::string title_of(const Finding& f) { return f.title.empty() ? f.id : fmt::format("{} [{}]", f.title, f.id); }

void write_slips(Page& page, const Assessment& a) {
  if (a.remarks.empty()) return;
  page.heading("Look at these first");
  for (const Remark& remark : a.remarks) page.hung("look", remark.text);
}
}  // namespace

void write_check(Page& page, const Assessment& a, const Finding& f) {
  page.gap();
  page.hung(verdict_word(f.verdict), title_of(f), ink_of(f.verdict), Ink::strong);
  std::string numbers = f.value || f.limit ? against_limit(f, a, page.style()) : "";
  if (f.holds) numbers += (numbers.empty() ? "" : "; ") + holds_in(f, a);
  if (!numbers.empty()) page.hung("", numbers);
  if (!f.why.empty()) page.hung("why", f.why);
  if (!f.action.empty()) page.hung("do", f.action);
  if (f.move) page.hung("tried", move_text(f, page.style()));
  if (f.move) page.hung("", move_settings(f));
  if (!f.move && f.moves_tried) page.hung("tried", "no change by itself of those that were tried clears it");
  if (!f.basis.source.empty()) page.hung("source", source_in_words(f.basis), Ink::faint, Ink::faint);
}

void write_open_question(Page& page, const std::vector<const Finding*>& alike) {
  page.gap();
  const Finding& f = *alike.front();
  for (const Finding* one : alike)
    page.hung(one == &f ? verdict_word(f.verdict) : "", title_of(*one), ink_of(f.verdict), Ink::strong);
  if (!f.why.empty()) page.hung("why", f.why);
  if (!f.action.empty()) page.hung("do", f.action);
  if (!f.missing.empty()) page.hung("write", fmt::format("{}", fmt::join(f.missing, ", ")));
}

namespace {
void write_checks(Page& page, const Assessment& a) {
  const std::vector<const Finding*> judged = gravest_first(a);
  if (judged.empty()) return;
  page.heading(judged.front()->verdict == Verdict::pass ? "Checks" : "Checks, the gravest first");
  for (const Finding* f : judged) write_check(page, a, *f);
}
void write_unknown(Page& page, const Assessment& a) {
  const auto groups = open_questions(a);
  if (groups.empty()) return;
  page.heading("Not known yet");
  for (const std::vector<const Finding*>& alike : groups) write_open_question(page, alike);
}
void write_inputs(Page& page, const Assessment& a, bool of_tuning, const std::string& heading) {
  std::vector<Page::Row> rows{{{"key, and why", "value", "may lie between"}, "", Ink::faint}};
  for (const Assumed& one : a.assumed)
    if (tuned(a, one) == of_tuning) rows.push_back({{one.key, one.value, one.band}, one.why});
  if (rows.size() == 1) return;
  page.heading(heading);
  page.gap();
  page.table(rows);
}
void write_assumed(Page& page, const Assessment& a) {
  write_inputs(page, a, true, "Tuned: from " + a.tuned + ", in place of what is written or usual");
  write_inputs(page, a, false, "Assumed, because the description does not say");
}
void write_next_step(Page& page, const Assessment& a) {
  if (a.checks.empty()) return;
  const auto worst = std::min_element(a.checks.begin(), a.checks.end(), graver);
  page.gap();
  page.paragraph(fmt::format("How a check came about, number by number: lumwright explain {} FILE", worst->id), 0,
                 Ink::faint);
}
}  // namespace

void write_cautions(Page& page, const std::vector<Caution>& cautions) {
  if (cautions.empty()) return;
  page.heading("Cautions that apply here");
  for (const Caution& one : cautions) {
    page.gap();
    page.paragraph(one.title, 2, Ink::strong);
    page.paragraph(one.text, 4);
    if (!one.authority.empty()) page.paragraph("Authority: " + one.authority, 4, Ink::faint);
  }
}

std::string text_report(const Assessment& assessment, const TextStyle& style) {
  require_sound(assessment);
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
}  // namespace lumwright
