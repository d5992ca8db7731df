// What the options say of printing.
#pragma once
#include "drawing/drawing.hpp"
#include "report/named_text.hpp"
#include "words.hpp"
#include <string>
#include <vector>

namespace lumwright::cli {
/// --scale-x and --scale-y: what to stretch a print by, from what the two bars measured. Throws UsageError for what is
/// no such length.
drawing::PrintOptions print_options(const Words& words);
/// What was written, a line a file, and how to print templates that are among it.
std::string list_of(const std::string& folder, const std::vector<report::NamedText>& files);
}  // namespace lumwright::cli
