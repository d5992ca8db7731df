#include "report/chart/labels.hpp"
#include "report/detail/wrap.hpp"
#include <algorithm>
#include <cmath>
#include <numeric>

namespace lumwright::report::chart {
namespace {
constexpr double width_of_letter = 0.56;  // of the size; the mean of common sans-serif faces is near 0.5

struct Pool {
  double sum;
  std::size_t count;
  double mean() const { return sum / static_cast<double>(count); }
};
/// The non-falling sequence nearest to `values`.
std::vector<double> rising(const std::vector<double>& values) {
  std::vector<Pool> pools;
  for (const double v : values) {
    pools.push_back({v, 1});
    while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back() = {pools.back().sum + last.sum, pools.back().count + last.count};
    }
  }
  std::vector<double> out;
  for (const Pool& pool : pools) out.insert(out.end(), pool.count, pool.mean());
  return out;
}
}  // namespace

double text_width(std::string_view text, double size) {
  return width_of_letter * size * static_cast<double>(columns(legible(text)));
}

std::vector<double> nudged(const std::vector<double>& wanted, double apart, Range within) {
  const std::size_t n = wanted.size();
  if (n == 0) return {};
  const double room = within.high - within.low;
  if (n > 1) apart = std::min(apart, room / static_cast<double>(n - 1));
  std::vector<std::size_t> order(n);
  std::iota(order.begin(), order.end(), 0U);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return wanted[a] < wanted[b]; });
  std::vector<double> moved;  // less the room that those before it need
  for (std::size_t i = 0; i < n; ++i) moved.push_back(wanted[order[i]] - apart * static_cast<double>(i));
  moved = rising(moved);
  std::vector<double> out(n);
  const double most = std::max(within.high - apart * static_cast<double>(n - 1), within.low);
  for (std::size_t i = 0; i < n; ++i)
    out[order[i]] = std::clamp(moved[i], within.low, most) + apart * static_cast<double>(i);
  return out;
}

std::vector<Placed> in_lanes(const std::vector<Wanted>& labels, Range room, double gap) {
  std::vector<Placed> placed;
  const auto free = [&](double x, double width, int lane) {
    for (std::size_t i = 0; i < placed.size(); ++i)
      if (placed[i].lane == lane && x < placed[i].x + labels[i].width + gap && placed[i].x < x + width + gap)
        return false;
    return true;
  };
  for (const Wanted& label : labels) {
    const bool left = label.mark + gap + label.width > room.high && label.mark - gap - label.width >= room.low;
    double x = left ? label.mark - gap - label.width : label.mark + gap;
    x = std::max(std::min(x, room.high - label.width), room.low);
    int lane = 0;
    while (!free(x, label.width, lane)) ++lane;
    placed.push_back({.x = x, .lane = lane, .left = left});
  }
  return placed;
}

std::vector<std::string> lines_of(std::string_view text, double width, double size) {
  return wrap(text, std::max<std::size_t>(4, static_cast<std::size_t>(width / (width_of_letter * size))));
}
}  // namespace lumwright::report::chart
