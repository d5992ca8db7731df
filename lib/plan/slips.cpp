#include "plan/slips.hpp"
#include "data/cells.hpp"
#include "data/table.hpp"
#include "description/written.hpp"
#include "quantity/format.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <map>

namespace lumwright::plan {
namespace {
struct WrittenNumber {
  AnyQuantity value;
  std::string named, text;  // "the highest pressure of fan.curve", "190 mbar"
  std::string unit;         // it is written in; empty of a count and of a table's value
  int line;
  /// A limit of a table as the author would write it.
  std::string in_its_unit(const std::string& limit) const {
    return unit.empty() ? limit : format(AnyQuantity(parse_band(limit, value.kind).value, value.kind), unit);
  }
};
using WrittenNumbers = std::map<std::string, WrittenNumber, std::less<>>;

/// Every number of a description by its key. Of lists the greatest member is told, under a name of its own.
class NumberCollector {
 public:
  NumberCollector(WrittenNumbers& numbers, std::string path) : numbers_(numbers), path_(std::move(path)) {}
  template <class Q>
  void operator()(description::Field field, const description::Given<Q>& given, description::Limits) {
    if (!given) return;
    const AnyQuantity value(*given);  // a value that was never written, as a program sets it, has no unit of its own
    const bool named = !given.unit.empty() || value.kind == kind_of<double>;
    add(field, {}, value,
        {named ? description::written(given) : format(value, choose_unit(value, "", UnitSystem::as_written)),
         given.unit},
        given.at);
  }
  void operator()(description::Field field, const description::Count& count, int, int) {
    if (count) add(field, {}, AnyQuantity(double(*count)), {fmt::format("{}", *count), ""}, count.at);
  }
  void operator()(description::Field, const description::Text&, description::Allowed) {}
  template <class X, class Y>
  void operator()(description::Field field, const description::Points<X, Y>& points, description::Limits,
                  description::Limits) {
    if (!points) return;
    AnyQuantity x(points.points.front().x), y(points.points.front().y), rise(0.0, kind_of<Y>);
    double before = y.si;
    for (const auto& point : points.points) {
      const AnyQuantity py(point.y);
      x.si = std::max(x.si, AnyQuantity(point.x).si);
      y.si = std::max(y.si, py.si);
      rise.si = std::max(rise.si, py.si - before);
      before = py.si;
    }
    if constexpr (std::is_same_v<X, Y>) {
      x.si = std::max(x.si, y.si);
      add(field, {"_most", "the farthest of "}, x, in_short(x, points.x_unit), points.at);
    } else {
      add(field, {".flow_most", "the greatest flow of "}, x, in_short(x, points.x_unit), points.at);
      add(field, {".pressure_most", "the highest pressure of "}, y, in_short(y, points.y_unit), points.at);
      add(field, {".rise", "the steepest rise of "}, rise, in_short(rise, points.y_unit), points.at);
    }
  }
  void operator()(description::Field, const description::EfficiencyTable&) {}
  template <class Part>
  void section(description::Field field, const Part& part) {
    NumberCollector inner(numbers_, path_ + std::string(field.key) + ".");
    Part::fields(part, inner);
  }

 private:
  /// What a list is told by: an ending of its key, and words before it.
  struct Member {
    std::string_view ending, words;
  };
  struct Spelt {
    std::string text, unit;
  };
  static Spelt in_short(AnyQuantity value, const std::string& unit) {
    const std::string chosen = choose_unit(value, unit, UnitSystem::as_written);
    return {format(value, chosen), chosen};
  }
  void add(description::Field field, Member member, AnyQuantity value, Spelt spelt, input::Position at) {
    const std::string key = path_ + std::string(field.key);
    numbers_.insert_or_assign(
        key + std::string(member.ending),
        WrittenNumber{value, std::string(member.words) + key, std::move(spelt.text), std::move(spelt.unit), at.line});
  }
  WrittenNumbers& numbers_;
  std::string path_;
};
WrittenNumbers numbers_of(const description::Build& build) {
  WrittenNumbers numbers;
  NumberCollector collector(numbers, "");
  description::Build::fields(build, collector);
  const description::part::PackPart& pack = build.supply.pack;
  if (pack.cell)
    for (const data::CellRow& cell : data::cells())
      if (cell.id == *pack.cell)
        numbers.insert_or_assign("supply.pack.usual_capacity",
                                 WrittenNumber{AnyQuantity(cell.capacity.value), "", "usual", "", pack.cell.at.line});
  return numbers;
}
std::optional<double> product(const std::vector<std::string>& keys, const WrittenNumbers& numbers) {
  double all = 1.0;
  for (const std::string& key : keys) {
    const auto found = numbers.find(key);
    if (found == numbers.end()) return std::nullopt;
    all *= found->second.value.si;
  }
  return all;
}
constexpr const char* slipped = "a decimal point or a unit may have slipped";

/// "2.6 times", "0.54 of"; a ratio that two figures round to one is said in words.
std::string times_the_limit(double of_limit) {
  if (of_limit > 0.985 && of_limit < 1.05) return of_limit > 1.0 ? "just over" : "just under";
  return format_number(of_limit, 2) + (of_limit > 1.0 ? " times" : " of");
}
std::optional<Remark> strange_ratio(const data::Row& row, const WrittenNumbers& numbers) {
  const std::vector<std::string> of = row.texts("of"), over = row.texts("over");
  const auto above = product(of, numbers), below = product(over, numbers);
  if (!above || !below || *below <= 0.0) return std::nullopt;
  const double ratio = *above / std::pow(*below, row.number("power")), low = row.number("from"),
               high = row.number("to");
  if (*above <= 0.0 || (ratio >= low && ratio <= high)) return std::nullopt;
  std::vector<std::string> named;
  for (const std::vector<std::string>& keys : {of, over})
    for (const std::string& key : keys) {
      const WrittenNumber& number = numbers.find(key)->second;
      if (key == "supply.pack.usual_capacity") continue;  // of a table, on no line
      const std::string one = fmt::format("{} {} on line {}", number.named, number.text, number.line);
      if (std::find(named.begin(), named.end(), one) == named.end()) named.push_back(one);
    }
  return Remark{of.front(), fmt::format("{}: {} the {} that is usual for small engines ({}); {}", row.text("what"),
                                        times_the_limit(ratio > high ? ratio / high : ratio / low),
                                        ratio > high ? "most" : "least", fmt::join(named, ", "), slipped)};
}
std::optional<Remark> strange_value(const data::Row& row, const WrittenNumbers& numbers) {
  const auto found = numbers.find(row.text("key"));
  if (found == numbers.end()) return std::nullopt;
  const AnyQuantity value = found->second.value;
  if (value.si == 0.0 || (value.si >= parse_band(row.text("from"), value.kind).value &&
                          value.si <= parse_band(row.text("to"), value.kind).value))
    return std::nullopt;
  return Remark{found->first,
                fmt::format("{} {} on line {} is usually between {} and {}; {}", found->first, found->second.text,
                            found->second.line, found->second.in_its_unit(row.text("from")),
                            found->second.in_its_unit(row.text("to")), slipped)};
}
}  // namespace

std::vector<Remark> likely_slips(const description::Build& build) {
  const WrittenNumbers numbers = numbers_of(build);
  std::vector<Remark> remarks;
  for (const data::Row& row : data::rows("slips", "ratios"))
    if (auto remark = strange_ratio(row, numbers)) remarks.push_back(std::move(*remark));
  for (const data::Row& row : data::rows("slips", "ranges"))
    if (auto remark = strange_value(row, numbers)) remarks.push_back(std::move(*remark));
  return remarks;
}
std::vector<Remark> older_names(const std::vector<description::Renamed>& renamed) {
  std::vector<Remark> remarks;
  for (const description::Renamed& one : renamed)
    if (one.why == description::Renamed::Why::weighed_water)
      remarks.push_back(
          {one.key, fmt::format("`{}: {}` is read as {}: 1 g of water is 1 ml.", one.key, one.old, one.now)});
    else
      remarks.push_back({one.key, fmt::format("`{}` is called `{}` now; the older name is read until the next release.",
                                            one.old == one.key ? one.key : one.key + ": " + one.old, one.now)});
  return remarks;
}
}  // namespace lumwright::plan
