#include "boiler/boiler.hpp"
#include "data/fan_label.hpp"
#include "data/fans.hpp"
#include "draught/duty.hpp"
#include "draught/fan_speed.hpp"
#include "draught/orifice.hpp"
#include "held/held.hpp"
#include "held/solved.hpp"
#include <cmath>

namespace lumwright::held {
namespace {
using namespace draught;

Band<double> discharge(const char* kind) { return discharge_coefficient(kind); }

/// Share of the smokebox's suction that is used up before the firebox.
double before_firebox(const PathFlow& flow) { return in(flow.firebox_suction, flow.smokebox_suction); }
Reckoned share_of(const char* name) {
  return {sampled(name, [](const model::Solved& s) { return before_firebox(s.draught->hot_flow); })};
}
double ratio_of_shares(const char* name) {
  const HotPath path(name);
  return before_firebox(path.at(2.0)) / before_firebox(path.at(1.0));
}
/// Air at four times the suction over air at one, by the power between half and twice the usual flow.
double at_four_times_the_suction(const char* name) {
  const HotPath path(name);
  const double power = std::log(4.0) / std::log(in(path.at(2.0).smokebox_suction, path.at(0.5).smokebox_suction));
  return std::pow(4.0, power);
}
double tubes_at_twice(const char* name) {
  const HotPath path(name);
  const auto loss = [&](double times) { return in(path.at(times).loss[static_cast<std::size_t>(Element::tubes)], Pa); };
  return loss(2.0) / loss(1.0);
}
/// Speed at a voltage over that at the rated one; the tester saw it start at 0.29 of that.
Reckoned speed(double volts) {
  const auto share = [&](double zero) {
    return in(
        fan_speed(
            motor_law({.rated_voltage = 12.0 * V, .rated_speed = 2850.0 * rpm, .starts_at = 3.5 * V, .speed_at = {}},
                      zero),
            volts * V),
        2850.0 * rpm);
  };
  const Band<double> zero = data::fan_voltage().zero_speed;
  return {{share(zero.value), share(zero.high), share(zero.low)}};
}
}  // namespace

const Cases& draught_cases() {
  static const Cases cases = {
      {"suction share 45 mm", [] { return share_of("tarn-beck"); }},
      {"suction share 5 inch", [] { return share_of("great-fell-5in"); }},
      {"suction share constant", [] { return Reckoned{exactly(ratio_of_shares("great-fell-5in"))}; }},
      {"air with suction", [] { return Reckoned{exactly(at_four_times_the_suction("great-fell-5in"))}; }},
      {"tubes at twice", [] { return Reckoned{exactly(tubes_at_twice("great-fell-5in"))}; }},
      {"hole round", [] { return Reckoned{discharge("sharp hole")}; }},
      {"hole square", [] { return Reckoned{discharge("door")}; }},
      {"hole slot", [] { return Reckoned{discharge("thin ring")}; }},
      {"joint four times",
       [] {
         const auto flow = [](double pascal) {
           return in(orifice_flow(0.61, 10.0 * mm2, 1.2 * kg_per_m3, pascal * Pa), g_per_s);
         };
         const double four = flow(40.0) / flow(10.0);
         const Band<double> leak = usual("engine.leakage.past_bed");
         return Reckoned{{four, four * leak.low / leak.value, four * leak.high / leak.value}};
       }},
      {"fan 7 of 12 V", [] { return speed(7.0); }},
      {"fan 5 of 12 V", [] { return speed(5.0); }},
      {"fan label current", [] { return Reckoned{exactly(1.0 / data::current_most_over_usual())}; }},
  };
  return cases;
}
}  // namespace lumwright::held
