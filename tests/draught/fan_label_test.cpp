#include "draught/fan_label.hpp"
#include "draught/fan_estimate.hpp"
#include "numeric/least_squares.hpp"
#include "published.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <functional>
#include <map>
#include <numbers>
#include <set>

using namespace lumwright;
using namespace lumwright::numeric;
using namespace lumwright::draught;

namespace {
using Vector = std::vector<double>;
/// One printed fan (tests/published/fan_rows.yaml: claims of makers' catalogues). Zero where nothing is printed.
struct Printed {
  std::string id, family;
  data::FanKind kind;
  double frame, thickness, volts;                    // mm, V
  double watts = 0, rpm = 0, litres = 0, pascals = 0;  // litres a second
  bool maximum = false;
  double tip_speed() const { return std::numbers::pi * 0.95e-3 * frame * rpm / 60.0; }
  double psi() const { return pascals / (0.6 * tip_speed() * tip_speed()); }
  double phi() const { return 1e-3 * litres / (std::numbers::pi / 4.0 * std::pow(0.95e-3 * frame, 2) * tip_speed()); }
};
std::vector<Printed> printed_fans() {
  std::vector<Printed> all;
  for (const data::Row& row : published("fan_rows")) {
    Printed p{row.text("id"),
              row.text("family"),
              row.text("kind") == "axial" ? data::FanKind::axial : data::FanKind::centrifugal,
              in(row.quantity<Length>("frame"), mm),
              in(row.quantity<Length>("thickness"), mm),
              in(row.quantity<Voltage>("voltage"), V)};
    if (row.has("power")) p.watts = in(row.quantity<Power>("power"), W);
    if (row.has("speed")) p.rpm = in(row.quantity<Rotation>("speed"), rpm);
    if (row.has("free_air")) p.litres = in(row.quantity<VolumeFlow>("free_air"), litre_per_s);
    if (row.has("shut_off")) p.pascals = in(row.quantity<Pressure>("shut_off"), Pa);
    p.maximum = row.yes("maximum");
    all.push_back(p);
  }
  return all;
}
enum class Told { size, current, speed };
FanLabel label_of(const Printed& p, Told told) {
  FanLabel label{.kind = p.kind,
                 .frame = p.frame * mm,
                 .thickness = p.thickness * mm,
                 .rated_voltage = p.volts * V,
                 .rated_current = {},
                 .rated_speed = {}};
  if (told != Told::size && p.watts > 0.0) {
    label.rated_current = p.watts * W / label.rated_voltage;
    label.current_is_most = p.maximum;
  }
  if (told == Told::speed) label.rated_speed = p.rpm * rpm;
  return label;
}

/// A law as the rows give it: what it is of, and the logarithms that it is made of.
struct Law {
  const char* id;
  std::function<bool(const Printed&)> has;
  std::function<double(const Printed&)> value;
  std::function<Vector(const Printed&)> terms;
};
const std::vector<Law>& laws() {
  static const std::vector<Law> all = {
      {"axial pressure", [](const Printed& p) { return p.rpm > 0 && p.pascals > 0; },
       [](const Printed& p) { return std::log(p.psi()); },
       [](const Printed& p) { return Vector{1.0, std::log(p.thickness / p.frame)}; }},
      {"axial flow", [](const Printed& p) { return p.rpm > 0 && p.litres > 0; },
       [](const Printed& p) { return std::log(p.phi()); },
       [](const Printed& p) {
         return Vector{1.0, std::log(p.thickness / p.frame), std::log(p.frame / 60.0), std::log(p.tip_speed() / 10.0)};
       }},
      {"axial speed", [](const Printed& p) { return p.rpm > 0 && p.watts > 0; },
       [](const Printed& p) { return std::log(p.rpm); },
       [](const Printed& p) {
         return Vector{1.0, std::log(p.frame / 60.0), std::log(p.thickness / 20.0), std::log(p.watts),
                       p.maximum ? 1.0 : 0.0};
       }},
      {"axial flow by label", [](const Printed& p) { return p.rpm > 0 && p.watts > 0 && p.litres > 0; },
       [](const Printed& p) { return std::log(p.litres); },
       [](const Printed& p) {
         return Vector{1.0, std::log(p.frame / 60.0), std::log(p.thickness / 20.0), std::log(p.watts),
                       p.maximum ? 1.0 : 0.0};
       }}};
  return all;
}
/// Least squares in which every family weighs alike, by the normal equations.
Vector refit(const Law& law, const std::vector<Printed>& rows, const std::string& without = "") {
  std::map<std::string, double> count;
  for (const Printed& p : rows) count[p.family] += 1.0;
  const std::size_t n = law.terms(rows.front()).size();
  Matrix square(n, Vector(n, 0.0));
  Vector right(n, 0.0), out(n, 0.0);
  for (const Printed& p : rows) {
    if (p.family == without) continue;
    const Vector x = law.terms(p);
    for (std::size_t i = 0; i < n; ++i) {
      right[i] += x[i] * law.value(p) / count[p.family];
      for (std::size_t j = 0; j < n; ++j) square[i][j] += x[i] * x[j] / count[p.family];
    }
  }
  const Matrix solved = inverse(square);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) out[i] += solved[i][j] * right[j];
  return out;
}
double dot(const Vector& a, const Vector& b) {
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}
std::vector<Printed> axials_of(const Law& law) {
  std::vector<Printed> out = printed_fans();
  std::erase_if(out, [&](const Printed& p) { return p.kind != data::FanKind::axial || !law.has(p); });
  return out;
}
/// Our law's logarithm.
double told(const Law& law, const Printed& p) {
  const data::FanLaw& row = data::fan_law(law.id);
  return std::log(row.factor) + row.depth_over_frame * std::log(p.thickness / p.frame) +
         row.frame * std::log(p.frame / 60.0) + row.depth * std::log(p.thickness / 20.0) +
         row.tip_speed * std::log(p.rpm > 0 ? p.tip_speed() / 10.0 : 1.0) +
         row.power * std::log(p.watts > 0 ? p.watts : 1.0) + (p.maximum ? std::log(row.of_maximum) : 0.0);
}
/// Share of the rows, families alike, for which `holds`.
double share_of(const std::vector<Printed>& rows, const std::function<bool(const Printed&)>& holds) {
  std::map<std::string, double> count;
  for (const Printed& p : rows) count[p.family] += 1.0;
  double sum = 0.0;
  for (const Printed& p : rows) sum += holds(p) ? 1.0 / count[p.family] : 0.0;
  return sum / static_cast<double>(count.size());
}
}  // namespace

TEST_CASE("the laws of the label are those that the printed rows give") {
  for (const Law& law : laws()) {
    CAPTURE(std::string(law.id));
    const std::vector<Printed> rows = axials_of(law);
    REQUIRE(rows.size() > 80);
    const Vector fitted = refit(law, rows);
    double sum = 0.0, squares = 0.0;
    for (const Printed& p : rows) {
      const double off = told(law, p) - dot(fitted, law.terms(p));
      sum += off / static_cast<double>(rows.size());
      squares += off * off / static_cast<double>(rows.size());
    }
    CHECK(std::abs(sum) < 0.06);          // the middle of the two within 6 %
    CHECK(std::sqrt(squares) < 0.10);     // and row by row within 10 %: half of the spread at most
  }
}

TEST_CASE("families left out lie inside the stated band in seven to nine of ten, all laws together in 75 to 85 of 100") {
  double all_held_out = 0.0;
  for (const Law& law : laws()) {
    CAPTURE(std::string(law.id));
    const std::vector<Printed> rows = axials_of(law);
    const Band<double>& spread = data::fan_law(law.id).spread;
    std::map<std::string, Vector> without;
    for (const Printed& p : rows)
      if (!without.contains(p.family)) without[p.family] = refit(law, rows, p.family);
    const auto inside = [&](double off) { return off >= std::log(spread.low) && off <= std::log(spread.high); };
    const double held_out = share_of(
        rows, [&](const Printed& p) { return inside(law.value(p) - dot(without[p.family], law.terms(p))); });
    CHECK(held_out >= 0.7);
    CHECK(held_out <= 0.93);
    const double ours = share_of(rows, [&](const Printed& p) { return inside(law.value(p) - told(law, p)); });
    CHECK(ours >= 0.7);
    CHECK(ours <= 0.93);
    all_held_out += held_out / static_cast<double>(laws().size());
    MESSAGE(law.id << ": " << held_out << " left out, " << ours << " of all");
  }
  CHECK(all_held_out >= 0.75);
  CHECK(all_held_out <= 0.85);
}

TEST_CASE("the band of a curve holds printed fans in seven to nine of ten, by what is told of them") {
  for (const Told what : {Told::speed, Told::current, Told::size}) {
    CAPTURE(static_cast<int>(what));
    std::vector<Printed> rows = printed_fans();
    std::erase_if(rows, [](const Printed& p) {
      return p.kind != data::FanKind::axial || !(p.rpm > 0 && p.watts > 0 && p.pascals > 0 && p.litres > 0);
    });
    const auto inside = [](double x, double middle, const Band<double>& b) {
      return x >= b.low * middle && x <= b.high * middle;
    };
    const double pressure = share_of(rows, [&](const Printed& p) {
      const FanCurve curve = curve_from_label(label_of(p, what));
      return inside(p.pascals, in(curve.shut_off(), Pa), curve.basis().pressure);
    });
    const double flow = share_of(rows, [&](const Printed& p) {
      const FanCurve curve = curve_from_label(label_of(p, what));
      return inside(p.litres, in(curve.free_air(), litre_per_s), curve.basis().flow);
    });
    CHECK(pressure >= 0.7);
    CHECK(pressure <= 0.93);
    CHECK(flow >= 0.7);
    CHECK(flow <= 0.93);
  }
}

TEST_CASE("pressure and flow rise with rated power and with speed, whatever the size") {
  for (const data::FanKind kind : {data::FanKind::axial, data::FanKind::centrifugal})
    for (const double frame : {25.0, 30.0, 40.0, 50.0, 60.0, 75.0, 80.0, 92.0, 97.0, 120.0, 140.0})
      for (const double thickness : {7.0, 10.0, 15.0, 20.0, 25.0, 28.0, 33.0, 38.0}) {
        CAPTURE(frame);
        CAPTURE(thickness);
        FanLabel label{.kind = kind,
                       .frame = frame * mm,
                       .thickness = thickness * mm,
                       .rated_voltage = 12.0 * V,
                       .rated_current = {},
                       .rated_speed = {}};
        Pressure pressure = 0.0 * Pa;
        VolumeFlow flow = 0.0 * litre_per_s;
        const auto rises = [&] {
          const FanCurve curve = curve_from_label(label);
          CHECK(curve.shut_off() > pressure);
          CHECK(curve.free_air() > flow);
          pressure = curve.shut_off(), flow = curve.free_air();
        };
        for (double ampere = 0.02; ampere < 5.0; ampere *= 1.3) {
          label.rated_current = ampere * A;
          rises();
        }
        pressure = 0.0 * Pa, flow = 0.0 * litre_per_s;
        for (double turns = 800.0; turns < 40000.0; turns *= 1.2) {
          label.rated_speed = turns * rpm;
          rises();
        }
        label.rated_speed = std::nullopt;  // a maximum tells of less than it says
        const FanCurve typical = curve_from_label(label);
        label.current_is_most = true;
        CHECK(curve_from_label(label).shut_off() < typical.shut_off());
      }
}

TEST_CASE("no printed fan is refused, and the strong blowers are watched") {
  std::set<std::string> watched;
  for (const Printed& p : printed_fans()) {
    if (!(p.rpm > 0 && p.pascals > 0 && p.litres > 0)) continue;
    CAPTURE(p.id);
    const FanCoefficients c = coefficients({.kind = p.kind,
                                            .frame = p.frame * mm,
                                            .speed = p.rpm * rpm,
                                            .shut_off = p.pascals * Pa,
                                            .free_air = p.litres * litre_per_s});
    CHECK(c.verdict != Credibility::not_credible);
    if (c.psi > 2.5) watched.insert(p.id);
  }
  CHECK(watched.contains("R161"));  // 75x30, psi 3.1
}

TEST_CASE("two ends get the shape of their kind, which blowers hold above the line") {
  const std::vector<FanPoint> ends = {{0.0 * litre_per_s, 120.0 * Pa}, {2.0 * litre_per_s, 0.0 * Pa}};
  const FanCurve blower = curve_from_sheet({.kind = data::FanKind::centrifugal, .speed = 5000.0 * rpm, .points = ends});
  CHECK(in(blower.static_pressure(1.0 * litre_per_s), Pa) == doctest::Approx(0.83 * 120.0).epsilon(1e-6));  // the shape
  CHECK(blower.basis().sentence.find("two ends") != std::string::npos);
  CHECK(blower.basis().sentence.find("not said") != std::string::npos);
  const FanCurve sheet = curve_from_sheet({.kind = data::FanKind::axial,
                                           .speed = 5000.0 * rpm,
                                           .points = {ends[0], {1.0 * litre_per_s, 60.0 * Pa}, ends[1]},
                                           .thickness = {},
                                           .from = "data sheet"});
  CHECK(in(sheet.static_pressure(0.5 * litre_per_s), Pa) == doctest::Approx(90.0).epsilon(1e-6));
  CHECK(sheet.basis().origin == CurveOrigin::data_sheet);
  CHECK(sheet.basis().pressure.low == 0.75);
}
