// What stands between the cells and what they feed: contacts, fuse, switch, plugs, wires, and a guard against a pack
// that is put in the wrong way round.
#pragma once
#include "data/cells.hpp"
#include "description/build.hpp"
#include "model/inputs.hpp"

namespace lumwright::model {
/// Of both wires; those that are not described cost nothing.
Resistance leads_of(const description::Build& build, Inputs& inputs);
/// Throws Refused for a rating that no small fuse has.
Resistance fuse_of(const description::Build& build, Inputs& inputs);
/// Two contacts for every cell or block; those of strings side by side share the current.
Resistance contacts_of(const description::part::PackPart& part, Inputs& inputs, const data::CellRow& cell, int series);
/// Switch, plugs and guard: resistances in the way, and the drop that a guard keeps whatever flows.
struct InTheWay {
  Resistance resistance = 0.0 * ohm;
  Voltage drop = 0.0 * V;
};
InTheWay in_the_way(const description::Build& build, Inputs& inputs);
}  // namespace lumwright::model
