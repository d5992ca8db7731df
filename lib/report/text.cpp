#include "report/text.hpp"
#include "report/answers.hpp"
#include "report/standing.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright {
namespace {
std::string counted(std::size_t n, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", n, n == 1 ? one : many);
}
std::size_t count(const Assessment& a, Verdict verdict) {
  return static_cast<std::size_t>(
      std::count_if(a.checks.begin(), a.checks.end(), [&](const Finding& f) { return f.verdict == verdict; }));
}
std::string verdict_sentence(const Assessment& a) {
  const std::size_t fails = count(a, Verdict::fail), watches = count(a, Verdict::watch),
                    unknown = count(a, Verdict::unknown);
  const std::size_t judged = a.checks.size() - unknown;
  std::string text = (a.build.empty() ? a.file : a.build) + ": ";
  if (judged == 0) return text + "nothing can be judged yet. The description says too little.";
  const std::string will_do = unknown > 0 ? "what can be judged will do" : "it will do";
  if (fails > 0) {
    text +=
        fmt::format("do not build it like this. {} out of {}.", counted(fails, "check fails", "checks fail"), judged);
    if (watches > 0) text += fmt::format(" {} to watch.", counted(watches, "more is", "more are"));
  } else if (watches > 0) {
    text += fmt::format("{}, with {}.", will_do, counted(watches, "point to watch", "points to watch"));
  } else {
    text += fmt::format("{}. {}.", will_do,
                        judged == 1 ? "The one check passes" : fmt::format("All {} checks pass", judged));
  }
  if (unknown > 0) text += fmt::format(" {} not be judged.", counted(unknown, "check could", "checks could"));
  return text;
}

std::string title_of(const Finding& f) { return f.title.empty() ? f.id : fmt::format("{} [{}]", f.title, f.id); }

std::string against_limit(const Finding& f, const TextStyle& style) {
  const std::string value = f.value ? show(*f.value, style) : "";
  if (!f.limit) return value;
  return fmt::format("{}{}{} {}", value, value.empty() ? "" : ", ", bound_words(f.bound), show(*f.limit, style));
}
void write_check(Page& page, const Finding& f) {
  page.gap();
  page.hung(verdict_word(f.verdict), title_of(f), ink_of(f.verdict), Ink::strong);
  if (f.value || f.limit) page.hung("", against_limit(f, page.style()));
  if (!f.why.empty()) page.hung("why", f.why);
  if (!f.action.empty()) page.hung("do", f.action);
  if (!f.source.empty()) page.hung("source", source_in_words(f.source, f.standing), Ink::faint, Ink::faint);
}
int gravity(Verdict verdict) { return verdict == Verdict::fail ? 0 : verdict == Verdict::watch ? 1 : 2; }

void write_checks(Page& page, const Assessment& a) {
  std::vector<const Finding*> judged;
  for (const Finding& f : a.checks)
    if (f.verdict != Verdict::unknown) judged.push_back(&f);
  std::stable_sort(judged.begin(), judged.end(),
                   [](const Finding* x, const Finding* y) { return gravity(x->verdict) < gravity(y->verdict); });
  if (judged.empty()) return;
  page.heading(judged.front()->verdict == Verdict::pass ? "Checks" : "Checks, the gravest first");
  for (const Finding* f : judged) write_check(page, *f);
}
std::string listed(const std::vector<std::string>& keys) {
  std::string text;
  for (const std::string& key : keys) text += (text.empty() ? "" : ", ") + key;
  return text;
}
bool open_alike(const Finding& x, const Finding& y) {
  return x.verdict == y.verdict && x.missing == y.missing && x.why == y.why && x.action == y.action;
}
/// Checks that wait for the same keys are told together.
void write_unknown(Page& page, const Assessment& a) {
  if (count(a, Verdict::unknown) == 0) return;
  page.heading("Not known yet");
  for (auto f = a.checks.begin(); f != a.checks.end(); ++f) {
    const auto like_this = [&](const Finding& other) { return open_alike(*f, other); };
    if (f->verdict != Verdict::unknown || std::any_of(a.checks.begin(), f, like_this)) continue;
    page.gap();
    for (auto other = f; other != a.checks.end(); ++other)
      if (like_this(*other))
        page.hung(other == f ? verdict_word(f->verdict) : "", title_of(*other), ink_of(f->verdict), Ink::strong);
    if (!f->why.empty()) page.hung("why", f->why);
    if (!f->action.empty()) page.hung("do", f->action);
    if (!f->missing.empty()) page.hung("write", listed(f->missing));
  }
}
bool tuned(const Assessment& a, const Assumed& one) { return !a.tuned.empty() && one.source == a.tuned; }
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
void write_cautions(Page& page, const Assessment& a) {
  if (a.cautions.empty()) return;
  page.heading("Cautions that apply here");
  for (const Caution& one : a.cautions) {
    page.gap();
    page.paragraph(one.title, 2, Ink::strong);
    page.paragraph(one.text, 4);
    if (!one.authority.empty()) page.paragraph("Authority: " + one.authority, 4, Ink::faint);
  }
}
void write_next_step(Page& page, const Assessment& a) {
  if (a.checks.empty()) return;
  const auto worst = std::min_element(a.checks.begin(), a.checks.end(), [](const Finding& x, const Finding& y) {
    return gravity(x.verdict) < gravity(y.verdict);
  });
  page.gap();
  page.paragraph(fmt::format("How a check came about, number by number: lumwright explain {} FILE", worst->id), 0,
                 Ink::faint);
}
}  // namespace

std::string text_report(const Assessment& assessment, const TextStyle& style) {
  Page page(style);
  page.paragraph(verdict_sentence(assessment), 0, ink_of(assessment.verdict));
  write_answers(page, assessment);
  write_checks(page, assessment);
  write_unknown(page, assessment);
  write_numbers(page, assessment);
  write_assumed(page, assessment);
  write_cautions(page, assessment);
  write_next_step(page, assessment);
  return page.finish();
}
}  // namespace lumwright
