#include "model/fan_unit.hpp"
#include "plan/check.hpp"
#include "plan/detail/two_limits.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lumwright::plan {
namespace {
constexpr Length hair = 1e-9 * mm;  // a hole set out exactly at the limit must not fail by the last bit
struct Metal {
  std::string where;
  workshop::MetalLeft left;
};
// Everywhere a hole could come too near to something.
std::vector<Metal> metal_left(const model::MadeFlange& flange) {
  const model::FlangeScrews& screws = *flange.screws;
  std::vector<Metal> all = {
      {"from hole to rim",
       workshop::judge_edge(workshop::edge_to_rim({flange.outside, screws.pitch_circle}), screws.drill)}};
  if (screws.count > 1)
    all.push_back({"from hole to hole",
                   workshop::judge_pitch(workshop::chord({screws.count, screws.pitch_circle, 1}), screws.drill)});
  if (flange.tube_hole)
    all.push_back({"from hole to the tube's hole",
                   workshop::judge_edge(0.5 * screws.pitch_circle - 0.5 * *flange.tube_hole, screws.drill)});
  return all;
}
std::string say_one(const model::Solved& solved, const Metal& one) {
  if (one.left.has <= 0.0 * mm)
    return fmt::format(
        "{} there is nothing: the hole's middle lies {} beyond the edge ({} of metal at least, better {})", one.where,
        say(solved, -one.left.has), say(solved, one.left.least), say(solved, one.left.prefer));
  return fmt::format("{} it is {} ({} at least, better {})", one.where, say(solved, one.left.has),
                     say(solved, one.left.least), say(solved, one.left.prefer));
}
std::optional<Finding> judge_make_flange(const model::Solved& solved) {
  if (!solved.unit || !solved.unit->flange || !solved.unit->flange->screws) return std::nullopt;
  const model::MadeFlange& flange = *solved.unit->flange;
  const std::vector<Metal> all = metal_left(flange);
  const auto short_of = [](const Metal& one) { return in(one.left.has, mm) / in(one.left.least, mm); };
  const Metal& worst = *std::min_element(all.begin(), all.end(), [&](const Metal& a, const Metal& b) {
    return std::pair(a.left.room, short_of(a)) < std::pair(b.left.room, short_of(b));
  });
  Finding f;
  judge_by(f, measure(solved, worst.left.has),
           {Bound::at_least, AnyQuantity(worst.left.prefer - hair), AnyQuantity(worst.left.least - hair)});
  f.why = fmt::format("the flange has {} of {} on {}; between middles and edges, ",
                      flange.screws->count == 1 ? "1 hole" : fmt::format("{} holes", flange.screws->count),
                      say(solved, flange.screws->drill), say(solved, flange.screws->pitch_circle));
  for (const Metal& one : all) f.why += (&one == &all.front() ? "" : "; ") + say_one(solved, one);
  if (f.verdict == Verdict::fail) f.action = "a larger flange, another pitch circle, or a smaller screw";
  if (f.verdict == Verdict::watch) f.action = "it can be made; mark out with care, or take a smaller screw";
  f.basis = worst.left.basis;
  f.formula =
      "rim: (outside - pitch circle) / 2; neighbours: pitch circle sin(180 / n); tube: (pitch circle - hole) / 2";
  f.terms = {computed(solved, "D", "flange outside", flange.outside),
             computed(solved, "P", "pitch circle", flange.screws->pitch_circle),
             computed(solved, "n", "holes", static_cast<double>(flange.screws->count)),
             computed(solved, "d", "hole", flange.screws->drill)};
  if (flange.tube_hole) f.terms.push_back(computed(solved, "t", "hole for the tube", *flange.tube_hole));
  return f;
}
}  // namespace

Check make_flange() {
  return {"make.flange",
          "Holes of the flange",
          "Is enough metal left round the holes of the flange?",
          judge_make_flange,
          nullptr,
          false};
}
}  // namespace lumwright::plan
