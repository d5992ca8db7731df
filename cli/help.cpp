#include "commands.hpp"

namespace lumwright::cli {
namespace {
constexpr std::string_view manual = R"(lumwright: plans the fan that raises steam in a small locomotive

  lumwright check FILE        judge a build
  lumwright explain CHECK FILE
                              show how one check came about
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

Options of check and explain
  --units as-written          answer in the units of the description (usual)
  --units metric              in mm, l/min, bar, degC
  --units imperial            in inches and thou, CFM, psi, degF
  --colour auto               colour on a terminal (usual); --color is the same
  --colour always, never      colour in any case, or in none
Options of check
  --format text               a page to read (usual)
  --format json               one JSON object, all numbers in SI

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

  --format text | json        a page to read, or one JSON object in SI units
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

  --units as-written | metric | imperial
  --colour auto | always | never

Example
  lumwright explain fit.hot mine.yaml

Leaves with 0, or with 2 when there is no such check.
)";
constexpr std::string_view new_page = R"(lumwright new FILE: write a description to fill in

  Writes a description in which every key is explained. A file that is there
  already is left alone and the command leaves with 2. With - for FILE the
  description goes to standard output.

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
constexpr Page pages[] = {{"", manual},          {"check", check_page},   {"explain", explain_page}, {"new", new_page},
                          {"units", units_page}, {"schema", schema_page}, {"help", help_page}};
}  // namespace

Answer help(const Options& options) {
  for (const Page& page : pages)
    if (page.topic == options.topic) return {std::string(page.text)};
  throw std::logic_error("no help on " + options.topic);
}
Answer version(const Options&) { return {"lumwright " LUMWRIGHT_VERSION "\n"}; }
}  // namespace lumwright::cli
