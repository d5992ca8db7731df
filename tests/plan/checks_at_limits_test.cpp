// Checks of draught, fan and gas at their limits and a hair on either side; those of the fire are in
// fire_limits_test.cpp, of fit and making in make_limits_test.cpp, of the raise in raise_limits_test.cpp, of the supply
// in power_checks_test.cpp. What is judged is set by hand in a solved example; the limits stand here a second time.
#include "limits.hpp"
#include <array>
#include <cmath>
#include <numbers>

using namespace lumwright;
using namespace lumwright::plan;

namespace {
const std::string& beck() {
  static const std::string text = example_text("tarn-beck");
  return text;
}
std::string beck_with(const std::string& from, const std::string& to) {
  std::string text = beck();
  const auto at = text.find(from);
  if (at == std::string::npos) throw std::runtime_error("`" + from + "` does not stand in the example");
  return text.replace(at, from.size(), to);
}
const char* const measured_air =
    "kind: lump charcoal, bed: 34 mm, lump: 6 mm, bed_mass: 16 g";  // of the small engine: no fan, no adapter

const LimitTests draught_at_limits("draught at its limits", [] {
  // half a millimetre of water is what a U-tube can be read to; four times that (common practice, no source)
  at_limits({"draught.cold",
             beck(),
             [](Bench& b, double x) { b.draught().cold_flow.smokebox_suction = x * Pa; },
             Bound::at_least,
             2.0 * 9.80665,
             {}});
  // common practice, no source: 5 % and three times that
  at_limits({"draught.leak", beck(),
             [](Bench& b, double x) { b.draught().hot_flow.annulus = x * b.draught().hot_flow.chimney; },
             Bound::at_most, 0.05, 0.15, true});
  Bench open(beck());
  open.draught().path.annulus.reset();
  not_asked(open, "draught.leak");
  CHECK(letter(open.judge("draught.flow")) == 'p');
});

const LimitTests steady_at_limits("a fan that is steady, that stalls, and that may settle elsewhere", [] {
  // Eck, Fans, 1973, from memory: an axial fan is clear of stall above 60 % of its free-air flow
  at_limits({"draught.steady",
             beck(),
             [](Bench& b, double x) {
               b.fan().label.kind = data::FanKind::axial;
               b.draught().hot->free_air_share = x;
             },
             Bound::at_least,
             0.60,
             {}});
  Bench b(beck());
  b.draught().hot->free_air_share = 0.1;  // a centrifugal fan's curve falls everywhere
  CHECK(letter(b.judge("draught.steady")) == 'p');
  CHECK_FALSE(b.judge("draught.steady")->limit);
  b.draught().hot->several = true;
  const Finding several = b.judge("draught.steady").value();
  CHECK(several.verdict == Verdict::watch);
  CHECK_FALSE(several.limit);
  CHECK(says(several, "may settle at a lower one"));
  b.draught().hot.reset();  // the air was measured
  not_asked(b, "draught.steady");
});

/// The fan of the example, 118 Pa and 128 l/min, with wheel and speed such that its coefficients come to these.
std::optional<Finding> with_coefficients(double psi, double phi, data::FanKind kind, double wheel_share) {
  Bench b(beck());
  // identity: psi = p0 / (1.2 kg/m3 u^2 / 2), phi = V0 / (pi/4 D^2 u), u = pi n D
  const double u = std::sqrt(118.0 / (0.6 * psi)), pi = std::numbers::pi;
  const double wheel = std::sqrt(0.128 / 60.0 / (phi * pi / 4.0 * u));
  b.fan().label.kind = kind;
  b.fan().label.frame = wheel / wheel_share * m;
  b.fan().label.rated_speed = u / (pi * wheel) * hertz;
  return b.judge("fan.curve");
}
const LimitTests curve_at_limits("a fan's curve at the limits of what can be believed", [] {
  const auto sides = [](data::FanKind kind, double wheel_share, double psi, double phi, auto limits) {
    const auto by_psi = [=](double x) { return with_coefficients(x, phi, kind, wheel_share); };
    const auto by_phi = [=](double x) { return with_coefficients(psi, x, kind, wheel_share); };
    const auto [psi_low, psi_high, reject, phi_low, phi_high] = limits;
    either_side({.id = "fan.curve", .judge = by_psi, .limit = psi_low, .below = 'w', .above = 'p'});
    either_side({.id = "fan.curve", .judge = by_psi, .limit = psi_high, .below = 'p', .above = 'w'});
    either_side({.id = "fan.curve", .judge = by_psi, .limit = reject, .below = 'w', .above = 'f'});
    either_side({.id = "fan.curve", .judge = by_phi, .limit = phi_low, .below = 'w', .above = 'p'});
    either_side({.id = "fan.curve", .judge = by_phi, .limit = phi_high, .below = 'p', .above = 'w'});
    CHECK(value(*by_psi(psi_high * 1.01)) == doctest::Approx(psi_high * 1.01));
    CHECK(limit(*by_psi(psi_high * 1.01)) == doctest::Approx(psi_high));
    CHECK(limit(*by_psi(reject * 1.01)) == doctest::Approx(reject));
    CHECK(limit(*by_phi(phi_low * 0.99)) == doctest::Approx(phi_low));
    CHECK(by_phi(phi_low * 0.99)->bound == Bound::at_least);
  };
  // published sheets: psi 0.34 to 0.67 and phi 0.20 to 0.36, widened by their tolerance; blowers of printed rows
  sides(data::FanKind::axial, 0.95, 0.5, 0.25, std::array{0.25, 0.75, 0.9, 0.14, 0.45});
  sides(data::FanKind::centrifugal, 0.77, 1.5, 0.2, std::array{0.5, 2.5, 4.0, 0.08, 0.40});
  Bench guessed("fan: { kind: axial, frame: 60 mm }");
  CHECK(letter(guessed.judge("fan.curve")) == (guessed.all().fan ? 'w' : 'u'));
  Bench labelled(
      "fan: { kind: axial, frame: 60 mm, thickness: 25 mm, rated: { voltage: 12 V, current: 0.15 A, speed: 4000 rpm } "
      "}");
  CHECK(letter(labelled.judge("fan.curve")) == 'w');  // worked out from its label
  Bench air(small_engine(measured_air, "0.4 g/s"));
  for (const char* id : {"fan.curve", "heat.fan_gas", "heat.joint", "heat.bleed"}) not_asked(air, id);
});

const LimitTests heat_at_limits("gas at the fan and at the joint, at their limits", [] {
  // the example's fan stands 70 degC; ten kelvin are kept in hand
  at_limits({"heat.fan_gas", beck(), [](Bench& b, double x) { b.draught().hot_flow.fan_gas = kelvin(x); },
             Bound::at_most, 333.15, 343.15, true});
  // silver braze at 630 degC with 50 K of reserve, and 20 K before it (common practice, no source)
  at_limits({"heat.joint", beck(), [](Bench& b, double x) { b.draught().hot_flow.smokebox_gas = kelvin(x); },
             Bound::at_most, 560.0 + 273.15, 580.0 + 273.15, true});
  Bench none(beck_with("  joint: silver braze\n", ""));
  unknown(none, "heat.joint", {"adapter.joint"});
});

const LimitTests tin_at_limits("tin at the mouth of the tube and all over the box, at 232 degC", [] {
  const double melts = 232.0 + 273.15;  // tin: 231.93 degC (ITS-90 fixed point), as tables round it
  at_limits({"heat.tin",
             beck(),
             [](Bench& b, double x) {
               b.draught().hot_flow.adapter_exit_gas = kelvin(x);
               b.draught().hot_flow.fan_gas = degC(60);
             },
             Bound::at_most,
             melts,
             {},
             true});
  // the wall follows the gas in the box: searched for the gas that brings it to the limit
  const auto with_gas = [](double x) {
    Bench b(beck());
    b.draught().hot_flow.adapter_exit_gas = degC(200);
    b.draught().hot_flow.fan_gas = kelvin(x);
    return b.judge("heat.tin");
  };
  double cool = 400.0, hot = 1400.0;
  while (hot - cool > 1e-7) (letter(with_gas(0.5 * (cool + hot))) == 'p' ? cool : hot) = 0.5 * (cool + hot);
  either_side({.id = "heat.tin", .judge = with_gas, .limit = 0.5 * (cool + hot), .below = 'p', .above = 'f'});
  CHECK(value(*with_gas(hot + 1e-6)) == doctest::Approx(melts).epsilon(1e-8));
  CHECK(limit(*with_gas(hot + 1e-6)) == doctest::Approx(melts).epsilon(1e-12));
  Bench brass(beck_with("material: tinplate", "material: brass"));
  not_asked(brass, "heat.tin");
  Bench tubeless(beck());
  tubeless.draught().path.adapter.reset();
  unknown(tubeless, "heat.tin", {"adapter.tube.outside", "adapter.tube.length"});
  Bench low(beck_with("height: 46 mm, ", ""));
  unknown(low, "heat.tin", {"adapter.box.height"});
});

const LimitTests bleed_at_limits("bleed holes: by the gas at the fan, at the limits", [] {
  const auto with_gas = [](const std::string& text, double x) {
    Bench b(text);
    b.draught().hot_flow.fan_gas = kelvin(x);
    return b.judge("heat.bleed");
  };
  const auto holed = [&](double x) { return with_gas(beck(), x); };
  either_side({.id = "heat.bleed", .judge = holed, .limit = 333.15, .below = 'p', .above = 'w'});
  either_side({.id = "heat.bleed", .judge = holed, .limit = 343.15, .below = 'w', .above = 'f'});
  for (const double x : {330.0, 340.0, 343.0, 343.2, 350.0}) {  // in one sample of many, without the words
    Bench b(beck());
    b.draught().hot_flow.fan_gas = kelvin(x);
    CHECK(fails(named("heat.bleed"), b.all()) == (letter(b.judge("heat.bleed")) == 'f'));
  }
  const auto shut = [&](double x) { return with_gas(beck_with(no_bleed.first, ""), x); };
  either_side({.id = "heat.bleed", .judge = shut, .limit = 333.15, .below = '-', .above = 'w'});
  // a fan that stands no more than ten kelvin over the room: no air cools to that
  const auto stands = [](double x) {
    Bench b(beck());
    b.fan().gas_limit = kelvin(x);
    b.draught().hot_flow.fan_gas = kelvin(x);
    return b.judge("heat.bleed");
  };
  CHECK(says(*stands(285.15 + 10.0), "wait for a cooler day"));
  CHECK_FALSE(says(*stands(285.15 + 10.001), "wait for a cooler day"));
  // a box above the room's pressure blows hot gas out of its holes
  Bench weak(beck());
  weak.draught().hot_flow.bleed = -1e-9 * kg_per_s;
  weak.draught().hot_flow.box_suction = -1e-6 * Pa;
  const Finding out = weak.judge("heat.bleed").value();
  CHECK(out.verdict == Verdict::fail);
  CHECK(says(out, "blows out of the bleed holes"));
  CHECK(limit(out) == 0.0);
  weak.draught().hot_flow.bleed = 0.0 * kg_per_s;
  CHECK(letter(weak.judge("heat.bleed")) == 'p');
});
}  // namespace
