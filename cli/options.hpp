// The command line, taken apart. The only door to the argument parser.
#pragma once
#include "description/settings.hpp"
#include "quantity/format.hpp"
#include <cstddef>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lumwright::cli {
/// Arguments that mean nothing here; what() is the complaint.
struct UsageError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

struct Shelf;
enum class Command {
  report,
  guide,
  choose,
  bench,
  draw,
  sheet,
  tune,
  help,
  version,
  check,
  compare,
  sweep,
  explain,
  trace,
  create,
  units,
  schema,
  completion
};
enum class Format { text, json, csv };
enum class Colour { when_terminal, always, never };

// More narrow no band that anyone can use; these keep under 300 MB.
inline constexpr std::uint64_t most_samples = 200'000;
struct Options {
  Command command = Command::help;
  std::string topic{};  // of help: the command it is asked for, or empty
  std::string file{};   // "-" is standard input, for `new` standard output
  std::string check_id{};
  std::vector<std::string> files{};                          // of compare
  std::vector<std::pair<std::string, std::string>> axes{};  // of sweep: a key and its range each
  std::string log{};        // of tune
  std::vector<Setting> set{};  // keys of the description that are changed
  bool full = false;        // of check: everything, not one screen
  std::string only{};       // of check: a group of checks, or one
  bool untuned = false;     // what was tuned beside the description is ignored
  std::string series{};     // of trace; empty: the usual one
  std::size_t samples = 0;  // samples to try for the bands; none: no bands
  std::uint64_t seed = 1;
  std::string folder{};          // of draw: where the files go
  std::string paper = "A4";      // of draw
  std::string bar_x{}, bar_y{};  // of draw: what the bars measured on paper
  bool test_box = false;         // of bench: how to make it
  bool roff = false;             // of help: the manual as a man page
  bool readings = false;         // of new: readings of a fan test
  bool bin = false;              // of new: a bin to choose from
  bool log_file = false;         // of new: a log of a lighting-up
  bool table = false;            // of schema: the keys of the answers as a table
  bool ask = false;              // of new: a short interview
  bool draft = false;            // of draw: draw what fails, with DRAFT across it
  Format format = Format::text;
  UnitSystem units = UnitSystem::as_written;
  Colour colour = Colour::when_terminal;
  Shelf* shelf = nullptr;  // files in place of the disk's: of a command that the guide runs
};
/// Throws UsageError: nothing is guessed, the nearest command, option or value is named.
Options parse_options(int argc, char** argv);

/// Every command word, in the order of the manual.
std::vector<std::string_view> command_words();
}  // namespace lumwright::cli
