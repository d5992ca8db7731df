// Choosing from a bin: every combination of fan, pack, step-up and tube ranked for every engine of a shed, the one unit
// that serves them all, and why the others lose.
#pragma once
#include "description/bin.hpp"
#include "draught/fan_pair.hpp"
#include "model/tuning.hpp"
#include "plan/assessment.hpp"
#include "quantity/quantity.hpp"
#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::choose {
struct ChooseAsked {
  std::size_t places = 10;  // of every ranking; 1 and above
  unsigned threads = 2;     // of no influence on what comes out
  bool every = false;       // follow every combination to the end, and check none: for tests
  bool checked = true;      // without it the ranking is by times alone: for tests
  std::size_t samples = 0;  // in which the headlines are checked; at most `place_samples` for all else that is shown
  std::function<void(std::size_t done, std::size_t of)> progress{};  // called by the thread that called choose()
};

/// Why a combination is not among those shown, in the order in which it is looked for.
enum class Loss : unsigned char {
  none,
  lacking,         // the bin says too little to work it out
  tube_too_large,  // cold, with what heat and soot need
  tube_too_loose,  // it leaks round the tube
  seizes_hot,
  fan_stands,  // the voltage that reaches the fan does not turn it, or does not start it
  too_much_voltage,
  pack_too_weak,  // it cannot carry the load, start the fan, or its cells are asked too much
  cell_reversed,  // the weakest is driven backwards
  step_up_overloaded,
  step_up_runs_away,
  fuse_blows,
  cannot_be_lowered,  // there is no step-up that holds the lower output
  no_draught,
  fan_too_hot,
  fire_lifts,
  no_steam,  // not within four hours
  pack_stops_first,
  fails_check,  // of the full assessment
  too_slow,
  too_few_light_ups,
  outdone  // it does all that is wanted; others do it better
};
std::string_view id(Loss loss);     // "too_slow": for programs
std::string_view words(Loss loss);  // "too slow"

/// Where a combination's parts stand in the bin; `tube` counts EngineChoice::tubes.
struct Combination {
  std::size_t engine, fan, pack, step_up, tube;
  draught::FanPairing pairing;
  bool lowered;  // step-up turned down to its `lower_to` once the gauge moves
};
/// One that raises steam.
struct Candidate {
  Combination at;
  std::string fan, pack, step_up, tube;  // by name, as they are shown: "two grey fans in series"
  Duration to_steam;                     // from cold to the engine's own blower, or working pressure without one
  Duration runtime;                      // of one charge
  int light_ups;
  std::optional<Mass> mass;  // fan, pack and step-up, where all three are known
  bool in_time, enough;      // of what is wanted
  double time_spread = 0.0;  // share by which the time grows with its fan's curve, at the tenth of a hundred such fans
};
struct Place {
  Candidate candidate;
  std::size_t group;                   // 1 and up: candidates of one group cannot be told apart in time
  bool tied;                           // its group has others
  std::vector<std::string> fails;      // of what is wanted, the titles of the checks that it fails
  std::vector<std::string> watches{};  // titles of the checks that it passes with care, or that lack something
  std::vector<Candidate> equals{};     // the others of its group
  std::string sized{};                 // what was sized for it: "a fuse of 2 A"
  std::string description{};           // to `check` as it is
  std::set<std::string> cautions{};    // ids of those that apply
};
struct LossCount {
  Loss loss;
  std::size_t count;
};
/// What becomes of one thing of the bin.
struct ItemFate {
  std::string list, name;            // "fan", "grey fan"
  std::optional<std::size_t> place;  // the best of a combination that holds it, from 1
  bool on_front;
  Loss mostly;              // else: how far the best of the combinations that hold it got
  std::string elsewhere{};  // the engine on which it has its best place, where it has none here
};
/// One combination of `EngineChoice::judged`.
struct Judged {
  Duration to_steam;  // zero where it was not worked out
  int light_ups;      // likewise
  Loss loss;
};
/// One that raises steam and fails a check.
struct Barred {
  Candidate candidate;
  std::vector<std::string> fails;  // titles
};
struct EngineChoice {
  std::string engine;
  std::vector<std::string> lacking;  // keys without which nothing can be said; everything below is then empty
  std::vector<std::string> tubes;    // that were tried
  Duration within;
  double wanted;  // light-ups
  std::vector<Place> places;
  std::vector<Candidate> front;  // none is better in minutes, light-ups and mass at once; the fastest first
  std::vector<LossCount> losses;
  std::vector<ItemFate> items;
  std::vector<Judged> judged;    // by unit, then tube
  std::vector<Barred> barred{};  // what would have been among the first, had no check failed
  std::string tubes_to_buy{};    // where none of the tubes fits: what would
};

/// A fan with what drives it, whatever the engine.
struct Unit {
  std::size_t fan, pack, step_up;
  draught::FanPairing pairing;
  bool lowered;
  std::string fan_name, pack_name, step_up_name;
  std::optional<Mass> mass;
};
struct Serving {
  std::string engine;
  std::optional<Candidate> with;                // the tube that does best
  Loss loss;                                    // without one
  std::vector<std::string> fails{}, watches{};  // titles
  std::string sized{}, description{};
  std::set<std::string> cautions{};  // ids
};
struct UnitChoice {
  Unit unit;
  std::vector<Serving> engines;
  std::size_t served, contented;  // engines that get steam with nothing failing; that get all they want too
  double slowest;                 // greatest of time over time wanted, of those served
  int fewest;                     // light-ups, of those served
  std::size_t watches = 0;        // on all of them together
};
/// What went into it.
struct ChooseEffort {
  std::size_t combinations, raises, bounds, supplies, assessed = 0;
};
/// Samples in which places are checked that are not headlines.
inline constexpr std::size_t place_samples = 100;
struct Choice {
  std::string name, file;
  double told_apart_least = 0.0, told_apart_most = 0.0;  // shares by which times must differ to be told apart
  std::vector<Unit> units;
  std::vector<EngineChoice> engines;
  std::vector<UnitChoice> for_all;  // the best unit first; empty for a single engine
  std::vector<std::string> shared;  // first choices that name one thing more often than it is there
  ChooseEffort effort;
  std::size_t samples = 0;          // in which the headlines were checked
  std::vector<plan::Caution>
      cautions{};  // that apply to anything that is shown; with nothing to show, to what is not known
};

/// What is shown was checked in full, as a description that reads back to the same numbers, and fails nothing but what
/// is wanted: first what does all that is wanted, then fewest checks to watch, then minutes, light-ups, mass.
/// Before that it ranks by what is wanted: in time and enough light-ups, then only in time, then only enough, then
/// neither. Within each, times that cannot be told apart form a group, the fastest first; in a group the lighter comes
/// first, then more light-ups, then less time, then the names. Two times for one engine are told apart when they differ
/// by more than what the curves of their fans leave open, each by where it comes from; what fire and boiler leave open
/// moves all of them alike, as one fan's curve does all that it drives. An unknown mass counts as heavier than any. Units for all engines: most engines served, most contented,
/// least of the greatest time over time wanted, most of the fewest light-ups, least mass, names. The same for any
/// number of threads and any order of the bin. Throws ModelError for more than `most_combinations`, std::logic_error
/// for no places.
Choice choose(const description::Bin& bin, const ChooseAsked& asked = {}, const model::Tuning* tuning = nullptr);

/// The combination as a description to `check`; of one that is lowered, with the full output. A pair's curve and
/// current are written as one fan's. Throws ModelError if a pair's curve is not known.
description::Build build_of(const description::Bin& bin, const Combination& combination);
}  // namespace lumwright::choose
