#include "numeric/least_squares.hpp"
#include "quantity/errors.hpp"
#include <cmath>
#include <optional>

namespace lumwright::numeric {
namespace {
using Vector = std::vector<double>;
double squares(const Vector& r) {
  double sum = 0.0;
  for (const double x : r) sum += x * x;
  return sum;
}
/// Lower triangle of the Cholesky factor.
Matrix triangle(const Matrix& a) {
  const std::size_t n = a.size();
  Matrix l(n, Vector(n, 0.0));
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = a[i][j];
      for (std::size_t k = 0; k < j; ++k) sum -= l[i][k] * l[j][k];
      if (i == j && !(sum > 1e-14 * a[i][i])) throw ModelError("the readings leave a parameter without any hold");
      l[i][j] = i == j ? std::sqrt(sum) : sum / l[j][j];
    }
  return l;
}
Vector solve(const Matrix& l, Vector b) {
  const std::size_t n = b.size();
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) b[i] -= l[i][k] * b[k];
    b[i] /= l[i][i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) b[i] -= l[k][i] * b[k];
    b[i] /= l[i][i];
  }
  return b;
}

class Search {
 public:
  explicit Search(const LeastSquares& problem) : problem_(problem), x_(problem.start), r_(run(x_)) {}
  LeastSquaresFit find() {
    jacobian_ = problem_.jacobian.empty() ? jacobian() : problem_.jacobian;
    fresh_ = problem_.jacobian.empty();
    for (int step = 0; step < 200; ++step) {
      if (advance()) continue;
      if (fresh_) return {x_, r_, jacobian_, evaluations_, edge()};
      jacobian_ = jacobian();  // it was a minimum only to a secant's eye
      fresh_ = true;
    }
    throw ModelError("the fit to the readings finds no minimum in 200 steps");
  }

 private:
  Vector run(const Vector& x) {
    ++evaluations_;
    return problem_.residuals(x);
  }
  std::optional<Vector> try_at(const Vector& x) {
    try {
      return run(x);
    } catch (const ModelError& e) {
      edge_ = e.what();
      return std::nullopt;
    }
  }
  Matrix jacobian() {
    return slopes([this](const Vector& x) { return run(x); }, x_, r_, problem_.step);
  }
  /// The Jacobian that this step has shown in its own direction (Broyden, 1965): spares most of the evaluations.
  void follow(const Vector& step, const Vector& r) {
    double length = 0.0;
    for (std::size_t k = 0; k < step.size(); ++k) length += std::pow(step[k] / problem_.step[k], 2);
    for (std::size_t i = 0; i < r.size(); ++i) {
      double miss = r[i] - r_[i];
      for (std::size_t k = 0; k < step.size(); ++k) miss -= jacobian_[i][k] * step[k];
      for (std::size_t k = 0; k < step.size(); ++k)
        jacobian_[i][k] += miss * step[k] / (problem_.step[k] * problem_.step[k] * length);
    }
  }
  /// To the minimum of the linear model.
  Vector step(double damping) const {
    Vector slope(x_.size(), 0.0);
    for (std::size_t i = 0; i < r_.size(); ++i)
      for (std::size_t k = 0; k < x_.size(); ++k) slope[k] -= jacobian_[i][k] * r_[i];
    Matrix damped = normal_matrix(jacobian_);
    for (std::size_t k = 0; k < x_.size(); ++k) damped[k][k] *= 1.0 + damping;
    return solve(triangle(damped), slope);
  }
  bool moves(const Vector& step) const {
    for (std::size_t k = 0; k < step.size(); ++k)
      if (std::abs(step[k]) > 1e-2 * problem_.step[k]) return true;
    return false;
  }
  Vector from_here(const Vector& step) const {
    Vector x = x_;
    for (std::size_t k = 0; k < x.size(); ++k) x[k] += step[k];
    return x;
  }
  /// One step down; false at a minimum, or where a secant leads no further.
  bool advance() {
    for (int attempt = 0; attempt < 40; ++attempt) {
      const Vector by = step(damping_);
      if (!moves(by)) return false;
      if (const auto r = try_at(from_here(by)); r && squares(*r) < squares(r_)) {
        const bool done = squares(r_) - squares(*r) <= 1e-5 * squares(r_);
        follow(by, *r);
        fresh_ = false;
        x_ = from_here(by), r_ = *r, damping_ *= 0.1;
        if (damping_ < 1e-9) damping_ = 0.0;
        return !done;
      }
      if (!fresh_) return false;
      damping_ = std::max(1e-3, damping_ * 10.0);
    }
    return false;
  }
  /// What the model says where the way to the minimum is barred; empty at the minimum itself.
  std::string edge() {
    const Vector by = step(0.0);
    edge_.clear();
    if (moves(by)) try_at(from_here(by));
    return edge_;
  }

  const LeastSquares& problem_;
  int evaluations_ = 0;
  std::string edge_;
  Vector x_, r_;
  Matrix jacobian_;
  double damping_ = 0.0;
  bool fresh_ = true;  // the Jacobian is of this point
};
}  // namespace

Matrix inverse(const Matrix& symmetric) {
  const std::size_t n = symmetric.size();
  const Matrix l = triangle(symmetric);
  Matrix out;
  for (std::size_t k = 0; k < n; ++k) {
    Vector e(n, 0.0);
    e[k] = 1.0;
    out.push_back(solve(l, std::move(e)));
  }
  return out;
}
double log_determinant(const Matrix& symmetric) {
  const Matrix l = triangle(symmetric);
  double sum = 0.0;
  for (std::size_t k = 0; k < l.size(); ++k) sum += 2.0 * std::log(l[k][k]);
  return sum;
}
Matrix normal_matrix(const Matrix& jacobian) {
  const std::size_t n = jacobian.empty() ? 0 : jacobian.front().size();
  Matrix out(n, Vector(n, 0.0));
  for (const Vector& row : jacobian)
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j < n; ++j) out[i][j] += row[i] * row[j];
  return out;
}
Matrix slopes(const VectorFunction& f, const Vector& x, const Vector& here, const Vector& step) {
  Matrix j(here.size(), Vector(x.size(), 0.0));
  for (std::size_t k = 0; k < x.size(); ++k) {
    std::string why;
    const auto beside = [&](double by) -> std::optional<Vector> {
      Vector there = x;
      there[k] += by;
      try {
        return f(there);
      } catch (const ModelError& e) {
        why = e.what();
        return std::nullopt;
      }
    };
    const auto up = beside(step[k]), down = beside(-step[k]);
    if (!up && !down) throw ModelError(why);
    const Vector &high = up ? *up : here, &low = down ? *down : here;
    const double width = step[k] * ((up ? 1.0 : 0.0) + (down ? 1.0 : 0.0));
    for (std::size_t i = 0; i < here.size(); ++i) j[i][k] = (high[i] - low[i]) / width;
  }
  return j;
}
LeastSquaresFit least_squares(const LeastSquares& problem) { return Search(problem).find(); }
}  // namespace lumwright::numeric
