#include "report/detail/first_things.hpp"
#include "data/moves.hpp"
#include "report/answers.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/moves.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace lumwright::report {
OpenChecks open_checks(const plan::Assessment& a) {
  OpenChecks open;
  for (const plan::Finding* f : gravest_first(a))
    if (f->verdict != plan::Verdict::pass)
      (data::is_habit(f->id) && f->verdict == plan::Verdict::watch ? open.habits : open.work).push_back(f);
  return open;
}
const std::string& check_title(const plan::Finding& f) { return f.title.empty() ? f.id : f.title; }
std::vector<std::vector<const plan::Finding*>> by_change(const std::vector<const plan::Finding*>& findings) {
  std::vector<std::vector<const plan::Finding*>> groups;
  for (const plan::Finding* f : findings) {
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
      return f->move && group.front()->move && group.front()->move->settings == f->move->settings;
    });
    if (same == groups.end())
      groups.push_back({f});
    else
      same->push_back(f);
  }
  return groups;
}
std::string what_to_do(const std::vector<const plan::Finding*>& group, const TextStyle& style) {
  const plan::Finding& f = *group.front();
  if (f.move) return move_text(f, style, group.size() > 1);
  const std::string action = action_of(f, style.front);
  if (action.empty()) return f.why;
  return f.moves_tried ? action + " (no change by itself that was tried clears it)" : action;
}

ToSettle to_settle(const plan::Assessment& a) {
  ToSettle settle;
  for (auto& group : open_questions(a))
    if (!group.front()->missing.empty()) settle.questions.push_back(std::move(group));
  std::stable_sort(settle.questions.begin(), settle.questions.end(),
                   [](const auto& x, const auto& y) { return x.size() > y.size(); });
  if (!a.bands || a.bands->sensitivities.empty()) return settle;
  const plan::Sensitivity& chief = a.bands->sensitivities.front();
  settle.answer = chief.answer;
  if (const auto told = worth_telling(chief); !told.empty()) settle.measure = told.front();
  return settle;
}
std::vector<std::string> questions_to_write(const ToSettle& settle, std::size_t most) {
  constexpr std::size_t most_keys = 5, most_titles = 2;
  std::vector<std::string> lines;
  std::set<std::string> asked;  // once is enough
  for (std::size_t i = 0; i < settle.questions.size() && i < most; ++i) {
    std::vector<std::string> keys = settle.questions[i].front()->missing;
    const bool besides = std::erase_if(keys, [&](const std::string& key) { return asked.contains(key); }) > 0;
    asked.insert(keys.begin(), keys.end());
    if (keys.empty()) continue;
    lines.push_back(fmt::format("{}: {}for {}", some_of(keys, most_keys), besides ? "besides, " : "",
                                titles_of(settle.questions[i], most_titles)));
  }
  return lines;
}
std::string measure_words(const ToSettle& settle, const plan::Assessment& a, const TextStyle& style, bool how) {
  const plan::Narrowing& one = *settle.measure;
  return fmt::format("{} to within {} ({}): {}{}", one.what, one.within, words_for(settle.answer),
                     what_it_leaves(one, plan::find_result(a, settle.answer), style),
                     how ? "; " + description::with_ways(one.how, style.front) : "");
}

std::string some_of(const std::vector<std::string>& names, std::size_t most) {
  std::string text;
  for (std::size_t i = 0; i < names.size() && i < most; ++i) text += (i > 0 ? ", " : "") + names[i];
  return names.size() > most ? text + fmt::format(" and {} more", names.size() - most) : text;
}
std::string titles_of(const std::vector<const plan::Finding*>& findings, std::size_t most) {
  std::vector<std::string> titles;
  for (const plan::Finding* f : findings) titles.push_back(check_title(*f));
  return some_of(titles, most);
}
}  // namespace lumwright::report
