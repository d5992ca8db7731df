// Light-ups one after the other: the quick way against raising every single one.
#include "boiler/light_ups_lived.hpp"
#include "example.hpp"
#include "near.hpp"
#include "quantity/errors.hpp"
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::power;
using namespace lumwright::boiler;

namespace {
constexpr RaiseEventKind own = RaiseEventKind::own_blower;

/// By its own definition: raise, take over what is left, raise again.
std::vector<Duration> one_by_one(RaiseInput input, std::optional<Duration> within) {
  std::vector<Duration> times;
  for (;;) {
    try {
      const Raise run = raise(input);
      const RaiseEvent* reached = run.find(own);
      if (reached == nullptr || (within && reached->at.time > *within)) return times;
      times.push_back(reached->at.time);
      input.battery->pack.drawn = (1.0 - reached->at.supply->charge_left) * input.battery->pack.full;
    } catch (const ModelError&) {  // the pack no longer carries the fan
      return times;
    }
  }
}
RaiseInput straight_from_the_pack(const char* cell, int series, double stop, double contacts = 60.0) {
  RaiseInput input = example_coupled("axial 60x25", false);
  PackInput pack{.cell = data::cell(cell),
                 .series = series,
                 .parallel = 1,
                 .capacity = data::cell(cell).capacity.value,
                 .capacity_factor = 1.0,
                 .resistance_factor = 1.0,
                 .charged = 1.0,
                 .rate_exponent = data::cell(cell).rate_exponent.value,
                 .temperature = degC(15),
                 .measured = {},
                 .contacts = contacts * mohm,
                 .outside = 60.0 * mohm,
                 .cell_resistance = {},
                 .weakest = {}};
  input.battery = Battery{make_pack(pack), input.battery->feed, stop * V};
  input.working.reset();
  return input;
}
}  // namespace

TEST_CASE("light-ups lived through are those of raising every one, within half a per cent") {
  const RaiseInput packs[] = {
      straight_from_the_pack("NiMH AA", 10, 10.0), straight_from_the_pack("Li-ion 18650", 3, 9.0),
      straight_from_the_pack("alkaline AA", 8, 7.6, 800.0), straight_from_the_pack("lead-acid 12 V 1.3 Ah", 1, 10.8),
      straight_from_the_pack("LiFePO4 18650", 4, 10.0)};
  for (const RaiseInput& input : packs) {
    CAPTURE(in(input.battery->pack.curve.voltage.front(), V));
    const Raise first = raise(input);
    const auto every = one_by_one(input, {});
    const LightUpsLived lived = live_through(input, first, own, {});
    REQUIRE(every.size() > 5);
    CHECK(lived.end == LightUpsEnd::pack_stops);
    CHECK(std::abs(static_cast<double>(lived.each.size()) - static_cast<double>(every.size())) <= 1.0);
    for (std::size_t i = 0; i < std::min(every.size(), lived.each.size()); ++i) {
      CAPTURE(i);
      CHECK(lived.each[i].time == near(every[i], i + 2 < every.size() ? 5e-3 : 2e-2));
    }
    CHECK(lived.each.back().time > 1.02 * lived.each.front().time);  // the fan slows, so it takes longer
  }
}

TEST_CASE("the count stops where one takes longer than the owner will wait") {
  const RaiseInput input = straight_from_the_pack("Li-ion 18650", 3, 9.0);
  const Raise first = raise(input);
  const LightUpsLived all = live_through(input, first, own, {});
  const Duration shortest = all.each.front().time, longest = all.each.back().time,
                 wait = shortest + 0.5 * (longest - shortest);
  const LightUpsLived some = live_through(input, first, own, wait);
  CHECK(some.end == LightUpsEnd::too_slow);
  CHECK(some.each.size() < all.each.size());
  CHECK(std::abs(static_cast<double>(some.each.size()) - static_cast<double>(one_by_one(input, wait).size())) <= 1.0);
  CHECK(some.each.back().time <= wait);
  CHECK(all.each[some.each.size()].time > wait);
  const LightUpsLived none = live_through(input, first, own, 0.9 * shortest);
  CHECK(none.each.empty());
  CHECK(none.end == LightUpsEnd::too_slow);
}

TEST_CASE("a pack for a few light-ups is raised one by one, and one that never comes to pressure has none") {
  RaiseInput input = straight_from_the_pack("NiMH AA", 10, 10.0);
  Pack& pack = input.battery->pack;
  pack.drawn = 0.984 * pack.full;
  const LightUpsLived few = live_through(input, raise(input), own, {});
  const auto every = one_by_one(input, {});
  REQUIRE(few.each.size() == every.size());
  REQUIRE(every.size() > 1);
  for (std::size_t i = 0; i < every.size(); ++i) CHECK(few.each[i].time == near(every[i], 1e-4));
  pack.drawn = 0.998 * pack.full;
  const LightUpsLived never = live_through(input, raise(input), own, {});
  CHECK(never.each.empty());
  CHECK(never.end == LightUpsEnd::never);
  input.battery.reset();
  CHECK_THROWS_AS(live_through(input, Raise{}, own, {}), ModelError);
}
