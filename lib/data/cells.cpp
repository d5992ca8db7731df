#include "data/cells.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::data {
namespace {
ChemistryRow read_chemistry(const Row& row) {
  ChemistryRow c{.id = row.text("id"),
                 .nominal = row.quantity<Voltage>("nominal"),
                 .end = row.quantity<Voltage>("end"),
                 .spoilt_below_end = row.yes("spoilt_below_end"),
                 .temperatures = row.list<Temperature>("temperatures"),
                 .capacity_share = row.numbers("capacity_share"),
                 .resistance_factor = row.numbers("resistance_factor"),
                 .loss_per_month = row.triple<double>("loss_per_month"),
                 .loss_on_first_day = row.number("loss_on_first_day"),
                 .loss_doubles_per = row.optional<TemperatureRise>("loss_doubles_per"),
                 .reversed_soc = {},
                 .reversed_voltage = {},
                 .good_cell_when_weak_one_reverses = row.optional<Voltage>("good_cell_when_weak_one_reverses"),
                 .basis = row.basis()};
  if (row.has("reversed_soc")) {
    c.reversed_soc = row.numbers("reversed_soc");
    c.reversed_voltage = row.list<Voltage>("reversed_voltage");
  }
  return c;
}

template <class T>
const T& with_id(const std::vector<T>& rows, std::string_view id, const char* what) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const T& row) { return row.id == id; });
  if (found == rows.end()) throw ModelError("no " + std::string(what) + " is called `" + std::string(id) + "`");
  return *found;
}

BankOutput read_bank(const Row& row) {
  return {.output = row.quantity<Voltage>("output"),
          .inside = row.triple<Voltage>("inside"),
          .conversion = row.triple<double>("conversion"),
          .sleeps_below = row.triple<Current>("sleeps_below"),
          .sleeps_after = row.triple<Duration>("sleeps_after"),
          .port_limit = row.triple<Current>("port_limit")};
}

CellRow read_cell(const Row& row) {
  const ChemistryRow chemistry = read_chemistry(row_with_id("cells", "chemistries", row.text("chemistry")));
  const Row curve = row_with_id("cells", "curves", row.text("curve", chemistry.id));
  CellRow c{.id = row.text("id"),
            .chemistry = chemistry,
            .cells_inside = row.has("cells_inside") ? static_cast<int>(row.number("cells_inside")) : 1,
            .soc = curve.numbers("soc"),
            .ocv = curve.list<Voltage>("ocv"),
            .capacity = row.triple<Charge>("capacity"),
            .resistance = row.triple<Resistance>("resistance"),
            .pulse_resistance = {},
            .contact = series_resistance(row.text("contact")),
            .resistance_goes_with_size = row.yes("resistance_goes_with_size"),
            .rated_rate = row.number("rated_rate"),
            .rate_exponent = row.triple<double>("rate_exponent"),
            .most_rate = row.triple<double>("most_rate"),
            .mass = row.quantity<Mass>("mass"),
            .bank = {},
            .basis = row.basis()};
  if (row.has("pulse_resistance")) c.pulse_resistance = row.triple<Resistance>("pulse_resistance");
  if (row.has("bank")) c.bank = read_bank(row.section("bank"));
  return c;
}
}  // namespace

const std::vector<CellRow>& cells() {
  static const std::vector<CellRow> table = [] {
    std::vector<CellRow> out;
    for (const Row& row : rows("cells", "cells")) out.push_back(read_cell(row));
    return out;
  }();
  return table;
}

const std::vector<ConditionRow>& conditions() {
  static const std::vector<ConditionRow> table = [] {
    std::vector<ConditionRow> out;
    for (const Row& row : rows("cells", "conditions"))
      out.push_back({.id = row.text("id"),
                     .meaning = row.text("meaning"),
                     .capacity = row.triple<double>("capacity"),
                     .resistance = row.triple<double>("resistance"),
                     .weakest = row.triple<double>("weakest"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const std::vector<SeriesResistanceRow>& series_resistances() {
  static const std::vector<SeriesResistanceRow> table = [] {
    std::vector<SeriesResistanceRow> out;
    for (const Row& row : rows("cells", "series_resistances"))
      out.push_back({.id = row.text("id"),
                     .resistance = row.triple<Resistance>("resistance"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const std::vector<PolarityGuardRow>& polarity_guards() {
  static const std::vector<PolarityGuardRow> table = [] {
    std::vector<PolarityGuardRow> out;
    for (const Row& row : rows("cells", "polarity_guards"))
      out.push_back({.id = row.text("id"),
                     .drop = row.triple<Voltage>("drop"),
                     .resistance = row.triple<Resistance>("resistance"),
                     .basis = row.basis()});
    return out;
  }();
  return table;
}

const CellRow& cell(std::string_view id) { return with_id(cells(), id, "cell"); }
const ConditionRow& condition(std::string_view id) { return with_id(conditions(), id, "condition of a cell"); }
const SeriesResistanceRow& series_resistance(std::string_view id) {
  return with_id(series_resistances(), id, "series resistance");
}
}  // namespace lumwright::data
