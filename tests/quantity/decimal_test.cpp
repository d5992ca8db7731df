#include "quantity/decimal.hpp"
#include "near.hpp"
#include <limits>
#include <string>
#include <vector>
using namespace lumwright;

TEST_CASE("a number is read as far as it goes, and what stands behind it is handed back") {
  struct Row {
    std::string text;
    double value;
    std::string rest;
  };
  for (const Row& row :
       std::vector<Row>{{"17.2 mm", 17.2, " mm"},
                        {"7..9 mm", 7.0, ".9 mm"},  // the point is the number's; the range asks it back
                        {".5", 0.5, ""},
                        {"1e3 Pa", 1000.0, " Pa"},
                        {"1e mm", 1.0, "e mm"},
                        {"2e+", 2.0, "e+"},
                        {"-3", -3.0, ""},
                        {"0x10", 0.0, "x10"},
                        {"4.9406564584124654e-324", std::numeric_limits<double>::denorm_min(), ""},
                        {"0e-999", 0.0, ""}}) {
    CAPTURE(row.text);
    const Decimal read = read_decimal(row.text);
    CHECK(static_cast<bool>(read));
    CHECK(read.value == row.value);
    CHECK(read.rest == row.rest);
  }
}

TEST_CASE("what is no number, or none that a double holds, is a fault") {
  for (const std::string text : {"", "mm", "+1", " 1", ".", "-", "e3"}) {
    CAPTURE(text);
    CHECK(read_decimal(text).fault == std::errc::invalid_argument);
    CHECK(read_decimal(text).rest == text);
  }
  for (const std::string text : {"1e400", "-1e400", "1e-400"}) {
    CAPTURE(text);
    CHECK(read_decimal(text).fault == std::errc::result_out_of_range);
    CHECK(read_decimal(text).rest.empty());
  }
}
