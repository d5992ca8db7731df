// Smooth functions that cost much, drawn up once as polynomials and read off after that.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <vector>

namespace lumwright::numeric {
/// `Count` functions of one variable, each a polynomial of degree `Degree` on every piece between rising breaks,
/// through its values at Chebyshev's points (Trefethen, Approximation Theory and Approximation Practice, 2013, ch. 2 to
/// 4): for a function without a kink inside a piece the error falls geometrically with the degree. Read within the
/// breaks only.
template <std::size_t Count, std::size_t Degree>
class ChebyshevPieces {
 public:
  using Values = std::array<double, Count>;
  /// `f(x)` gives all the values at x. At least two breaks.
  template <class F>
  ChebyshevPieces(std::vector<double> breaks, F&& f) : breaks_(std::move(breaks)) {
    for (std::size_t i = 0; i + 1 < breaks_.size(); ++i) pieces_.push_back(fitted(breaks_[i], breaks_[i + 1], f));
    std::size_t piece = 0;
    const std::size_t buckets = 4 * pieces_.size();
    a_bucket_ = static_cast<double>(buckets) / (breaks_.back() - breaks_.front());
    for (std::size_t b = 0; b < buckets; ++b) {  // the piece in which a bucket begins
      while (piece + 1 < pieces_.size() && breaks_[piece + 1] <= breaks_.front() + static_cast<double>(b) / a_bucket_)
        ++piece;
      first_.push_back(piece);
    }
  }
  Values operator()(double x) const {
    const auto bucket = static_cast<std::size_t>((x - breaks_.front()) * a_bucket_);
    std::size_t i = first_[std::min(bucket, first_.size() - 1)];
    while (i + 1 < pieces_.size() && x >= breaks_[i + 1]) ++i;
    const double u = (2.0 * x - breaks_[i] - breaks_[i + 1]) / (breaks_[i + 1] - breaks_[i]);
    const Piece& piece = pieces_[i];
    Values out = piece[Degree];
    for (std::size_t k = Degree; k-- > 0;)
      for (std::size_t n = 0; n < Count; ++n) out[n] = out[n] * u + piece[k][n];
    return out;
  }

 private:
  using Piece = std::array<Values, Degree + 1>;  // by powers of u, -1 to 1 over the piece

  template <class F>
  static Piece fitted(double low, double high, F& f) {
    constexpr std::size_t points = Degree + 1;
    std::array<double, points> at;
    std::array<Values, points> divided;
    for (std::size_t i = 0; i < points; ++i) {
      at[i] = std::cos(std::numbers::pi * (static_cast<double>(i) + 0.5) / static_cast<double>(points));
      divided[i] = f(0.5 * (low + high) + 0.5 * (high - low) * at[i]);
    }
    for (std::size_t order = 1; order < points; ++order)  // Newton's differences
      for (std::size_t i = points - 1; i >= order; --i)
        for (std::size_t n = 0; n < Count; ++n)
          divided[i][n] = (divided[i][n] - divided[i - 1][n]) / (at[i] - at[i - order]);
    Piece powers{};
    powers[0] = divided[points - 1];
    for (std::size_t i = points - 1; i-- > 0;) {  // times (u - at[i]), plus the next difference
      for (std::size_t k = points - 1; k > 0; --k)
        for (std::size_t n = 0; n < Count; ++n) powers[k][n] = powers[k - 1][n] - at[i] * powers[k][n];
      for (std::size_t n = 0; n < Count; ++n) powers[0][n] = divided[i][n] - at[i] * powers[0][n];
    }
    return powers;
  }

  std::vector<double> breaks_;
  std::vector<Piece> pieces_;
  std::vector<std::size_t> first_;
  double a_bucket_ = 1.0;
};
}  // namespace lumwright::numeric
