// The choice as one would make it by hand: everything worked out, everything compared with everything.
#pragma once
#include "choose/choose.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <limits>
#include <string>
#include <tuple>
#include <vector>

namespace lumwright {
inline double grams(const std::optional<Mass>& mass) {
  return mass ? in(*mass, unit::g) : std::numeric_limits<double>::infinity();
}
/// All that is told of a candidate, to the last digit.
inline std::string told(const choose::Candidate& c) {
  return fmt::format("{} | {} | {} | {}: {} s, {}, {} g", c.fan, c.pack, c.step_up, c.tube, in(c.to_steam, unit::s),
                     c.light_ups, grams(c.mass));
}
inline std::vector<std::string> told(const std::vector<choose::Candidate>& all) {
  std::vector<std::string> out;
  for (const choose::Candidate& c : all) out.push_back(told(c));
  return out;
}
inline std::vector<std::string> told(const std::vector<choose::Place>& all) {
  std::vector<std::string> out;
  for (const choose::Place& p : all) out.push_back(fmt::format("{}. {}", p.group, told(p.candidate)));
  return out;
}
inline std::vector<std::string> told(const std::vector<choose::UnitChoice>& all) {
  std::vector<std::string> out;
  for (const choose::UnitChoice& u : all) {
    std::string line = fmt::format("{} | {} | {}: {} {}", u.unit.fan_name, u.unit.pack_name, u.unit.step_up_name,
                                   u.served, u.contented);
    for (const choose::Serving& s : u.engines) line += s.with ? " / " + told(*s.with) : " / -";
    out.push_back(line);
  }
  return out;
}
inline std::vector<std::string> first(std::vector<std::string> all, std::size_t most) {
  if (all.size() > most) all.resize(most);
  return all;
}

struct Naive {
  std::vector<std::string> places, front;
};
/// `every` holds all candidates among its places, for so many were asked.
inline Naive naive_choice(const choose::EngineChoice& every) {
  std::vector<choose::Candidate> all;
  for (const choose::Place& p : every.places) all.push_back(p.candidate);
  Naive out;
  std::vector<choose::Candidate> front;
  for (const choose::Candidate& a : all)
    if (std::none_of(all.begin(), all.end(), [&](const choose::Candidate& b) {
          const bool no_worse =
              b.to_steam <= a.to_steam && b.light_ups >= a.light_ups && grams(b.mass) <= grams(a.mass);
          const bool better = b.to_steam < a.to_steam || b.light_ups > a.light_ups || grams(b.mass) < grams(a.mass);
          return no_worse && better;
        }))
      front.push_back(a);
  const auto names = [](const choose::Candidate& c) { return std::tuple(c.fan, c.pack, c.step_up, c.tube); };
  std::sort(front.begin(), front.end(), [&](const choose::Candidate& a, const choose::Candidate& b) {
    return std::tuple(in(a.to_steam, unit::s), names(a)) < std::tuple(in(b.to_steam, unit::s), names(b));
  });
  out.front = told(front);
  // the fastest of the best grade that is left opens a group; those after it join until one can be told from it
  const auto grade = [](const choose::Candidate& c) { return (c.in_time ? 0 : 2) + (c.enough ? 0 : 1); };
  for (std::size_t group = 1; !all.empty(); ++group) {
    const choose::Candidate leader =
        *std::min_element(all.begin(), all.end(), [&](const choose::Candidate& a, const choose::Candidate& b) {
          return std::tuple(grade(a), in(a.to_steam, unit::s)) < std::tuple(grade(b), in(b.to_steam, unit::s));
        });
    const auto apart = [&](const choose::Candidate& c) {
      const bool one_fan = c.at.fan == leader.at.fan && c.at.pairing == leader.at.pairing;
      const double both = c.time_spread * c.time_spread + leader.time_spread * leader.time_spread;
      const double share = one_fan || both < 0.0004 ? 0.02 : std::sqrt(both);
      return grade(c) != grade(leader) || in(c.to_steam, unit::s) > (1.0 + share) * in(leader.to_steam, unit::s);
    };
    const auto before = [&](const choose::Candidate& a, const choose::Candidate& b) {
      return std::tuple(in(a.to_steam, unit::s), names(a)) < std::tuple(in(b.to_steam, unit::s), names(b));
    };
    std::optional<choose::Candidate> ends;  // the first that can be told apart
    for (const choose::Candidate& c : all)
      if (grade(c) == grade(leader) && apart(c) && (!ends || before(c, *ends))) ends = c;
    std::vector<choose::Candidate> members;
    const auto joins = [&](const choose::Candidate& c) {
      return grade(c) == grade(leader) && (!ends || before(c, *ends));
    };
    std::copy_if(all.begin(), all.end(), std::back_inserter(members), joins);
    std::erase_if(all, joins);
    std::sort(members.begin(), members.end(), [&](const choose::Candidate& a, const choose::Candidate& b) {
      return std::tuple(grams(a.mass), -a.light_ups, in(a.to_steam, unit::s), names(a)) <
             std::tuple(grams(b.mass), -b.light_ups, in(b.to_steam, unit::s), names(b));
    });
    for (const choose::Candidate& c : members) out.places.push_back(fmt::format("{}. {}", group, told(c)));
  }
  return out;
}

/// Every unit that any engine knows, with the best tube on each engine.
inline std::vector<std::string> naive_units(const choose::Choice& every) {
  if (every.engines.size() < 2) return {};
  struct One {
    choose::UnitChoice choice;
    double slowest = 0.0;
    int fewest = std::numeric_limits<int>::max();
  };
  std::vector<One> all;
  for (const choose::Unit& unit : every.units) {
    One one{choose::UnitChoice{unit, {}, 0, 0, 0.0, 0}};
    for (const choose::EngineChoice& engine : every.engines) {
      choose::Serving serving{engine.engine, std::nullopt, choose::Loss::none};
      const auto key = [](const choose::Candidate& c) {
        return std::tuple((c.in_time ? 0 : 2) + (c.enough ? 0 : 1), in(c.to_steam, unit::s), c.tube);
      };
      for (const choose::Place& p : engine.places) {
        const choose::Candidate& c = p.candidate;
        if (c.fan != unit.fan_name || c.pack != unit.pack_name || c.step_up != unit.step_up_name) continue;
        if (!serving.with || key(c) < key(*serving.with)) serving.with = c;
      }
      if (serving.with) {
        ++one.choice.served;
        one.choice.contented += serving.with->in_time && serving.with->enough;
        one.slowest = std::max(one.slowest, in(serving.with->to_steam, engine.within));
        one.fewest = std::min(one.fewest, serving.with->light_ups);
      }
      one.choice.engines.push_back(serving);
    }
    if (one.choice.served > 0) all.push_back(one);
  }
  const auto key = [](const One& o) {
    return std::tuple(-static_cast<int>(o.choice.served), -static_cast<int>(o.choice.contented), o.slowest, -o.fewest,
                      grams(o.choice.unit.mass));
  };
  std::stable_sort(all.begin(), all.end(), [&](const One& a, const One& b) { return key(a) < key(b); });
  std::vector<choose::UnitChoice> choices;
  for (const One& o : all) choices.push_back(o.choice);
  return told(choices);
}
}  // namespace lumwright
