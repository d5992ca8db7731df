// What happens during the raise, as the assessment tells it.
#include "describe.hpp"
#include <algorithm>
#include <doctest/doctest.h>

using namespace lumwright;
using namespace lumwright::boiler;
using namespace lumwright::plan;
namespace {
std::optional<Duration> time_of(const Assessment& a, RaiseEventKind kind) {
  for (const Event& event : a.events)
    if (event.kind == kind) return event.time;
  return std::nullopt;
}
}  // namespace

TEST_CASE("the events are those of the results, in the order of time") {
  const Assessment a = assess(example("tarn-beck"));
  REQUIRE(a.events.size() >= 4);
  CHECK(std::is_sorted(a.events.begin(), a.events.end(),
                       [](const Event& one, const Event& other) { return one.time < other.time; }));
  REQUIRE(time_of(a, RaiseEventKind::own_blower).has_value());
  CHECK(in(*time_of(a, RaiseEventKind::own_blower), s) == number(a, "raise.to_own_blower"));
  REQUIRE(time_of(a, RaiseEventKind::working).has_value());
  CHECK(in(*time_of(a, RaiseEventKind::working), s) == number(a, "raise.to_working"));
  REQUIRE(time_of(a, RaiseEventKind::boils).has_value());
  CHECK(*time_of(a, RaiseEventKind::boils) < *time_of(a, RaiseEventKind::own_blower));
  REQUIRE(time_of(a, RaiseEventKind::fully_lit).has_value());
  CHECK(in(*time_of(a, RaiseEventKind::fully_lit), s) == doctest::Approx(140.0));  // the description's kindling time
}

TEST_CASE("without a raise nothing happens") { CHECK(assess(described("name: bare\n")).events.empty()); }
