#include "plan/choose.hpp"
#include "data/choosing.hpp"
#include "data/fans.hpp"
#include "plan/assess.hpp"
#include "plan/choose_work.hpp"
#include "plan/crew.hpp"
#include <fmt/format.h>
#include <map>
#include <stdexcept>

namespace lumwright {
namespace {
void check_asked(const Bin& bin, const ChooseAsked& asked) {
  if (asked.places < 1) throw std::logic_error("a ranking without places");
  if (combinations(bin) > most_combinations)
    throw ModelError(
        fmt::format("{} combinations are more than the {} that are looked at", combinations(bin), most_combinations));
}

// What else a description of it would fail; time and light-ups the ranking has judged already.
std::vector<std::string> failing(const Build& build, const Tuning* tuning) {
  std::vector<std::string> titles;
  for (const Finding& finding : assess(build, UnitSystem::as_written, tuning).checks)
    if (finding.verdict == Verdict::fail && finding.id != "raise.time" && finding.id != "power.light_ups")
      titles.push_back(finding.title);
  return titles;
}
void check_places(EngineChoice& choice, const Stall& stall, const Stock& stock, unsigned threads) {
  share_out(choice.places.size(), threads, [&](std::size_t i) {
    const Combination& c = choice.places[i].candidate.at;
    for (std::size_t unit = 0; unit < stock.units.size(); ++unit) {
      const Unit& u = stock.units[unit];
      if (u.fan != c.fan || u.pack != c.pack || u.step_up != c.step_up || u.pairing != c.pairing) continue;
      Build build = with_unit(stall, stock, unit);
      build.adapter.tube = stall.tubes[c.tube];
      choice.places[i].fails = failing(build, stock.tuning);
      return;
    }
  });
}

/// How often each thing is a first choice, and what stands in the way of taking all of them at once.
class Sharing {
 public:
  explicit Sharing(const Bin& bin) : bin_(bin) {}
  void add(const Candidate& c) {
    use(*bin_.fans[c.at.fan].name, bin_.fans[c.at.fan].count, c.at.pairing == FanPairing::one ? 1 : 2);
    const part::BinPack& pack = bin_.packs[c.at.pack];
    use(*pack.name, pack.count, 1);
    if (!bin_.step_ups[c.at.step_up].direct)
      use(*bin_.step_ups[c.at.step_up].name, bin_.step_ups[c.at.step_up].count, 1);
    for (const part::BinDrawer& drawer : bin_.drawers)
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
  void use(const std::string& name, const Count& there, int times) {
    Use& one = used_.try_emplace(name, Use{0, there.value.value_or(1)}).first->second;
    one.wanted += times;
  }
  const Bin& bin_;
  std::map<std::string, Use> used_;
};
}  // namespace

Choice choose(const Bin& bin, const ChooseAsked& asked, const Tuning* tuning) {
  check_asked(bin, asked);
  const Stock stock = stock_of(bin, tuning);
  Choice choice{.name = bin.name ? *bin.name : "",
                .file = bin.file,
                .told_apart = data::choosing_rules().time_over_pressure * data::fan_tolerance().pressure,
                .units = stock.units,
                .engines = {},
                .for_all = {},
                .shared = {},
                .effort = {}};
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
    Judging judging = judge_yard(yards.back(), stock, asked, choice.told_apart, choice.effort, tally);
    choice.engines.push_back(sum_up(yards.back(), stock, std::move(judging)));
    if (!asked.every) check_places(choice.engines.back(), yards.back().stall, stock, asked.threads);
  }
  if (yards.size() > 1) choice.for_all = units_for_all(yards, stock, asked, choice.effort);
  Sharing sharing(bin);
  for (const EngineChoice& engine : choice.engines)
    if (!engine.places.empty()) sharing.add(engine.places.front().candidate);
  if (yards.size() > 1) choice.shared = sharing.sentences();
  tally.finish();
  return choice;
}
}  // namespace lumwright
