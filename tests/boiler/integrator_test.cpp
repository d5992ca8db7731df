#include "boiler/detail/integrator.hpp"
#include "near.hpp"
#include "numeric/root.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::numeric;
using namespace lumwright::boiler;

TEST_CASE("a boiler of constant power and loss warms as the closed form says") {
  // t = -(C/UA) ln(1 - UA dT/Q): 1929.2 J/K, 650 W, 0.35 W/K, 15 to 120.42 degC gives 322.12 s
  Integrator<1> steps([](const auto& x, auto& rate, double) { rate[0] = (650.0 - 35.0 * x[0]) / 192920.0; }, 1e-5);
  steps.start(0.0, {0.0}, 15.0);
  while (steps.end()[0] < 1.0542) steps.step(1e9);
  const double t = bracketed_root([&](double at) { return steps.at(at)[0] - 1.0542; }, steps.from(), steps.to());
  CHECK(t == near(-1929.2 / 0.35 * std::log(1.0 - 0.35 * 105.42 / 650.0), 1e-6));
  CHECK(std::abs(t - 322.12) < 0.05);
}

TEST_CASE("the solution between the steps is as good as at their ends") {
  using Steps = Integrator<2>;  // a pendulum of small swing: a circle in its plane
  Steps steps([](const Steps::State& x, Steps::State& rate, double) { rate = {x[1], -x[0]}; }, 1e-8);
  steps.start(0.0, {1.0, 0.0}, 0.1);
  while (steps.to() < 10.0) {
    steps.step(10.0);
    for (int i = 0; i <= 8; ++i) {
      const double t = steps.from() + (steps.to() - steps.from()) * i / 8.0;
      CHECK(std::abs(steps.at(t)[0] - std::cos(t)) < 1e-6);
      CHECK(std::abs(steps.at(t)[1] + std::sin(t)) < 1e-6);
    }
  }
  CHECK(steps.to() == 10.0);  // the limit is met exactly
}

TEST_CASE("a sum that the rates keep is kept to rounding, between the steps too") {
  using Steps = Integrator<3>;
  Steps steps(
      [](const Steps::State& x, Steps::State& rate, double t) {
        rate = {std::sin(t) * x[0], 0.3 * x[1], -std::sin(t) * x[0] - 0.3 * x[1]};
      },
      1e-4);
  steps.start(0.0, {1.0, 0.5, 0.0}, 0.5);
  while (steps.to() < 5.0) {
    steps.step(5.0);
    const auto x = steps.at(0.37 * steps.from() + 0.63 * steps.to());
    CHECK(std::abs(x[0] + x[1] + x[2] - 1.5) < 1e-12);
  }
}

TEST_CASE("rates without an answer end in a refusal") {
  Integrator<1> steps([](const auto& x, auto& rate, double) { rate[0] = x[0] * x[0]; }, 1e-6);  // blows up at t = 1
  steps.start(0.0, {1.0}, 0.1);
  CHECK_THROWS_AS(
      [&] {
        while (steps.to() < 2.0) steps.step(2.0);
      }(),
      ModelError);
}

TEST_CASE("a trial state without an answer shortens the step, one that cannot be avoided is passed on") {
  const auto rates = [](const auto& x, auto& rate, double t) {
    if (x[0] > 1.05) throw ModelError("beyond the range");
    rate[0] = t < 1.0 ? 1.0 : 0.0;  // stops just inside
  };
  Integrator<1> steps(rates, 1e-4);
  steps.start(0.0, {0.0}, 5.0);
  while (steps.to() < 3.0) steps.step(3.0);
  CHECK(steps.end()[0] == near(1.0, 5e-3));
  Integrator<1> doomed(
      [](const auto& x, auto& rate, double) {
        if (x[0] > 1.05) throw ModelError("beyond the range");
        rate[0] = 1.0;
      },
      1e-4);
  doomed.start(0.0, {0.0}, 5.0);
  CHECK_THROWS_WITH_AS(
      [&] {
        while (doomed.to() < 3.0) doomed.step(3.0);
      }(),
      "beyond the range", ModelError);
}

TEST_CASE("rates that turn round quickly do not hold up the steps") {
  // x' = -k (x - cos t), k = 1000 (Prothero and Robinson's kind): x = (k^2 cos t + k sin t) / (k^2 + 1) once it has
  // settled; the sum of x beside it by the integral of that. Bound to 3.3 / k, 100 s would take 30,000 steps.
  constexpr double k = 1000.0;
  using Steps = Integrator<2>;
  const auto rates = [](const Steps::State& x, Steps::State& rate, double t) {
    rate = {-k * (x[0] - std::cos(t)), x[0]};
  };
  Steps steps(rates, 1e-5, {0});
  steps.start(0.0, {1.0, 0.0}, 0.1);
  const auto settled = [](double t) { return (k * k * std::cos(t) + k * std::sin(t)) / (k * k + 1.0); };
  while (steps.to() < 100.0) {
    steps.step(100.0);
    if (steps.to() < 1.0) continue;
    for (const double share : {0.3, 0.7, 1.0}) {
      const double t = steps.from() + share * (steps.to() - steps.from());
      CHECK(std::abs(steps.at(t)[0] - settled(t)) < 3e-4);
    }
  }
  const double sum = (k * k * std::sin(100.0) + k * (1.0 - std::cos(100.0))) / (k * k + 1.0);
  CHECK(std::abs(steps.end()[1] - sum) < 2e-3);
  CHECK(steps.steps() < 1000);
  CHECK(steps.rates_called() < 12000);
}
