#include "description/log.hpp"
#include "description/tuned_file.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;

namespace {
template <class F>
std::string complaint(F&& read, const std::string& text) {
  try {
    read(Source{"l.yaml", text});
  } catch (const InputError& e) {
    return e.what();
  }
  return "";
}
std::string log_complaint(const std::string& text) { return complaint(read_log, text); }
}  // namespace

TEST_CASE("a log with everything in it") {
  const Log log = read_log({"l.yaml",
                            "name: first\n"
                            "day: 3 May, dry\n"
                            "place: { air: 8 degC, barometer: 1020 mbar }\n"
                            "water: 428 ml +- 1 ml\n"
                            "started_at: 57 degF\n"
                            "readings:\n"
                            "  - { time: 90 s, water: 58 degC +- 3 K, smokebox: 8 mmH2O, fan_current: 160 mA }\n"
                            "  - { time: 8 min, gauge: 1.2 bar, pack_voltage: 7.2 V, fuel: 11 g }\n"});
  CHECK(log.file == "l.yaml");
  CHECK(*log.day == "3 May, dry");
  CHECK(*log.place.air == degC(8));
  CHECK(*log.water == near(428.0 * ml, 1e-12));
  CHECK(in(above_absolute_zero(*log.started_at), K) == near(287.039, 1e-5));  // 57 degF by the definition of the scale
  REQUIRE(log.readings.size() == 2);
  const part::Reading &first = log.readings[0], &second = log.readings[1];
  CHECK(*first.time == near(90.0 * s, 1e-12));
  CHECK(in(first.water.band->high - first.water.band->low, K) == near(6.0, 1e-9));
  CHECK(*first.smokebox == near(78.4532 * Pa, 1e-6));  // 9.80665 Pa each: conventional millimetre of water
  CHECK_FALSE(first.gauge);
  CHECK(second.gauge.band->value.above_barometer == near(1.2 * bar, 1e-12));
  CHECK(*second.fuel == near(11.0 * g, 1e-12));
}

TEST_CASE("faults of a log, each with its place and what to write instead") {
  struct Row {
    std::string text, expected;
  };
  const Row rows[] = {
      {"day: 3 May\n",
       "l.yaml:1:1: readings: a log needs readings\n"
       "    1 | day: 3 May\n"
       "      | ^\n"
       "        as in `readings: [ {time: 4 min, water: 58 degC} ]`"},
      {"readings: 5 min\n",
       "l.yaml:1:11: readings: expected a list, got '5 min'\n"
       "    1 | readings: 5 min\n"
       "      |           ^^^^^\n"
       "        as in [ {time: 4 min, water: 58 degC} ]"},
      {"readings: [ 5 min ]\n", "l.yaml:1:13: readings: 1. of the list: expected keys and values, got '5 min'"},
      {"readings: [ {time: 1 min, watter: 5 degC} ]\n",
       "l.yaml:1:27: readings.watter: 1. of the list: this key is not known\n"
       "    1 | readings: [ {time: 1 min, watter: 5 degC} ]\n"
       "      |                           ^^^^^^\n"
       "        did you mean `water`?"},
      {"fuel: 5 g\nreadings: [ {time: 1 min, water: 5 degC} ]\n",
       "l.yaml:1:7: fuel: expected a section of keys and values, got '5 g'"},
      {"gauge: 5 bar\nreadings: [ {time: 1 min, water: 5 degC} ]\n",
       "l.yaml:1:1: gauge: this key is not known\n"
       "    1 | gauge: 5 bar\n"
       "      | ^^^^^\n"
       "        `gauge` belongs under readings"},
      {"readings: [ {time: 1 min, water: 5 bar} ]\n",
       "l.yaml:1:36: readings.water: 1. of the list: expected a temperature, got '5 bar'"},
      {"readings: [ {time: 1 min} ]\n", "l.yaml:1:13: readings: 1. of the list: nothing was read here"},
      {"readings: [ {water: 50 degC} ]\n", "l.yaml:1:13: readings: 1. of the list: `time` is missing"},
      {"readings: [ {time: 1 min +- 5 s, water: 50 degC} ]\n",
       "l.yaml:1:20: readings.time: 1. of the list: expected a time without a spread"},
      {"readings:\n  - { time: 2 min, water: 50 degC }\n  - { time: 90 s, water: 60 degC }\n",
       "l.yaml:3:13: readings.time: 2. of the list: expected no less than 2 min on line 2, got '90 s'"},
      {"readings:\n  - { time: 2 min, fuel: 9 g }\n  - { time: 3 min, fuel: 8 g }\n",
       "l.yaml:3:26: readings.fuel: 2. of the list: expected no less than 9 g on line 2, got '8 g'"},
      {"readings: [ {time: 1 min, gauge: 20 bar} ]\n",
       "l.yaml:1:34: readings.gauge: 1. of the list: expected a gauge pressure from 0 bar to 15 bar, got '20 bar'"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const std::string said = log_complaint(row.text);
    CAPTURE(said);
    CHECK(said.find(row.expected) != std::string::npos);
  }
}
TEST_CASE("all faults of a log come in one pass") {
  const std::string said = log_complaint(
      "dya: x\nreadings:\n  - { time: 2 V, water: 50 degC }\n  - { time: 1 min }\n  - { tme: 2 min, water: 3 bar }\n");
  std::size_t faults = 0;
  for (std::size_t at = 0; (at = said.find("l.yaml:", at)) != std::string::npos; ++at) ++faults;
  CHECK(faults == 6);  // dya; 2 V; nothing read; tme, no time, 3 bar
}
TEST_CASE("a log of 201 readings is refused, one of 200 is not") {
  std::string list;
  for (int i = 0; i < 200; ++i) list += "  - { time: 1 min, water: 50 degC }\n";
  CHECK(log_complaint("readings:\n" + list).empty());
  CHECK(log_complaint("readings:\n" + list + "  - { time: 1 min, water: 50 degC }\n")
            .find("expected 1 to 200 of them, got 201") != std::string::npos);
}

TEST_CASE("tuned values come back from their file as they were") {
  const std::string text =
      "log: may.yaml\nday: \"3 May, dry\"\ntuned:\n  heat: 0.758 +- 0.031\nfuel:\n  catches_in: 131 s +- 20 s\n"
      "  voidage: 47 % +- 3 %\nfan:\n  rated:\n    current: 0.17 A +- 0.01 A\n";
  const TunedFile file = read_tuned({"t.yaml", text});
  CHECK(*file.tuned.heat == 0.758);
  CHECK(file.fuel.catches_in.band->low == near(111.0 * s, 1e-12));
  CHECK(file.fuel.voidage.band->high == near(0.50, 1e-12));
  CHECK_FALSE(file.tuned.fan_pressure);
  const std::string written_again = write_tuned(file);
  CHECK(written_again.find(text) != std::string::npos);
  CHECK(write_tuned(read_tuned({"t.yaml", written_again})) == written_again);
}
TEST_CASE("faults of a file of tuned values") {
  const auto said = [](const std::string& text) { return complaint(read_tuned, text); };
  CHECK(said("tuned: { haet: 0.8 }\n").find("did you mean `heat`?") != std::string::npos);
  CHECK(said("log: x\n").find("nothing is tuned here") != std::string::npos);
  CHECK(said("tuned: { heat: -0.8 }\n").find("expected more than 0, got '-0.8'") != std::string::npos);
  CHECK(said("fuel: { catches_in: 20 s +- 30 s }\n").empty());  // the spread may reach below zero
}
