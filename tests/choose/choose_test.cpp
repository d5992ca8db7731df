// Choosing from a bin: pruning against brute force, orders and threads, one combination against a description of it.
#include "choose/choose.hpp"
#include "laws_of_choice.hpp"
#include "description/random_build.hpp"
#include "plan/describe.hpp"
#include "random_bin.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::choose;

namespace {
Bin bin_of(unsigned seed, BinSize size, bool wild, unsigned order = 0) {
  return read_bin({"bin.yaml", RandomBin(seed).text(size, wild, order)});
}
BinSize small_size(unsigned seed) {
  if (seed % 4 == 0) return {9, 3, 3, 3, 1};
  const int n = static_cast<int>(seed);
  return {2 + n % 3, 1 + n % 3, 1 + n % 4, 1 + n % 2, 1 + n % 2};
}
Bin example_bin() { return read_bin({"shed.yaml", example_text("bins/tarn-beck-shed")}); }
}  // namespace

// identity: the naive choice follows every combination, sorts them all and compares each with each for the front.
TEST_CASE("what is left out could never have won: 200 random bins against brute force") {
  std::size_t followed = 0, of = 0, places = 0, on_front = 0, units = 0;
  for (unsigned seed = 1; seed <= how_many_builds(200); ++seed) {
    CAPTURE(seed);
    const Bin bin = bin_of(seed, small_size(seed), true);
    ChooseAsked asked;
    asked.places = 1 + seed % 5;
    asked.checked = false;
    const Choice pruned = choose::choose(bin, asked);
    asked.every = true;
    asked.places = 100'000;
    const Choice every = choose::choose(bin, asked);
    followed += pruned.effort.raises;
    of += every.effort.raises;
    for (std::size_t e = 0; e < pruned.engines.size(); ++e) {
      CAPTURE(e);
      const Naive naive = naive_choice(every.engines[e]);
      CHECK(told(pruned.engines[e].places) == first(naive.places, 1 + seed % 5));
      CHECK(told(pruned.engines[e].front) == naive.front);
      places += pruned.engines[e].places.size();
      on_front += naive.front.size();
    }
    CHECK(told(pruned.for_all) == first(naive_units(every), 1 + seed % 5));
    units += pruned.for_all.size();
  }
  CHECK(followed < of);  // else nothing was left out, and the test would show nothing
  if (enough_builds(200)) {
    CHECK(places > 200);
    CHECK(on_front > 200);
    CHECK(units > 100);
  }
  MESSAGE(followed << " raises followed of " << of << "; " << places << " places, " << on_front << " on fronts, "
                   << units << " units");
}

TEST_CASE("nothing depends on the number of threads or on the order of things in the file") {
  for (unsigned seed = 301; seed <= 306; ++seed) {
    CAPTURE(seed);
    const BinSize size{4, 3, 3, 3, 3};
    ChooseAsked alone;
    alone.threads = 1;
    const Choice one = choose::choose(bin_of(seed, size, true), alone);
    for (const unsigned order : {0U, 5U, 6U}) {
      ChooseAsked asked;
      asked.threads = order == 0 ? 5 : 2;
      const Choice other = choose::choose(bin_of(seed, size, true, order), asked);
      REQUIRE(other.engines.size() == one.engines.size());
      CHECK(told(other.for_all) == told(one.for_all));
      CHECK(other.effort.raises == one.effort.raises);
      for (std::size_t e = 0; e < one.engines.size(); ++e) {
        CHECK(told(other.engines[e].places) == told(one.engines[e].places));
        CHECK(told(other.engines[e].front) == told(one.engines[e].front));
        REQUIRE(other.engines[e].losses.size() == one.engines[e].losses.size());
        for (std::size_t i = 0; i < one.engines[e].losses.size(); ++i) {
          CHECK(other.engines[e].losses[i].loss == one.engines[e].losses[i].loss);
          CHECK(other.engines[e].losses[i].count == one.engines[e].losses[i].count);
        }
      }
    }
  }
}

// identity: the description of a combination, solved whole, against what choosing made of shared parts. The raise of a
// step-up that holds its voltage is shared among packs, so its steps differ: 0.1 %, as raise() promises.
TEST_CASE("a combination is worth what a description of it is worth") {
  const Bin bin = example_bin();
  const Choice choice = choose::choose(bin);
  std::size_t compared = 0;
  for (const EngineChoice& engine : choice.engines)
    for (const Place& place : engine.places) {
      const Candidate& c = place.candidate;
      CAPTURE(told(c));
      if (c.at.lowered) continue;
      const Build build = build_of(bin, c.at);
      const Assessment a = assess(build);
      CHECK(in(c.to_steam, unit::s) == doctest::Approx(number(a, "raise.to_own_blower")).epsilon(1e-3));
      CHECK(in(c.runtime, unit::s) == doctest::Approx(number(a, "power.runtime")).epsilon(1e-9));
      CHECK(std::abs(c.light_ups - number(a, "power.light_ups_per_charge")) <=
            1.0);  // whole ones, of times that differ a little
      CHECK(c.in_time == (verdict(a, "raise.time") != Verdict::fail));
      for (const char* id : {"fit.cold", "fit.hot", "fit.leak", "heat.fan_gas", "power.fuse", "fan.voltage"})
        CHECK(verdict(a, id) != Verdict::fail);
      const Finding* weak = find_check(a, "power.weak_cell");
      CHECK((weak == nullptr || weak->verdict != Verdict::fail));
      ++compared;
    }
  CHECK(compared >= 8);
}

TEST_CASE("every loser has its reason, and the counts add up") {
  const Bin bin = example_bin();
  const Choice choice = choose::choose(bin);
  for (const EngineChoice& engine : choice.engines) {
    std::size_t lost = 0, shown = 0;
    for (const LossCount& loss : engine.losses) lost += loss.count;
    for (const Judged& judged : engine.judged) shown += judged.loss == Loss::none;
    CHECK(lost + shown == choice.units.size() * engine.tubes.size());
    CHECK(shown >= engine.places.size());
    for (const ItemFate& item : engine.items) CHECK((item.place || item.on_front || item.mostly != Loss::none));
  }
  const auto fate = [&](const char* engine, const char* name) -> const ItemFate& {
    for (const EngineChoice& e : choice.engines)
      for (const ItemFate& item : e.items)
        if (e.engine == engine && item.name == name) return item;
    throw std::runtime_error(name);
  };
  // hand: a 15.875 mm tube is 2.3 mm too large for a bore of 13.6 mm; a 17.24 mm one 3.6 mm
  CHECK(fate("Low Gill tank", "turned brass").mostly == Loss::tube_too_large);
  CHECK(fate("Low Gill tank", "5/8 telescoping").mostly == Loss::tube_too_large);
  // hand: a 17.0 mm tube leaves a ring of pi/4 (17.6^2 - 17^2) = 16.3 mm2 round its own bore of 201 mm2, 8 %
  CHECK(fate("Tarn Beck", "thin 13 mm").mostly == Loss::tube_too_loose);
  // identity: what loses here and places there is told so
  CHECK(fate("Low Gill tank", "turned brass").elsewhere.find("on Tarn Beck") != std::string::npos);
}

TEST_CASE("two engines that both want the only one there is are told so") {
  const Choice choice = choose::choose(example_bin());
  const auto& first = choice.engines[0].places.at(0).candidate;
  const auto& other = choice.engines[1].places.at(0).candidate;
  const bool same_fan = first.at.fan == other.at.fan || first.at.pack == other.at.pack;
  CHECK(choice.shared.empty() == !same_fan);
}

TEST_CASE("an engine of which too little is said is named with what is missing, the others are ranked") {
  std::string text = example_text("bins/tarn-beck-shed");
  const std::string from = "water: 210 ml, ";
  text.erase(text.find(from), from.size());
  const Choice choice = choose::choose(read_bin({"shed.yaml", text}));
  CHECK(choice.engines[0].engine == "Low Gill tank");
  CHECK(choice.engines[0].lacking == std::vector<std::string>{"engine.boiler.water"});
  CHECK(choice.engines[0].places.empty());
  CHECK(choice.engines[1].places.size() > 3);
  for (const UnitChoice& unit : choice.for_all) CHECK(unit.served == 1);
}

TEST_CASE("progress goes up to the end and no further") {
  std::vector<std::size_t> seen;
  std::size_t of = 0;
  ChooseAsked asked;
  asked.progress = [&](std::size_t done, std::size_t all) {
    seen.push_back(done);
    of = all;
  };
  choose::choose(example_bin(), asked);
  CHECK(std::is_sorted(seen.begin(), seen.end()));
  CHECK(seen.back() == of);
  CHECK(seen.size() > 5);
}

TEST_CASE("tubes from stock are found for each chimney by itself") {
  std::string text = example_text("bins/tarn-beck-shed");
  const auto from = text.find("tubes:\n  - { name: turned"), to = text.find("engines:");
  text.replace(from, to - from, "tubes: stock\n\n");
  const Choice choice = choose::choose(read_bin({"shed.yaml", text}));
  for (const EngineChoice& engine : choice.engines) {
    CAPTURE(engine.engine);
    CHECK(!engine.tubes.empty());
    CHECK(engine.tubes.size() <= most_stock_tubes);
    CHECK(engine.places.size() > 3);
  }
  CHECK(choice.engines[0].tubes != choice.engines[1].tubes);
  REQUIRE(!choice.for_all.empty());
  CHECK(choice.for_all[0].served == 2);
}
