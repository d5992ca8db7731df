// The plain description of one build: what its author knows, and nothing computed from it.
// Each part lists its keys once, in `fields`; the reader, the writer, the JSON Schema, `new` and the manual all walk
// that list.
#pragma once
#include "description/adapter_part.hpp"
#include "description/engine_part.hpp"
#include "description/fan_part.hpp"
#include "description/fire_part.hpp"
#include "description/supply_part.hpp"

// The parts have a namespace of their own: physics has a Grate and a Box too, and there they are cut and measured.
namespace lumwright::description::part {
struct Place {
  Given<Temperature> air;
  Given<Pressure> barometer;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"air", "temperature of the air on the day", "12 degC"}, self.air, Limits{"-40 degC", "55 degC"});
    v({"barometer", "pressure of the air, not reduced to sea level", "1005 mbar"}, self.barometer,
      Limits{"500 mbar", "1100 mbar"});
  }
};

struct Want {
  Given<Duration> steam_within;
  Given<double> light_ups_per_charge;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"steam_within", "time you will wait for the engine's own blower", "10 min"}, self.steam_within,
      Limits{"10 s", "6 h"});
    v({"light_ups_per_charge", "light-ups you want from one charge", "6"}, self.light_ups_per_charge,
      Limits{"1", "1000"});
  }
};

struct MeasuredDraught {
  Given<MassFlow> air_flow;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"air_flow", "measured air through the engine, in place of fan and adapter", "0.40 g/s"}, self.air_flow,
      Limits{"0.001 g/s", "1 kg/s"});
  }
};

struct MeasuredLoad {
  Given<Power> power;
  Given<Voltage> voltage;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"power", "measured power at the fan, in place of its electrical side", "1.8 W"}, self.power,
      Limits{"1 mW", "500 W"});
    v({"voltage", "voltage at which that was measured", "12 V"}, self.voltage, Limits{"0.5 V", "60 V"});
  }
};

}  // namespace lumwright::description::part

namespace lumwright::description {
/// Every value of it knows its key.
struct Build {
  Build();
  explicit Build(WithoutKeys) {}

  std::string file{};               // where it was read from
  std::vector<Renamed> renamed{};  // what it says by an older name
  Text name;
  part::Place place;
  part::Engine engine;
  part::Fuel fuel;
  part::Adapter adapter;
  part::FanPart fan;
  part::SupplyPart supply;
  part::Want want;
  part::MeasuredDraught draught;
  part::MeasuredLoad load;
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
    v.section({"draught", "a measurement in place of fan and adapter", "", expert}, self.draught);
    v.section({"load", "a measurement in place of the fan's electrical side", "", expert}, self.load);
  }
};
}  // namespace lumwright::description
