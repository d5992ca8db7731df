#include "quantity/inches.hpp"
#include "quantity/format.hpp"
#include "quantity/text.hpp"
#include "quantity/units.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
using namespace lumwright;

TEST_CASE("whole 64ths of an inch are fractions, nothing else is") {  // by hand
  struct Row {
    double inches;
    std::string text;
  };
  const Row rows[] = {{0.5625, "9/16"}, {33.0 / 64.0, "33/64"}, {1.4375, "1 7/16"}, {2.0, "2"},
                      {0.0, "0"},       {-0.5, "-1/2"},         {0.578, ""},        {1.0 / 128.0, ""},
                      {0.3333333, ""},  {0.5 + 1e-6, ""}};
  for (const Row& row : rows) {
    CAPTURE(row.inches);
    CHECK(inch_fraction(row.inches) == row.text);
  }
  CHECK(inch_fraction(AnyQuantity(25.4 * mm)) == "1");
  CHECK(inch_fraction(AnyQuantity(25.4 * V)).empty());
}
TEST_CASE("a fraction that is printed reads back to the same length") {
  for (int parts = 1; parts <= 640; ++parts) {
    const std::string wrote = fmt::format("{}/64 in", parts);
    const Length length = parse_quantity<Length>(wrote);
    const std::string text = format(length, "in");
    CAPTURE(text);
    CHECK(text.find('.') == std::string::npos);
    CHECK(in(parse_quantity<Length>(text), mm) == doctest::Approx(in(length, mm)).epsilon(1e-12));
  }
}
TEST_CASE("small inches are thou, but for those that a rule has") {
  CHECK(choose_unit(parse_quantity<Length>("1/16 in"), "in", UnitSystem::as_written) == "in");
  CHECK(choose_unit(parse_quantity<Length>("0.014 in"), "in", UnitSystem::as_written) == "thou");
  CHECK(format(parse_quantity<Length>("0.578 in"), "in") == "0.578 in");
}
