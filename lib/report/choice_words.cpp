#include "report/choice_words.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright {
bool same_parts(const Combination& a, const Combination& b) {
  return a.fan == b.fan && a.pack == b.pack && a.step_up == b.step_up && a.tube == b.tube && a.pairing == b.pairing &&
         a.lowered == b.lowered;
}
std::string name_of(const Candidate& c) { return fmt::format("{}, {}, {}, {}", c.fan, c.pack, c.step_up, c.tube); }
const char* grade_words(const Candidate& c) {
  if (c.in_time) return c.enough ? "all that you want" : "in time, but too few light-ups";
  return c.enough ? "light-ups enough, but too slow" : "too slow, and too few light-ups";
}
std::string fate_words(const ItemFate& item) {
  if (item.place) return fmt::format("place {}", *item.place) + (item.on_front ? ", on the front" : "");
  return item.on_front ? "on the front" : std::string(words(item.mostly));
}
std::string minutes_text(Duration t, const TextStyle& style) { return show({AnyQuantity(t), "min"}, style, 2); }
std::string mass_text(const std::optional<Mass>& mass, const TextStyle& style) {
  return mass ? show({AnyQuantity(*mass), "g"}, style, 2) : "?";
}
std::string light_ups_text(int count) { return fmt::format("{} {}", count, count == 1 ? "light-up" : "light-ups"); }
std::string failed_checks(const Place& place) {
  return place.fails.empty() ? "" : fmt::format("a check of it fails: {}", fmt::join(place.fails, ", "));
}
std::vector<std::string> remarks_on(const std::vector<Place>& places) {
  std::vector<std::string> remarks;
  remarks.reserve(places.size());
  std::string_view grade;
  for (const Place& place : places) {
    const std::string_view own = grade_words(place.candidate);
    std::string remark(own == grade ? "" : own);
    if (!place.fails.empty()) remark += (remark.empty() ? "" : "; ") + failed_checks(place);
    remarks.push_back(std::move(remark));
    grade = own;
  }
  return remarks;
}
std::string wanted_sentence(const EngineChoice& engine, const TextStyle& style) {
  return fmt::format("Wanted: steam in {}, {:g} {} on a charge.", minutes_text(engine.within, style), engine.wanted,
                     engine.wanted == 1.0 ? "light-up" : "light-ups");
}
std::string tie_sentence(const Choice& choice) {
  return fmt::format(
      "Places with = cannot be told apart by their minutes: the fans leave {} open. The lighter stands "
      "first. Masses that you did not write are usual ones.",
      percent(choice.told_apart, 2));
}

std::string still_to_check(const Choice& choice, const Candidate& candidate) {
  for (const EngineChoice& one : choice.engines)
    for (const Place& place : one.places)
      if (place.candidate.at.engine == candidate.at.engine && same_parts(place.candidate.at, candidate.at))
        return failed_checks(place);
  return "not among the places, so not checked further: describe it and check it";
}

namespace {
void add_cautions(Advice& advice, const Choice& choice, const std::string& engine, const Candidate& candidate) {
  const std::string words = still_to_check(choice, candidate);
  if (words.empty()) return;
  advice.cautions.push_back(fmt::format("{}: {}.", engine, words));
  if (advice.verdict == Verdict::pass) advice.verdict = Verdict::watch;
}
Advice for_one(const Choice& choice, const TextStyle& style) {
  if (choice.engines.empty()) return {Verdict::unknown, "The bin holds no engine.", {}};
  const EngineChoice& engine = choice.engines.front();
  if (!engine.lacking.empty())
    return {Verdict::unknown,
            fmt::format("Nothing can be said yet: the bin lacks {}.", fmt::join(engine.lacking, ", ")),
            {}};
  if (engine.places.empty()) return {Verdict::fail, fmt::format("Nothing here raises steam on {}.", engine.engine), {}};
  const Candidate& c = engine.places.front().candidate;
  const bool all = c.in_time && c.enough;
  Advice advice{all ? Verdict::pass : Verdict::watch,
                fmt::format("Make the unit of {}: steam on {} in {}, {} on a charge{}.", name_of(c), engine.engine,
                            minutes_text(c.to_steam, style), light_ups_text(c.light_ups),
                            all ? "" : std::string("; ") + grade_words(c)),
                {}};
  add_cautions(advice, choice, engine.engine, c);
  return advice;
}
Advice for_several(const Choice& choice) {
  const UnitChoice& best = choice.for_all.front();
  const std::size_t all = choice.engines.size();
  const std::string serves = best.served < all ? fmt::format("{} of {} engines", best.served, all)
                             : all == 2        ? std::string("both engines")
                                               : fmt::format("all {} engines", all);
  const bool content = best.contented == all;
  Advice advice{best.served < all ? Verdict::fail
                : content         ? Verdict::pass
                                  : Verdict::watch,
                fmt::format("Make one unit of {}, {}, {}: it raises steam on {}{}.", best.unit.fan_name,
                            best.unit.pack_name, best.unit.step_up_name, serves,
                            content ? " as you want it"
                                    : fmt::format(", on {} of them as you want it",
                                                  best.contented == 0 ? "none" : std::to_string(best.contented))),
                {}};
  for (const Serving& s : best.engines) {
    if (s.with)
      add_cautions(advice, choice, s.engine, *s.with);
    else
      advice.cautions.push_back(fmt::format("{}: no steam with it, {}.", s.engine, words(s.loss)));
  }
  return advice;
}
}  // namespace

Advice advice_of(const Choice& choice, const TextStyle& style) {
  if (choice.engines.size() < 2) return for_one(choice, style);
  if (!choice.for_all.empty()) return for_several(choice);
  const bool lacking = std::all_of(choice.engines.begin(), choice.engines.end(),
                                   [](const EngineChoice& e) { return !e.lacking.empty(); });
  if (lacking) return for_one(choice, style);
  return {Verdict::fail, "Nothing here raises steam on any engine.", {}};
}
}  // namespace lumwright
