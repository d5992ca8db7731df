#include "options.hpp"
#include "grammar.hpp"
#include "input/utf8.hpp"
#include "quantity/words.hpp"
#include "report/screen.hpp"
#include <charconv>
#include <fmt/format.h>
#include <functional>

namespace lumwright::cli {
namespace {
struct CommandWord {
  std::string_view word;
  Command command;
};
constexpr CommandWord commands[] = {{"check", Command::check},           {"sweep", Command::sweep},
                                    {"compare", Command::compare},       {"explain", Command::explain},
                                    {"trace", Command::trace},           {"tune", Command::tune},
                                    {"report", Command::report},         {"draw", Command::draw},
                                    {"sheet", Command::sheet},           {"choose", Command::choose},
                                    {"bench", Command::bench},           {"new", Command::create},
                                    {"guide", Command::guide},           {"units", Command::units},
                                    {"schema", Command::schema},         {"completion", Command::completion},
                                    {"help", Command::help}};

[[noreturn]] void refuse(std::string_view what, const std::string& word, const std::vector<std::string_view>& known) {
  const std::string_view near = nearest(word, known);
  std::string choice;
  for (const std::string_view one : known) choice += (choice.empty() ? "" : ", ") + std::string(one);
  throw UsageError(near.empty() ? fmt::format("{} `{}`; it may be {}", what, printable(word), choice)
                                : fmt::format("{} `{}`; did you mean `{}`?", what, printable(word), near));
}
template <class T>
struct Word {
  std::string_view word;
  T value;
};
template <class T>
T chosen(std::string_view option, const std::string& word, const std::vector<Word<T>>& words) {
  std::vector<std::string_view> known;
  for (const Word<T>& row : words) {
    if (row.word == word) return row.value;
    known.push_back(row.word);
  }
  refuse(fmt::format("{} cannot be", option), word, known);
}

/// What the parser could not place, as a complaint.
void refuse_leftovers(const CLI::App& command, const std::string& name) {
  const std::vector<std::string> left = command.remaining();
  if (left.empty()) return;
  const std::string& word = left.front();
  if (word.size() < 2 || word.front() != '-')
    throw UsageError(fmt::format("`{}` is one word too many for `{}`", printable(word), name));
  const std::vector<std::string> names = option_names(command);
  refuse(fmt::format("`{}` has no option", name), word.substr(0, word.find('=')), {names.begin(), names.end()});
}
void refuse_top_level(const CLI::App& app) {
  const std::vector<std::string> left = app.remaining();
  if (left.empty()) throw UsageError("say what to do: `lumwright check FILE`, or `lumwright --help` for the manual");
  const std::string& word = left.front();
  if (word.front() != '-') refuse("no command is called", word, command_words());
  const std::string option = word.substr(0, word.find('='));
  for (const CLI::App* one : app.get_subcommands(std::function<bool(const CLI::App*)>()))
    for (const std::string& name : option_names(*one))
      if (name == option)
        throw UsageError(
            fmt::format("`{0}` belongs behind its command: lumwright {1} ... {0}", option, one->get_name()));
  refuse("no option is called", option, {"--help", "--version"});
}
void require(const std::string& argument, std::string_view name, std::string_view usage) {
  if (argument.empty()) throw UsageError(fmt::format("{} is missing: lumwright {}", name, usage));
}
/// A whole number from 0 to `most`.
std::uint64_t whole(std::string_view option, const std::string& text, std::uint64_t most) {
  std::uint64_t number = 0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (fault != std::errc() || end != text.data() + text.size() || number > most)
    throw UsageError(fmt::format("{} takes a whole number from 0 to {}, not `{}`", option, most, printable(text)));
  return number;
}
Setting setting(const std::string& text) {
  const ReadSetting read = read_setting(text);
  if (!read.complete || read.setting.key.empty())
    throw UsageError(fmt::format("--set takes a key and its value, as in --set adapter.tube.length=\"40 mm\", not `{}`",
                                 printable(text)));
  return read.setting;
}
void trace_options(const Raw& raw, Options& out) {
  require(raw.file, "FILE", "trace FILE");
  if (raw.csv && raw.json) throw UsageError("`--csv` and `--json` ask for two forms: take one of them");
  out.format = raw.json ? Format::json : Format::csv;
  if (!raw.series.empty())
    out.series = chosen<std::string_view>("--series", raw.series, {{"raise", "raise"}, {"discharge", "discharge"}});
}
void sweep_options(const Raw& raw, Options& out) {
  require(raw.file, "FILE", "sweep FILE KEY FROM..TO");
  if (raw.axes.empty() || raw.axes.size() % 2 == 1 || raw.axes.size() > 4)
    throw UsageError("`sweep` takes one or two keys, each with its range behind it: lumwright sweep FILE fuel.bed 20mm..40mm");
  out.folder = raw.folder;
  out.samples = whole("--samples", raw.samples == Raw().samples ? "200" : raw.samples, most_samples);  // at each value
  for (std::size_t i = 0; i < raw.axes.size(); i += 2) out.axes.emplace_back(raw.axes[i], raw.axes[i + 1]);
}
void compare_options(const Raw& raw, Options& out) {
  constexpr std::size_t most = 5;
  if (raw.files.size() < 2 || raw.files.size() > most)
    throw UsageError(fmt::format("`compare` takes 2 to {} descriptions: lumwright compare FILE FILE", most));
  out.files = raw.files;
}
void check_options(const Raw& raw, Options& out) {
  out.full = raw.full;
  if (raw.only.empty()) return;
  if (raw.full) throw UsageError("`--full` and `--only` ask for two pages: take one of them");
  if (!known_part(raw.only)) {
    const std::vector<std::string> parts = parts_of_checks();
    refuse("--only cannot be", raw.only, {parts.begin(), parts.end()});
  }
  out.only = raw.only;
}
void schema_options(const Raw& raw, Options& out) {
  const std::vector<std::string> kinds = schema_words();
  if (!raw.file.empty() && std::find(kinds.begin(), kinds.end(), raw.file) == kinds.end())
    refuse("KIND cannot be", raw.file, {kinds.begin(), kinds.end()});
  if (raw.table && raw.file != "answer")
    throw UsageError("`--table` is of the answers: lumwright schema answer --table");
  out.table = raw.table;
}
Options options_of(Command command, const Raw& raw) {
  Options out;
  out.command = command;
  out.file = raw.file;
  out.check_id = raw.check_id;
  std::vector<Word<Format>> formats = {{"text", Format::text}, {"json", Format::json}};
  if (command == Command::bench || command == Command::choose || command == Command::sweep) formats.push_back({"csv", Format::csv});
  if (command == Command::sweep) std::erase_if(formats, [](const Word<Format>& row) { return row.value == Format::json; });
  out.format = chosen<Format>("--format", raw.format, formats);
  out.units = chosen<UnitSystem>(
      "--units", raw.units,
      {{"as-written", UnitSystem::as_written}, {"metric", UnitSystem::metric}, {"imperial", UnitSystem::imperial}});
  out.colour = chosen<Colour>("--colour", raw.colour,
                              {{"auto", Colour::when_terminal}, {"always", Colour::always}, {"never", Colour::never}});
  if (command == Command::check) require(raw.file, "FILE", "check FILE");
  if (command == Command::explain) require(raw.check_id, "CHECK", "explain CHECK FILE");
  if (command == Command::explain) require(raw.file, "FILE", "explain CHECK FILE");
  if (command == Command::trace) trace_options(raw, out);
  out.untuned = raw.untuned;
  if (command == Command::check) check_options(raw, out);
  if (command == Command::sweep) sweep_options(raw, out);
  if (command == Command::compare) compare_options(raw, out);
  for (const std::string& one : raw.set) out.set.push_back(setting(one));
  if (command == Command::guide && raw.folder.empty()) out.folder = "lumwright-guide";
  if (command == Command::check || command == Command::compare || command == Command::explain ||
      command == Command::report || command == Command::guide || command == Command::choose ||
      command == Command::draw || command == Command::sheet)
    out.samples = whole("--samples", raw.samples, most_samples);
  out.seed = whole("--seed", raw.seed, 4294967295U);
  out.log = raw.log;
  if (command == Command::tune) require(raw.file, "FILE", "tune FILE LOG");
  if (command == Command::tune) require(raw.log, "LOG", "tune FILE LOG");
  if (command == Command::choose) require(raw.file, "BIN", "choose BIN");
  if (command == Command::bench) require(raw.file, "READINGS", "bench READINGS");
  if (command == Command::draw || command == Command::bench || command == Command::report)
    out.paper = chosen<std::string_view>("--paper", raw.paper, {{"A4", "A4"}, {"Letter", "Letter"}});
  if (command == Command::report) {
    require(raw.file, "FILE", "report FILE -o DIR");
    require(raw.folder, "DIR", "report FILE -o DIR");
  }
  if (command == Command::draw) {
    require(raw.file, "FILE", "draw FILE -o DIR");
    require(raw.folder, "DIR", "draw FILE -o DIR");
  }
  if (!raw.folder.empty()) out.folder = raw.folder;
  out.bar_x = raw.bar_x;
  out.bar_y = raw.bar_y;
  out.draft = raw.draft;
  out.test_box = raw.test_box;
  out.readings = raw.readings;
  out.bin = raw.bin;
  out.log_file = raw.log_file;
  out.ask = raw.ask;
  if (command == Command::sheet) require(raw.file, "FILE", "sheet FILE");
  if (command == Command::schema) schema_options(raw, out);
  if (command == Command::completion) {
    require(raw.file, "SHELL", "completion SHELL");
    chosen<int>("SHELL", raw.file, {{"bash", 0}, {"zsh", 1}, {"fish", 2}});
  }
  if (command == Command::create) require(raw.file, "FILE", "new FILE");
  return out;
}
Options help_on(const std::string& topic) {
  Options out;
  out.topic = topic;
  const std::vector<std::string_view> known = command_words();
  if (!topic.empty() && std::find(known.begin(), known.end(), topic) == known.end())
    refuse("no command is called", topic, known);
  return out;
}
}  // namespace

std::vector<std::string_view> command_words() {
  std::vector<std::string_view> out;
  for (const CommandWord& row : commands) out.push_back(row.word);
  return out;
}

Options parse_options(int argc, char** argv) {
  Raw raw;
  CLI::App app;
  app.set_help_flag();
  app.add_flag("-h,--help", raw.help);
  app.allow_extras();
  add_commands(app, raw);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ArgumentMismatch& e) {  // "--format: 1 required TEXT missing"
    const std::string message = e.what();
    throw UsageError(fmt::format("`{}` takes one value, behind it", message.substr(0, message.find(':'))));
  } catch (const CLI::ParseError& e) {
    throw UsageError(e.what());
  }
  const std::vector<CLI::App*> asked = app.get_subcommands();
  if (asked.empty()) {
    Options out;
    if (raw.version) out.command = Command::version;
    if (!raw.help && !raw.version) refuse_top_level(app);
    return out;
  }
  const std::string name = asked.front()->get_name();
  if (raw.help) return help_on(name);
  refuse_leftovers(*asked.front(), name);
  if (!app.remaining().empty()) refuse_top_level(app);
  if (name == "help") {  // a command behind it counts as a command
    Options out = help_on(asked.size() > 1 ? asked[1]->get_name() : raw.topic);
    out.roff = raw.roff;
    return out;
  }
  for (const CommandWord& row : commands)
    if (row.word == name) return options_of(row.command, raw);
  throw std::logic_error("no command " + name);
}
}  // namespace lumwright::cli
