// Whether bytes are text that can be shown: UTF-8 without control characters.
#pragma once
#include <cstddef>
#include <optional>
#include <string_view>

namespace lumwright {
/// The offset of the first byte that is no part of a well-formed UTF-8 character (RFC 3629), or is a control character
/// other than tab, line feed and carriage return.
std::optional<std::size_t> first_unreadable_byte(std::string_view text);
}  // namespace lumwright
