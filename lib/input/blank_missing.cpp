#include "input/yaml_tree.hpp"
#include <fmt/format.h>
#include <utility>

namespace lumwright::input {
std::optional<std::size_t> colon_without_blank(std::string_view text) {
  const std::size_t colon = text.find_first_not_of("abcdefghijklmnopqrstuvwxyz_");
  if (colon == std::string_view::npos || colon < 2 || text[colon] != ':' || colon + 1 == text.size())
    return std::nullopt;
  const bool close = std::string_view(" \t:/\r\n").find(text[colon + 1]) == std::string_view::npos;  // no http://
  return close ? std::optional(colon) : std::nullopt;
}
Fault blank_missing(Position at, std::string key, std::string_view text) {
  const std::size_t colon = colon_without_blank(text).value_or(0);
  constexpr std::size_t short_value = 30;
  std::string_view value = text.substr(colon + 1);
  value = value.substr(0, value.find(" #"));
  const bool whole = value.size() <= short_value && value.find_first_of("{}[]") == std::string_view::npos;
  return {{at.line, at.column + static_cast<int>(colon), 1},
          std::move(key),
          "a blank is missing behind this colon",
          whole ? fmt::format("write `{}: {}`", text.substr(0, colon), value)
                : fmt::format("write `{}: ` before the value", text.substr(0, colon))};
}
}  // namespace lumwright::input
