#include "commands.hpp"

namespace lumwright::cli {
namespace {
constexpr std::string_view manual = R"(lumwright: plans the fan that raises steam in a small locomotive

  lumwright check FILE        judge a build
  lumwright explain CHECK FILE
                              show how one check came about
  lumwright trace FILE        the raise through time, for a spreadsheet
  lumwright tune FILE LOG     learn from a measured lighting-up
  lumwright draw FILE -o DIR  1:1 templates for tin and brass, to print and cut
  lumwright sheet FILE        what to measure, cut, drill, and in which order
  lumwright choose BIN        which fan, pack, step-up and tube for which engine
  lumwright bench READINGS    the curve of an unmarked fan from a shop-made test
  lumwright new FILE          write a description to fill in
  lumwright units             list the units that may be written
  lumwright schema            print the JSON Schema of descriptions
  lumwright help COMMAND      more on one command

Purpose
  A small coal- or charcoal-fired steam locomotive has no draught until it has
  steam. To raise steam a small electric fan sits on its chimney. Lumwright
  takes a description of engine, adapter, fan and battery and tells you, before
  metal is cut, whether the fan pulls enough air, how long the battery lasts and
  whether the tube fits the chimney when it is cold and when it is hot. Each
  answer comes with its limit, the reason, what to do and a source.

Where to start
  lumwright new mine.yaml     writes a description with every key explained
  lumwright check mine.yaml   judges it
  lumwright explain fit.hot mine.yaml
                              shows where one verdict comes from
  Write what you know and leave the rest out. What is taken in its place is
  listed in the report, and a check that cannot do without it says so.

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
  --samples 1000              in how many worlds every value that is not known
                              for sure is drawn from its spread (usual: 1000);
                              0 for none, and for no bands
  --seed 1                    other worlds (usual: 1); the same seed gives the
                              same answer, to the last letter
Options of check, explain and trace
  --untuned                   leave out what was tuned: mine.tuned.yaml beside
                              mine.yaml is read by itself when it is there
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

  Reads the description and reports: the verdict; air flow, suction, running
  time and clearances; each check with its limit, the reason, what to do and the
  source; what was assumed; and the cautions that apply.

  Figures in brackets are bands: eight of ten worlds lie between. A check that
  passes as described, but holds in fewer than nine worlds of ten, is to be
  watched; in fewer than five, it fails. The report names what widens the answer
  most, and what to measure next.

  --format text | json        a page to read, or one JSON object in SI units
  --samples N                 worlds to try (usual: 1000; 0 for no bands)
  --seed N                    other worlds (usual: 1)
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright check mine.yaml
  lumwright check --units imperial mine.yaml
  lumwright check --format json mine.yaml > mine.json
  lumwright check - < mine.yaml

Leaves with 0 when nothing fails, 1 when a check fails, 2 when the description
cannot be used. Faults of a description are all shown at once, with their lines.
)";
constexpr std::string_view explain_page = R"(lumwright explain CHECK FILE: show how one check came about

  Shows the question, the formula, every number in it with where it came from,
  the result against its limit, where the rule comes from, and how sure it is.
  The name of a check stands in brackets behind its title in the report.

  --samples N                 worlds to try (usual: 1000; 0 for no bands)
  --seed N                    other worlds (usual: 1)
  --units as-written | metric | imperial
  --colour auto | always | never

Example
  lumwright explain fit.hot mine.yaml

Leaves with 0, or with 2 when there is no such check.
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
  --untuned                   leave out what was tuned

Examples
  lumwright trace mine.yaml > mine.csv
  lumwright trace --json mine.yaml > mine.json
  lumwright trace --series discharge mine.yaml

Leaves with 0; with 1 when the series cannot be worked out, and says which keys
are missing; with 2 when the description cannot be used.
)";
constexpr std::string_view tune_page = R"(lumwright tune FILE LOG: learn from a measured lighting-up

  Brings the model to what you read off while you raised steam, and keeps what
  it learnt beside the description: mine.tuned.yaml beside mine.yaml. From then
  on check, explain and trace use it and say so; --untuned leaves it out.
  It moves only what the readings determine: the heat that reaches the water,
  the time until the whole fire burns, the gaps in the fire, the pressure and
  the current of the fan. Each comes with what is left of its uncertainty; the spreads together
  hold all of them with 95 %.
  Readings that determine nothing, or cannot tell two of these apart, change
  no file; the complaint says what else to read.

  A log holds
  name, day                   any short text
  place                       air and barometer of that day, as in FILE
  water                       water put in, weighed
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
    - { time: 2 min, water: 21 degC, smokebox: 9 mmH2O }
    - { time: 4 min, water: 49 degC }
    - { time: 6 min, water: 83 degC, fuel: 9 g }

Leaves with 0; with 1 when nothing can be tuned, and says why; with 2 when FILE
or LOG cannot be used.
)";
constexpr std::string_view draw_page = R"(lumwright draw FILE -o DIR: 1:1 templates for tin and brass

  Writes into the folder DIR, which is made if it is not there:
    templates.pdf             every part at true size, to print at 100 %, check
                              with the two bars, and stick on the metal
    templates-1.svg ...       the same, one sheet each
    flange_mm.dxf ...         each part for a machine (DXF R12, millimetres)
    holes.csv                 co-ordinates of every hole, about the middle of
                              the part and from the edges that touch it
    sheet.txt                 the build sheet, as `lumwright sheet` prints it
  Files of these names are replaced, others are left alone. A build that fails
  a check of fit or making (fit.*, make.*) is not drawn, unless as a draft. The
  screw holes of a fan whose sizes no table fixes are drawn only when the
  description says `measured: yes` under fan.holes.

  --paper A4 | Letter         the paper you print on (usual: A4)
  --scale-x 99.2 mm           what the 100 mm bar across the paper measures on
  --scale-y 150.4 mm          your print, and the 150 mm bar along it: the next
                              print comes out true. Not for DXF
  --draft                     draw what fails as well, with DRAFT across it
  --untuned                   leave out what was tuned

Examples
  lumwright draw mine.yaml -o bench
  lumwright draw mine.yaml -o bench --paper Letter --scale-x "99.5 mm"

Leaves with 0; with 1 when the build is not to be drawn, and says why; with 2
when the description or an option cannot be used.
)";
constexpr std::string_view sheet_page = R"(lumwright sheet FILE: what goes to the bench

  Prints what to measure before you cut, the cut list, the drill list in order
  of size with pilot and step drills, taps and screws, where every hole lies,
  and the order of work, with the cautions at the step where they bite.

  --units as-written | metric | imperial
  --colour auto | always | never
  --untuned                   leave out what was tuned

Example
  lumwright sheet mine.yaml > bench.txt

Leaves with 0; with 1 when the description has nothing to make in it.
)";
constexpr std::string_view choose_page = R"(lumwright choose BIN: which fan, pack, step-up and tube

  Tries every combination of what lies in the bin for each engine of the shed,
  and ranks those that do what each engine wants: minutes to steam, light-ups on
  one charge, mass. Times too close to tell apart share a place. It names the
  one unit that serves every engine, with a tube for each; the combinations that
  nothing beats on all three; and in a word why each other one loses.

  A bin holds the parts of a description as lists
    fans, packs, step_ups, tubes, engines
                              each item with a `name` and the keys of its part
    place, fuel, adapter, supply, want
                              at the top: for every engine that says nothing
    count                     how many there are: two fans may be a pair
    pairs: yes                two like fans in series or side by side as well
    drawers, from             loose cells that packs are made from: none is
                              used twice in one unit
    step_ups: [ none, ... ]   none: the fan straight on the pack
    lower_to                  a lower output once steam is near
    tubes: stock              tubes off the shelf, by the table of stock sizes

  --format text | json | csv
  --units as-written | metric | imperial
  --colour auto | always | never

Example
  lumwright choose shed.yaml

Leaves with 0; with 2 when the bin cannot be used.
)";
constexpr std::string_view bench_page = R"(lumwright bench READINGS: the curve of an unmarked fan

  Works out a fan's curve from a test made with a box, plates with sharp holes
  and a U-tube: corrected to air of 1.2 kg/m3 and to the rated voltage, with its
  band, and with warnings of a box too small, a leak, readings out of range. The
  last lines it prints go into a description as they are.
  `lumwright new --readings FILE` writes a file of readings to fill in.

  --box                       how to make the test box for this fan, and what
                              each shortcut costs in accuracy
  -o DIR                      everything into a folder: the lines for the
                              description, CSV, JSON, the page, the test box,
                              and its orifice plates at true size
  --format text | json | csv
  --paper A4 | Letter, --scale-x, --scale-y
                              as in `lumwright help draw`
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright new --readings fan.yaml
  lumwright bench --box fan.yaml
  lumwright bench fan.yaml -o fan-test

Leaves with 0; with 1 when no curve follows from the readings; with 2 when they
cannot be used.
)";
constexpr std::string_view new_page = R"(lumwright new FILE: write a description to fill in

  Writes a description in which every key is explained. A file that is there
  already is left alone and the command leaves with 2. With - for FILE the
  description goes to standard output.

  --readings                  readings of a shop-made fan test instead, for
                              `lumwright bench`

Example
  lumwright new mine.yaml
)";
constexpr std::string_view units_page = R"(lumwright units: list the units that may be written

  Lists every unit by what it measures, and the forms in which a number may be
  written: fractions, spreads, per cent.
)";
constexpr std::string_view schema_page = R"(lumwright schema: print the JSON Schema of descriptions

  For editors that complete keys and mark mistakes while you type.

Example
  lumwright schema > build.schema.json
)";
constexpr std::string_view help_page = R"(lumwright help COMMAND: more on one command
)";

struct Page {
  std::string_view topic, text;
};
constexpr Page pages[] = {{"", manual},          {"check", check_page},   {"explain", explain_page},
                          {"trace", trace_page}, {"tune", tune_page},     {"draw", draw_page},
                          {"sheet", sheet_page}, {"choose", choose_page}, {"bench", bench_page},
                          {"new", new_page},     {"units", units_page},   {"schema", schema_page},
                          {"help", help_page}};
}  // namespace

Answer help(const Options& options) {
  for (const Page& page : pages)
    if (page.topic == options.topic) return {std::string(page.text)};
  throw std::logic_error("no help on " + options.topic);
}
Answer version(const Options&) { return {"lumwright " LUMWRIGHT_VERSION "\n"}; }
}  // namespace lumwright::cli
