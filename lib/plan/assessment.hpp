// The one answer: everything lumwright found out about a build. Every surface is a view of this.
#pragma once
#include "quantity/kind.hpp"
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lumwright {
enum class Verdict { pass, watch, fail, unknown };
/// On which side of its limit a value should lie.
enum class Bound { at_most, at_least };

/// A number ready to be shown: the quantity, and the unit the user wrote for things of its kind (empty: no preference).
struct Measure {
  AnyQuantity quantity;
  std::string unit{};
};

struct Result {
  std::string key;                           // "draught.air_flow"
  std::variant<Measure, std::string> value;  // text only for power.stop_reason
  std::optional<Measure> low{}, high{};
};

/// One number that went into a check, for `explain`.
struct Term {
  std::string symbol, meaning;
  Measure value;
  std::string from;  // "engine.chimney.bore (written)", "gas.firebox (assumed)", "computed"
};

/// What one check found.
struct Finding {
  std::string id{}, title{};
  Verdict verdict = Verdict::unknown;
  std::optional<Measure> value{}, limit{};
  Bound bound = Bound::at_most;
  std::string why{};       // one or two sentences with the numbers in them
  std::string action{};    // what to do; empty on a plain pass
  std::string source{};    // where the rule or equation comes from
  std::string standing{};  // standard, secondary, derived, measured, memory, practice, estimate
  std::string formula{};
  std::vector<Term> terms{};
  std::vector<std::string> missing{};  // keys that would settle an unknown
};

struct Assumed {
  std::string key, value, band, why, source, standing;
};

struct Caution {
  std::string id, title, text, authority;
};

/// Equal-length columns over time.
struct Series {
  std::string name;  // "raise", "discharge"
  struct Column {
    std::string name;
    Kind kind;
    std::vector<double> si;
  };
  std::vector<Column> columns;
};

/// Something that happens during the raise.
struct Event {
  std::string kind;  // "boils", "own_blower", "pack_stops", ...
  Duration time;
};

struct Assessment {
  std::string build;  // its name
  std::string file;
  std::string tuned{};  // the file of measured values that was used, if any
  Verdict verdict = Verdict::unknown;
  std::vector<Result> results;
  std::vector<Finding> checks;
  std::vector<Assumed> assumed;
  std::vector<Caution> cautions;
  std::vector<Series> series;
  std::vector<Event> events{};  // of the raise, in the order of time
};

const char* verdict_word(Verdict verdict);  // "pass", "watch", "fail", "unknown"
const Result* find_result(const Assessment& assessment, std::string_view key);
const Finding* find_check(const Assessment& assessment, std::string_view id);
}  // namespace lumwright
