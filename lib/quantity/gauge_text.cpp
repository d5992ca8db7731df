#include "quantity/gauge_text.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <array>
#include <charconv>
#include <string>

namespace lumwright {
namespace {
std::string letters(std::string_view text) {
  std::string out;
  for (char c : text)
    if (const char low = static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
        (low >= 'a' && low <= 'z') || low == '&' || low == '#' || static_cast<unsigned char>(c) >= 0x80)
      out += low;
  return out;
}
}  // namespace

std::optional<int> gauge_number(std::string_view text) {
  const auto first = std::find_if(text.begin(), text.end(), is_digit);
  const auto last = std::find_if_not(first, text.end(), is_digit);
  int number = 0;
  if (first == text.end() || last - first > 3 ||
      std::from_chars(&*first, &*first + (last - first), number).ec != std::errc{})
    return std::nullopt;
  const std::string word = letters(text);
  for (std::string_view series : {"gauge", "gage", "swg", "awg", "bwg", "b&s"})
    if (word.find(series) != std::string::npos) return number;
  // The short words are a gauge only beside one bare whole number: 0.5 g is a mass.
  const std::size_t at = static_cast<std::size_t>(first - text.begin()),
                    end = static_cast<std::size_t>(last - text.begin());
  const bool decimal = at > 0 && text[at - 1] == '.' && (at == 1 || text[at - 2] == ' ');  // .5 g, but not No.22
  const bool bare = !decimal && std::none_of(last, text.end(), is_digit) && !text.substr(end).starts_with('/');
  constexpr std::array<std::string_view, 7> brief{"ga", "g", "wg", "no", "#", "no#", "nr"};
  return bare && number <= 50 && std::find(brief.begin(), brief.end(), word) != brief.end() ? std::optional(number)
                                                                                            : std::nullopt;
}
}  // namespace lumwright
