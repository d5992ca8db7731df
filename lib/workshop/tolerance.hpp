// ISO 286 limits and fits: what a letter and a grade such as H8/f7 mean in micrometres.
#pragma once
#include "quantity/quantity.hpp"
#include <string_view>

namespace lumwright {
/// Width of tolerance grade IT6 to IT12 at a nominal size over 3 up to and including 50 mm.
/// ISO 286-1, table 1 (the table, not the formula, which its rounding rules leave by up to 10 %).
/// Throws ModelError for another size or grade.
Length tolerance_grade(Length size, int grade);

struct Deviations {
  Length upper;
  Length lower;
};
/// Limits of a shaft class a to h ("f7") or of a hole class H ("H8") about a nominal size, ISO 286-1 and -2.
/// Throws ModelError for any other class or size.
Deviations limit_deviations(Length size, std::string_view tolerance_class);

struct ClearanceRange {
  Length least;
  Length most;
};
/// Diametral clearance of a hole and shaft fit written "H8/f7". Throws ModelError as `limit_deviations`.
ClearanceRange letter_fit(Length size, std::string_view fit);
}  // namespace lumwright
