#include "tune/detail/robust.hpp"
#include "data/tuning.hpp"
#include "numeric/statistics.hpp"
#include <cmath>

namespace lumwright::tune {
namespace {
constexpr double median_to_sigma = 1.4826;
}  // namespace

Belief belief(double misfit) {
  static const double share = data::season_constant("wrong_share"), width = data::season_constant("wrong_width");
  // their ratio, so that nothing vanishes far out
  const double right_over_wrong =
      (1.0 - share) / share * width * std::exp(-0.5 * misfit * misfit * (1.0 - 1.0 / (width * width)));
  const double wrong = 1.0 / (1.0 + right_over_wrong);
  return {wrong, (1.0 - wrong) + wrong / (width * width)};
}
double robust_size(std::vector<double> misfits) {
  if (misfits.empty()) return 0.0;
  for (double& x : misfits) x = std::abs(x);
  return median_to_sigma * numeric::quantile(std::move(misfits), 0.5);
}
}  // namespace lumwright::tune
