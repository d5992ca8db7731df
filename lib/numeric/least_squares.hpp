// Least squares with few unknowns: the parameters that a model needs to come nearest to what was measured.
#pragma once
#include <functional>
#include <string>
#include <vector>

namespace lumwright::numeric {
using Matrix = std::vector<std::vector<double>>;  // rows

/// Inverse of a symmetric positive matrix (Cholesky). Throws ModelError if it is none.
Matrix inverse(const Matrix& symmetric);
/// Natural logarithm of its determinant. Throws as `inverse` does.
double log_determinant(const Matrix& symmetric);
/// J'J
Matrix normal_matrix(const Matrix& jacobian);

/// Several numbers that follow from some parameters; may throw ModelError where the model has no answer.
using VectorFunction = std::function<std::vector<double>(const std::vector<double>&)>;
/// d f / d x by central differences, one-sided where f has no answer on the other side; `here` is f(x). Throws
/// ModelError where it has none on either.
Matrix slopes(const VectorFunction& f, const std::vector<double>& x, const std::vector<double>& here,
              const std::vector<double>& step);

struct LeastSquares {
  VectorFunction residuals;  // weighted
  std::vector<double> start;
  std::vector<double> step;  // of the central differences, for each parameter; above zero
  Matrix jacobian;           // at the start, if it is known; else empty
};
struct LeastSquaresFit {
  std::vector<double> x;
  std::vector<double> residuals;
  Matrix jacobian;  // d residual / d parameter, at x or less than a difference step from it
  int evaluations;
  std::string edge;  // what the model says where the way to the minimum is barred; empty at the minimum
};
/// Levenberg and Marquardt, Jacobian by central differences at the ends and by secants between, until a step moves no
/// parameter by more than a hundredth of its difference step, or lessens the sum of squares by less than 1e-5 of it.
/// Steps into regions where the model throws are shortened; a minimum that lies there leaves `edge` set. Throws
/// ModelError if the model has no answer at the start, or no minimum is found in 200 steps.
LeastSquaresFit least_squares(const LeastSquares& problem);
}  // namespace lumwright::numeric
