// Descriptions that nobody wrote: each key of the field lists is there or not, its value anywhere within its limits, in
// any unit that fits, with or without a spread. The same for the same seed.
#pragma once
#include "description/build.hpp"
#include "description/detail/contradictions.hpp"
#include "description/reader.hpp"
#include "model/fan_unit.hpp"
#include "quantity/text.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace lumwright {
/// How many builds a test makes: as many as LUMWRIGHT_BUILDS says, for a long run by hand, else `usual`.
inline unsigned how_many_builds(unsigned usual) {
  const char* asked = std::getenv("LUMWRIGHT_BUILDS");
  return asked != nullptr ? static_cast<unsigned>(std::strtoul(asked, nullptr, 10)) : usual;
}
/// As many as `usual` were tried, so that counts of what was seen among them can be demanded.
inline bool enough_builds(unsigned usual) { return how_many_builds(usual) >= usual; }

class RandomBuild {
 public:
  /// `present`: the share of keys that are there. `wild`: values reach the ends of their limits; else they stay near
  /// the example of their key, within a factor of two.
  RandomBuild(unsigned seed, double present, bool wild) : random_(seed), present_(present), wild_(wild) {}

  /// Text that the reader accepts: keys that contradict others are left out again.
  std::string text() {
    description::Build shape;
    lines_.clear();
    description::Build::fields(shape, *this);
    for (;;) {
      const std::string whole = joined();
      try {
        description::read_build({"random.yaml", whole});
        return whole;
      } catch (const input::InputError& error) {
        std::size_t dropped = 0;
        for (const input::Fault& fault : error.faults()) dropped += drop(fault.key);
        if (dropped == 0)
          throw std::logic_error("the reader refuses what lies within the limits:\n" + std::string(error.what()));
      }
    }
  }

  template <class Q>
  void operator()(const description::Field& field, description::Given<Q>&, description::Limits limits) {
    if (!chance(present_)) return;
    const std::string value = quantity<Q>(field, limits, true);
    if (!value.empty()) line(field, value);
  }
  void operator()(const description::Field& field, description::Count&, int least, int most) {
    if (!chance(present_)) return;
    const int near = std::clamp(std::stoi(std::string(field.example)) + whole(0, 6) - 3, least, most);
    line(field, std::to_string(wild_ ? whole(least, most) : near));
  }
  void operator()(const description::Field& field, description::Text&, description::Allowed allowed) {
    if (!chance(present_)) return;
    if (allowed == nullptr) {
      static const std::vector<std::string> texts = {"8BA", "M3", "\"a: b # c\"", "'it is'", "\"\\u00b1 \\\" \\\\\"",
                                                     "1/8", "~x", "null?"};
      return line(field, field.key == "thread" ? std::vector<std::string>{"8BA", "6BA", "M3", "4-40", "odd"}[pick(5)]
                                               : texts[pick(texts.size())]);
    }
    const std::vector<std::string> words = allowed();
    line(field, words[pick(words.size())]);
  }
  template <class X, class Y>
  void operator()(const description::Field& field, description::Points<X, Y>&, description::Limits x_limits,
                  description::Limits y_limits) {
    if (!chance(present_)) return;
    std::vector<double> x, y;
    for (std::size_t n = 2 + pick(7); n > 0; --n) {
      x.push_back(si<X>(x_limits));
      y.push_back(si<Y>(y_limits));
    }
    std::sort(x.begin(), x.end());
    std::sort(y.begin(), y.end());
    if (!std::is_same_v<X, Y> && field.key != "speed_at") std::reverse(y.begin(), y.end());
    std::string list;
    for (std::size_t i = 0; i < x.size(); ++i)
      list += fmt::format("{}[{} {}, {} {}]", i > 0 ? ", " : "", x[i], si_unit<X>(), y[i], si_unit<Y>());
    line(field, "[ " + list + " ]");
  }
  void operator()(const description::Field& field, description::EfficiencyTable&) {
    if (!chance(present_)) return;
    if (chance(0.5)) return line(field, fmt::format("{:.2f}", from(0.05, 1.0)));
    std::string list;
    for (std::size_t n = 1 + pick(4), i = 0; i < n; ++i)
      list +=
          fmt::format("{}[{:.3f} V, {:.3f} W, {:.1f} %]", i > 0 ? ", " : "", from(0.3, 60), from(0, 500), from(1, 100));
    line(field, "[ " + list + " ]");
  }
  template <class Part>
  void section(const description::Field& field, Part& part) {
    line(field, "");
    path_.push_back(std::string(field.key));
    std::remove_const_t<Part>::fields(part, *this);
    path_.pop_back();
  }

 private:
  struct Line {
    std::string key, text;
  };
  double from(double low, double high) {  // std's distributions differ between libraries
    return low + (high - low) * static_cast<double>(random_() >> 11) / 9007199254740992.0;
  }
  std::size_t pick(std::size_t below) { return random_() % below; }
  int whole(int low, int high) { return low + static_cast<int>(pick(static_cast<std::size_t>(high - low + 1))); }
  bool chance(double share) { return from(0.0, 1.0) < share; }

  template <class Q>
  double si(description::Limits limits) {
    const double low = parse_band(limits.low, kind_of<Q>).value, high = parse_band(limits.high, kind_of<Q>).value;
    if (chance(0.05)) return chance(0.5) ? low : high;
    if (low > 0.0 && high / low > 20.0) return std::clamp(std::exp(from(std::log(low), std::log(high))), low, high);
    return from(low, high);
  }
  template <class Q>
  static std::string si_unit() {
    for (const UnitRow& row : unit_table())
      if (fits(row, kind_of<Q>) && row.factor == 1.0 && row.offset == 0.0) return std::string(row.symbol);
    throw std::logic_error("no SI unit");
  }
  template <class Q>
  std::string quantity(const description::Field& field, description::Limits limits, bool spread) {
    const double low = parse_band(limits.low, kind_of<Q>).value, high = parse_band(limits.high, kind_of<Q>).value;
    std::vector<const UnitRow*> units;
    for (const UnitRow& row : unit_table())
      if (fits(row, kind_of<Q>)) units.push_back(&row);
    for (int tries = 0; tries < 20; ++tries) {
      const double usual = parse_band(field.example, kind_of<Q>).value;
      const double x = wild_ ? si<Q>(limits) : std::clamp(usual * from(0.6, 1.6), low, high);
      const bool share = kind_of<Q>.dimension == Dimension{};
      const UnitRow* unit = share && chance(0.5) ? nullptr : units[pick(units.size())];
      const double number = unit != nullptr ? (x - unit->offset) / unit->factor : x;
      const std::string symbol = unit != nullptr ? " " + std::string(unit->symbol) : "";
      std::string text = fmt::format("{:.{}g}{}", number, chance(0.1) ? 17 : 2 + whole(0, 4), symbol);
      if (spread && chance(0.3)) text += fmt::format(" +- {:.2g}{}", std::abs(number) * from(0.0, 0.3), symbol);
      if (accepted(text, kind_of<Q>, low, high)) return text;
    }
    return "";
  }
  static bool accepted(const std::string& text, Kind kind, double low, double high) {
    try {
      const WrittenBand band = parse_band(text, kind);
      return band.low >= low && band.high <= high;
    } catch (const QuantityError&) {  // `+- 3 degC`, a unit for differences only
      return false;
    }
  }
  void line(const description::Field& field, const std::string& value) {
    std::string key;
    for (const std::string& part : path_) key += part + ".";
    lines_.push_back({key + std::string(field.key), std::string(2 * path_.size(), ' ') + std::string(field.key) + ":" +
                                                        (value.empty() ? "" : " " + value)});
  }
  std::size_t drop(const std::string& key) {
    return std::erase_if(lines_, [&](const Line& one) { return one.key == key; });
  }
  std::string joined() const {
    std::string out;
    for (const Line& one : lines_) out += one.text + "\n";
    return out;
  }

  std::mt19937_64 random_;
  double present_;
  bool wild_;
  std::vector<std::string> path_;
  std::vector<Line> lines_;
};
}  // namespace lumwright
