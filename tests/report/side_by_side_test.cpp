#include "report/side_by_side.hpp"
#include "plan/describe.hpp"
#include <algorithm>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
Assessment sampled(const Build& build) {
  SamplesAsked samples;
  samples.count = 120;
  return assess(build, UnitSystem::as_written, nullptr, samples);
}
}  // namespace

TEST_CASE("builds side by side: what differs, and whether it is more than the spread") {
  const Build one = example("tarn-beck");
  const Build weak = example("tarn-beck", {{"output: 12 V", "output: 7 V"}});
  const Build near = example("tarn-beck", {{"output: 12 V", "output: 11.9 V"}});
  const std::string far = compare_report({{one, sampled(one)}, {weak, sampled(weak)}}, TextStyle{});
  CAPTURE(far);
  CHECK(far.find("supply.step_up.output") != std::string::npos);
  CHECK(far.find("fuel.bed") == std::string::npos);
  CHECK(far.find("clear") != std::string::npos);
  const std::string close = compare_report({{one, sampled(one)}, {near, sampled(near)}}, TextStyle{});
  CAPTURE(close);
  CHECK(close.find("within the spread") != std::string::npos);
  CHECK(close.find("  clear\n") == std::string::npos);
  CHECK(compare_report({{one, assess(one)}, {one, assess(one)}}, TextStyle{}).find("nothing") != std::string::npos);
}
TEST_CASE("a sweep on the page and in a table has a line for each value") {
  const Build build = example("tarn-beck");
  const std::vector<SweepAxis> axes{sweep_axis(build, "supply.step_up.output", "8 V..12 V", 5)};
  const auto points = sweep(build, axes, UnitSystem::as_written, nullptr, 1);
  const std::string csv = sweep_csv(axes, points);
  CHECK(std::count(csv.begin(), csv.end(), '\n') == 6);
  CHECK(csv.starts_with("supply.step_up.output_V,to_own_blower_s,air_kg_per_s,"));
  const std::string page = sweep_report("Tarn Beck", axes, points, TextStyle{});
  for (const std::string& value : axes[0].values) CHECK(page.find(value) != std::string::npos);
  CHECK(page.find("====") != std::string::npos);
}
