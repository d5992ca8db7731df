#include "quantity/format.hpp"
#include "near.hpp"
#include <limits>
#include <stdexcept>
#include <string>
using namespace lumwright;

TEST_CASE("numbers keep their significant digits and no more") {
  struct Row {
    double x;
    int digits;
    std::string expected;
  };
  const Row rows[] = {{17.2, 3, "17.2"},       {0.2205, 4, "0.2205"}, {9.996, 3, "10.0"},     {0.09996, 3, "0.100"},
                      {12345, 3, "12345"},     {0, 3, "0"},           {-0.0, 3, "0"},         {1e-5, 3, "0.0000100"},
                      {2.5e8, 3, "250000000"},   {999.6, 3, "1000"},    {-3.14159, 3, "-3.14"}, {5, 3, "5.00"},
                      {0.000123, 2, "0.00012"}};
  for (const Row& row : rows) {
    CAPTURE(row.x);
    CHECK(format_number(row.x, row.digits) == row.expected);
  }
  CHECK_THROWS_AS(format_number(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
  CHECK_THROWS_AS(format_number(std::numeric_limits<double>::infinity()), std::logic_error);
}

TEST_CASE("a quantity is printed in the unit it was written in, or in the system's usual one") {
  const AnyQuantity bore = 15.875 * mm;
  CHECK(format(bore, choose_unit(bore, "in", UnitSystem::as_written), 4) == "5/8 in");
  CHECK(format(bore, choose_unit(bore, "in", UnitSystem::metric)) == "15.9 mm");
  CHECK(format(bore, choose_unit(bore, "mm", UnitSystem::imperial)) == "5/8 in");
  CHECK(format(bore, choose_unit(bore, "V", UnitSystem::as_written)) == "15.9 mm");  // a unit that cannot express it
  CHECK(format(AnyQuantity(0.1 * mm), choose_unit(0.1 * mm, "", UnitSystem::imperial)) == "3.94 thou");
  CHECK(format(AnyQuantity(58.0 * Pa), choose_unit(58.0 * Pa, "", UnitSystem::metric)) == "58.0 Pa");
  CHECK(format(AnyQuantity(58.0 * Pa), choose_unit(58.0 * Pa, "", UnitSystem::imperial)) == "0.233 inH2O");
  CHECK(format(AnyQuantity(degC(15)), choose_unit(degC(15), "", UnitSystem::imperial)) == "59.0 degF");
  CHECK(format(AnyQuantity(GaugePressure{3.0 * bar}), "bar") == "3.00 bar");
  CHECK(format(AnyQuantity(0.35), choose_unit(0.35, "%", UnitSystem::as_written)) == "35.0 %");
  CHECK(format(AnyQuantity(0.35), choose_unit(0.35, "", UnitSystem::metric)) == "0.350");
  CHECK(percent(0.123456) == "12.3 %");
  CHECK(number_in(degC(100), "degF") == near(212.0, 1e-14));
  CHECK_THROWS_AS(format(bore, "V"), std::logic_error);
}

TEST_CASE("results carry coherent SI symbols") {
  CHECK(si_symbol(kind_of<Length>) == "m");
  CHECK(si_symbol(kind_of<MassFlow>) == "kg/s");
  CHECK(si_symbol(kind_of<Pressure>) == "Pa");
  CHECK(si_symbol(kind_of<GaugePressure>) == "Pa");
  CHECK(si_symbol(kind_of<Temperature>) == "K");
  CHECK(si_symbol(kind_of<Charge>) == "C");
  CHECK(si_symbol(kind_of<Inductance>) == "H");
  CHECK(si_symbol(kind_of<double>) == "1");
}
