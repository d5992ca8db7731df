#include "report/detail/csv.hpp"
#include "quantity/decimal.hpp"

namespace lumwright::report {
namespace {
bool reads_as_number(std::string_view text) {
  const Decimal read = read_decimal(text);
  return read && read.rest.empty();
}
std::string quoted(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string out = "\"";
  for (const char c : text) out += c == '"' ? "\"\"" : std::string(1, c);
  return out + '"';
}
}  // namespace

std::string csv_cell(std::string_view text) {
  return reads_as_number(text) ? quoted(std::string(text)) : csv_text(text);
}
std::string csv_text(std::string_view text) {
  constexpr std::string_view formula = "=+-@\t\r";
  const bool guarded = !text.empty() && formula.find(text.front()) != std::string_view::npos;
  return quoted((guarded ? "'" : "") + std::string(text));
}
std::string csv_line(const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + csv_cell(cells[i]);
  return line + "\n";
}
}  // namespace lumwright::report
