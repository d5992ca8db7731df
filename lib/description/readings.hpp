// The readings of a shop-made fan test: the fan, the box, the meter, and what the U-tube showed at each plate.
#pragma once
#include "description/build.hpp"
#include "description/given.hpp"
#include "input/source.hpp"
#include <string>
#include <vector>

namespace lumwright::description {
std::vector<std::string> meter_words();  // "plates in the lid", "straight tube"
}  // namespace lumwright::description

namespace lumwright::description::part {
struct TestedFan {
  Text kind;
  Given<Length> frame, thickness;
  FanRating rated;
  Points<Voltage, Rotation> speed_at;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "axial (air straight through) or centrifugal (air out at the side)", "axial"}, self.kind, &fan_words);
    v({"frame", "side of the frame", "50 mm"}, self.frame, Limits{"10 mm", "500 mm"});
    v({"thickness", "depth of the frame", "20 mm"}, self.thickness, Limits{"3 mm", "190 mm"});
    v.section({"rated", "what the label says; the curve is made to hold at this voltage and speed", ""}, self.rated);
    v({"speed_at", "measured speeds at some voltages", "[ [7 V, 3100 rpm], [12 V, 5200 rpm] ]", expert}, self.speed_at,
      Limits{"0 V", "80 V"}, Limits{"0 rpm", "80000 rpm"});
  }
};

/// Round or with four sides.
struct FanTestBox {
  Given<Length> diameter, width, height, length;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"diameter", "inside diameter of a round box", "180 mm", expert}, self.diameter, Limits{"20 mm", "2 m"});
    v({"width", "inside width of a box with four sides", "160 mm"}, self.width, Limits{"20 mm", "2 m"});
    v({"height", "its inside height", "160 mm"}, self.height, Limits{"20 mm", "2 m"});
    v({"length", "from the lid to the fan", "250 mm"}, self.length, Limits{"10 mm", "3 m"});
  }
};

struct FanTestTube {
  Given<Length> bore, length;
  Given<double> mean;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"bore", "inside diameter", "32 mm"}, self.bore, Limits{"5 mm", "500 mm"});
    v({"length", "from its mouth to the place of measuring", "320 mm"}, self.length, Limits{"5 mm", "5 m"});
    v({"mean", "mean speed over the speed on the axis, if you know it", "0.82", expert}, self.mean, Limits{"0.4", "1"});
  }
};

struct FanTestMeter {
  Text kind;
  Given<Length> plate, hole_within;
  Given<double> discharge;
  FanTestTube tube;
  Given<Pressure> reads_to;
  Given<double> incline;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"kind", "plates in the lid, or a straight tube that the air comes in through", "plates in the lid"}, self.kind,
      &meter_words);
    v({"plate", "thickness of the plates at the hole", "0.3 mm"}, self.plate, Limits{"0.02 mm", "20 mm"});
    v({"hole_within", "how well the holes were measured", "0.1 mm"}, self.hole_within, Limits{"0.001 mm", "2 mm"});
    v({"discharge", "share of the frictionless flow that the holes pass, if you know it", "0.61 +- 0.02", expert},
      self.discharge, Limits{"0.4", "1"});
    v.section({"tube", "the straight tube", "", expert}, self.tube);
    v({"reads_to", "how well the U-tube is read, in height of water where it stands upright", "0.5 mmH2O"},
      self.reads_to, Limits{"0.005 mmH2O", "50 mmH2O"});
    v({"incline", "millimetres along a U-tube laid down for each of height; readings are then as read along it", "10",
       expert},
      self.incline, Limits{"1", "50"});
  }
};

/// One plate, or one setting of the tube.
struct FanTestReading {
  Given<Length> plate;
  Count holes;
  Given<Pressure> depression, velocity_head;
  Given<Velocity> air_speed;
  Given<Voltage> voltage;
  Given<Current> current;
  Given<Rotation> speed;
  Given<Temperature> air;
  input::Position at{};
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"plate", "diameter of the hole in the lid; 0 mm is the closed lid", "10 mm"}, self.plate,
      Limits{"0 mm", "300 mm"});
    v({"holes", "equal holes of that diameter", "1"}, self.holes, 1, 20);
    v({"depression", "of the box below the room, by U-tube", "4.5 mmH2O"}, self.depression, Limits{"0 Pa", "20 kPa"});
    v({"velocity_head", "of a pitot tube on the axis of the straight tube", "1.2 mmH2O"}, self.velocity_head,
      Limits{"0 Pa", "5 kPa"});
    v({"air_speed", "of an anemometer on that axis", "3.1 m/s"}, self.air_speed, Limits{"0.05 m/s", "80 m/s"});
    v({"voltage", "at the fan's leads", "12.1 V"}, self.voltage, Limits{"0.5 V", "80 V"});
    v({"current", "through the fan", "0.15 A"}, self.current, Limits{"1 mA", "20 A"});
    v({"speed", "of the fan, by optical counter or strobe", "5100 rpm"}, self.speed, Limits{"100 rpm", "80000 rpm"});
    v({"air", "temperature of the room, where it changed", "18 degC"}, self.air, Limits{"-40 degC", "55 degC"});
  }
};
}  // namespace lumwright::description::part

namespace lumwright::description {
/// A spread behind a reading is its uncertainty, taken as two standard deviations.
struct FanReadings {
  FanReadings();
  explicit FanReadings(WithoutKeys) {}

  std::string file{};  // where it was read from
  Text name, day;
  part::Place place;
  part::TestedFan fan;
  part::FanTestBox box;
  part::FanTestMeter meter;
  std::vector<part::FanTestReading> readings;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v({"name", "what you call this fan", "fan from an old drive bay"}, self.name, nullptr);
    v({"day", "when it was tested", "3 May"}, self.day, nullptr);
    v.section({"place", "the air in the room", ""}, self.place);
    v.section({"fan", "the fan", ""}, self.fan);
    v.section({"box", "the box that it empties", ""}, self.box);
    v.section({"meter", "how its air was measured", ""}, self.meter);
    v.list({"readings", "what was read", "[ {plate: 0 mm, depression: 5.5 mmH2O, voltage: 12 V} ]"}, self.readings);
  }
};

enum class ReadingsAre { there, to_come };  // to come: the test box is still to be made

/// Reads the readings. Throws InputError that holds every fault, as read_build does for descriptions; also for a
/// reading without a depression or without what its meter needs, a box both round and square, a tube without a bore;
/// for a file without readings unless they are still to come.
FanReadings read_fan_readings(const input::Source& source, ReadingsAre readings = ReadingsAre::there);
/// A file to start from: every key, its meaning, its limits and an example.
std::string new_fan_readings();
}  // namespace lumwright::description
