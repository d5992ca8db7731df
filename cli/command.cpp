#include "command.hpp"
#include "commands.hpp"
#include <iterator>

namespace lumwright::cli {
const std::vector<const CommandRow*>& commands() {
  static const std::vector<const CommandRow*> all(std::begin(commands_in_order), std::end(commands_in_order));
  return all;
}
std::vector<std::string_view> command_words() {
  std::vector<std::string_view> words;
  for (const CommandRow* row : commands()) words.push_back(row->word);
  return words;
}
const CommandRow* find_command(std::string_view word) {
  for (const CommandRow* row : commands())
    if (row->word == word) return row;
  return nullptr;
}
}  // namespace lumwright::cli
