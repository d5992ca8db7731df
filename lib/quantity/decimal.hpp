// A decimal number out of text, the same on every compiler and in every locale.
#pragma once
#include <string_view>
#include <system_error>

namespace lumwright {
struct Decimal {
  double value = 0.0;
  std::string_view rest{};  // what stands behind the number; the whole text where there is none
  std::errc fault{};        // invalid_argument: no number; result_out_of_range: none that a double holds
  explicit operator bool() const { return fault == std::errc{}; }
};
/// The longest number at the start of the text, as std::from_chars takes it: a point, perhaps an exponent, no blank and
/// no plus before it.
Decimal read_decimal(std::string_view text);
}  // namespace lumwright
