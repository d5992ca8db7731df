// The laws behind a season, against closed forms.
#include "tune/detail/hierarchy.hpp"
#include "data/tuning.hpp"
#include "description/season.hpp"
#include "near.hpp"
#include "plan/describe.hpp"
#include "tune/detail/outcome.hpp"
#include "tune/detail/robust.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::tune;

namespace {
constexpr double sure = 1e-6;  // spread of a scatter that is known
DayEvidence day(double information, double pull, std::vector<double> counts) {
  return {{{information}}, {pull}, std::move(counts)};
}
const Functional engine{{1.0}, {}, false};
}  // namespace

// identity: a normal prior and a normal reading, weighed by their precisions
TEST_CASE("one reading moves a factor by the share of its precision") {
  const Law law{1, {}, {}, sure, {}, {}};
  const std::vector<DayEvidence> days{day(3.0, 6.0, {})};
  CHECK(Posterior(law, days, 1).of(engine).mean() == near(6.0 / 4.0, 1e-12));
  CHECK(Posterior(law, days, 1).of(engine).sigma() == near(0.5, 1e-12));
  CHECK(Posterior(law, days, 0).of(engine).sigma() == near(1.0, 1e-12));  // nothing read: the prior
  CHECK(Posterior(law, days, 1).of(engine).quantile(0.9) == near(1.5 + 0.5 * 1.2815515655446004, 1e-9));  // AS 241
}
// hand: days of variance s2 + 1/I each, so that the precision of the engine is 1 + sum 1 / (s2 + 1/I)
TEST_CASE("days that scatter tell less of the engine than readings of one day, and all that they can") {
  const double s = 0.5;
  const Law law{1, {0}, {s}, sure, {}, {}};
  const std::vector<DayEvidence> days{day(100.0, 100.0, {}), day(4.0, 8.0, {}), day(0.0, 0.0, {})};
  const double a = 1.0 / (s * s + 0.01), b = 1.0 / (s * s + 0.25), precision = 1.0 + a + b;
  const Posterior posterior(law, days, 3);
  CHECK(posterior.of(engine).mean() == near((a * 1.0 + b * 2.0) / precision, 1e-5));
  CHECK(posterior.of(engine).sigma() == near(1.0 / std::sqrt(precision), 1e-5));
  CHECK(posterior.of({{1.0}, {}, true}).sigma() == near(std::sqrt(1.0 / precision + s * s), 1e-5));
  // hand: the day between what it says itself and what the engine does
  const double mean = posterior.of(engine).mean();
  CHECK(day_factors(law, days[0], {s}, {mean})[0] == near((100.0 + mean / (s * s)) / (100.0 + 1.0 / (s * s)), 1e-4));
}
// hand: two unknowns, normal equations with their priors
TEST_CASE("a drift is the slope of a straight line, each in its own prior sigmas") {
  const double unit = 0.2;
  const Law law{1, {}, {}, sure, {0}, {unit}};
  std::vector<DayEvidence> days;
  double a = 1.0, b = 0.0, c = 1.0, p = 0.0, q = 0.0;
  for (int i = 0; i < 6; ++i) {
    const double w = 10.0 + i, y = 0.3 + 0.11 * i, x = unit * i;
    days.push_back(day(w, w * y, {static_cast<double>(i)}));
    a += w, b += w * x, c += w * x * x, p += w * y, q += w * x * y;
  }
  const double slope = (a * q - b * p) / (a * c - b * b);
  const Posterior posterior(law, days, 6);
  CHECK(posterior.drift(0).mean() == near(unit * slope, 1e-9));
  CHECK(posterior.drift(0).sigma() == near(unit * std::sqrt(a / (a * c - b * b)), 1e-9));
  CHECK(posterior.of({{1.0}, {6.0}, false}).mean() ==
        near((c * p - b * q) / (a * c - b * b) + 6.0 * unit * slope, 1e-9));
}
TEST_CASE("days alike speak for a small scatter, days apart for a large one") {
  const Law law{1, {0}, {0.5}, 0.5, {}, {}};
  const auto scatter = [&](double apart) {
    std::vector<DayEvidence> days;
    for (int i = 0; i < 12; ++i) days.push_back(day(400.0, 400.0 * (i % 2 == 0 ? apart : -apart), {}));
    return std::exp(Posterior(law, days, days.size()).log_scatter(0).mean());
  };
  CHECK(scatter(0.02) < 0.3);
  CHECK(scatter(0.5) == near(0.5, 0.1));
  CHECK(scatter(2.0) > 0.9);
}
// hand: densities of the two normal laws at the misfit, 0.9 and 0.1 of the readings, the second twelve times as wide
TEST_CASE("a reading is believed by what its misfit would be among right ones and among wrong ones") {
  const double share = data::season_constant("wrong_share"), wide = data::season_constant("wrong_width");
  for (const double miss : {0.0, 1.0, 2.5, -3.0, 6.0}) {
    const double right = (1.0 - share) * std::exp(-0.5 * miss * miss),
                 wrong = share / wide * std::exp(-0.5 * miss * miss / (wide * wide));
    CHECK(belief(miss).wrong == near(wrong / (right + wrong), 1e-12));
    CHECK(belief(miss).weight == near((right + wrong / (wide * wide)) / (right + wrong), 1e-12));
  }
  CHECK(belief(1e6).wrong == 1.0);
  CHECK(belief(1.0).wrong < 0.02);
  CHECK(belief(5.0).wrong > 0.95);
  CHECK(robust_size({-1.0, 300.0, 2.0}) == near(2.0 * 1.4826, 1e-12));  // Hampel 1974: the median of the sizes
}
// hand: a prior of 20 % and charges of 4 % each, in logarithms, on the day of the first
TEST_CASE("the pack is what its full charges say, and a wrong one has no say") {
  const description::Build build = example("tarn-beck");
  const double usual = QuantityTraits<Charge>::to_si(*build.supply.pack.capacity);
  const auto state = [&](const std::vector<double>& shares) {
    std::string text = "lighting_ups:\n";
    for (std::size_t i = 0; i < shares.size(); ++i)
      text += fmt::format("  - day: 2026-05-03\n    number: {}\n    pack: {{ ran_flat: yes, put_back: {:.6f} mAh }}\n",
                          i + 1, 1.1 * shares[i] * usual / 3.6);
    return pack_state(build, description::read_season({"s.yaml", text}));
  };
  const double a = 1.0 / 0.04, b = 1.0 / 0.0016;
  CHECK(std::log(state({0.8})->capacity.value / usual) == near(std::log(0.8) * b / (a + b), 1e-3));
  CHECK(std::log(state({0.8})->capacity.high / state({0.8})->capacity.low) ==
        near(2.0 * 1.2815515655446004 / std::sqrt(a + b), 1e-2));  // a little wider: even a right one may be wrong
  const auto wrong = state({0.8, 0.81, 0.3, 0.79});
  REQUIRE(wrong->wrong.size() == 1);
  CHECK(wrong->wrong[0] == 2);
  CHECK(wrong->capacity.value / usual == near(0.8, 0.02));
}
