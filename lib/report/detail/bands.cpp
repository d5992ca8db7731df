#include "report/detail/bands.hpp"
#include "plan/figures.hpp"
#include "report/answers.hpp"
#include "report/detail/standing.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
std::string share_of_spread(double share) { return fmt::format("{} %", std::lround(100.0 * share)); }
std::string key_with_meaning(const plan::Widening& one) {
  return one.meaning.empty() ? one.key : fmt::format("{} ({})", one.meaning, one.key);
}
void write_widest(Page& page, const plan::Sensitivity& sensitivity) {
  std::vector<Page::Row> rows{{{"share", "what is not known for sure", "value", "may lie between"}, "", Ink::faint}};
  for (const plan::Widening& one : sensitivity.widest)
    rows.push_back({{share_of_spread(one.share), key_with_meaning(one), show(one.value, page.style()),
                     show_span(one.low, one.high, one.value, page.style())},
                    ""});
  page.table(rows);
}
void write_narrowing(Page& page, const plan::Narrowing& one, const model::Result* answer) {
  page.gap();
  page.hung("measure", fmt::format("{} to within {}", one.what, one.within), Ink::faint, Ink::strong);
  page.hung("", what_it_leaves(one, answer, page.style()));
  page.hung("how", description::with_ways(one.how, page.style().front));
  page.hung("with", one.needs == "nothing" ? one.tool : fmt::format("{}; it needs {}", one.tool, one.needs));
  page.hung("write", description::with_ways(one.write, page.style().front));
  page.hung("source", source_in_words(one.basis), Ink::faint, Ink::faint);
}
std::string hang_together(const plan::Sensitivity& sensitivity) {
  std::string text;
  for (const plan::Widening& one : sensitivity.widest)
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", key_with_meaning(one), share_of_spread(one.share));
  return text;
}
std::string span_now(const model::Result& result, const TextStyle& style) {
  return result.low && result.high ? show_span(*result.low, *result.high, std::get<model::Measure>(result.value), style,
                                               plan::figures_of(result, style.units))
                                   : "";
}
/// The band about the answer, as wide as a measurement would leave it.
std::string span_then(const model::Result& result, double left, const TextStyle& style) {
  const model::Measure& low = *result.low;
  const double from = low.quantity.si, to = result.high->quantity.si;
  const double about = std::clamp(std::get<model::Measure>(result.value).quantity.si, from, to);
  const auto edge = [&](double si) { return model::Measure{AnyQuantity(si, low.quantity.kind), low.unit}; };
  return show_span(edge(about - left * (about - from)), edge(about + left * (to - about)),
                   std::get<model::Measure>(result.value), style, plan::figures_of(result, style.units));
}
bool before_cutting(const plan::Narrowing& one) { return one.needs != "the fan unit"; }
}  // namespace

std::string what_it_leaves(const plan::Narrowing& one, const model::Result* answer, const TextStyle& style) {
  if (answer != nullptr && answer->low && answer->high)
    return fmt::format("narrows it to about {}, from {}", span_then(*answer, one.left, style),
                       span_now(*answer, style));
  return fmt::format("narrows it to {} % of its width", std::lround(100.0 * one.left));
}

std::vector<const plan::Narrowing*> worth_telling(const plan::Sensitivity& sensitivity) {
  std::vector<const plan::Narrowing*> told;
  if (sensitivity.narrowings.empty()) return told;
  told.push_back(&sensitivity.narrowings.front());
  if (before_cutting(sensitivity.narrowings.front())) {
    if (sensitivity.narrowings.size() > 1) told.push_back(&sensitivity.narrowings[1]);
    return told;
  }
  const auto sooner = std::find_if(sensitivity.narrowings.begin(), sensitivity.narrowings.end(), before_cutting);
  if (sooner != sensitivity.narrowings.end()) told.push_back(&*sooner);
  return told;
}

std::string sureness(const plan::Bands& bands) {
  std::string text = fmt::format("{} samples, seed {}, {} inputs drawn; a share is good to {:.1f} in 100",
                                 bands.samples, bands.seed, bands.drawn, 100.0 * bands.share_error);
  if (bands.edge_error)
    text += fmt::format(", the ends of the first band to {:.1f} % of its width", 100.0 * *bands.edge_error);
  return text + ". The same seed gives the same figures on this kind of machine.";
}

std::string in_samples(double share, const plan::Bands& bands) {
  if (share >= 1.0) return fmt::format("all {} samples", bands.samples);
  if (share <= 0.0) return fmt::format("none of {} samples", bands.samples);
  const auto of_hundred = std::lround(100.0 * share);
  if (of_hundred == 0) return "fewer than 1 of 100 samples";
  if (of_hundred == 100) return "more than 99 of 100 samples";
  return fmt::format("{} of 100 samples", of_hundred);
}
std::string holds_in(const plan::Finding& finding, const plan::Assessment& assessment) {
  if (!finding.holds || !assessment.bands) return "";
  const double failing = 1.0 - *finding.holds;
  if (finding.answered == assessment.bands->samples) return "fails in " + in_samples(failing, *assessment.bands);
  const auto failed = std::lround(failing * static_cast<double>(finding.answered));
  const std::string of = fmt::format("{} samples that answer it", finding.answered);
  if (failing <= 0.0) return "fails in none of the " + of;
  return *finding.holds <= 0.0 ? "fails in all " + of : fmt::format("fails in {} of the {}", failed, of);
}
std::string brackets_mean(const plan::Assessment& assessment) {
  const bool some_without =
      std::any_of(assessment.results.begin(), assessment.results.end(),
                  [](const model::Result& r) { return r.high && r.share.value_or(1.0) < told_from_share; });
  return fmt::format("In brackets: where eight of ten lie, of {} samples{}.", assessment.bands->samples,
                     some_without ? " (or of such a share)" : "");
}
std::string without_spreads(const plan::Assessment& assessment, description::FrontEnd front) {
  if (assessment.bands || assessment.checks.empty()) return "";
  return description::way("spreads-left-out", front) +
         ": every value stands as written or usual, and what passes so may fail where it lies elsewhere in its spread.";
}
void write_meaning_of_bands(Page& page, const plan::Assessment& assessment) {
  if (const std::string left_out = without_spreads(assessment, page.style().front); !left_out.empty()) {
    page.gap();
    page.paragraph(left_out);
  }
  const auto has_band = [](const model::Result& result) { return result.low.has_value(); };
  if (!assessment.bands || std::none_of(assessment.results.begin(), assessment.results.end(), has_band)) return;
  page.gap();
  page.paragraph(
      fmt::format("In brackets: between which figures eight of ten samples lie, when every value that is not "
                  "known for sure is drawn from its spread, {} times.",
                  assessment.bands->samples),
      2, Ink::faint);
}

void write_bands(Page& page, const plan::Assessment& assessment) {
  if (!assessment.bands || assessment.bands->sensitivities.empty()) return;
  const plan::Bands& bands = *assessment.bands;
  const plan::Sensitivity& chief = bands.sensitivities.front();
  page.heading("What widens the answer, and what to measure next");
  page.gap();
  page.paragraph(fmt::format("{}: how much of its scatter goes with what", words_for(chief.answer)), 2);
  page.gap();
  write_widest(page, chief);
  for (const plan::Narrowing* one : worth_telling(chief))
    write_narrowing(page, *one, plan::find_result(assessment, chief.answer));
  if (bands.sensitivities.size() > 1) page.gap();
  for (std::size_t i = 1; i < bands.sensitivities.size(); ++i) {
    const plan::Sensitivity& further = bands.sensitivities[i];
    std::string text = fmt::format("{}: {}", words_for(further.answer), hang_together(further));
    if (const auto told = worth_telling(further); !told.empty())
      text += fmt::format("; measure {}, which narrows it to {} % of its width", told.back()->what,
                          std::lround(100.0 * told.back()->left));
    page.paragraph(text, 2);
  }
  page.gap();
  page.paragraph(sureness(bands), 2, Ink::faint);
}
}  // namespace lumwright::report
