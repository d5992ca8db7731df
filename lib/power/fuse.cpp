#include "power/fuse.hpp"
#include "numeric/curve.hpp"
#include "power/require.hpp"
#include <cmath>

namespace lumwright {
namespace {
constexpr double slack = 1e-9;  // 0.75 A over 0.75 must still find the fuse of 1 A
}
Current fuse_for(Current most, const data::FuseRule& rule) {
  require_positive(most, "A", "current through the fuse");
  const Current least = most / rule.continuous * (1.0 - slack);
  for (const data::FuseRow& row : data::fuses())
    if (row.rating >= least) return row.rating;
  throw ModelError("current through the fuse " + format(most, "A") + " is more than the largest rating, " +
                   format(data::fuses().back().rating, "A") + ", carries");
}

FuseCheck check_fuse(const FuseDuty& duty, const data::FuseRule& rule) {
  require_positive(duty.rating, "A", "fuse rating");
  require_positive(duty.most, "A", "current through the fuse");
  require_positive(duty.shorted, "A", "short-circuit current");
  const double share = in(duty.most, duty.rating), multiple = in(duty.shorted, duty.rating);
  return {.load_share = share,
          .carries = share <= rule.continuous * (1.0 + slack),
          .short_multiple = multiple,
          .short_opens = multiple >= rule.opens};
}

Resistance fuse_resistance(Current rating) {
  std::vector<double> x, y;
  for (const data::FuseRow& row : data::fuses()) {
    x.push_back(std::log(in(row.rating, A)));
    y.push_back(std::log(in(row.cold.value, ohm)));
  }
  require_positive(rating, "A", "fuse rating");
  const double at = std::log(in(rating, A));
  if (at < x.front() - slack || at > x.back() + slack)
    throw ModelError("fuse rating " + format(rating, "A") + " is not between " +
                     format(data::fuses().front().rating, "A") + " and " + format(data::fuses().back().rating, "A"));
  return std::exp(LinearCurve(x, y)(at)) * ohm;
}
}  // namespace lumwright
