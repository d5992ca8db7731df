#include "input/source.hpp"
#include "input/utf8.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::input {
namespace {
constexpr std::size_t widest = 120;     // bytes of the line shown
constexpr std::size_t most_shown = 50;  // faults shown; the rest are counted

std::string_view line_of(std::string_view text, int line) {
  text.remove_prefix(byte_order_mark(text));
  for (; line > 1; --line) text.remove_prefix(std::min(text.find('\n') + 1, text.size()));  // npos + 1 == 0
  return text.substr(0, text.find_first_of("\r\n"));
}
bool continues_character(char c) { return (c & 0xC0) == 0x80; }

// As a terminal may have it: control characters become blanks, what is no character a question mark.
std::string shown(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) c = ' ';
  return printable(out);
}

// The part of a line around a byte, cut between characters.
struct Excerpt {
  std::string text;
  std::size_t caret;
};
Excerpt excerpt(std::string_view line, std::size_t byte) {
  std::size_t from = byte > widest - 20 ? byte - (widest - 20) : 0;
  while (from < line.size() && from > 0 && continues_character(line[from])) ++from;
  std::size_t to = std::min(line.size(), from + widest);
  while (to < line.size() && to > from && continues_character(line[to])) --to;
  const std::size_t caret = std::clamp(byte, from, to);
  Excerpt out{from > 0 ? "..." : "", 0};
  out.text += shown(line.substr(from, caret - from));
  out.caret = characters(out.text);
  out.text += shown(line.substr(caret, to - caret));
  if (to < line.size()) out.text += "...";
  return out;
}
std::string wrapped(std::string_view text) {  // help below the caret, broken at blanks
  constexpr std::size_t columns = 92;
  std::string out;
  std::size_t used = columns;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t blank = std::min(text.find(' ', at), text.size()),
                      width = characters(text.substr(at, blank - at));
    const bool breaks = used + 1 + width > columns;
    out += (breaks ? "\n        " : " ") + std::string(text.substr(at, blank - at));
    used = breaks ? width : used + 1 + width;
    at = blank + 1;
  }
  return out;
}
std::string render_all(const Source& source, const std::vector<Fault>& faults) {
  std::string out;
  for (std::size_t i = 0; i < faults.size() && i < most_shown; ++i)
    out += (i > 0 ? "\n" : "") + render(source, faults[i]);
  if (faults.size() > most_shown) out += fmt::format("\n... and {} more", faults.size() - most_shown);
  return out;
}
// A place the parser reports at the end of the text may lie behind it.
Position inside(std::string_view text, Position at) {
  const int lines = 1 + static_cast<int>(std::count(text.begin(), text.end(), '\n'));
  at.line = std::clamp(at.line, 1, lines);
  const int width = static_cast<int>(line_of(text, at.line).size());
  at.column = std::clamp(at.column, 1, width + 1);
  at.width = std::max(at.width, 1);
  return at;
}
}  // namespace

std::string render(const Source& source, const Fault& fault) {
  const std::string_view line = line_of(source.text, fault.at.line);
  const auto byte = std::min(line.size(), static_cast<std::size_t>(std::max(fault.at.column - 1, 0)));
  const Excerpt part = excerpt(line, byte);
  const std::string_view marked = line.substr(byte, static_cast<std::size_t>(std::max(fault.at.width, 1)));
  const std::size_t width =
      std::min(std::max<std::size_t>(characters(shown(marked)), 1), widest - std::min(part.caret, widest - 1));
  std::string out = fmt::format("{}:{}:{}: {}{}{}\n{:>5} | {}\n      | {}{}", printable(source.name), fault.at.line,
                                characters(shown(line.substr(0, byte))) + 1, printable(fault.key),
                                fault.key.empty() ? "" : ": ", printable(fault.message), fault.at.line, part.text,
                                std::string(part.caret, ' '), std::string(width, '^'));
  return out + wrapped(printable(fault.help));
}

InputError::InputError(const Source& source, std::vector<Fault> faults)
    : std::runtime_error([&] {
        for (Fault& fault : faults) fault.at = inside(source.text, fault.at);
        std::stable_sort(faults.begin(), faults.end(), [](const Fault& a, const Fault& b) {
          return a.at.line != b.at.line ? a.at.line < b.at.line : a.at.column < b.at.column;
        });
        return render_all(source, faults);
      }()),
      faults_(std::move(faults)) {}
}  // namespace lumwright::input
