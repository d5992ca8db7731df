// The fire: what is burnt, how deep, how broken.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"

namespace lumwright::description::part {
struct Fuel {
  Text kind, started_on;
  Given<Length> lump, bed, burn_depth;
  Given<Duration> catches_in;
  Given<double> lit_at_start, carbon_monoxide_share, voidage, sphericity;
  Given<Mass> bed_mass;
  Given<SpecificEnergy> heating_value;
  Given<double> ash, moisture;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "what is burnt while steam is raised", "lump charcoal"}, self.kind, &fuel_words);
    v({"lump", "size of the pieces, by sieve", "8 mm"}, self.lump, Limits{"0.5 mm", "100 mm"});
    v({"bed", "depth of the fire", "30 mm"}, self.bed, Limits{"2 mm", "500 mm"});
    v({"started_on", "what it is lit on", "soaked charcoal"}, self.started_on, &start_words);
    v({"catches_in", "time from the match until the whole bed burns", "150 s"}, self.catches_in, Limits{"1 s", "2 h"});
    v({"lit_at_start", "share of the bed that burns when the fan is started", "10 %"}, self.lit_at_start,
      Limits{"0 %", "100 %"});
    v({"carbon_monoxide_share", "share of the heat lost in unburnt gas", "12 %", expert}, self.carbon_monoxide_share,
      Limits{"0 %", "60 %"});
    v({"burn_depth", "depth in which the bed uses up the oxygen; about one lump", "8 mm", expert}, self.burn_depth,
      Limits{"0.5 mm", "200 mm"});
    v({"bed_mass", "fuel on the grate", "20 g", expert}, self.bed_mass, Limits{"0.5 g", "50 kg"});
    v({"voidage", "share of the bed that is gaps", "47 %", expert}, self.voidage, Limits{"20 %", "80 %"});
    v({"sphericity", "roundness of the lumps: 1 for balls, less for broken pieces", "0.7", expert}, self.sphericity, Limits{"0.2", "1"});
    v({"heating_value", "lower heating value as fired", "29.5 MJ/kg", expert}, self.heating_value,
      Limits{"5 MJ/kg", "45 MJ/kg"});
    v({"ash", "share of the fuel as fired that is ash", "3 %", expert}, self.ash, Limits{"0 %", "40 %"});
    v({"moisture", "share of the fuel as fired that is water", "5 %", expert}, self.moisture, Limits{"0 %", "40 %"});
  }
};
}  // namespace lumwright::description::part
