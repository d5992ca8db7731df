#include "data/losses.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
Discharge read_discharge(const Row& row) {
  return {row.text("id"), row.band<double>("value"), row.basis()};
}
Roughness read_roughness(const Row& row) {
  return {row.text("id"), row.band<Length>("value"), row.basis()};
}
GuardRow read_guard(const Row& row) { return {row.text("id"), row.band<double>("open_share"), row.basis()}; }
Points read_points(const Row& row) {
  return {row.text("id"), row.numbers("x"), row.numbers("y"), row.basis()};
}
Grid read_grid(const Row& row) {
  return {row.text("id"),           row.numbers("along"), row.numbers("x"),
          row.rows_of_numbers("y"), row.basis()};
}
Spline read_spline(const Row& row) {
  const auto degree = static_cast<std::size_t>(row.number("degree"));
  Spline s{row.text("id"), degree, row.numbers("knots"), row.numbers("coefficients"), row.basis()};
  if (s.knots.size() != s.coefficients.size() + degree + 1) throw std::logic_error("losses.yaml: odd lists in " + s.id);
  return s;
}
Polynomial read_polynomial(const Row& row) {
  return {row.text("id"), row.number("centre"), row.number("half_width"), row.numbers("coefficients"),
          row.basis()};
}

}  // namespace

const std::vector<Discharge>& discharges() {
  static const std::vector<Discharge> all = read_all("losses", "discharge", read_discharge);
  return all;
}
const std::vector<Roughness>& roughnesses() {
  static const std::vector<Roughness> all = read_all("losses", "roughness", read_roughness);
  return all;
}
const Roughness& roughness(std::string_view id) {
  for (const Roughness& row : roughnesses())
    if (row.id == id) return row;
  throw ModelError("no roughness is known of a wall called '" + std::string(id) + "'");
}
const Points& loss_points(std::string_view id) {
  static const std::vector<Points> all = read_all("losses", "points", read_points);
  return by_id("losses", all, id);
}
const Grid& loss_grid(std::string_view id) {
  static const std::vector<Grid> all = read_all("losses", "projecting_inlet", read_grid);
  return by_id("losses", all, id);
}
const Spline& loss_spline(std::string_view id) {
  static const std::vector<Spline> all = read_all("losses", "splines", read_spline);
  return by_id("losses", all, id);
}
const Polynomial& loss_polynomial(std::string_view id) {
  static const std::vector<Polynomial> all = read_all("losses", "polynomials", read_polynomial);
  return by_id("losses", all, id);
}
const GuardRow& fan_guard(std::string_view id) {
  static const std::vector<GuardRow> all = read_all("losses", "guards", read_guard);
  return by_id("losses", all, id);
}
}  // namespace lumwright::data
