#include "report/detail/choice_words.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
bool same_parts(const choose::Combination& a, const choose::Combination& b) {
  return a.fan == b.fan && a.pack == b.pack && a.step_up == b.step_up && a.tube == b.tube && a.pairing == b.pairing &&
         a.lowered == b.lowered;
}
std::string name_of(const choose::Candidate& c) {
  return fmt::format("{}, {}, {}, {}", c.fan, c.pack, c.step_up, c.tube);
}
const char* grade_words(const choose::Candidate& c) {
  if (c.in_time) return c.enough ? "all that you want" : "in time, but too few light-ups";
  return c.enough ? "light-ups enough, but too slow" : "too slow, and too few light-ups";
}
std::string fate_words(const choose::ItemFate& item) {
  if (item.place) return fmt::format("place {}", *item.place) + (item.on_front ? ", unbeaten" : "");
  const std::string here = item.on_front ? "unbeaten" : std::string(choose::words(item.mostly));
  return here + (item.elsewhere.empty() ? "" : "; " + item.elsewhere);
}
std::string minutes_text(Duration t, const TextStyle& style) { return show({AnyQuantity(t), "min"}, style, 2); }
std::string mass_text(const std::optional<Mass>& mass, const TextStyle& style) {
  return mass ? show({AnyQuantity(*mass), "g"}, style, 2) : "?";
}
std::string light_ups_text(int count) { return fmt::format("{} {}", count, count == 1 ? "light-up" : "light-ups"); }
std::string watch_words(const std::vector<std::string>& watches) {
  return watches.empty() ? "" : fmt::format("to watch: {}", fmt::join(watches, ", "));
}
std::string none_sentence(const choose::EngineChoice& engine) {
  return engine.barred.empty() ? fmt::format("Nothing here raises steam on {}.", engine.engine)
                               : fmt::format("What raises steam on {} fails a check.", engine.engine);
}
std::string loss_words(const choose::Serving& s) {
  std::string out(choose::words(s.loss));
  if (!s.fails.empty()) out += fmt::format(": {}", fmt::join(s.fails, ", "));
  return out;
}
std::string barred_sentence(const choose::EngineChoice& engine) {
  constexpr std::size_t most = 3;
  if (engine.barred.empty()) return "";
  std::vector<std::string> names;
  for (std::size_t i = 0; i < engine.barred.size() && i < most; ++i)
    names.push_back(fmt::format("{} ({})", name_of(engine.barred[i].candidate),
                                engine.barred[i].fails.empty()
                                    ? std::string("no steam")
                                    : fmt::format("{}", fmt::join(engine.barred[i].fails, ", "))));
  const std::size_t more = engine.barred.size() - names.size();
  return fmt::format("Without a place, for a check fails: {}{}.", fmt::join(names, "; "),
                     more == 0 ? std::string() : fmt::format("; and {} more", more));
}
std::string tubes_sentence(const choose::EngineChoice& engine) {
  return engine.tubes_to_buy.empty() ? "" : fmt::format("None of the tubes fits: {}.", engine.tubes_to_buy);
}
namespace {
std::string equal_words(const choose::Place& place, const TextStyle& style) {
  constexpr std::size_t most = 4;
  if (place.equals.empty()) return "";
  std::vector<std::string> names;
  for (std::size_t i = 0; i < place.equals.size() && i < most; ++i) {
    const choose::Candidate& c = place.equals[i];
    names.push_back(fmt::format("{} ({}, {}, {})", name_of(c), minutes_text(c.to_steam, style),
                                light_ups_text(c.light_ups), mass_text(c.mass, style)));
  }
  const std::size_t more = place.equals.size() - names.size();
  return fmt::format("as fast, as far as can be told: {}{}", fmt::join(names, "; "),
                     more == 0 ? std::string() : fmt::format("; and {} more", more));
}
}  // namespace
std::vector<std::string> remarks_on(const std::vector<choose::Place>& places, const TextStyle& style) {
  std::vector<std::string> remarks;
  remarks.reserve(places.size());
  std::string_view grade;
  for (const choose::Place& place : places) {
    const std::string_view own = grade_words(place.candidate);
    std::string remark(own == grade ? "" : own);
    const std::string sized = place.sized.empty() ? "" : "sized for it: " + place.sized;
    for (const std::string& more : {watch_words(place.watches), sized, equal_words(place, style)})
      if (!more.empty()) remark += (remark.empty() ? "" : "; ") + more;
    remarks.push_back(std::move(remark));
    grade = own;
  }
  return remarks;
}
std::string wanted_sentence(const choose::EngineChoice& engine, const TextStyle& style) {
  return fmt::format("Wanted: steam in {}, {:g} {} on a charge.", minutes_text(engine.within, style), engine.wanted,
                     engine.wanted == 1.0 ? "light-up" : "light-ups");
}
std::string tie_sentence(const choose::Choice& choice) {
  return fmt::format(
      "First what does all that you want, then what has fewest points to watch, then minutes, light-ups, mass. Times "
      "that differ by less than their fans' curves leave open cannot be told apart and share a place: {} where one fan "
      "is in both, up to {} between others. Every place was checked "
      "in full{}. Masses that you did not write are usual ones.",
      percent(choice.told_apart_least, 2), percent(choice.told_apart_most, 2),
      choice.samples == 0 ? std::string(", without samples")
                          : fmt::format(", in {} samples, what is advised first in {}",
                                        std::min(choice.samples, choose::place_samples), choice.samples));
}

namespace {
void add_cautions(Advice& advice, const std::string& engine, const std::vector<std::string>& watches) {
  if (watches.empty()) return;
  advice.cautions.push_back(fmt::format("{}: {}.", engine, watch_words(watches)));
  if (advice.verdict == plan::Verdict::pass) advice.verdict = plan::Verdict::watch;
}
Advice for_one(const choose::Choice& choice, const TextStyle& style) {
  if (choice.engines.empty()) return {plan::Verdict::unknown, "The bin holds no engine.", {}};
  const choose::EngineChoice& engine = choice.engines.front();
  if (!engine.lacking.empty())
    return {plan::Verdict::unknown,
            fmt::format("Nothing can be said yet: the bin lacks {}.", fmt::join(engine.lacking, ", ")),
            {}};
  if (engine.places.empty()) return {plan::Verdict::fail, none_sentence(engine), {}};
  const choose::Candidate& c = engine.places.front().candidate;
  if (!c.in_time || !c.enough)
    return {plan::Verdict::fail,
            fmt::format("Nothing here does all that you want on {}. The nearest, {}: steam in {}, {} on a charge; {}.",
                        engine.engine, name_of(c), minutes_text(c.to_steam, style), light_ups_text(c.light_ups),
                        grade_words(c)),
            {}};
  Advice advice{plan::Verdict::pass,
                fmt::format("Make the unit of {}: steam on {} in {}, {} on a charge.", name_of(c), engine.engine,
                            minutes_text(c.to_steam, style), light_ups_text(c.light_ups)),
                {}};
  add_cautions(advice, engine.engine, engine.places.front().watches);
  return advice;
}
Advice for_several(const choose::Choice& choice) {
  const choose::UnitChoice& best = choice.for_all.front();
  const std::size_t all = choice.engines.size();
  const std::string serves = best.served < all ? fmt::format("{} of {} engines", best.served, all)
                             : all == 2        ? std::string("both engines")
                                               : fmt::format("all {} engines", all);
  const bool content = best.contented == all;
  if (best.contented == 0)
    return {
        plan::Verdict::fail, "No unit here does all that you want on any engine: see what comes nearest below.", {}};
  Advice advice{best.served < all ? plan::Verdict::fail
                : content         ? plan::Verdict::pass
                                  : plan::Verdict::watch,
                fmt::format("Make one unit of {}, {}, {}: it raises steam on {}{}.", best.unit.fan_name,
                            best.unit.pack_name, best.unit.step_up_name, serves,
                            content ? " as you want it"
                                    : fmt::format(", on {} of them as you want it",
                                                  best.contented == 0 ? "none" : std::to_string(best.contented))),
                {}};
  for (const choose::Serving& s : best.engines) {
    if (s.with && (!s.with->in_time || !s.with->enough))
      advice.cautions.push_back(fmt::format("{}: {}.", s.engine, grade_words(*s.with)));
    if (s.with)
      add_cautions(advice, s.engine, s.watches);
    else
      advice.cautions.push_back(fmt::format("{}: not with it, {}.", s.engine, loss_words(s)));
  }
  return advice;
}
}  // namespace

Advice advice_of(const choose::Choice& choice, const TextStyle& style) {
  if (choice.engines.size() < 2) return for_one(choice, style);
  if (!choice.for_all.empty()) return for_several(choice);
  const bool lacking = std::all_of(choice.engines.begin(), choice.engines.end(),
                                   [](const choose::EngineChoice& e) { return !e.lacking.empty(); });
  if (lacking) return for_one(choice, style);
  return {plan::Verdict::fail, "Nothing here raises steam on any engine.", {}};
}
}  // namespace lumwright::report
