#include "data/first_words.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/first_things.hpp"
#include "report/six_answers.hpp"
#include "report/html/parts.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report::html {
namespace {
void write_six_answers(Tag header, const Writing& w) {
  const Tag list = header.add("ul").set("class", "answers");
  for (const ChiefAnswer& answer : six_answers(w.assessment(), w.style)) {
    const Tag item = list.add("li").set("class", plan::verdict_word(answer.verdict));
    item.add("h2", answer.title);
    item.add("p", tied(answer.figure)).set("class", "figure");
    if (!answer.band.empty()) item.add("p", "(" + tied(answer.band) + ")").set("class", "small-print");
    badge(item.add("p"), answer.verdict);
  }
  const auto& results = w.assessment().results;
  const auto has_band = [](const model::Result& r) { return r.low.has_value(); };
  if (w.assessment().bands && std::any_of(results.begin(), results.end(), has_band))
    header.add("p", brackets_mean(w.assessment())).set("class", "small-print");
}
void link_to(Tag parent, const plan::Finding& f) { parent.add("a", check_title(f)).set("href", "#check-" + f.id); }
/// A line of several checks by their titles, and what is said of them together.
void write_titles(Tag list, plan::Verdict verdict, std::string_view word,
                  const std::vector<const plan::Finding*>& findings, std::string_view last = "") {
  if (findings.empty()) return;
  const Tag item = list.add("li");
  badge(item, verdict, word);
  for (const plan::Finding* f : findings) {
    item.say(f == findings.front() ? " " : ", ");
    link_to(item, *f);
  }
  if (!last.empty()) item.say(last);
}
void write_do_first(Tag parent, const Writing& w) {
  constexpr std::size_t most = 5;
  const OpenChecks open = open_checks(w.assessment());
  if (open.work.empty() && open.habits.empty()) return;
  const Tag box = parent.add("section").set("class", "todo").set("aria-labelledby", "todo");
  box.add("h2", "Do first").set("id", "todo");
  const Tag list = box.add("ul");
  std::vector<const plan::Finding*> fails, watches;
  const auto groups = by_change(open.work);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    if (i >= most) {
      for (const plan::Finding* one : groups[i]) (one->verdict == plan::Verdict::fail ? fails : watches).push_back(one);
      continue;
    }
    write_titles(list, groups[i].front()->verdict, "", groups[i], ": " + tied(what_to_do(groups[i], w.style)));
  }
  write_titles(list, plan::Verdict::fail, "", fails, fails.size() == 1 ? " fails too" : " fail too");
  write_titles(list, plan::Verdict::watch, "", watches, ", too");
  write_titles(list, plan::Verdict::watch, "mind", open.habits);
}
void write_settle_first(Tag parent, const Writing& w) {
  constexpr std::size_t most = 2;
  const ToSettle settle = to_settle(w.assessment());
  if (settle.empty()) return;
  const Tag box = parent.add("section").set("class", "todo").set("aria-labelledby", "settle");
  box.add("h2", "Settle first").set("id", "settle");
  const Tag list = box.add("ul");
  for (const std::string& line : questions_to_write(settle, most)) list.add("li", "write " + line);
  if (settle.measure != nullptr)
    list.add("li", tied("measure " + measure_words(settle, w.assessment(), w.style, true)));
}
void write_remarks(Tag parent, const Writing& w) {
  for (const plan::Remark& remark : w.assessment().remarks)
    parent.add("p", "Look at this first: " + remark.text).set("class", "remark");
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
  const plan::Assessment& a = w.assessment();
  const Tag header = body.add("header");
  const Tag facts = add_title_block(header, a.build.empty() ? a.file : a.build);
  add_fact(facts, "what", "fan for raising steam, as planned by lumwright");
  add_fact(facts, "description", a.file);
  add_fact(facts, "tuned with", a.tuned);
  add_fact(facts, "checks", std::to_string(a.checks.size()));
  if (a.bands) add_fact(facts, "samples tried", fmt::format("{}, seed {}", a.bands->samples, a.bands->seed));
  const Tag verdict = header.add("p").set("class", std::string("verdict ") + plan::verdict_word(a.verdict));
  badge(verdict, a.verdict);
  verdict.add("span", verdict_sentence(a)).set("class", "words");
  if (const std::string left_out = without_spreads(a, w.style.front); !left_out.empty())
    header.add("p", left_out).set("class", "small-print");
  write_remarks(header, w);
  write_six_answers(header, w);
  const Tag first = header.add("div").set("class", "first-things");
  const Tag words = first.add("div");
  write_do_first(words, w);
  write_settle_first(words, w);
  write_picture(first, picture_of_unit(w.data, w.style));
}
}  // namespace lumwright::report::html
