#include "plan/draws.hpp"
#include "data/spreads.hpp"
#include "numeric/statistics.hpp"
#include "plan/samples.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::plan {
namespace {
std::map<std::string, std::size_t, std::less<>> drawn_keys(const model::Inputs& inputs) {
  std::map<std::string, std::size_t, std::less<>> keys;
  for (const auto& [key, input] : inputs.all())
    if (is_drawn(key, input)) keys.emplace(key, keys.size());
  return keys;
}
std::string_view word(model::Origin origin) {
  return origin == model::Origin::written ? "written" : origin == model::Origin::tuned ? "tuned" : "assumed";
}
}  // namespace

bool is_drawn(std::string_view key, const model::Input& input) {
  return input.low < input.high && !key.starts_with("want.");
}

double drawn_from(const model::Input& input, std::string_view key, double u) {
  const double low = input.low, high = input.high, peak = input.value.si;
  if (input.tails) {
    const double score = std::clamp(numeric::normal_score(u), -3.0, 3.0) / numeric::normal_score(0.9);
    return peak * std::exp(score * (score < 0.0 ? std::log(peak / low) : std::log(high / peak)));
  }
  if (data::shape_of(key, word(input.origin)) == data::Shape::uniform) return low + u * (high - low);
  const double before = (peak - low) / (high - low);
  if (u < before) return low + std::sqrt(u * (high - low) * (peak - low));
  return high - std::sqrt((1.0 - u) * (high - low) * (high - peak));
}

Draws::Draws(const model::Inputs& inputs, std::size_t count, std::uint64_t seed)
    : dimension_(drawn_keys(inputs)), points_({count, dimension_.size()}, seed), seed_(seed) {}

double Draws::chance(std::size_t sample, std::string_view key) const {
  const auto found = dimension_.find(key);
  return found != dimension_.end() ? points_.at(sample, found->second) : numeric::stray_coordinate(sample, key, seed_);
}
double Draws::coordinate(std::size_t sample, std::string_view key) const {
  for (const data::TogetherRow& row : data::spreads_together())
    if (row.second == key && dimension_.contains(row.first))
      return numeric::normal_share(row.correlation * numeric::normal_score(chance(sample, row.first)) +
                                   std::sqrt(1.0 - row.correlation * row.correlation) *
                                       numeric::normal_score(chance(sample, key)));
  return chance(sample, key);
}
model::Draw Draws::of_sample(std::size_t sample) const {
  return [this, sample](std::string_view key, const model::Input& input) {
    return is_drawn(key, input) ? drawn_from(input, key, coordinate(sample, key)) : input.value.si;
  };
}
}  // namespace lumwright::plan
