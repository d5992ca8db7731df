#include "report/interview.hpp"
#include "report/answers.hpp"
#include "report/detail/bands.hpp"
#include "report/judged.hpp"
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::report {
namespace {
std::string joined_titles(const std::vector<const plan::Finding*>& alike) {
  std::string out;
  for (const plan::Finding* one : alike) out += (out.empty() ? "" : "; ") + one->title;
  return out;
}
}  // namespace

std::string first_answers(const plan::Assessment& assessment, const TextStyle& style) {
  Page page(style);
  page.paragraph(verdict_sentence(assessment), 0, ink_of(assessment.verdict));
  write_answers(page, assessment);
  const auto groups = open_questions(assessment);
  if (!groups.empty()) page.heading("Still missing");
  for (const std::vector<const plan::Finding*>& alike : groups) {
    if (alike.front()->missing.empty()) continue;
    page.gap();
    page.hung("for", joined_titles(alike), Ink::faint, Ink::strong);
    page.hung("write", fmt::format("{}", fmt::join(alike.front()->missing, ", ")));
  }
  write_bands(page, assessment);
  return page.finish();
}
}  // namespace lumwright::report
