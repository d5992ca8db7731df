// The only door to the argument parser.
#include "grammar.hpp"
#include "commands.hpp"
#include "help.hpp"
#include "input/utf8.hpp"
#include "option_table.hpp"
#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
void add_arguments(CLI::App& parser, const CommandRow& row, AllWritten& into) {
  for (std::string_view rest = row.arguments; !rest.empty();) {
    const std::string name(rest.substr(0, rest.find(' ')));
    rest.remove_prefix(std::min(name.size() + 1, rest.size()));
    Written& place = into[name];
    if (rest == "...") {
      parser.add_option(name, place.all);
      return;
    }
    parser.add_option(name, place.text);
  }
}
void add_command(CLI::App& app, const CommandRow& row, AllWritten& into) {
  CLI::App& parser = *app.add_subcommand(std::string(row.word));
  add_arguments(parser, row, into);
  for (const OptionRow* one : options_of(row.word)) {
    const std::string names(one->names);
    Written& place = into[std::string(one->first_name())];
    place.text = one->usual;
    if (one->value.empty())
      parser.add_flag(names, place.on);
    else if (one->again)
      parser.add_option(names, place.all)->allow_extra_args(false);
    else
      parser.add_option(names, place.text);
  }
  parser.set_help_flag();
  parser.add_flag("-h,--help", into["--help"].on);
  parser.allow_extras();
}
/// What the parser could not place, as a complaint.
void refuse_leftovers(const CLI::App& parser, const std::string& name) {
  const std::vector<std::string> left = parser.remaining();
  if (left.empty()) return;
  const std::string& word = left.front();
  if (word.size() < 2 || word.front() != '-')
    throw UsageError(fmt::format("`{}` is one word too many for `{}`", input::printable(word), name));
  refuse(fmt::format("`{}` has no option", name), word.substr(0, word.find('=')), long_names_of(name));
}
void refuse_top_level(const CLI::App& app) {
  const std::vector<std::string> left = app.remaining();
  if (left.empty()) throw UsageError("say what to do: `lumwright check FILE`, or `lumwright --help` for the manual");
  const std::string& word = left.front();
  if (word.front() != '-') refuse("no command is called", word, command_words());
  const std::string option = word.substr(0, word.find('='));
  for (const CommandRow* row : commands())
    for (const std::string_view name : long_names_of(row->word))
      if (name == option)
        throw UsageError(fmt::format("`{0}` belongs behind its command: lumwright {1} ... {0}", option, row->word));
  refuse("no option is called", option, {"--help", "--version"});
}
void refuse_values(const CommandRow& row, const AllWritten& written) {
  for (const OptionRow* one : options_of(row.word)) {
    const std::vector<std::string_view> choices = one->choices();
    const std::string& word = written.find(one->first_name())->second.text;
    if (!choices.empty() && word != one->usual && std::find(choices.begin(), choices.end(), word) == choices.end())
      refuse(fmt::format("{} cannot be", one->first_name()), word, choices);
  }
}
using Parsed = std::map<std::string, AllWritten, std::less<>>;  // by the command's word

Words words_of(const CLI::App& app, Parsed& parsed, bool help_asked, bool version_asked) {
  const std::vector<CLI::App*> asked = app.get_subcommands();  // as they were written
  if (asked.empty()) {
    if (!help_asked && !version_asked) refuse_top_level(app);
    return version_asked ? Words(version_command, {}) : help_words("");
  }
  const std::string name = asked.front()->get_name();
  AllWritten& written = parsed[name];
  if (written["--help"].on) return help_words(name);
  refuse_leftovers(*asked.front(), name);
  if (!app.remaining().empty()) refuse_top_level(app);
  const CommandRow& row = *find_command(name);
  refuse_values(row, written);
  return {row, std::move(written)};
}
}  // namespace

Words parse(int argc, char** argv) {
  CLI::App app;
  Parsed parsed;
  bool help_asked = false, version_asked = false;
  app.set_help_flag();
  app.require_subcommand(0, 1);  // behind a command its name is a word like any other: `schema log`
  app.add_flag("-h,--help", help_asked);
  app.add_flag("--version", version_asked);
  app.allow_extras();
  for (const CommandRow* row : commands()) add_command(app, *row, parsed[std::string(row->word)]);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ArgumentMismatch& e) {  // "--format: 1 required TEXT missing"
    const std::string message = e.what();
    throw UsageError(fmt::format("`{}` takes one value, behind it", message.substr(0, message.find(':'))));
  } catch (const CLI::ParseError& e) {
    throw UsageError(e.what());
  }
  return words_of(app, parsed, help_asked, version_asked);
}
}  // namespace lumwright::cli
