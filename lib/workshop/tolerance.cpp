#include "workshop/tolerance.hpp"
#include "data/tolerances.hpp"
#include "quantity/errors.hpp"
#include <charconv>
#include <fmt/format.h>

namespace lumwright {
namespace {
// Sizes come through floating point: a millionth of a millimetre above 30 is still 30.
constexpr Length rounding = 1e-6 * mm;

template <class Step>
const Step& step_of(const std::vector<Step>& steps, Length size) {
  for (const Step& step : steps)
    if (size > step.over + rounding && size <= step.upto + rounding) return step;
  throw ModelError(fmt::format("nominal size {:.6g} mm is not over 3 mm and up to 50 mm", in(size, mm)));
}

struct ToleranceClass {
  char letter;
  int grade;
};
ToleranceClass read_class(std::string_view text) {
  int grade = 0;
  const char* const end = text.data() + text.size();
  if (text.size() >= 2) {
    const auto [stop, error] = std::from_chars(text.data() + 1, end, grade);
    if (error == std::errc{} && stop == end) return {text[0], grade};
  }
  throw ModelError(fmt::format("`{}` is not a tolerance class such as f7 or H8", text));
}
}  // namespace

Length tolerance_grade(Length size, int grade) {
  const data::ToleranceGradeRow& step = step_of(data::tolerance_grades(), size);
  const auto found = step.grades.find(grade);
  if (found == step.grades.end()) throw ModelError(fmt::format("tolerance grade IT{} is not IT6 to IT12", grade));
  return found->second;
}

Deviations limit_deviations(Length size, std::string_view tolerance_class) {
  const ToleranceClass wanted = read_class(tolerance_class);
  const Length width = tolerance_grade(size, wanted.grade);
  if (wanted.letter == 'H') return {.upper = width, .lower = 0.0 * mm};
  const data::ShaftDeviationRow& step = step_of(data::shaft_deviations(), size);
  const auto found = step.upper.find(wanted.letter);
  if (found == step.upper.end())
    throw ModelError(fmt::format("tolerance class `{}` is neither a hole H nor a shaft a to h", tolerance_class));
  return {.upper = found->second, .lower = found->second - width};
}

ClearanceRange letter_fit(Length size, std::string_view fit) {
  const auto stroke = fit.find('/');
  if (stroke == std::string_view::npos || !fit.starts_with('H'))
    throw ModelError(fmt::format("`{}` is not a fit such as H8/f7", fit));
  const Deviations hole = limit_deviations(size, fit.substr(0, stroke));
  const Deviations shaft = limit_deviations(size, fit.substr(stroke + 1));
  if (fit[stroke + 1] == 'H') throw ModelError(fmt::format("`{}` fits a hole into a hole", fit));
  return {.least = hole.lower - shaft.upper, .most = hole.upper - shaft.lower};
}
}  // namespace lumwright
