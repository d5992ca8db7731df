#include "draught/fan_fit.hpp"
#include "draught/detail/fan_smooth.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace lumwright::draught {
namespace {
constexpr double step = SmoothCurve::step;
constexpr double near_free_air = 0.1;  // of the highest pressure
constexpr double hump_sigmas = 2.0, leak_sigmas = 2.0;
constexpr double together = 0.95;

using Vector = std::vector<double>;

void check(const TestedFan& fan) {
  for (const TestPoint& p : fan.points) {
    require_not_negative("flow of a fan test", p.flow);
    require_above_zero("pressure of a fan test", p.pressure);
    require_above_zero("uncertainty of a fan test's pressure", p.pressure_sigma);
    require_not_negative("uncertainty of a fan test's flow", p.flow_sigma);
    require_not_negative("share of the flow's error in the pressure's", p.flow_with_pressure);
  }
  for (const CommonError& e : fan.common) {
    require_finite("common error of flow", e.flow);
    require_finite("common error of pressure", e.pressure);
  }
}

/// The nearest falling curve (pool adjacent violators; Barlow and others 1972).
Vector falling(const Vector& y) {
  struct Pool {
    double sum;
    std::size_t count;
    double mean() const { return sum / static_cast<double>(count); }
  };
  std::vector<Pool> pools;
  for (const double one : y) {
    pools.push_back({one, 1});
    while (pools.size() > 1 && pools.back().mean() > pools[pools.size() - 2].mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum, pools.back().count += last.count;
    }
  }
  Vector out;
  for (const Pool& pool : pools) out.insert(out.end(), pool.count, pool.mean());
  return out;
}

struct Rise {
  std::size_t dip, top;
  double rise, sigmas;
};
/// The stretch between the outermost readings that climbs most surely.
std::optional<Rise> surest_rise(const SmoothCurve& fit, double first, double last) {
  std::optional<Rise> best;
  const auto from = static_cast<std::size_t>(std::lround(first / step)), to = fit.node(last);
  for (std::size_t j = from; j <= to; ++j)
    for (std::size_t k = j + 1; k <= to; ++k) {
      const auto& c = fit.covariance;
      const double rise = fit.y[k] - fit.y[j], variance = c[j][j] + c[k][k] - 2.0 * c[j][k];
      if (!(rise > 0.0) || !(variance > 0.0)) continue;
      const double sigmas = rise / (fit.widened() * std::sqrt(variance));
      if (sigmas > hump_sigmas && (!best || rise > best->rise)) best = {j, k, rise, sigmas};
    }
  return best;
}

/// Standard deviations within which `count` independent errors all lie with the probability `together` (Sidak 1967).
double cover_of(double count) {
  const double each = std::pow(together, 1.0 / std::max(1.0, count));
  return quantile(boost::math::normal(), 0.5 + 0.5 * each);
}
double common_variance(const std::vector<CommonError>& errors, double x, double y, double slope) {
  double sum = 0.0;
  for (const CommonError& e : errors) sum += std::pow(e.pressure * y - e.flow * slope * x, 2);
  return sum;
}
TestedFan without_closed_lid(TestedFan fan) {
  std::erase_if(fan.points, [](const TestPoint& p) { return p.flow == 0.0 * m3_per_s; });
  return fan;
}

/// Curve and band at the nodes.
struct Banded {
  Vector y, low, high;
};
Banded banded(const SmoothCurve& fit, const Vector& y, double cover, const std::vector<CommonError>& common) {
  Banded out{y, {}, {}};
  for (std::size_t j = 0; j < y.size(); ++j) {
    const double x = step * static_cast<double>(j);
    const double variance =
        std::pow(fit.widened(), 2) * fit.covariance[j][j] + common_variance(common, x, fit.y[j], fit.slope(x));
    const double half = cover * std::sqrt(variance);
    out.low.push_back(std::min(y[j], fit.y[j]) - half);
    out.high.push_back(std::max(y[j], fit.y[j]) + half);
  }
  return out;
}
/// No fan climbs again beyond the readings: the band does not either.
void fall_beyond(Banded& b, double last) {
  for (std::size_t j = 1; j < b.high.size(); ++j)
    if (step * static_cast<double>(j) > last) b.high[j] = std::min(b.high[j], std::max(b.high[j - 1], b.y[j]));
}
/// Where the curve meets zero; at x = 1, the usual shape's free air, if it does nowhere.
double free_air_of(Vector& y, double last) {
  for (std::size_t j = 1; j < y.size(); ++j)
    if (y[j] <= 0.0) return step * (static_cast<double>(j) - y[j] / (y[j] - y[j - 1]));
  const auto from = static_cast<std::size_t>(last / step);
  const double at = step * static_cast<double>(from), free_air = std::max(1.0, 1.1 * at);
  for (std::size_t j = from + 1; j < y.size(); ++j)
    y[j] = y[from] * (free_air - step * static_cast<double>(j)) / (free_air - at);
  return free_air;
}
double interpolated(const Vector& y, double x) {
  const std::size_t j = std::min(static_cast<std::size_t>(x / step), y.size() - 2);
  return y[j] + (x / step - static_cast<double>(j)) * (y[j + 1] - y[j]);
}
constexpr int pieces = 40;

/// Closed lid, all its readings together.
struct ClosedLid {
  double y, sigma;
  std::size_t readings;
};
ClosedLid closed_lid(const TestedFan& fan, const FanScales& scales) {
  ClosedLid out{0.0, 0.0, 0};
  for (const ScaledPoint& p : scaled_points(fan, scales)) {
    if (p.x > 0.0) break;
    out.y += p.y, out.sigma += p.sigma * p.sigma, ++out.readings;
  }
  const auto n = static_cast<double>(std::max<std::size_t>(out.readings, 1));
  return {out.y / n, std::sqrt(out.sigma) / n, out.readings};
}

struct Trend {
  SmoothCurve curve;
  FanScales scales;
  double last;
};
/// Of the open plates; nothing if they are too few to have one.
std::optional<Trend> open_trend(const TestedFan& fan) {
  const TestedFan open = without_closed_lid(fan);
  if (open.points.size() < 2) return std::nullopt;
  try {
    const FanScales scales = fan_scales(open);
    return Trend{smooth_curve(open, scales), scales, scaled_points(open, scales).back().x};
  } catch (const ModelError&) {  // all at one flow, or rising
    return std::nullopt;
  }
}
/// The band holds the trend as well, left of the first open plate.
void hold_trend(Banded& b, const Trend& trend, const FanScales& scales, double cover, const TestedFan& fan) {
  const Banded other = banded(trend.curve, trend.curve.y, cover, fan.common);
  const std::vector<ScaledPoint> points = scaled_points(fan, scales);
  const auto open = std::find_if(points.begin(), points.end(), [](const ScaledPoint& p) { return p.x > 0.0; });
  const double wider = scales.flow / trend.scales.flow, higher = trend.scales.pressure / scales.pressure;
  for (std::size_t j = 0; step * static_cast<double>(j) < open->x; ++j)
    b.high[j] = std::max(b.high[j], higher * interpolated(other.high, wider * step * static_cast<double>(j)));
}
std::optional<LeakSuspicion> suspicion(const TestedFan& fan, const std::optional<Trend>& trend) {
  if (!trend) return std::nullopt;
  const ClosedLid read = closed_lid(fan, trend->scales);
  if (read.readings == 0) return std::nullopt;
  const SmoothCurve& curve = trend->curve;
  const double sigma = std::hypot(read.sigma, curve.widened() * std::sqrt(curve.variance(0.0)));
  const double sigmas = (curve.y[0] - read.y) / sigma;
  if (!(sigmas > leak_sigmas)) return std::nullopt;
  double x = 0.0;
  while (x < trend->last && curve.value(x) > read.y) x += 0.1 * step;
  return LeakSuspicion{.read = read.y * trend->scales.pressure,
                       .expected = curve.y[0] * trend->scales.pressure,
                       .sigmas = sigmas,
                       .flow = x * trend->scales.flow};
}
}  // namespace

std::optional<LeakSuspicion> leak_suspicion(const TestedFan& fan) {
  check(fan);
  return suspicion(fan, open_trend(fan));
}

FanFit fit_fan_curve(const TestedFan& fan) {
  check(fan);
  const FanScales scales = fan_scales(fan);
  const SmoothCurve fit = smooth_curve(fan, scales);
  const std::vector<ScaledPoint> points = scaled_points(fan, scales);
  const double first = points.front().x, last = points.back().x;
  const std::optional<Rise> rise = surest_rise(fit, first, last);
  const double cover = cover_of(fit.used);
  Banded b = banded(fit, rise ? fit.y : falling(fit.y), cover, fan.common);
  if (const auto trend = open_trend(fan); suspicion(fan, trend)) hold_trend(b, *trend, scales, cover, fan);
  fall_beyond(b, last);
  const double free_air = free_air_of(b.y, last), end_slope = fit.slope(free_air);
  const double end_sigma = std::sqrt(std::pow(fit.widened(), 2) * fit.variance(free_air) +
                                     common_variance(fan.common, free_air, 0.0, end_slope));
  // Where nothing was read near free air the true end may be flatter than the usual one: a mean slope at most, half of
  // one where the curve has none.
  const bool read_near = points.back().y <= near_free_air;
  const double end_half = cover * end_sigma / std::max(read_near ? -end_slope : std::min(-end_slope, 1.0), 0.5);
  FanFit out{.curve = {},
             .shut_off = {b.y[0] * scales.pressure, b.low[0] * scales.pressure, b.high[0] * scales.pressure},
             .free_air = {free_air * scales.flow, std::max(free_air - end_half, 0.5 * free_air) * scales.flow,
                          (free_air + end_half) * scales.flow},
             .shut_off_read = first == 0.0,
             .free_air_near = read_near,
             .hump = std::nullopt,
             .cover = cover,
             .misfit = fit.misfit,
             .freedom = fit.freedom,
             .widened = fit.widened()};
  if (rise)
    out.hump = FanHump{.dip = step * static_cast<double>(rise->dip) * scales.flow,
                       .top = step * static_cast<double>(rise->top) * scales.flow,
                       .rise = rise->rise * scales.pressure,
                       .sigmas = rise->sigmas};
  for (int i = 0; i <= pieces; ++i) {
    const double x = free_air * i / pieces;
    out.curve.push_back({.flow = x * scales.flow,
                         .pressure = (i == pieces ? 0.0 : interpolated(b.y, x)) * scales.pressure,
                         .low = interpolated(b.low, x) * scales.pressure,
                         .high = interpolated(b.high, x) * scales.pressure,
                         .beyond = x < first || x > last});
  }
  return out;
}

CurveBandPoint FanFit::at(VolumeFlow flow) const {
  require_not_negative("flow of a fan", flow);
  if (flow > curve.back().flow) throw ModelError("flow of a fan " + format(flow, "l/min") + " is beyond its free air");
  std::size_t k = 1;
  while (k + 1 < curve.size() && flow > curve[k].flow) ++k;
  const CurveBandPoint &a = curve[k - 1], &b = curve[k];
  const double share = (flow - a.flow) / (b.flow - a.flow);
  const auto mix = [share](Pressure x, Pressure y) { return x + share * (y - x); };
  return {.flow = flow,
          .pressure = mix(a.pressure, b.pressure),
          .low = mix(a.low, b.low),
          .high = mix(a.high, b.high),
          .beyond = a.beyond && b.beyond};
}
}  // namespace lumwright::draught
