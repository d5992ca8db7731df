#include "choose/detail/work.hpp"
#include "model/solved_fit.hpp"
#include "workshop/stock.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::choose {
namespace {
std::string millimetres(Length length) { return fmt::format("{:.2f} mm", in(length, unit::mm)); }

/// What turning does for a tube of the bin that is too large or too loose.
std::string turned(const Yard& yard, const workshop::FitInput& asked, std::size_t tube) {
  const description::part::AdapterTube& part = yard.stall.tubes[tube];
  if (!part.outside || !part.wall) return "";
  workshop::FitInput input = asked;
  input.outside = *part.outside.band;
  input.tube_wall = *part.wall;
  const workshop::Fit found = workshop::fit(input);
  if (yard.tube_loss[tube] == Loss::tube_too_large && found.margin < 0.0 * mm) {
    const Length off = -1.0 * found.margin;
    constexpr double keep = 0.5;  // of the wall
    if (0.5 * off <= keep * *part.wall)
      return fmt::format("turn {} off the outside of {}", millimetres(off), yard.stall.tube_names[tube]);
  }
  if (yard.tube_loss[tube] == Loss::tube_too_loose && found.margin > 0.0 * mm)
    return fmt::format("put a sleeve on {}, turned to {} outside", yard.stall.tube_names[tube],
                       millimetres(*part.outside + found.margin));
  return "";
}
}  // namespace

std::string tubes_to_buy(const Yard& yard, const Stock& stock) {
  const auto fits = [](Loss loss) { return loss == Loss::none || loss == Loss::lacking; };
  if (std::any_of(yard.tube_loss.begin(), yard.tube_loss.end(), fits) || !yard.stall.base.engine.chimney.bore)
    return "";
  description::Build build = yard.stall.base;
  build.adapter.tube.outside = build.engine.chimney.bore;
  build.adapter.tube.outside.band = exactly(0.9 * *build.engine.chimney.bore);
  build.adapter.tube.wall = {};
  model::Inputs inputs = quiet(stock.tuning);
  const model::Outcome<model::SolvedFit> whole = model::solve_fit(build, inputs, {});
  if (!whole) return "";
  std::string out;
  try {
    std::string after_skim;
    for (const workshop::StockTube& found : workshop::stock_tubes(whole->input, data::tubes().size())) {
      const bool as_it_is = !(found.fit.skim.on_diameter > 0.0 * mm);
      if (as_it_is && out.empty()) out = fmt::format("buy {}, which fits as it is", found.tube.name);
      if (!as_it_is && after_skim.empty())
        after_skim =
            fmt::format("buy {} and open the chimney's bore to {}", found.tube.name, millimetres(found.fit.skim.bore));
    }
    if (out.empty()) out = after_skim;
    for (std::size_t tube = 0; tube < yard.stall.tubes.size(); ++tube)
      if (const std::string words = turned(yard, whole->input, tube); !words.empty())
        out += (out.empty() ? "" : "; or ") + words;
  } catch (const ModelError&) {
    return out;
  }
  return out.empty() ? "no tube in stock fits this bore: turn one to it" : out;
}
}  // namespace lumwright::choose
