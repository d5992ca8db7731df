#include "choose/choose.hpp"
#include "choose/detail/work.hpp"
#include "plan/cautions.hpp"
#include "plan/slips.hpp"
#include "plan/workers.hpp"
#include <fmt/format.h>
#include <map>
#include <stdexcept>

namespace lumwright::choose {
namespace {
void check_asked(const description::Bin& bin, const ChooseAsked& asked) {
  if (asked.places < 1) throw std::logic_error("a ranking without places");
  if (description::combinations(bin) > description::most_combinations)
    throw ModelError(fmt::format("{} combinations are more than the {} that are looked at: {}",
                                 description::combinations(bin), description::most_combinations,
                                 description::counted_by_part(bin)));
}

// Checked in full, the first of the ranking may fall out: then a longer ranking is asked for.
EngineChoice choose_for(Yard& yard, const Stock& stock, const ChooseAsked& asked, Choice& choice, Tally& tally) {
  const bool checked = asked.checked && !asked.every;
  constexpr std::size_t longer = 4, beyond = 8;
  ChooseAsked ranked = asked;
  if (checked) ranked.places = longer * asked.places + beyond;
  for (;;) {
    Judging judging = judge_yard(yard, stock, ranked, choice.effort, tally);
    EngineChoice engine = start_choice(yard, judging);
    if (checked && engine.lacking.empty() &&
        !check_engine(engine, yard, stock, asked, ranked.places, choice.effort)) {
      ranked.places *= longer;
      continue;
    }
    if (checked && engine.places.size() > asked.places) engine.places.resize(asked.places);
    sum_up(engine, stock);
    if (engine.lacking.empty() && engine.places.empty()) engine.tubes_to_buy = tubes_to_buy(yard, stock);
    return engine;
  }
}
std::vector<UnitChoice> units_for(std::vector<Yard>& yards, const Stock& stock, const ChooseAsked& asked,
                                  ChooseEffort& effort) {
  const bool checked = asked.checked && !asked.every;
  constexpr std::size_t longer = 3, beyond = 8;
  ChooseAsked ranked = asked;
  if (checked) ranked.places = longer * asked.places + beyond;
  std::vector<UnitChoice> found = units_for_all(yards, stock, ranked, effort);
  if (checked) check_units(found, yards, stock, asked, effort);
  return found;
}
// Where a thing has no place on one engine and has one on another, both are said.
void add_elsewhere(std::vector<EngineChoice>& engines) {
  for (EngineChoice& engine : engines)
    for (ItemFate& item : engine.items) {
      if (item.place) continue;
      std::optional<std::size_t> best;
      for (const EngineChoice& other : engines)
        for (const ItemFate& same : other.items) {
          if (same.list != item.list || same.name != item.name || !same.place || (best && *best <= *same.place))
            continue;
          best = same.place;
          item.elsewhere = fmt::format("place {} on {}", *best, other.engine);
        }
    }
}

/// How often each thing is a first choice, and what stands in the way of taking all of them at once.
class Sharing {
 public:
  explicit Sharing(const description::Bin& bin) : bin_(bin) {}
  void add(const Candidate& c) {
    use(*bin_.fans[c.at.fan].name, bin_.fans[c.at.fan].count, c.at.pairing == draught::FanPairing::one ? 1 : 2);
    const description::part::BinPack& pack = bin_.packs[c.at.pack];
    use(*pack.name, pack.count, 1);
    if (!bin_.step_ups[c.at.step_up].direct)
      use(*bin_.step_ups[c.at.step_up].name, bin_.step_ups[c.at.step_up].count, 1);
    for (const description::part::BinDrawer& drawer : bin_.drawers)
      if (pack.from && *pack.from == *drawer.name)
        use("cells of " + *drawer.name, drawer.count, pack.series.value.value_or(1) * pack.parallel.value.value_or(1));
  }
  std::vector<std::string> sentences() const {
    std::vector<std::string> out;
    for (const auto& [name, one] : used_)
      if (one.wanted > one.there)
        out.push_back(
            fmt::format("the first choices together take {} of {}, there {} {}: light the engines one after "
                        "another, or give one of them its next choice",
                        one.wanted, name, one.there == 1 ? "is" : "are", one.there));
    return out;
  }

 private:
  struct Use {
    int wanted, there;
  };
  void use(const std::string& name, const description::Count& there, int times) {
    Use& one = used_.try_emplace(name, Use{0, there.value.value_or(1)}).first->second;
    one.wanted += times;
  }
  const description::Bin& bin_;
  std::map<std::string, Use> used_;
};
/// Of every place and every unit that is shown.
std::vector<plan::Caution> cautions_of(const Choice& choice) {
  std::set<std::string> ids;
  for (const EngineChoice& engine : choice.engines)
    for (const Place& place : engine.places) ids.insert(place.cautions.begin(), place.cautions.end());
  for (const UnitChoice& unit : choice.for_all)
    for (const Serving& serving : unit.engines) ids.insert(serving.cautions.begin(), serving.cautions.end());
  return ids.empty() ? plan::cautions_for({}, {}) : plan::cautions_called(ids);
}
}  // namespace

Choice choose(const description::Bin& bin, const ChooseAsked& asked, const model::Tuning* tuning) {
  check_asked(bin, asked);
  const Stock stock = stock_of(bin, tuning);
  Choice choice{.name = bin.name ? *bin.name : "",
                .file = bin.file,
                .told_apart_least = least_told_apart(),
                .told_apart_most = most_told_apart(stock),
                .units = stock.units,
                .engines = {},
                .for_all = {},
                .shared = {},
                .effort = {},
                .samples = asked.samples};
  std::vector<Stall> stalls = stalls_of(bin, tuning);
  std::size_t all = 0;
  for (const Stall& stall : stalls) {
    choice.effort.combinations += stock.units.size() * stall.tubes.size();
    all += stock.units.size() * (2 + stall.tubes.size());
  }
  Tally tally(asked, all);
  std::vector<Yard> yards;
  for (Stall& stall : stalls) {
    yards.push_back(open_yard(std::move(stall), stock, asked, choice.effort, tally));
    choice.engines.push_back(choose_for(yards.back(), stock, asked, choice, tally));
  }
  add_elsewhere(choice.engines);
  if (yards.size() > 1) choice.for_all = units_for(yards, stock, asked, choice.effort);
  Sharing sharing(bin);
  for (const EngineChoice& engine : choice.engines)
    if (!engine.places.empty()) sharing.add(engine.places.front().candidate);
  if (yards.size() > 1) choice.shared = sharing.sentences();
  for (const plan::Remark& one : plan::older_names(bin.renamed)) choice.shared.push_back(one.text);
  choice.cautions = cautions_of(choice);
  tally.finish();
  return choice;
}
}  // namespace lumwright::choose
