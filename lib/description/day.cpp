#include "description/day.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <vector>

namespace lumwright::description {
namespace {
constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};
constexpr int first_year = 1900, last_year = 2199;

bool is_number(char c) { return c >= '0' && c <= '9'; }
char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c; }
/// Digits at the front, at most four of them, taken off the text.
std::optional<int> take_number(std::string_view& text) {
  std::size_t used = 0;
  int number = 0;
  for (; used < text.size() && is_number(text[used]); ++used) {
    if (used == 4) return std::nullopt;
    number = 10 * number + (text[used] - '0');
  }
  if (used == 0) return std::nullopt;
  text.remove_prefix(used);
  return number;
}
bool take(std::string_view& text, char c) {
  if (text.empty() || text.front() != c) return false;
  text.remove_prefix(1);
  return true;
}
/// The whole name of a month or its first three letters, in any letters.
std::optional<unsigned> take_month(std::string_view& text) {
  std::size_t used = 0;
  while (used < text.size() && small(text[used]) >= 'a' && small(text[used]) <= 'z') ++used;
  const std::string_view word = text.substr(0, used);
  const auto same = [&](std::string_view name) {
    return name.size() == word.size() &&
           std::equal(name.begin(), name.end(), word.begin(), [](char a, char b) { return small(a) == small(b); });
  };
  for (std::size_t i = 0; i < months.size(); ++i)
    if (same(months[i]) || same(months[i].substr(0, 3))) {
      text.remove_prefix(used);
      take(text, '.');
      return static_cast<unsigned>(i + 1);
    }
  return std::nullopt;
}
std::optional<std::chrono::sys_days> date(int year, unsigned month, int day, std::string_view rest) {
  const bool ends = rest.empty() || rest.front() == ' ' || rest.front() == ',' || rest.front() == ';';
  if (!ends || year < first_year || year > last_year || day < 1 || day > 31) return std::nullopt;
  const std::chrono::year_month_day whole{std::chrono::year(year), std::chrono::month(month),
                                          std::chrono::day(static_cast<unsigned>(day))};
  if (!whole.ok()) return std::nullopt;
  return std::chrono::sys_days(whole);
}
}  // namespace

std::optional<std::chrono::sys_days> day_of(std::string_view text) {
  const auto first = take_number(text);
  if (!first) return std::nullopt;
  if (take(text, '-')) {
    const auto month = take_number(text);
    const bool second = take(text, '-');
    const auto day = take_number(text);
    if (!month || !second || !day || *month < 1 || *month > 12) return std::nullopt;
    return date(*first, static_cast<unsigned>(*month), *day, text);
  }
  take(text, '.');
  while (take(text, ' ')) continue;
  const auto month = take_month(text);
  while (take(text, ' ')) continue;
  const auto year = take_number(text);
  if (!month || !year) return std::nullopt;
  return date(*year, *month, *first, text);
}
std::string day_text(std::chrono::sys_days day) {
  const std::chrono::year_month_day whole(day);
  return fmt::format("{} {} {}", static_cast<unsigned>(whole.day()), months[static_cast<unsigned>(whole.month()) - 1],
                     static_cast<int>(whole.year()));
}
}  // namespace lumwright::description
