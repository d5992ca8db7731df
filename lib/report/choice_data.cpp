#include "report/choice.hpp"
#include "report/detail/csv.hpp"
#include "report/detail/csv_unit.hpp"
#include "report/detail/json_parts.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <tuple>

namespace lumwright::report {
static std::string_view word(draught::FanPairing pairing) {
  if (pairing == draught::FanPairing::one) return "one";
  return pairing == draught::FanPairing::series ? "series" : "side by side";
}
static Json object(const choose::Candidate& c) {
  return {{"fan", c.fan},
          {"pack", c.pack},
          {"step_up", c.step_up},
          {"tube", c.tube},
          {"fans", std::string(word(c.at.pairing))},
          {"turned_down", c.at.lowered},
          {"to_steam", object(AnyQuantity(c.to_steam))},
          {"runtime", object(AnyQuantity(c.runtime))},
          {"light_ups", c.light_ups},
          {"mass", object(c.mass)},
          {"in_time", c.in_time},
          {"enough", c.enough}};
}
static Json object(const choose::Place& p) {
  Json out = object(p.candidate);
  out["group"] = p.group;
  out["tied"] = p.tied;
  out["fails"] = p.fails;
  out["watches"] = p.watches;
  out["sized"] = p.sized;
  out["as_good"] = list(p.equals, object);
  return out;
}
static Json object(const choose::LossCount& loss) {
  return {{"why", std::string(choose::id(loss.loss))},
          {"words", std::string(choose::words(loss.loss))},
          {"count", loss.count}};
}
static Json object(const choose::ItemFate& item) {
  Json out{
      {"list", item.list}, {"name", item.name}, {"place", Json()}, {"on_front", item.on_front}, {"mostly", Json()}};
  out["elsewhere"] = item.elsewhere;
  if (item.place) out["place"] = *item.place;
  if (item.mostly != choose::Loss::none) out["mostly"] = std::string(choose::id(item.mostly));
  return out;
}
static Json object(const ChoiceDot& dot) {
  Json out{{"name", dot.name},
           {"to_steam", object(AnyQuantity(dot.to_steam))},
           {"light_ups", dot.light_ups},
           {"mass", object(dot.mass)},
           {"place", Json()},
           {"on_front", dot.on_front}};
  if (dot.place) out["place"] = *dot.place;
  return out;
}
static Json object(const choose::Serving& s) {
  Json out{{"engine", s.engine}, {"with", Json()},       {"why_not", Json()},
           {"fails", s.fails},   {"watches", s.watches}, {"sized", s.sized}};
  if (s.with) out["with"] = object(*s.with);
  if (s.loss != choose::Loss::none) out["why_not"] = std::string(choose::id(s.loss));
  return out;
}
static Json object(const choose::UnitChoice& u) {
  return {{"fan", u.unit.fan_name},
          {"pack", u.unit.pack_name},
          {"step_up", u.unit.step_up_name},
          {"mass", object(u.unit.mass)},
          {"served", u.served},
          {"as_wanted", u.contented},
          {"slowest_over_wanted", finite(u.slowest)},
          {"fewest_light_ups", u.fewest},
          {"engines", list(u.engines, object)}};
}
static Json object(const choose::Barred& b) {
  Json out = object(b.candidate);
  out["fails"] = b.fails;
  return out;
}
static Json object(const choose::EngineChoice& e) {
  return {{"engine", e.engine},
          {"lacking", e.lacking},
          {"tubes", e.tubes},
          {"steam_within", object(AnyQuantity(e.within))},
          {"light_ups_wanted", finite(e.wanted)},
          {"places", list(e.places, object)},
          {"front", list(e.front, object)},
          {"barred", list(e.barred, object)},
          {"tubes_to_buy", e.tubes_to_buy},
          {"losses", list(e.losses, object)},
          {"items", list(e.items, object)},
          {"chart", list(choice_dots(e), object)}};
}

namespace {
/// Where a combination is shown.
struct Shown {
  std::optional<std::size_t> place;
  bool on_front = false;
};
using Where = std::tuple<std::size_t, draught::FanPairing, std::size_t, std::size_t, bool, std::size_t>;
std::map<Where, Shown> shown_of(const choose::EngineChoice& engine) {
  std::map<Where, Shown> out;
  const auto where = [](const choose::Combination& c) {
    return Where{c.fan, c.pairing, c.pack, c.step_up, c.lowered, c.tube};
  };
  for (std::size_t i = 0; i < engine.places.size(); ++i) {
    out[where(engine.places[i].candidate.at)].place = i + 1;
    for (const choose::Candidate& c : engine.places[i].equals) out[where(c.at)].place = i + 1;
  }
  for (const choose::Candidate& c : engine.front) out[where(c.at)].on_front = true;
  return out;
}
void add_engine(std::string& out, const choose::Choice& choice, const choose::EngineChoice& engine, const CsvUnit& time,
                const CsvUnit& weight) {
  if (engine.judged.empty()) return;
  const auto shown = shown_of(engine);
  std::size_t next = 0;
  for (const choose::Unit& u : choice.units) {
    const std::string unit = fmt::format("{},{},{},{}", csv_text(engine.engine), csv_text(u.fan_name),
                                         csv_text(u.pack_name), csv_text(u.step_up_name));
    const std::string mass = u.mass ? weight(*u.mass) : "";
    for (std::size_t tube = 0; tube < engine.tubes.size(); ++tube) {
      const choose::Judged& j = engine.judged[next++];
      const auto found = shown.find({u.fan, u.pairing, u.pack, u.step_up, u.lowered, tube});
      const Shown at = found == shown.end() ? Shown{} : found->second;
      const bool known = j.to_steam > 0.0 * unit::s;
      out += fmt::format("{},{},{},{},{},{},{},{}\n", unit, csv_text(engine.tubes[tube]),
                         at.place ? fmt::format("{}", *at.place) : "", at.on_front ? "yes" : "",
                         known ? time(j.to_steam) : "", known ? fmt::format("{}", j.light_ups) : "", mass,
                         j.loss == choose::Loss::none ? "" : choose::id(j.loss));
    }
  }
}
}  // namespace

std::string choice_json(const choose::Choice& choice) {
  const Json report = {{"format", "lumwright/1"},
                       {"choice",
                        {{"name", choice.name},
                         {"combinations", choice.effort.combinations},
                         {"told_apart_least", finite(choice.told_apart_least)},
                         {"told_apart_most", finite(choice.told_apart_most)},
                         {"samples", choice.samples},
                         {"engines", list(choice.engines, object)},
                         {"for_all", list(choice.for_all, object)},
                         {"shared", choice.shared}}},
                       {"cautions", list(choice.cautions, object)}};
  return text_of(report);
}

std::string choice_csv(const choose::Choice& choice, UnitSystem units) {
  Duration longest{};
  Mass heaviest{};
  for (const choose::EngineChoice& engine : choice.engines)
    for (const choose::Judged& one : engine.judged) longest = std::max(longest, one.to_steam);
  for (const choose::Unit& unit : choice.units) heaviest = std::max(heaviest, unit.mass.value_or(heaviest));
  const CsvUnit time(longest, units), weight(heaviest, units);
  std::string out = fmt::format("engine,fan,pack,step_up,tube,place,front,{},light_ups,{},why_not\n",
                                time.head("to_steam"), weight.head("mass"));
  for (const choose::EngineChoice& engine : choice.engines) add_engine(out, choice, engine, time, weight);
  return out;
}
}  // namespace lumwright::report
