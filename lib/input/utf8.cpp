#include "input/utf8.hpp"
#include <algorithm>

namespace lumwright::input {
namespace {
// Length of the character that starts here, 0 if none does (RFC 3629, section 4: no overlong forms, no surrogates).
std::size_t character(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(0);
  if (first < 0x80) return (first >= 0x20 && first != 0x7F) || first == '\t' || first == '\n' || first == '\r' ? 1 : 0;
  const std::size_t size = first >= 0xC2 && first < 0xE0   ? 2
                           : first >= 0xE0 && first < 0xF0 ? 3
                           : first >= 0xF0 && first < 0xF5 ? 4
                                                           : 0;
  if (size == 0 || text.size() < size) return 0;
  for (std::size_t i = 1; i < size; ++i)
    if ((byte(i) & 0xC0) != 0x80) return 0;
  const bool control = first == 0xC2 && byte(1) < 0xA0;
  const bool overlong = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
  const bool no_character = (first == 0xED && byte(1) > 0x9F) || (first == 0xF4 && byte(1) > 0x8F);
  return control || overlong || no_character ? 0 : size;
}
// Characters that break a line or make a terminal show the text round them in another order (Unicode UAX 9): what is
// shown would not be what is read.
bool steers(std::string_view character) {
  return character == "\u200E" || character == "\u200F" || (character >= "\u2028" && character <= "\u202E") ||
         (character >= "\u2066" && character <= "\u2069");
}
}  // namespace

std::optional<std::size_t> first_unreadable_byte(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t size = character(text.substr(at));
    if (size == 0) return at;
    at += size;
  }
  return std::nullopt;
}
std::size_t byte_order_mark(std::string_view text) { return text.starts_with("\xEF\xBB\xBF") ? 3 : 0; }

std::string printable(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const std::size_t size = character(text);
    const bool shown =
        (size > 1 && !steers(text.substr(0, size))) || (size == 1 && static_cast<unsigned char>(text[0]) >= 0x20);
    out += shown ? text.substr(0, size) : "?";
    const bool long_control = size == 0 && text.size() > 1 && text[0] == '\xC2';
    text.remove_prefix(long_control ? 2 : std::max<std::size_t>(size, 1));
  }
  return out;
}
}  // namespace lumwright::input
