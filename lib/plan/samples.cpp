#include "plan/samples.hpp"
#include "data/measuring.hpp"
#include "plan/check.hpp"
#include "plan/results.hpp"
#include "plan/draws.hpp"
#include "plan/workers.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <limits>
#include <mutex>
#include <set>

namespace lumwright::plan {
namespace {
/// Where judging costs too much, what is to be watched is not told apart.
Sampled how(const Check& check, const model::Solved& solved, std::set<std::string>& stopped) {
  if (check.holds != nullptr) return fails(check, solved) ? Sampled::fails : Sampled::passes;
  try {
    const auto finding = check.judge(solved);
    if (!finding || finding->verdict == Verdict::unknown) return Sampled::no_answer;
    if (!finding->stands_still.empty())
      return stopped.insert(finding->why).second ? Sampled::still : Sampled::no_answer;
    if (finding->verdict == Verdict::fail) return Sampled::fails;
    return finding->verdict == Verdict::watch ? Sampled::watched : Sampled::passes;
  } catch (const ModelError&) {
    return Sampled::fails;
  }
}
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();  // stays inside: every reader filters it

void widen(description::Given<Length>& size, description::Given<Length>& within, const char* method) {
  if (!size || (!within && size.has_spread)) return;
  const Length by = within ? *within : data::measuring_method(method).uncertainty;
  size.band->low = std::max(size.band->low - by, 0.01 * size.band->value);
  size.band->high += by;
  size.has_spread = true;
  within = {};
}

/// A share that was measured but written without a spread is as good as a workshop's measuring of it.
template <class Q>
void blur(description::Given<Q>& given, const char* key) {
  if (!given || given.has_spread) return;
  using T = QuantityTraits<Q>;
  double by = data::measuring_share(key).value * T::to_si(given.band->value);
  if constexpr (std::is_same_v<Q, double>) by = std::min(by, 0.5 * (1.0 - *given));  // shares stay below all of it
  given.band->low = T::from_si(T::to_si(given.band->value) - by);
  given.band->high = T::from_si(T::to_si(given.band->value) + by);
  given.has_spread = true;
}

class Trial {
 public:
  Trial(const description::Build& build, const model::Solved& central, const model::Tuning* tuning,
        const SamplesAsked& asked)
      : build_(with_measuring_spread(build)),
        tuning_(tuning),
        asked_(asked),
        out_{.count = asked.count, .drawn_from = model::solve(build_, {}, tuning).inputs},
        draws_(out_.drawn_from, asked.count, asked.seed) {
    const std::size_t n = asked.count;
    for (const auto& [key, dimension] : draws_.keys()) {
      out_.inputs.push_back({key, std::vector<double>(n, nothing)});
      out_.chances.push_back({key, std::vector<double>(n, nothing)});
      for (std::size_t sample = 0; sample < n; ++sample) out_.chances.back().si[sample] = draws_.chance(sample, key);
    }
    for (const model::Result& result : results_of(central)) {
      if (std::holds_alternative<model::Measure>(result.value))
        out_.results.push_back({result.key, std::vector<double>(n, nothing)});
      else
        out_.words.push_back({result.key, std::vector<std::string>(n)});
    }
    for (const Check& check : all_checks())
      if (check.in_samples) {
        checks_.push_back(&check);
        out_.checks.push_back({std::string(check.id), std::vector<Sampled>(n, Sampled::passes)});
      }
  }
  Samples run() {
    constexpr std::size_t portion = 8;  // neighbours in a column stay on one thread
    share_out((asked_.count + portion - 1) / portion, asked_.threads, [this](std::size_t i) {
      const std::size_t from = i * portion, to = std::min(from + portion, asked_.count);
      for (std::size_t sample = from; sample < to; ++sample) live(sample);
      report(to - from);
    });
    return std::move(out_);
  }

 private:
  void report(std::size_t more) {
    const std::lock_guard lock(guard_);
    done_ += more;
    if (asked_.progress) asked_.progress(done_, asked_.count);
  }
  void live(std::size_t sample) {
    model::Solved solved = model::solve(build_, draws_.of_sample(sample), tuning_);
    solved.spread_tried = true;
    for (SampleColumn& column : out_.inputs)
      if (const model::Input* input = solved.inputs.find(column.key)) column.si[sample] = input->value.si;
    for (const model::Result& result : results_of(solved)) keep(sample, result);
    std::set<std::string> stopped;  // what stopped a check of this sample already
    for (std::size_t i = 0; i < checks_.size(); ++i) out_.checks[i].answers[sample] = how(*checks_[i], solved, stopped);
  }
  void keep(std::size_t sample, const model::Result& result) {
    if (const auto* measure = std::get_if<model::Measure>(&result.value)) {
      if (SampleColumn* column = find_column(out_.results, result.key)) column->si[sample] = measure->quantity.si;
    } else if (SampleWords* column = find_column(out_.words, result.key)) {
      column->words[sample] = std::get<std::string>(result.value);
    }
  }

  description::Build build_;
  const model::Tuning* tuning_;
  const SamplesAsked& asked_;
  Samples out_;
  Draws draws_;
  std::vector<const Check*> checks_;
  std::mutex guard_;
  std::size_t done_ = 0;
};

/// Shares and depths that are good to so much of their value, each with its key.
template <class B, class F>
void for_each_share(B& build, F&& visit) {
  visit(build.engine.leakage.past_bed, "engine.leakage.past_bed");
  visit(build.engine.leakage.smokebox, "engine.leakage.smokebox");
  visit(build.fuel.bed, "fuel.bed");
}
}  // namespace

description::Build with_measuring_spread(const description::Build& build) {
  description::Build wider = build;
  widen(wider.engine.chimney.bore, wider.engine.chimney.measured_within, "caliper_inside");
  for_each_share(wider, [](auto& given, const char* key) { blur(given, key); });
  widen(wider.adapter.tube.outside, wider.adapter.tube.measured_within, "micrometer");
  return wider;
}

std::vector<model::Assumed> measuring_spreads(const description::Build& build) {
  std::vector<model::Assumed> all;
  for_each_share(build, [&](const auto& given, const char* key) {
    if (!given || given.has_spread) return;
    const data::MeasuringShare& row = data::measuring_share(key);
    all.push_back({fmt::format("{} (its spread)", key), fmt::format("+- {} %", format_number(100.0 * row.value, 2)), "",
                   "written without a spread: as good as workshop means measure it", row.basis});
  });
  return all;
}

Samples try_samples(const description::Build& build, const model::Solved& central, const model::Tuning* tuning,
                    const SamplesAsked& asked) {
  return Trial(build, central, tuning, asked).run();
}
}  // namespace lumwright::plan
