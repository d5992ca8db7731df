// The short interview of `new --ask`.
#pragma once
#include "command.hpp"
#include <string>

namespace lumwright::cli {
/// Asks on standard output, reads from standard input, writes FILE when the last question is answered, and tells what
/// follows from it. Throws UsageError, and writes nothing, where the answers end before the questions do.
Answer ask(const std::string& file, bool colour);
}  // namespace lumwright::cli
