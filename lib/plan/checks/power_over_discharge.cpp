#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
constexpr double rounding = 1.0 - 1e-9;  // three times 3.3 V are a little more than 9.9 V

/// The weakest cell of a string at the end of its run, where that ruins it.
struct Weakest {
  Voltage at, others, end;
};
std::optional<Weakest> weakest_of(const model::SolvedSupply& s) {
  const data::ChemistryRow& chemistry = s.pack_input.cell.chemistry;
  if (!chemistry.spoilt_below_end || !s.with_weak_cell || !s.with_weak_cell->weak) return std::nullopt;
  const Voltage at = s.with_weak_cell->weak->voltage_end;
  return Weakest{at, (s.with_weak_cell->end.voltage - at) / (s.pack_input.series - 1.0), chemistry.end};
}
std::optional<Finding> judge_power_over_discharge(const model::Solved& solved) {
  if (!solved.supply || !solved.supply->stop_at) return std::nullopt;
  const model::SolvedSupply& s = *solved.supply;
  const data::ChemistryRow& chemistry = s.pack_input.cell.chemistry;
  const double cells = s.pack_input.series * s.pack_input.cell.cells_inside;
  const AnyQuantity least(rounding * cells * chemistry.end);
  Finding f;
  judge_by(f, measure(solved, *s.stop_at),
           {Bound::at_least, least, chemistry.spoilt_below_end ? std::optional(least) : std::nullopt});
  const bool said = static_cast<bool>(solved.build.supply.stop_at);
  f.why = fmt::format("{} down to {}, {} a cell; cells of this kind are empty at {}",
                      said ? "you let the pack run" : "the pack is taken to run, until you or a cut-out stop it,",
                      say(solved, *s.stop_at), say(solved, *s.stop_at / cells), say(solved, chemistry.end));
  if (f.verdict != Verdict::pass) {
    f.why += chemistry.spoilt_below_end ? "; below that they are ruined, and may catch fire when charged"
                                        : "; below that there is hardly any charge, and cells wear or leak";
    f.action = fmt::format("stop at {} or above", say(solved, cells * chemistry.end));
  }
  if (const auto weak = weakest_of(s)) {
    f.why += fmt::format("; one cell with {} of the others' capacity is then at {}, the others at {}",
                         percent(s.weakest, 2), say(solved, weak->at), say(solved, weak->others));
    if (f.verdict == Verdict::pass && weak->at < weak->end) {
      judge_by(f, measure(solved, weak->at), {Bound::at_least, AnyQuantity(weak->end), {}});
      f.action = fmt::format("a protection board that watches every cell, matched cells, or a stop at {}",
                             say(solved, (cells - 1.0) * weak->others + weak->end));
    }
  }
  f.basis = chemistry.basis;
  f.formula = "V_stop >= N V_end";
  f.terms = {term(solved, "V_stop", "pack voltage at which the run stops", solved.build.supply.stop_at),
             computed(solved, "N", "cells one behind the other", cells),
             computed(solved, "V_end", "end of discharge of one cell", chemistry.end)};
  return f;
}
}  // namespace

Check power_over_discharge() {
  return {"power.over_discharge", "Cells run too far down", "Is the pack stopped before its cells are harmed?",
          judge_power_over_discharge};
}
}  // namespace lumwright::plan
