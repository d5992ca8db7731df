#include "plan/report_data.hpp"
#include "describe.hpp"
#include "near.hpp"
#include <algorithm>
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::description;
using namespace lumwright::plan;
namespace {
double at_flow(const std::vector<FlowPoint>& curve, VolumeFlow flow) {  // Pa
  const auto after = std::find_if(curve.begin(), curve.end(), [&](const FlowPoint& p) { return p.flow >= flow; });
  REQUIRE(after != curve.begin());
  REQUIRE(after != curve.end());
  const FlowPoint before = *(after - 1);
  const double share = (flow - before.flow) / (after->flow - before.flow);
  return in(before.pressure + share * (after->pressure - before.pressure), Pa);
}
}  // namespace

TEST_CASE("the operating points lie on both of their curves") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Build build = example(name);
    const ReportData data = report_data(build);
    REQUIRE(data.draught);
    for (const DraughtState* s : {&data.draught->hot, &data.draught->cold}) {
      const double scale = in(data.draught->highest, Pa);  // straight pieces between 49 points of curves
      CHECK(std::abs(at_flow(s->fan, s->at.flow) - in(s->at.pressure, Pa)) < 0.004 * scale);
      CHECK(std::abs(at_flow(s->path, s->at.flow) - in(s->at.pressure, Pa)) < 0.004 * scale);
    }
    CHECK(in(data.draught->hot.at.flow, m3_per_s) == doctest::Approx(number(data.assessment, "draught.fan_flow")));
  }
}

TEST_CASE("identity: the losses along the way, less what the hot gas lifts, are what the fan holds") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Build build = example(name);
    const ReportData data = report_data(build);
    for (const DraughtState* s : {&data.draught->hot, &data.draught->cold}) {
      Pressure sum = -s->natural_draught;
      for (const ElementLoss& loss : s->losses) sum += loss.loss;
      CHECK(sum == near(s->at.pressure, 1e-7));
    }
  }
}

TEST_CASE("identity: the parts of the heat add up to the heat of the fuel, and none but the tuned one is below zero") {
  for (const std::string& name : example_names()) {
    CAPTURE(name);
    const Build build = example(name);
    const ReportData data = report_data(build);
    REQUIRE(data.heat);
    Energy sum;
    for (const HeatPart& part : data.heat->parts) {
      sum += part.energy;
      if (part.id != "astray") CHECK(part.energy >= -1e-9 * data.heat->chemical);
    }
    CHECK(sum == near(data.heat->chemical, 1e-6));
  }
}

TEST_CASE("each light-up begins where the last one ended, and there are as many as the answer says") {
  const Build build = example("tarn-beck");
  const ReportData data = report_data(build);
  REQUIRE(data.supply);
  const RepeatedLightUps& all = *data.supply;
  CHECK(all.whole == number(data.assessment, "power.light_ups_per_charge"));
  REQUIRE(all.first.size() == static_cast<std::size_t>(std::min(all.whole, 60)));
  for (std::size_t i = 0; i < all.first.size(); ++i) {
    const LightUp& one = all.first[i];
    CHECK(one.to - one.from == near(all.each, 1e-9));
    CHECK(one.ends.voltage < one.begins.voltage);
    CHECK(one.ends.charge_share < one.begins.charge_share);
    if (i > 0) CHECK(one.begins.voltage == near(all.first[i - 1].ends.voltage, 1e-12));
  }
  CHECK(all.series.back().time < (all.whole + 1.0) * all.each);
}

TEST_CASE("bands of the curves hold the curve of the build as it stands, and are there only when samples are tried") {
  const Build build = example("tarn-beck");
  CHECK(report_data(build).draught->path_band.empty());
  const ReportData data = report_data(build, {.samples = {.count = 64}});
  const DraughtCurves& c = *data.draught;
  REQUIRE(c.fan_band.size() > 20);
  REQUIRE(c.path_band.size() > 20);
  for (const FlowBand& b : c.fan_band) {
    if (!(b.flow > 0.0 * m3_per_s) || b.flow > 0.9 * c.widest) continue;
    const double centre = at_flow(c.hot.fan, b.flow);
    CHECK(in(b.low, Pa) < centre);
    REQUIRE(b.high);
    CHECK(in(*b.high, Pa) > centre);
  }
}

TEST_CASE("an axial fan has a stretch of stall, a centrifugal one has none") {
  const Build axial = example("high-tarn-32mm"), centrifugal = example("tarn-beck");
  const ReportData one = report_data(axial), other = report_data(centrifugal);
  REQUIRE(one.draught->stall);
  CHECK(one.draught->stall->from < one.draught->stall->to);
  CHECK(one.draught->stall->to < one.draught->widest);
  CHECK_FALSE(other.draught->stall);
}

TEST_CASE("what cannot be worked out says which keys it lacks") {
  const Build build = described("engine: { chimney: { bore: 17.6 mm } }\n");
  const ReportData data = report_data(build);
  CHECK_FALSE(data.draught);
  CHECK_FALSE(data.draught.missing.empty());
  CHECK(std::count(data.supply.missing.begin(), data.supply.missing.end(), "supply.pack.cell") == 1);
  CHECK_FALSE(data.fit.missing.empty());
}
