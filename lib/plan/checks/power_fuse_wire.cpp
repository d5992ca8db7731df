#include "data/fuses.hpp"
#include "data/wires.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include "power/leads.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
/// The thinnest wire on sale that this fuse protects; nothing where none is thick enough.
std::optional<Area> wire_for(Current fuse) {
  std::optional<Area> least;
  for (const data::WireRow& row : data::wires())
    if (fuse <= data::fuse_over_wire().share * power::wire_carries(row.section, false) &&
        (!least || row.section < *least))
      least = row.section;
  return least;
}
std::optional<Finding> judge_power_fuse_wire(const model::Solved& solved) {
  if (!solved.supply || solved.supply->pack_input.cell.bank) return std::nullopt;
  const auto& fuse = solved.build.supply.fuse;
  const model::Input* section = solved.inputs.find("supply.leads.section");
  if (!fuse) return std::nullopt;  // power.fuse asks for one
  if (section == nullptr) return lacking(solved.build.supply.leads.section);
  const Current rating = solved.inputs.find("supply.fuse")->value.si * A,
                carries = power::wire_carries(section->value.si * m2, false);
  const data::FuseOverWire& rule = data::fuse_over_wire();
  const AnyQuantity most(rule.share * carries);
  Finding f;
  judge_by(f, measure(solved, rating), {Bound::at_most, most, most});
  f.why = fmt::format(
      "a wire of {} carries {} in free air; the fuse opens for certain only at about twice its rating, so it may be "
      "rated at {} of that",
      say(solved, section->value.si * m2), say(solved, carries), percent(rule.share, 2));
  if (f.verdict != Verdict::pass) {
    const auto thick = wire_for(rating);
    f.action = thick
                   ? fmt::format("on an overload the wire burns before the fuse opens: a smaller fuse, or wires of {}",
                                 say(solved, *thick))
                   : "on an overload the wire burns before the fuse opens: a smaller fuse";
  }
  f.basis = rule.basis;
  f.formula = "I_n <= 0.69 I_wire";
  f.terms = {term(solved, "I_n", "rating of the fuse", solved.build.supply.fuse),
             term(solved, "A", "copper section", solved.build.supply.leads.section),
             computed(solved, "I_wire", "what the wire carries", carries)};
  return f;
}
}  // namespace

Check power_fuse_wire() {
  return {"power.fuse_wire", "The fuse against the wires", "Does the fuse open before the wires burn?",
          judge_power_fuse_wire};
}
}  // namespace lumwright::plan
