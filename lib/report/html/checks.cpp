#include "report/detail/bands.hpp"
#include "report/detail/first_things.hpp"
#include "report/detail/moves.hpp"
#include "report/detail/standing.hpp"
#include "report/html/parts.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report::html {
namespace {
void add_line(Tag list, std::string_view name, std::string_view text, const char* look = "") {
  if (text.empty()) return;
  list.add("dt", name);
  const Tag value = list.add("dd", tied(text));
  if (*look != '\0') value.set("class", look);
}
void write_check(Tag parent, const Writing& w, const plan::Finding& f) {
  const Tag item = parent.add("article").set("class", "check").set("id", "check-" + f.id);
  const Tag head = item.add("div").set("class", "head");
  badge(head, f.verdict);
  head.add("h4", check_title(f));
  head.add("code", f.id).set("class", "faint");
  std::string numbers = f.value || f.limit ? against_limit(f, w.assessment(), w.style) : "";
  if (f.holds) numbers += (numbers.empty() ? "" : "; ") + holds_in(f, w.assessment());
  const Tag facts = item.add("dl");
  add_line(facts, "found", numbers);
  add_line(facts, "why", f.why);
  if (f.move)  // tried: no other advice beside it
    add_line(facts, "do", fmt::format("{} ({})", move_text(f, w.style), move_settings(f, w.style.front)), "do");
  else
    add_line(facts, "do", action_of(f, w.style.front), "do");
  if (!f.move && f.moves_tried) add_line(facts, "tried", "no change by itself of those that were tried clears it");
  add_line(facts, "source", f.basis.source.empty() ? "" : source_in_words(f.basis), "faint");
}
void write_open(Tag part, const Writing& w) {
  const auto groups = open_questions(w.assessment());
  if (groups.empty()) return;
  part.add("h4", "Not known yet").set("class", "apart");
  for (const auto& alike : groups) {
    const plan::Finding& f = *alike.front();
    const Tag item = part.add("article").set("class", "check");
    for (const plan::Finding* one : alike) {
      const Tag head = item.add("div").set("class", "head").set("id", "check-" + one->id);
      badge(head, one->verdict);
      head.add("h5", check_title(*one));
    }
    const Tag facts = item.add("dl");
    add_line(facts, "why", f.why);
    add_line(facts, "do", action_of(f, w.style.front), "do");
    add_line(facts, "write", fmt::format("{}", fmt::join(f.missing, ", ")));
  }
}
}  // namespace

void write_checks(Tag folded, const Writing& w) {
  const plan::Assessment& a = w.assessment();
  const std::vector<const plan::Finding*> judged = gravest_first(a);
  const auto passes = std::find_if(judged.begin(), judged.end(),
                                   [](const plan::Finding* f) { return f->verdict == plan::Verdict::pass; });
  for (auto f = judged.begin(); f != passes; ++f) write_check(folded, w, **f);
  write_open(folded, w);
  if (passes != judged.end()) {
    const Tag all = folded.add("div").set("class", "passing");
    for (auto f = passes; f != judged.end(); ++f) write_check(all, w, **f);
  }
  if (judged.empty() && a.checks.empty()) folded.add("p", "No check applies to this description.");
  folded.add("p", description::way("explain", w.style.front)).set("class", "small-print");
}
}  // namespace lumwright::report::html
