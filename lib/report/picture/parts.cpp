#include "report/picture/parts.hpp"
#include "report/answers.hpp"
#include <algorithm>

namespace lumwright::report {
const std::vector<double>& column(const plan::Assessment& assessment, std::string_view series, std::string_view name) {
  static const std::vector<double> none;
  for (const plan::Series& one : assessment.series)
    if (one.name == series)
      for (const plan::Series::Column& column : one.columns)
        if (column.name == name) return column.si;
  return none;
}
std::string told(const plan::Assessment& assessment, std::string_view key, const TextStyle& style) {
  const model::Result* result = plan::find_result(assessment, key);
  return result == nullptr ? "" : answer_text(*result, style);
}
}  // namespace lumwright::report
