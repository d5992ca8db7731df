#include "report/screen.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/first_things.hpp"
#include "report/six_answers.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
namespace {
constexpr std::ptrdiff_t most_lines = 40;

/// How much of each section is told; less of it where the screen is full. What blocks an answer is told as long as it
/// can be, what would narrow one gives way to what to do.
struct Share {
  std::size_t to_do, questions;
  bool narrows, how, watches, remarks;
};
constexpr Share shares[] = {
    {5, 2, true, true, true, true},     {5, 2, true, false, true, true},    {5, 1, true, false, true, true},
    {4, 1, true, false, true, true},    {3, 1, true, false, true, true},    {5, 1, false, false, true, true},
    {4, 1, false, false, true, false},  {3, 1, false, false, true, false},  {3, 1, false, false, false, false},
    {2, 1, false, false, false, false}, {1, 1, false, false, false, false}, {2, 0, false, false, false, false},
    {1, 0, false, false, false, false}, {0, 0, false, false, false, false}};

void write_six(Page& page, const plan::Assessment& a) {
  std::vector<Page::Row> rows;
  for (const ChiefAnswer& one : six_answers(a, page.style())) {
    const bool bare = one.verdict == plan::Verdict::pass || one.verdict == plan::Verdict::unknown;
    rows.push_back({{std::string(one.title), one.figure, one.band.empty() ? "" : "(" + one.band + ")",
                     bare ? "" : plan::verdict_word(one.verdict)},
                    "",
                    bare ? Ink::plain : ink_of(one.verdict)});
  }
  const bool banded = std::any_of(rows.begin(), rows.end(), [](const Page::Row& row) { return !row.cells[2].empty(); });
  page.gap();
  page.table(rows);
  if (a.bands && banded)
    page.paragraph(brackets_mean(a), 2, Ink::faint);
  else if (!a.bands)
    page.paragraph("Spreads are left out (`--samples 0`).", 2, Ink::faint);
}
void write_do_first(Page& page, const plan::Assessment& a, const Share& share) {
  const OpenChecks open = open_checks(a);
  if (open.work.empty() && open.habits.empty()) return;
  page.heading("Do first");
  std::vector<const plan::Finding*> fails, watches;
  const auto groups = by_change(open.work);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const plan::Finding& f = *groups[i].front();
    if (i < share.to_do)
      page.hung(plan::verdict_word(f.verdict), titles_of(groups[i]) + ": " + what_to_do(groups[i], page.style()),
                ink_of(f.verdict));
    else
      for (const plan::Finding* one : groups[i]) (one->verdict == plan::Verdict::fail ? fails : watches).push_back(one);
  }
  if (!fails.empty()) page.hung("fail", titles_of(fails) + (share.to_do > 0 ? ", too" : ""), Ink::bad);
  if (!watches.empty() && share.watches) page.hung("watch", titles_of(watches, 6) + ", too", Ink::care);
  if (!open.habits.empty() && share.watches) page.hung("mind", titles_of(open.habits), Ink::care);
}
void write_settle_first(Page& page, const plan::Assessment& a, const Share& share) {
  const ToSettle settle = to_settle(a);
  const bool narrows = settle.measure != nullptr && share.narrows;
  const auto blocking = questions_to_write(settle, share.questions);
  if (blocking.empty() && !narrows) return;
  page.heading("Settle first");
  for (const std::string& line : blocking) page.hung("write", line);
  if (narrows) page.hung("measure", measure_words(settle, a, page.style(), share.how));
}
void write_hazards(Page& page, const plan::Assessment& a, std::string_view file) {
  if (a.cautions.empty()) return;
  page.heading("What can hurt");
  std::vector<std::string> here;
  std::size_t others = 0;
  for (const plan::Caution& one : a.cautions) {
    if (!one.brief.empty())
      page.paragraph(one.brief, 2, Ink::care);
    else if (one.general)
      ++others;
    else
      here.push_back(one.title);
  }
  std::string rest = here.empty() ? "" : fmt::format("Of this build, or not ruled out: {}. ", fmt::join(here, ", "));
  page.paragraph(
      fmt::format("{}These and {} of every lighting-up in full: lumwright check --full {}", rest, others, file), 2);
}
std::string screen_of(const plan::Assessment& a, const TextStyle& style, std::string_view file, const Share& share) {
  Page page(style);
  page.paragraph(verdict_sentence(a), 0, ink_of(a.verdict));
  if (!a.remarks.empty() && share.remarks) {
    page.hung("look", a.remarks.front().text, Ink::care);
    if (a.remarks.size() > 1) page.hung("", fmt::format("and {} more of the kind", a.remarks.size() - 1));
  } else if (!a.remarks.empty()) {
    page.hung("look",
              fmt::format("{} of the description to look at, see `check --full`",
                          a.remarks.size() == 1 ? "one value" : fmt::format("{} values", a.remarks.size())),
              Ink::care);
  }
  write_six(page, a);
  write_do_first(page, a, share);
  write_settle_first(page, a, share);
  write_hazards(page, a, file);
  const OpenChecks open = open_checks(a);
  if (open.work.empty()) return page.finish();
  page.gap();
  page.paragraph(fmt::format("Why, number by number: lumwright explain {} {}", open.work.front()->id, file), 0,
                 Ink::faint);
  return page.finish();
}
}  // namespace

std::string screen_report(const plan::Assessment& assessment, const TextStyle& style, std::string_view file) {
  plan::require_sound(assessment);
  std::string text;
  for (const Share& share : shares) {
    text = screen_of(assessment, style, file, share);
    if (std::count(text.begin(), text.end(), '\n') <= most_lines) break;
  }
  return text;
}
}  // namespace lumwright::report
