#include "data/fuels.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"

namespace lumwright::data {
namespace {
FuelAnalysis read_analysis(const Row& row) {
  return {.moisture = row.number("moisture"),
          .volatiles = row.number("volatiles"),
          .ash = row.number("ash"),
          .carbon = row.number("carbon"),
          .hydrogen = row.number("hydrogen"),
          .oxygen = row.number("oxygen"),
          .nitrogen = row.number("nitrogen"),
          .sulphur = row.number("sulphur"),
          .basis = row.basis()};
}
std::vector<FuelRow> read_fuels() {
  std::vector<FuelRow> out;
  for (const Row& row : rows("fuels", "fuels"))
    out.push_back({.name = row.text("name"),
                   .analysis = read_analysis(row.section("analysis")),
                   .lump = row.band<Length>("lump"),
                   .sphericity = row.band<double>("sphericity"),
                   .voidage = row.band<double>("voidage"),
                   .piece_density = row.band<Density>("piece_density"),
                   .bulk_density = row.band<Density>("bulk_density"),
                   .basis = row.basis()});
  return out;
}
}  // namespace

const std::vector<FuelRow>& fuels() {
  static const std::vector<FuelRow> all = read_fuels();
  return all;
}
const FuelRow& fuel(std::string_view name) {
  std::string known;
  for (const FuelRow& row : fuels()) {
    if (row.name == name) return row;
    known += (known.empty() ? "" : ", ") + row.name;
  }
  throw ModelError("fuel " + std::string(name) + " is not one of " + known);
}
}  // namespace lumwright::data
