#include "tune/detail/hierarchy.hpp"
#include "numeric/statistics.hpp"
#include <algorithm>
#include <cmath>

namespace lumwright::tune {
namespace {
using numeric::Matrix;
// Even nodes over the normal law of ln s, in its standard deviations: the trapezoid rule, which converges geometrically
// (Trefethen and Weideman 2014, from memory).
constexpr double node_step = 0.5;
constexpr int nodes_each_side = 5;
constexpr double point_width = 1e-9;

double dot(const Vector& a, const Vector& b) {
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}
Vector times(const Matrix& a, const Vector& x) {
  Vector out;
  for (const Vector& row : a) out.push_back(dot(row, x));
  return out;
}
/// (T^-1 + A_vv)^-1 over the factors that scatter.
Matrix day_covariance(const Law& law, const DayEvidence& day, const Vector& scatter) {
  const std::size_t n = law.scattering.size();
  Matrix precision(n, Vector(n, 0.0));
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      precision[i][j] =
          day.information[law.scattering[i]][law.scattering[j]] + (i == j ? 1.0 / (scatter[i] * scatter[i]) : 0.0);
  return n == 0 ? precision : numeric::inverse(precision);
}
/// What a day says of its factors without its own scatter, with the scatter integrated out.
struct Marginal {
  Matrix information;
  Vector pull;
  double log_evidence;
};
Marginal marginal(const Law& law, const DayEvidence& day, const Vector& scatter) {
  const std::size_t n = law.scattering.size(), k = law.factors;
  Marginal out{day.information, day.pull, 0.0};
  if (n == 0) return out;
  const Matrix w = day_covariance(law, day, scatter);
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b = 0; b < n; ++b) {
      const std::size_t va = law.scattering[a], vb = law.scattering[b];
      for (std::size_t i = 0; i < k; ++i) {
        const double left = day.information[i][va] * w[a][b];
        for (std::size_t j = 0; j < k; ++j) out.information[i][j] -= left * day.information[vb][j];
        out.pull[i] -= left * day.pull[vb];
      }
      out.log_evidence += 0.5 * day.pull[va] * w[a][b] * day.pull[vb];
    }
  out.log_evidence += 0.5 * numeric::log_determinant(w);
  for (const double s : scatter) out.log_evidence -= std::log(s);
  return out;
}
/// A day's factors from the engine's numbers: of factor i, the engine's own and the drifts that move it.
Matrix design(const Law& law, const Vector& counts) {
  Matrix m(law.factors, Vector(law.factors + law.drifting.size(), 0.0));
  for (std::size_t i = 0; i < law.factors; ++i) m[i][i] = 1.0;
  for (std::size_t j = 0; j < law.drifting.size(); ++j)
    m[law.drifting[j]][law.factors + j] = counts[j] * law.drift_sigma[j];
  return m;
}
struct Sums {
  Matrix precision;
  Vector pull;
  double log_evidence;
};
void add(Sums& sums, const Matrix& m, const Marginal& day) {
  const std::size_t n = sums.pull.size(), k = m.size();
  for (std::size_t i = 0; i < k; ++i)
    for (std::size_t p = 0; p < n; ++p) {
      if (m[i][p] == 0.0) continue;
      sums.pull[p] += m[i][p] * day.pull[i];
      for (std::size_t j = 0; j < k; ++j)
        for (std::size_t q = 0; q < n; ++q) sums.precision[p][q] += m[i][p] * day.information[i][j] * m[j][q];
    }
  sums.log_evidence += day.log_evidence;
}
/// Every combination of nodes, one for each scatter.
std::vector<std::pair<double, Vector>> scatter_nodes(const Law& law) {
  std::vector<std::pair<double, Vector>> all{{0.0, {}}};
  for (const double usual : law.usual_scatter) {
    std::vector<std::pair<double, Vector>> more;
    for (const auto& [log_weight, scatter] : all)
      for (int i = -nodes_each_side; i <= nodes_each_side; ++i) {
        const double at = node_step * i;
        Vector longer = scatter;
        longer.push_back(usual * std::exp(law.scatter_spread * at));
        more.emplace_back(log_weight - 0.5 * at * at, std::move(longer));
      }
    all = std::move(more);
  }
  return all;
}
Sums sums_of(const Law& law, const std::vector<DayEvidence>& days, std::size_t count, const Vector& scatter) {
  const std::size_t n = law.factors + law.drifting.size();
  Sums sums{Matrix(n, Vector(n, 0.0)), Vector(n, 0.0), 0.0};
  for (std::size_t i = 0; i < n; ++i) sums.precision[i][i] = 1.0;
  for (std::size_t d = 0; d < count; ++d) add(sums, design(law, days[d].counts), marginal(law, days[d], scatter));
  return sums;
}
}  // namespace

double Mixture::mean() const {
  double sum = 0.0;
  for (const Part& part : parts) sum += part.weight * part.mean;
  return sum;
}
double Mixture::sigma() const {
  const double middle = mean();
  double sum = 0.0;
  for (const Part& part : parts)
    sum += part.weight * (part.sigma * part.sigma + (part.mean - middle) * (part.mean - middle));
  return std::sqrt(sum);
}
double Mixture::share_below(double x) const {
  double sum = 0.0;
  for (const Part& part : parts)
    sum += part.weight * numeric::normal_share((x - part.mean) / std::max(part.sigma, point_width));
  return sum;
}
double Mixture::quantile(double share) const {
  double low = mean() - 12.0 * sigma() - point_width, high = mean() + 12.0 * sigma() + point_width;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    (share_below(middle) < share ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

Posterior::Posterior(const Law& law, const std::vector<DayEvidence>& days, std::size_t count) : law_(law) {
  double best = -HUGE_VAL;
  for (const auto& [log_weight, scatter] : scatter_nodes(law)) {
    const Sums sums = sums_of(law, days, count, scatter);
    const Matrix covariance = numeric::inverse(sums.precision);
    const Vector mean_here = times(covariance, sums.pull);
    const double log_evidence =
        log_weight + sums.log_evidence + 0.5 * dot(mean_here, sums.pull) + 0.5 * numeric::log_determinant(covariance);
    nodes_.push_back({log_evidence, scatter, mean_here, covariance});
    best = std::max(best, log_evidence);
  }
  double sum = 0.0;
  for (Node& node : nodes_) sum += node.weight = std::exp(node.weight - best);
  for (Node& node : nodes_) node.weight /= sum;
}
Vector Posterior::row_of(const Functional& number) const {
  const Matrix m = design(law_, number.counts);
  Vector row(size(), 0.0);
  for (std::size_t i = 0; i < law_.factors; ++i)
    for (std::size_t p = 0; p < size(); ++p) row[p] += number.of_day[i] * m[i][p];
  return row;
}
Mixture Posterior::of(const Functional& number) const {
  const Vector row = row_of(number);
  Mixture out;
  for (const Node& node : nodes_) {
    double variance = dot(row, times(node.covariance, row));
    for (std::size_t i = 0; number.scattered && i < law_.scattering.size(); ++i)
      variance += std::pow(number.of_day[law_.scattering[i]] * node.scatter[i], 2);
    out.parts.push_back({node.weight, dot(row, node.mean), std::sqrt(variance)});
  }
  return out;
}
Mixture Posterior::drift(std::size_t which) const {
  const std::size_t p = law_.factors + which;
  const double unit = law_.drift_sigma[which];
  Mixture out;
  for (const Node& node : nodes_)
    out.parts.push_back({node.weight, unit * node.mean[p], unit * std::sqrt(node.covariance[p][p])});
  return out;
}
Mixture Posterior::log_scatter(std::size_t which) const {
  Mixture out;
  for (const Node& node : nodes_) out.parts.push_back({node.weight, std::log(node.scatter[which]), 0.0});
  for (Mixture::Part& part : out.parts)  // each node stands for the stretch half-way to its neighbours
    part.sigma = node_step * law_.scatter_spread / std::sqrt(12.0);
  return out;
}
Vector Posterior::scatters() const {
  Vector out;
  for (std::size_t i = 0; i < law_.scattering.size(); ++i) {
    double sum = 0.0;
    for (const Node& node : nodes_) sum += node.weight * std::log(node.scatter[i]);
    out.push_back(std::exp(sum));
  }
  return out;
}
Vector Posterior::mean() const {
  Vector out(size(), 0.0);
  for (const Node& node : nodes_)
    for (std::size_t p = 0; p < size(); ++p) out[p] += node.weight * node.mean[p];
  return out;
}
Matrix Posterior::covariance() const {
  const Vector middle = mean();
  Matrix out(size(), Vector(size(), 0.0));
  for (const Node& node : nodes_)
    for (std::size_t p = 0; p < size(); ++p)
      for (std::size_t q = 0; q < size(); ++q)
        out[p][q] += node.weight * (node.covariance[p][q] + (node.mean[p] - middle[p]) * (node.mean[q] - middle[q]));
  return out;
}

Vector engine_mean(const Law& law, const std::vector<DayEvidence>& days, const Vector& scatter) {
  const Sums sums = sums_of(law, days, days.size(), scatter);
  return times(numeric::inverse(sums.precision), sums.pull);
}
Vector day_factors(const Law& law, const DayEvidence& day, const Vector& scatter, const Vector& mean) {
  Vector u = times(design(law, day.counts), mean);
  if (law.scattering.empty()) return u;
  const Vector met = times(day.information, u);
  Vector left;
  for (const std::size_t v : law.scattering) left.push_back(day.pull[v] - met[v]);
  const Vector own = times(day_covariance(law, day, scatter), left);
  for (std::size_t i = 0; i < own.size(); ++i) u[law.scattering[i]] += own[i];
  return u;
}
}  // namespace lumwright::tune
