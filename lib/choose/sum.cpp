#include "choose/detail/work.hpp"
#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace lumwright::choose {
namespace {
constexpr std::size_t loss_count = static_cast<std::size_t>(Loss::outdone) + 1;
using Counts = std::array<std::size_t, loss_count>;

struct LossWords {
  std::string_view id, words;
};
constexpr std::array<LossWords, loss_count> texts = {{{"none", "shown"},
                                                      {"lacking", "not known"},
                                                      {"tube_too_large", "tube too large"},
                                                      {"tube_too_loose", "tube too loose"},
                                                      {"seizes_hot", "seizes hot"},
                                                      {"fan_stands", "fan will not start"},
                                                      {"too_much_voltage", "too many volts"},
                                                      {"pack_too_weak", "pack too weak"},
                                                      {"cell_reversed", "cell reversed"},
                                                      {"step_up_overloaded", "step-up overloaded"},
                                                      {"step_up_runs_away", "step-up runs away"},
                                                      {"fuse_blows", "wrong fuse"},
                                                      {"cannot_be_lowered", "cannot turn down"},
                                                      {"no_draught", "no draught"},
                                                      {"fan_too_hot", "fan too hot"},
                                                      {"fire_lifts", "lifts the fire"},
                                                      {"no_steam", "never steams"},
                                                      {"pack_stops_first", "pack empty first"},
                                                      {"fails_check", "fails a check"},
                                                      {"too_slow", "too slow"},
                                                      {"too_few_light_ups", "too few light-ups"},
                                                      {"outdone", "beaten by others"}}};

std::size_t index(Loss loss) { return static_cast<std::size_t>(loss); }
// How far a combination got: what fails before any tube is asked lies behind what fails with the tube.
int reached(std::size_t i) {
  constexpr int stages = 100;
  const auto loss = static_cast<Loss>(i);
  const bool of_tube = loss == Loss::tube_too_large || loss == Loss::tube_too_loose || loss == Loss::seizes_hot;
  return static_cast<int>(i) + (of_tube ? stages : loss > Loss::cannot_be_lowered ? 2 * stages : 0);
}
Loss furthest(const Counts& counts) {
  std::size_t best = 0;
  for (std::size_t i = 1; i < loss_count; ++i)
    if (counts[i] > 0 && (best == 0 || reached(i) > reached(best))) best = i;
  return static_cast<Loss>(best);
}

using UnitKey = std::tuple<std::size_t, draught::FanPairing, std::size_t, std::size_t, bool>;
std::map<UnitKey, std::size_t> unit_index(const Stock& stock) {
  std::map<UnitKey, std::size_t> out;
  for (std::size_t i = 0; i < stock.units.size(); ++i) {
    const Unit& u = stock.units[i];
    out.emplace(UnitKey{u.fan, u.pairing, u.pack, u.step_up, u.lowered}, i);
  }
  return out;
}
void mark_shown(EngineChoice& choice, const Stock& stock) {
  const auto units = unit_index(stock);
  const auto mark = [&](const Candidate& c) {
    const std::size_t unit = units.at({c.at.fan, c.at.pairing, c.at.pack, c.at.step_up, c.at.lowered});
    choice.judged[unit * choice.tubes.size() + c.at.tube].loss = Loss::none;
  };
  for (const Place& place : choice.places) {
    mark(place.candidate);
    for (const Candidate& c : place.equals) mark(c);
  }
  for (const Candidate& c : choice.front) mark(c);
}

template <class Is>
bool holds(const Place& place, const Is& is) {
  return is(place.candidate.at) ||
         std::any_of(place.equals.begin(), place.equals.end(), [&](const Candidate& c) { return is(c.at); });
}
/// The fates of one list's items. `part` picks the item of a combination.
template <class Part>
void add_fates(EngineChoice& choice, const Stock& stock, const char* list, const std::vector<std::string>& names,
               const Part& part) {
  std::vector<Counts> counts(names.size(), Counts{});
  for (std::size_t unit = 0; unit < stock.units.size(); ++unit) {
    const Unit& u = stock.units[unit];
    for (std::size_t tube = 0; tube < choice.tubes.size(); ++tube)
      ++counts[part(Combination{0, u.fan, u.pack, u.step_up, tube, u.pairing, u.lowered})]
              [index(choice.judged[unit * choice.tubes.size() + tube].loss)];
  }
  std::vector<ItemFate> fates;
  for (std::size_t i = 0; i < names.size(); ++i) {
    ItemFate fate{list, names[i], std::nullopt, false, furthest(counts[i])};
    for (std::size_t p = choice.places.size(); p-- > 0;)
      if (holds(choice.places[p], [&](const Combination& c) { return part(c) == i; })) fate.place = p + 1;
    for (const Candidate& c : choice.front) fate.on_front = fate.on_front || part(c.at) == i;
    fates.push_back(std::move(fate));
  }
  std::sort(fates.begin(), fates.end(), [](const ItemFate& a, const ItemFate& b) { return a.name < b.name; });
  choice.items.insert(choice.items.end(), fates.begin(), fates.end());
}
template <class Item>
std::vector<std::string> names_of(const std::vector<Item>& items) {
  std::vector<std::string> names;
  names.reserve(items.size());
  for (const Item& item : items) names.push_back(*item.name);
  return names;
}
}  // namespace

std::string_view id(Loss loss) { return texts[index(loss)].id; }
std::string_view words(Loss loss) { return texts[index(loss)].words; }

EngineChoice start_choice(const Yard& yard, Judging& judging) {
  EngineChoice out{.engine = *yard.stall.base.name,
                   .lacking = yard.lacking,
                   .tubes = yard.stall.tube_names,
                   .within = yard.stall.within,
                   .wanted = yard.stall.wanted,
                   .places = judging.ranking.places(),
                   .front = judging.ranking.front(),
                   .losses = {},
                   .items = {},
                   .judged = std::move(judging.judged)};
  return out;
}
void sum_up(EngineChoice& out, const Stock& stock) {
  const description::Bin& bin = stock.bin;
  if (!out.lacking.empty()) return;
  mark_shown(out, stock);
  Counts counts{};
  for (const Judged& one : out.judged) ++counts[index(one.loss)];
  for (std::size_t i = 1; i < loss_count; ++i)
    if (counts[i] > 0) out.losses.push_back({static_cast<Loss>(i), counts[i]});
  add_fates(out, stock, "fan", names_of(bin.fans), [](const Combination& c) { return c.fan; });
  add_fates(out, stock, "pack", names_of(bin.packs), [](const Combination& c) { return c.pack; });
  add_fates(out, stock, "step-up", names_of(bin.step_ups), [](const Combination& c) { return c.step_up; });
  add_fates(out, stock, "tube", out.tubes, [](const Combination& c) { return c.tube; });
}
}  // namespace lumwright::choose
