#include "plan/detail/bands.hpp"
#include "numeric/statistics.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <limits>

namespace lumwright::plan {
namespace {
constexpr double at_least_to_pass = 0.9, at_least_to_watch = 0.5;
constexpr std::string_view answers[] = {"raise.to_own_blower", "raise.to_working", "draught.air_flow",
                                        "heat.fan_gas",        "power.runtime",    "fit.clearance_hot"};

bool is_time_to(std::string_view key) { return key.starts_with("raise.to_"); }

/// Those that exist; a time that is never reached is beyond all others.
std::vector<double> countable(const SampleColumn& column) {
  std::vector<double> values;
  for (const double x : column.si) {
    if (!std::isnan(x))
      values.push_back(x);
    else if (is_time_to(column.key))
      values.push_back(std::numeric_limits<double>::infinity());
  }
  return values;
}
double existing_share(const SampleColumn& column) {
  const auto there = std::count_if(column.si.begin(), column.si.end(), [](double x) { return !std::isnan(x); });
  return static_cast<double>(there) / static_cast<double>(column.si.size());
}
void add_band(model::Result& result, const Samples& samples) {
  const SampleColumn* column = find_column(samples.results, result.key);
  if (column == nullptr) return;
  const std::vector<double> values = countable(*column);
  result.share = existing_share(*column);
  if (values.empty()) return;
  const model::Measure& centre = std::get<model::Measure>(result.value);
  const auto edge = [&](double si) { return model::Measure{AnyQuantity(si, centre.quantity.kind), centre.unit}; };
  double low = std::min(numeric::quantile(values, low_end), centre.quantity.si);
  double high = std::max(numeric::quantile(values, high_end), centre.quantity.si);
  if (std::all_of(values.begin(), values.end(), [](double x) { return x == std::floor(x); })) {  // a count
    low = std::floor(low);
    high = std::ceil(high);
  }
  result.low = edge(low);
  if (std::isfinite(high)) result.high = edge(high);
}
void add_agreement(model::Result& result, const Samples& samples) {
  const SampleWords* column = find_column(samples.words, result.key);
  if (column == nullptr) return;
  const auto same = std::count(column->words.begin(), column->words.end(), std::get<std::string>(result.value));
  result.share = static_cast<double>(same) / static_cast<double>(samples.count);
}

std::string of_hundred(double share) { return fmt::format("{} of 100 samples", std::lround(100.0 * share)); }
/// Samples of each kind of answer.
struct Counts {
  explicit Counts(const SampleCheck& column) {
    for (const Sampled s : column.answers) ++of[static_cast<std::size_t>(s)];
    answered = column.answers.size() - (*this)(Sampled::no_answer);
  }
  std::size_t operator()(Sampled s) const { return of[static_cast<std::size_t>(s)]; }
  double share(std::size_t count) const { return static_cast<double>(count) / static_cast<double>(answered); }
  std::string all() const {
    return (*this)(Sampled::no_answer) == 0 ? fmt::format("{} samples", answered)
                                            : fmt::format("the {} samples that answer it", answered);
  }
  std::array<std::size_t, 5> of{};
  std::size_t answered = 0;
};
/// Counts what passes and what is to be watched apart; a pass as described that passes in fewer than half of the
/// samples is to be watched.
void add_watches(Finding& finding, const Counts& counts) {
  const std::size_t watched = counts(Sampled::watched), passed = counts(Sampled::passes);
  if (watched == 0) return;
  if (finding.verdict == Verdict::watch && watched == counts.answered) return;  // nothing to count apart
  finding.why += fmt::format("; it passes in {}, is to be watched in {} of {}", passed, watched, counts.all());
  if (finding.verdict != Verdict::pass || counts.share(passed) >= at_least_to_watch) return;
  finding.verdict = Verdict::watch;
  if (finding.action.empty())
    finding.action = "leave more room at this limit, or measure more closely what is not known for sure";
}
void add_share(Finding& finding, const Samples& samples) {
  const SampleCheck* column = find_column(samples.checks, finding.id);
  if (column == nullptr || finding.verdict == Verdict::unknown) return;
  const Counts counts(*column);
  if (counts.answered == 0) return;
  const double share = 1.0 - counts.share(counts(Sampled::fails) + counts(Sampled::still));
  finding.holds = share;
  finding.answered = counts.answered;
  add_watches(finding, counts);
  if (finding.verdict == Verdict::fail || share >= at_least_to_pass) return;
  const std::string still = counts(Sampled::still) > counts(Sampled::fails)
                                ? ", mostly because a part that it needs does not work at all there"
                                : "";
  if (share < at_least_to_watch) {
    finding.verdict = Verdict::fail;
    finding.why += fmt::format("; with all that may lie elsewhere in its spread, it fails in {}{}",
                               of_hundred(1.0 - share), still);
  } else if (finding.verdict == Verdict::pass) {
    finding.verdict = Verdict::watch;
    finding.why +=
        fmt::format("; but what is not known for sure may undo it: it fails in {}{}", of_hundred(1.0 - share), still);
  }
  if (finding.action.empty())
    finding.action = "leave more room at this limit, or measure more closely what is not known for sure";
}

/// Scatter of the band's edges between eight parts of the samples, over the width of the band.
std::optional<double> edge_error(const SampleColumn& column) {
  constexpr std::size_t parts = 8, least = 32;
  const std::vector<double> values = countable(column);
  const std::size_t each = values.size() / parts;
  if (each < least) return std::nullopt;
  const double width = numeric::quantile(values, high_end) - numeric::quantile(values, low_end);
  if (!(width > 0.0) || !std::isfinite(width)) return std::nullopt;
  double worst = 0.0;
  for (const double p : {low_end, high_end}) {
    double sum = 0.0, squares = 0.0;
    for (std::size_t k = 0; k < parts; ++k) {
      const auto from = values.begin() + static_cast<std::ptrdiff_t>(k * each);
      const double edge =
          (numeric::quantile({from, from + static_cast<std::ptrdiff_t>(each)}, p) - values.front()) / width;
      if (!std::isfinite(edge)) return std::nullopt;
      sum += edge;
      squares += edge * edge;
    }
    const double n = parts;
    worst = std::max(worst, std::sqrt(std::max(squares - sum * sum / n, 0.0) / (n - 1.0) / n));
  }
  return worst;
}
}  // namespace

void add_result_bands(std::vector<model::Result>& results, const Samples& samples) {
  for (model::Result& result : results)
    std::holds_alternative<model::Measure>(result.value) ? add_band(result, samples) : add_agreement(result, samples);
}
void add_bands(Assessment& assessment, const model::Solved& central, const Samples& samples,
               const SamplesAsked& asked) {
  for (Finding& finding : assessment.checks) add_share(finding, samples);
  Bands bands{.samples = samples.count,
              .seed = asked.seed,
              .drawn = samples.inputs.size(),
              .edge_error = std::nullopt,
              .share_error = 0.5 / std::sqrt(static_cast<double>(samples.count)),
              .sensitivities = {}};
  const std::vector<SampleReadings> readings = readings_in(samples, central, assessment.results, asked.seed);
  for (const std::string_view answer : answers)
    if (const SampleColumn* column = find_column(samples.results, answer)) {
      if (answer == "raise.to_working" && !bands.sensitivities.empty()) continue;  // hangs on what the other time does
      Sensitivity sensitivity = sensitivity_of(std::string(answer), central, samples, readings);
      if (sensitivity.widest.empty()) continue;
      if (bands.sensitivities.empty()) bands.edge_error = edge_error(*column);
      bands.sensitivities.push_back(std::move(sensitivity));
    }
  assessment.bands = std::move(bands);
}
}  // namespace lumwright::plan
