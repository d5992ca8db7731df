// A pack: cells in series and parallel become one open-circuit curve behind one resistance.
#pragma once
#include "data/cells.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <vector>

namespace lumwright::power {
/// Straight pieces of open-circuit voltage against charge drawn since full; charge rises strictly, voltage never does.
struct OpenCircuit {
  std::vector<Charge> drawn;
  std::vector<Voltage> voltage;

  /// Throws ModelError outside the curve.
  Voltage at(Charge q) const;
};
/// Throws ModelError unless there are two points or more, finite, the charge rising strictly and the voltage never.
void check(const OpenCircuit& curve);

/// The weakest cell of a string, followed on its own.
struct WeakCell {
  OpenCircuit curve;
  Resistance resistance;
};

/// What the discharge needs to know. `charge drawn` is counted at the rated current: a heavier one draws it faster.
struct Pack {
  OpenCircuit curve;
  Resistance inside;   // cells and their contacts
  Resistance outside;  // leads, fuse, switch: counted here and nowhere else
  Charge full;         // capacity of a string of good cells
  Charge drawn;        // already, at the start
  Current rated_current;
  double rate_exponent;
  std::optional<WeakCell> weak;
  std::optional<Resistance> inside_at_once{};  // within a second: for a starting fan or a short; nothing: as `inside`

  Resistance resistance() const { return inside + outside; }
  Resistance resistance_at_once() const { return inside_at_once.value_or(inside) + outside; }
};

/// A set of cells as its owner describes it.
struct PackInput {
  data::CellRow cell;
  int series;  // cells, or blocks; 1 for a power bank
  int parallel;
  Charge capacity;           // of one cell or block as labelled or measured; for a power bank its label
  double capacity_factor;    // age; 1 if `capacity` was measured lately
  double resistance_factor;  // age; on the table's value only
  double charged;            // share at the start, over 0 to 1
  double rate_exponent;      // 1: capacity holds at this load
  Temperature temperature;
  std::optional<Resistance> measured;  // of the pack at its terminals: stands for cells and contacts, as it is now
  Resistance contacts;                 // all of them; not used when `measured` is given
  Resistance outside;                  // leads, fuse, switch, plugs, guard against reversed polarity
  Voltage drop{};                      // that such a guard keeps for itself, whatever flows
  std::optional<Resistance> cell_resistance;  // of one new cell at 20 degC instead of the row's
  std::optional<double> weakest;  // capacity of one cell of each string over that of its fellows, over 0 to 1
};
/// Throws ModelError for counts below 1, shares outside their range, a power bank in series, a temperature off the
/// table.
Pack make_pack(const PackInput& input);

/// The usual resistance of one cell or block, scaled to its capacity where the row says so.
Resistance usual_resistance(const data::CellRow& cell, Charge capacity);

/// Energy at the socket: label charge times inner voltage times conversion. Throws ModelError if the cell is no power
/// bank.
Energy bank_energy(const data::CellRow& bank, Charge label);

/// What a short at the far end of leads and fuse carries at first: what the fuse has to open. Throws ModelError where
/// nothing at all resists (a power bank limits its current instead).
Current short_behind_leads(const Pack& pack);

/// The pack voltage below which the weakest of `series` cells is driven backwards while the others still hold
/// `good_cell`: good_cell (series - 1). A rule of the makers of NiMH cells. Throws ModelError for series below 1.
Voltage reversal_voltage(int series, Voltage good_cell);
}  // namespace lumwright::power
