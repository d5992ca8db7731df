// The short interviews of `new --ask` and `log`.
#pragma once
#include "command.hpp"
#include "description/season.hpp"
#include <optional>
#include <string>

namespace lumwright::cli {
/// Asks on standard output, reads from standard input, writes FILE when the last question is answered, and tells what
/// follows from it. Throws UsageError, and writes nothing, where the answers end before the questions do.
Answer ask(const std::string& file, bool colour);
/// Asks in the same way what is to be known of a lighting-up that goes into this season, which may be none yet. Throws
/// UsageError where the answers end before the questions do, or tell nothing.
description::Log ask_log(const std::optional<description::Season>& season, const std::string& season_file);

/// One line of standard input; nothing where it has ended. A line without an end is given up, not waited for.
std::optional<std::string> read_answer();
/// Lines further in, so that they stand apart from the questions.
std::string indented(const std::string& text);
}  // namespace lumwright::cli
