#include "draught/detail/fittings_charts.hpp"
#include <algorithm>

namespace lumwright::draught {
double spline_at(const data::Spline& s, double x) {
  const std::size_t p = s.degree, last = s.coefficients.size() - 1;
  const auto& t = s.knots;
  const double at = std::clamp(x, t.front(), t.back());
  std::size_t k = p;
  while (k < last && at >= t[k + 1]) ++k;
  std::vector<double> d(s.coefficients.begin() + static_cast<std::ptrdiff_t>(k - p),
                        s.coefficients.begin() + static_cast<std::ptrdiff_t>(k + 1));
  for (std::size_t r = 1; r <= p; ++r)  // de Boor, 1972
    for (std::size_t j = p; j >= r; --j) {
      const double left = t[j + k - p], right = t[j + 1 + k - r];
      const double share = (at - left) / (right - left);
      d[j] = (1.0 - share) * d[j - 1] + share * d[j];
    }
  return d[p];
}

double polynomial_at(const data::Polynomial& polynomial, double x) {
  const double u = std::clamp((x - polynomial.centre) / polynomial.half_width, -1.0, 1.0);
  double sum = 0;
  for (const double c : polynomial.coefficients) sum = sum * u + c;
  return sum;
}

namespace {
double between(const std::vector<double>& x, const std::vector<double>& y, double at) {
  return numeric::LinearCurve(x, y)(std::clamp(at, x.front(), x.back()));
}
}  // namespace

double grid_at(const data::Grid& grid, double x, double along) {
  std::vector<double> column;
  for (const std::vector<double>& row : grid.y) column.push_back(between(grid.along, row, along));
  return between(grid.x, column, x);
}

double points_at(const data::Points& points, double x) { return between(points.x, points.y, x); }
}  // namespace lumwright::draught
