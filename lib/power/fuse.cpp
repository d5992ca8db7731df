#include "power/fuse.hpp"
#include "numeric/curve.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <cmath>

namespace lumwright::power {
namespace {
constexpr double slack = 1e-9;  // 0.75 A over 0.75 must still find the fuse of 1 A
}
Current fuse_for(Current most, const data::FuseRule& rule) {
  require_above_zero("current through the fuse", most, "A");
  const Current least = most / rule.continuous * (1.0 - slack);
  for (const data::FuseRow& row : data::fuses())
    if (row.rating >= least) return row.rating;
  throw ModelError("current through the fuse " + format(most, "A") + " is more than the largest rating, " +
                   format(data::fuses().back().rating, "A") + ", carries");
}

Resistance fuse_resistance(Current rating) {
  std::vector<double> x, y;
  for (const data::FuseRow& row : data::fuses()) {
    x.push_back(std::log(in(row.rating, A)));
    y.push_back(std::log(in(row.cold.value, ohm)));
  }
  require_above_zero("fuse rating", rating, "A");
  const double at = std::log(in(rating, A));
  if (at < x.front() - slack || at > x.back() + slack)
    throw ModelError("fuse rating " + format(rating, "A") + " is not between " +
                     format(data::fuses().front().rating, "A") + " and " + format(data::fuses().back().rating, "A"));
  return std::exp(numeric::LinearCurve(x, y)(at)) * ohm;
}
}  // namespace lumwright::power
