// Bins that nobody has: any number of fans, packs, step-ups, tubes and engines, the same for the same seed.
#pragma once
#include "description/bin.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <random>
#include <string>
#include <vector>

namespace lumwright {
struct BinSize {
  int fans, packs, step_ups, tubes, engines;
};
class RandomBin {
 public:
  explicit RandomBin(unsigned seed) : random_(seed) {}
  /// `wild`: with pairs, controls, lowered outputs, unknown masses, unfit tubes. The order of every list is shuffled by
  /// `order`, which changes nothing else.
  std::string text(BinSize size, bool wild, unsigned order = 0) {
    std::string out = "place: { air: 12 degC }\n";
    out += fmt::format("want: {{ steam_within: {:.0f} min, light_ups_per_charge: {} }}\n", from(5, 25), whole(1, 8));
    out += "fuel: { kind: lump charcoal, lump: 9 mm, bed: 28 mm, catches_in: 140 s, lit_at_start: 12 % }\n";
    out += "adapter:\n  tube: { length: 44 mm, engaged: 30 mm, material: brass, inlet: square }\n";
    out += "  box: { diameter: 78 mm, height: 46 mm }\n  bleed: { holes: 8, diameter: 8 mm }\n";
    if (wild && whole(0, 2) == 0) out += "pairs: yes\n";
    if (wild && whole(0, 3) == 0)
      out += "supply: { control: { kind: series regulator, output: 9 V }, leads: { length: 300 mm } }\n";
    list(out, "fans", size.fans, order, [&](int i) { return fan(i, wild); });
    list(out, "packs", size.packs, order, [&](int i) { return pack(i); });
    list(out, "step_ups", size.step_ups, order, [&](int i) { return step_up(i, wild); });
    list(out, "tubes", size.tubes, order, [&](int i) { return tube(i); });
    list(out, "engines", size.engines, order, [&](int i) { return engine(i, wild); });
    return out;
  }

 private:
  double from(double low, double high) {  // std's distributions differ between libraries
    return low + (high - low) * static_cast<double>(random_() >> 11) / 9007199254740992.0;
  }
  int whole(int low, int high) { return low + static_cast<int>(from(0.0, high - low + 1 - 1e-9)); }
  template <class F>
  void list(std::string& out, const char* name, int count, unsigned order, const F& item) {
    std::vector<std::string> items;
    for (int i = 0; i < count; ++i) items.push_back(item(i));
    std::mt19937_64 shuffle(order);
    if (order > 0)
      for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[shuffle() % i]);
    out += fmt::format("{}:\n", name);
    for (const std::string& one : items) out += "  - " + one + "\n";
  }
  std::string fan(int i, bool wild) {
    const bool axial = whole(0, 1) == 0;
    const double frame = axial ? 40 + 20 * whole(0, 2) : 40 + 10 * whole(0, 3);
    const double shut = axial ? from(8, 160) : from(30, 300), free = from(40, 400);
    std::string out = fmt::format("{{ name: fan {:03}, kind: {}, frame: {} mm, thickness: 20 mm, ", i,
                                  axial ? "axial" : "centrifugal", frame);
    if (wild && whole(0, 3) == 0) out += "count: 2, ";
    if (!wild || whole(0, 3) > 0) out += fmt::format("mass: {:.0f} g, ", from(10, 120));
    out += fmt::format("rated: {{ voltage: {} V, current: {:.3f} A, speed: 6000 rpm }}", whole(0, 5) == 0 ? 5 : 12,
                       from(0.05, 0.35));
    const double dip = axial && whole(0, 1) == 0 ? 1.08 : 0.98;  // some axial fans stall
    out += fmt::format(
        ", curve: [ [0 l/min, {0:.1f} Pa], [{1:.1f} l/min, {2:.1f} Pa], [{3:.1f} l/min, {4:.1f} Pa], "
        "[{5:.1f} l/min, {6:.1f} Pa], [{7:.1f} l/min, 0 Pa] ]{8} }}",
        shut, 0.25 * free, 0.80 * shut, 0.4 * free, 0.80 * shut * dip, 0.7 * free, 0.5 * shut, free,
        wild && i % 4 == 1   ? ", curve_from: bench, curve_within: 5 %"
        : wild && i % 4 == 3 ? ", curve_from: guess"
                             : "");
    return out;
  }
  std::string pack(int i) {
    const char* cells[] = {"NiMH AA", "Li-ion 18650", "NiMH AAA"};
    const int kind = whole(0, 2);
    return fmt::format("{{ name: pack {:03}, cell: {}, series: {}, parallel: {}, condition: {} }}", i, cells[kind],
                       kind == 1 ? whole(1, 4) : whole(3, 10), whole(1, 2), whole(0, 2) == 0 ? "tired" : "good");
  }
  std::string step_up(int i, bool wild) {
    if (i == 0) return "none";
    const char* modules[] = {"small 1.2 MHz", "3-35 V 400 kHz"};
    std::string lower = wild && whole(0, 3) == 0 ? ", lower_to: 7 V" : "";
    return fmt::format("{{ name: board {:03}, module: {}, output: {} V{} }}", i, modules[whole(0, 1)],
                       7 + 1 * whole(1, 6), lower);
  }
  std::string tube(int i) {
    return fmt::format("{{ name: tube {:03}, outside: {:.2f} mm, wall: {:.2f} mm }}", i, from(16.2, 17.3),
                       from(0.3, 0.6));
  }
  std::string engine(int i, bool wild) {
    const double water = from(150, 800), share = std::sqrt(water / 430);
    std::string out = fmt::format("{{ name: engine {:03}, ", i);
    if (wild && whole(0, 2) == 0) out += "want: { light_ups_per_charge: 3 }, ";
    out += fmt::format(
        "engine: {{ boiler: {{ water: {:.0f} ml, metal: {{ copper: {:.2f} kg }}, own_blower_from: {:.2f} bar, "
        "working: 3.5 bar }}, ",
        water, 1.4 * share, from(0.7, 1.5));
    out += fmt::format(
        "grate: {{ length: {:.0f} mm, width: {:.0f} mm }}, tubes: {{ count: {}, bore: {:.1f} mm, length: "
        "{:.0f} mm }}, ",
        60 * share, 41 * share, whole(5, 12), from(6.5, 9), 135 * share);
    out += fmt::format("chimney: {{ bore: {:.2f} mm, depth: 37 mm, wall: 1.8 mm, material: brass }} }} }}",
                       from(17.0, 17.7));
    return out;
  }
  std::mt19937_64 random_;
};
}  // namespace lumwright
