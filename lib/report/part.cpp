#include "plan/assess.hpp"
#include "report/answers.hpp"
#include "report/judged.hpp"
#include "report/screen.hpp"
#include "report/text.hpp"
#include <algorithm>

namespace lumwright::report {
namespace {
std::string_view group_of(std::string_view id) { return id.substr(0, id.find('.')); }
bool is_of(const plan::Finding& f, std::string_view part) { return f.id == part || group_of(f.id) == part; }
/// The assessment with these checks and the numbers of their groups alone.
plan::Assessment part_of(const plan::Assessment& a, std::string_view part) {
  plan::Assessment out = a;
  std::erase_if(out.checks, [&](const plan::Finding& f) { return !is_of(f, part); });
  std::erase_if(out.results, [&](const model::Result& r) { return group_of(r.key) != group_of(part); });
  out.verdict = verdict_of_part(a, part);
  return out;
}
}  // namespace

std::vector<std::string> parts_of_checks() {
  std::vector<std::string> parts;
  for (const plan::CheckName& one : plan::check_names()) {
    const std::string group(group_of(one.id));
    if (std::find(parts.begin(), parts.end(), group) == parts.end()) parts.push_back(group);
  }
  for (const plan::CheckName& one : plan::check_names()) parts.emplace_back(one.id);
  return parts;
}
bool known_part(std::string_view part) {
  const auto parts = parts_of_checks();
  return std::find(parts.begin(), parts.end(), part) != parts.end();
}
plan::Verdict verdict_of_part(const plan::Assessment& assessment, std::string_view part) {
  plan::Verdict verdict = plan::Verdict::unknown;
  for (const plan::Finding& f : assessment.checks)
    if (is_of(f, part) && f.verdict != plan::Verdict::unknown &&
        (verdict == plan::Verdict::unknown || f.verdict > verdict))
      verdict = f.verdict;
  return verdict;
}
std::string part_report(const plan::Assessment& assessment, const TextStyle& style, std::string_view part) {
  plan::require_sound(assessment);
  const plan::Assessment of_part = part_of(assessment, part);
  Page page(style);
  page.paragraph(verdict_sentence(of_part), 0, ink_of(of_part.verdict));
  if (assessment.verdict == plan::Verdict::fail &&
      of_part.verdict != plan::Verdict::fail)  // "it will do" is of this part alone
    page.paragraph("As a whole, " + verdict_sentence(assessment), 0, ink_of(assessment.verdict));
  for (const plan::Finding* f : gravest_first(of_part)) write_check(page, assessment, *f);
  for (const auto& alike : open_questions(of_part)) write_open_question(page, alike);
  const auto groups = number_groups(of_part, style);
  for (const NumberGroup& group : groups) {
    page.heading(group.heading.empty() ? "Numbers" : group.heading);
    page.table(group.rows);
  }
  return page.finish();
}
}  // namespace lumwright::report
