#include "data/fan_test.hpp"
#include "description/reader.hpp"
#include "fan_test/detail/parts.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::fan_test {
namespace {
std::string item_of(std::size_t number) { return fmt::format("{}. of the list: ", number); }

[[noreturn]] void fault(input::Position at, const char* key, std::string message, std::string help) {
  throw ReadingFault({at, key, std::move(message), std::move(help)});
}

/// The used reading that lies highest by `rank`.
template <class F>
std::size_t foremost(const FanTest& test, F&& rank) {
  std::size_t best = 0;
  double most = -1.0;
  for (std::size_t i = 0; i < test.points.size(); ++i)
    if (test.points[i].left_out.empty() && rank(test.points[i]) > most) best = i, most = rank(test.points[i]);
  return best;
}
}  // namespace

void refuse_slipped_speeds(const Setting& s, const std::vector<TestedPoint>& points) {
  const double most = data::fan_test_rule("speed carried").value;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double ratio = points[i].speed_ratio;
    if (!points[i].left_out.empty() || (ratio <= most && ratio >= 1.0 / most)) continue;
    const description::part::FanTestReading& r = s.file.readings[i];
    const bool counted = r.speed && s.speed;
    const std::string here = counted ? format(*r.speed, "rpm", 4) : format(*r.voltage, "V");
    const std::string there = counted ? format(*s.speed, "rpm", 4) : format(*s.voltage, "V");
    fault(counted ? r.speed.at : r.voltage.at, counted ? "readings.speed" : "readings.voltage",
          item_of(i + 1) + fmt::format("expected a fan that turns no more than {} times faster or slower than where the "
                                       "curve holds ({}), got '{}', {} times {}",
                                       format_number(most), there, here, format_number(ratio > 1.0 ? ratio : 1.0 / ratio),
                                       ratio > 1.0 ? "slower" : "faster"),
          "look for a slipped digit, here and in the speeds of the other readings and of `fan`");
  }
}

void refuse_rising(const Setting& s, const std::vector<TestedPoint>& points) {
  const TestedPoint* last = nullptr;
  Pressure most = 0.0 * Pa;
  bool two_flows = false;
  for (const TestedPoint& p : points) {
    if (!p.left_out.empty()) continue;
    two_flows = two_flows || (last != nullptr && p.point.flow != last->point.flow);
    most = std::max(most, p.point.pressure);
    if (last == nullptr || p.point.flow > last->point.flow) last = &p;
  }
  if (!two_flows || last->point.pressure < most) return;
  fault(s.file.readings[last->number - 1].depression.at, "readings.depression",
        item_of(last->number) + fmt::format("expected less pressure at the largest flow than at some other, got {} at {}",
                                            format(last->point.pressure, "Pa"), format(last->point.flow, "l/min")),
        "look for swapped readings or a slipped digit; if they are right, larger holes are needed");
}

void refuse_unfinite(const Setting& s, const FanTest& test) {
  const auto sound = [](const draught::CurveBandPoint& p) {
    return std::isfinite(in(p.flow, m3_per_s)) && std::isfinite(in(p.pressure, Pa)) && std::isfinite(in(p.low, Pa)) &&
           std::isfinite(in(p.high, Pa));
  };
  bool all = std::isfinite(test.fit.widened) && std::isfinite(in(test.fit.free_air.high - test.fit.free_air.low, m3_per_s));
  for (const draught::CurveBandPoint& p : test.fit.curve) all = all && sound(p);
  if (all) return;
  // The reading furthest from the middle of the others, by what it was carried to.
  const std::size_t worst = foremost(test, [&](const TestedPoint& p) {
    double apart = 0.0;
    for (const TestedPoint& other : test.points)
      if (other.left_out.empty()) apart += std::abs(std::log(p.point.pressure / other.point.pressure));
    return apart;
  });
  fault(s.file.readings[worst].at, "readings",
        item_of(worst + 1) + fmt::format("no curve with a band goes through this reading and the others: it comes to {} "
                                         "at {}",
                                         format(test.points[worst].point.pressure, "Pa"),
                                         format(test.points[worst].point.flow, "l/min")),
        "look for a slipped digit in its depression, plate, voltage and speed");
}

void refuse_unwritable(const Setting& s, const FanTest& test) {
  try {
    static_cast<void>(description::read_build({"curve.yaml", curve_lines(test)}));
  } catch (const input::InputError& refused) {
    const input::Fault& first = refused.faults().front();
    const bool by_flow = first.message.find("l/min") != std::string::npos;
    const std::size_t worst = foremost(test, [&](const TestedPoint& p) {
      return by_flow ? in(p.point.flow, m3_per_s) : in(p.point.pressure, Pa);
    });
    const TestedPoint& p = test.points[worst];
    fault(s.file.readings[worst].at, "readings",
          item_of(worst + 1) + fmt::format("comes to {} at {}; a description would not take the curve, {}: {}",
                                           format(p.point.pressure, "Pa"), format(p.point.flow, "l/min"), first.key,
                                           first.message),
          "look for a slipped digit or a wrong unit in its depression, plate, voltage and speed");
  }
}
}  // namespace lumwright::fan_test
