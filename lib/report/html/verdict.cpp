#include "data/first_words.hpp"
#include "report/bands.hpp"
#include "report/answers.hpp"
#include "report/html/parts.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::html {
namespace {
/// One of the answers that everybody asks for first.
struct Chief {
  std::string_view title;
  Verdict verdict = Verdict::unknown;
  std::string figure{}, band{}, why{};
};
const Finding* gravest_of(const Assessment& a, std::string_view prefix) {
  const Finding* found = nullptr;
  for (const Finding& f : a.checks)
    if (f.id.starts_with(prefix) && f.verdict != Verdict::unknown && (found == nullptr || graver(f, *found)))
      found = &f;
  return found;
}
/// "8.4 min  (6.1 to 9.8 min)" is a figure and its band.
void tell(Chief& chief, const std::string& answer, const Assessment& a) {
  const auto bracket = answer.find("  (");
  chief.figure = answer.substr(0, bracket);
  if (bracket != std::string::npos && a.bands)
    chief.band = "in eight samples of ten " + answer.substr(bracket + 3, answer.size() - bracket - 4);
}
void judge_by(Chief& chief, const Finding* finding) {
  if (finding == nullptr) return;
  chief.verdict = finding->verdict;
  if (finding->verdict != Verdict::unknown) {
    chief.why = finding->why;
  } else if (!finding->missing.empty()) {
    chief.why = fmt::format("not known: the description lacks {}", fmt::join(finding->missing, ", "));
  }
}
Chief time_to_steam(const Writing& w) {
  Chief chief{.title = "Time to steam"};
  const Result* result = find_result(w.assessment(), "raise.to_own_blower");
  if (result == nullptr) result = find_result(w.assessment(), "raise.to_working");
  if (result != nullptr) tell(chief, answer_text(*result, w.style), w.assessment());
  judge_by(chief, find_check(w.assessment(), "raise.time"));
  if (chief.figure.empty()) chief.figure = chief.verdict == Verdict::fail ? "never" : "not known";
  return chief;
}
Chief light_ups_on_a_charge(const Writing& w) {
  Chief chief{.title = "Light-ups on one charge"};
  if (const Result* result = find_result(w.assessment(), "power.light_ups_per_charge"))
    tell(chief, answer_text(*result, w.style), w.assessment());
  judge_by(chief, find_check(w.assessment(), "power.light_ups"));
  if (chief.figure.empty()) chief.figure = chief.verdict == Verdict::fail ? "none" : "not known";
  return chief;
}
Chief does_it_fit(const Writing& w) {
  Chief chief{.title = "Does the tube fit"};
  const Finding* gravest = gravest_of(w.assessment(), "fit.");
  judge_by(chief, gravest != nullptr ? gravest : find_check(w.assessment(), "fit.hot"));
  chief.figure = chief.verdict == Verdict::pass    ? "yes"
                 : chief.verdict == Verdict::watch ? "with care"
                 : chief.verdict == Verdict::fail  ? "no"
                                                   : "not known";
  if (gravest != nullptr && gravest->value && gravest->verdict == Verdict::pass)
    if (const Result* hot = find_result(w.assessment(), "fit.clearance_hot"))
      chief.why = "clearance with the tube hot and the chimney cold: " + answer_text(*hot, w.style);
  return chief;
}
void write_chief(Tag list, const Chief& chief) {
  const Tag item = list.add("li").set("class", verdict_word(chief.verdict));
  item.add("h2", chief.title);
  item.add("p", tied(chief.figure)).set("class", "figure");
  if (!chief.band.empty()) item.add("p", tied(chief.band)).set("class", "small-print");
  badge(item.add("p"), chief.verdict);
  if (!chief.why.empty()) item.add("p", tied(chief.why)).set("class", "small-print");
}
void write_to_do(Tag body, const Writing& w) {
  constexpr std::size_t most = 5;
  std::vector<const Finding*> open;
  for (const Finding* f : gravest_first(w.assessment()))
    if (f->verdict != Verdict::pass && !f->action.empty()) open.push_back(f);
  if (open.empty()) return;
  const Tag box = body.add("section").set("class", "todo").set("aria-labelledby", "todo");
  box.add("h2", "Do this first").set("id", "todo");
  const Tag list = box.add("ol");
  for (std::size_t i = 0; i < std::min(open.size(), most); ++i) {
    const Tag item = list.add("li");
    badge(item, open[i]->verdict);
    item.say(" ");
    item.add("a", open[i]->title.empty() ? open[i]->id : open[i]->title).set("href", "#check-" + open[i]->id);
    item.say(": " + tied(open[i]->action));
  }
  if (open.size() > most)
    box.add("p", fmt::format("and {} more among the checks below", open.size() - most)).set("class", "small-print");
}
}  // namespace

Tag add_title_block(Tag header, std::string_view name) {
  const Tag first = header.add("ul").set("class", "first-words");
  for (const std::string& words : data::first_words()) first.add("li", words);
  const Tag block = header.add("div").set("class", "title-block");
  block.add("div").set("class", "name").add("h1", name);
  return block.add("dl");
}
void add_fact(Tag list, std::string_view name, std::string_view value) {
  if (value.empty()) return;
  const Tag pair = list.add("div");
  pair.add("dt", name);
  pair.add("dd", value);
}
void write_verdict(Tag body, const Writing& w) {
  const Assessment& a = w.assessment();
  const Tag header = body.add("header");
  const Tag facts = add_title_block(header, a.build.empty() ? a.file : a.build);
  add_fact(facts, "what", "fan for raising steam, as planned by lumwright");
  add_fact(facts, "description", a.file);
  add_fact(facts, "tuned with", a.tuned);
  add_fact(facts, "checks", std::to_string(a.checks.size()));
  if (a.bands) add_fact(facts, "samples tried", fmt::format("{}, seed {}", a.bands->samples, a.bands->seed));
  const Tag verdict = header.add("p").set("class", std::string("verdict ") + verdict_word(a.verdict));
  badge(verdict, a.verdict);
  verdict.add("span", verdict_sentence(a)).set("class", "words");
  if (const std::string left_out = without_spreads(a); !left_out.empty())
    header.add("p", left_out).set("class", "small-print");
  const Tag answers = header.add("ul").set("class", "answers");
  write_chief(answers, time_to_steam(w));
  write_chief(answers, light_ups_on_a_charge(w));
  write_chief(answers, does_it_fit(w));
  write_to_do(header, w);
}
}  // namespace lumwright::html
