#include "help.hpp"
#include "commands.hpp"
#include "manual.hpp"
#include "manual_roff.hpp"
#include <vector>

namespace lumwright::cli {
namespace {
std::vector<std::string> all_command_words() {
  const std::vector<std::string_view> words = command_words();
  return {words.begin(), words.end()};
}
Answer run_help(const Words& words) {
  const std::string& topic = words.text("COMMAND");
  const CommandRow* asked = find_command(topic);
  if (!topic.empty() && asked == nullptr) refuse("no command is called", topic, command_words());
  if (!words.has("--roff")) return {asked == nullptr ? first_page() : page_of(*asked)};
  std::vector<ManualPage> pages = {{"", first_page()}};
  for (const CommandRow* row : commands()) pages.push_back({std::string(row->word), page_of(*row)});
  return {manual_roff(pages, LUMWRIGHT_VERSION)};
}
Answer run_version(const Words&) { return {"lumwright " LUMWRIGHT_VERSION "\n", fine, Head::behind}; }
}  // namespace

const CommandRow help_command{.word = "help",
                              .arguments = "COMMAND",
                              .usage = "help COMMAND",
                              .brief = "more on one command",
                              .run = run_help,
                              .words = all_command_words};
const CommandRow version_command{.word = "--version", .run = run_version};

Words help_words(const std::string& command) {
  return {help_command, {{"COMMAND", {.text = command}}, {"--roff", {}}}};
}
}  // namespace lumwright::cli
