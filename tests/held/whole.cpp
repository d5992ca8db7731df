#include "held/held.hpp"
#include "plan/assess.hpp"
#include "plan/describe.hpp"

namespace lumwright::held {
namespace {
/// Grate and boiler of usual size; what a good fan draws is known no better than to a quarter.
Reckoned gauge_1() {
  const description::Build build = described(R"(
engine:
  boiler: { water: 350 ml, own_blower_from: 25 psi }
  grate: { length: 42 mm, width: 30 mm }
  tubes: { count: 6, bore: 8 mm, length: 140 mm }
fuel: { kind: steam coal, bed: 30 mm }
draught: { air_flow: 0.3 g/s +- 25 % }
)");
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
