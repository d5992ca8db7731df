// The one answer: everything lumwright found out about a build. Every surface is a view of this.
#pragma once
#include "data/basis.hpp"
#include "boiler/raise_event.hpp"
#include "model/assumed.hpp"
#include "model/origin.hpp"
#include "model/result.hpp"
#include "quantity/kind.hpp"
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lumwright::plan {
enum class Verdict { pass, watch, fail, unknown };
/// On which side of its limit a value should lie.
enum class Bound { at_most, at_least };
/// Which of a check's two limits is meant: beyond the one it no longer passes, beyond the other it fails.
enum class LimitName { to_pass, not_to_fail };

/// One number that went into a check, for `explain`.
struct Term {
  std::string symbol, meaning;
  model::Measure value;
  model::Origin origin = model::Origin::computed;
  std::string key{};  // "engine.chimney.bore"; none of what is computed
};

/// The least change of the build that was tried and clears a check, with no other failing for it.
struct Move {
  std::string words;                  // "a box 93 mm wide"
  std::vector<std::string> settings;  // "adapter.box.diameter=93 mm" each, as `--set` takes them
  Verdict verdict = Verdict::pass;    // of the check then: to watch, where it failed and nothing makes it pass
  std::optional<model::Measure> value{};  // what the check then finds; nothing where that is the change itself
  std::optional<model::Measure> limit{};  // beside which it then passes
  Bound bound = Bound::at_most;
  std::optional<model::Measure> steam{};  // time to own-blower pressure then
};
/// What one check found.
struct Finding {
  std::string id{}, title{};
  Verdict verdict = Verdict::unknown;
  std::optional<model::Measure> value{}, limit{};
  Bound bound = Bound::at_most;
  LimitName limit_name = LimitName::to_pass;  // of the limit that decided
  std::string why{};       // one or two sentences with the numbers in them
  std::string action{};    // what to do; empty on a plain pass
  data::Basis basis{};
  std::string formula{};
  std::vector<Term> terms{};
  std::vector<std::string> missing{};  // keys that would settle an unknown
  std::optional<double> holds{};       // share of the samples that answer it in which it does not fail
  std::size_t answered = 0;            // samples that answer it, where any were tried
  std::string stands_still{};          // the part of the build that does not work at all, so that nothing can be judged
  std::string told_by{};               // the check that says why it does not
  std::optional<Move> move{};          // what clears it
  bool moves_tried = false;            // changes were tried, whether one clears it or none
};

/// Of a key that looks like a slip of the pen.
struct Remark {
  std::string key, text;
};

struct Caution {
  std::string id, title, text, authority;
  std::string near{};  // the part that it is told beside: everything, air, steam, pack, making
  std::vector<std::string> steps{};  // of the build sheet, where it bites: ids of report/detail/build_sheet_steps.hpp
  std::string brief{};   // one sentence, of what can kill: told even where the rest is told by title
  bool general = false;  // it applies to every build
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
  boiler::RaiseEventKind kind;
  Duration time;
};

/// An input that widens an answer.
struct Widening {
  std::string key, meaning;
  double share;  // of the answer's variance, first order
  model::Measure value, low, high;
};
/// A measurement that would narrow an answer.
struct Narrowing {
  std::string id, what, of, within, needs, tool, how, write;
  data::Basis basis{};
  double left;  // width of the answer's band afterwards, over what it is now
};
/// What one answer hangs on.
struct Sensitivity {
  std::string answer;                 // key of a result
  std::vector<Widening> widest;       // at most three, the greatest first
  std::vector<Narrowing> narrowings;  // the best first
};
/// What trying many samples has shown.
struct Bands {
  std::size_t samples;
  std::uint64_t seed;
  std::size_t drawn;                       // inputs with a spread
  std::optional<double> edge_error{};      // standard error of the first answer's band edges, over the band's width
  double share_error;                      // standard error of a share of one half, at most
  std::vector<Sensitivity> sensitivities;  // the first is the chief answer
};

struct Assessment {
  std::string build;  // its name
  std::string file;
  std::string tuned{};  // the file of measured values that was used, if any
  Verdict verdict = Verdict::unknown;
  std::vector<model::Result> results;
  std::vector<Finding> checks;
  std::vector<model::Assumed> assumed;
  std::vector<Caution> cautions;
  std::vector<Series> series;
  std::vector<Event> events{};  // of the raise, in the order of time
  std::optional<Bands> bands{};
  std::vector<Remark> remarks{};  // what to look at in the description before anything else is believed
};

/// Holds that every number is one. Throws UnsoundNumber that names the result, check or series that is not.
void require_sound(const Assessment& assessment);

const char* limit_words(LimitName name);    // "to pass", "or it fails"
const char* verdict_word(Verdict verdict);  // "pass", "watch", "fail", "unknown"
const model::Result* find_result(const Assessment& assessment, std::string_view key);
const Finding* find_check(const Assessment& assessment, std::string_view id);
}  // namespace lumwright::plan
