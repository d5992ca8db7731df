// Which commands there are and which options each takes, as text. What they mean is in options.cpp.
#pragma once
#include <CLI/CLI.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
/// The options as text, before they mean anything.
struct Raw {
  std::string file, check_id, format = "text", units = "as-written", colour = "auto", topic;
  std::string series{};
  bool csv = false, json = false;  // of trace
  bool full = false;               // of check
  std::string only{};              // of check
  bool untuned = false;
  std::string samples = "1000", seed = "1";
  std::string log{};
  std::vector<std::string> files{}, axes{};  // of compare; of sweep
  std::vector<std::string> set{};  // "key=value" each
  std::string folder, paper = "A4", bar_x, bar_y;  // of draw
  bool draft = false, test_box = false, readings = false, bin = false, log_file = false, table = false, roff = false,
       ask = false;
  bool help = false, version = false;
};
void add_commands(CLI::App& app, Raw& raw);
/// "--format", "--units", ... of one command.
std::vector<std::string> option_names(const CLI::App& command);

/// The words that may stand behind an option, or as the first argument of a command, where there are some to choose from.
struct OptionWords {
  std::string_view option;  // empty: it is the argument
  std::vector<std::string> words;
  std::string_view command{};  // empty: of every command that has the option
};
const std::vector<OptionWords>& option_words();
/// The files of which there is a schema, and "answer".
std::vector<std::string> schema_words();
}  // namespace lumwright::cli
