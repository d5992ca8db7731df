// Cells of comma-separated tables for spreadsheets (RFC 4180, but lines end with a line feed).
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright {
/// Quoted where it must be. Text that a spreadsheet would take for a formula gets an apostrophe before it (OWASP, CSV
/// injection); a number does not, whatever its sign.
std::string csv_cell(std::string_view text);
std::string csv_line(const std::vector<std::string>& cells);
}  // namespace lumwright
