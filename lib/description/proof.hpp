// What was read on the finished unit, for `lumwright prove`.
#pragma once
#include "description/build.hpp"
#include "description/given.hpp"
#include "input/source.hpp"
#include <string>
#include <vector>

namespace lumwright::description {
std::vector<std::string> paper_words();  // "drawn in", "still", "blown out"
}  // namespace lumwright::description

namespace lumwright::description::part {
/// Any of it, at least one thing. The keys are the ids of data/proofs.yaml.
struct ProofReadings {
  Text paper;
  Given<Voltage> pack_rest, pack_loaded;
  Given<Current> current;
  Given<Voltage> fan_voltage;
  Given<Pressure> suction, shut_off, suction_packed;
  Given<Velocity> air_speed;
  Given<Voltage> cells, cells_loaded;
  Given<Rotation> fan_speed;
  Given<Temperature> gas;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"paper", "which way a strip of paper hangs at the firehole, cold, the fan running", "drawn in"}, self.paper,
      &paper_words);
    v({"pack_rest", "voltage of the charged pack, all switched off", "8.31 V"}, self.pack_rest,
      Limits{"0.3 V", "80 V"});
    v({"pack_loaded", "the same with the fan running, where the pack's leads end", "8.12 V"}, self.pack_loaded,
      Limits{"0.3 V", "80 V"});
    v({"current", "through one lead of the pack, the fan running", "0.33 A"}, self.current, Limits{"0 mA", "20 A"});
    v({"fan_voltage", "at the fan's own leads, the fan running", "12.0 V"}, self.fan_voltage, Limits{"0 V", "80 V"});
    v({"suction", "in the smokebox, cold, the fan running; below zero where it is blown into", "4.2 mmH2O"},
      self.suction, Limits{"-5 kPa", "5 kPa"});
    v({"shut_off", "behind a cap over the tube, the unit off the engine, its bleed holes taped", "11.5 mmH2O"},
      self.shut_off, Limits{"-20 kPa", "20 kPa"});
    v({"suction_packed", "in the smokebox as before, the gap round the tube packed", "4.3 mmH2O"}, self.suction_packed,
      Limits{"-5 kPa", "5 kPa"});
    v({"air_speed", "of an anemometer over the outlet, cold, on the engine", "5.2 m/s"}, self.air_speed,
      Limits{"0 m/s", "80 m/s"});
    v({"cells", "how far the lowest cell lies under the mean of the others, the fan running", "0.02 V"}, self.cells,
      Limits{"0 V", "15 V"});
    v({"cells_loaded", "all cells on their own ends, added up, the fan running", "8.17 V"}, self.cells_loaded,
      Limits{"0.3 V", "80 V"});
    v({"fan_speed", "by optical counter, cold, on the engine", "6050 rpm"}, self.fan_speed,
      Limits{"0 rpm", "80000 rpm"});
    v({"gas", "in the outlet of the fan, five minutes after it was started on the lit fire", "52 degC"}, self.gas,
      Limits{"-40 degC", "600 degC"});
  }
};
}  // namespace lumwright::description::part

namespace lumwright::description {
/// A spread behind a reading is its uncertainty, taken as two standard deviations.
struct Proof {
  std::string file{};  // where it was read from
  Text name, day;
  part::Place place;  // on that day; where it is silent, that of the description
  Given<Area> outlet;
  part::ProofReadings readings;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call these readings", "first trial on the bench"}, self.name, nullptr);
    v({"day", "when they were taken", "3 May, dry, no wind"}, self.day, nullptr);
    v.section({"place", "the air on that day", ""}, self.place);
    v({"outlet", "free area of the fan's outlet, where the table of fans does not know it", "244 mm2", expert},
      self.outlet, Limits{"10 mm2", "0.2 m2"});
    v.section({"readings", "what was read; what you did not read stays out", ""}, self.readings);
  }
};

/// Reads a file of readings. Throws InputError that holds every fault, as read_build does for descriptions; also for a
/// file without any reading, and for a pack that rises under load.
Proof read_proof(const input::Source& source);
/// A file to start from: every key, its meaning and an example behind `#`.
std::string new_proof();
}  // namespace lumwright::description
