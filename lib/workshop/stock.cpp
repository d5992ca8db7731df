#include "workshop/stock.hpp"
#include "data/fits.hpp"
#include "data/limits.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::workshop {
namespace {
/// Can its size fit at all? No clearance that heat asks for is below zero, so that most of a table is out before the
/// heat is looked into.
bool size_may_fit(const FitInput& input) {
  const LeakGap gap{.bore = input.bore.value,
                    .outside = input.outside.value,
                    .tube_bore = input.outside.value - 2.0 * input.tube_wall};
  const Length least_skim = input.outside.high - (input.bore.low - input.seam_ridge);
  return leak_share(gap) <= most_leak_share() && least_skim <= data::length_rule("heavy skim").value.value;
}
bool can_be_made_to_fit(const Fit& fit) {
  if (fit.leak_share.value > most_leak_share()) return false;
  if (fit.skim.on_diameter == 0.0 * mm) return true;
  return !fit.skim.heavy && fit.skim.wall_left && fit.skim.wall_needed && *fit.skim.wall_left >= *fit.skim.wall_needed;
}
Length distance(const StockTube& tube) { return tube.fit.margin < 0.0 * mm ? -tube.fit.margin : tube.fit.margin; }
}  // namespace

double most_leak_share() {
  static const double most = data::limit<double>("fit.leak heavy") * data::number_rule("leak share").value.value;
  return most;
}
Length stock_spread(Length outside) {
  for (const data::TubeTolerance& row : data::tube_tolerances())
    if (outside > row.over && outside <= row.upto) return row.within;
  throw ModelError(fmt::format("tube outside diameter {:.6g} mm is not in the table of drawn tube", in(outside, mm)));
}

std::vector<StockTube> stock_tubes(const FitInput& input, std::size_t most) {
  std::vector<StockTube> found;
  for (const data::TubeRow& tube : data::tubes()) {
    const Length spread = stock_spread(tube.outside);
    FitInput tried = input;
    tried.outside = {tube.outside, tube.outside - spread, tube.outside + spread};
    tried.outside_measured_within = 0.0 * mm;
    tried.tube_wall = tube.wall;
    if (!size_may_fit(tried)) continue;
    const StockTube candidate{.tube = tube, .outside = tried.outside, .fit = fit(tried)};
    if (can_be_made_to_fit(candidate.fit)) found.push_back(candidate);
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const StockTube& a, const StockTube& b) { return distance(a) < distance(b); });
  if (found.size() > most) found.erase(found.begin() + static_cast<std::ptrdiff_t>(most), found.end());
  return found;
}
}  // namespace lumwright::workshop
