#include "commands.hpp"
#include "help_pages.hpp"
#include "manual_roff.hpp"
#include <vector>

namespace lumwright::cli {
namespace {
constexpr std::string_view manual = R"(lumwright: plans the fan that raises steam in a small locomotive

  lumwright check FILE        judge a build
  lumwright sweep FILE KEY FROM..TO
                              the answers along a key or two
  lumwright compare FILE FILE builds side by side
  lumwright explain CHECK FILE
                              show how one check came about
  lumwright trace FILE        the raise through time, for a spreadsheet
  lumwright tune FILE LOG     learn from a measured lighting-up
  lumwright report FILE -o DIR
                              one page to read at the bench, with pictures
  lumwright draw FILE -o DIR  1:1 templates for tin and brass, to print and cut
  lumwright sheet FILE        what to measure, cut, drill, and in which order
  lumwright choose BIN        which fan, pack, step-up and tube for which engine
  lumwright bench READINGS    the curve of an unmarked fan from a shop-made test
  lumwright new FILE          write a description to fill in
  lumwright guide             the way from scrap bin to steam, with pictures
  lumwright units             list the units that may be written
  lumwright schema            print the JSON Schema of descriptions
  lumwright completion SHELL  words that bash, zsh or fish can complete
  lumwright help COMMAND      more on one command

Purpose
  A small coal- or charcoal-fired steam locomotive has no draught until it has
  steam. To raise steam a small electric fan sits on its chimney. Lumwright
  takes a description of engine, adapter, fan and battery and tells you, before
  metal is cut, whether the fan pulls enough air, how long the battery lasts and
  whether the tube fits the chimney when it is cold and when it is hot. Each
  answer comes with its limit, the reason, what to do and a source.

Where to start
  lumwright guide             ten short pages to read first
  lumwright new --ask mine.yaml
                              asks what matters most, and writes a description
  lumwright new mine.yaml     writes one with every key explained
  lumwright check mine.yaml   judges it
  lumwright explain fit.hot mine.yaml
                              shows where one verdict comes from
  Take the `#` away from what you know and leave the rest behind it. What is
  taken in its place is listed in the report, and a check that cannot do without
  it says so.

Options of check, explain and tune
  --units as-written          answer in the units of the description (usual)
  --units metric              in mm, l/min, bar, degC
  --units imperial            in inches and thou, CFM, psi, degF
  --colour auto               colour on a terminal (usual); --color is the same
  --colour always, never      colour in any case, or in none
Options of check
  --format text               a page to read (usual)
  --format json               one JSON object, all numbers in SI
Options of check and explain
  --samples 1000              in how many samples every value that is not known
                              for sure is drawn from its spread (usual: 1000);
                              0 for none, and for no bands
  --seed 1                    other samples (usual: 1); the same seed gives the
                              same answer on one kind of machine
Options of check, explain and trace
  --untuned                   leave out what was tuned: mine.tuned.yaml beside
                              mine.yaml is read by itself when it is there
  --set KEY=VALUE             as if the description said so; may be repeated
Options of draw
  -o DIR                      the folder that the files go to
  --paper, --scale-x, --scale-y, --draft
                              see `lumwright help draw`
Options of trace
  --csv                       a table with a line for each time (usual)
  --json                      one JSON object with the events as well
  --series raise, discharge   from cold to pressure (usual), or the pack alone

  FILE may be - for standard input.
  -h, --help                  this manual; behind a command, more on it
  --version                   the version

Exit status
  0   every check that could be judged passes, or is to be watched
  1   at least one check fails
  2   the arguments or the description cannot be used
  3   a mistake of the program, or the answer could not be written

Environment
  NO_COLOR                    when it is set to anything, no colour by itself
  TERM                        when it is dumb, no colour by itself

Lumwright never judges a boiler safe. Use the fan out of doors only, with water
in the boiler, under the boiler code that holds where you are.
)";
constexpr std::string_view check_page = R"(lumwright check FILE: judge a build

  Reads the description and tells on one screen: the verdict; the six answers
  that everybody asks for; what to do first, each change tried on the whole
  build before it is named; what to write or to measure first; and what can
  hurt. With --full each check with its limit, the reason, what to do and the
  source; what was assumed; and every caution that applies, whole.

  Figures in brackets are bands: eight of ten samples lie between. A check that
  passes as described, but fails in more than one sample of ten, is to be
  watched; in more than five, it fails. The report names what widens the answer
  most, and what to measure next.

  --full                      everything, not one screen
  --only PART                 one group of checks, as in fit, or one, as in
                              fit.hot, in full
  --set KEY=VALUE             as if the description said so; may be repeated
  --format text | json        a page to read, or one JSON object in SI units
  --samples N                 samples to try (usual: 1000; 0 for no bands)
  --seed N                    other samples (usual: 1)
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright check mine.yaml
  lumwright check --full mine.yaml
  lumwright check --only fit mine.yaml
  lumwright check --set adapter.tube.length="46 mm" mine.yaml
  lumwright check --units imperial mine.yaml
  lumwright check --format json mine.yaml > mine.json
  lumwright check - < mine.yaml

Exit status: 0 when nothing fails, 1 when a check fails, 2 when the description
cannot be used. Faults of a description are all shown at once, with their lines.
)";
constexpr std::string_view explain_page = R"(lumwright explain CHECK FILE: show how one check came about

  Shows the question, the formula, every number in it with where it came from,
  the result against its limit, where the rule comes from, and how sure it is.
  The name of a check stands in brackets behind its title in the report.

  --samples N                 samples to try (usual: 1000; 0 for no bands)
  --seed N                    other samples (usual: 1)
  --units as-written | metric | imperial
  --colour auto | always | never

Example
  lumwright explain fit.hot mine.yaml

Exit status: 0, 2 when there is no such check.
)";
constexpr std::string_view trace_page = R"(lumwright trace FILE: the raise through time

  Prints water temperature, gauge pressure, air flow, gas at the fan, voltage
  and current of the pack against time, from cold to working pressure. All
  numbers are in SI; the head of the table names the units. What is not
  described leaves its cells empty.

  --csv                       a table for spreadsheets (usual)
  --json                      one JSON object: every series, and the events
                              (boils, own_blower, pack_stops, ...)
  --series raise | discharge  the raise (usual), or the pack over one charge
  --units metric | imperial   in such units, one a column; without it, and in
                              JSON, in SI
  --untuned                   leave out what was tuned
  --set KEY=VALUE             as if the description said so; may be repeated

Examples
  lumwright trace mine.yaml > mine.csv
  lumwright trace --json mine.yaml > mine.json
  lumwright trace --series discharge mine.yaml

Exit status: 0, 1 when the series cannot be worked out, and says which keys
are missing, 2 when the description cannot be used.
)";
constexpr std::string_view tune_page = R"(lumwright tune FILE LOG: learn from a measured lighting-up

  Brings the model to what you read off while you raised steam, and keeps what
  it learnt beside the description: mine.tuned.yaml beside mine.yaml. From then
  on check, explain and trace use it and say so; --untuned leaves it out.
  It moves only what the readings determine: the heat that reaches the water,
  the time until the whole fire burns, the gaps in the fire, the pressure and
  the current of the fan. Each comes with what is left of its uncertainty; the
  spreads together hold all of them with 95 %.
  Readings that determine nothing, or cannot tell two of these apart, change
  no file; the complaint says what else to read.

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

  --units as-written | metric | imperial
  --colour auto | always | never

Example of a log
  day: 3 May, dry
  water: 428 ml
  started_at: 14 degC
  readings:
    - { time: 2 min, water: 29 degC, smokebox: 1.2 mmH2O }
    - { time: 4 min, water: 63 degC }
    - { time: 6 min, water: 94 degC, fuel: 11 g }

Exit status: 0, 1 when nothing can be tuned, and says why, 2 when FILE
or LOG cannot be used.
)";

const std::vector<ManualPage>& pages() {
  static const std::vector<ManualPage> all = {{"", manual},
                                              {"check", check_page},
                                              {"sweep", sweep_page},
                                              {"compare", compare_page},
                                              {"explain", explain_page},
                                              {"trace", trace_page},
                                              {"tune", tune_page},
                                              {"report", report_page},
                                              {"draw", draw_page},
                                              {"sheet", sheet_page},
                                              {"choose", choose_page},
                                              {"bench", bench_page},
                                              {"new", new_page},
                                              {"guide", guide_page},
                                              {"units", units_page},
                                              {"schema", schema_page},
                                              {"completion", completion_page},
                                              {"help", help_page}};
  return all;
}
}  // namespace

Answer help(const Options& options) {
  if (options.roff) return {manual_roff(pages(), LUMWRIGHT_VERSION)};
  for (const ManualPage& page : pages())
    if (page.topic == options.topic) return {std::string(page.text)};
  throw std::logic_error("no help on " + options.topic);
}
Answer version(const Options&) { return {"lumwright " LUMWRIGHT_VERSION "\n"}; }
}  // namespace lumwright::cli
