#include "grammar.hpp"
#include "description/keys.hpp"
#include "description/schema.hpp"
#include "plan/assess.hpp"
#include "report/screen.hpp"
#include <functional>

namespace lumwright::cli {
namespace {
void add_style(CLI::App& command, Raw& raw) {
  command.add_option("--units", raw.units);
  command.add_option("--colour,--color", raw.colour);
}
void add_printing(CLI::App& command, Raw& raw) {
  command.add_option("-o,--output", raw.folder);
  command.add_option("--paper", raw.paper);
  command.add_option("--scale-x", raw.bar_x);
  command.add_option("--scale-y", raw.bar_y);
}
void add_samples(CLI::App& command, Raw& raw) {
  command.add_option("--samples", raw.samples);
  command.add_option("--seed", raw.seed);
}
}  // namespace

void add_commands(CLI::App& app, Raw& raw) {
  app.add_flag("--version", raw.version);
  CLI::App& check = *app.add_subcommand("check");
  check.add_option("FILE", raw.file);
  check.add_option("--format", raw.format);
  check.add_flag("--full", raw.full);
  check.add_option("--only", raw.only);
  add_style(check, raw);
  add_samples(check, raw);
  CLI::App& explain = *app.add_subcommand("explain");
  explain.add_option("CHECK", raw.check_id);
  explain.add_option("FILE", raw.file);
  add_style(explain, raw);
  add_samples(explain, raw);
  CLI::App& sweep = *app.add_subcommand("sweep");
  sweep.add_option("FILE", raw.file);
  sweep.add_option("KEY", raw.axes);
  sweep.add_option("--format", raw.format);
  sweep.add_option("-o,--output", raw.folder);
  add_samples(sweep, raw);
  add_style(sweep, raw);
  CLI::App& compare = *app.add_subcommand("compare");
  compare.add_option("FILE", raw.files);
  add_style(compare, raw);
  add_samples(compare, raw);
  CLI::App& trace = *app.add_subcommand("trace");
  trace.add_option("FILE", raw.file);
  trace.add_flag("--csv", raw.csv);
  trace.add_flag("--json", raw.json);
  trace.add_option("--series", raw.series);
  trace.add_option("--units", raw.units);
  CLI::App& tune = *app.add_subcommand("tune");
  tune.add_option("FILE", raw.file);
  tune.add_option("LOG", raw.log);
  add_style(tune, raw);
  CLI::App& report = *app.add_subcommand("report");
  report.add_option("FILE", raw.file);
  add_printing(report, raw);
  add_samples(report, raw);
  report.add_option("--units", raw.units);
  CLI::App& draw = *app.add_subcommand("draw");
  draw.add_option("FILE", raw.file);
  add_printing(draw, raw);
  draw.add_flag("--draft", raw.draft);
  draw.add_option("--units", raw.units);
  CLI::App& choose = *app.add_subcommand("choose");
  choose.add_option("BIN", raw.file);
  choose.add_option("-o,--output", raw.folder);
  choose.add_option("--format", raw.format);
  choose.add_option("--samples", raw.samples);
  add_style(choose, raw);
  CLI::App& bench = *app.add_subcommand("bench");
  bench.add_option("READINGS", raw.file);
  bench.add_option("--format", raw.format);
  add_printing(bench, raw);
  bench.add_flag("--box", raw.test_box);
  add_style(bench, raw);
  CLI::App& sheet = *app.add_subcommand("sheet");
  sheet.add_option("FILE", raw.file);
  add_style(sheet, raw);
  for (CLI::App* one : {&check, &sweep, &compare, &explain, &trace, &report, &draw, &sheet}) {
    one->add_flag("--untuned", raw.untuned);
    one->add_option("--set", raw.set)->allow_extra_args(false);
  }
  CLI::App& create = *app.add_subcommand("new");
  create.add_option("FILE", raw.file);
  create.add_flag("--readings", raw.readings);
  create.add_flag("--bin", raw.bin);
  create.add_flag("--log", raw.log_file);
  create.add_flag("--ask", raw.ask);
  CLI::App& guide = *app.add_subcommand("guide");
  guide.add_option("-o,--output", raw.folder);
  guide.add_option("--samples", raw.samples);
  app.add_subcommand("units");
  CLI::App& schema = *app.add_subcommand("schema");
  schema.add_option("KIND", raw.file);
  schema.add_flag("--table", raw.table);
  app.add_subcommand("completion")->add_option("SHELL", raw.file);
  CLI::App& help = *app.add_subcommand("help");
  help.add_option("COMMAND", raw.topic);
  help.add_flag("--roff", raw.roff);
  for (CLI::App* one : app.get_subcommands(std::function<bool(CLI::App*)>())) {
    one->set_help_flag();
    one->add_flag("-h,--help", raw.help);
    one->allow_extras();
  }
}
std::vector<std::string> option_names(const CLI::App& command) {
  std::vector<std::string> names;
  for (const CLI::Option* option : command.get_options())
    for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
  return names;
}

std::vector<std::string> schema_words() {
  std::vector<std::string> all(schema_files().begin(), schema_files().end());
  all.emplace_back("answer");
  return all;
}
const std::vector<OptionWords>& option_words() {
  static const std::vector<OptionWords> all = [] {
    std::vector<std::string> checks, settings;
    for (const CheckName& check : check_names()) checks.emplace_back(check.id);
    for (const Key& key : keys())
      if (!key.is_section) settings.push_back((key.section.empty() ? "" : key.section + ".") + std::string(key.field.key) + "=");
    return std::vector<OptionWords>{{"--format", {"text", "json"}, "check"},
                                    {"--format", {"text", "csv"}, "sweep"},
                                    {"--format", {"text", "json", "csv"}, "choose"},
                                    {"--format", {"text", "json", "csv"}, "bench"},
                                    {"--units", {"as-written", "metric", "imperial"}},
                                    {"--colour", {"auto", "always", "never"}},
                                    {"--color", {"auto", "always", "never"}},
                                    {"--paper", {"A4", "Letter"}},
                                    {"--series", {"raise", "discharge"}},
                                    {"--only", parts_of_checks()},
                                    {"--set", settings},
                                    {"", checks, "explain"},
                                    {"", schema_words(), "schema"},
                                    {"", {"bash", "zsh", "fish"}, "completion"}};
  }();
  return all;
}
}  // namespace lumwright::cli
