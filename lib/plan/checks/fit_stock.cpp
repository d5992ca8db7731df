#include "description/stock_name.hpp"
#include "model/solved_fit.hpp"
#include "plan/check.hpp"
#include "plan/detail/taken_off.hpp"
#include "workshop/stock.hpp"
#include <cmath>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
constexpr std::size_t offered = 3;

std::string offer(const model::Solved& solved, const workshop::StockTube& stock) {
  const bool none = std::abs(in(stock.fit.cold.value, mm)) < 1e-9;  // what rounding leaves of the bore's own size
  const Length gap = none ? 0.0 * mm : stock.fit.cold.value;
  std::string text = description::stock_tube(stock.tube, solved.units) + ": " +
                     (gap > 0.0 * mm                           ? "gap " + roughly(solved, gap)
                      : stock.fit.skim.on_diameter <= 0.0 * mm ? std::string("once the ridge is off")
                      : gap < 0.0 * mm                         ? roughly(solved, -gap) + " larger than the bore"
                                                               : "as large as the bore");
  if (stock.fit.skim.on_diameter > 0.0 * mm)
    text += fmt::format(", skim the bore by {}", taken_off(solved, stock.fit.skim.on_diameter, "finest cut").text);
  if (!stock.tube.documented) text += ", ask the stockist";
  return text;
}
std::string own_skim(const model::Solved& solved, const workshop::Skim& skim) {
  if (skim.on_diameter <= 0.0 * mm || !skim.wall_left || !skim.wall_needed) return "";
  const TakenOff off = taken_off(solved, skim.on_diameter, "finest cut");
  const std::string text = "; your own tube would need the bore skimmed by " + off.text;
  const Length left = *skim.wall_left - 0.5 * (off.length - skim.on_diameter);
  if (left <= 0.0 * mm) return text + ", more than its wall is thick";
  return text + fmt::format(", leaving {} of wall, {}", roughly(solved, left),
                            left >= *skim.wall_needed ? "which is enough" : "too little");
}
std::optional<Finding> judge_fit_stock(const model::Solved& solved) {
  if (!solved.fit) return unsolved(solved.fit);
  const model::SolvedFit& fit = *solved.fit;
  const bool fits = fit.fit.margin >= 0.0 * mm && fit.fit.leak_share.value <= workshop::most_leak_share();
  Finding f;
  // Looked up here, where it is asked for: heating a table of tubes takes a quarter of all the fits that are tried.
  const std::vector<workshop::StockTube> stock =
      solved.inputs.one_of_many() ? std::vector<workshop::StockTube>{} : workshop::stock_tubes(fit.input, offered);
  f.verdict = fits || !stock.empty() ? Verdict::pass : Verdict::watch;
  std::string as_they_are, skimmed;
  for (const workshop::StockTube& tube : stock) {
    std::string& list = tube.fit.skim.on_diameter > 0.0 * mm ? skimmed : as_they_are;
    list += (list.empty() ? "" : "; ") + offer(solved, tube);
  }
  f.why = stock.empty()         ? "no stock tube fits this chimney cold and hot without leaking too much"
          : as_they_are.empty() ? "no stock tube fits this chimney as it is; after a skim of the bore: " + skimmed
                                : "stock tubes that fit cold and hot: " + as_they_are +
                                      (skimmed.empty() ? "" : "; after a skim of the bore: " + skimmed);
  f.why += own_skim(solved, fit.fit.skim);
  if (stock.empty() && !fits)
    f.action = "turn a tube or a sleeve to size";
  else if (!fits)
    f.action =
        "take one of these and measure it: nominal sizes are not to be trusted; change the tube rather than the "
        "chimney";
  f.basis = stock.empty() ? data::Basis{data::Standing::secondary, "table of stock sizes"} : stock.front().tube.basis;
  f.formula = "least skim first, then least leak";
  f.terms = {term(solved, "D", "chimney bore", solved.build.engine.chimney.bore),
             computed(solved, "c_need", "gap needed cold", fit.fit.needed),
             computed(solved, "U", "uncertainty of the gap", fit.fit.uncertainty)};
  return f;
}
}  // namespace

Check fit_stock() {
  return {"fit.stock",
          "Stock tubes for this chimney",
          "Which tubes off the shelf would fit, and what skim would each need?",
          judge_fit_stock,
          nullptr,
          false};
}
}  // namespace lumwright::plan
