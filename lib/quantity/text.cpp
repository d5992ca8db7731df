#include "quantity/text.hpp"
#include "quantity/decimal.hpp"
#include "quantity/gauge_text.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <utility>

namespace lumwright {
namespace {
constexpr std::size_t longest = 120;
constexpr std::array<std::string_view, 3> plus_minus{"±", "+-", "+/-"};
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
std::size_t blank(
    std::string_view text) {  // bytes of the blank that starts here: word processors put hard and thin ones
  if (text.empty()) return 0;
  if (text.front() == ' ' || text.front() == '\t') return 1;
  if (static_cast<unsigned char>(text.front()) < 0x80) return 0;
  for (std::string_view one : {"\u00A0", "\u2009", "\u202F"})
    if (text.starts_with(one)) return one.size();
  return 0;
}

// One pass over the text, left to right; `at` is where a fault points.
class Scanner {
 public:
  Scanner(std::string_view text, Kind kind) : text_(text), kind_(kind) {}

  WrittenBand read() {
    if (text_.size() > longest)
      throw QuantityError(fmt::format("expected {}, got {} bytes of text", kind_name(kind_), text_.size()), "", 0,
                          longest);
    if (rest().empty()) fail(number_help(), 0, 1);
    refuse_gauge();
    const double first = number();
    if (take("..")) return range(first, {std::exchange(clock_, false) ? "min" : "", at_});
    const Word unit = unit_word();
    if (take("..")) return range(first, unit);
    for (std::string_view sign : plus_minus)
      if (take(sign)) return spread(first, unit);
    const Reading exact = reading(first, unit);
    return {exact.si, exact.si, exact.si, exact.unit, false};
  }

 private:
  struct Word {
    std::string_view text;
    std::size_t at;
  };
  struct Reading {
    double si;
    std::string unit;
    double factor;
  };

  std::string_view rest() {
    while (const std::size_t bytes = blank(text_.substr(at_))) at_ += bytes;
    return text_.substr(at_);
  }
  bool take(std::string_view token) {
    if (!rest().starts_with(token)) return false;
    at_ += token.size();
    return true;
  }
  [[noreturn]] void fail(std::string help, std::size_t at, std::size_t width) const {
    throw QuantityError(fmt::format("expected {}, got '{}'", kind_name(kind_), text_), std::move(help), at,
                        std::max<std::size_t>(width, 1));
  }
  bool is_pure() const { return kind_.dimension == Dimension{}; }

  void refuse_gauge() const {
    if (kind_ != kind_of<Length> && kind_ != kind_of<Area>) return;
    if (const auto number = gauge_number(text_))
      throw QuantityError(
          fmt::format("expected {}, got the gauge number '{}'", kind_name(kind_), text_),
          "a gauge number means different thicknesses to different trades: measure it, write mm or thou", 0,
          text_.size(), number);
  }

  double unsigned_number() {
    const std::string_view text = rest();
    if (text.empty() || !(is_digit(text[0]) || (text[0] == '.' && text.size() > 1 && is_digit(text[1]))))
      fail(number_help(), at_, text.size());
    const Decimal read = read_decimal(text);
    const double x = read.value;
    const std::size_t used = text.size() - read.rest.size();
    if (!read || !std::isfinite(x)) fail("the number is out of range", at_, used);
    if (used + 1 < text.size() && text[used] == ',' && is_digit(text[used + 1])) return with_comma(text, used);
    // a number stops behind "7." of "7..9": give the point back to the range
    const bool swallowed_point = text[used - 1] == '.' && text.substr(used).starts_with('.');
    at_ += used - (swallowed_point ? 1 : 0);
    return x;
  }
  // 17,2 is 17.2; what may as well mean thousands is refused.
  double with_comma(std::string_view text, std::size_t comma) {
    const std::string_view whole = text.substr(0, comma);
    std::size_t end = comma + 1;
    while (end < text.size() && is_digit(text[end])) ++end;
    const std::string_view behind = text.substr(comma + 1, end - comma - 1), more = text.substr(end);
    const bool again = more.size() > 1 && (more[0] == ',' || more[0] == '.') && is_digit(more[1]);
    if (again || !std::all_of(whole.begin(), whole.end(), is_digit))
      fail("write one decimal point or comma, and nothing between thousands", at_ + comma, 1);
    if (behind.size() == 3 && whole != "0")
      fail(fmt::format("a comma before three digits may mean thousands: write {0}{1} or {0}.{1}", whole, behind),
           at_ + comma, 1);
    std::string pointed(text);
    pointed[comma] = '.';
    const Decimal read = read_decimal(pointed);
    if (!read || !std::isfinite(read.value)) fail("the number is out of range", at_, end);
    at_ += pointed.size() - read.rest.size();
    return read.value;
  }
  std::string number_help() const {
    return is_pure() ? "write a number, as in `3` or `35 %`"
                     : fmt::format("write a number and a unit ({})", accepted_units(kind_));
  }
  double number() {
    const double sign = take("-") || take("−") ? -1.0 : (take("+"), 1.0);
    const std::size_t start = at_;
    const double whole = unsigned_number();
    if (kind_ == kind_of<Duration> && at_ < text_.size() && text_[at_] == ':') return sign * on_a_clock(start, whole);
    if (fraction_follows()) return sign * whole / divisor();
    const std::size_t before = at_;
    const std::string_view after = rest();
    const bool is_unit = after.starts_with("1/") && after.size() > 2 && is_letter(after[2]);  // 5200 1/min
    if (at_ == before || after.empty() || !is_digit(after[0]) || is_unit) return sign * whole;
    const double top = unsigned_number();
    if (!fraction_follows()) fail("write a mixed number as in `1 1/2 in`", at_, 1);
    return sign * (whole + top / divisor());
  }
  // 6:30 is 6 min 30 s, in minutes; `start` is where the minutes begin.
  double on_a_clock(std::size_t start, double minutes) {
    const std::string_view from = text_.substr(start), seconds = text_.substr(at_ + 1);
    const bool whole = text_.substr(start, at_ - start).find_first_not_of(" 0123456789") == std::string_view::npos;
    const bool two = seconds.size() >= 2 && is_digit(seconds[0]) && is_digit(seconds[1]);
    const bool ends = seconds.size() <= 2 || !(is_digit(seconds[2]) || seconds[2] == ':' || seconds[2] == ',');
    if (!whole || !two || !ends || seconds[0] > '5')
      fail("write minutes and seconds as in `6:30`, or `6 min 30 s`; the seconds from 00 to 59", start, from.size());
    at_ += 3;
    clock_ = true;
    return minutes + (10.0 * (seconds[0] - '0') + (seconds[1] - '0')) / 60.0;
  }
  bool fraction_follows() const { return at_ + 1 < text_.size() && text_[at_] == '/' && is_digit(text_[at_ + 1]); }
  double divisor() {
    const std::size_t at = ++at_;
    const double below = unsigned_number();
    if (below == 0.0) fail("a fraction needs a number other than 0 below the line", at, at_ - at);
    return below;
  }
  Word unit_word() {
    std::string_view word = rest();
    const std::size_t at = at_;
    word = word.substr(0, word.find(".."));
    for (std::string_view sign : plus_minus) word = word.substr(0, word.find(sign));
    at_ += word.size();
    for (std::size_t end = word.size(); end > 0; --end)
      if (blank(word.substr(end - 1)) > 0 && end - 1 + blank(word.substr(end - 1)) == word.size())
        word = word.substr(0, end - 1);
    if (!std::exchange(clock_, false)) return {word, at};
    if (!word.empty() && word != "min") fail("minutes and seconds as in `6:30` need no unit", at, word.size());
    return {"min", at};
  }

  // The SI number of `x` and the symbol its unit is known by.
  Reading reading(double x, Word unit) {
    if (!rest().empty()) fail("there is more text than one quantity", at_, rest().size());
    if (kind_ == kind_of<Duration> && unit.text.find_first_of("0123456789") != std::string_view::npos)
      return in_two_units(x, unit);
    if (unit.text.empty() && !is_pure())
      fail(fmt::format("a unit is missing; write one of {}", accepted_units(kind_)), 0, text_.size());
    const UnitRow* row = unit.text.empty() ? nullptr : find_unit(unit.text, kind_);
    if (!unit.text.empty() && row == nullptr) refuse_unit(unit);
    const double factor = row ? row->factor : 1.0, si = x * factor + (row ? row->offset : 0.0);
    if (!std::isfinite(si)) fail("the number is out of range", 0, text_.size());
    if (kind_ == kind_of<Temperature> && si < 0) fail("this lies below absolute zero", 0, text_.size());
    return {si, row ? std::string(row->symbol) : "", factor};
  }
  // "6 min 30 s": `unit` is "min 30 s".
  Reading in_two_units(double x, Word unit) {
    const std::size_t at = unit.text.find_first_of("0123456789");
    const std::string_view first = unit.text.substr(0, unit.text.find_last_not_of(' ', at - 1) + 1);
    const UnitRow* row = at == 0 ? nullptr : find_unit(first, kind_);
    if (row == nullptr) refuse_unit(unit);
    const WrittenBand less = [&] {
      try {
        return Scanner(unit.text.substr(at), kind_).read();
      } catch (const QuantityError& e) {
        fail(e.help, unit.at + at + e.at, e.width);
      }
    }();
    if (x != std::floor(x) || x < 0 || less.value >= row->factor)
      fail("write whole minutes and less than 60 s, as in `6 min 30 s`", 0, text_.size());
    return {x * row->factor + less.value, std::string(row->symbol), find_unit(less.unit, kind_)->factor};
  }
  [[noreturn]] void refuse_unit(Word unit) const {
    const bool other_kind = find_unit(unit.text) != nullptr;
    for (std::size_t end = other_kind ? std::string_view::npos : unit.text.find(' '); end != std::string_view::npos;
         end = unit.text.find(' ', end + 1))
      if (find_unit(unit.text.substr(0, end), kind_) != nullptr)
        fail("there is more text than one quantity", unit.at + end + 1, unit.text.size() - end - 1);
    fail(unit_help(unit.text), unit.at, unit.text.size());
  }
  std::string unit_help(std::string_view word) const {
    const std::string accepted = accepted_units(kind_);
    if (word.starts_with('-') || word.starts_with("–") || word.starts_with("to "))
      return word.find('/') == std::string_view::npos ? "write a range as in `7..9 mm`"
                                                      : "write a mixed number as in `1 1/2 in`";
    for (std::string_view part : {"¼", "½", "¾", "⅛", "⅜", "⅝", "⅞"})
      if (word.starts_with(part)) return "write a fraction as in `1/2 in` or `1 1/2 in`";
    if (kind_.dimension == kind_of<Temperature>.dimension && (word == "C" || word == "F"))
      return kind_.scale == Scale::point ? fmt::format("did you mean `deg{}`?", word)
                                         : "a rise or difference is written in K";
    if (const UnitRow* other = find_unit(word)) return other_unit_help(word, *other, accepted);
    const std::string_view near = nearest_unit(word, kind_);
    return near.empty() ? fmt::format("`{}` is not a unit known here; use one of {}", word, accepted)
                        : fmt::format("`{}` is not a unit known here; did you mean `{}`?", word, near);
  }
  std::string other_unit_help(std::string_view word, const UnitRow& other, const std::string& accepted) const {
    if (other.reads == UnitRow::Reads::points && kind_ == kind_of<TemperatureRise>)
      return "a rise or difference is written in K";
    if (other.dimension == kind_.dimension && other.reads == UnitRow::Reads::absolute)
      return "this is read on a gauge: take the barometer off, write `bar` or `psi`";
    if (other.dimension == kind_.dimension && other.reads == UnitRow::Reads::gauge)
      return "this is not read on a gauge: write it without the `g`";
    if (kind_ == kind_of<Mass> && other.dimension == kind_of<Volume>.dimension)
      return fmt::format("`{}` measures a volume: weigh it, and use one of {}", word, accepted);
    return fmt::format("`{}` measures {}; use one of {}", word, kind_name({other.dimension, Scale::ratio}), accepted);
  }

  WrittenBand spread(double value, Word unit) {
    rest();
    const std::size_t at = at_;
    const double by = number();
    const std::size_t end = at_;
    const Word by_unit = unit_word();
    const bool percent = !by_unit.text.empty() && find_unit(by_unit.text, kind_of<double>) != nullptr;
    if (by < 0) fail("a spread is not negative", at, text_.substr(at, end - at).find_last_not_of(' ') + 1);
    if (percent && kind_.scale == Scale::point)
      fail("write the spread of a temperature in K", by_unit.at, by_unit.text.size());
    if (percent && is_pure() && unit.text.empty()) fail("write `35 % +- 5 %` or `0.35 +- 0.05`", 0, text_.size());
    const Reading centre = reading(value, unit.text.empty() && !percent ? by_unit : unit);
    const double half = percent && !is_pure()  ? std::abs(centre.si) * by / 100.0
                        : by_unit.text.empty() ? by * centre.factor
                                               : by * difference_factor(by_unit);
    return checked({centre.si, centre.si - half, centre.si + half, centre.unit, half > 0});
  }
  double difference_factor(Word unit) const {  // of 2 K and of 2 degC alike
    const UnitRow* row = find_unit(unit.text, {kind_.dimension, Scale::ratio});
    if (row == nullptr) row = find_unit(unit.text, kind_);
    if (row == nullptr) refuse_unit(unit);
    return row->factor;
  }
  WrittenBand range(double first, Word first_unit) {
    const double second = number();
    const Word unit = unit_word();
    const Reading low = reading(first, first_unit.text.empty() ? unit : first_unit), high = reading(second, unit);
    if (low.si > high.si) fail("write a range from low to high", 0, text_.size());
    return checked({low.si + 0.5 * (high.si - low.si), low.si, high.si, high.unit, low.si < high.si});
  }
  WrittenBand checked(WrittenBand band) const {
    if (!std::isfinite(band.value) || !std::isfinite(band.low) || !std::isfinite(band.high))
      fail("the number is out of range", 0, text_.size());
    if (kind_ == kind_of<Temperature> && band.low < 0) fail("this lies below absolute zero", 0, text_.size());
    return band;
  }

  std::string_view text_;
  Kind kind_;
  std::size_t at_ = 0;
  bool clock_ = false;  // the number before was minutes and seconds
};
}  // namespace

WrittenBand parse_band(std::string_view text, Kind kind) { return Scanner(text, kind).read(); }
}  // namespace lumwright
