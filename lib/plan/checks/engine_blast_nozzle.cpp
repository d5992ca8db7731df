#include "plan/check.hpp"
#include "plan/detail/rules.hpp"
#include "plan/detail/two_limits.hpp"
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
Term written(std::string_view symbol, std::string_view meaning, const description::Given<Length>& given) {
  return {std::string(symbol),
          std::string(meaning),
          {AnyQuantity(*given), given.unit},
          model::Origin::written,
          std::string(given.key.text())};
}
std::optional<Finding> judge_engine_blast_nozzle(const model::Solved& solved) {
  const description::part::Cylinders& cylinders = solved.build.engine.cylinders;
  if (!cylinders.count && !cylinders.bore && !cylinders.blast_nozzle) return std::nullopt;
  std::vector<std::string> missing;
  note_missing(cylinders.bore, missing);
  note_missing(cylinders.blast_nozzle, missing);
  if (!missing.empty()) return lacking_keys(std::move(missing));
  const Rule usual = rule<double>("rule.blast_nozzle");
  const Length nozzle = *cylinders.blast_nozzle, bore = *cylinders.bore;
  const Length least = usual.input.low * bore, most = usual.input.high * bore;
  const std::string unit = choose_unit(most, cylinders.blast_nozzle.unit, solved.units);
  const auto text = [&](Length length) { return format(length, unit); };
  Finding f;
  const model::Measure size{AnyQuantity(nozzle), cylinders.blast_nozzle.unit};
  judge_by(f, size, {Bound::at_least, AnyQuantity(least), std::nullopt});
  and_by(f, size, {Bound::at_most, AnyQuantity(most), std::nullopt});
  f.why = fmt::format(
      "the nozzle is {} of the cylinder's bore; the rule of thumb is {} to {}, {} to {} here. It is "
      "for the engine when it runs: the fan does not care",
      format_number(nozzle / bore), format_number(usual.input.low, 2), format_number(usual.input.high, 2), text(least),
      text(most));
  if (nozzle < least)
    f.action = "if the engine runs stiffly or pulls its fire to pieces, open the nozzle a little at a time";
  if (nozzle > most) f.action = "if the engine does not steam when it runs, try a smaller nozzle";
  f.basis.source = "common practice, no source";
  f.basis.standing = data::Standing::practice;
  f.formula = "nozzle = 0.10 to 0.14 of the cylinder's bore";
  f.terms = {written("d", "bore of the blast nozzle", cylinders.blast_nozzle),
             written("D", "bore of the cylinders", cylinders.bore), usual.term("d/D", "rule of thumb")};
  return f;
}
}  // namespace

Check engine_blast_nozzle() {
  return {"engine.blast_nozzle", "Blast nozzle", "Is the nozzle in the usual proportion to the cylinders?",
          judge_engine_blast_nozzle};
}
}  // namespace lumwright::plan
