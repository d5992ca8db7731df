// The scrap bin and the engine shed: fans, packs, step-ups and tubes to choose from, and the engines they are to light.
#pragma once
#include "description/build.hpp"
#include "description/given.hpp"
#include "description/words.hpp"
#include "input/source.hpp"
#include <string>
#include <vector>

namespace lumwright::description::part {
/// What every item of the bin has in front of the keys of its part.
struct BinItem {
  Text name;
  Count count;
  input::Position at{};
  template <class Self, class V>
  static void own_fields(Self& self, V& v) {
    v({"name", "what you call it", "grey server fan"}, self.name, nullptr);
    v({"count", "how many of them there are", "1"}, self.count, 1, 1000);
  }
};

struct BinFan : FanPart, BinItem {
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    BinItem::own_fields(self, v);
    FanPart::fields(self, v);
  }
};

/// Loose cells of one kind, of which packs can be made.
struct BinDrawer : BinItem {
  Text cell, condition;
  Given<Charge> capacity;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    BinItem::own_fields(self, v);
    v({"cell", "chemistry and size", "NiMH AA"}, self.cell, &cell_words);
    v({"condition", "how good the cells still are", "good"}, self.condition, &condition_words);
    v({"capacity", "capacity of one cell", "1900 mAh"}, self.capacity, Limits{"10 mAh", "500 Ah"});
  }
};

struct BinPack : PackPart, BinItem {
  Text from;
  Given<Voltage> stop_at;
  Given<Mass> mass;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    BinItem::own_fields(self, v);
    v({"from", "name of the drawer whose cells it is made of", "loose AA"}, self.from, nullptr);
    PackPart::fields(self, v);
    v({"stop_at", "pack voltage at which you stop, or a cut-out does", "5.0 V"}, self.stop_at,
      Limits{"0.3 V", "100 V"});
    v({"mass", "mass of the pack; the cells' usual mass does where it is left out", "190 g"}, self.mass,
      Limits{"1 g", "500 kg"});
  }
};

struct BinStepUp : StepUpPart, BinItem {
  Given<Voltage> lower_to;
  Given<Mass> mass;
  bool direct = false;  // `none`: the fan hangs on the pack
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    BinItem::own_fields(self, v);
    StepUpPart::fields(self, v);
    v({"lower_to", "output you would turn it down to once steam is near, tried beside the full one", "9 V"},
      self.lower_to, Limits{"0.5 V", "60 V"});
    v({"mass", "mass of the step-up", "6 g"}, self.mass, Limits{"0.1 g", "20 kg"});
  }
};

struct BinTube : AdapterTube, BinItem {
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    BinItem::own_fields(self, v);
    AdapterTube::fields(self, v);
  }
};

/// The supply less pack and step-up.
struct BinSupply {
  ControlPart control;
  LeadsPart leads;
  Given<Current> fuse;
  Given<Voltage> stop_at;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"control", "speed control", ""}, self.control);
    v.section({"leads", "the wires", ""}, self.leads);
    v({"fuse", "rating of the fuse at the pack", "1.25 A"}, self.fuse, Limits{"10 mA", "100 A"});
    v({"stop_at", "pack voltage at which you stop, where the pack itself names none", "5.0 V"}, self.stop_at,
      Limits{"0.3 V", "100 V"});
  }
};

/// What an engine of the shed may say of itself, and what the file may say for all of them at its top.
struct BinShared {
  Place place;
  Fuel fuel;
  Adapter adapter;
  BinSupply supply;
  Want want;
  template <class Self, class V>
  static void shared_fields(Self& self, V& v) {
    v.section({"place", "the air on the day", ""}, self.place);
    v.section({"fuel", "the fire", ""}, self.fuel);
    v.section({"adapter", "what joins fan and chimney; its tube stands in for what the tubes leave out", ""},
              self.adapter);
    v.section({"supply", "what drives the fan, without pack and step-up", ""}, self.supply);
    v.section({"want", "what you ask of it", ""}, self.want);
  }
};

struct BinEngine : BinShared {
  Text name;
  Engine engine;
  input::Position at{};
  bool own_box = false, own_fuse = false, own_wire = false;  // named by the engine itself, not by the file's top
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call the engine", "Tarn Beck No 2"}, self.name, nullptr);
    v.section({"engine", "the engine that is lit", ""}, self.engine);
    BinShared::shared_fields(self, v);
  }
};
}  // namespace lumwright::description::part

namespace lumwright::description {
struct Bin : part::BinShared {
  std::string file{};               // where it was read from
  std::vector<Renamed> renamed{};  // what it says by an older name
  Text name, pairs;
  std::vector<part::BinFan> fans;
  std::vector<part::BinDrawer> drawers;
  std::vector<part::BinPack> packs;
  std::vector<part::BinStepUp> step_ups;
  std::vector<part::BinTube> tubes;
  bool tubes_from_stock = false;  // `tubes: stock`: whatever shops stock and fits the chimney
  std::vector<part::BinEngine> engines;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this bin", "what lies under the bench"}, self.name, nullptr);
    BinShared::shared_fields(self, v);
    v({"pairs", "try two alike fans as well, one behind the other and side by side", "no"}, self.pairs, &yes_words);
    v.list({"fans", "the fans", "[ {name: grey fan, kind: axial, frame: 50 mm, rated: {voltage: 12 V}} ]"}, self.fans);
    v.list({"drawers", "loose cells", "[ {name: loose AA, cell: NiMH AA, count: 8} ]"}, self.drawers);
    v.list({"packs", "the packs", "[ {name: five AA, cell: NiMH AA, series: 5} ]"}, self.packs);
    v.list({"step_ups", "the step-ups; `none` for the fan on the pack itself",
            "[ none, {name: small board, output: 12 V} ]"},
           self.step_ups);
    v.list({"tubes", "the adapter tubes, or `stock`", "[ {name: brass, outside: 5/8 in, length: 42 mm} ]"}, self.tubes);
    v.list({"engines", "the engines", "[ {name: No 2, engine: {boiler: {water: 420 ml}}} ]"}, self.engines);
  }
};

/// The most combinations that are looked at, and the most stock tubes for one engine.
inline constexpr std::size_t most_combinations = 250'000, most_stock_tubes = 4;
/// Fans, two together counted by themselves; packs; step-ups, those with `lower_to` twice; tubes; engines: multiplied.
std::size_t combinations(const Bin& bin);
/// "30 fans (pairs counted), 20 packs, 5 step-ups, 4 tubes, 3 engines": what is multiplied.
std::string counted_by_part(const Bin& bin);
/// Whether the bin holds two of this fan and they are to be tried together.
bool pairs_of(const Bin& bin, const part::BinFan& fan);

/// The tube with what it leaves out taken from the engine's adapter.
part::AdapterTube tube_for(const part::AdapterTube& tube, const part::BinEngine& engine);

/// Reads a bin. What the top says of place, fuel, adapter, supply and want is handed to every engine that is silent on
/// it, a drawer's cells to the packs made of them; without step_ups the fans hang on the packs. Throws InputError that
/// holds every fault, as read_build does for descriptions; also for names that are missing or stand twice in a list,
/// packs that take more cells than their drawer holds, and more combinations than `most_combinations`.
Bin read_bin(const input::Source& source);
}  // namespace lumwright::description
