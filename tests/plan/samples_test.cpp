#include "model/solved_fit.hpp"
#include "plan/samples.hpp"
#include "describe.hpp"
#include "near.hpp"
#include "numeric/statistics.hpp"
#include "plan/detail/two_limits.hpp"
#include "plan/draws.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <numeric>
using namespace lumwright;
using namespace lumwright::numeric;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
Assessment with_samples(const Build& build, std::size_t count, std::uint64_t seed = 1, unsigned threads = 2) {
  SamplesAsked asked;
  asked.count = count;
  asked.seed = seed;
  asked.threads = threads;
  return assess(build, UnitSystem::as_written, nullptr, asked);
}
Samples samples_of(const Build& build, std::size_t count) {
  SamplesAsked asked;
  asked.count = count;
  return try_samples(build, solve(build), nullptr, asked);
}
double edge(const Assessment& a, const std::string& key, std::optional<Measure> Result::*which) {
  const Result* result = find_result(a, key);
  REQUIRE(result != nullptr);
  REQUIRE((result->*which).has_value());
  return (result->*which)->quantity.si;
}
const SampleColumn& input_of(const Samples& samples, const std::string& key) {
  for (const SampleColumn& column : samples.inputs)
    if (column.key == key) return column;
  throw std::runtime_error("no input " + key);
}
std::string fit_text(const std::string& bore, const std::string& outside) {
  return "place: { air: 20 degC }\n"
         "engine: { chimney: { bore: " +
         bore +
         ", seam_ridge: 0 mm, material: steel } }\n"
         "adapter: { tube: { outside: " +
         outside + ", wall: 0.4 mm, soot: 0.03 mm, material: brass } }\n";
}
}  // namespace

TEST_CASE("a spread is drawn uniform when written and triangular when assumed: mean and variance") {
  // moments of the rectangle and of the triangle: JCGM 101:2008, 6.4.2 and 6.4.5 for the symmetric one; the triangle
  // with its own peak from its density, by integration
  const Input skew{AnyQuantity(2.0), 1.0, 5.0, "", Origin::assumed},
      flat{AnyQuantity(2.0), 1.0, 5.0, "", Origin::written};
  constexpr int n = 200000;
  double sum[2] = {0, 0}, squares[2] = {0, 0};
  for (int i = 0; i < n; ++i) {
    const double u = (i + 0.5) / n;
    const double x[2] = {drawn_from(skew, "x", u), drawn_from(flat, "x", u)};
    for (int k = 0; k < 2; ++k) {
      sum[k] += x[k] / n;
      squares[k] += x[k] * x[k] / n;
    }
  }
  CHECK(sum[0] == near((1.0 + 2.0 + 5.0) / 3.0, 1e-4));
  CHECK(squares[0] - sum[0] * sum[0] == near((1.0 + 4.0 + 25.0 - 2.0 - 5.0 - 10.0) / 18.0, 1e-3));
  CHECK(sum[1] == near(3.0, 1e-6));
  CHECK(squares[1] - sum[1] * sum[1] == near(16.0 / 12.0, 1e-4));
}
TEST_CASE("the band of a clearance is that of the difference of two rectangles, to 1 %") {
  // D uniform +-0.10, d uniform +-0.04: the difference is a trapezium; its tenth lies where the area of the slope and
  // of the flat top make 0.1. With a = 0.10, b = 0.04: F(x) = (x + a + b)^2 / (8ab) up to x = -(a - b), which is 0.2;
  // so the tenth is -(a + b) + sqrt(0.8 a b).
  const Assessment a = with_samples(described(fit_text("17.6 mm +- 0.10 mm", "17.2 mm +- 0.04 mm")), 2000);
  const double tenth = -0.14 + std::sqrt(0.8 * 0.10 * 0.04);
  CHECK(std::abs(edge(a, "fit.clearance_cold", &Result::low) * 1e3 - (0.4 + tenth)) < 0.01 * 0.14);
  CHECK(std::abs(edge(a, "fit.clearance_cold", &Result::high) * 1e3 - (0.4 - tenth)) < 0.01 * 0.14);
  REQUIRE(a.bands);
  const auto& sensitivities = a.bands->sensitivities;
  const auto fit =
      std::find_if(sensitivities.begin(), sensitivities.end(), [](auto& l) { return l.answer == "fit.clearance_hot"; });
  REQUIRE(fit != sensitivities.end());
  CHECK(fit->widest.front().key == "engine.chimney.bore");
  const auto outside = std::find_if(fit->widest.begin(), fit->widest.end(),
                                    [](const Widening& w) { return w.key == "adapter.tube.outside"; });
  REQUIRE(outside != fit->widest.end());
  CHECK(fit->widest.front().share / outside->share == near(6.25, 0.1));  // variances of the rectangles, 0.10^2 / 0.04^2
}
TEST_CASE("a size without a spread is drawn as well as it was measured") {
  // 17.60 - 17.24 with +-0.05 mm (caliper, inside) and +-0.005 mm (micrometer): the same trapezium
  const Assessment a = with_samples(described(fit_text("17.60 mm", "17.24 mm")), 2000);
  const double tenth = -0.055 + std::sqrt(0.8 * 0.05 * 0.005);
  CHECK(std::abs(edge(a, "fit.clearance_cold", &Result::low) * 1e3 - (0.36 + tenth)) < 0.001);
}
TEST_CASE("shares decide verdicts: under nine of ten is to watch, under half fails") {
  const std::string outside = "17.2 mm +- 0.001 mm";
  const auto judged = [&](const std::string& bore) {
    const Assessment a = with_samples(described(fit_text(bore, outside)), 1000);
    const Finding* f = find_check(a, "fit.cold");
    REQUIRE((f != nullptr && f->holds));
    return *f;
  };
  const Finding sure = judged("17.60 mm +- 0.01 mm");
  CHECK(sure.verdict == Verdict::pass);
  CHECK(*sure.holds == 1.0);
  const double needed = sure.limit->quantity.si * 1e3;  // and the little that is not known of it
  const auto bore = [&](double low, double high) {
    const double a = 17.2 + needed + low, b = 17.2 + needed + high;
    return std::to_string(a) + ".." + std::to_string(b) + " mm";
  };
  const Finding likely = judged(bore(-0.03, 0.10));
  CHECK(likely.verdict == Verdict::watch);
  CHECK((*likely.holds > 0.6 && *likely.holds < 0.9));
  const Finding never = judged(bore(-0.20, -0.05));
  CHECK(never.verdict == Verdict::fail);
  CHECK(*never.holds < 0.05);
}
TEST_CASE("two limits: on one it is kept, a hair beyond it is not, and the one that decided is shown") {
  // arithmetic: the definition itself
  const auto judged = [](Bound bound, double value) {
    const double watch = bound == Bound::at_most ? 0.15 : 0.01;
    Finding f;
    judge_by(f, {AnyQuantity(value), "%"}, {bound, AnyQuantity(0.05), AnyQuantity(watch)});
    return std::pair(f.verdict, f.limit->quantity.si);
  };
  using Judged = std::pair<Verdict, double>;
  CHECK(judged(Bound::at_most, 0.05) == Judged(Verdict::pass, 0.05));
  CHECK(judged(Bound::at_most, std::nextafter(0.05, 1.0)) == Judged(Verdict::watch, 0.05));
  CHECK(judged(Bound::at_most, 0.15) == Judged(Verdict::watch, 0.05));
  CHECK(judged(Bound::at_most, std::nextafter(0.15, 1.0)) == Judged(Verdict::fail, 0.15));
  CHECK(judged(Bound::at_least, 0.05) == Judged(Verdict::pass, 0.05));
  CHECK(judged(Bound::at_least, std::nextafter(0.05, 0.0)) == Judged(Verdict::watch, 0.05));
  CHECK(judged(Bound::at_least, 0.01) == Judged(Verdict::watch, 0.05));
  CHECK(judged(Bound::at_least, std::nextafter(0.01, 0.0)) == Judged(Verdict::fail, 0.01));
}
TEST_CASE("every value that is drawn lies in its spread, and those that go together do") {
  const Build build = example("tarn-beck");
  const Build measured = with_measuring_spread(build);
  const Solved central = solve(measured);
  const Samples samples = samples_of(build, 1000);
  CHECK(samples.inputs.size() > 20);
  for (const SampleColumn& column : samples.inputs) {
    CAPTURE(column.key);
    const Input* used = central.inputs.find(column.key);
    const auto [low, high] = std::minmax_element(column.si.begin(), column.si.end());
    CHECK(*low < *high);
    if (used == nullptr || column.key == "fuel.bed_mass" || column.key == "adapter.tube.outside") continue;
    if (used->tails) continue;
    if (column.key == "fuel.carbon_monoxide_share") {  // its spread goes with the leak and the lump that are drawn
      CHECK(*low > 0.0);
      CHECK(*high <= 0.58);  // more would take more carbon than coal has
      continue;
    }
    CHECK(*low >= used->low);
    CHECK(*high <= used->high);
  }
  // Kendall's tau of a Gaussian copula: 2 / pi arcsin(rho) (Nelsen 2006, from memory); -0.8 gives -0.590
  const auto& capacity = input_of(samples, "supply.pack.capacity_factor").si;
  const auto& resistance = input_of(samples, "supply.pack.resistance_factor").si;
  double balance = 0.0;
  for (std::size_t i = 0; i < 1000; ++i)
    for (std::size_t j = 0; j < i; ++j)
      balance += (capacity[i] - capacity[j]) * (resistance[i] - resistance[j]) > 0.0 ? 1.0 : -1.0;
  CHECK(std::abs(balance / (0.5 * 1000 * 999) - 2.0 / std::acos(-1.0) * std::asin(-0.8)) < 0.03);
}
TEST_CASE("bands hold the value as it stands, and a wish is not drawn") {
  for (const std::string& name : example_names()) {
    const Assessment a = with_samples(example(name), 300);
    CHECK(a.bands->samples == 300);
    for (const Result& r : a.results) {
      const Measure* value = std::get_if<Measure>(&r.value);
      if (value == nullptr || !r.low) continue;
      CAPTURE(r.key);
      CHECK(r.low->quantity.si <= value->quantity.si);
      if (r.high) CHECK(r.high->quantity.si >= value->quantity.si);
    }
    for (const SampleColumn& column : samples_of(example(name), 2).inputs) CHECK_FALSE(column.key.starts_with("want."));
  }
}
TEST_CASE("a pressure that is not always reached has no upper end") {
  // a pack so small that the fan stops about when steam comes
  const Assessment a = with_samples(example("tarn-beck", {{"capacity: 2400 mAh", "capacity: 52 mAh +- 20 %"}}), 400);
  const Result* time = find_result(a, "raise.to_own_blower");
  if (time != nullptr) {
    CHECK(*time->share < 0.95);
    CHECK(*time->share > 0.05);
    CHECK((*time->share >= 0.9) == time->high.has_value());
  } else {
    CHECK(find_check(a, "raise.time")->verdict == Verdict::fail);
  }
}
TEST_CASE("a measurement that is made takes its input off the list") {
  const Assessment loose = with_samples(example("tarn-beck"), 1000);
  const Sensitivity& chief = loose.bands->sensitivities.front();
  CHECK(chief.answer == "raise.to_own_blower");
  REQUIRE(!chief.narrowings.empty());
  const Narrowing& best = chief.narrowings.front();
  CHECK(best.of == "tuned.heat");
  // prior: triangle +-0.35, variance 0.35^2 / 6; reading: sigma 0.075; after both, as normal ones, sigma 0.0664: that
  // of a triangle +-0.163
  Tuning tuning{"test.tuned.yaml", {{"tuned.heat", {AnyQuantity(1.0), 0.837, 1.163, ""}}}};
  SamplesAsked asked;
  asked.count = 1000;
  const Assessment tight = assess(example("tarn-beck"), UnitSystem::as_written, &tuning, asked);
  const auto width = [](const Assessment& a) {
    return edge(a, "raise.to_own_blower", &Result::high) - edge(a, "raise.to_own_blower", &Result::low);
  };
  CHECK(std::abs(width(tight) / width(loose) - best.left) < 0.08);  // what was predicted came about
  CHECK(tight.bands->sensitivities.front().widest.front().share < chief.widest.front().share);
}
TEST_CASE("verdicts do not turn between a thousand samples and ten thousand") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Assessment few = with_samples(example(name), 1000), many = with_samples(example(name), 10000);
    CHECK(few.verdict == many.verdict);
    REQUIRE(few.checks.size() == many.checks.size());
    for (std::size_t i = 0; i < few.checks.size(); ++i) {
      CAPTURE(few.checks[i].id);
      CHECK(few.checks[i].verdict == many.checks[i].verdict);
      if (few.checks[i].holds) CHECK(std::abs(*few.checks[i].holds - *many.checks[i].holds) < 0.02);
    }
    if (few.bands->edge_error) CHECK(*many.bands->edge_error < *few.bands->edge_error);
  }
}
