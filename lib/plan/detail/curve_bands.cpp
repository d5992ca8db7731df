#include "plan/detail/curve_bands.hpp"
#include "numeric/statistics.hpp"
#include "plan/draws.hpp"
#include <algorithm>
#include <limits>

namespace lumwright::plan {
namespace {
constexpr std::size_t enough = 64, least = 16, flows = 32;

/// Pressures of one curve at the common flows, between its points in proportion; above everything beyond its end.
std::vector<double> at_flows(const std::vector<FlowPoint>& curve, VolumeFlow widest, double beyond) {
  std::vector<double> found;
  for (std::size_t i = 0; i <= flows; ++i) {
    const VolumeFlow flow = widest * (static_cast<double>(i) / flows);
    const auto after = std::find_if(curve.begin(), curve.end(), [&](const FlowPoint& p) { return p.flow >= flow; });
    if (after == curve.end()) {
      found.push_back(beyond);
    } else if (after == curve.begin()) {
      found.push_back(in(after->pressure, Pa));
    } else {
      const FlowPoint before = *(after - 1);
      const double share = (flow - before.flow) / (after->flow - before.flow);
      found.push_back(in(before.pressure + share * (after->pressure - before.pressure), Pa));
    }
  }
  return found;
}
std::vector<FlowBand> band(const std::vector<std::vector<double>>& samples, VolumeFlow widest) {
  std::vector<FlowBand> out;
  for (std::size_t i = 0; i <= flows; ++i) {
    std::vector<double> column;
    column.reserve(samples.size());
    for (const std::vector<double>& sample : samples) column.push_back(sample[i]);
    const double low = numeric::quantile(column, low_end), high = numeric::quantile(column, high_end);
    if (!std::isfinite(low)) break;
    out.push_back({widest * (static_cast<double>(i) / flows), low * Pa,
                   std::isfinite(high) ? std::optional(high * Pa) : std::nullopt});
  }
  return out;
}
}  // namespace

void add_curve_bands(DraughtCurves& curves, const description::Build& build, const model::Tuning* tuning,
                     const SamplesAsked& asked) {
  if (asked.count < least || curves.hot.fan.empty()) return;
  const description::Build wider = with_measuring_spread(build);
  const Draws draws(model::solve(wider, {}, tuning).inputs, asked.count, asked.seed);
  std::vector<std::vector<double>> fans, paths;
  for (std::size_t sample = 0; sample < std::min(asked.count, enough); ++sample) {
    const model::Solved solved = model::solve(wider, draws.of_sample(sample), tuning);
    if (!solved.draught || !solved.fan || !solved.draught->hot) continue;
    try {
      const DraughtCurves here = draught_curves(*solved.draught, solved.fan);
      fans.push_back(at_flows(here.hot.fan, curves.widest, 0.0));
      paths.push_back(at_flows(here.hot.path, curves.widest, std::numeric_limits<double>::infinity()));
    } catch (const ModelError&) {  // this sample has no picture
    }
  }
  if (fans.size() < least) return;
  curves.fan_band = band(fans, curves.widest);
  curves.path_band = band(paths, curves.widest);
}
}  // namespace lumwright::plan
