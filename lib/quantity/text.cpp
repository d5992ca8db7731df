#include "quantity/text.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <charconv>
#include <cmath>
#include <fmt/format.h>

namespace lumwright {
namespace {
constexpr std::size_t longest = 120;
bool is_digit(char c) { return c >= '0' && c <= '9'; }

// One pass over the text, left to right; `at` is where an error points.
class Scanner {
 public:
  Scanner(std::string_view text, Kind kind) : text_(text), kind_(kind) {}

  WrittenBand read() {
    if (text_.size() > longest) throw QuantityError(fmt::format("expected {}, got {} characters of text", kind_name(kind_), text_.size()), "", 0, longest);
    if (rest().empty()) fail("", 0, 1);
    const double first = number();
    if (take("..")) return range(first);
    const std::size_t unit_at = at_;
    const std::string_view symbol = unit_word();
    if (take("..")) return range(first, symbol, unit_at);
    if (take("±") || take("+-") || take("+/-")) return spread(first, symbol, unit_at);
    return finish(first, first, first, symbol, unit_at, false);
  }

 private:
  std::string_view rest() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    return text_.substr(at_);
  }
  bool take(std::string_view token) {
    if (!rest().starts_with(token)) return false;
    at_ += token.size();
    return true;
  }
  [[noreturn]] void fail(std::string help, std::size_t at, std::size_t width, std::optional<int> gauge = {}) const {
    throw QuantityError(fmt::format("expected {}, got '{}'", kind_name(kind_), text_), std::move(help), at,
                        std::max<std::size_t>(width, 1), gauge);
  }

  double unsigned_number() {
    const std::string_view text = rest();
    double x = 0;
    if (text.empty() || !(is_digit(text[0]) || (text[0] == '.' && text.size() > 1 && is_digit(text[1]))))
      fail(no_number_help(), at_, text.size());
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), x);
    const auto used = static_cast<std::size_t>(end - text.data());
    if (error != std::errc{} || !std::isfinite(x)) fail("the number is out of range", at_, std::max<std::size_t>(used, 1));
    if (used < text.size() && text[used] == ',' && used + 1 < text.size() && is_digit(text[used + 1]))
      fail("write a decimal point, not a comma", at_ + used, 1);
    // from_chars stops at "7." of "7..9": give the point back to the range
    const bool swallowed_point = text[used - 1] == '.' && text.substr(used).starts_with('.');
    at_ += used - (swallowed_point ? 1 : 0);
    return x;
  }
  std::string no_number_help() const {
    if (gauge_word(text_)) return "";
    return kind_.dimension == Dimension{} ? "write a number, as in `3` or `35 %`"
                                          : fmt::format("write a number and a unit ({})", accepted_units(kind_));
  }
  double number() {
    if (text_.starts_with('#')) gauge_refused();
    const double sign = take("-") ? -1.0 : (take("+"), 1.0), whole = unsigned_number();
    if (peek_fraction()) return sign * whole / divisor();
    const std::size_t before = at_;
    const std::string_view after = rest();
    if (at_ > before && !after.empty() && is_digit(after[0])) {
      const double top = unsigned_number();
      if (!peek_fraction()) fail("write a mixed number as in `1 1/2 in`", at_, 1);
      return sign * (whole + top / divisor());
    }
    return sign * whole;
  }
  bool peek_fraction() const { return at_ + 1 < text_.size() && text_[at_] == '/' && is_digit(text_[at_ + 1]); }
  double divisor() {
    ++at_;
    const std::size_t at = at_;
    const double below = unsigned_number();
    if (below == 0.0) fail("a fraction needs a number other than 0 below the line", at, 1);
    return below;
  }
  std::string_view unit_word() {
    std::string_view word = rest();
    for (std::string_view stop : {"..", "±", "+-", "+/-"}) word = word.substr(0, word.find(stop));
    at_ += word.size();
    while (word.ends_with(' ')) word.remove_suffix(1);
    return word;
  }

  struct Unit { double factor, offset; std::string symbol; };
  Unit unit(std::string_view symbol, std::size_t at) {
    if (symbol.empty()) {
      if (kind_.dimension == Dimension{}) return {1, 0, ""};
      fail(fmt::format("a unit is missing; write one of {}", accepted_units(kind_)), 0, text_.size());
    }
    if (const UnitRow* row = find_unit(symbol, kind_)) return {row->factor, row->offset, std::string(row->symbol)};
    if (gauge_word(symbol)) gauge_refused();
    fail(unit_help(symbol), at + leading_blanks(at), symbol.size());
  }
  std::size_t leading_blanks(std::size_t at) const { return std::min(text_.find_first_not_of(' ', at), text_.size()) - at; }
  std::string unit_help(std::string_view symbol) const {
    const UnitRow* other = find_unit(symbol);
    if (other == nullptr) {
      const std::string_view near = nearest_unit(symbol);
      return near.empty() ? fmt::format("`{}` is not a unit known here; use one of {}", symbol, accepted_units(kind_))
                          : fmt::format("`{}` is not a unit known here; did you mean `{}`?", symbol, near);
    }
    if (other->reads == UnitRow::Reads::points && kind_ == kind_of<TemperatureRise>) return "a rise or difference is written in K";
    if (other->reads == UnitRow::Reads::absolute) return "this is read on a gauge: take the barometer off, write `bar` or `psi`";
    if (other->reads == UnitRow::Reads::gauge) return "this is an absolute pressure: write it without the `g`";
    return fmt::format("`{}` measures {}; use one of {}", symbol, kind_name({other->dimension, Scale::ratio}), accepted_units(kind_));
  }

  static bool gauge_word(std::string_view text) {
    std::string low;
    for (char c : text) low += static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c);
    for (std::string_view word : {"gauge", "gage", "swg", "awg", "ga", "b&s", "bwg", "wg", "g", "no"})
      if (low == word || (word.size() > 2 && low.find(word) != std::string::npos)) return true;
    return false;
  }
  [[noreturn]] void gauge_refused() const {
    int number = 0;
    const auto digits = text_.find_first_of("0123456789");
    if (digits != std::string_view::npos) std::from_chars(text_.data() + digits, text_.data() + text_.size(), number);
    throw QuantityError(fmt::format("expected {}, got the gauge number '{}'", kind_name(kind_), text_),
                        "a gauge number means different thicknesses to different trades: measure it, write mm or thou", 0,
                        text_.size(), number);
  }

  WrittenBand spread(double value, std::string_view symbol, std::size_t unit_at) {
    const std::size_t at = at_;
    const double by = number();
    const std::size_t by_unit_at = at_;
    const std::string_view by_symbol = unit_word();
    if (by < 0) fail("a spread is not negative", at, by_unit_at - at);
    const bool percent = by_symbol == "%";
    const std::string_view own = symbol.empty() ? (percent && kind_.dimension != Dimension{} ? symbol : by_symbol) : symbol;
    const WrittenBand centre = finish(value, value, value, own, symbol.empty() ? by_unit_at : unit_at, true);
    double half = 0;
    if (percent && own != "%") half = std::abs(centre.value) * by / 100.0;
    else if (by_symbol.empty() || by_symbol == own) half = by * unit(own, unit_at).factor;
    else half = by * difference_factor(by_symbol, by_unit_at);
    if (percent && kind_.scale == Scale::point) fail("write the spread of a temperature in K", by_unit_at, by_symbol.size());
    return {centre.value, centre.value - half, centre.value + half, centre.unit, half > 0};
  }
  double difference_factor(std::string_view symbol, std::size_t at) {
    const Kind difference{kind_.dimension, Scale::ratio};
    if (const UnitRow* row = find_unit(symbol, difference)) return row->factor;
    return unit(symbol, at).factor;
  }
  WrittenBand range(double low, std::string_view low_symbol = "", std::size_t low_at = 0) {
    const double high = number();
    const std::size_t unit_at = at_;
    const std::string_view symbol = unit_word();
    const std::string_view low_own = low_symbol.empty() ? symbol : low_symbol;
    const WrittenBand a = finish(low, low, low, low_own, low_symbol.empty() ? unit_at : low_at, true);
    const WrittenBand b = finish(high, high, high, symbol, unit_at, true);
    if (a.value > b.value) fail("write a range from low to high", 0, text_.size());
    return {0.5 * (a.value + b.value), a.value, b.value, b.unit, a.value < b.value};
  }
  WrittenBand finish(double value, double low, double high, std::string_view symbol, std::size_t unit_at, bool has_spread) {
    if (!rest().empty()) fail("there is more text than one quantity", at_, rest().size());
    const Unit u = unit(symbol, unit_at);
    const auto si = [&](double x) { return x * u.factor + u.offset; };
    if (!std::isfinite(si(value))) fail("the number is out of range", 0, text_.size());
    if (kind_ == kind_of<Temperature> && si(value) < 0) fail("this lies below absolute zero", 0, text_.size());
    return {si(value), si(low), si(high), u.symbol, has_spread};
  }

  std::string_view text_;
  Kind kind_;
  std::size_t at_ = 0;
};
}  // namespace

WrittenBand parse_band(std::string_view text, Kind kind) { return Scanner(text, kind).read(); }
}  // namespace lumwright
