// Evaluates the charts and tables of data/losses.yaml.
#pragma once
#include "data/losses.hpp"
#include "numeric/curve.hpp"

namespace lumwright::draught {
/// At the ends the curve keeps its last value.
double spline_at(const data::Spline& spline, double x);
/// x is taken to the nearest end of the chart.
double polynomial_at(const data::Polynomial& polynomial, double x);
/// Linear both ways; beyond the ends the last value.
double grid_at(const data::Grid& grid, double x, double along);
/// Straight lines between the points; beyond the ends the last value.
double points_at(const data::Points& points, double x);
}  // namespace lumwright::draught
