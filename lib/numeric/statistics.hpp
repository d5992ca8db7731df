// What a heap of samples says: quantiles, and how much of the scatter goes with one input.
#pragma once
#include <cstddef>
#include <vector>

namespace lumwright::numeric {
/// The value that a share `p` of the samples lie below, between neighbours in proportion (Hyndman and Fan 1996,
/// definition 7). `values` is taken by value to be sorted; infinities may be among them. Not empty, 0 <= p <= 1;
/// throws ModelError otherwise.
double quantile(std::vector<double> values, double p);

/// Two columns of the same samples.
struct Scatter {
  const std::vector<double>& cause;
  const std::vector<double>& effect;
};
/// First-order share of the effect's variance that goes with the cause: variance of the mean effect in slices of equal
/// number along the cause, over the whole variance (Pearson's correlation ratio; as a sensitivity from given data:
/// Plischke, Borgonovo and Smith 2013, EJOR 226), less what as many slices of pure noise would show. Between 0 and 1; 0
/// for fewer than 40 samples or an effect that does not vary. Its own scatter is about 2 / sqrt(samples).
double variance_share(Scatter scatter);
/// Standard deviation of that share where cause and effect have nothing to do with each other: the F-ratio of k slices
/// of n normal values, sqrt(2 (k - 1)) / n for many.
double share_of_nothing(std::size_t samples);

/// How many standard deviations a share of the normal distribution reaches, and back. 0 < share < 1.
double normal_score(double share);
double normal_share(double score);
}  // namespace lumwright::numeric
