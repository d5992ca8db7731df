// Checks of the raise at their limits and a hair on either side. What is judged is set by hand in a solved build, or
// drawn into it; the limits stand here a second time.
#include "limits.hpp"

using namespace lumwright;
using namespace lumwright::boiler;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
const std::string& raising() {  // steam wanted within 11 min
  static const std::string text = example_text("tarn-beck");
  return text;
}
RaiseEvent& event_of(Bench& b, RaiseEventKind kind) {
  for (RaiseEvent& event : b.raised().raise.events)
    if (event.kind == kind) return event;
  throw std::runtime_error("the raise does not come to that");
}
void without(Bench& b, std::initializer_list<RaiseEventKind> kinds) {
  std::erase_if(b.raised().raise.events, [&](const RaiseEvent& event) {
    return std::find(kinds.begin(), kinds.end(), event.kind) != kinds.end();
  });
}
void take(Bench& b, double seconds) { event_of(b, RaiseEventKind::own_blower).at.time = seconds * unit::s; }

const LimitTests time_at_limits("minutes to steam, at the limits", [] {
  constexpr double within = 11.0 * 60.0;
  // the model's error, a judgement: a third longer without a timed lighting-up, a tenth with one
  at_limits({"raise.time", raising(), take, Bound::at_most, within / 1.35, within, true});
  const auto tuned = [](double seconds) {
    Bench b(raising(), "tuned.heat", 1.0);
    take(b, seconds);
    return b.judge("raise.time");
  };
  either_side({.id = "raise.time", .judge = tuned, .limit = within / 1.10, .below = 'p', .above = 'w'});
  either_side({.id = "raise.time", .judge = tuned, .limit = within, .below = 'w', .above = 'f'});
  // where every spread is tried, no reserve is kept beside it
  const auto sampled = [](double seconds) {
    Bench b(raising());
    b.all().spread_tried = true;
    take(b, seconds);
    return b.judge("raise.time");
  };
  either_side({.id = "raise.time", .judge = sampled, .limit = within, .below = 'p', .above = 'f', .on = 'p'});
  Bench never(raising());
  without(never, {RaiseEventKind::own_blower});
  CHECK(letter(never.judge("raise.time")) == 'f');
  CHECK_FALSE(never.judge("raise.time")->limit);
  never.raised().input.own_blower.reset();
  unknown(never, "raise.time", {"engine.boiler.own_blower_from"});
});

const LimitTests heat_of_raise("a tuned file that asks for as much heat as the fire gives, and for more", [] {
  Bench plain(raising());
  const BoilerHeat& heat = event_of(plain, RaiseEventKind::own_blower).at.heat;
  // identity: what the gas can give over what the model says the water takes
  const double most = in(heat.most, heat.firebox.heat + heat.tubes.heat);
  const auto asks = [&](double factor) {
    Bench b(raising(), "tuned.heat", factor);
    event_of(b, RaiseEventKind::own_blower).at.heat = heat;
    auto found = b.judge("raise.heat");
    CHECK(value(*found) == factor);
    CHECK(limit(*found) == doctest::Approx(most).epsilon(1e-12));
    return found;
  };
  either_side({.id = "raise.heat", .judge = asks, .limit = most, .below = 'p', .above = 'f'});
  not_asked(plain, "raise.heat");  // in a spread that is assumed no more is drawn than the fire gives
});

const LimitTests water_left("how long the water lasts, at the limits", [] {
  Bench plain(raising());
  const double steam = term(plain.judge("raise.left_running").value(), "m");
  const auto lasts = [steam](Bench& b, double seconds) {  // half of it
    b.raised().input.boiler.water = 2.0 * seconds * steam * kg;
  };
  // half of the water in 10 min (common practice, no source), in 5 and in 3 min (estimates)
  at_limits({"raise.left_running", raising(), lasts, Bound::at_least, 600.0, {}, true});
  at_limits({"raise.water", raising(), lasts, Bound::at_least, 300.0, 180.0, true});
  Bench cold(raising());
  for (RaiseEvent& event : cold.raised().raise.events) event.at.heat.absorbed = 0.0 * W;
  CHECK(letter(cold.judge("raise.left_running")) == 'p');  // it makes no steam
  CHECK_FALSE(cold.judge("raise.left_running")->limit);
  without(cold, {RaiseEventKind::own_blower, RaiseEventKind::working});
  not_asked(cold, "raise.left_running");
});

const LimitTests water_share("how much of the boiler the water fills, at the limits", [] {
  // 40 and 50 % (common practice, no source); identity: no boiler holds more than it holds
  const auto filled = [](double share) {
    Bench b("engine: { boiler: { water: 400 ml, volume: 800 ml } }", [share](std::string_view key, const Input& input) {
      return key == "engine.boiler.volume" ? 400e-6 / share : input.value.si;
    });
    return b.judge("raise.water");
  };
  either_side({.id = "raise.water", .judge = filled, .limit = 0.40, .below = 'f', .above = 'w'});
  either_side({.id = "raise.water", .judge = filled, .limit = 0.50, .below = 'w', .above = 'p'});
  either_side({.id = "raise.water", .judge = filled, .limit = 1.0, .below = 'p', .above = 'f'});
  CHECK(limit(*filled(0.39)) == doctest::Approx(0.40));
  CHECK(limit(*filled(0.49)) == doctest::Approx(0.50));
  CHECK(says(*filled(1.01), "measure the water"));
  Bench alone("engine: { boiler: { water: 400 ml } }");
  unknown(alone, "raise.water", {"engine.boiler.volume"});
  Bench nothing("name: none");
  not_asked(nothing, "raise.water");
});

const LimitTests room_to_swell("room for the water to swell, at the limits", [] {
  // by how much it swells is held against IF97 in raise_checks_test.cpp
  Bench plain(raising());
  const double swells = value(plain.judge("raise.swelling").value()) / plain.raised().fill.water_share;
  // 95 % (common practice, no source); identity: 100 % is full
  at_limits({"raise.swelling", raising(), [swells](Bench& b, double x) { b.raised().fill.water_share = x / swells; },
             Bound::at_most, 0.95, 1.0, true});
  CHECK(letter(plain.judge("raise.trapped_air")) == 'p');
});

const LimitTests to_working("working pressure: reached, not reached, not needed, not named", [] {
  Bench b(raising());
  CHECK(letter(b.judge("raise.working")) == 'p');
  without(b, {RaiseEventKind::working});
  CHECK(letter(b.judge("raise.working")) == 'p');  // the engine's own blower has taken over
  CHECK_FALSE(b.judge("raise.working")->value);
  without(b, {RaiseEventKind::own_blower});
  CHECK(letter(b.judge("raise.working")) == 'w');
  CHECK_FALSE(b.judge("raise.working")->action.empty());
  b.raised().input.working.reset();
  unknown(b, "raise.working", {"engine.boiler.working"});
});
}  // namespace
