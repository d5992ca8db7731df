// The fan: its label, its data sheet, its limits.
#pragma once
#include "description/given.hpp"
#include "description/words.hpp"

namespace lumwright::description::part {
struct FanRating {
  Given<Voltage> voltage;
  Given<Current> current;
  Given<Rotation> speed;
  Text current_is;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"voltage", "voltage on the label", "12 V"}, self.voltage, Limits{"1 V", "60 V"});
    v({"current", "current on the label, or measured", "0.16 A"}, self.current, Limits{"1 mA", "20 A"});
    v({"speed", "speed at that voltage", "5200 rpm"}, self.speed, Limits{"100 rpm", "60000 rpm"});
    v({"current_is", "whether that current is what it usually takes, or a maximum", "typical", expert}, self.current_is,
      &current_words);
  }
};

/// Where it is screwed down: for drawings.
struct FanHoles {
  Text measured;
  Given<Length> pitch, diameter, opening, inlet_x, inlet_y;
  Points<Length, Length> lugs;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"measured", "whether the sizes here, or those of the table, were compared with the fan in hand", "yes"},
      self.measured, &yes_words);
    v({"pitch", "distance of the screw holes along a side (axial fans)", "40 mm"}, self.pitch,
      Limits{"5 mm", "490 mm"});
    v({"diameter", "diameter of its screw holes", "4.3 mm"}, self.diameter, Limits{"1 mm", "20 mm"});
    v({"opening", "bore of its air passage, or of a centrifugal fan's inlet", "48 mm"}, self.opening,
      Limits{"3 mm", "490 mm"});
    v({"lugs", "places of a centrifugal fan's screw holes, from the corner of its body, outlet edge at the bottom",
       "[ [4.3 mm, 45.4 mm], [47.3 mm, 7.4 mm] ]"},
      self.lugs, Limits{"-50 mm", "500 mm"}, Limits{"-50 mm", "500 mm"});
    v({"inlet_x", "centre of a centrifugal fan's inlet, from the same corner", "25 mm"}, self.inlet_x,
      Limits{"0 mm", "500 mm"});
    v({"inlet_y", "the same, upwards", "26 mm"}, self.inlet_y, Limits{"0 mm", "500 mm"});
  }
};

/// Over the side that a finger could reach.
struct FanGuard {
  Text kind;
  Given<double> open_share;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "wire rings or a drilled plate", "wire rings"}, self.kind, &guard_words);
    v({"open_share", "open area of it over the whole", "80 %"}, self.open_share, Limits{"10 %", "99 %"});
  }
};

struct FanPart {
  Text kind, mount;
  Given<Length> frame, thickness;
  FanRating rated;
  Points<VolumeFlow, Pressure> curve;
  Text curve_from;
  Given<double> curve_within;
  Points<Voltage, Rotation> speed_at;
  Given<Voltage> starts_at, voltage_most;
  Given<Temperature> gas_limit;
  Given<Mass> mass;
  FanHoles holes;
  FanGuard guard;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "axial (air straight through) or centrifugal (air out at the side)", "axial"}, self.kind, &fan_words);
    v({"frame", "side of the frame", "50 mm"}, self.frame, Limits{"10 mm", "500 mm"});
    v({"thickness", "depth of the frame", "20 mm"}, self.thickness, Limits{"3 mm", "300 mm"});
    v.section({"rated", "what the label says", ""}, self.rated);
    v({"curve", "volume flow and static pressure at rated voltage, from shut to free air",
       "[ [0 l/min, 58 Pa], [120 l/min, 44 Pa], [240 l/min, 26 Pa], [390 l/min, 0 Pa] ]"},
      self.curve, Limits{"0 l/min", "20000 l/min"}, Limits{"0 Pa", "20 kPa"});
    v({"curve_from", "where that curve comes from", "data sheet"}, self.curve_from, &curve_words);
    v({"curve_within", "how far its pressures may be off either way, in 19 of 20 such curves", "12 %", expert}, self.curve_within,
      Limits{"0 %", "90 %"});
    v({"speed_at", "measured speeds at some voltages", "[ [7 V, 3100 rpm], [12 V, 5200 rpm] ]", expert}, self.speed_at,
      Limits{"0 V", "80 V"}, Limits{"0 rpm", "80000 rpm"});
    v({"starts_at", "lowest voltage at which it starts by itself", "5 V"}, self.starts_at, Limits{"0.3 V", "60 V"});
    v({"voltage_most", "most voltage that its sheet allows", "13.8 V"}, self.voltage_most, Limits{"1 V", "80 V"});
    v({"gas_limit", "hottest gas it may draw", "70 degC"}, self.gas_limit, Limits{"20 degC", "600 degC"});
    v({"mount", "on top of the box, or inside it", "outside"}, self.mount, &mount_words);
    v({"mass", "mass of the fan", "45 g"}, self.mass, Limits{"1 g", "20 kg"});
    v.section({"guard", "the finger guard over its open side", "", expert}, self.guard);
    v.section({"holes", "where it is screwed down, for drawings", "", expert}, self.holes);
  }
};
}  // namespace lumwright::description::part
