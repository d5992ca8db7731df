#include "power/pack.hpp"
#include "power/cell.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include <algorithm>

namespace lumwright::power {
namespace {
/// One cell or block against the charge drawn from it, on to being driven backwards where its chemistry is known to go
/// there.
OpenCircuit article_curve(const data::CellRow& cell, Charge capacity, bool reversible) {
  OpenCircuit out;
  for (std::size_t i = cell.soc.size(); i-- > 0;) {
    out.drawn.push_back((1.0 - cell.soc[i]) * capacity);
    out.voltage.push_back(static_cast<double>(cell.cells_inside) * cell.ocv[i]);
  }
  if (!reversible) return out;
  for (std::size_t i = cell.chemistry.reversed_soc.size(); i-- > 0;) {
    out.drawn.push_back((1.0 - cell.chemistry.reversed_soc[i]) * capacity);
    out.voltage.push_back(cell.chemistry.reversed_voltage[i]);
  }
  return out;
}

/// The plateau of a reversed cell is level: carry it to `until`.
void extend_level(OpenCircuit& curve, Charge until) {
  if (curve.drawn.back() >= until) return;
  curve.drawn.push_back(until);
  curve.voltage.push_back(curve.voltage.back());
}

/// `good` cells like one curve and one like the other, as far as both reach.
OpenCircuit string_curve(const OpenCircuit& strong, int good, const OpenCircuit& weak) {
  const Charge end = std::min(strong.drawn.back(), weak.drawn.back());
  std::vector<Charge> knots = strong.drawn;
  knots.insert(knots.end(), weak.drawn.begin(), weak.drawn.end());
  std::sort(knots.begin(), knots.end());
  OpenCircuit out;
  for (const Charge& q : knots) {
    const bool again = !out.drawn.empty() && q - out.drawn.back() < 1e-9 * end;
    if (again || q > end) continue;
    out.drawn.push_back(q);
    out.voltage.push_back(static_cast<double>(good) * strong.at(q) + weak.at(q));
  }
  return out;
}

void check(const PackInput& in) {
  if (in.series < 1) throw ModelError("cells in series " + std::to_string(in.series) + " are below 1");
  if (in.parallel < 1) throw ModelError("cells in parallel " + std::to_string(in.parallel) + " are below 1");
  if (in.cell.bank && in.series != 1)
    throw ModelError("power banks in series " + std::to_string(in.series) + " are not 1");
  require_above_zero("capacity of a cell", in.capacity, "Ah");
  require_above_zero("factor on capacity", in.capacity_factor);
  require_above_zero("factor on resistance", in.resistance_factor);
  require_share("charged share", in.charged);
  if (!(in.rate_exponent >= 1.0 && in.rate_exponent < 2.0))
    throw ModelError("rate exponent " + format_number(in.rate_exponent) + " is not between 1 and 2");
  if (in.measured) require_not_negative("pack resistance", *in.measured, "ohm");
  if (in.cell_resistance) require_not_negative("cell resistance", *in.cell_resistance, "ohm");
  require_not_negative("resistance of contacts", in.contacts, "ohm");
  require_not_negative("resistance of leads and fuse", in.outside, "ohm");
  require_not_negative("drop of the guard against reversed polarity", in.drop, "V");
  if (!in.weakest) return;
  require_share("capacity share of the weakest cell", *in.weakest);
  if (in.series < 2) throw ModelError("cells in series " + std::to_string(in.series) + " have no weakest among them");
}

/// What one cell or block has when new, counted at its own terminals.
Charge rated_capacity(const PackInput& in) {
  return in.cell.bank ? bank_energy(in.cell, in.capacity) / in.cell.bank->output : in.capacity;
}

Resistance article_resistance(const PackInput& in, const TemperatureFactors& cold) {
  const Resistance fresh = in.cell_resistance ? *in.cell_resistance : usual_resistance(in.cell, in.capacity);
  return fresh * in.resistance_factor * cold.resistance;
}
/// Of all cells within a second; nothing where no other value is known, or the resistance was measured.
std::optional<Resistance> cells_at_once(const PackInput& in, const TemperatureFactors& cold) {
  if (!in.cell.pulse_resistance || in.measured || in.cell_resistance) return std::nullopt;
  const double size = in.cell.resistance_goes_with_size ? lumwright::in(in.cell.capacity.value, in.capacity) : 1.0;
  return static_cast<double>(in.series) / in.parallel * in.cell.pulse_resistance->value * size * in.resistance_factor *
         cold.resistance;
}
}  // namespace

Voltage OpenCircuit::at(Charge q) const {
  if (!(q >= drawn.front() && q <= drawn.back()))
    throw ModelError("charge drawn " + format(q, "Ah") + " is not between " + format(drawn.front(), "Ah") + " and " +
                     format(drawn.back(), "Ah"));
  const auto above = std::upper_bound(drawn.begin() + 1, drawn.end() - 1, q) - drawn.begin();
  const auto i = static_cast<std::size_t>(above);
  return voltage[i - 1] + (voltage[i] - voltage[i - 1]) * in((q - drawn[i - 1]), drawn[i] - drawn[i - 1]);
}

void check(const OpenCircuit& curve) {
  if (curve.drawn.size() < 2 || curve.drawn.size() != curve.voltage.size())
    throw ModelError("open-circuit curve has " + std::to_string(curve.drawn.size()) + " charges and " +
                     std::to_string(curve.voltage.size()) + " voltages: two or more of each are needed");
  for (std::size_t i = 0; i < curve.drawn.size(); ++i) {
    if (!is_finite(curve.drawn[i]) || !is_finite(curve.voltage[i]))
      throw ModelError("point " + std::to_string(i + 1) + " of the open-circuit curve is not a number");
    if (i == 0) continue;
    if (!(curve.drawn[i] > curve.drawn[i - 1]))
      throw ModelError("charge drawn " + format(curve.drawn[i], "Ah") + " does not lie beyond the point before it");
    if (curve.voltage[i] > curve.voltage[i - 1])
      throw ModelError("open-circuit voltage " + format(curve.voltage[i], "V") + " rises while charge is drawn");
  }
  require_above_zero("open-circuit voltage of the empty pack", curve.voltage.back(), "V");
}

Pack make_pack(const PackInput& input) {
  check(input);
  const TemperatureFactors cold = temperature_factors(input.cell.chemistry, input.temperature);
  const Charge rated = static_cast<double>(input.parallel) * rated_capacity(input);
  const Charge full = rated * input.capacity_factor * cold.capacity;
  const double series = input.series, parallel = input.parallel;
  const Resistance cells = series / parallel * article_resistance(input, cold);
  Pack pack{.curve = article_curve(input.cell, full, false),
            .inside = input.measured ? *input.measured : cells + input.contacts,
            .outside = input.outside,
            .full = full,
            .drawn = (1.0 - input.charged) * full,
            .rated_current = input.cell.rated_rate * rated / hour,
            .rate_exponent = input.rate_exponent,
            .weak = {},
            .inside_at_once = cells_at_once(input, cold)};
  if (pack.inside_at_once) *pack.inside_at_once += input.contacts;
  if (input.weakest) {
    OpenCircuit weak = article_curve(input.cell, *input.weakest * full, true);
    if (!input.cell.chemistry.reversed_soc.empty()) extend_level(weak, full);
    pack.curve = string_curve(pack.curve, input.series - 1, weak);
    const Resistance own = input.measured ? pack.inside / series : cells / series;
    pack.weak = WeakCell{.curve = std::move(weak), .resistance = own};
  } else {
    for (Voltage& v : pack.curve.voltage) v *= series;
  }
  for (Voltage& v : pack.curve.voltage) v -= input.drop;  // the curve is what the load sees
  check(pack.curve);
  if (!(pack.drawn < pack.curve.drawn.back()))
    throw ModelError("with the pack " + percent(input.charged) + " charged its weakest cell is empty");
  return pack;
}

Resistance usual_resistance(const data::CellRow& cell, Charge capacity) {
  require_above_zero("capacity of a cell", capacity, "Ah");
  return cell.resistance_goes_with_size ? cell.resistance.value * in(cell.capacity.value, capacity)
                                        : cell.resistance.value;
}

Energy bank_energy(const data::CellRow& bank, Charge label) {
  if (!bank.bank) throw ModelError("cell `" + bank.id + "` is not a power bank");
  require_above_zero("capacity on the label", label, "Ah");
  return label * bank.bank->inside.value * bank.bank->conversion.value;
}

Current short_behind_leads(const Pack& pack) {
  require_above_zero("resistance of pack, leads and fuse", pack.resistance_at_once(), "ohm");
  return pack.curve.voltage.front() / pack.resistance_at_once();
}

Voltage reversal_voltage(int series, Voltage good_cell) {
  if (series < 1) throw ModelError("cells in series " + std::to_string(series) + " are below 1");
  return static_cast<double>(series - 1) * good_cell;
}
}  // namespace lumwright::power
