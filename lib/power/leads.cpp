#include "power/leads.hpp"
#include "data/wires.hpp"
#include "numeric/curve.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace lumwright::power {
LineResistance wire_resistance(Area section) {
  require_above_zero("wire section", section, "mm2");
  const data::WireRow* nearest = nullptr;
  double least = 0;
  for (const data::WireRow& row : data::wires()) {
    if (row.make == "class 1/2") continue;  // stiff wire, not for leads
    const double off = std::abs(std::log(in(section, row.section)));
    if (nearest == nullptr || off < least) {
      nearest = &row;
      least = off;
    }
  }
  if (nearest == nullptr) throw std::logic_error("wires.yaml has no wire for leads");
  return nearest->resistance * in(nearest->section, section);
}
double copper_factor(Temperature t) {
  const double at = in_degC(t);
  if (!(at >= -60.0 && at <= 200.0))
    throw ModelError("wire temperature " + format(t, "degC") + " is not between -60 and 200 degC");
  return 1.0 + 0.00393 * (at - 20.0);
}
Resistance loop_resistance(LineResistance line, Length run, Temperature t) {
  require_above_zero("line resistance", line, "ohm/km");
  require_not_negative("length of lead", run, "m");
  return 2.0 * run * line * copper_factor(t);
}
Current wire_carries(Area section, bool in_a_bundle) {
  require_above_zero("wire section", section, "mm2");
  std::vector<double> x, y;
  for (const data::Ampacity& row : data::ampacities()) {
    x.push_back(std::log(in(row.section, mm2)));
    y.push_back(std::log(in(in_a_bundle ? row.current.low * row.in_a_bundle : row.current.value, A)));
  }
  const double at = std::min(std::log(in(section, mm2)), x.back());
  return std::exp(numeric::LinearCurve(x, y)(at)) * A;
}
}  // namespace lumwright::power
