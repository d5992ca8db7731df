#include "quantity/decimal.hpp"
#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <string>

namespace lumwright {
#if defined(__cpp_lib_to_chars) || !defined(_LIBCPP_VERSION)
Decimal read_decimal(std::string_view text) {
  Decimal read;
  const char* const end = text.data() + text.size();
  const auto [stop, fault] = std::from_chars(text.data(), end, read.value);
  read.rest = text.substr(static_cast<std::size_t>(stop - text.data()));
  read.fault = fault;
  return read;
}
#else
// A standard library without numbers in from_chars: that of browsers, whose strtod knows no locale.
namespace {
constexpr std::string_view digits = "0123456789";
std::size_t run_of_digits(std::string_view text, std::size_t at) {
  return std::min(text.find_first_not_of(digits, at), text.size()) - at;
}
/// How much of the text is one number: sign, digits with a point among them, and an exponent that has digits.
std::size_t length_of_number(std::string_view text) {
  std::size_t at = text.starts_with('-') ? 1 : 0;
  for (std::string_view word : {"infinity", "inf", "nan"})
    if (text.substr(at).starts_with(word)) return at + word.size();
  const std::size_t whole = run_of_digits(text, at);
  at += whole;
  const std::size_t behind = at < text.size() && text[at] == '.' ? run_of_digits(text, at + 1) : 0;
  if (whole + behind == 0) return 0;
  if (at < text.size() && text[at] == '.') at += 1 + behind;
  if (at >= text.size() || (text[at] != 'e' && text[at] != 'E')) return at;
  const std::size_t sign = at + 1 < text.size() && (text[at + 1] == '+' || text[at + 1] == '-') ? 1 : 0;
  const std::size_t power = run_of_digits(text, at + 1 + sign);
  return power == 0 ? at : at + 1 + sign + power;
}
bool has_a_digit_but_nought(std::string_view number) {
  return number.substr(0, number.find_first_of("eE")).find_first_of("123456789") != std::string_view::npos;
}
}  // namespace
Decimal read_decimal(std::string_view text) {
  const std::size_t length = length_of_number(text);
  if (length == 0) return {0.0, text, std::errc::invalid_argument};
  const std::string number(text.substr(0, length));
  const double value = std::strtod(number.c_str(), nullptr);
  const bool words = number.find_first_of("in") != std::string::npos;
  const bool lost = !words && (std::isinf(value) || (value == 0.0 && has_a_digit_but_nought(number)));
  return {lost ? 0.0 : value, text.substr(length), lost ? std::errc::result_out_of_range : std::errc{}};
}
#endif
}  // namespace lumwright
