#include "workshop/tolerance.hpp"
#include "data/tolerances.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include <cmath>

using namespace lumwright;

namespace {
constexpr Length a_nanometre = 1e-6 * mm;  // table values are whole micrometres
void equal(Length found, Length expected) {
  CHECK(found > expected - a_nanometre);
  CHECK(found < expected + a_nanometre);
}
}  // namespace

TEST_CASE("limits of shafts and holes are those of ISO 286-2, with 30.000 mm in the lower step") {
  for (const data::Row& row : published("fits", "limits")) {
    CAPTURE(row.text("id"));
    const Deviations found = limit_deviations(row.quantity<Length>("size"), row.text("class"));
    equal(found.upper, row.quantity<Length>("upper"));
    equal(found.lower, row.quantity<Length>("lower"));
  }
}

TEST_CASE("clearances of letter fits follow from the limits") {
  for (const data::Row& row : published("fits", "letter_fits")) {
    CAPTURE(row.text("id"));
    const ClearanceRange found = letter_fit(row.quantity<Length>("size"), row.text("fit"));
    equal(found.least, row.quantity<Length>("least"));
    equal(found.most, row.quantity<Length>("most"));
  }
}

TEST_CASE("the table of grades stays within a tenth of the formula it was rounded from") {
  // ISO 286-1:1988, annex A: IT6 to IT12 are 10, 16, 25, 40, 64, 100 and 160 i
  constexpr double multiples[] = {10, 16, 25, 40, 64, 100, 160};
  for (const data::Row& row : published("fits", "units")) {
    CAPTURE(row.text("id"));
    const double lower = row.number("over"), upper = row.number("upto"), mean = std::sqrt(lower * upper);
    const double unit = 0.45 * std::cbrt(mean) + 0.001 * mean;
    CHECK(mean == near(row.number("mean"), 2e-4));
    CHECK(unit == near(row.number("unit"), 1e-4));
    for (int grade = 6; grade <= 12; ++grade)
      CHECK(tolerance_grade(upper * mm, grade) == near(multiples[grade - 6] * unit * um, 0.1));
  }
  equal(tolerance_grade(25.0 * mm, 8), 33.0 * um);  // ISO 286-1, table 1
}

TEST_CASE("shaft letters d to g follow the standard's formulas within 2 um") {
  // ISO 286-1:1988, annex A, from memory: d 16 Dm^0.44, e 11 Dm^0.41, f 5.5 Dm^0.41, g 2.5 Dm^0.34
  struct Form {
    char letter;
    double factor, power;
  };
  constexpr Form forms[] = {{'d', 16, 0.44}, {'e', 11, 0.41}, {'f', 5.5, 0.41}, {'g', 2.5, 0.34}};
  for (const data::ShaftDeviationRow& row : data::shaft_deviations())
    for (const Form& form : forms) {
      const Length lower = row.over > 29.0 * mm ? 30.0 * mm : row.over,
                   upper = row.over > 29.0 * mm ? 50.0 * mm : row.upto;
      const double mean = std::sqrt(in(lower, mm) * in(upper, mm));
      const double formula = -form.factor * std::pow(mean, form.power);
      CAPTURE(form.letter);
      CAPTURE(mean);
      CHECK(std::abs(in(row.upper.at(form.letter), um) - formula) < 2.0);
    }
}

TEST_CASE("every step begins where the one before it ends") {
  const auto& grades = data::tolerance_grades();
  for (std::size_t i = 1; i < grades.size(); ++i) equal(grades[i].over, grades[i - 1].upto);
  const auto& shafts = data::shaft_deviations();
  for (std::size_t i = 1; i < shafts.size(); ++i) equal(shafts[i].over, shafts[i - 1].upto);
}

TEST_CASE("classes, grades, sizes and fits that the tables lack are refused") {
  CHECK_THROWS_WITH_AS(limit_deviations(25.0 * mm, "k6"), "tolerance class `k6` is neither a hole H nor a shaft a to h",
                       ModelError);
  CHECK_THROWS_WITH_AS(limit_deviations(25.0 * mm, "f7x"), "`f7x` is not a tolerance class such as f7 or H8",
                       ModelError);
  CHECK_THROWS_WITH_AS(limit_deviations(25.0 * mm, "f13"), "tolerance grade IT13 is not IT6 to IT12", ModelError);
  CHECK_THROWS_WITH_AS(limit_deviations(3.0 * mm, "f7"), "nominal size 3 mm is not over 3 mm and up to 50 mm",
                       ModelError);
  CHECK_THROWS_WITH_AS(letter_fit(25.0 * mm, "H8"), "`H8` is not a fit such as H8/f7", ModelError);
  CHECK_THROWS_WITH_AS(letter_fit(25.0 * mm, "H8/H7"), "`H8/H7` fits a hole into a hole", ModelError);
  CHECK_THROWS_AS(letter_fit(25.0 * mm, "H8/"), ModelError);
  CHECK_THROWS_AS(tolerance_grade(std::nan("") * mm, 7), ModelError);
}
