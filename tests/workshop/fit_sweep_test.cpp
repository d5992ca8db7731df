#include "matter/metal.hpp"
#include "near.hpp"
#include "workshop/fit.hpp"
#include <cmath>
#include <random>

using namespace lumwright;
using namespace lumwright::matter;
using namespace lumwright::workshop;

namespace {
constexpr Length none = 0.0 * mm, a_nanometre = 1e-6 * mm;

FitInput random_input(std::mt19937& dice) {
  const auto pick = [&](double low, double high) { return std::uniform_real_distribution(low, high)(dice); };
  const auto spread = [&](double size) {
    const double half = pick(0.0, 0.1);
    return Band<Length>{size * mm, (size - half) * mm, (size + half) * mm};
  };
  const char* const chimneys[] = {"steel", "stainless", "cast iron", "gunmetal", "brass", "copper", "aluminium"};
  const char* const tubes[] = {"brass", "yellow brass", "copper", "steel", "stainless", "aluminium"};
  const double size = pick(3.0, 40.0);
  const bool bare = pick(0, 1) < 0.2;
  return {.bore = spread(size + pick(-1.0, 1.5)),
          .bore_measured_within = pick(0.0, 0.1) * mm,
          .chimney_wall = bare ? std::nullopt : std::optional(pick(0.3, 4.0) * mm),
          .seam_ridge = bare ? none : pick(0.0, 0.5) * mm,
          .depth = bare ? std::nullopt : std::optional(pick(5.0, 80.0) * mm),
          .chimney_metal = metal(chimneys[static_cast<std::size_t>(pick(0, 6.999))]),
          .outside = spread(size),
          .outside_measured_within = pick(0.0, 0.05) * mm,
          .tube_wall = pick(0.2, 0.9) * mm,
          .engaged = bare ? std::nullopt : std::optional(pick(3.0, 80.0) * mm),
          .tube_metal = metal(tubes[static_cast<std::size_t>(pick(0, 5.999))]),
          .tube_hot = degC(pick(-10.0, 500.0)),
          .chimney_cold = degC(pick(20.0, 100.0)),
          .chimney_hot = degC(pick(100.0, 500.0)),
          .soot = pick(0.0, 0.2) * mm,
          .running_clearance = pick(0.0, 0.1) * mm};
}
template <class Q>
void all_finite(const Band<Q>& band) {
  CHECK(std::isfinite(QuantityTraits<Q>::to_si(band.value)));
  CHECK(band.low <= band.value);
  CHECK(band.value <= band.high);
}
}  // namespace

TEST_CASE("two thousand random fits are finite, ordered, and keep their promises") {
  std::mt19937 dice(20);
  for (int i = 0; i < 2000; ++i) {
    CAPTURE(i);
    const FitInput input = random_input(dice);
    const Fit result = fit(input);
    all_finite(result.cold);
    all_finite(result.lighting_up.clearance);
    all_finite(result.both_hot.clearance);
    all_finite(result.leak_area);
    all_finite(result.leak_share);
    CHECK(is_finite(result.margin));
    CHECK(result.leak_share.low >= 0.0);
    if (result.margin >= none) {  // accepted: the tube slides in both hot states even at the worst of the spreads
      CHECK(result.lighting_up.clearance.low > input.running_clearance - a_nanometre);
      CHECK(result.both_hot.clearance.low > input.running_clearance - a_nanometre);
      CHECK(result.skim.on_diameter == none);
    } else if (!result.skim.ridge_only) {  // refused: the skim that is offered cures it
      FitInput cured = input;
      cured.bore = exactly(result.skim.bore);
      cured.seam_ridge = none;
      CHECK(fit(cured).margin > -a_nanometre);
    }
    if (result.seizes_at && *result.seizes_at > degC(20)) {  // at that heat the gap is nothing
      FitInput seized = input;
      seized.tube_hot = *result.seizes_at;
      CHECK(std::abs(in(fit(seized).lighting_up.clearance.low, um)) < 1e-3);
    }
  }
}

TEST_CASE("more bore never leaves less clearance, a hotter tube never more") {
  std::mt19937 dice(7);
  for (int i = 0; i < 500; ++i) {
    CAPTURE(i);
    const FitInput input = random_input(dice);
    const Fit before = fit(input);
    FitInput wider = input;
    wider.bore = {input.bore.value + 0.05 * mm, input.bore.low + 0.05 * mm, input.bore.high + 0.05 * mm};
    const Fit wide = fit(wider);
    CHECK(wide.cold.value > before.cold.value);
    CHECK(wide.lighting_up.clearance.value > before.lighting_up.clearance.value);
    CHECK(wide.both_hot.clearance.value > before.both_hot.clearance.value);
    CHECK(wide.margin > before.margin);
    CHECK(wide.leak_share.value >= before.leak_share.value);
    CHECK(wide.skim.on_diameter <= before.skim.on_diameter);
    FitInput hotter = input;
    hotter.tube_hot = input.tube_hot + 15.0 * K;
    if (hotter.tube_hot > highest_temperature(input.tube_metal)) continue;
    const Fit hot = fit(hotter);
    CHECK(hot.lighting_up.clearance.value < before.lighting_up.clearance.value);
    CHECK(hot.both_hot.clearance.value < before.both_hot.clearance.value);
    CHECK(hot.needed >= before.needed);
    CHECK(hot.margin <= before.margin);
  }
}
