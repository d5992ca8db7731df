// Whether bytes are text that can be shown: UTF-8 without control characters.
#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lumwright::input {
/// The offset of the first byte that is no part of a well-formed UTF-8 character (RFC 3629), or is a control character
/// (U+0000 to U+001F, U+007F to U+009F) other than tab, line feed and carriage return.
std::optional<std::size_t> first_unreadable_byte(std::string_view text);
/// Bytes of the byte order mark that `text` begins with: 3 or 0.
std::size_t byte_order_mark(std::string_view text);
/// The text with a question mark for each control character and each byte that is no character, so that it cannot move a
/// terminal's cursor; also for characters that break a line or turn the order in which text is shown (U+200E, U+200F,
/// U+2028 to U+202E, U+2066 to U+2069).
std::string printable(std::string_view text);
}  // namespace lumwright::input
