// What the options say of printing.
#pragma once
#include "drawing/drawing.hpp"
#include "options.hpp"
#include "report/named_text.hpp"
#include <string>
#include <vector>

namespace lumwright::cli {
/// What to stretch a print by, from what the two bars measured. Throws UsageError for what is no such length.
drawing::PrintOptions print_options(const Options& options);
/// What was written, a line a file, and how to print templates that are among it.
std::string list_of(const std::string& folder, const std::vector<NamedText>& files);
}  // namespace lumwright::cli
