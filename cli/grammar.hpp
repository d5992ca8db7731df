// The command line, taken apart by the tables of commands and options.
#pragma once
#include "words.hpp"

namespace lumwright::cli {
/// The command that the arguments name, with what stands behind it; `--help` and `--version` are commands, too. Throws
/// UsageError: nothing is guessed, the nearest command, option or value is named.
Words parse(int argc, char** argv);
}  // namespace lumwright::cli
