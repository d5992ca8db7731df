// The plain description of one build: what its author knows, and nothing computed from it.
// Each part lists its keys once, in `fields`; the reader, the writer, the JSON Schema, `new` and the manual all walk that list.
#pragma once
#include "build/given.hpp"
#include "build/words.hpp"

namespace lumwright {
struct Place {
  Given<Temperature> air;
  Given<Pressure> barometer;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"air", "temperature of the air on the day", "12 degC"}, self.air, Limits{"-40 degC", "55 degC"});
    v({"barometer", "pressure of the air, not reduced to sea level", "1005 mbar"}, self.barometer, Limits{"500 mbar", "1100 mbar"});
  }
};

struct BoilerMetal {
  Given<Mass> copper, brass, steel;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"copper", "copper that is heated with the water", "1.30 kg"}, self.copper, Limits{"0 g", "500 kg"});
    v({"brass", "brass and gunmetal that is heated with the water", "0.22 kg"}, self.brass, Limits{"0 g", "500 kg"});
    v({"steel", "steel that is heated with the water (a third of smokebox and frames)", "0.40 kg"}, self.steel, Limits{"0 g", "500 kg"});
  }
};
struct Boiler {
  Given<Volume> water;
  BoilerMetal metal;
  Given<GaugePressure> own_blower_from, working;
  Given<ThermalConductance> heat_loss;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"water", "water in the boiler when the fire is lit", "420 ml"}, self.water, Limits{"5 ml", "200 l"});
    v.section({"metal", "what is heated along with the water", ""}, self.metal);
    v({"own_blower_from", "gauge pressure at which the engine's own blower takes over", "1.2 bar"}, self.own_blower_from, Limits{"0.05 bar", "15 bar"});
    v({"working", "working pressure, as the gauge shows it", "3.5 bar"}, self.working, Limits{"0.1 bar", "15 bar"});
    v({"heat_loss", "heat lost to the air for each degree above it", "0.40 W/K"}, self.heat_loss, Limits{"0 W/K", "200 W/K"});
  }
};
struct Firebox {
  Given<Area> heating_surface;
  Given<double> emissivity;
  Given<HeatTransfer> convection;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"heating_surface", "water-backed surface above the fire", "80 cm2"}, self.heating_surface, Limits{"1 cm2", "3 m2"});
    v({"emissivity", "emissivity of fire and walls together", "0.7"}, self.emissivity, Limits{"0.05", "1"});
    v({"convection", "heat transfer by convection in the firebox", "20 W/m2/K"}, self.convection, Limits{"0 W/m2/K", "500 W/m2/K"});
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
    v({"bore", "inside diameter at its narrowest: smallest of several readings", "17.20 mm +- 0.03 mm"}, self.bore, Limits{"3 mm", "300 mm"});
    v({"depth", "how deep a tube can go in", "36 mm"}, self.depth, Limits{"1 mm", "2 m"});
    v({"wall", "wall thickness", "1.6 mm"}, self.wall, Limits{"0.1 mm", "50 mm"});
    v({"material", "what it is made of", "steel"}, self.material, &metal_words);
    v({"seam_ridge", "height of a weld seam that stands proud inside", "0 mm"}, self.seam_ridge, Limits{"0 mm", "5 mm"});
    v({"measured_within", "measuring uncertainty of the bore", "0.02 mm"}, self.measured_within, Limits{"0 mm", "2 mm"});
  }
};
struct Leakage {
  Given<double> past_bed, smokebox;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"past_bed", "share of the engine's air that goes past the fire, fire alight", "25 %"}, self.past_bed, Limits{"0 %", "90 %"});
    v({"smokebox", "share of the chimney gas that leaked in at the smokebox, fire alight", "5 %"}, self.smokebox, Limits{"0 %", "90 %"});
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
    v.section({"air_entry", "the opening that lets air in under the grate", ""}, self.air_entry);
    v.section({"tubes", "the fire tubes", ""}, self.tubes);
    v.section({"chimney", "what the adapter tube slips into", ""}, self.chimney);
    v.section({"leakage", "air that does not go through the fire", ""}, self.leakage);
    v.section({"cylinders", "for the blast nozzle rule of thumb", ""}, self.cylinders);
  }
};

struct Fuel {
  Text kind;
  Given<Length> lump, bed, burn_depth;
  Given<Duration> kindling;
  Given<double> lit_at_start, carbon_monoxide_share, voidage, sphericity;
  Given<Mass> bed_mass;
  Given<SpecificEnergy> heating_value;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "what is burnt while steam is raised", "lump charcoal"}, self.kind, &fuel_words);
    v({"lump", "size of the pieces, by sieve", "8 mm"}, self.lump, Limits{"0.5 mm", "100 mm"});
    v({"bed", "depth of the fire", "30 mm"}, self.bed, Limits{"2 mm", "500 mm"});
    v({"kindling", "time until the whole bed burns", "150 s"}, self.kindling, Limits{"1 s", "2 h"});
    v({"lit_at_start", "share of the bed that burns when the fan is started", "10 %"}, self.lit_at_start, Limits{"0 %", "100 %"});
    v({"carbon_monoxide_share", "share of the heat lost in unburnt gas", "12 %"}, self.carbon_monoxide_share, Limits{"0 %", "60 %"});
    v({"burn_depth", "depth in which the bed uses up the oxygen; about one lump", "8 mm"}, self.burn_depth, Limits{"0.5 mm", "200 mm"});
    v({"bed_mass", "fuel on the grate", "20 g"}, self.bed_mass, Limits{"0.5 g", "50 kg"});
    v({"voidage", "share of the bed that is gaps", "47 %"}, self.voidage, Limits{"20 %", "80 %"});
    v({"sphericity", "1 for balls, less for broken pieces", "0.7"}, self.sphericity, Limits{"0.2", "1"});
    v({"heating_value", "lower heating value as fired", "29.5 MJ/kg"}, self.heating_value, Limits{"5 MJ/kg", "45 MJ/kg"});
  }
};

struct AdapterTube {
  Given<Length> outside, wall, length, engaged, soot, measured_within;
  Text material, inlet;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"outside", "outside diameter: largest of several readings", "5/8 in"}, self.outside, Limits{"2 mm", "300 mm"});
    v({"wall", "wall thickness", "0.014 in"}, self.wall, Limits{"0.05 mm", "20 mm"});
    v({"length", "length from its mouth to the box", "42 mm"}, self.length, Limits{"2 mm", "2 m"});
    v({"engaged", "length that is inside the chimney", "34 mm"}, self.engaged, Limits{"1 mm", "2 m"});
    v({"material", "what it is made of", "brass"}, self.material, &metal_words);
    v({"inlet", "shape of its mouth", "square"}, self.inlet, &inlet_words);
    v({"soot", "soot to allow for on each side", "0.05 mm"}, self.soot, Limits{"0 mm", "2 mm"});
    v({"measured_within", "measuring uncertainty of its outside", "0.005 mm"}, self.measured_within, Limits{"0 mm", "2 mm"});
  }
};
struct FlangeHoles {
  Count count;
  Given<Length> pitch_circle;
  Text thread;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"count", "number of holes", "3"}, self.count, 1, 24);
    v({"pitch_circle", "diameter of the circle they lie on", "27 mm"}, self.pitch_circle, Limits{"3 mm", "500 mm"});
    v({"thread", "thread of the screws", "8BA"}, self.thread, nullptr);
  }
};
struct Flange {
  Given<Length> outside, thickness;
  FlangeHoles holes;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"outside", "outside diameter", "34 mm"}, self.outside, Limits{"4 mm", "500 mm"});
    v({"thickness", "thickness of the plate", "1.5 mm"}, self.thickness, Limits{"0.1 mm", "30 mm"});
    v.section({"holes", "screw holes", ""}, self.holes);
  }
};
struct Box {
  Given<Length> diameter, height, sheet;
  Text material;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"diameter", "diameter of the box (of a square one: its side)", "84 mm"}, self.diameter, Limits{"10 mm", "1 m"});
    v({"height", "height inside", "52 mm"}, self.height, Limits{"3 mm", "1 m"});
    v({"sheet", "thickness of the sheet", "0.24 mm"}, self.sheet, Limits{"0.05 mm", "10 mm"});
    v({"material", "what it is made of", "tinplate"}, self.material, &metal_words);
  }
};
struct Bleed {
  Count holes;
  Given<Length> diameter;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"holes", "number of holes that let cool air into the box; 0 for none", "0"}, self.holes, 0, 200);
    v({"diameter", "diameter of each", "3 mm"}, self.diameter, Limits{"0.2 mm", "100 mm"});
  }
};
struct Adapter {
  AdapterTube tube;
  Flange flange;
  Box box;
  Text joint;
  Bleed bleed;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"tube", "the tube that slips into the chimney", ""}, self.tube);
    v.section({"flange", "the turned plate that carries the tube", ""}, self.flange);
    v.section({"box", "the box between tube and fan", ""}, self.box);
    v({"joint", "how tube and flange are joined", "silver braze"}, self.joint, &joint_words);
    v.section({"bleed", "holes that let cool air into the box", ""}, self.bleed);
  }
};

struct FanRating {
  Given<Voltage> voltage;
  Given<Current> current;
  Given<Rotation> speed;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"voltage", "voltage on the label", "12 V"}, self.voltage, Limits{"1 V", "60 V"});
    v({"current", "current on the label, or measured", "0.16 A"}, self.current, Limits{"1 mA", "20 A"});
    v({"speed", "speed at that voltage", "5200 rpm"}, self.speed, Limits{"100 rpm", "60000 rpm"});
  }
};
struct FanPart {
  Text kind, mount;
  Given<Length> frame, thickness;
  FanRating rated;
  Points<VolumeFlow, Pressure> curve;
  Points<Voltage, Rotation> speed_at;
  Given<Voltage> starts_at;
  Given<Temperature> gas_limit;
  Given<Mass> mass;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "axial (air straight through) or centrifugal (air out at the side)", "axial"}, self.kind, &fan_words);
    v({"frame", "side of the frame", "50 mm"}, self.frame, Limits{"10 mm", "500 mm"});
    v({"thickness", "depth of the frame", "20 mm"}, self.thickness, Limits{"3 mm", "300 mm"});
    v.section({"rated", "what the label says", ""}, self.rated);
    v({"curve", "data sheet: volume flow and static pressure at rated voltage, from shut to free air",
       "[ [0 l/min, 58 Pa], [120 l/min, 44 Pa], [240 l/min, 26 Pa], [390 l/min, 0 Pa] ]"},
      self.curve, Limits{"0 l/min", "20000 l/min"}, Limits{"0 Pa", "20 kPa"});
    v({"speed_at", "measured speeds at some voltages", "[ [7 V, 3100 rpm], [12 V, 5200 rpm] ]"}, self.speed_at, Limits{"0 V", "80 V"},
      Limits{"0 rpm", "80000 rpm"});
    v({"starts_at", "lowest voltage at which it starts by itself", "5 V"}, self.starts_at, Limits{"0.3 V", "60 V"});
    v({"gas_limit", "hottest gas it may draw", "70 degC"}, self.gas_limit, Limits{"20 degC", "600 degC"});
    v({"mount", "on top of the box, or inside it", "outside"}, self.mount, &mount_words);
    v({"mass", "mass of the fan", "45 g"}, self.mass, Limits{"1 g", "20 kg"});
  }
};

struct PackPart {
  Text cell, condition;
  Count series, parallel;
  Given<Charge> capacity;
  Given<Resistance> resistance, contacts;
  Given<double> charged, rate_exponent;
  Given<Temperature> temperature;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"cell", "chemistry and size", "NiMH AA"}, self.cell, &cell_words);
    v({"series", "cells one behind the other", "5"}, self.series, 1, 40);
    v({"parallel", "such strings side by side", "1"}, self.parallel, 1, 40);
    v({"capacity", "capacity of one cell", "1900 mAh"}, self.capacity, Limits{"10 mAh", "500 Ah"});
    v({"condition", "how good the cells still are", "good"}, self.condition, &condition_words);
    v({"resistance", "resistance of the whole pack, in place of the table", "0.20 ohm"}, self.resistance, Limits{"0 ohm", "100 ohm"});
    v({"contacts", "resistance of holder and plugs together", "60 mohm"}, self.contacts, Limits{"0 ohm", "10 ohm"});
    v({"charged", "how full it is at the start", "100 %"}, self.charged, Limits{"1 %", "100 %"});
    v({"rate_exponent", "Peukert exponent; 1 means the capacity holds at this load", "1.05"}, self.rate_exponent, Limits{"1", "2"});
    v({"temperature", "temperature of the cells", "15 degC"}, self.temperature, Limits{"-30 degC", "60 degC"});
  }
};
struct StepUpPart {
  Text module;
  Given<Voltage> output, input_min;
  Given<Current> input_limit;
  EfficiencyTable efficiency;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"module", "which kind of converter", "small 1.2 MHz"}, self.module, &module_words);
    v({"output", "output voltage it is set to", "12 V"}, self.output, Limits{"1 V", "60 V"});
    v({"input_limit", "most current it can draw for long", "0.8 A"}, self.input_limit, Limits{"10 mA", "50 A"});
    v({"input_min", "lowest input at which it still works, measured", "2.5 V"}, self.input_min, Limits{"0.3 V", "60 V"});
    v({"efficiency", "one share, or points [input voltage, output power, share]", "88 %"}, self.efficiency);
  }
};
struct ControlPart {
  Text kind;
  Given<double> duty;
  Given<Voltage> output;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "how the speed is set", "none"}, self.kind, &control_words);
    v({"duty", "on-time share of a lead pwm", "60 %"}, self.duty, Limits{"1 %", "100 %"});
    v({"output", "voltage of a lower output or a series regulator", "9 V"}, self.output, Limits{"0.5 V", "60 V"});
  }
};
struct LeadsPart {
  Given<Area> section;
  Given<Length> length;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"section", "copper section of each wire", "0.25 mm2"}, self.section, Limits{"0.01 mm2", "50 mm2"});
    v({"length", "length from pack to fan, one way", "350 mm"}, self.length, Limits{"0 mm", "50 m"});
  }
};
struct SupplyPart {
  PackPart pack;
  StepUpPart step_up;
  ControlPart control;
  LeadsPart leads;
  Given<Current> fuse;
  Given<Voltage> stop_at;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"pack", "the battery", ""}, self.pack);
    v.section({"step_up", "the converter that raises the voltage", ""}, self.step_up);
    v.section({"control", "speed control", ""}, self.control);
    v.section({"leads", "the wires", ""}, self.leads);
    v({"fuse", "rating of the fuse at the pack", "1.25 A"}, self.fuse, Limits{"10 mA", "100 A"});
    v({"stop_at", "pack voltage at which you stop, or a cut-out does", "5.0 V"}, self.stop_at, Limits{"0.3 V", "100 V"});
  }
};

struct Want {
  Given<Duration> steam_within;
  Given<double> light_ups_per_charge;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"steam_within", "time you will wait for the engine's own blower", "10 min"}, self.steam_within, Limits{"10 s", "6 h"});
    v({"light_ups_per_charge", "light-ups you want from one charge", "6"}, self.light_ups_per_charge, Limits{"1", "1000"});
  }
};
struct MeasuredDraught {
  Given<MassFlow> air_flow;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"air_flow", "measured air through the engine, in place of fan and adapter", "0.40 g/s"}, self.air_flow, Limits{"0.001 g/s", "1 kg/s"});
  }
};
struct MeasuredLoad {
  Given<Power> power;
  Given<Voltage> voltage;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"power", "measured power at the fan, in place of its electrical side", "1.8 W"}, self.power, Limits{"1 mW", "500 W"});
    v({"voltage", "voltage at which that was measured", "12 V"}, self.voltage, Limits{"0.5 V", "60 V"});
  }
};

struct Build {
  std::string file{};  // where it was read from
  Text name;
  Place place;
  Engine engine;
  Fuel fuel;
  Adapter adapter;
  FanPart fan;
  SupplyPart supply;
  Want want;
  MeasuredDraught draught;
  MeasuredLoad load;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this build", "Tarn Beck lighting-up fan"}, self.name, nullptr);
    v.section({"place", "the air on the day", ""}, self.place);
    v.section({"engine", "the engine that is lit", ""}, self.engine);
    v.section({"fuel", "the fire", ""}, self.fuel);
    v.section({"adapter", "what joins fan and chimney", ""}, self.adapter);
    v.section({"fan", "the fan", ""}, self.fan);
    v.section({"supply", "what drives the fan", ""}, self.supply);
    v.section({"want", "what you ask of it", ""}, self.want);
    v.section({"draught", "a measurement in place of fan and adapter", ""}, self.draught);
    v.section({"load", "a measurement in place of the fan's electrical side", ""}, self.load);
  }
};
}  // namespace lumwright
