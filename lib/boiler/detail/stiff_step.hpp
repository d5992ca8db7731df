// A step for rates that a small change of state turns round quickly: Rosenbrock's method, order 4(3), whose length is
// not bound to the quickest of them.
#pragma once
#include <algorithm>
#include <array>
#include <boost/numeric/odeint/stepper/rosenbrock4.hpp>
#include <cmath>
#include <utility>
#include <vector>

namespace lumwright::boiler {
/// Hairer and Wanner, Solving Ordinary Differential Equations II, IV.7 (RODAS), with the coefficients of Boost.Odeint,
/// whose 1.74 has lost the sign of d4: a solution that is straight in time then comes out bent.
/// Its own stepper solves for all states at once, with matrices that C++20 no longer builds; here rates depend on the
/// states `felt` alone, so only those are solved for, and the others follow. Slopes are differences.
template <std::size_t N>
class StiffStep {
 public:
  using State = std::array<double, N>;
  StiffStep(std::vector<std::size_t> felt, double tolerance) : felt_(std::move(felt)), tolerance_(tolerance) {}

  /// From `x` at `t` by `dt` into `end`; the error over what is tolerated, at most one for a good step.
  template <class Rates>
  double attempt(Rates&& rates, const State& x, const State& rate, double t, double dt, State& end) {
    prepare(rates, x, rate, t, dt);
    // Rows of the method: what of the earlier stages goes into the state, and over the step into the right-hand side.
    const std::array<std::array<double, 4>, 4> into_state{
        {{c_.a21}, {c_.a31, c_.a32}, {c_.a41, c_.a42, c_.a43}, {c_.a51, c_.a52, c_.a53, c_.a54}}};
    const std::array<std::array<double, 4>, 4> into_rate{
        {{c_.c21}, {c_.c31, c_.c32}, {c_.c41, c_.c42, c_.c43}, {c_.c51, c_.c52, c_.c53, c_.c54}}};
    const std::array<double, 4> when{c_.c2, c_.c3, c_.c4, 1.0}, drift{c_.d2, c_.d3, -std::abs(c_.d4), 0.0};
    State right, there = x;
    for (std::size_t i = 0; i < N; ++i) right[i] = rate[i] + dt * c_.d1 * by_time_[i];
    stages_[0] = solved(right);
    for (std::size_t k = 0; k < 4; ++k) {
      there = x;
      for (std::size_t j = 0; j <= k; ++j)
        for (std::size_t i = 0; i < N; ++i) there[i] += into_state[k][j] * stages_[j][i];
      rates(there, right, t + when[k] * dt);
      for (std::size_t i = 0; i < N; ++i) {
        right[i] += dt * drift[k] * by_time_[i];
        for (std::size_t j = 0; j <= k; ++j) right[i] += into_rate[k][j] / dt * stages_[j][i];
      }
      stages_[k + 1] = solved(right);
    }
    for (std::size_t i = 0; i < N; ++i) there[i] += stages_[4][i];
    rates(there, right, t + dt);
    const std::array<double, 5> into_error{c_.c61, c_.c62, c_.c63, c_.c64, c_.c65};
    for (std::size_t i = 0; i < N; ++i)
      for (std::size_t j = 0; j < 5; ++j) right[i] += into_error[j] / dt * stages_[j][i];
    const State error = solved(right);
    double worst = 0.0;
    for (std::size_t i = 0; i < N; ++i) {
      end[i] = there[i] + error[i];
      worst = std::max(worst, std::abs(error[i]) / (tolerance_ * (1.0 + std::abs(x[i]))));
    }
    return worst;
  }
  /// How much longer the next step may be.
  static double stretch(double error) { return std::clamp(0.9 * std::pow(std::max(error, 1e-12), -0.25), 0.2, 6.0); }
  /// At a share of the last step.
  State within(double share, const State& x, const State& end) const {
    const std::array<double, 5> third{c_.d21, c_.d22, c_.d23, c_.d24, c_.d25},
        fourth{c_.d31, c_.d32, c_.d33, c_.d34, c_.d35};
    State out;
    for (std::size_t i = 0; i < N; ++i) {
      double a = 0.0, b = 0.0;
      for (std::size_t j = 0; j < 5; ++j) a += third[j] * stages_[j][i], b += fourth[j] * stages_[j][i];
      out[i] = x[i] * (1.0 - share) + share * (end[i] + (1.0 - share) * (a + share * b));
    }
    return out;
  }

 private:
  static constexpr double difference = 1e-4;  // of states of about one: far above the noise of rates good to 1e-6

  template <class Rates>
  void prepare(Rates&& rates, const State& x, const State& rate, double t, double dt) {
    State there;
    slopes_.resize(felt_.size());
    for (std::size_t k = 0; k < felt_.size(); ++k) {
      State beside = x;
      beside[felt_[k]] += difference;
      rates(beside, there, t);
      for (std::size_t i = 0; i < N; ++i) slopes_[k][i] = (there[i] - rate[i]) / difference;
    }
    const double later = 1e-3 * dt;
    rates(x, there, t + later);
    for (std::size_t i = 0; i < N; ++i) by_time_[i] = (there[i] - rate[i]) / later;
    inverse_ = 1.0 / (c_.gamma * dt);
  }
  // (inverse - slopes) g = right: Gauss over the states that are felt, whose diagonal leads in short steps; with the
  // largest pivot, for long ones.
  State solved(const State& right) const {
    const std::size_t n = felt_.size();
    std::vector<std::vector<double>> rows(n, std::vector<double>(n + 1));
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = 0; j < n; ++j) rows[i][j] = (i == j ? inverse_ : 0.0) - slopes_[j][felt_[i]];
      rows[i][n] = right[felt_[i]];
    }
    for (std::size_t k = 0; k < n; ++k) {
      const auto from = rows.begin() + static_cast<std::ptrdiff_t>(k);
      std::iter_swap(from, std::max_element(from, rows.end(), [k](const auto& a, const auto& b) {
                       return std::abs(a[k]) < std::abs(b[k]);
                     }));
      for (std::size_t i = k + 1; i < n; ++i)
        for (std::size_t j = n + 1; j-- > k;) rows[i][j] -= rows[i][k] / rows[k][k] * rows[k][j];
    }
    std::vector<double> found(n);
    for (std::size_t i = n; i-- > 0;) {
      found[i] = rows[i][n];
      for (std::size_t j = i + 1; j < n; ++j) found[i] -= rows[i][j] * found[j];
      found[i] /= rows[i][i];
    }
    State g = right;
    for (std::size_t k = 0; k < n; ++k)
      for (std::size_t i = 0; i < N; ++i) g[i] += slopes_[k][i] * found[k];
    for (double& value : g) value /= inverse_;
    return g;
  }

  boost::numeric::odeint::default_rosenbrock_coefficients<double> c_{};
  std::vector<std::size_t> felt_;
  double tolerance_;
  std::vector<State> slopes_;  // of all rates, by each state that is felt
  State by_time_{};
  double inverse_ = 1.0;
  std::array<State, 5> stages_{};
};
}  // namespace lumwright::boiler
