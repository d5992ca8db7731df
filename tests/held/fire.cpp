#include "data/kindling.hpp"
#include "fire/combustion.hpp"
#include "fire/flame.hpp"
#include "fire/habits.hpp"
#include "fire/heating_value.hpp"
#include "held/held.hpp"
#include "numeric/root.hpp"
#include "published.hpp"

namespace lumwright::held {
namespace {
using namespace fire;

/// CO / (CO + CO2): of the carbon that goes with a share of the heat lost.
double of_the_carbon(const data::FuelAnalysis& a, double loss) {
  return static_cast<double>(loss * net_heat(a) / (a.carbon * carbon_as_monoxide_heat()));
}
Reckoned monoxide(const char* fuel, double lumps, double leak) {
  const Band<double> heat = monoxide_share({.lumps = lumps, .leak = leak});
  const data::FuelAnalysis& a = data::fuel(fuel).analysis;
  return {{of_the_carbon(a, heat.value), of_the_carbon(a, heat.low), of_the_carbon(a, heat.high)}};
}
/// Carbon dioxide where this much oxygen is left and this share of the carbon is monoxide, both in per cent of dry gas.
double dioxide(const data::FuelAnalysis& fuel, double oxygen, double monoxide_carbon) {
  const auto reading = [&](double ratio) {
    return dry_reading(flue_gas(fuel, {.air_ratio = ratio, .monoxide_carbon = monoxide_carbon}).shares);
  };
  const double ratio = numeric::bracketed_root([&](double r) { return 100.0 * reading(r).oxygen - oxygen; }, 1.0, 4.0,
                                               "air ratio of a flue gas");
  return 100.0 * reading(ratio).carbon_dioxide;
}
/// The means of all trials of a kind of coal.
Reckoned flue_gas_of(const std::string& kind, const char* fuel) {
  double ours = 0, measured = 0;
  int count = 0;
  for (const data::Row& row : published("trials", "flue_gas")) {
    if (row.text("kind") != kind) continue;
    const double co2 = row.number("co2"), co = row.number("co");
    ours += dioxide(data::fuel(fuel).analysis, row.number("o2"), co / (co + co2));
    measured += co2;
    ++count;
  }
  return {exactly(ours / count), {{measured / count, measured / count}}};
}
}  // namespace

const Cases& fire_cases() {
  static const Cases cases = {
      {"gas anthracite", [] { return flue_gas_of("anthracite", "anthracite"); }},
      {"gas steam coal", [] { return flue_gas_of("low volatile", "steam coal"); }},
      {"gas house coal", [] { return flue_gas_of("bituminous", "house coal"); }},
      // 37 in a hundred of the air, by the oxygen left in the one trial with anthracite, burnt nothing
      {"monoxide thin beds", [] { return monoxide("steam coal", 4.0, 0.37); }},
      {"monoxide cooking stove", [] { return monoxide("lump charcoal", 3.5, 0.21); }},
      {"monoxide bucket stove", [] { return monoxide("lump charcoal", 3.5, 0.21); }},
      {"monoxide briquettes", [] { return monoxide("charcoal briquette", 3.5, 0.21); }},
      {"monoxide small stoves", [] { return monoxide("lump charcoal", 3.5, 0.21); }},
      {"monoxide deep bed", [] { return monoxide("lump charcoal", 30.0, 0.21); }},
      {"kindling fines",
       [] {
         const Band<Duration> time = kindling_time(data::kindling("lump charcoal"), 22.0 * cm2);
         return Reckoned{exactly(in(time.high, time.low))};
       }},
      {"kindling without a fan",
       [] {  // a chimney starter of 100 cm2
         const Band<Duration> time = kindling_time(data::kindling("lump charcoal"), 100.0 * cm2);
         return Reckoned{{in(time.value, minute), in(time.low, minute), in(time.high, minute)}};
       }},
      {"kindling air", [] { return Reckoned{exactly(in(data::kindling_size().air, kg_per_m2_s))}; }},
  };
  return cases;
}
}  // namespace lumwright::held
