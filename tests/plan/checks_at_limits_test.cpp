// Checks of draught, fire, heat, fit and making at their limits and a hair on either side; those of the supply are in
// power_checks_test.cpp. What is judged is set by hand in a solved example; the limits stand here a second time.
#include "draught/bed.hpp"
#include "power_bench.hpp"
#include <fmt/format.h>

using namespace lumwright;

namespace {
SolvedDraught& draught(Bench& b) { return b.all().draught.value.value(); }
Fit& fit(Bench& b) { return b.all().fit.value.value().fit; }
FanUnit& made(Bench& b) { return b.all().unit.value.value(); }
}  // namespace

TEST_CASE("draught and heat at their limits") {
  const std::string text = example_text("tarn-beck");
  // half a millimetre of water is what a U-tube can be read to; four times that (common practice, no source)
  at_limits({"draught.cold", text, [](Bench& b, double x) { draught(b).cold_flow.smokebox_suction = x * Pa; },
             Bound::at_least, 2.0 * 9.80665, {}});
  // common practice, no source: 5 % and three times that
  at_limits({"draught.leak", text,
             [](Bench& b, double x) { draught(b).hot_flow.annulus = x * draught(b).hot_flow.chimney; }, Bound::at_most,
             0.05, 0.15});
  // the example's fan stands 70 degC; ten kelvin are kept in hand
  at_limits({"heat.fan_gas", text, [](Bench& b, double x) { draught(b).hot_flow.fan_gas = kelvin(x); }, Bound::at_most,
             333.15, 343.15});
  // what carries the weight of the bed, and 70 % of it (estimate)
  at_limits({"fire.bed_lift", text,
             [](Bench& b, double x) {
               SolvedDraught& d = draught(b);
               d.hot_flow.loss[static_cast<std::size_t>(Element::bed)] =
                   x * bed_lifting_pressure(*d.path.bed, *d.fuel_piece);
             },
             Bound::at_most, 0.7, 1.0});
  // silver braze at 630 degC with 50 K of reserve, and 20 K before it (common practice, no source)
  at_limits({"heat.joint", text, [](Bench& b, double x) { draught(b).hot_flow.smokebox_gas = kelvin(x); },
             Bound::at_most, 560.0 + 273.15, 580.0 + 273.15});
}

TEST_CASE("the fit at its limits") {
  const std::string text = example_text("tarn-beck");
  Bench plain(text);
  const double needed = in(fit(plain).needed, m), unsure = in(fit(plain).uncertainty, m);
  // ISO 14253-1: accepted with the uncertainty to spare, refused below what is needed
  at_limits({"fit.cold", text, [](Bench& b, double x) { fit(b).cold.value = x * m; }, Bound::at_least, needed + unsure,
             needed});
  // common practice of the trade: 5 % of the bore's area
  at_limits({"fit.leak", text, [](Bench& b, double x) { fit(b).leak_share.value = x; }, Bound::at_most, 0.05, 0.15});
  // 0.03 mm is left for sliding; at nothing it seizes (identity)
  const auto hot = [&](double millimetres) {
    Bench b(text);
    fit(b).lighting_up.clearance.value = millimetres * mm;
    fit(b).both_hot.clearance.value = 1.0 * mm;
    return b.judge("fit.hot").value();
  };
  CHECK(hot(0.030001).verdict == Verdict::pass);
  CHECK(hot(0.029999).verdict == Verdict::watch);
  CHECK(hot(0.000001).verdict == Verdict::watch);
  const Finding seizes = hot(-0.000001);
  CHECK(seizes.verdict == Verdict::fail);
  CHECK(limit(seizes) == 0.0);
  CHECK(seizes.limit_name == LimitName::not_to_fail);
}

TEST_CASE("the making at its limits") {
  const std::string text = example_text("tarn-beck");
  Bench plain(text);
  const double wished = in(made(plain).flange->screws->hold.prefer, m);
  Bench thick(text);
  const auto with_plate = [&](double x) {
    Bench b(text);
    made(b).flange->thickness = x * m;
    made(b).flange->screws->tapped = true;
    return b.judge("make.thread").value();
  };
  CHECK(with_plate(wished).verdict == Verdict::pass);
  CHECK(with_plate(wished * (1 + 1e-6)).verdict == Verdict::pass);
  CHECK(with_plate(wished * (1 - 1e-6)).verdict == Verdict::watch);
  CHECK(limit(with_plate(0.5 * wished)) == doctest::Approx(wished));
  // a lean of 1 in 50 (estimate)
  at_limits({"make.stability", text, [](Bench& b, double x) { made(b).stability->lean = x; }, Bound::at_most, 0.02, {}});
}

TEST_CASE("of nothing, nothing is judged: each check is not asked, or unknown with what would settle it") {
  const Solved solved = solve(described("name: none"));
  for (const Check& check : all_checks()) {
    CAPTURE(check.id);
    const auto found = check.judge(solved);
    if (!found) continue;
    CHECK(found->verdict == Verdict::unknown);
    CHECK_FALSE(found->missing.empty());
    CHECK_FALSE(found->value);
    CHECK_FALSE(found->limit);
  }
}

// seen: "a wider box, so that the fan's screws stand clear of its wall", and no word of how wide
TEST_CASE("who makes the box as wide as is advised has room for the fan's holes, and no more than he needs") {
  const auto with_box = [](double millimetres) {
    return finding(assess(example("tarn-beck", {{"box: { diameter: 78 mm", fmt::format("box: {{ diameter: {} mm", millimetres)}})),
                   "make.lid");
  };
  Finding narrow = with_box(60);
  REQUIRE(narrow.verdict == Verdict::fail);
  const std::string words = "a box ";
  const auto at = narrow.action.find(words);
  REQUIRE(at != std::string::npos);
  const double advised = std::stod(narrow.action.substr(at + words.size()));
  CHECK(advised > 60.0);
  CHECK_FALSE(says(with_box(advised), "wide inside"));
  CHECK(says(with_box(advised - 1.0), "wide inside"));
}
