// Any description that the reader accepts is assessed, one in eight in four samples too, to finite numbers and a
// verdict that its checks bear out.
#include "description/reader.hpp"
#include "finite.hpp"
#include "plan/assess.hpp"
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::model;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
void finite(const std::optional<Measure>& measure, const char* what) {
  if (measure) fuzz::must(std::isfinite(measure->quantity.si), what);
}
void judge(const Assessment& a) {
  for (const Result& result : a.results) {
    if (const Measure* m = std::get_if<Measure>(&result.value)) finite(*m, result.key.c_str());
    finite(result.low, result.key.c_str());
    finite(result.high, result.key.c_str());
  }
  for (const Series& series : a.series)
    for (const Series::Column& column : series.columns)
      for (const double x : column.si) fuzz::must(std::isfinite(x), column.name.c_str());
  bool failed = false;
  for (const Finding& finding : a.checks) {
    finite(finding.value, finding.id.c_str());
    finite(finding.limit, finding.id.c_str());
    for (const Term& term : finding.terms) finite(term.value, finding.id.c_str());
    failed = failed || finding.verdict == Verdict::fail;
  }
  fuzz::must(failed == (a.verdict == Verdict::fail), "a build fails when a check does");
}
}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::size_t samples = size % 8 == 0 ? 4 : 0;  // they take most of the time
  return fuzz::read_and(read_build, data, size, [&](const Build& build) {
    judge(assess(build, UnitSystem::as_written, nullptr, SamplesAsked{.count = samples, .threads = 1}));
  });
}
