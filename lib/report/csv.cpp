#include "report/csv.hpp"
#include <charconv>

namespace lumwright {
namespace {
bool is_number(std::string_view text) {
  double x = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), x);
  return error == std::errc() && end == text.data() + text.size();
}
}  // namespace

std::string csv_cell(std::string_view text) {
  constexpr std::string_view formula = "=+-@\t\r";
  std::string out;
  if (!text.empty() && formula.find(text.front()) != std::string_view::npos && !is_number(text)) out += '\'';
  for (const char c : text) {
    if (c == '"') out += c;
    out += c;
  }
  return text.find_first_of(",\"\r\n") == std::string_view::npos ? out : '"' + out + '"';
}
std::string csv_line(const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + csv_cell(cells[i]);
  return line + "\n";
}
}  // namespace lumwright
