#include "plan/sweep.hpp"
#include "plan/describe.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
std::string complaint_of_sweep(const Build& build, const std::string& key, const std::string& range) {
  try {
    sweep_axis(build, key, range, 5);
  } catch (const InputError& e) {
    return e.what();
  }
  return "";
}
}  // namespace

TEST_CASE("a range becomes values in its own unit, counts go one by one, words as they stand") {  // hand
  const Build build = example("tarn-beck");
  CHECK(sweep_axis(build, "supply.step_up.output", "8 V..12 V", 5).values ==
        std::vector<std::string>{"8 V", "9 V", "10 V", "11 V", "12 V"});
  CHECK(sweep_axis(build, "fuel.bed", "1 in..1.5 in", 3).values ==
        std::vector<std::string>{"1 in", "1.25 in", "1.5 in"});
  CHECK(sweep_axis(build, "adapter.bleed.holes", "2..5", 9).values == std::vector<std::string>{"2", "3", "4", "5"});
  CHECK(sweep_axis(build, "supply.pack.condition", "good,old", 9).values == std::vector<std::string>{"good", "old"});
}
TEST_CASE("what cannot be swept is refused with its place and the nearest key") {
  const Build build = example("tarn-beck");
  CHECK(complaint_of_sweep(build, "fuel.bedd", "1 mm..2 mm").find("did you mean `bed`?") != std::string::npos);
  CHECK(complaint_of_sweep(build, "fuel.bed", "3 mm").find("expected a range") != std::string::npos);
  CHECK(complaint_of_sweep(build, "fuel.bed", "3 V..4 V").find("sweep:1:") != std::string::npos);
  CHECK(complaint_of_sweep(build, "adapter.bleed.holes", "5..2") != "");
  CHECK(complaint_of_sweep(build, "fan.curve", "1..2") != "");
  CHECK_THROWS_AS(
      sweep(build, {sweep_axis(build, "adapter.tube.wall", "0.5 mm..12 mm", 3)}, UnitSystem::as_written, nullptr, 1),
      InputError);
}
TEST_CASE("a sweep is each build assessed by itself, on any number of threads") {
  const Build build = example("tarn-beck");
  const std::vector<SweepAxis> axes{sweep_axis(build, "supply.step_up.output", "9 V..12 V", 2),
                                    sweep_axis(build, "adapter.bleed.holes", "6..8", 3)};
  const auto points = sweep(build, axes, UnitSystem::as_written, nullptr, 2);
  REQUIRE(points.size() == 6);
  const auto time = [](const Assessment& a) {
    return std::get<Measure>(find_result(a, "raise.to_own_blower")->value).quantity.si;
  };
  for (const SweepPoint& point : points) {
    const Assessment alone = assess(with_settings(build, {{axes[0].key, point.at[0]}, {axes[1].key, point.at[1]}}));
    CHECK(time(point.assessment) == time(alone));
  }
  CHECK(points[1].at == std::vector<std::string>{"9 V", "7"});
  CHECK(time(points[0].assessment) > time(points[3].assessment));  // more volts, fewer minutes
}
