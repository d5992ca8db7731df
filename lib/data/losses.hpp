// Tables and charts of the gas path: holes, rough walls, inlets, bends, screens.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct Discharge {
  std::string id;
  Band<double> value;
  Basis basis{};
};
/// A finger guard by what it is made of.
struct GuardRow {
  std::string id;
  Band<double> open_share;
  Basis basis{};
};
struct Roughness {
  std::string id;
  Band<Length> value;
  Basis basis{};
};
/// y at each x; x rises.
struct Points {
  std::string id;
  std::vector<double> x;
  std::vector<double> y;
  Basis basis{};
};
/// y[i][j] at x[i] and along[j]; both rise.
struct Grid {
  std::string id;
  std::vector<double> along;
  std::vector<double> x;
  std::vector<std::vector<double>> y;
  Basis basis{};
};
/// B-spline: knots with their repeats at the ends, knots.size() - degree - 1 coefficients.
struct Spline {
  std::string id;
  std::size_t degree;
  std::vector<double> knots;
  std::vector<double> coefficients;
  Basis basis{};
};
/// In (x - centre) / half_width, which lies in -1 to 1; highest power first.
struct Polynomial {
  std::string id;
  double centre;
  double half_width;
  std::vector<double> coefficients;
  Basis basis{};
};

const std::vector<Discharge>& discharges();
const std::vector<Roughness>& roughnesses();
/// Height of a wall's grain: "drawn brass", "drawn copper", "stainless steel", "steel", "sooted"; ModelError for
/// another.
const Roughness& roughness(std::string_view id);

// By id; std::logic_error for an id that losses.yaml lacks.
const Points& loss_points(std::string_view id);
const Grid& loss_grid(std::string_view id);
const Spline& loss_spline(std::string_view id);
const Polynomial& loss_polynomial(std::string_view id);
const GuardRow& fan_guard(std::string_view id);
}  // namespace lumwright::data
