#include "drawing/detail/lettering.hpp"
#include "input/utf8.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lumwright::drawing {
namespace {
using Runes = std::u32string;

// The text is well formed: printable() has seen to it.
Runes runes(std::string_view text) {
  Runes out;
  for (std::size_t i = 0; i < text.size();) {
    const auto first = static_cast<unsigned char>(text[i]);
    const std::size_t size = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    char32_t rune = size == 1 ? first : first & (0xFFU >> (size + 1));
    for (std::size_t k = 1; k < size; ++k) rune = rune << 6U | (static_cast<unsigned char>(text[i + k]) & 0x3FU);
    out += rune;
    i += size;
  }
  return out;
}
std::string utf8(const Runes& text) {
  std::string out;
  const auto put = [&](char32_t bits) { out += static_cast<char>(static_cast<unsigned char>(bits)); };
  for (const char32_t c : text) {
    if (c < 0x80)
      put(c);
    else if (c < 0x800)
      put(0xC0 | c >> 6U), put(0x80 | (c & 0x3FU));
    else if (c < 0x10000)
      put(0xE0 | c >> 12U), put(0x80 | (c >> 6U & 0x3FU)), put(0x80 | (c & 0x3FU));
    else
      put(0xF0 | c >> 18U), put(0x80 | (c >> 12U & 0x3FU)), put(0x80 | (c >> 6U & 0x3FU)), put(0x80 | (c & 0x3FU));
  }
  return out;
}
// Soft hyphen, zero widths, marks and overrides of direction, interlinear marks, non-characters (forbidden in XML).
bool unseen(char32_t c) {
  return c == 0xAD || c == 0x61C || (c >= 0x200B && c <= 0x200F) || (c >= 0x2028 && c <= 0x202E) ||
         (c >= 0x2060 && c <= 0x206F) || c == 0xFEFF || (c >= 0xFFF0 && c <= 0xFFFB) || (c & 0xFFFEU) == 0xFFFE ||
         (c >= 0xFDD0 && c <= 0xFDEF) || (c >= 0xE0000 && c <= 0xE0FFF);
}
struct Spelling {
  char32_t rune;
  std::string_view plain;
};
// Signs that a drawing may carry and small character sets lack.
constexpr std::array spellings = {
    Spelling{0x2300, "\xD8"}, Spelling{0x3BC, "\xB5"}, Spelling{0x2212, "-"},   Spelling{0x2010, "-"},
    Spelling{0x2011, "-"},    Spelling{0x2032, "'"},   Spelling{0x2033, "\""},  Spelling{0x2264, "<="},
    Spelling{0x2265, ">="},   Spelling{0x2248, "~"},   Spelling{0x2126, "ohm"}, Spelling{0x3A9, "ohm"},
    Spelling{0x2192, "->"},   Spelling{0x2026, "..."}, Spelling{0x2013, "-"},   Spelling{0x2014, "-"},
    Spelling{0x2018, "'"},    Spelling{0x2019, "'"},   Spelling{0x201C, "\""},  Spelling{0x201D, "\""},
    Spelling{0x2022, "\xB7"}, Spelling{0x2009, " "},   Spelling{0x202F, " "},   Spelling{0x20AC, "EUR"}};

// Adobe Core 14 font metrics, Helvetica, thousandths of the type size; characters 32 to 126. From memory; the widths
// that poppler finds in the finished PDF are the second opinion.
constexpr std::array<int, 95> helvetica = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333,  278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,  611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278,  556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,  500, 334, 260, 334, 584};
int width(char32_t c) {
  if (c >= 32 && c <= 126) return helvetica[c - 32];
  switch (c) {
    case 0xB0:
      return 400;
    case 0xB1:
    case 0xD7:
    case 0xF7:
      return 584;
    case 0xB5:
    case 0x3BC:
      return 556;
    case 0xB7:
    case 0x2022:
      return 278;
    case 0xD8:
    case 0x2300:
      return 778;
    default:
      return 1000;
  }
}
std::string latin(char32_t c) {  // one byte a character, Latin-1
  if ((c >= 0x20 && c < 0x7F) || (c >= 0xA1 && c <= 0xFF)) return {static_cast<char>(static_cast<unsigned char>(c))};
  if (c == 0xA0) return " ";
  for (const Spelling& s : spellings)
    if (s.rune == c) return std::string(s.plain);
  return "?";
}
}  // namespace

std::string clean(std::string_view text, std::size_t most) {
  std::string spaced(text.substr(0, 4 * most + 16));  // no rune is longer than four bytes
  std::replace_if(
      spaced.begin(), spaced.end(), [](char c) { return c == '\t' || c == '\n' || c == '\r'; }, ' ');
  Runes all = runes(input::printable(spaced));
  std::replace_if(all.begin(), all.end(), unseen, U'?');
  if (all.size() > most) all = all.substr(0, most - 3) + U"...";
  while (!all.empty() && all.back() == U' ') all.pop_back();
  return utf8(all);
}
std::vector<std::string> clean_lines(std::string_view text) {
  constexpr std::size_t most = 12;
  std::vector<std::string> out;
  while (out.size() < most) {
    const std::size_t end = text.find('\n');
    out.push_back(clean(text.substr(0, end)));
    if (end == std::string_view::npos) return out;
    text.remove_prefix(end + 1);
  }
  if (!text.empty()) out.back() = "...";
  return out;
}
double width_to_height(std::string_view line) {
  double sum = 0.0;
  for (const char32_t c : runes(line)) sum += width(c);
  return sum / 1000.0 / capital_share;
}
std::string fitted(std::string_view line, double widths) {
  if (width_to_height(line) <= widths) return std::string(line);
  Runes shorter = runes(line);
  while (!shorter.empty() && width_to_height(utf8(shorter) + "...") > widths) shorter.pop_back();
  return utf8(shorter) + "...";
}
std::string to_cp1252(std::string_view line) {
  std::string out;
  for (const char32_t c : runes(line)) out += latin(c);
  return out;
}
std::string to_dxf(std::string_view line) {
  constexpr std::size_t most = 240;  // R12: 255 characters a string
  std::string out;
  for (const char32_t c : runes(line)) {
    std::string next;
    for (const char byte : latin(c)) {
      const auto code = static_cast<unsigned char>(byte);
      if (code == 0xD8)
        next += "%%c";
      else if (code == 0xB0)
        next += "%%d";
      else if (code == 0xB1)
        next += "%%p";
      else if (code == 0xD7)
        next += 'x';
      else if (code > 0x7E)
        next += fmt::format("\\U+{:04X}", code);
      else if (code == '\\')
        next += '/';  // begins a code
      else if (code == '^')
        next += "^ ";  // a caret begins a code: this is how one is written
      else
        next += byte;
    }
    const bool after_percent = !out.empty() && out.back() == '%';
    if (after_percent && next == "%") continue;  // two would begin a code
    if (after_percent && next.starts_with('%')) out += ' ';
    if (out.size() + next.size() > most) return out + "...";
    out += next;
  }
  return out;
}
std::string dimension_number(double number, int decimals) {
  std::string text = fixed_number(number, decimals);
  while (text.find('.') != std::string::npos && (text.back() == '0' || text.back() == '.')) {
    const bool done = text.back() == '.';
    text.pop_back();
    if (done) break;
  }
  return text;
}
}  // namespace lumwright::drawing
