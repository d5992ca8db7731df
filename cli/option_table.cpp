#include "option_table.hpp"
#include "description/keys.hpp"
#include "report/screen.hpp"
#include <algorithm>

namespace lumwright::cli {
namespace {
std::vector<std::string> settings_to_complete() {
  std::vector<std::string> all;
  for (const description::Key& key : description::keys())
    if (!key.is_section) all.push_back(key.path + "=");
  return all;
}
std::vector<std::string_view> parts_between(std::string_view text, std::string_view between) {
  std::vector<std::string_view> parts;
  for (std::size_t end = 0; end != std::string_view::npos;) {
    end = text.find(between);
    parts.push_back(text.substr(0, end));
    if (end != std::string_view::npos) text.remove_prefix(end + between.size());
  }
  return parts;
}
constexpr std::string_view choice_sign = " | ";
constexpr std::string_view tries = "samples to try (usual: 1000; 0 for no bands)", other = "other samples (usual: 1)";

const std::vector<OptionRow> rows = {
    {.names = "--csv", .commands = {"trace"}, .help = "a table for spreadsheets (usual)"},
    {.names = "--json",
     .commands = {"trace"},
     .help = "one JSON object: every series, and the events\n(boils, own_blower, pack_stops, ...)"},
    {.names = "--series",
     .value = "raise | discharge",
     .commands = {"trace"},
     .help = "the raise (usual), or the pack over one charge"},
    {.names = "--format",
     .value = "text | json",
     .commands = {"check", "prove"},
     .help = "a page to read, or one JSON object in SI units",
     .usual = "text"},
    {.names = "--format",
     .value = "text | csv",
     .commands = {"sweep"},
     .help = "a page to read, or a table in SI units",
     .usual = "text"},
    {.names = "--format", .value = "text | json | csv", .commands = {"bench"}, .usual = "text"},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"sweep"},
     .help = "write page, table and a picture (SVG) into DIR: the\nchief answers along the key, or the minutes over\n"
             "both"},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"season"},
     .help = "write page, picture (SVG) and the readings that\nare not believed into DIR"},
    {.names = "-o,--output", .value = "DIR", .commands = {"report", "draw"}, .elsewhere = true},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"choose"},
     .help = "everything into a folder, which is made if it is\nnot there: choice.html, a page with a picture for\n"
             "each engine that needs no network and prints on\nA4; choice.txt, choice.json, choice.csv; and what\n"
             "is advised, as descriptions for `check`, `draw`\nand `report`: first-ENGINE.yaml and\n"
             "for-all-ENGINE.yaml. Files of these names are\nreplaced, others are left alone"},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"bench"},
     .help = "everything into a folder: the lines for the\ndescription, CSV, JSON, the page, the test box,\n"
             "and its orifice plates at true size"},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"guide"},
     .help = "the folder that it goes to (usual:\nlumwright-guide): guide.html, one file that needs\n"
             "no network and prints on A4 and Letter, and the\nexamples in DIR/examples, so that its commands can\n"
             "be tried there. Files of these names are replaced,\nothers are left alone",
     .usual = "lumwright-guide"},
    {.names = "--format",
     .value = "text | json | csv",
     .commands = {"choose"},
     .help = "what is printed without a folder",
     .usual = "text"},
    {.names = "-o,--output",
     .value = "DIR",
     .commands = {"day"},
     .help = "the card into DIR: day.html, one sheet that needs\nno network, and day.txt"},
    {.names = "--air", .value = "4 degC", .commands = {"day"}, .help = "today's air, in place of what is written"},
    {.names = "--barometer", .value = "985 mbar", .commands = {"day"}, .help = "today's barometer, likewise"},
    {.names = "--paper",
     .value = "A4 | Letter | A3",
     .commands = {"report"},
     .help = "as in `lumwright help draw`",
     .usual = "A4",
     .left = "--paper, --scale-x, --scale-y"},
    {.names = "--paper",
     .value = "A4 | Letter | A3",
     .commands = {"bench"},
     .help = "as in `lumwright help draw`",
     .usual = "A4",
     .left = "--paper A4 | Letter | A3, --scale-x, --scale-y"},
    {.names = "--paper",
     .value = "A4 | Letter | A3",
     .commands = {"draw"},
     .help = "the paper you print on (usual: A4)",
     .usual = "A4"},
    {.names = "--scale-x",
     .value = "99.2 mm",
     .commands = {"draw"},
     .help = "what the 100 mm bar across the paper measures on"},
    {.names = "--scale-y",
     .value = "150.4 mm",
     .commands = {"draw"},
     .help = "your print, and the 150 mm bar along it: the next\nprint comes out true. Not for DXF"},
    {.names = "--scale-x", .value = "99.2 mm", .commands = {"report", "bench"}, .elsewhere = true},
    {.names = "--scale-y", .value = "150.4 mm", .commands = {"report", "bench"}, .elsewhere = true},
    {.names = "--box",
     .commands = {"bench"},
     .help = "how to make the test box for this fan, and what\neach shortcut costs in accuracy"},
    {.names = "--draft", .commands = {"draw"}, .help = "draw what fails as well, with DRAFT across it"},
    {.names = "--full", .commands = {"check", "prove"}, .help = "everything, not one screen"},
    {.names = "--only",
     .value = "PART",
     .commands = {"check"},
     .help = "one group of checks, as in fit, or one, as in\nfit.hot, in full",
     .words = report::parts_of_checks},
    {.names = "--samples",
     .value = "N",
     .commands = {"sweep"},
     .help = "samples at each value for the bands of the picture\n(usual: 200; 0 for no bands)",
     .usual = "200"},
    {.names = "--samples",
     .value = "N",
     .commands = {"report"},
     .help = "as in `lumwright help check`",
     .usual = "1000",
     .left = "--samples N, --seed N"},
    {.names = "--samples",
     .value = "N",
     .commands = {"choose"},
     .help = "samples in which what is advised is checked (usual:\n1000, as `check`), all else that is shown in 100\n"
             "of them",
     .usual = "1000"},
    {.names = "--samples",
     .value = "N",
     .commands = {"guide"},
     .help = "samples of its runs (usual: 1000, as those of\n`check`, whose figures it then shows)",
     .usual = "1000"},
    {.names = "--seed", .value = "N", .commands = {"sweep"}, .help = other, .usual = "1"},
    {.names = "--seed", .value = "N", .commands = {"report"}, .usual = "1", .elsewhere = true},
    {.names = "--units",
     .value = "as-written | metric | imperial",
     .commands = {"check", "sweep", "compare", "explain", "prove", "tune", "season", "report", "sheet", "day", "choose",
                  "bench"},
     .usual = "as-written"},
    {.names = "--units",
     .value = "as-written | metric | imperial",
     .commands = {"trace"},
     .help = "in such units, one a column; without it, and in\nJSON, in SI",
     .usual = "as-written",
     .left = "--units metric | imperial"},
    {.names = "--units",
     .value = "as-written | metric | imperial",
     .commands = {"draw"},
     .help = "units of templates, table of holes and build sheet\n(as written: those the description has most of,\n"
             "the others beneath). The DXF is in millimetres",
     .usual = "as-written"},
    {.names = "--colour,--color",
     .value = "auto | always | never",
     .commands = {"check", "sweep", "compare", "explain", "prove", "tune", "season", "sheet", "day", "choose", "bench"},
     .usual = "auto"},
    {.names = "--samples",
     .value = "N",
     .commands = {"check", "compare", "explain", "prove", "day"},
     .help = tries,
     .usual = "1000"},
    {.names = "--seed",
     .value = "N",
     .commands = {"check", "compare", "explain", "prove", "day"},
     .help = other,
     .usual = "1"},
    {.names = "--untuned",
     .commands = {"check", "sweep", "compare", "explain", "trace", "prove", "report", "draw", "sheet", "day"},
     .help = "leave out what was tuned"},
    {.names = "--set",
     .value = "KEY=VALUE",
     .commands = {"check", "sweep", "explain", "trace", "prove", "report", "draw", "sheet", "day"},
     .help = "as if the description said so; may be repeated",
     .again = true,
     .words = settings_to_complete},
    {.names = "--set",
     .value = "KEY=VALUE",
     .commands = {"compare"},
     .help = "as if each description said so; may be repeated",
     .again = true,
     .words = settings_to_complete},
    {.names = "--readings",
     .commands = {"new"},
     .help = "readings of a shop-made fan test instead, for\n`lumwright bench`"},
    {.names = "--bin", .commands = {"new"}, .help = "a bin instead, for `lumwright choose`"},
    {.names = "--log", .commands = {"new"}, .help = "a log of a lighting-up instead, for\n`lumwright tune`"},
    {.names = "--proof", .commands = {"new"}, .help = "readings of the finished unit instead, for\n`lumwright prove`"},
    {.names = "--ask",
     .commands = {"new"},
     .help = "a short interview on the terminal: the questions\nthat matter most, each with where and how to\n"
             "measure. A blank line means that you do not know;\na fault is told at once and the question asked\n"
             "again. FILE is written when the last question is\nanswered, with what follows from it already, what\n"
             "is still missing, and what to measure next. Where\nthe answers end before that, nothing is written"},
    {.names = "--table",
     .commands = {"schema"},
     .help = "of answer: every key with its type and meaning,\ncommand by command, to read"},
    {.names = "--roff", .commands = {"help"}, .help = "the whole manual as a man page"},
};
}  // namespace

bool OptionRow::of(std::string_view command) const {
  return std::find(commands.begin(), commands.end(), command) != commands.end();
}
std::string_view OptionRow::first_name() const { return names.substr(0, names.find(',')); }
std::vector<std::string_view> OptionRow::all_names() const { return parts_between(names, ","); }
std::vector<std::string_view> OptionRow::choices() const {
  if (value.find(choice_sign) == std::string_view::npos) return {};
  return parts_between(value, choice_sign);
}
std::vector<const OptionRow*> options_of(std::string_view command) {
  std::vector<const OptionRow*> taken;
  for (const OptionRow& row : rows)
    if (row.of(command)) taken.push_back(&row);
  return taken;
}
std::vector<std::string_view> long_names_of(std::string_view command) {
  std::vector<std::string_view> names;
  for (const OptionRow* row : options_of(command))
    for (const std::string_view name : row->all_names())
      if (name.starts_with("--")) names.push_back(name);
  names.push_back("--help");
  return names;
}
}  // namespace lumwright::cli
