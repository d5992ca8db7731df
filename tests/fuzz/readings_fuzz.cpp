// Any bytes as the readings of a fan test; what can be read is worked out to a finite curve, or refused with a reason.
#include "description/readings.hpp"
#include "fan_test/fan_test.hpp"
#include "finite.hpp"
#include "quantity/errors.hpp"
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::draught;
using namespace lumwright::model;
using namespace lumwright::description;
using namespace lumwright::fan_test;

namespace {
void judge(const FanTest& test) {
  fuzz::must(test.curve.size() >= 2, "a curve has points");
  for (const CurveBandPoint& p : test.curve) {
    fuzz::must(std::isfinite(in(p.flow, m3_per_s)) && std::isfinite(in(p.pressure, Pa)), "a curve is finite");
    fuzz::must(p.low <= p.pressure && p.pressure <= p.high, "a curve lies within its band");
  }
  fuzz::must(!curve_lines(test).empty(), "a curve can be written");
}
}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = [](const Source& source) { return read_fan_readings(source); };
  return fuzz::read_and(read, data, size, [](const FanReadings& readings) {
    fuzz::all_finite(readings);
    try {
      judge(fan_test::fan_test(readings));
    } catch (const ModelError& error) {
      fuzz::must(fuzz::showable(error.what()), "a refusal says why");
    }
  });
}
