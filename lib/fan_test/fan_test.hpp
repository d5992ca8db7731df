// From the readings of a shop-made fan test to a curve that a description can use, with its band and its warnings.
#pragma once
#include "description/readings.hpp"
#include "draught/fan_fit.hpp"
#include "draught/lid_meter.hpp"
#include "draught/test_box.hpp"
#include "plan/assessment.hpp"
#include "quantity/errors.hpp"
#include <optional>
#include <string>
#include <vector>

namespace lumwright::fan_test {
/// A reading that no fan can have given, or that no description would take; with its place in the file.
struct ReadingFault : ModelError {
  explicit ReadingFault(input::Fault at_fault) : ModelError(at_fault.message), fault(std::move(at_fault)) {}
  input::Fault fault;
};

/// One reading and what became of it.
struct TestedPoint {
  std::size_t number;                  // in the file, from 1
  std::string setting;                 // as written: "10 mm", "2 x 25 mm", "closed lid", "tube"
  std::optional<model::Measure> hole;  // in the lid, in the unit it was written in; not with the lid closed, nor a tube
  int holes;                           // of that size
  Pressure depression;                 // an upright U-tube would have shown it
  std::optional<draught::MeteredFlow> metered;  // not with the lid closed, nor where left out
  double speed_ratio;                  // rated speed over the speed then; 1 where left out
  draught::TestPoint point;            // at 1.2 kg/m3 and rated speed; meaningless where left out
  std::optional<Current> current;
  std::string left_out;  // why it is not used; else empty
  std::vector<std::string> remarks;
};
struct FanTestWarning {
  std::string id;      // "small_box", "no_closed_lid", "leak"
  std::string text;    // what is wrong and how far
  std::string action;  // what to do
};
/// What moves all points together, as two standard deviations over the value.
struct SharedError {
  std::string cause;
  double flow, pressure;
};

struct FanTest {
  std::string name;  // of the fan, or of the file
  data::FanKind kind;
  bool kind_given;
  std::optional<Length> thickness;  // as given
  std::optional<Length> frame;
  std::optional<Voltage> voltage;  // at which the curve holds
  std::optional<Rotation> speed;   // at which it holds, where it is known
  std::optional<Current> current;  // of the label, or the mean that was read within 5 % of that voltage
  std::string speed_basis;         // how the readings were carried to that voltage
  std::vector<TestedPoint> points;
  draught::FanFit fit;
  std::vector<draught::CurveBandPoint> curve;  // a dozen points for a description, shut to free air
  double pressure_within;             // half of the band over the pressure, the worst below half of free air
  std::vector<SharedError> shared;
  std::vector<FanTestWarning> warnings;
  std::vector<model::Assumed> assumed;
};

/// Works out the test. Throws ReadingFault for a reading that cannot be, ModelError where no curve follows from the
/// readings, with what was wrong with them.
FanTest fan_test(const description::FanReadings& readings);

/// The plate that is worth reading next.
struct NextPlate {
  draught::PlannedPlate plate;
  draught::CurveBandPoint at;  // where the curve, as it is known so far, meets it
  double width;                // of the band there, over the pressure
};
/// Of the planned plates, the one that meets the curve where its band is widest for its pressure, and no reading is
/// near; nothing where each has been read.
std::optional<NextPlate> next_plate(const FanTest& test, const draught::TestBox& box);

/// Its `pressure_within` as it is told and written: whole hundredths, rounded up.
double within_told(const FanTest& test);

/// The lines of a description: `fan:` with its rated values and its curve, the band behind `#`, and what a tuned file
/// would say of the curve's spread. Reads back as part of a description; says nothing that the readings do not.
std::string curve_lines(const FanTest& test);

/// Those that apply to the making and running of a test box.
std::vector<plan::Caution> fan_test_cautions();

/// What is to be expected of a fan of which only this is known: by its speed where there is one, else by the usual fan
/// of its size. Throws ModelError where none comes near.
draught::ExpectedFan expected_fan(const description::FanReadings& readings);
}  // namespace lumwright::fan_test
