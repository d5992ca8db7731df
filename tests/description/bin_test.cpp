// The bin: what it hands down, what it refuses and where.
#include "description/bin.hpp"
#include "description/taken_up.hpp"
#include "description/template.hpp"
#include "near.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
const std::string small = R"(place: { air: 9 degC, barometer: 1002 mbar }
fuel: { kind: lump charcoal, lump: 9 mm }
adapter: { tube: { length: 44 mm, material: brass }, box: { diameter: 78 mm } }
want: { steam_within: 12 min }
drawers: [ { name: loose AA, cell: NiMH AA, count: 8, capacity: 1900 mAh } ]
fans:
  - { name: grey fan, count: 2, kind: axial, frame: 50 mm, rated: { voltage: 12 V +- 1 V, current: 0.16 A } }
packs:
  - { name: five AA, from: loose AA, series: 5 }
  - { name: lithium, cell: Li-ion 18650, series: 2, stop_at: 6.2 V }
step_ups: [ none, { name: small board, output: 12 V, lower_to: 9 V } ]
tubes: [ { name: brass, outside: 17.2 mm +- 0.01 mm }, { name: short, outside: 16 mm, length: 30 mm } ]
engines:
  - { name: No 1, engine: { boiler: { water: 430 ml } }, want: { light_ups_per_charge: 4 } }
  - { name: No 2, place: { air: 20 degC }, engine: { boiler: { water: 200 ml } } }
)";
std::string bin_with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  if (at == std::string::npos) throw std::logic_error("no `" + from + "` to replace");
  return text.replace(at, from.size(), to);
}
Bin bin_of(const std::string& text) { return read_bin({"bin.yaml", text}); }
std::string bin_complaint(const std::string& text) {
  try {
    bin_of(text);
    return "";
  } catch (const InputError& e) {
    return e.what();
  }
}
bool complains(const std::string& text, const std::string& of) {
  const std::string said = bin_complaint(text);
  CAPTURE(said);
  return said.find(of) != std::string::npos;
}
}  // namespace

TEST_CASE("a bin is read with its counts and spreads, and the top is handed to every engine that is silent") {
  const Bin bin = bin_of(small);
  CHECK(*bin.fans[0].count == 2);
  CHECK(bin.fans[0].rated.voltage.band->high == near(13.0 * unit::V, 1e-12));
  CHECK(*bin.engines[0].place.air == degC(9));
  CHECK(*bin.engines[1].place.air == degC(20));
  CHECK(*bin.engines[1].place.barometer == near(100200.0 * unit::Pa, 1e-12));
  CHECK(*bin.engines[0].want.steam_within == near(720.0 * unit::s, 1e-12));
  CHECK(*bin.engines[0].want.light_ups_per_charge == 4.0);
  CHECK(!bin.engines[1].want.light_ups_per_charge);
  CHECK(*bin.packs[0].cell == "NiMH AA");
  CHECK(*bin.packs[0].capacity == near(1.9 * 3600.0 * unit::A * unit::s, 1e-12));
  CHECK(!bin.packs[1].capacity);
  CHECK(bin.step_ups[0].direct);
  CHECK(!bin.step_ups[1].direct);
  CHECK(*tube_for(bin.tubes[0], bin.engines[0]).length == near(44.0 * unit::mm, 1e-12));
  CHECK(*tube_for(bin.tubes[1], bin.engines[0]).length == near(30.0 * unit::mm, 1e-12));
  CHECK(*tube_for(bin.tubes[1], bin.engines[0]).material == "brass");
}

TEST_CASE("combinations are counted: pairs and turned-down outputs by themselves") {
  // hand: 1 fan x 2 packs x (none, board, board turned down) x 2 tubes x 2 engines
  CHECK(combinations(bin_of(small)) == 1 * 2 * 3 * 2 * 2);
  CHECK(combinations(bin_of("pairs: yes\n" + small)) == 3 * 2 * 3 * 2 * 2);
  // hand: one fan is no pair
  CHECK(combinations(bin_of("pairs: yes\n" + bin_with(small, "count: 2, ", ""))) == 1 * 2 * 3 * 2 * 2);
  const Bin direct =
      bin_of(bin_with(small, "step_ups: [ none, { name: small board, output: 12 V, lower_to: 9 V } ]\n", ""));
  REQUIRE(direct.step_ups.size() == 1);
  CHECK(direct.step_ups[0].direct);
}

TEST_CASE("tubes may come from stock") {
  const auto from = small.find("tubes: ["), to = small.find("engines:");
  std::string text = small;
  text.replace(from, to - from, "tubes: stock\n");
  const Bin bin = bin_of(text);
  CHECK(bin.tubes_from_stock);
  CHECK(bin.tubes.empty());
  CHECK(complains(bin_with(text, "tubes: stock", "tubes: shop"), "expected a list"));
}

TEST_CASE("every fault is told in one pass, each where it stands") {
  std::string text = bin_with(small, "frame: 50 mm", "frame: 50 V");
  text = bin_with(text, "series: 5", "serie: 5");
  text = bin_with(text, "name: short, ", "");
  text = bin_with(text, "water: 200 ml", "water: 200 ml, colour: green");
  const std::string said = bin_complaint(text);
  CAPTURE(said);
  CHECK(said.find("bin.yaml:7:56: fans.frame: 1. of the list: expected a length") != std::string::npos);
  CHECK(said.find("packs.serie: 1. of the list: this key is not known") != std::string::npos);
  CHECK(said.find("did you mean `series`?") != std::string::npos);
  CHECK(said.find("tubes: 2. of the list: `name` is missing") != std::string::npos);
  CHECK(said.find("engines.engine.boiler.colour: this key is not known") != std::string::npos);
}

TEST_CASE("a cell cannot be used twice") {
  CHECK(complains(bin_with(small, "series: 5", "series: 9"),
                  "packs: 1. of the list: it takes 9 cells, the drawer 'loose AA' on line 5 holds 8"));
  CHECK(complains(bin_with(small, "series: 5", "series: 3, parallel: 3"), "it takes 9 cells"));
  CHECK(complains(bin_with(small, "series: 5", "series: 5, count: 2"),
                  "2 such packs take 10 cells, the drawer 'loose AA' holds 8"));
  CHECK(bin_complaint(bin_with(small, "series: 5", "series: 4, count: 2")).empty());
}

TEST_CASE("what contradicts itself is refused") {
  CHECK(complains(bin_with(small, "from: loose AA", "from: lose AA"), "there is no drawer 'lose AA'"));
  CHECK(
      complains(bin_with(small, "name: lithium", "name: five AA"), "'five AA' is the name of another one, on line 9"));
  CHECK(complains(bin_with(small, "lower_to: 9 V", "lower_to: 12 V"),
                  "step_ups.lower_to: 2. of the list: expected less than the output"));
  CHECK(complains(bin_with(small, "cell: Li-ion 18650, ", ""), "packs: 2. of the list: `cell` is missing"));
  CHECK(complains(bin_with(small, "outside: 16 mm, length: 30 mm", "outside: 16 mm, wall: 9 mm"),
                  "expected less than half of the tube's outside"));
  CHECK(complains(bin_with(small, "fans:\n  - {", "fans:\n  - { starts_at: 14 V,"),
                  "fans.starts_at: 1. of the list: expected no more than the rated voltage"));
  CHECK(complains("engines: [ { name: a } ]\n", "fans: a bin needs at least one of them"));
  CHECK(complains("just words", "expected a bin of keys and values"));
}

TEST_CASE("more combinations than can be looked at are refused with a plain sentence") {
  std::string text;
  for (const auto& [list, item] :
       {std::pair{"fans", "kind: axial, frame: 50 mm"}, std::pair{"packs", "cell: NiMH AA, series: 5"},
        std::pair{"step_ups", "output: 12 V"}}) {
    text += fmt::format("{}:\n", list);
    for (int i = 0; i < 180; ++i) text += fmt::format("  - {{ name: {} {}, {} }}\n", list, i, item);
  }
  text += "tubes: [ { name: a, outside: 17 mm } ]\nengines: [ { name: b } ]\n";
  // hand: 180^3
  CHECK(complains(text, "5832000 combinations are more than the 250000 that are looked at"));
}

TEST_CASE("the example bin is read") {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/bins/tarn-beck-shed.yaml", std::ios::binary);
  const Bin bin = bin_of({std::istreambuf_iterator<char>(in), {}});
  CHECK(bin.engines.size() == 2);
  CHECK(combinations(bin) > 100);
}

TEST_CASE("a new bin says nothing but its name; with everything put to use it reads without fault") {
  const std::string text = new_bin();
  const std::string lacks = bin_complaint(text);
  for (const char* list : {"fans", "packs", "tubes", "engines"})
    CHECK(lacks.find(std::string(list) + ": a bin needs at least one of them") != std::string::npos);
  CHECK(std::count(lacks.begin(), lacks.end(), '^') == 4);
  const Bin bin = bin_of(taken_up(text));
  CHECK(bin.fans.size() == 2);
  CHECK(bin.step_ups.size() == 2);
  CHECK(bin.engines[0].engine.chimney.bore);
  CHECK(bin.tubes_from_stock);
}

TEST_CASE("a list or a key of a bin with nothing behind its colon is left out") {
  CHECK(bin_of(bin_with(small, "step_ups: [ none, { name: small board, output: 12 V, lower_to: 9 V } ]", "step_ups:"))
            .step_ups[0]
            .direct);
  CHECK(!bin_of(bin_with(small, "frame: 50 mm", "frame: ")).fans[0].frame);
  CHECK(complains(bin_with(small, "name: grey fan", "name: "), "fans: 1. of the list: `name` is missing"));
}
