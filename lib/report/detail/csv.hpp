// Cells of comma-separated tables for spreadsheets (RFC 4180, but lines end with a line feed).
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::report {
/// Quoted where it must be. Text that a spreadsheet would take for a formula gets an apostrophe before it (OWASP, CSV
/// injection); a number does not, whatever its sign.
std::string csv_cell(std::string_view text);
/// The same for text that never is a number: a name that begins as a formula does gets its apostrophe even where it
/// reads as a number.
std::string csv_text(std::string_view text);
std::string csv_line(const std::vector<std::string>& cells);
}  // namespace lumwright::report
