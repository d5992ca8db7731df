#include "commands.hpp"
#include "option_table.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
/// The words that may stand in one place: behind an option of a command, or as its first argument.
struct Place {
  std::string_view command, option;  // no option: the argument
  std::vector<std::string> words;
};
std::vector<Place> places() {
  std::vector<Place> all;
  for (const CommandRow* command : commands()) {
    if (command->words != nullptr) all.push_back({command->word, "", command->words()});
    for (const OptionRow* row : options_of(command->word)) {
      const auto choices = row->choices();
      std::vector<std::string> words(choices.begin(), choices.end());
      if (row->words != nullptr) words = row->words();
      for (const std::string_view name : row->all_names())
        if (!words.empty()) all.push_back({command->word, name, words});
    }
  }
  return all;
}
/// A case of the shells: "check --format" and what else has the same words.
struct Case {
  std::string pattern;
  const Place* place;
};
std::vector<Case> cases(const std::vector<Place>& all) {
  std::vector<Case> found;
  for (const Place& place : all) {
    const std::string pattern = fmt::format("{}\" {}\"", place.command, place.option);
    const auto like = std::find_if(found.begin(), found.end(), [&](const Case& one) {
      return one.place->option == place.option && one.place->words == place.words;
    });
    if (like == found.end())
      found.push_back({pattern, &place});
    else
      like->pattern += " | " + pattern;
  }
  return found;
}
std::string bash() {
  const std::vector<Place> all = places();
  std::string text =
      "# lumwright completion bash: made from the program's own table\n_lumwright() {\n"
      "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]}\n"
      "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n";
  text += fmt::format("    COMPREPLY=($(compgen -W '{} --help --version' -- \"$word\")); return\n  fi\n",
                      fmt::join(command_words(), " "));
  text += "  [ \"$COMP_CWORD\" -eq 2 ] && before=\n  case \"$command $before\" in\n";
  for (const Case& one : cases(all))
    text += fmt::format("    {}) {}COMPREPLY=($(compgen -W '{}' -- \"$word\")); [[ $word == -* ]] || return 0 ;;\n",
                        one.pattern, one.place->option == "--set" ? "compopt -o nospace; " : "",
                        fmt::join(one.place->words, " "));
  text += "  esac\n  local options=\n  case $command in\n";
  for (const std::string_view word : command_words())
    text += fmt::format("    {}) options='{}' ;;\n", word, fmt::join(long_names_of(word), " "));
  text +=
      "  esac\n  case $word in\n    -*) COMPREPLY=($(compgen -W \"$options\" -- \"$word\")) ;;\n"
      "    *) COMPREPLY=($(compgen -d -- \"$word\") $(compgen -f -X '!*.y?(a)ml' -- \"$word\")) ;;\n  esac\n}\n"
      "shopt -s extglob\ncomplete -o filenames -F _lumwright lumwright\n";
  return text;
}
std::string zsh() {
  const std::vector<Place> all = places();
  std::string text =
      "#compdef lumwright\n# lumwright completion zsh: made from the program's own table\n"
      "_lumwright() {\n";
  text += fmt::format("  if (( CURRENT == 2 )); then\n    compadd -- {} --help --version\n    return\n  fi\n",
                      fmt::join(command_words(), " "));
  text += "  local before=$words[CURRENT-1]\n  (( CURRENT == 3 )) && before=\n  case \"$words[2] $before\" in\n";
  for (const Case& one : cases(all))
    text += fmt::format("    {}) [[ $PREFIX == -* ]] || {{ compadd {}-- {}; return }} ;;\n", one.pattern,
                        one.place->option == "--set" ? "-S '' " : "", fmt::join(one.place->words, " "));
  text += "  esac\n  local -a options\n  case $words[2] in\n";
  for (const std::string_view word : command_words())
    text += fmt::format("    {}) options=({}) ;;\n", word, fmt::join(long_names_of(word), " "));
  return text +
         "  esac\n  if [[ $PREFIX == -* ]]; then compadd -- $options; else _files -g '*.(yaml|yml)'; fi\n}\n"
         "_lumwright \"$@\"\n";
}
std::string fish() {
  const std::vector<Place> all = places();
  std::string text = "# lumwright completion fish: made from the program's own table\n";
  text += fmt::format("complete -c lumwright -n __fish_use_subcommand -f -a '{}'\n", fmt::join(command_words(), " "));
  text +=
      "complete -c lumwright -n __fish_use_subcommand -l help\ncomplete -c lumwright -n __fish_use_subcommand -l "
      "version\n";
  for (const Place& row : all)
    if (row.option.empty())
      text += fmt::format("complete -c lumwright -n '__fish_seen_subcommand_from {}' -f -a '{}'\n", row.command,
                          fmt::join(row.words, " "));
  for (const std::string_view word : command_words())
    for (const std::string_view option : long_names_of(word)) {
      text +=
          fmt::format("complete -c lumwright -n '__fish_seen_subcommand_from {}' -l {}", word, option.substr(2));
      for (const Place& row : all)
        if (row.option == option && row.command == word)
          text += fmt::format(" -x -a '{}'", fmt::join(row.words, " "));
      text += "\n";
    }
  return text;
}
std::vector<std::string> shells() { return {"bash", "zsh", "fish"}; }
Answer run_completion(const Words& words) {
  const std::string& shell = words.needed("SHELL");
  const std::string script = shell == "bash" ? bash() : shell == "zsh" ? zsh() : shell == "fish" ? fish() : "";
  if (script.empty()) refuse("SHELL cannot be", shell, {"bash", "zsh", "fish"});
  return {script, fine, Head::comment};
}
}  // namespace

const CommandRow completion_command{
    .word = "completion",
    .arguments = "SHELL",
    .usage = "completion SHELL",
    .brief = "words that bash, zsh or fish can complete",
    .headline = "completion SHELL: words that a shell can complete",
    .about = R"(  Prints a script for bash, zsh or fish, made from the program's own table of
  commands and options. An installed package has put it in its place already.
)",
    .below = R"(Example
  lumwright completion bash > ~/.local/share/bash-completion/completions/lumwright
)",
    .run = run_completion,
    .words = shells};
}  // namespace lumwright::cli
