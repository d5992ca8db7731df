#include "held/held.hpp"
#include "plan/assess.hpp"
#include "plan/describe.hpp"

namespace lumwright::held {
namespace {
Reckoned gauge_1() {
  const description::Build build = described(gauge_1_on_coal);
  plan::SamplesAsked asked;
  asked.count = 512;
  const plan::Assessment a = plan::assess(build, UnitSystem::as_written, nullptr, asked);
  const model::Result& time = *plan::find_result(a, "raise.to_own_blower");
  const auto minutes = [](const model::Measure& m) { return m.quantity.si / 60.0; };
  return {{minutes(std::get<model::Measure>(time.value)), minutes(*time.low), minutes(*time.high)}};
}
}  // namespace

const Cases& whole_cases() {
  static const Cases cases = {{"gauge 1 raise", [] { return gauge_1(); }}};
  return cases;
}
}  // namespace lumwright::held
