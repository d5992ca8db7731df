// Battery cells, lead-acid blocks and power banks by the names that users write: what each gives, loses and stands.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
/// What cells of one chemistry have in common.
struct ChemistryRow {
  std::string id;
  Voltage nominal;                        // one cell
  Voltage end;                            // one cell, at a light load: the rated end of discharge
  bool spoilt_below_end;                  // discharged further it is ruined, or dangerous to charge again
  std::vector<Temperature> temperatures;  // rising
  std::vector<double> capacity_share;     // of that at 20 degC, at each temperature
  std::vector<double> resistance_factor;  // likewise
  Band<double> loss_per_month;            // self-discharge at 20 degC, share of what is left
  double loss_on_first_day;               // share, on top of that
  std::optional<TemperatureRise> loss_doubles_per;
  // One cell driven on after it is empty, against (negative) state of charge; empty where the chemistry must stop
  // there.
  std::vector<double> reversed_soc;
  std::vector<Voltage> reversed_voltage;
  std::optional<Voltage>
      good_cell_when_weak_one_reverses;  // what a good one holds while the weakest passes through 0 V
  Basis basis{};
};

/// How a label becomes energy at the socket of a power bank.
struct BankOutput {
  Voltage output;
  Band<Voltage> inside;     // the voltage at which the label counts its charge
  Band<double> conversion;  // energy at the socket over energy in the cells
  Band<Current> sleeps_below;
  Band<Duration> sleeps_after;
  Band<Current> port_limit;
};

/// Resistances that sit in series with the cells.
struct SeriesResistanceRow {
  std::string id;
  Band<Resistance> resistance;
  Basis basis{};
};

/// What stands in the plus lead against a pack that is put in the wrong way round.
struct PolarityGuardRow {
  std::string id;      // "diode", "transistor"
  Band<Voltage> drop;  // whatever flows
  Band<Resistance> resistance;
  Basis basis{};
};

/// One article that users put in series or parallel: a cell, or a block of several cells in one case.
struct CellRow {
  std::string id;
  ChemistryRow chemistry;
  int cells_inside;                                  // 6 in a 12 V lead-acid block, else 1
  std::vector<double> soc;                           // rising, 0 to 1
  std::vector<Voltage> ocv;                          // of ONE cell inside, at rest, at each soc
  Band<Charge> capacity;                             // usual for the size, at the rated current, 20 degC, new
  Band<Resistance> resistance;                       // d.c., sustained, of the whole article, mid charge, 20 degC, new
  std::optional<Band<Resistance>> pulse_resistance;  // within a second; nothing: as `resistance`
  SeriesResistanceRow contact;                       // what holds each of its two ends, usually
  bool resistance_goes_with_size;  // resistance times capacity is what the row knows: scale it to the capacity stated
  double rated_rate;               // current at which capacity is rated, in It (capacity over one hour)
  Band<double> rate_exponent;      // Peukert
  Band<double> most_rate;          // highest sensible continuous current, in It
  Mass mass;
  std::optional<BankOutput> bank;
  Basis basis{};
};

/// new, good, tired, salvaged: what age and a doubtful past do.
struct ConditionRow {
  std::string id;
  std::string meaning;
  Band<double> capacity;    // factor on the label
  Band<double> resistance;  // factor on that of a new cell
  Band<double> weakest;     // capacity of the weakest cell of a set over that of the others
  Basis basis{};
};

const std::vector<CellRow>& cells();
const std::vector<ConditionRow>& conditions();
const std::vector<SeriesResistanceRow>& series_resistances();  // "spring contact", "protection board", ...

/// The row with this id. Throw ModelError that names the id if there is none.
const CellRow& cell(std::string_view id);
const ConditionRow& condition(std::string_view id);
const SeriesResistanceRow& series_resistance(std::string_view id);
const std::vector<PolarityGuardRow>& polarity_guards();
}  // namespace lumwright::data
