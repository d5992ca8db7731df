#include "data/tolerances.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<ToleranceGradeRow>& tolerance_grades() {
  static const std::vector<ToleranceGradeRow> all = [] {
    std::vector<ToleranceGradeRow> found;
    for (const Row& row : rows("tolerances", "grades")) {
      std::map<int, Length> grades;
      for (int grade = 6; grade <= 12; ++grade) grades[grade] = row.quantity<Length>("IT" + std::to_string(grade));
      found.push_back(
          {row.quantity<Length>("over"), row.quantity<Length>("upto"), grades, row.basis()});
    }
    return found;
  }();
  return all;
}

const std::vector<ShaftDeviationRow>& shaft_deviations() {
  static const std::vector<ShaftDeviationRow> all = [] {
    std::vector<ShaftDeviationRow> found;
    for (const Row& row : rows("tolerances", "shafts")) {
      std::map<char, Length> upper;
      for (char letter = 'a'; letter <= 'h'; ++letter) upper[letter] = row.quantity<Length>(std::string(1, letter));
      found.push_back(
          {row.quantity<Length>("over"), row.quantity<Length>("upto"), upper, row.basis()});
    }
    return found;
  }();
  return all;
}
}  // namespace lumwright::data
