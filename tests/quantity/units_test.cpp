#include "quantity/units.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/text.hpp"
#include <cmath>
#include <fmt/format.h>
#include <set>
#include <string>
using namespace lumwright;

namespace {
Kind kind_read_by(const UnitRow& row) {
  using Reads = UnitRow::Reads;
  const Scale scale = row.reads == Reads::points  ? Scale::point
                      : row.reads == Reads::gauge ? Scale::gauge
                                                  : Scale::ratio;
  return {row.dimension, scale};
}
const UnitRow& known(const std::string& symbol) {
  const UnitRow* row = find_unit(symbol);
  REQUIRE_MESSAGE(row != nullptr, symbol);
  return *row;
}
}  // namespace

TEST_CASE("every unit is worth what another program says, and none goes unchecked") {
  std::set<std::string> checked;
  for (const data::Row& row : published("conversions")) {
    const std::string symbol = row.text("unit");
    CAPTURE(symbol);
    CHECK(known(symbol).factor == near(row.number("expect"), row.number("tolerance")));
    checked.insert(symbol);
  }
  for (const data::Row& row : published("conversions", "points")) {
    const std::string text = row.text("text");
    CAPTURE(text);
    CHECK(parse_band(text, kind_of<Temperature>).value == near(row.number("expect"), row.number("tolerance")));
    checked.insert(text.substr(text.find(' ') + 1));
  }
  for (const UnitRow& row : unit_table()) {
    CAPTURE(row.symbol);
    CHECK(checked.contains(std::string(row.symbol)));
  }
}

TEST_CASE("conversion factors agree with NIST SP 811") {
  for (const data::Row& row : published("conversions", "nist")) {
    CAPTURE(row.text("what"));
    CHECK(known(row.text("unit")).factor == near(row.number("expect"), row.number("tolerance")));
  }
}

TEST_CASE("every unit reads back what it prints, in every spelling") {
  const double numbers[] = {0.001, 0.37, 1, 12.5, 99999, 3e6};
  for (const UnitRow& row : unit_table()) {
    const Kind kind = kind_read_by(row);
    CAPTURE(row.symbol);
    for (double x : numbers) {
      const AnyQuantity q(x * row.factor + row.offset, kind);
      CHECK(parse_band(format(q, row.symbol, 17), kind).value == near(q.si, 1e-15));
      CHECK(parse_band(format(q, row.symbol, 17), kind).unit == row.symbol);
    }
    std::string_view rest = row.spellings;
    while (!rest.empty()) {
      const std::string spelling(rest.substr(0, rest.find('|')));
      rest.remove_prefix(std::min(spelling.size() + 1, rest.size()));
      CAPTURE(spelling);
      CHECK(parse_band("2 " + spelling, kind).unit == row.symbol);
      CHECK(parse_band("2 " + spelling, kind).value == near(2 * row.factor + row.offset, 1e-15));
    }
  }
}

TEST_CASE("no two units share a spelling, and every kind of quantity has a name and an SI unit") {
  std::set<std::string> seen;
  for (const UnitRow& row : unit_table()) {
    std::string_view rest = row.spellings;
    std::string one(row.symbol);
    while (true) {
      CAPTURE(one);
      CHECK(seen.insert(one).second);
      if (rest.empty()) break;
      one = std::string(rest.substr(0, rest.find('|')));
      rest.remove_prefix(std::min(one.size() + 1, rest.size()));
    }
    CHECK(kind_name(kind_read_by(row)) != "another kind of quantity");
    CHECK_NOTHROW(si_symbol(kind_read_by(row)));
  }
  CHECK(find_unit("") == nullptr);
  CHECK(find_unit("", kind_of<Length>) == nullptr);
  CHECK(find_unit("g", kind_of<GaugePressure>) == nullptr);
}

TEST_CASE("the nearest unit is one that measures the right thing") {
  struct Row {
    std::string word;
    Kind kind;
    std::string_view expected;
  };
  const Row rows[] = {{"mAH", kind_of<Charge>, "mAh"},        {"litres/min", kind_of<VolumeFlow>, ""},
                      {"l/mn", kind_of<VolumeFlow>, "l/min"}, {"RPM", kind_of<Rotation>, "rpm"},
                      {"mmh2o", kind_of<Pressure>, "mmH2O"},  {"Volts", kind_of<Voltage>, "V"},
                      {"deg", kind_of<Temperature>, "degC"},  {"foo", kind_of<Pressure>, ""},
                      {"miunte", kind_of<Duration>, "min"},   {"", kind_of<Length>, ""}};
  for (const Row& row : rows) {
    CAPTURE(row.word);
    CHECK(nearest_unit(row.word, row.kind) == row.expected);
  }
}

TEST_CASE("unit constants agree with their definitions") {
  // identity: definitions of the international yard and pound (1959), standard gravity (CGPM 1901), SI Brochure 9
  CHECK(in(psi, Pa) == near(0.45359237 * 9.80665 / (0.0254 * 0.0254), 1e-15));
  CHECK(in(inH2O, Pa) == near(0.0254 * 1000.0 * 9.80665, 1e-15));
  CHECK(in(ounce, g) == near(28.349523125, 1e-15));
  CHECK(in(foot3, litre) == near(28.316846592, 1e-15));
  CHECK(in(imperial_pint, ml) == near(568.26125, 1e-15));  // exact: UK Weights and Measures Act 1985, from memory
  CHECK(in(atmosphere, Pa) == near(101325.0, 0));          // exact: CGPM 1954
  CHECK(circle(2.0 * m) == near(3.14159265358979324 * m2, 1e-15));
}
