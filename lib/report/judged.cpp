#include "report/judged.hpp"
#include "report/answers.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
std::string counted(std::size_t n, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", n, n == 1 ? one : many);
}
int gravity(plan::Verdict verdict) {
  return verdict == plan::Verdict::fail ? 0 : verdict == plan::Verdict::watch ? 1 : 2;
}

bool open_alike(const plan::Finding& x, const plan::Finding& y) {
  return x.verdict == y.verdict && x.missing == y.missing && x.why == y.why && x.action == y.action;
}
/// Of a value that reads like its limit: on which side it lies.
std::string a_hair(double value, double limit) {
  constexpr double rounding = 1e-6;
  if (std::abs(value - limit) <= rounding * std::abs(limit)) return "";
  return value > limit ? ", a hair above it" : ", a hair below it";
}
}  // namespace

std::size_t count(const plan::Assessment& a, plan::Verdict verdict) {
  return static_cast<std::size_t>(
      std::count_if(a.checks.begin(), a.checks.end(), [&](const plan::Finding& f) { return f.verdict == verdict; }));
}
std::string verdict_sentence(const plan::Assessment& a) {
  const std::size_t fails = count(a, plan::Verdict::fail), watches = count(a, plan::Verdict::watch),
                    unknown = count(a, plan::Verdict::unknown);
  const std::size_t judged = a.checks.size() - unknown;
  std::string text = (a.build.empty() ? a.file : a.build) + ": ";
  if (judged == 0) return text + "nothing can be judged yet. The description says too little.";
  const std::string will_do = unknown > 0 ? "what can be judged will do" : "it will do";
  if (fails > 0) {
    text +=
        fmt::format("do not build it like this. {} out of {}.", counted(fails, "check fails", "checks fail"), judged);
    if (watches > 0) text += fmt::format(" {} to watch.", counted(watches, "more is", "more are"));
  } else if (watches > 0) {
    text += fmt::format("{}, with {}.", will_do, counted(watches, "point to watch", "points to watch"));
  } else {
    text += fmt::format("{}. {}.", will_do,
                        judged == 1 ? "The one check passes" : fmt::format("All {} checks pass", judged));
  }
  if (unknown > 0) text += fmt::format(" {} not be judged.", counted(unknown, "check could", "checks could"));
  return text;
}

bool graver(const plan::Finding& one, const plan::Finding& other) {
  return gravity(one.verdict) < gravity(other.verdict);
}

std::vector<const plan::Finding*> gravest_first(const plan::Assessment& a) {
  std::vector<const plan::Finding*> judged;
  for (const plan::Finding& f : a.checks)
    if (f.verdict != plan::Verdict::unknown) judged.push_back(&f);
  std::stable_sort(judged.begin(), judged.end(),
                   [](const plan::Finding* x, const plan::Finding* y) { return graver(*x, *y); });
  return judged;
}

std::vector<std::vector<const plan::Finding*>> open_questions(const plan::Assessment& a) {
  std::vector<std::vector<const plan::Finding*>> groups;
  for (const plan::Finding& f : a.checks) {
    if (f.verdict != plan::Verdict::unknown) continue;
    const auto group =
        std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return open_alike(*g.front(), f); });
    if (group == groups.end())
      groups.push_back({&f});
    else
      group->push_back(&f);
  }
  return groups;
}

std::string limit_in_words(const plan::Finding& f, const TextStyle& style) {
  return fmt::format("{} {}{} {}", bound_words(f.bound), show(*f.limit, style),
                     f.limit_name == plan::LimitName::not_to_fail ? "," : "", plan::limit_words(f.limit_name));
}
std::string against_limit(const plan::Finding& f, const plan::Assessment& a, const TextStyle& style) {
  const std::string value = f.value ? in_page_figures(a, *f.value, style) : "";
  if (!f.limit) return value;
  const std::string hair =
      f.value && value == show(*f.limit, style) ? a_hair(f.value->quantity.si, f.limit->quantity.si) : "";
  return fmt::format("{}{}{}{}", value, value.empty() ? "" : ", ", limit_in_words(f, style), hair);
}
bool tuned(const plan::Assessment& a, const model::Assumed& one) {
  return !a.tuned.empty() && one.basis.source == a.tuned;
}
std::string action_of(const plan::Finding& finding, description::FrontEnd front) {
  return description::with_ways(finding.action, front);
}
}  // namespace lumwright::report
