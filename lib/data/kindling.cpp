#include "data/kindling.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <algorithm>

namespace lumwright::data {
const KindlingSize& kindling_size() {
  static const KindlingSize size = [] {
    const Row row = section("kindling", "size");
    return KindlingSize{.grate = row.quantity<Area>("grate"),
                        .power = row.number("power"),
                        .air = row.quantity<MassFlux>("air"),
                        .basis = row.basis()};
  }();
  return size;
}

const std::vector<KindlingRow>& kindlings() {
  static const std::vector<KindlingRow> table = read_all("kindling", "starts", [](const Row& row) {
    return KindlingRow{.fuel = row.text("fuel"),
                       .on = row.text("on"),
                       .time = row.quantity<Duration>("time"),
                       .factor = row.number("factor"),
                       .basis = row.basis()};
  });
  return table;
}

const KindlingRow& kindling(std::string_view fuel, std::string_view on) {
  const KindlingRow* usual = nullptr;
  for (const KindlingRow& row : kindlings()) {
    if (row.fuel != fuel) continue;
    if (row.on == on) return row;
    if (usual == nullptr) usual = &row;
  }
  if (usual == nullptr) throw ModelError("how " + std::string(fuel) + " is lit is not known");
  return *usual;
}

bool needs_bright_charcoal(std::string_view fuel) {
  return std::none_of(kindlings().begin(), kindlings().end(),
                      [&](const KindlingRow& row) { return row.fuel == fuel && row.on != bright_charcoal; });
}
}  // namespace lumwright::data
