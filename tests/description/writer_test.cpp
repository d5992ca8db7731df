#include "description/writer.hpp"
#include "description/description.hpp"
#include "description/keys.hpp"
#include "description/taken_up.hpp"
#include "description/template.hpp"
#include "description/written.hpp"
#include "near.hpp"
#include "quantity/units.hpp"
#include <algorithm>
#include <random>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;

namespace {
// Every value of a build, bit for bit.
struct Values {
  std::vector<std::string> out;
  std::string section_name;
  template <class Q>
  void operator()(Field f, const Given<Q>& given, Limits) {
    using T = QuantityTraits<Q>;
    if (given)
      out.push_back(fmt::format("{}{} {:a} {:a} {:a} {} {}", section_name, f.key, T::to_si(given.band->value),
                                T::to_si(given.band->low), T::to_si(given.band->high), given.unit, given.has_spread));
  }
  void operator()(Field f, const Count& count, int, int) {
    if (count) out.push_back(fmt::format("{}{} {}", section_name, f.key, *count));
  }
  void operator()(Field f, const Text& text, Allowed) {
    if (text) out.push_back(fmt::format("{}{} {}", section_name, f.key, *text));
  }
  template <class X, class Y>
  void operator()(Field f, const Points<X, Y>& points, Limits, Limits) {
    for (const auto& p : points.points)
      out.push_back(fmt::format("{}{} {:a} {:a} {} {}", section_name, f.key, QuantityTraits<X>::to_si(p.x),
                                QuantityTraits<Y>::to_si(p.y), points.x_unit, points.y_unit));
  }
  void operator()(Field f, const EfficiencyTable& table) {
    if (table.share) out.push_back(fmt::format("{}{} {:a}", section_name, f.key, *table.share));
    for (const auto& p : table.points)
      out.push_back(fmt::format("{}{} {:a} {:a} {:a}", section_name, f.key, in(p.input, V), in(p.output, W), p.share));
  }
  template <class Part>
  void section(Field f, const Part& part) {
    Values inner{{}, section_name + std::string(f.key) + "."};
    Part::fields(part, inner);
    out.insert(out.end(), inner.out.begin(), inner.out.end());
  }
};
std::vector<std::string> values(const Build& build) {
  Values v{{}, ""};
  Build::fields(build, v);
  return v.out;
}
}  // namespace

TEST_CASE("what is written reads back the same, bit for bit") {
  for (const std::string& text : {full_description, with(with(taken_up(new_description()), "duty: 60 %", "duty:"), "kind: none", "kind: lower output"),
                                  std::string("name: x\n")}) {
    const Build build = read(text);
    const std::string written_text = write_build(build);
    CHECK(values(read(written_text)) == values(build));
    CHECK(write_build(read(written_text)) == written_text);
  }
  const auto single = std::count_if(keys().begin(), keys().end(), [](const Key& key) { return !key.is_section; });
  CHECK(values(read(full_description)).size() ==
        static_cast<std::size_t>(single) + 6 -
            4);  // lists of four, two, two and two; no `duty`, `volume`, `lagging`, `voltage_most`
  CHECK(write_build(Build{}) == "{}\n");
  CHECK(values(read("{}\n")).empty());
}

TEST_CASE("odd free texts survive") {
  for (const std::string& name :
       std::vector<std::string>{"a: b", "# no comment", "null", "~", "- x", "\xC3\xA9\"t\\\xC3\xA9", "{a}", " x ",
                                "8BA", "*x", "5", "yes", "%", "'", "..", "?", "a #b"}) {
    Build build;
    build.name.value = name;
    CAPTURE(write_build(build));
    CHECK(*read(write_build(build)).name == name);
  }
}

TEST_CASE("any number in any unit, with any spread, is written so that it reads back to itself") {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> exponent(-6, 6), mantissa(1, 10), share(0, 0.5);
  std::uniform_int_distribution<int> digits(1, 17), form(0, 3);
  int exact = 0, total = 0;
  for (int i = 0; i < 4000; ++i) {
    const auto table = unit_table();
    const UnitRow& row = table[static_cast<std::size_t>(i) % table.size()];
    const Scale scale = row.reads == UnitRow::Reads::points  ? Scale::point
                        : row.reads == UnitRow::Reads::gauge ? Scale::gauge
                                                             : Scale::ratio;
    const Kind kind{row.dimension, scale};
    const double x = mantissa(random) * std::pow(10, scale == Scale::point ? 1 : exponent(random));
    const std::string number = fmt::format("{:.{}g}", x, digits(random)), symbol(row.symbol);
    const std::string by = fmt::format("{:.{}g}", x * share(random), digits(random) % 4 + 1);
    const std::string texts[] = {number + " " + symbol, number + " " + symbol + " +- " + by + " " + symbol,
                                 number + " " + symbol + (scale == Scale::point ? " +- 1.5 K" : " +- 12.5 %"),
                                 number + ".." + fmt::format("{:.{}g}", 1.37 * x + 1, digits(random)) + " " + symbol};
    const std::string& text = texts[form(random)];
    CAPTURE(text);
    const WrittenBand band = parse_band(text, kind);
    const std::string again = written(band, kind);
    CAPTURE(again);
    const WrittenBand back = parse_band(again, kind);
    CHECK(back.unit == band.unit);
    CHECK(back.has_spread == band.has_spread);
    CHECK(back.value == near(band.value, 1e-15));
    CHECK(std::abs(back.low - band.low) <= 1e-15 * std::abs(band.value) + 1e-15 * std::abs(band.low));
    CHECK(std::abs(back.high - band.high) <= 1e-15 * std::abs(band.value) + 1e-15 * std::abs(band.high));
    ++total;
    exact += back.value == band.value && back.low == band.low && back.high == band.high;
  }
  CHECK(total > 3000);
  CHECK(exact >= total * 99 / 100);
}

TEST_CASE("a quantity is written as short as it can be") {
  CHECK(written(AnyQuantity(17.2 * mm), "mm") == "17.2 mm");
  CHECK(written(AnyQuantity(15.875 * mm), "in") == "5/8 in");
  CHECK(written(AnyQuantity(5200.0 * rpm), "rpm") == "5200 rpm");
  CHECK(written(AnyQuantity(degC(12)), "degC") == "12 degC");
  CHECK(written(AnyQuantity(0.35), "%") == "35 %");
  CHECK(written(AnyQuantity(0.35), "") == "0.35");
  CHECK(written(parse_band("17.20 mm ± 0.03 mm", kind_of<Length>), kind_of<Length>) == "17.2 mm +- 0.03 mm");
  CHECK(written(parse_band("59 degF +- 9 degF", kind_of<Temperature>), kind_of<Temperature>) == "59 degF +- 9 degF");
}
