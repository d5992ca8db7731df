#include "description/log.hpp"
#include "description/detail/log_rules.hpp"
#include "description/detail/part_reader.hpp"

namespace lumwright::description {
namespace {
/// Sees every value of one reading.
struct ReadingCheck {
  std::vector<input::Fault>& faults;
  std::string list, item;
  int values = 0;
  bool timed = false;

  template <class Q>
  void operator()(Field field, const Given<Q>& given, Limits) {
    const bool mentioned = given || given.at.column > 1;  // a faulty value has had its complaint
    if (field.key == "time") timed = mentioned;
    values += mentioned && field.key != "time";
    if (!given) return;
    if (field.key == "time" && given.has_spread)
      faults.push_back({given.at, list + ".time", item + "expected a time without a spread",
                        "give the spread to what was read at that time"});
  }
};

/// Finds values that fall where they can only rise.
template <class Q>
class Rising {
 public:
  Rising(std::string key, std::string help) : key_(std::move(key)), help_(std::move(help)) {}
  void see(const Given<Q>& given, const std::string& item, std::vector<input::Fault>& faults) {
    if (!given) return;
    if (before_ && *given < **before_)
      faults.push_back({given.at, key_,
                        fmt::format("{}expected no less than {} on line {}, got '{}'", item, written(*before_),
                                    before_->at.line, written(given)),
                        help_});
    before_ = given;
  }

 private:
  std::string key_, help_;
  std::optional<Given<Q>> before_;
};

std::vector<input::Fault> faults_of_one(const Log& log) {
  std::vector<input::Fault> faults = faults_of_readings(log, "", "");
  if (log.readings.empty())
    faults.push_back({{}, "readings", "a log needs readings", "as in `readings: [ {time: 4 min, water: 58 degC} ]`"});
  return faults;
}
}  // namespace

std::vector<input::Fault> faults_of_readings(const Log& log, const std::string& where, const std::string& before) {
  std::vector<input::Fault> faults;
  Rising<Duration> time(where + "readings.time", "readings stand in the order of time");
  Rising<Mass> fuel(where + "readings.fuel", "it counts from the start");
  for (std::size_t i = 0; i < log.readings.size(); ++i) {
    const part::Reading& reading = log.readings[i];
    ReadingCheck check{faults, where + "readings", fmt::format("{}{}. of the list: ", before, i + 1)};
    part::Reading::fields(reading, check);
    if (!check.timed)
      faults.push_back({reading.at, where + "readings", check.item + "`time` is missing", "as in `time: 4 min`"});
    if (check.values == 0)
      faults.push_back({reading.at, where + "readings", check.item + "nothing was read here",
                        "it may hold water, gauge, smokebox, fan_current, pack_voltage, fuel"});
    time.see(reading.time, check.item, faults);
    fuel.see(reading.fuel, check.item, faults);
  }
  return faults;
}

Log read_log(const input::Source& source) {
  Log log = read_parts<Log>(source, "a log", "day: 3 May", faults_of_one);
  log.file = source.name;
  return log;
}
}  // namespace lumwright::description
