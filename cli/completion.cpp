#include "commands.hpp"
#include "grammar.hpp"
#include <fmt/format.h>
#include <functional>

namespace lumwright::cli {
namespace {
struct Shape {
  std::string word;
  std::vector<std::string> options;
};
std::vector<Shape> shapes() {
  Raw raw;
  CLI::App app;
  add_commands(app, raw);
  const CLI::App& made = app;
  std::vector<Shape> all;
  for (const CLI::App* one : made.get_subcommands(std::function<bool(const CLI::App*)>()))
    all.push_back({one->get_name(), option_names(*one)});
  return all;
}
std::vector<std::string> words_of(const std::vector<Shape>& all) {
  std::vector<std::string> words;
  words.reserve(all.size());
  for (const Shape& shape : all) words.push_back(shape.word);
  return words;
}

/// A case of the shell: "check --format", or "* --units" where it is of every command.
std::string pattern(const OptionWords& row) {
  return fmt::format("{}\" {}\"", row.command.empty() ? "*" : row.command, row.option);
}
/// What the first argument of `help` may be, as well as what options may hold.
std::vector<OptionWords> all_words(const std::vector<Shape>& shapes) {
  std::vector<OptionWords> all = option_words();
  all.push_back({"", words_of(shapes), "help"});
  return all;
}
std::string bash() {
  const std::vector<Shape> all = shapes();
  std::string text =
      "# lumwright completion bash: made from the program's own table\n_lumwright() {\n"
      "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]}\n"
      "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n";
  text += fmt::format("    COMPREPLY=($(compgen -W '{} --help --version' -- \"$word\")); return\n  fi\n",
                      fmt::join(words_of(all), " "));
  text += "  [ \"$COMP_CWORD\" -eq 2 ] && before=\n  case \"$command $before\" in\n";
  for (const OptionWords& row : all_words(all))
    text += fmt::format("    {}) {}COMPREPLY=($(compgen -W '{}' -- \"$word\")); [[ $word == -* ]] || return 0 ;;\n",
                        pattern(row), row.option == "--set" ? "compopt -o nospace; " : "", fmt::join(row.words, " "));
  text += "  esac\n  local options=\n  case $command in\n";
  for (const Shape& shape : all)
    text += fmt::format("    {}) options='{}' ;;\n", shape.word, fmt::join(shape.options, " "));
  text +=
      "  esac\n  case $word in\n    -*) COMPREPLY=($(compgen -W \"$options\" -- \"$word\")) ;;\n"
      "    *) COMPREPLY=($(compgen -d -- \"$word\") $(compgen -f -X '!*.y?(a)ml' -- \"$word\")) ;;\n  esac\n}\n"
      "shopt -s extglob\ncomplete -o filenames -F _lumwright lumwright\n";
  return text;
}
std::string zsh() {
  const std::vector<Shape> all = shapes();
  std::string text =
      "#compdef lumwright\n# lumwright completion zsh: made from the program's own table\n"
      "_lumwright() {\n";
  text += fmt::format("  if (( CURRENT == 2 )); then\n    compadd -- {} --help --version\n    return\n  fi\n",
                      fmt::join(words_of(all), " "));
  text += "  local before=$words[CURRENT-1]\n  (( CURRENT == 3 )) && before=\n  case \"$words[2] $before\" in\n";
  for (const OptionWords& row : all_words(all))
    text += fmt::format("    {}) [[ $PREFIX == -* ]] || {{ compadd {}-- {}; return }} ;;\n", pattern(row),
                        row.option == "--set" ? "-S '' " : "", fmt::join(row.words, " "));
  text += "  esac\n  local -a options\n  case $words[2] in\n";
  for (const Shape& shape : all)
    text += fmt::format("    {}) options=({}) ;;\n", shape.word, fmt::join(shape.options, " "));
  return text +
         "  esac\n  if [[ $PREFIX == -* ]]; then compadd -- $options; else _files -g '*.(yaml|yml)'; fi\n}\n"
         "_lumwright \"$@\"\n";
}
std::string fish() {
  const std::vector<Shape> all = shapes();
  std::string text = "# lumwright completion fish: made from the program's own table\n";
  text += fmt::format("complete -c lumwright -n __fish_use_subcommand -f -a '{}'\n", fmt::join(words_of(all), " "));
  text +=
      "complete -c lumwright -n __fish_use_subcommand -l help\ncomplete -c lumwright -n __fish_use_subcommand -l "
      "version\n";
  for (const OptionWords& row : all_words(all))
    if (row.option.empty())
      text += fmt::format("complete -c lumwright -n '__fish_seen_subcommand_from {}' -f -a '{}'\n", row.command,
                          fmt::join(row.words, " "));
  for (const Shape& shape : all)
    for (const std::string& option : shape.options) {
      text +=
          fmt::format("complete -c lumwright -n '__fish_seen_subcommand_from {}' -l {}", shape.word, option.substr(2));
      for (const OptionWords& row : option_words())
        if (row.option == option && (row.command.empty() || row.command == shape.word))
          text += fmt::format(" -x -a '{}'", fmt::join(row.words, " "));
      text += "\n";
    }
  return text;
}
}  // namespace

Answer completion(const Options& options) {
  if (options.file == "bash") return {bash()};
  if (options.file == "zsh") return {zsh()};
  return {fish()};
}
}  // namespace lumwright::cli
