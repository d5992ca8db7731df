#include "fire/habits.hpp"
#include "data/monoxide.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::fire {
Band<Duration> kindling_time(const data::KindlingRow& row, Area grate) {
  require_above_zero("grate area", grate);
  const data::KindlingSize& size = data::kindling_size();
  const Duration time = std::pow(static_cast<double>(grate / size.grate), size.power) * row.time;
  return {time, time / row.factor, time * row.factor};
}

namespace {
Band<double> by_depth(double lumps) {
  const auto& rows = data::monoxide_shares();
  if (lumps <= rows.front().lumps) return rows.front().loss;
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const data::MonoxideRow &before = rows[i - 1], &after = rows[i];
    if (lumps > after.lumps) continue;
    const double along = (lumps - before.lumps) / (after.lumps - before.lumps);
    const auto between = [&](double a, double b) { return a + along * (b - a); };
    return {between(before.loss.value, after.loss.value), between(before.loss.low, after.loss.low),
            between(before.loss.high, after.loss.high)};
  }
  return rows.back().loss;
}
}  // namespace

Band<double> monoxide_share(const MonoxideFrom& fire) {
  require_above_zero("depth of the fire over the size of its lumps", fire.lumps);
  require_within("share of the air that misses the bed", fire.leak, {0.0, 1.0});
  const data::OverFireAir& over = data::over_fire_air();
  const double left = std::pow((1.0 - fire.leak) / (1.0 - over.leak), over.power);
  const Band<double> usual = by_depth(fire.lumps);
  const auto with_leak = [&](double share) { return std::min(left * share, over.most); };
  return {with_leak(usual.value), with_leak(usual.low), with_leak(usual.high)};
}
}  // namespace lumwright::fire
