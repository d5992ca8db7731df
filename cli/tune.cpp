#include "tune/tune.hpp"
#include "commands.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "quantity/errors.hpp"
#include "report/tuned.hpp"
#include "season_beside.hpp"
#include "shelf.hpp"
#include "style.hpp"
#include "tuned_beside.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct TuneOptions {
  std::string file, log, kept_in;
  report::TextStyle style;
  Shelf* shelf;
};
TuneOptions tune_options(const Words& words) {
  TuneOptions options{words.needed("FILE"), words.text("LOG"), "", style_of(words), words.around.shelf};
  if (options.file == "-")
    throw UsageError("`tune` keeps its result beside the description, so FILE must be a file and not `-`");
  options.kept_in = tuned_name(options.file);
  if (options.log.empty()) options.log = season_to_read(options.shelf, options.file, "tune");
  if (same_file(options.log, options.kept_in))
    throw UsageError("`tune` writes its result to " + input::printable(options.kept_in) +
                     ", so LOG cannot be that file");
  return options;
}
/// Where there is a season and a log was taken in its place.
std::string left_beside(const TuneOptions& options) {
  const std::string season = season_name(options.file);
  if (options.log == season || !file_exists(options.shelf, season)) return "";
  return fmt::format("\n{} was left out; all of it: lumwright tune {}\n", input::printable(season),
                     input::printable(options.file));
}
Answer run_tune(const Words& words) {
  const TuneOptions options = tune_options(words);
  const Learning from = learning_from(options.shelf, options.file, options.log);
  try {
    const tune::TuneResult result = tune::tune(from.build, from.season, from.usual());
    replace_file(options.shelf, options.kept_in, description::write_tuned(tune::file_of(result, from.season)));
    return {report::tuned_report(result, from.season, options.kept_in, options.style) + left_beside(options)};
  } catch (const ModelError& e) {
    throw report::NoAnswer("nothing is tuned: " + std::string(e.what()));
  }
}
}  // namespace

const CommandRow tune_command{.word = "tune",
                              .arguments = "FILE LOG",
                              .usage = "tune FILE [LOG]",
                              .brief = "learn from measured lighting-ups",
                              .about = R"(  Brings the model to what you read off while you raised steam, and keeps what
  it learnt beside the description: mine.tuned.yaml beside mine.yaml. From then
  on check, explain and trace use it and say so; --untuned leaves it out.
  Without LOG it learns from mine.season.yaml, which `lumwright log` writes: the
  more lighting-ups, the better it knows the engine, how it moves from day to
  day, and whether soot, leaks and an aging pack make it worse. LOG is a single
  log in its place, or another season.
  It moves only what the readings determine: the heat that reaches the water,
  the time until the whole fire burns, the gaps in the fire, the air that leaks
  into the smokebox, the pressure and the current of the fan. Each comes with
  its spread at the next lighting-up; the spreads together hold all of them
  with 95 %. A reading that the others speak against is named and has no say.
  Readings that determine nothing change no file; the complaint says what else
  to read.

  A log holds
  name, day                   any short text
  place                       air and barometer of that day, as in FILE
  water                       water put in, weighed; 1 g is 1 ml
  started_at                  its temperature when the fan was started
  readings                    a list in the order of time, each with a time
                              since the fan was started, and any of
    water                     temperature of the water
    gauge                     pressure, the air let out of the boiler
    smokebox                  depression by U-tube
    fan_current               current through the fan
    pack_voltage              at work, where the leads of the pack end
    fuel                      burnt so far, weighed
  A spread (+-) is taken as two standard deviations of the reading; without one
  a thermometer is good for 2 K, a gauge for 0.1 bar, a U-tube for 0.5 mmH2O, a
  multimeter for 2 %, a scale for 1 g. Stop when the fan comes off. The best
  single log is the water from 50 to 90 degC, every minute, its mass weighed.
)",
                              .below = R"(Example of a log
  day: 2026-05-03, dry
  water: 428 ml
  started_at: 14 degC
  readings:
    - { time: 2 min, water: 29 degC, smokebox: 1.2 mmH2O }
    - { time: 4 min, water: 63 degC }
    - { time: 6 min, water: 94 degC, fuel: 11 g }

Exit status: 0, 1 when nothing can be tuned, and says why, 2 when FILE
or LOG cannot be used.
)",
                              .run = run_tune};
}  // namespace lumwright::cli
