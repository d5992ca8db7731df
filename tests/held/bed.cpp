#include "draught/bed.hpp"
#include "data/fuels.hpp"
#include "held/held.hpp"
#include "matter/air.hpp"
#include "published.hpp"
#include <cmath>
#include <stdexcept>

namespace lumwright::held {
namespace {
using namespace matter;
using namespace draught;

struct Trial {
  Length lump;
  std::vector<double> rate, draught;
};
Trial trial(std::string_view id) {
  for (const data::Row& row : published("trials", "draught_against_rate"))
    if (row.text("id") == id) return {row.quantity<Length>("lump"), row.numbers("rate"), row.numbers("draught")};
  throw std::runtime_error("no such trial");
}
/// A hot fire of anthracite on a square metre, 200 mm deep: the depth cancels out of every ratio. 16.5 kg of air burn a
/// kilogram of coal; the rate in pounds an hour and square foot.
double hot_bed(Length lump, double rate) {
  const data::FuelRow& coal = data::fuel("anthracite");
  const Bed bed{.particle = lump,
                .sphericity = coal.sphericity.value,
                .voidage = coal.voidage.value,
                .depth = 200.0 * mm,
                .grate = 1.0 * m2};
  const MassFlow gas = 17.5 * rate * pound / hour / (foot * foot) * bed.grate;
  return in(bed_drop(bed, gas, air_density(kelvin(1200.0), atmosphere), air_viscosity(kelvin(1200.0))), Pa);
}
Band<double> with_resistance(double value) {
  const Band<double> r = usual("gas.bed_resistance");
  return {value, value * r.low / r.value, value * r.high / r.value};
}
/// Three times the rate: both by the power of the rate through the trial's own rates.
Reckoned thrice(std::string_view id) {
  const Trial t = trial(id);
  std::vector<double> ours;
  for (const double rate : t.rate) ours.push_back(hot_bed(t.lump, rate));
  const double measured = std::pow(3.0, power_through(t.rate, t.draught));
  return {with_resistance(std::pow(3.0, power_through(t.rate, ours))), {{measured, measured}}};
}
double at_fifteen(const Trial& t) { return t.draught.at(2); }
Reckoned smaller(std::string_view id) {
  const Trial coarse = trial("12.7 mm"), other = trial(id);
  const bool finer = other.lump < coarse.lump;
  const double measured = finer ? at_fifteen(other) / at_fifteen(coarse) : at_fifteen(coarse) / at_fifteen(other);
  const double a = hot_bed(other.lump, 15.0), b = hot_bed(coarse.lump, 15.0);
  return {with_resistance(finer ? a / b : b / a), {{measured, measured}}};
}
}  // namespace

const Cases& bed_cases() {
  static const Cases cases = {
      {"bed thrice 19 mm", [] { return thrice("19 mm"); }},
      {"bed thrice 12.7 mm", [] { return thrice("12.7 mm"); }},
      {"bed thrice 3.6 mm", [] { return thrice("3.6 mm"); }},
      {"bed size coarse", [] { return smaller("19 mm"); }},
      {"bed size fine", [] { return smaller("3.6 mm"); }},
      {"bed law", [] { return Reckoned{with_resistance(1.0)}; }},
      {"bed law rough", [] { return Reckoned{with_resistance(1.0)}; }},
      {"voids coke", [] { return Reckoned{data::fuel("coke").voidage}; }},
      {"voids few lumps",
       [] {
         const double wide = data::fuel("lump charcoal").voidage.value;
         return Reckoned{exactly((wide + wall_voidage(4.0)) / wide)};
       }},
      {"shape coal", [] { return Reckoned{data::fuel("steam coal").sphericity}; }},
      {"shape charcoal", [] { return Reckoned{data::fuel("lump charcoal").sphericity}; }},
  };
  return cases;
}
}  // namespace lumwright::held
