// The engine that is lit: boiler, fire, tubes, chimney.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"

namespace lumwright::description::part {
struct BoilerMetal {
  Given<Mass> copper, brass, steel;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"copper", "copper that is heated with the water", "1.30 kg"}, self.copper, Limits{"0 g", "500 kg"});
    v({"brass", "brass and gunmetal that is heated with the water", "0.22 kg"}, self.brass, Limits{"0 g", "500 kg"});
    v({"steel", "steel that is heated with the water (a third of smokebox and frames)", "0.40 kg"}, self.steel,
      Limits{"0 g", "500 kg"});
  }
};

struct Boiler {
  Given<Volume> water, volume;
  BoilerMetal metal;
  Given<GaugePressure> own_blower_from, working;
  Given<ThermalConductance> heat_loss;
  Given<Length> lagging;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"water", "water in the boiler when the fire is lit", "420 ml"}, self.water, Limits{"5 ml", "200 l"});
    v({"volume", "what the boiler holds when it is full to the brim", "560 ml", expert}, self.volume,
      Limits{"5 ml", "400 l"});
    v.section({"metal", "what is heated along with the water", ""}, self.metal);
    v({"own_blower_from", "gauge pressure at which the engine's own blower takes over", "1.2 bar"},
      self.own_blower_from, Limits{"0.05 bar", "15 bar"});
    v({"working", "working pressure, as the gauge shows it", "3.5 bar"}, self.working, Limits{"0.1 bar", "15 bar"});
    v({"heat_loss", "heat lost to the air for each degree above it", "0.40 W/K"}, self.heat_loss,
      Limits{"0 W/K", "200 W/K"});
    v({"lagging", "felt or the like round the boiler, in place of a measured heat loss; 0 mm: bare", "6 mm", expert},
      self.lagging, Limits{"0 mm", "100 mm"});
  }
};

struct Firebox {
  Given<Area> heating_surface;
  Given<double> emissivity;
  Given<HeatTransfer> convection;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"heating_surface", "water-backed surface above the fire", "80 cm2"}, self.heating_surface,
      Limits{"1 cm2", "3 m2"});
    v({"emissivity", "emissivity of fire and walls together", "0.7"}, self.emissivity, Limits{"0.05", "1"});
    v({"convection", "heat transfer by convection in the firebox", "20 W/m2/K", expert}, self.convection,
      Limits{"0 W/m2/K", "500 W/m2/K"});
  }
};

struct Grate {
  Given<Length> length, width;
  Given<double> open_share;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"length", "length of the grate", "58 mm"}, self.length, Limits{"5 mm", "2 m"});
    v({"width", "width of the grate", "42 mm"}, self.width, Limits{"5 mm", "2 m"});
    v({"open_share", "open part of the clean grate", "35 %"}, self.open_share, Limits{"2 %", "95 %"});
  }
};

struct AirEntry {
  Given<Length> width, height;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"width", "width of the opening that lets air under the grate", "40 mm"}, self.width, Limits{"1 mm", "1 m"});
    v({"height", "height of that opening", "12 mm"}, self.height, Limits{"1 mm", "1 m"});
  }
};

struct FireTubes {
  Count count;
  Given<Length> bore, length;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"count", "number of fire tubes", "8"}, self.count, 1, 500);
    v({"bore", "inside diameter of each", "8 mm"}, self.bore, Limits{"1 mm", "200 mm"});
    v({"length", "length of each", "140 mm"}, self.length, Limits{"5 mm", "5 m"});
  }
};

struct Chimney {
  Given<Length> bore, depth, wall, seam_ridge, measured_within;
  Text material;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"bore", "inside diameter at its narrowest: smallest of several readings", "16.20 mm +- 0.03 mm"}, self.bore,
      Limits{"3 mm", "300 mm"});
    v({"depth", "how deep a tube can go in", "36 mm"}, self.depth, Limits{"1 mm", "2 m"});
    v({"wall", "wall thickness", "1.6 mm"}, self.wall, Limits{"0.1 mm", "50 mm"});
    v({"material", "what it is made of", "steel"}, self.material, &metal_words);
    v({"seam_ridge", "height of a weld seam that stands proud inside", "0 mm"}, self.seam_ridge,
      Limits{"0 mm", "5 mm"});
    v({"measured_within", "measuring uncertainty of the bore", "0.02 mm", expert}, self.measured_within,
      Limits{"0 mm", "2 mm"});
  }
};

struct Leakage {
  Given<double> past_bed, smokebox;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"past_bed", "share of the engine's air that goes past the fire, fire alight", "25 %"}, self.past_bed,
      Limits{"0 %", "90 %"});
    v({"smokebox", "share of the chimney gas that leaked in at the smokebox, fire alight", "5 %"}, self.smokebox,
      Limits{"0 %", "90 %"});
  }
};

struct Cylinders {
  Count count;
  Given<Length> bore, blast_nozzle;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"count", "number of cylinders", "2"}, self.count, 1, 8);
    v({"bore", "cylinder bore", "16 mm"}, self.bore, Limits{"3 mm", "300 mm"});
    v({"blast_nozzle", "bore of the blast nozzle", "1.7 mm"}, self.blast_nozzle, Limits{"0.2 mm", "100 mm"});
  }
};

struct Engine {
  Boiler boiler;
  Firebox firebox;
  Grate grate;
  AirEntry air_entry;
  FireTubes tubes;
  Chimney chimney;
  Leakage leakage;
  Cylinders cylinders;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"boiler", "water, metal and pressures", ""}, self.boiler);
    v.section({"firebox", "the space above the fire", ""}, self.firebox);
    v.section({"grate", "what the fire lies on", ""}, self.grate);
    v.section({"air_entry", "the opening that lets air in under the grate", "", expert}, self.air_entry);
    v.section({"tubes", "the fire tubes", ""}, self.tubes);
    v.section({"chimney", "what the adapter tube slips into", ""}, self.chimney);
    v.section({"leakage", "air that does not go through the fire", ""}, self.leakage);
    v.section({"cylinders", "for the blast nozzle rule of thumb", ""}, self.cylinders);
  }
};
}  // namespace lumwright::description::part
