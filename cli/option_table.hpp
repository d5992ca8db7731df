// Every option of the program, a row each. Grammar, help, man page and completions are made from these rows and from
// those of the commands.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
struct OptionRow {
  std::string_view names;                  // "-o,--output": the first is the one that help tells
  std::string_view value{};                // what stands behind it: "DIR", "text | json" where words are to choose
                                           // from; empty: nothing does
  std::vector<std::string_view> commands;  // that take it, with this value and meaning
  std::string_view help{};                 // lines of at most 50 columns
  std::string_view usual{};                // what goes where it is not given
  std::string_view left{};                 // how help writes it, where not as name and value
  bool elsewhere = false;                  // the page of the command tells it elsewhere
  bool again = false;                      // it may stand several times
  std::vector<std::string> (*words)() = nullptr;  // to complete, where `value` does not list them

  bool of(std::string_view command) const;
  std::string_view first_name() const;
  /// "-o", "--output".
  std::vector<std::string_view> all_names() const;
  /// The words that it may be; empty: any.
  std::vector<std::string_view> choices() const;
};
/// The rows of one command.
std::vector<const OptionRow*> options_of(std::string_view command);
/// "--output", "--format" ...: the long names of one command's options.
std::vector<std::string_view> long_names_of(std::string_view command);
}  // namespace lumwright::cli
