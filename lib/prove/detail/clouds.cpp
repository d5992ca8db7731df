#include "prove/detail/clouds.hpp"
#include "data/causes.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "numeric/quasi_random.hpp"
#include "plan/workers.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::prove {
bool Cloud::predicts(std::size_t reading) const {
  return std::any_of(seen.begin(), seen.end(),
                     [&](const auto& one) { return !one.empty() && !std::isnan(one[reading]); });
}

SampledUnit::SampledUnit(const description::Build& build, const model::Tuning* tuning, const plan::SamplesAsked& asked,
                         std::optional<Area> outlet)
    : build_(plan::with_measuring_spread(build)),
      tuning_(tuning),
      asked_(asked),
      planned_(model::solve(build_, {}, tuning)),
      outlet_(outlet_of(planned_, outlet)),
      scales_(scales_of(planned_)),
      as_planned_(predicted({planned_, Supposed(), outlet_, 0.5})),
      draws_(planned_.inputs, std::max<std::size_t>(asked.count, 1), asked.seed) {}

std::string SampledUnit::why_not(const data::ProofRow& row) const {
  return why_not_predicted(row, {planned_, Supposed(), outlet_, 0.0});
}
std::vector<double> SampledUnit::one(const data::CauseRow* cause, std::size_t sample, double u,
                                     model::SampleReach reach) const {
  const Supposed supposed = cause == nullptr ? Supposed() : Supposed(*cause, places(*cause, sample, u), scales_);
  // a fan that stands or blows back raises no steam
  if (cause != nullptr && !cause->fan.empty()) reach = model::SampleReach::cold;
  try {
    const model::Solved solved = model::solve_sample(build_, supposed.on(draws_.of_sample(sample)), reach, tuning_);
    return predicted({solved, supposed, outlet_, numeric::stray_coordinate(sample, "cells uneven", asked_.seed)});
  } catch (const ModelError&) {
    return {};
  }
}
std::vector<double> SampledUnit::places(const data::CauseRow& cause, std::size_t sample, double u) const {
  std::vector<double> all{u};
  while (all.size() < cause.moves.size())
    all.push_back(numeric::stray_coordinate(sample, cause.id + " by " + cause.moves[all.size()].key, asked_.seed));
  return all;
}
Cloud SampledUnit::sampled(const data::CauseRow* cause, std::size_t count, model::SampleReach reach) const {
  Cloud cloud{cause, std::vector<double>(count), std::vector<std::vector<double>>(count)};
  plan::share_out(count, asked_.threads, [&](std::size_t i) {
    if (cause != nullptr) cloud.u[i] = numeric::stray_coordinate(i, "size of " + cause->id, asked_.seed);
    cloud.seen[i] = one(cause, i, cloud.u[i], reach);
  });
  return cloud;
}
Cloud SampledUnit::sound() const { return sampled(nullptr, asked_.count, model::SampleReach::fire); }
Cloud SampledUnit::with(const data::CauseRow& cause, std::size_t count, model::SampleReach reach) const {
  if (!not_asked(cause, planned_).empty()) return {&cause, {}, {}};
  return sampled(&cause, std::min(count, asked_.count), reach);
}
Cloud that_run(const Cloud& all, const SampledUnit& unit) {
  Cloud kept{all.cause, {}, {}};
  std::vector<bool> wanted;
  for (std::size_t r = 0; r < data::proofs().size(); ++r) {
    const bool hidden = data::proofs()[r].fire || (all.cause != nullptr && !all.cause->fan.empty());
    wanted.push_back(!std::isnan(unit.as_planned()[r]) && (!hidden || all.predicts(r)));
  }
  for (std::size_t i = 0; i < all.seen.size(); ++i) {
    std::vector<double> one = all.seen[i];
    bool whole = !one.empty();
    for (std::size_t r = 0; whole && r < wanted.size(); ++r) {
      whole = !wanted[r] || !std::isnan(one[r]);
      if (!wanted[r]) one[r] = not_predicted;
    }
    if (!whole) continue;
    kept.u.push_back(all.u[i]);
    kept.seen.push_back(std::move(one));
  }
  return kept;
}
std::vector<Cloud> clouds_of(const SampledUnit& unit, const Cloud& sound, model::SampleReach reach) {
  std::vector<Cloud> all{that_run(sound, unit)};
  for (const data::CauseRow& cause : data::causes()) {
    Cloud cloud = that_run(unit.with(cause, data::judging().samples, reach), unit);
    if (!cloud.seen.empty()) all.push_back(std::move(cloud));
  }
  return all;
}
}  // namespace lumwright::prove
