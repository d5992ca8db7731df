// The short interview of `new --ask`.
#pragma once
#include "commands.hpp"

namespace lumwright::cli {
/// Asks on standard output, reads from standard input, writes FILE when the last question is answered, and tells what
/// follows from it. Throws UsageError, and writes nothing, where the answers end before the questions do.
Answer ask(const Options& options);
}  // namespace lumwright::cli
