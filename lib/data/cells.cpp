#include "data/cells.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::data {
namespace {
template <class Q>
Band<Q> triple(const Row& row, std::string_view key) {
  const std::vector<Q> v = row.list<Q>(key);
  if (v.size() != 3 || v[0] > v[1] || v[1] > v[2])
    throw std::logic_error("cells.yaml: `" + std::string(key) + "` is not low, usual, high");
  return {.value = v[1], .low = v[0], .high = v[2]};
}

ChemistryRow read_chemistry(const Row& row) {
  ChemistryRow c{.id = row.text("id"),
                 .nominal = row.quantity<Voltage>("nominal"),
                 .end = row.quantity<Voltage>("end"),
                 .temperatures = row.list<Temperature>("temperatures"),
                 .capacity_share = row.numbers("capacity_share"),
                 .resistance_factor = row.numbers("resistance_factor"),
                 .loss_per_month = triple<double>(row, "loss_per_month"),
                 .loss_on_first_day = row.number("loss_on_first_day"),
                 .loss_doubles_per = row.optional<TemperatureRise>("loss_doubles_per"),
                 .reversed_soc = {},
                 .reversed_voltage = {},
                 .good_cell_when_weak_one_reverses = row.optional<Voltage>("good_cell_when_weak_one_reverses"),
                 .source = row.source(),
                 .standing = row.standing()};
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

Row row_with_id(std::string_view list, const std::string& id) {
  for (const Row& row : rows("cells", list))
    if (row.text("id") == id) return row;
  throw std::logic_error("cells.yaml: no `" + id + "` in `" + std::string(list) + "`");
}

BankOutput read_bank(const Row& row) {
  return {.output = row.quantity<Voltage>("output"),
          .inside = triple<Voltage>(row, "inside"),
          .conversion = triple<double>(row, "conversion"),
          .sleeps_below = triple<Current>(row, "sleeps_below"),
          .sleeps_after = triple<Duration>(row, "sleeps_after"),
          .port_limit = triple<Current>(row, "port_limit")};
}

CellRow read_cell(const Row& row) {
  const ChemistryRow chemistry = read_chemistry(row_with_id("chemistries", row.text("chemistry")));
  const Row curve = row_with_id("curves", row.text("curve", chemistry.id));
  CellRow c{.id = row.text("id"),
            .chemistry = chemistry,
            .cells_inside = row.has("cells_inside") ? static_cast<int>(row.number("cells_inside")) : 1,
            .soc = curve.numbers("soc"),
            .ocv = curve.list<Voltage>("ocv"),
            .capacity = triple<Charge>(row, "capacity"),
            .resistance = triple<Resistance>(row, "resistance"),
            .resistance_goes_with_size = row.yes("resistance_goes_with_size"),
            .rated_rate = row.number("rated_rate"),
            .rate_exponent = triple<double>(row, "rate_exponent"),
            .most_rate = triple<double>(row, "most_rate"),
            .mass = row.quantity<Mass>("mass"),
            .bank = {},
            .source = row.source(),
            .standing = row.standing()};
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
                     .capacity = triple<double>(row, "capacity"),
                     .resistance = triple<double>(row, "resistance"),
                     .weakest = triple<double>(row, "weakest"),
                     .source = row.source(),
                     .standing = row.standing()});
    return out;
  }();
  return table;
}

const std::vector<SeriesResistanceRow>& series_resistances() {
  static const std::vector<SeriesResistanceRow> table = [] {
    std::vector<SeriesResistanceRow> out;
    for (const Row& row : rows("cells", "series_resistances"))
      out.push_back({.id = row.text("id"),
                     .resistance = triple<Resistance>(row, "resistance"),
                     .source = row.source(),
                     .standing = row.standing()});
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
