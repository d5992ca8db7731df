#include "description/readings.hpp"
#include "description/detail/part_reader.hpp"

namespace lumwright::description {
namespace {
constexpr const char* tube_word = "straight tube";

/// Also of a faulty value, which has had its complaint.
template <class Value>
bool mentioned(const Value& value) {
  return value || value.at.column > 1;
}

class Contradictions {
 public:
  Contradictions(const FanReadings& test, ReadingsAre readings)
      : test_(test), readings_(readings), tube_(test.meter.kind && *test.meter.kind == tube_word) {}
  std::vector<input::Fault> find() {
    box();
    meter();
    if (test_.readings.empty() && readings_ == ReadingsAre::there)
      add({}, "readings", "a fan test needs readings", "as in `readings: [ {plate: 10 mm, depression: 4.5 mmH2O} ]`");
    for (std::size_t i = 0; i < test_.readings.size(); ++i)
      reading(test_.readings[i], fmt::format("{}. of the list: ", i + 1));
    return std::move(faults_);
  }

 private:
  void add(input::Position at, std::string key, std::string message, std::string help) {
    faults_.push_back({at, std::move(key), std::move(message), std::move(help)});
  }
  void box() {
    const auto& b = test_.box;
    if (mentioned(b.diameter) && (mentioned(b.width) || mentioned(b.height)))
      add(b.diameter.at, "box.diameter", "a round box has no width and height", "leave out what it is not");
    else if (mentioned(b.width) != mentioned(b.height))
      add(mentioned(b.width) ? b.width.at : b.height.at, mentioned(b.width) ? "box.width" : "box.height",
          "a box with four sides needs width and height", "or `diameter`, if it is round");
  }
  void meter() {
    const auto& m = test_.meter;
    if (tube_ && !mentioned(m.tube.bore))
      add(m.kind.at, "meter.tube", "a straight tube needs its bore", "as in `tube: { bore: 32 mm, length: 320 mm }`");
    if (!tube_ && mentioned(m.tube.bore) && !(mentioned(m.kind) && !m.kind))
      add(m.tube.bore.at, "meter.tube", "plates in the lid have no tube",
          "write `kind: straight tube` if the air was measured there");
  }
  void reading(const part::FanTestReading& r, const std::string& item) {
    const bool closed = r.plate && *r.plate == 0.0 * unit::m;
    const bool flow = mentioned(r.velocity_head) || mentioned(r.air_speed);
    if (!mentioned(r.depression))
      add(r.at, "readings", item + "`depression` is missing", "as in `depression: 4.5 mmH2O`");
    if (mentioned(r.velocity_head) && mentioned(r.air_speed))
      add(r.air_speed.at, "readings.air_speed", item + "the speed of the air is given twice",
          "keep `velocity_head` or `air_speed`");
    if (!tube_ && flow)
      add(mentioned(r.velocity_head) ? r.velocity_head.at : r.air_speed.at,
          mentioned(r.velocity_head) ? "readings.velocity_head" : "readings.air_speed",
          item + "plates in the lid need no speed of the air",
          "write `kind: straight tube` under `meter` if it was read there");
    if (!tube_ && !mentioned(r.plate))
      add(r.at, "readings", item + "`plate` is missing",
          "the diameter of its hole, or `plate: 0 mm` for the closed lid");
    if (tube_ && !closed && !flow)
      add(r.at, "readings", item + "the speed of the air is missing",
          "as in `velocity_head: 1.2 mmH2O`, or `plate: 0 mm` where the tube was shut");
    if (closed && mentioned(r.holes))
      add(r.holes.at, "readings.holes", item + "a closed lid has no holes", "leave out `holes`");
    if (closed && flow && tube_)
      add(r.plate.at, "readings.plate", item + "no air comes in where the lid is closed", "leave out `plate`");
  }

  const FanReadings& test_;
  ReadingsAre readings_;
  bool tube_;
  std::vector<input::Fault> faults_;
};
}  // namespace

std::vector<std::string> meter_words() { return {"plates in the lid", tube_word}; }

FanReadings::FanReadings() {
  static const std::vector<Key> known = list_keys(FanReadings(WithoutKeys{}));
  give_keys(*this, known);
}
FanReadings read_fan_readings(const input::Source& source, ReadingsAre readings) {
  FanReadings test =
      read_parts<FanReadings>(source, "the readings of a fan test", "name: fan from an old drive bay",
                              [&](const FanReadings& all) { return Contradictions(all, readings).find(); });
  test.file = source.name;
  return test;
}
}  // namespace lumwright::description
