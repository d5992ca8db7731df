// How loud small fans are, against what makers print.
#include "draught/fan_sound.hpp"
#include "near.hpp"
#include "numeric/statistics.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::draught;

namespace {
SoundingFan fan_of(const data::Row& row) {
  const Rotation speed = row.quantity<Rotation>("speed");
  return {.kind = row.text("kind") == "axial" ? data::FanKind::axial : data::FanKind::centrifugal,
          .frame = row.quantity<Length>("frame"),
          .thickness = row.quantity<Length>("thickness"),
          .rated = speed,
          .running = speed};
}
SoundingFan usual(data::FanKind kind, double share) {
  return {
      .kind = kind, .frame = 50.0 * mm, .thickness = 15.0 * mm, .rated = 5000.0 * rpm, .running = share * 5000.0 * rpm};
}
}  // namespace

TEST_CASE("eight printed axial fans of ten lie in the band, and no blower body is far off") {
  std::vector<double> apart;
  int inside = 0, blowers = 0;
  for (const data::Row& row : published("fan_sound")) {
    CAPTURE(row.text("id"));
    const Band<double> level = sound_level(fan_of(row));
    const double printed = row.number("sound");
    if (row.text("kind") == "axial") {
      apart.push_back(printed - level.value);
      inside += printed >= level.low && printed <= level.high ? 1 : 0;
    } else {
      ++blowers;
      CHECK(std::abs(printed - level.value) < 4.0);
    }
  }
  CHECK(apart.size() > 80);
  CHECK(blowers >= 10);
  CHECK(static_cast<double>(inside) / static_cast<double>(apart.size()) > 0.75);
  CHECK(std::abs(numeric::quantile(apart, 0.5)) < 1.0);
}
TEST_CASE("half the speed of one fan brings 17 dB, of a blower 12") {
  // 56.6 and 41 dB for each ten times (printed rows of one body at several speeds)
  CHECK(sound_level(usual(data::FanKind::axial, 1.0)).value - sound_level(usual(data::FanKind::axial, 0.5)).value ==
        doctest::Approx(17.0).epsilon(0.01));
  CHECK(sound_level(usual(data::FanKind::centrifugal, 1.0)).value -
            sound_level(usual(data::FanKind::centrifugal, 0.5)).value ==
        doctest::Approx(12.3).epsilon(0.01));
  // hand: u = pi 0.95 0.05 5000/60 = 12.435 m/s; -17.3 + 55 lg 12.435 + 10 lg 0.0475 = 29.7
  CHECK(sound_level(usual(data::FanKind::axial, 1.0)).value == doctest::Approx(29.7).epsilon(0.005));
  CHECK_THROWS_AS(sound_level(usual(data::FanKind::axial, 0.0)), ModelError);
}
