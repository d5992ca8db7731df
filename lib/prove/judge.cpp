#include "prove/detail/judge.hpp"
#include "numeric/statistics.hpp"
#include "prove/detail/readings.hpp"
#include <algorithm>
#include <cmath>
#include <numeric>

namespace lumwright::prove {
namespace {
/// Of a sample whose places carry weights: the place below which that share of the weight lies.
double weighted_place(const Cloud& cloud, const std::vector<double>& weights, double share) {
  std::vector<std::size_t> order(cloud.u.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return cloud.u[a] < cloud.u[b]; });
  double sum = 0.0;
  for (const std::size_t i : order)
    if ((sum += weights[i]) >= share) return cloud.u[i];
  return cloud.u[order.back()];
}
void add_size(JudgedCause& judged, const Cloud& cloud, const Weighed& weighed, const model::Solved& planned) {
  const Scales scales = scales_of(planned);
  const auto at = [&](double place) {
    const AnyQuantity size = size_of(cloud.cause->moves.front(), std::clamp(place, 0.0, 1.0), scales);
    return model::Measure{size, size.kind == kind_of<double> ? "%" : planned.page.of(size)};
  };
  const double middle = weighted_place(cloud, weighed.samples, 0.5);
  const double reach = numeric::normal_score(plan::high_end) * weighed.place_within;  // few samples carry the weight
  judged.size = at(middle);
  judged.size_low = at(std::min(weighted_place(cloud, weighed.samples, plan::low_end), middle - reach));
  judged.size_high = at(std::max(weighted_place(cloud, weighed.samples, plan::high_end), middle + reach));
  if (judged.size_low->quantity.si > judged.size_high->quantity.si) std::swap(judged.size_low, judged.size_high);
}
/// How often a reading that is foretold so by two causes decides between them: the part of two normal densities that
/// does not overlap; of the paper, by how much the shares of one answer differ.
double decides(const Foretold& a, const Foretold& b, bool in_words) {
  if (in_words) return std::abs(a.mean - b.mean);
  const double sigma = std::sqrt(0.5 * (a.variance + b.variance));
  return sigma > 0.0 ? 2.0 * numeric::normal_share(0.5 * std::abs(a.mean - b.mean) / sigma) - 1.0 : 0.0;
}
std::size_t cloud_of(const std::vector<Cloud>& clouds, const data::CauseRow* cause) {
  return static_cast<std::size_t>(
      std::find_if(clouds.begin(), clouds.end(), [&](const Cloud& one) { return one.cause == cause; }) -
      clouds.begin());
}
/// Samples of one of the causes that are tied, the fire with them: a reading of it may be what parts them.
Cloud with_fire(const SampledUnit& unit, const Cloud& sound, const data::CauseRow* cause) {
  return that_run(cause == nullptr ? sound : unit.with(*cause, data::judging().samples, model::SampleReach::fire),
                  unit);
}
std::optional<Parting> parting(const SampledUnit& unit, const Cloud& sound, const Taken& taken,
                               const std::vector<Instrument>& instruments, const Proved& proved) {
  if (proved.causes.size() < 2 || !proved.causes[1].tied) return std::nullopt;
  const data::CauseRow *first = proved.causes[0].cause, *second = proved.causes[1].cause;
  const std::vector<Cloud> two{with_fire(unit, sound, first), with_fire(unit, sound, second)};
  const Weigher weigher(two, taken.which, instruments);
  const std::vector<Weighed> weighed = weigher.weigh(taken.read);
  std::optional<Parting> best;
  for (std::size_t r = 0; r < taken.which.size(); ++r) {
    if (taken.which[r] || !proved.sheet.readings[r].why_not.empty()) continue;
    const auto of_first = weigher.foretell(0, weighed[0], taken.read, r),
               of_second = weigher.foretell(1, weighed[1], taken.read, r);
    if (!of_first || !of_second) continue;
    const data::ProofRow& row = data::proofs()[r];
    const bool in_words = !row.answers.empty();
    const double share = decides(*of_first, *of_second, in_words);
    if (share < data::judging().parts_them || (best && share <= best->decides)) continue;
    best = Parting{&row, first, second, {}, {}, share};
    if (in_words) continue;
    best->of_first = measured(row, of_first->mean, unit.planned());
    best->of_second = measured(row, of_second->mean, unit.planned());
  }
  return best;
}
/// The chance that a unit of this cause lies as far off, by the nearest of its samples: chi-squared with as many
/// degrees as readings, in the approximation of Wilson and Hilferty (1931).
double chance_of(double squares, double readings) {
  const double spread = 2.0 / (9.0 * readings);
  return 1.0 - numeric::normal_share((std::cbrt(squares / readings) - (1.0 - spread)) / std::sqrt(spread));
}
/// The reading that lies furthest, in its own standard deviations, from what the others foretell under their best
/// cause.
std::optional<std::size_t> suspect(const std::vector<Cloud>& clouds, const Taken& taken,
                                   const std::vector<Instrument>& instruments, const Proved& proved) {
  std::optional<std::size_t> worst;
  double most = 0.0;
  for (std::size_t i = 0; i < proved.readings.size(); ++i) {
    const std::size_t r = proved.readings[i].expected;
    if (!taken.which[r] || !data::proofs()[r].answers.empty()) continue;
    std::vector<bool> others = taken.which;
    others[r] = false;
    const Weigher weigher(clouds, others, instruments);
    const std::vector<Weighed> weighed = weigher.weigh(taken.read);
    const auto best = std::max_element(weighed.begin(), weighed.end(),
                                       [](const Weighed& a, const Weighed& b) { return a.share < b.share; });
    const auto told = weigher.foretell(static_cast<std::size_t>(best - weighed.begin()), *best, taken.read, r);
    if (!told) continue;
    const double off = std::abs(taken.read[r] - told->mean) / std::sqrt(told->variance);
    if (off > most) most = off, worst = i;
  }
  return worst;
}
}  // namespace

std::vector<JudgedCause> ranked(const std::vector<Weighed>& weighed) {
  std::vector<JudgedCause> all;
  for (const Weighed& one : weighed) all.push_back({one.cause, one.share, false, {}});
  std::stable_sort(all.begin(), all.end(),
                   [](const JudgedCause& a, const JudgedCause& b) { return a.share > b.share; });
  for (JudgedCause& one : all) one.tied = one.share * data::judging().told_apart > all.front().share;
  return all;
}
void judge_causes(const SampledUnit& unit, const Cloud& sound, const Taken& taken,
                  const std::vector<Instrument>& instruments, Proved& proved) {
  bool fire = false;
  for (std::size_t r = 0; r < taken.which.size(); ++r) fire = fire || (taken.which[r] && data::proofs()[r].fire);
  const std::vector<Cloud> clouds = clouds_of(unit, sound, fire ? model::SampleReach::fire : model::SampleReach::cold);
  const Weigher weigher(clouds, taken.which, instruments);
  const std::vector<Weighed> weighed = weigher.weigh(taken.read);
  proved.causes = ranked(weighed);
  for (JudgedCause& one : proved.causes) {
    const std::size_t k = cloud_of(clouds, one.cause);
    if (one.cause != nullptr) add_size(one, clouds[k], weighed[k], unit.planned());
  }
  const double readings = static_cast<double>(std::count(taken.which.begin(), taken.which.end(), true));
  double nearest = INFINITY;
  for (const Weighed& one : weighed) nearest = std::min(nearest, one.misfit);
  proved.unexplained = chance_of(nearest, readings) < data::judging().unexplained;
  if (!proved.unexplained)
    proved.parting = parting(unit, sound, taken, instruments, proved);
  else if (readings > 2.0)
    proved.suspect = suspect(clouds, taken, instruments, proved);
}
}  // namespace lumwright::prove
