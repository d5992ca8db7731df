#include "data/species.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::data {
namespace {
std::array<double, 7> seven(const Row& row, std::string_view key) {
  const std::vector<double> numbers = row.numbers(key);
  std::array<double, 7> out{};
  if (numbers.size() != out.size()) throw std::logic_error("species " + row.text("id") + " needs seven coefficients");
  std::copy(numbers.begin(), numbers.end(), out.begin());
  return out;
}
std::vector<SpeciesRow> read(std::string_view list) {
  std::vector<SpeciesRow> found;
  for (const Row& row : rows("species", list))
    found.push_back({row.text("id"), row.text("formula"), row.number("relative_mass"),
                     row.quantity<Temperature>("from"), row.quantity<Temperature>("middle"),
                     row.quantity<Temperature>("to"), seven(row, "low"), seven(row, "high"), row.source(),
                     row.standing()});
  return found;
}
}  // namespace

const std::vector<SpeciesRow>& species() {
  static const std::vector<SpeciesRow> all = read("species");
  return all;
}

const SpeciesRow& species(std::string_view name) {
  std::string known;
  for (const SpeciesRow& row : species()) {
    if (row.id == name || row.formula == name) return row;
    known += (known.empty() ? "" : ", ") + row.id;
  }
  throw ModelError("gas " + std::string(name) + " is not one of " + known);
}

const DryAir& dry_air() {
  static const DryAir air = [] {
    const Row row = section("species", "air");
    return DryAir{row.number("oxygen_share"), row.number("rest_relative_mass"), row.source(), row.standing()};
  }();
  return air;
}

const RelativeAtomicMasses& relative_atomic_masses() {
  static const RelativeAtomicMasses atoms = [] {
    const Row row = section("species", "atoms");
    return RelativeAtomicMasses{row.number("carbon"), row.number("hydrogen"), row.number("oxygen"),
                                row.number("nitrogen"), row.number("sulphur")};
  }();
  return atoms;
}
}  // namespace lumwright::data
