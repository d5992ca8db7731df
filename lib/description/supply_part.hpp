// What drives the fan: pack, step-up, control, leads.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"

namespace lumwright::description::part {
struct PackPart {
  Text cell, condition;
  Count series, parallel, days_since_charge;
  Given<Charge> capacity;
  Given<Resistance> resistance, contacts;
  Given<double> charged, rate_exponent;
  Given<Temperature> temperature;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"cell", "chemistry and size", "NiMH AA"}, self.cell, &cell_words);
    v({"series", "cells one behind the other", "5"}, self.series, 1, 40);
    v({"parallel", "such strings side by side", "1", expert}, self.parallel, 1, 40);
    v({"capacity", "capacity of one cell", "1900 mAh"}, self.capacity, Limits{"10 mAh", "500 Ah"});
    v({"condition", "how good the cells still are", "good"}, self.condition, &condition_words);
    v({"resistance", "resistance of the whole pack, in place of the table", "0.20 ohm", expert}, self.resistance,
      Limits{"0 ohm", "100 ohm"});
    v({"contacts", "resistance of all contacts of holders and plugs together", "250 mohm", expert}, self.contacts,
      Limits{"0 ohm", "10 ohm"});
    v({"charged", "how full it is at the start", "100 %", expert}, self.charged, Limits{"1 %", "100 %"});
    v({"days_since_charge", "days since it was last charged full, in place of `charged`", "21", expert},
      self.days_since_charge, 0, 3650);
    v({"rate_exponent", "Peukert exponent; 1 means the capacity holds at this load", "1.05", expert},
      self.rate_exponent, Limits{"1", "1.9"});
    v({"temperature", "temperature of the cells", "15 degC", expert}, self.temperature, Limits{"-30 degC", "60 degC"});
  }
};

struct StepUpPart {
  Text module;
  Given<Voltage> output, input_min, input_most, output_most;
  Given<Current> input_limit;
  EfficiencyTable efficiency;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"module", "which kind of step-up", "small 1.2 MHz"}, self.module, &module_words);
    v({"output", "output voltage it is set to", "12 V"}, self.output, Limits{"1 V", "60 V"});
    v({"input_limit", "most current it can draw for long", "0.8 A"}, self.input_limit, Limits{"10 mA", "50 A"});
    v({"input_min", "least input at which it still works, measured", "2.5 V"}, self.input_min,
      Limits{"0.3 V", "60 V"});
    v({"input_most", "most input that it stands", "24 V", expert}, self.input_most, Limits{"1 V", "200 V"});
    v({"output_most", "most output that it can be set to", "28 V", expert}, self.output_most, Limits{"1 V", "200 V"});
    v({"efficiency", "one share, or points [input voltage, output power, share]", "88 %", expert}, self.efficiency);
  }
};

struct ControlPart {
  Text kind;
  Given<double> duty;
  Given<Voltage> output;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "how the speed is set", "none"}, self.kind, &control_words);
    v({"duty", "on-time share of a chopped supply", "60 %", expert}, self.duty, Limits{"1 %", "100 %"});
    v({"output", "voltage of a lower output or a series regulator", "9 V", expert}, self.output,
      Limits{"0.5 V", "60 V"});
  }
};

struct LeadsPart {
  Given<Area> section;
  Given<Length> length, outside;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"section", "copper section of each wire", "0.25 mm2"}, self.section, Limits{"0.01 mm2", "50 mm2"});
    v({"length", "length from pack to fan, one way", "350 mm"}, self.length, Limits{"0 mm", "50 m"});
    v({"outside", "size of the pair of wires over the insulation, where they pass the box", "3 mm", expert},
      self.outside, Limits{"0.5 mm", "20 mm"});
  }
};

struct ChargerPart {
  Given<Current> current;
  Text stops;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"current", "what the charger gives the pack, as printed on it", "500 mA", expert}, self.current,
      Limits{"1 mA", "100 A"});
    v({"stops", "whether it stops by itself when the pack is full", "yes", expert}, self.stops, &yes_words);
  }
};

struct SupplyPart {
  PackPart pack;
  StepUpPart step_up;
  ControlPart control;
  LeadsPart leads;
  ChargerPart charger;
  Given<Current> fuse;
  Given<Voltage> stop_at;
  Text switched, polarity;
  Given<Voltage> polarity_drop;
  Count plugs;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v.section({"pack", "the battery", ""}, self.pack);
    v.section({"step_up", "the step-up, a converter that raises the voltage", ""}, self.step_up);
    v.section({"control", "speed control", ""}, self.control);
    v.section({"leads", "the wires", ""}, self.leads);
    v.section({"charger", "what charges the pack", "", expert}, self.charger);
    v({"fuse", "rating of the fuse at the pack", "1.25 A"}, self.fuse, Limits{"10 mA", "100 A"});
    v({"switch", "the switch, at the pack; none where a plug is pulled", "toggle switch", expert}, self.switched,
      &switch_words);
    v({"plugs", "two-pole plugs between pack and fan", "1", expert}, self.plugs, 0, 8);
    v({"polarity", "what guards against a pack put in the wrong way round", "Schottky diode", expert}, self.polarity,
      &polarity_words);
    v({"polarity_drop", "voltage that this guard keeps for itself, measured", "0.35 V", expert}, self.polarity_drop,
      Limits{"0 V", "2 V"});
    v({"stop_at", "pack voltage at which you stop, or a cut-out does", "5.0 V"}, self.stop_at,
      Limits{"0.3 V", "100 V"});
  }
};
}  // namespace lumwright::description::part
