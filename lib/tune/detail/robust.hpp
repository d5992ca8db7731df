// How far a reading is believed: most scatter as their uncertainty says, a few are wrong by much more.
#pragma once
#include <vector>

namespace lumwright::tune {
/// Of one reading that misses by so many standard deviations.
struct Belief {
  double wrong;   // chance that it is one of the wrong ones
  double weight;  // of its square in the sum: the mean of one over the variance, in its own
};
/// A contaminated normal law (Tukey 1960), its share and width from data/tuning.yaml; weights as in the EM algorithm
/// (Dempster, Laird and Rubin 1977).
Belief belief(double misfit);
/// Standard deviation of misfits about zero, little moved by a few wrong ones: 1.4826 times the median of their sizes
/// (Hampel 1974). 0 for none.
double robust_size(std::vector<double> misfits);
}  // namespace lumwright::tune
