#include "choose/detail/work.hpp"
#include "description/reader.hpp"
#include "description/writer.hpp"
#include "plan/assess.hpp"
#include "plan/workers.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <tuple>

namespace lumwright::choose {
namespace {
constexpr std::size_t most_alike = 4;  // of a group that are followed in samples and shown
bool is_want(std::string_view id) { return id == "raise.time" || id == "power.light_ups"; }
double number_of(const plan::Assessment& a, std::string_view key) {
  const model::Result* result = plan::find_result(a, key);
  return result == nullptr ? 0.0 : std::get<model::Measure>(result->value).quantity.si;
}
description::Build as_description(const Yard& yard, const Stock& stock, std::size_t unit, std::size_t tube) {
  const Unit& u = stock.units[unit];
  description::Build build = with_unit(yard.stall, stock, unit);
  build.adapter.tube = yard.stall.tubes[tube];
  build.name.value = fmt::format("{}: {}, {}, {}, {}", *yard.stall.base.name, u.fan_name, u.pack_name, u.step_up_name,
                                 yard.stall.tube_names[tube]);
  return build;
}
void sort_findings(Checked& out, const plan::Assessment& a) {
  for (const plan::Finding& f : a.checks) {
    if (f.verdict == plan::Verdict::fail) (is_want(f.id) ? out.wants : out.fails).push_back(f.title);
    if (f.verdict == plan::Verdict::fail && f.id == "raise.time") out.in_time = false;
    if (f.verdict == plan::Verdict::fail && f.id == "power.light_ups") out.enough = false;
    if (f.verdict == plan::Verdict::fail) continue;
    if (f.verdict != plan::Verdict::pass) out.watches.push_back(f.title);
  }
}

/// A candidate with what check says of it.
struct Contender {
  Candidate candidate;
  Checked checked;
  std::size_t unit;
};
int grade_of_entry(const Contender& e) { return grade(e.candidate.in_time, e.candidate.enough); }
double mass_or_most(const Candidate& c) { return c.mass ? in(*c.mass, kg) : 1e9; }
bool first_in_group(const Contender& a, const Contender& b) {
  const auto key = [](const Candidate& c) { return std::tuple(-c.light_ups, mass_or_most(c), in(c.to_steam, s)); };
  return key(a.candidate) != key(b.candidate) ? key(a.candidate) < key(b.candidate)
                                              : named_before(a.candidate, b.candidate);
}
using Group = std::vector<Contender>;
bool faster_entry(const Contender& a, const Contender& b) {
  const auto key = [](const Contender& e) {
    return std::tuple(grade_of_entry(e), e.checked.watches.size(), in(e.candidate.to_steam, s));
  };
  return key(a) != key(b) ? key(a) < key(b) : named_before(a.candidate, b.candidate);
}
std::vector<Group> grouped(std::vector<Contender> all) {
  std::sort(all.begin(), all.end(), faster_entry);
  std::vector<Group> groups;
  Candidate first{};
  for (Contender& e : all) {
    const bool joins = !groups.empty() && grade_of_entry(groups.back().front()) == grade_of_entry(e) &&
                       groups.back().front().checked.watches.size() == e.checked.watches.size() &&
                       e.candidate.to_steam <= (1.0 + told_apart(first, e.candidate)) * first.to_steam;
    if (!joins) {
      groups.emplace_back();
      first = e.candidate;
    }
    groups.back().push_back(std::move(e));
  }
  for (Group& group : groups) std::sort(group.begin(), group.end(), first_in_group);
  return groups;
}

class EngineChecking {
 public:
  EngineChecking(EngineChoice& choice, const Yard& yard, const Stock& stock, const ChooseAsked& asked,
                 ChooseEffort& effort)
      : choice_(choice), yard_(yard), stock_(stock), asked_(asked), effort_(effort) {}
  void run() {
    std::vector<Contender> entries = candidates();
    check(entries, 0);
    part(entries);
    if (asked_.samples > 0) {
      entries = sampled(grouped(std::move(entries)));
      settle_first(entries);
    }
    fill(grouped(std::move(entries)));
  }

 private:
  // Places and front, each once; of one that is turned down its full output is judged, which heads its group.
  std::vector<Contender> candidates() {
    std::vector<Contender> out;
    const auto add = [&](const Candidate& c) {
      const std::size_t unit = unit_of(stock_, c.at);
      if (c.at.lowered) {
        lowered_.push_back(c);
        return;
      }
      const bool known = std::any_of(out.begin(), out.end(), [&](const Contender& e) {
        return e.unit == unit && e.candidate.at.tube == c.at.tube;
      });
      if (!known) out.push_back({c, {}, unit});
    };
    for (const Place& place : choice_.places) add(place.candidate);
    for (const Candidate& c : choice_.front) add(c);
    return out;
  }
  void check(std::vector<Contender>& entries, std::size_t samples) {
    plan::share_out(entries.size(), asked_.threads, [&](std::size_t i) {
      Contender& e = entries[i];
      e.checked = check_combination(yard_, stock_, e.unit, e.candidate.at.tube, samples);
      take_over(e.candidate, e.checked);
    });
    effort_.assessed += entries.size();
  }
  // What fails goes.
  void part(std::vector<Contender>& entries) {
    std::erase_if(entries, [&](const Contender& e) {
      if (e.checked.fails.empty() && e.checked.to_steam) return false;
      choice_.barred.push_back({e.candidate, e.checked.fails});
      choice_.judged[e.unit * choice_.tubes.size() + e.candidate.at.tube].loss = Loss::fails_check;
      return true;
    });
  }
  // Those of as many groups as there are places, in samples; the others are left out.
  std::vector<Contender> sampled(std::vector<Group> groups) {
    std::vector<Contender> shown;
    for (std::size_t from = 0; from < groups.size() && shown.size() < asked_.places;) {
      std::vector<Contender> next;
      for (; from < groups.size() && shown.size() + next.size() < asked_.places; ++from)
        for (std::size_t i = 0; i < groups[from].size() && i < most_alike; ++i)
          next.push_back(std::move(groups[from][i]));
      check(next, std::min(asked_.samples, place_samples));
      part(next);
      for (Contender& e : next) shown.push_back(std::move(e));
    }
    return shown;
  }
  // The first in as many samples as check takes; where that undoes it, the next.
  void settle_first(std::vector<Contender>& entries) {
    std::vector<const Candidate*> done;
    std::vector<std::pair<std::size_t, std::size_t>> settled;
    while (!entries.empty()) {
      const std::vector<Group> groups = grouped(entries);
      const Contender& head = groups.front().front();
      const std::pair<std::size_t, std::size_t> at{head.unit, head.candidate.at.tube};
      if (std::find(settled.begin(), settled.end(), at) != settled.end()) return;
      settled.push_back(at);
      for (Contender& e : entries)
        if (std::pair(e.unit, e.candidate.at.tube) == at) {
          e.checked = check_combination(yard_, stock_, e.unit, e.candidate.at.tube, asked_.samples);
          take_over(e.candidate, e.checked);
        }
      part(entries);
    }
  }
  void fill(std::vector<Group> groups) {
    choice_.places.clear();
    choice_.front.clear();
    std::vector<Candidate> all;
    for (Group& group : groups) {
      Place place{group.front().candidate, choice_.places.size() + 1, false, group.front().checked.wants};
      place.watches = group.front().checked.watches;
      place.sized = words(yard_.stall.sized[group.front().unit]);
      place.description = group.front().checked.description;
      place.cautions = group.front().checked.cautions;
      for (std::size_t i = 0; i < group.size(); ++i) {
        if (i > 0) place.equals.push_back(group[i].candidate);
        all.push_back(group[i].candidate);
        add_lowered(place, group[i].candidate, all);
      }
      place.tied = !place.equals.empty();
      choice_.places.push_back(std::move(place));
    }
    for (const Candidate& c : all)
      if (std::none_of(all.begin(), all.end(), [&](const Candidate& o) { return dominates(o, c); }))
        choice_.front.push_back(c);
    std::sort(choice_.front.begin(), choice_.front.end(), [](const Candidate& a, const Candidate& b) {
      return a.to_steam != b.to_steam ? a.to_steam < b.to_steam : named_before(a, b);
    });
  }
  void add_lowered(Place& place, const Candidate& full, std::vector<Candidate>& all) const {
    for (const Candidate& c : lowered_) {
      const bool same = c.at.fan == full.at.fan && c.at.pairing == full.at.pairing && c.at.pack == full.at.pack &&
                        c.at.step_up == full.at.step_up && c.at.tube == full.at.tube;
      const auto known = [&](const Candidate& o) {
        return o.at.lowered && o.at.tube == c.at.tube && o.fan == c.fan && o.pack == c.pack && o.step_up == c.step_up;
      };
      if (!same || std::any_of(place.equals.begin(), place.equals.end(), known)) continue;
      place.equals.push_back(c);
      all.push_back(c);
    }
  }

  EngineChoice& choice_;
  const Yard& yard_;
  const Stock& stock_;
  const ChooseAsked& asked_;
  ChooseEffort& effort_;
  std::vector<Candidate> lowered_;
};
}  // namespace

std::size_t unit_of(const Stock& stock, const Combination& c) {
  for (std::size_t i = 0; i < stock.units.size(); ++i) {
    const Unit& u = stock.units[i];
    if (u.fan == c.fan && u.pack == c.pack && u.step_up == c.step_up && u.pairing == c.pairing &&
        u.lowered == c.lowered)
      return i;
  }
  throw std::logic_error("a combination of no unit");
}

Checked check_combination(const Yard& yard, const Stock& stock, std::size_t unit, std::size_t tube,
                          std::size_t samples) {
  Checked out;
  out.description = description::write_build(as_description(yard, stock, unit, tube));
  description::Build build;
  try {
    build = description::read_build({"combination.yaml", out.description});
  } catch (const input::InputError&) {
    out.fails.emplace_back("its parts contradict each other");
    return out;
  }
  const plan::Assessment a = plan::assess(build, UnitSystem::as_written, stock.tuning,
                                          plan::SamplesAsked{.count = samples, .seed = 1, .threads = 1});
  sort_findings(out, a);
  for (const plan::Caution& one : a.cautions) out.cautions.insert(one.id);
  const std::string_view goal =
      yard.stall.base.engine.boiler.own_blower_from ? "raise.to_own_blower" : "raise.to_working";
  if (const double t = number_of(a, goal); t > 0.0) out.to_steam = t * s;
  out.runtime = number_of(a, "power.runtime") * s;
  out.light_ups = static_cast<int>(number_of(a, "power.light_ups_per_charge"));
  if (out.in_time && out.to_steam && *out.to_steam > yard.stall.within) {  // judged to working pressure
    out.in_time = false;
    out.wants.emplace_back("Minutes to working pressure");
  }
  return out;
}

void take_over(Candidate& candidate, const Checked& checked) {
  if (!checked.to_steam) return;
  candidate.to_steam = *checked.to_steam;
  candidate.runtime = checked.runtime;
  candidate.light_ups = checked.light_ups;
  candidate.in_time = checked.in_time;
  candidate.enough = checked.enough;
}

bool check_engine(EngineChoice& choice, const Yard& yard, const Stock& stock, const ChooseAsked& asked,
                  std::size_t pool, ChooseEffort& effort) {
  const bool more = choice.places.size() >= pool;
  EngineChecking(choice, yard, stock, asked, effort).run();
  return !choice.places.empty() || !more;
}
}  // namespace lumwright::choose
