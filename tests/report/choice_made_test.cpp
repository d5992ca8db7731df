// What a choice advises, made: each description that it writes goes through the whole check again.
#include "../choose/random_bin.hpp"
#include "choose/detail/rank.hpp"
#include "description/reader.hpp"
#include "description/taken_up.hpp"
#include "description/template.hpp"
#include "model/fan_unit.hpp"
#include "plan/assess.hpp"
#include "report/files.hpp"
#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>
#include <set>
#include <tuple>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::choose;
using namespace lumwright::report;

namespace {
constexpr std::size_t samples = 64;
struct Advised {
  std::string file;
  const Candidate* candidate;
  const std::vector<std::string>* watches;
};
std::vector<Advised> advised(const Choice& choice) {
  std::vector<Advised> out;
  for (const EngineChoice& e : choice.engines)
    if (!e.places.empty() && e.places[0].fails.empty())
      out.push_back({e.places[0].description, &e.places[0].candidate, &e.places[0].watches});
  if (choice.for_all.empty()) return out;
  for (const Serving& s : choice.for_all[0].engines)
    if (s.with && s.with->in_time && s.with->enough) out.push_back({s.description, &*s.with, &s.watches});
  return out;
}
double si(const Assessment& a, const char* key) { return std::get<Measure>(find_result(a, key)->value).quantity.si; }

std::size_t judge_again(const Choice& choice) {
  std::size_t made = 0;
  for (const Advised& one : advised(choice)) {
    CAPTURE(one.file);
    const Assessment a = assess(read_build({"first.yaml", one.file}), UnitSystem::as_written, nullptr,
                                SamplesAsked{.count = samples, .seed = 1});
    CHECK(a.verdict != Verdict::fail);
    const bool own = find_result(a, "raise.to_own_blower") != nullptr;
    CHECK(in(one.candidate->to_steam, unit::s) == si(a, own ? "raise.to_own_blower" : "raise.to_working"));
    CHECK(in(one.candidate->runtime, unit::s) == si(a, "power.runtime"));
    CHECK(one.candidate->light_ups == si(a, "power.light_ups_per_charge"));
    std::vector<std::string> watches;
    for (const Finding& f : a.checks)
      if (f.verdict != Verdict::pass) watches.push_back(f.title);
    CHECK(watches == *one.watches);
    ++made;
  }
  return made;
}
const Candidate& fastest_of(const Place& p) {
  const Candidate* first = &p.candidate;
  for (const Candidate& c : p.equals)
    if (!c.at.lowered && (c.to_steam < first->to_steam || (c.to_steam == first->to_steam && named_before(c, *first))))
      first = &c;
  return *first;
}
int wishes(const Place& p) { return p.candidate.in_time ? (p.candidate.enough ? 0 : 1) : p.candidate.enough ? 2 : 3; }
std::string best_elsewhere(const Choice& choice, const EngineChoice& here, const ItemFate& item) {
  std::size_t best = 0;
  std::string told;
  for (const EngineChoice& other : choice.engines)
    for (const ItemFate& same : other.items)
      if (&other != &here && same.list == item.list && same.name == item.name && same.place &&
          (best == 0 || *same.place < best)) {
        best = *same.place;
        told = "place " + std::to_string(best) + " on " + other.engine;
      }
  return told;
}
/// The order of what is shown, on its own: grade, then fewest points to watch, then the fastest of each group; in a
/// group the most light-ups first.
void check_order(const Choice& choice) {
  for (const EngineChoice& e : choice.engines) {
    const Place* before = nullptr;
    for (const Place& p : e.places) {
      const Candidate& first = fastest_of(p);
      for (const Candidate& c : p.equals) {
        if (c.at.lowered) continue;
        CHECK(c.to_steam <= (1.0 + told_apart(first, c)) * first.to_steam);
        CHECK(c.light_ups <= p.candidate.light_ups);
      }
      if (before != nullptr) {
        const Candidate& ahead = fastest_of(*before);
        const bool alike = wishes(*before) == wishes(p) && before->watches.size() == p.watches.size();
        CHECK(std::tuple(wishes(*before), before->watches.size()) <= std::tuple(wishes(p), p.watches.size()));
        // else it would stand in that group
        if (alike) CHECK(first.to_steam > (1.0 + told_apart(ahead, first)) * ahead.to_steam);
      }
      before = &p;
    }
  }
  // a wish that is not met bars nothing; what has no place here is told its best place elsewhere
  for (const EngineChoice& e : choice.engines) {
    for (const Barred& barred : e.barred)
      for (const std::string& title : barred.fails) {
        CHECK(title != "Minutes to steam");
        CHECK(title != "Light-ups on one charge");
      }
    for (const ItemFate& item : e.items)
      if (!item.place) CHECK(item.elsewhere == best_elsewhere(choice, e, item));
  }
  for (std::size_t i = 1; i < choice.for_all.size(); ++i) {
    const auto key = [](const UnitChoice& u) {
      return std::tuple(-static_cast<double>(u.served), -static_cast<double>(u.contented));
    };
    CHECK(key(choice.for_all[i - 1]) <= key(choice.for_all[i]));
  }
}
Choice made_of(const std::string& text) {
  ChooseAsked asked;
  asked.places = 2;
  asked.samples = samples;
  return choose::choose(read_bin({"bin.yaml", text}), asked);
}
unsigned bins() {
  const char* wanted = std::getenv("LUMWRIGHT_BUILDS");
  return wanted == nullptr ? 20U : static_cast<unsigned>(std::atoi(wanted));
}
}  // namespace

// identity: the description that is written, read again and checked, says what the choice said, to the last digit
TEST_CASE("what is advised passes check on every engine, with the same numbers") {
  std::size_t made = 0;
  for (unsigned seed = 1; seed <= bins(); ++seed) {
    CAPTURE(seed);
    const int n = static_cast<int>(seed);
    const Choice choice =
        made_of(RandomBin(9000 + seed).text({1 + n % 4, 1 + n % 3, 1 + n % 2, 1 + n % 5, 1 + n % 3}, true));
    made += judge_again(choice);
    check_order(choice);
    REQUIRE_NOTHROW(choice_files(choice, {}));
  }
  CHECK(made > bins() / 4);
  MESSAGE(made << " descriptions from " << bins() << " bins");
}

TEST_CASE("the example's advice is written beside its page, and the bin to fill in is one to choose from") {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/bins/tarn-beck-shed.yaml", std::ios::binary);
  const Choice shed = made_of({std::istreambuf_iterator<char>(in), {}});
  check_order(shed);
  CHECK(judge_again(shed) == 4);  // two engines, each its first place and the unit for both
  std::size_t descriptions = 0;
  for (const NamedText& file : choice_files(shed, {})) descriptions += file.name.ends_with(".yaml");
  CHECK(descriptions == 4);
  CHECK(judge_again(made_of(taken_up(new_bin()))) >= 1);
}

// In its order stands all that is shown, also where nothing comes in time and is shown all the same.
TEST_CASE("ten places stand in their order, and a wish that nothing meets bars nothing") {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/bins/tarn-beck-shed.yaml", std::ios::binary);
  const std::string shed{std::istreambuf_iterator<char>(in), {}};
  ChooseAsked asked;
  asked.places = 10;
  asked.samples = 1;
  using Wish = std::pair<std::string, std::string>;
  const Wish as_it_is{"steam_within: 12 min", "steam_within: 12 min"},
      hurried{"steam_within: 12 min", "steam_within: 1 min"},
      often{"light_ups_per_charge: 5", "light_ups_per_charge: 60"};
  for (const Wish& wish : {as_it_is, hurried, often}) {
    std::string text = shed;
    text.replace(text.find(wish.first), wish.first.size(), wish.second);
    const Choice choice = choose::choose(read_bin({"bin.yaml", text}), asked);
    check_order(choice);
    for (const EngineChoice& e : choice.engines) CHECK_FALSE(e.places.empty());
  }
}

TEST_CASE(
    "a unit for all serves each engine with the tube that does best there") {  // identity: with the engine's own places
  std::string text = taken_up(new_bin());
  const std::string stock = "tubes: stock";
  text.replace(text.find(stock), stock.size(),
               "tubes: [ { name: a, outside: 17.1 mm, wall: 0.8 mm }, { name: b, outside: 17.1 mm, wall: 0.45 mm }, "
               "{ name: c, outside: 17.1 mm, wall: 0.6 mm } ]");
  const auto first = text.find("  - name: No 1\n");
  std::string other = text.substr(first);  // an engine like the first
  text += other.replace(other.find("No 1"), 4, "No 2");
  ChooseAsked asked;
  asked.places = 40;
  asked.samples = 1;
  const Choice choice = choose::choose(read_bin({"bin.yaml", text}), asked);
  REQUIRE_FALSE(choice.for_all.empty());
  std::set<std::string> tubes;
  for (const UnitChoice& unit : choice.for_all)
    for (std::size_t e = 0; e < unit.engines.size(); ++e) {
      if (!unit.engines[e].with) continue;
      const Candidate& served = *unit.engines[e].with;
      for (const Place& p : choice.engines[e].places) {
        std::vector<Candidate> alike = p.equals;  // as many points to watch as the first of them
        alike.push_back(p.candidate);
        for (const Candidate& c : alike) {
          if (c.at.lowered || std::tie(c.fan, c.pack, c.step_up) != std::tie(served.fan, served.pack, served.step_up))
            continue;
          tubes.insert(c.tube);
          CHECK(std::tuple(served.in_time && served.enough ? 0 : 1, unit.engines[e].watches.size(), served.to_steam) <=
                std::tuple(c.in_time && c.enough ? 0 : 1, p.watches.size(), c.to_steam));
        }
      }
    }
  CHECK(tubes.size() > 1);
}

// hand: an 80 mm fan on a 40 mm box has its screw holes outside; a fuse of 0.5 A does not carry what 1.5 A need
TEST_CASE("box and fuse that only the top names give way, those of the engine stay") {
  std::string text = taken_up(new_bin());
  const auto put = [&](const std::string& from, const std::string& to) {
    text.replace(text.find(from), from.size(), to);
  };
  put("box: { diameter: 84 mm", "box: { diameter: 30 mm");
  put("leads: { section: 0.34 mm2, length: 300 mm }", "leads: { section: 0.34 mm2, length: 300 mm }\n  fuse: 60 A");
  const Choice sized = made_of(text);
  REQUIRE(!sized.engines[0].places.empty());
  CHECK(sized.engines[0].places[0].sized.find("a fuse of") != std::string::npos);
  for (const Place& place : sized.engines[0].places)
    if (place.candidate.fan == "grey fan") CHECK(place.sized.find("a box of") != std::string::npos);
  const auto of_engine = [&](const std::string& own) {
    std::string changed = text;
    const std::string name = "  - name: No 1\n";
    return made_of(changed.replace(changed.find(name), name.size(), name + own)).engines[0].places;
  };
  const std::vector<Place> fused = of_engine("    supply: { fuse: 2 A }\n");
  CHECK_FALSE(fused.empty());
  for (const Place& place : fused) CHECK(place.sized.find("a fuse of") == std::string::npos);
  CHECK(of_engine("    supply: { fuse: 60 A }\n").empty());  // it would not open, and is not changed
  for (const Place& place : of_engine("    adapter: { box: { diameter: 30 mm } }\n"))
    CHECK(place.sized.find("a box of") == std::string::npos);
}

// hand: a tube of 18.2 mm does not enter a bore of 17.6 mm; one of 15 mm leaves a ring of pi/4 (17.6^2 - 15^2) = 66 mm2
TEST_CASE("where no tube fits, what to buy or to turn is said") {
  const std::string stock = "tubes: stock";
  for (const auto& [outside, words] : {std::pair{"18.2 mm", "buy "}, std::pair{"15 mm", "a sleeve on old tube"}}) {
    std::string text = taken_up(new_bin());
    text.replace(text.find(stock), stock.size(),
                 std::string("tubes: [ { name: old tube, outside: ") + outside + ", wall: 0.45 mm } ]");
    const Choice none = made_of(text);
    CHECK(none.engines[0].places.empty());
    CHECK(none.engines[0].tubes_to_buy.find(words) != std::string::npos);
    const std::string told = none.engines[0].tubes_to_buy, sleeve = "turned to ";
    if (const auto at = told.find(sleeve); at != std::string::npos) {  // over the tube, and within the bore
      CHECK(std::stod(told.substr(at + sleeve.size())) > 15.0);
      CHECK(std::stod(told.substr(at + sleeve.size())) < 17.6);
    }
    CHECK(choice_files(none, {})[1].text.find("None of the tubes fits") != std::string::npos);
  }
}
