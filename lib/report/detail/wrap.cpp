#include "report/detail/wrap.hpp"
#include "input/utf8.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <span>
#include <stdexcept>
#include <utility>

namespace lumwright::report {
namespace {
struct Span {
  char32_t first, last;
};
// Unicode 15: EastAsianWidth W and F, the blocks of them that a name in a description could hold.
constexpr Span wide[] = {{0x1100, 0x115F},   {0x2E80, 0x303E},   {0x3041, 0xA4CF},  {0xAC00, 0xD7A3},
                         {0xF900, 0xFAFF},   {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},  {0xFFE0, 0xFFE6},
                         {0x1F300, 0x1F64F}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}};
constexpr Span no_width[] = {{0x0300, 0x036F}, {0x200B, 0x200D}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}, {0xFEFF, 0xFEFF}};

bool within(char32_t c, std::span<const Span> spans) {
  return std::any_of(spans.begin(), spans.end(), [c](const Span& s) { return c >= s.first && c <= s.last; });
}

struct Character {
  std::string_view bytes;
  char32_t code;
};
/// Takes one character off the front of well-formed UTF-8.
Character take_character(std::string_view& text) {
  const auto first = static_cast<unsigned char>(text.front());
  const std::size_t size = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
  const std::string_view bytes = text.substr(0, size);
  char32_t code = size == 1 ? first : first & (0xFFu >> (size + 1));
  for (const char c : bytes.substr(1)) code = (code << 6) | (static_cast<unsigned char>(c) & 0x3F);
  text.remove_prefix(bytes.size());
  return {bytes, code};
}
std::size_t width_of(char32_t code) { return within(code, no_width) ? 0 : within(code, wide) ? 2 : 1; }

/// "0.25", "(17.2", "-3", "9/16", "7..9", "±0.05": something that a unit may follow.
bool is_number(std::string_view word) {
  while (!word.empty() && !is_digit(word.front())) {
    const bool lead = std::string_view("([<>=~+-`'").find(word.front()) != std::string_view::npos ||
                      (static_cast<unsigned char>(word.front()) & 0x80) != 0;
    if (!lead) return false;
    word.remove_prefix(1);
  }
  return !word.empty() && is_digit(word.back());
}
std::string_view without_stop(std::string_view word) {
  while (!word.empty() && std::string_view(".,;:!?)]'`").find(word.back()) != std::string_view::npos)
    word.remove_suffix(1);
  return word;
}
bool is_unit(std::string_view word) { return find_unit(without_stop(word)) != nullptr; }

/// How many words from `at` on must stay on one line.
std::size_t kept_together(std::span<const std::string_view> all, std::size_t at) {
  std::size_t end = at + 1;
  if (!is_number(all[at])) return 1;
  if (end < all.size() && all[end].find('/') != std::string_view::npos && is_number(all[end])) ++end;  // 1 1/2
  if (end + 1 < all.size() && is_unit(std::string(all[end]) + " " + std::string(all[end + 1]))) return end + 2 - at;
  if (end < all.size() && is_unit(all[end])) return end + 1 - at;
  return 1;
}
/// A word wider than the page, in pieces of at most `width` columns; the last piece is left over.
std::string cut(std::string_view word, std::size_t width, std::vector<std::string>& lines) {
  std::string piece;
  std::size_t used = 0;
  while (!word.empty()) {
    const Character c = take_character(word);
    if (used + width_of(c.code) > width) {
      lines.push_back(std::exchange(piece, {}));
      used = 0;
    }
    piece += c.bytes;
    used += width_of(c.code);
  }
  return piece;
}
}  // namespace

std::string legible(std::string_view text) {
  std::string spaced(text);
  for (char& c : spaced)
    if (c == '\t' || c == '\n' || c == '\r') c = ' ';
  return input::printable(spaced);
}

std::size_t columns(std::string_view text) {
  std::size_t n = 0;
  while (!text.empty()) n += width_of(take_character(text).code);
  return n;
}

std::vector<std::string> wrap(std::string_view text, std::size_t width) {
  if (width < 2) throw std::logic_error("a page of under 2 columns");
  const std::string clean = legible(text);
  const std::vector<std::string_view> all = words(clean);
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t i = 0; i < all.size();) {
    std::string piece(all[i]);
    const std::size_t together = kept_together(all, i);
    for (std::size_t k = 1; k < together; ++k) piece.append(" ").append(all[i + k]);
    i += together;
    if (!line.empty() && columns(line) + 1 + columns(piece) <= width) {
      line += " " + piece;
      continue;
    }
    if (!line.empty()) lines.push_back(std::exchange(line, {}));
    line = columns(piece) <= width ? piece : cut(piece, width, lines);
  }
  if (!line.empty() || lines.empty()) lines.push_back(line);
  return lines;
}
}  // namespace lumwright::report
