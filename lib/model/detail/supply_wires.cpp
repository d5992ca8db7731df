#include "model/detail/supply_wires.hpp"
#include "data/cells.hpp"
#include "data/fuses.hpp"
#include "model/solving.hpp"
#include "power/fuse.hpp"
#include "power/leads.hpp"
#include "quantity/format.hpp"
#include <fmt/format.h>

namespace lumwright::model {
Resistance leads_of(const description::Build& build, Inputs& inputs) {
  const description::part::LeadsPart& wires = build.supply.leads;
  if (!wires.section && !wires.length) {
    inputs.stands_in("supply.leads");
    return 0.0 * ohm;
  }
  const Area section = inputs.usual(wires.section);
  const Temperature air = inputs.usual(build.place.air);  // by itself: what is assumed is listed in the order of asking
  return power::loop_resistance(power::wire_resistance(section), inputs.usual(wires.length), air);
}
Resistance fuse_of(const description::Build& build, Inputs& inputs) {
  const auto fuse = inputs.known(build.supply.fuse);
  if (!fuse) return 0.0 * ohm;
  const Current least = data::fuses().front().rating, most = data::fuses().back().rating;
  if (*fuse < least || *fuse > most)
    throw Refused("power.fuse",
                  fmt::format("a fuse of {} is none of the small ones that are known, {} to {}",
                              format(*fuse, choose_unit(*fuse, "", UnitSystem::as_written)), format(least, "A"),
                              format(most, "A")),
                  "read the rating on the fuse; it must carry the fan and protect the wires");
  return power::fuse_resistance(*fuse);
}

InTheWay in_the_way(const description::Build& build, Inputs& inputs) {
  const description::part::SupplyPart& part = build.supply;
  InTheWay found;
  if (!part.switched) inputs.stands_in("supply.switch");
  if (!part.plugs) inputs.stands_in("supply.plugs");
  if (!part.polarity) inputs.stands_in("supply.polarity");
  const auto add = [&](std::string_view key, const data::SeriesResistanceRow& row, double contacts) {
    const Band<Resistance>& one = row.resistance;
    found.resistance +=
        inputs.taken(key, Band<Resistance>{contacts * one.value, contacts * one.low, contacts * one.high},
                     because(row.id + " as usual", row.basis));
  };
  if (part.switched && *part.switched != "none")
    add("supply.switch_resistance", data::series_resistance(*part.switched), 1.0);
  if (part.plugs && *part.plugs > 0)
    add("supply.plug_resistance", data::series_resistance("crimp plug"), 2.0 * *part.plugs);
  for (const data::PolarityGuardRow& row : data::polarity_guards()) {
    if (!part.polarity || *part.polarity != row.id) continue;
    found.drop = inputs.otherwise(part.polarity_drop, row.drop, because("of a " + row.id, row.basis));
    if (row.resistance.high > 0.0 * ohm)
      found.resistance +=
          inputs.taken("supply.polarity_resistance", row.resistance, because("of a " + row.id, row.basis));
  }
  return found;
}

Resistance contacts_of(const description::part::PackPart& part, Inputs& inputs, const data::CellRow& cell, int series) {
  if (part.resistance || cell.bank) return 0.0 * ohm;
  const data::SeriesResistanceRow& row = cell.contact;
  const double all = 2.0 * series / (part.parallel ? *part.parallel : 1);
  return inputs.otherwise(
      part.contacts, Band<Resistance>{all * row.resistance.value, all * row.resistance.low, all * row.resistance.high},
      because("two for each cell (" + row.id + "); soldered or welded ends have next to none", row.basis));
}
}  // namespace lumwright::model
