#include "prove/detail/sheet.hpp"
#include "numeric/root.hpp"
#include "numeric/statistics.hpp"
#include "plan/cautions.hpp"
#include "prove/detail/readings.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::prove {
namespace {
plan::Samples samples_of(const Cloud& sound) {
  plan::Samples samples{.count = sound.seen.size()};
  for (std::size_t r = 0; r < data::proofs().size(); ++r) {
    plan::SampleColumn column{data::proofs()[r].id, {}};
    for (const auto& one : sound.seen) column.si.push_back(one.empty() ? not_predicted : one[r]);
    samples.results.push_back(std::move(column));
  }
  return samples;
}
/// The reading below which that share of sound units would be read.
double read_at(const Cloud& sound, std::size_t reading, const Instrument& instrument, double share) {
  double low = INFINITY, high = -INFINITY;
  for (const auto& one : sound.seen)
    if (!one.empty() && !std::isnan(one[reading]))
      low = std::min(low, one[reading]), high = std::max(high, one[reading]);
  const double reach = 6.0 * std::sqrt(std::max(instrument.variance(low), instrument.variance(high)));
  const auto over = [&](double at) { return share_below(sound, reading, instrument, at) - share; };
  return numeric::bracketed_root(over, low - reach, high + reach, "end of a band", 30);
}
std::string likeliest_word(double suction) {
  const auto& answers = data::proofs()[paper].answers;
  return *std::max_element(answers.begin(), answers.end(), [&](const std::string& a, const std::string& b) {
    return paper_share(paper_number(a), suction) < paper_share(paper_number(b), suction);
  });
}
}  // namespace

double share_below(const Cloud& sound, std::size_t reading, const Instrument& instrument, double at) {
  double sum = 0.0;
  std::size_t count = 0;
  for (const auto& one : sound.seen) {
    if (one.empty() || std::isnan(one[reading])) continue;
    sum += numeric::normal_share((at - one[reading]) / std::sqrt(instrument.variance(one[reading])));
    ++count;
  }
  return sum / static_cast<double>(std::max<std::size_t>(count, 1));
}

std::vector<Expected> expected(const SampledUnit& unit, const Cloud& sound) {
  const std::vector<Instrument> instruments = usual_instruments(unit.planned());
  std::vector<model::Result> results;
  std::vector<Expected> all;
  for (std::size_t r = 0; r < data::proofs().size(); ++r) {
    const data::ProofRow& row = data::proofs()[r];
    Expected one{.row = &row, .why_not = "", .value = {}, .low = {}, .high = {}, .least = {}, .most = {}, .word = ""};
    const double si = unit.as_planned()[r];
    if (std::isnan(si)) {
      one.why_not = unit.why_not(row);
    } else if (r == paper) {
      one.word = likeliest_word(si);
    } else {
      one.value = measured(row, si, unit.planned());
      results.push_back({row.id, *one.value});
    }
    all.push_back(std::move(one));
  }
  if (sound.seen.empty()) return all;
  plan::add_result_bands(results, samples_of(sound));
  auto banded = results.begin();
  for (std::size_t r = 0; r < all.size(); ++r) {
    if (!all[r].value) continue;
    all[r].low = banded->low;
    all[r].high = banded->high;
    ++banded;
    const double end = data::judging().outside;
    all[r].least = measured(*all[r].row, read_at(sound, r, instruments[r], end), unit.planned());
    all[r].most = measured(*all[r].row, read_at(sound, r, instruments[r], 1.0 - end), unit.planned());
  }
  return all;
}

Sheet sheet_with(const SampledUnit& unit, const Cloud& sound, const description::Build& build) {
  Sheet sheet{.name = build.name ? *build.name : std::string(),
              .readings = expected(unit, sound),
              .samples = sound.seen.size(),
              .cautions = plan::cautions_for(build, {})};
  // what bites where it is tried on the bench and on the fire
  std::erase_if(sheet.cautions, [](const plan::Caution& one) {
    return std::none_of(one.steps.begin(), one.steps.end(),
                        [](const std::string& step) { return step == "try" || step == "light"; });
  });
  return sheet;
}
Sheet sheet_of(const description::Build& build, const model::Tuning* tuning, const plan::SamplesAsked& asked) {
  const SampledUnit unit(build, tuning, asked, std::nullopt);
  return sheet_with(unit, asked.count > 0 ? unit.sound() : Cloud{nullptr, {}, {}}, build);
}
}  // namespace lumwright::prove
