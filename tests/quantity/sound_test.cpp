// What the model must never come to is refused with its element, its number and what went in.
#include "quantity/sound.hpp"
#include <doctest/doctest.h>
#include <limits>
using namespace lumwright;
using namespace lumwright::unit;

namespace {
constexpr double no_number = std::numeric_limits<double>::quiet_NaN(),
                 infinity = std::numeric_limits<double>::infinity();
}

TEST_CASE("a sound number passes unchanged") {
  CHECK(in(sound(-3.0 * Pa, Sound::finite, "tubes", "pressure loss", {}), Pa) == -3.0);
  CHECK(in(sound(0.0 * Pa, Sound::not_negative, "tubes", "pressure loss", {}), Pa) == 0.0);
  CHECK(sound(1e-300, Sound::positive, "tubes", "share", {}) == 1e-300);
}

TEST_CASE("NaN and infinity never pass") {
  for (const Sound wanted : {Sound::finite, Sound::not_negative, Sound::positive})
    for (const double x : {no_number, infinity, -infinity})
      CHECK_THROWS_AS(sound(x * Pa, wanted, "tubes", "pressure loss", {}), UnsoundNumber);
  CHECK_THROWS_AS(sound(-1e-300, Sound::not_negative, "tubes", "share", {}), UnsoundNumber);
  CHECK_THROWS_AS(sound(0.0, Sound::positive, "tubes", "share", {}), UnsoundNumber);
  CHECK_THROWS_AS(sound(kelvin(-1.0), Sound::positive, "fan", "gas temperature", {}), UnsoundNumber);
}

TEST_CASE("the complaint names element, number and inputs") {
  CHECK_THROWS_WITH_AS(sound(no_number * Pa, Sound::finite, "tubes", "pressure loss",
                             {{"air flow", 0.0004 * kg_per_s}, {"gas", kelvin(900)}, {"share", 0.25}}),
                       "tubes: pressure loss came to nan Pa from air flow 0.0004 kg/s, gas 900 K, share 0.25",
                       UnsoundNumber);
}
