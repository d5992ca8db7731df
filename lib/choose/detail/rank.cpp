#include "choose/detail/rank.hpp"
#include <algorithm>
#include <limits>
#include <tuple>

namespace lumwright::choose {
namespace {
double kilograms(const std::optional<Mass>& mass) {
  return mass ? in(*mass, kg) : std::numeric_limits<double>::infinity();  // stays inside
}
int grade_of(const Candidate& c) { return grade(c.in_time, c.enough); }

// Not worse in any, better in one.
struct Merits {
  double time, mass;
  int light_ups;
};
Merits merits(const Candidate& c) { return {in(c.to_steam, s), kilograms(c.mass), c.light_ups}; }
bool better(const Merits& a, const Merits& b) {
  const bool no_worse = a.time <= b.time && a.mass <= b.mass && a.light_ups >= b.light_ups;
  return no_worse && (a.time < b.time || a.mass < b.mass || a.light_ups > b.light_ups);
}
bool faster(const Candidate& a, const Candidate& b) {
  return a.to_steam != b.to_steam ? a.to_steam < b.to_steam : named_before(a, b);
}
bool before_in_group(const Candidate& a, const Candidate& b) {
  const double ma = kilograms(a.mass), mb = kilograms(b.mass);
  if (ma != mb) return ma < mb;
  if (a.light_ups != b.light_ups) return a.light_ups > b.light_ups;
  return faster(a, b);
}
}  // namespace

int grade(bool in_time, bool enough) { return in_time ? (enough ? 0 : 1) : (enough ? 2 : 3); }

bool named_before(const Candidate& a, const Candidate& b) {
  return std::tie(a.fan, a.pack, a.step_up, a.tube) < std::tie(b.fan, b.pack, b.step_up, b.tube);
}
bool dominates(const Candidate& a, const Candidate& b) { return better(merits(a), merits(b)); }

std::vector<Place> ranked(std::vector<Candidate> all) {
  std::sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) {
    return grade_of(a) != grade_of(b) ? grade_of(a) < grade_of(b) : faster(a, b);
  });
  std::vector<Place> places;
  std::size_t group = 0;
  for (std::size_t i = 0; i < all.size();) {
    std::size_t end = i;
    while (end < all.size() && grade_of(all[end]) == grade_of(all[i]) &&
           all[end].to_steam <= (1.0 + told_apart(all[i], all[end])) * all[i].to_steam)
      ++end;
    const auto first = all.begin() + static_cast<std::ptrdiff_t>(i),
               last = all.begin() + static_cast<std::ptrdiff_t>(end);
    std::sort(first, last, before_in_group);
    ++group;
    for (std::size_t k = i; k < end; ++k) places.push_back({std::move(all[k]), group, end - i > 1, {}});
    i = end;
  }
  return places;
}

bool Ranking::never_placed(const Hope& hope) const {
  const int best = grade(hope.in_time, hope.enough);
  std::size_t before = 0;
  for (int better_grade = 0; better_grade < best; ++better_grade) before += counts_[better_grade];
  const double apart = told_apart_by(hope.time_spread, widest_spread_);
  for (const Duration& time : times_[best])
    if ((1.0 + apart) * time < hope.least) ++before;
  return before >= places_;
}
bool Ranking::never_on_front(const Hope& hope) const {
  const Merits best{in(hope.least, s), kilograms(hope.mass), hope.most_light_ups};
  return std::any_of(front_.begin(), front_.end(), [&](const Candidate& c) { return better(merits(c), best); });
}
bool Ranking::hopeless(const Hope& hope) const { return never_placed(hope) && never_on_front(hope); }

void Ranking::add(Candidate candidate) {
  const auto of = static_cast<std::size_t>(grade_of(candidate));
  ++counts_[of];
  std::vector<Duration>& times = times_[of];
  times.insert(std::upper_bound(times.begin(), times.end(), candidate.to_steam), candidate.to_steam);
  if (times.size() > places_) times.pop_back();
  if (std::none_of(front_.begin(), front_.end(), [&](const Candidate& c) { return dominates(c, candidate); })) {
    std::erase_if(front_, [&](const Candidate& c) { return dominates(candidate, c); });
    front_.push_back(candidate);
  }
  kept_.push_back(std::move(candidate));
}

std::vector<Place> Ranking::places() const {
  std::vector<Place> all = ranked(kept_);
  if (all.size() > places_) all.resize(places_);
  return all;
}
std::vector<Candidate> Ranking::front() const {
  std::vector<Candidate> front = front_;
  std::sort(front.begin(), front.end(), faster);
  return front;
}
}  // namespace lumwright::choose
