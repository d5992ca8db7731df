#include "manual.hpp"
#include "option_table.hpp"
#include <algorithm>
#include <vector>

namespace lumwright::cli {
namespace {
constexpr std::size_t right = 30;  // the column of what a thing is

/// A line of two columns: what is written, and what it is.
std::string two_columns(std::string_view left, std::string_view about) {
  std::string text = "  " + std::string(left);
  if (about.empty()) return text + "\n";
  if (text.size() >= right) text += "\n" + std::string(right, ' ');
  while (text.size() < right) text += ' ';
  for (const char c : about) text += c == '\n' ? "\n" + std::string(right, ' ') : std::string(1, c);
  return text + "\n";
}
std::string left_of(const OptionRow& row) {
  if (!row.left.empty()) return std::string(row.left);
  const std::string name(row.first_name());
  return row.value.empty() ? name : name + " " + std::string(row.value);
}
/// The options of a command as its page tells them.
std::string told_options(const CommandRow& command) {
  std::vector<const OptionRow*> rows = options_of(command.word);
  const std::string first = std::string(command.first) + " ";
  std::stable_sort(rows.begin(), rows.end(), [&](const OptionRow* one, const OptionRow* other) {
    return first.find(std::string(one->first_name()) + " ") < first.find(std::string(other->first_name()) + " ");
  });
  std::string text;
  for (const OptionRow* row : rows)
    if (!row->elsewhere) text += two_columns(left_of(*row), row->help);
  return text;
}
constexpr std::string_view for_all = R"(
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
}  // namespace

std::string first_page() {
  std::string text = "lumwright: plans the fan that raises steam in a small locomotive\n\n";
  for (const CommandRow* row : commands()) text += two_columns("lumwright " + std::string(row->usage), row->brief);
  return text + std::string(for_all);
}
std::string page_of(const CommandRow& command) {
  std::string text = "lumwright ";
  text += command.headline.empty() ? std::string(command.usage) + ": " + std::string(command.brief)
                                   : std::string(command.headline);
  text += "\n";
  for (const std::string& part : {std::string(command.about), told_options(command), std::string(command.below)})
    if (!part.empty()) text += "\n" + part;
  return text;
}
}  // namespace lumwright::cli
