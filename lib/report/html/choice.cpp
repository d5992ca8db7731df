#include "report/html/choice.hpp"
#include "report/detail/choice_words.hpp"
#include "report/html/parts.hpp"
#include "report/picture/choice.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report::html {
namespace {
struct Choosing {
  const choose::Choice& choice;
  const TextStyle& style;
  std::string minutes(const choose::Candidate& c) const { return tied(minutes_text(c.to_steam, style)); }
  std::string mass(const std::optional<Mass>& m) const { return tied(mass_text(m, style)); }
};
const char* advice_word(plan::Verdict verdict) {
  switch (verdict) {
    case plan::Verdict::pass:
      return "it will do";
    case plan::Verdict::watch:
      return "with care";
    case plan::Verdict::fail:
      return "falls short";
    case plan::Verdict::unknown:
      return "not known";
  }
  return "";
}
std::string id_of_engine(std::size_t number) { return fmt::format("engine-{}", number + 1); }

// One engine's share of the advice.
void write_card(Tag list, const Choosing& c, const std::string& engine, const std::optional<choose::Candidate>& with,
                std::string_view why_not) {
  const bool all = with && with->in_time && with->enough;
  const plan::Verdict verdict = all ? plan::Verdict::pass : with ? plan::Verdict::watch : plan::Verdict::fail;
  const Tag item = list.add("li").set("class", plan::verdict_word(verdict));
  item.add("h2", engine);
  item.add("p", with ? c.minutes(*with) : std::string("no steam")).set("class", "figure");
  badge(item.add("p"), verdict, all ? "as you want it" : with ? "not all you want" : why_not);
  if (!with) return;
  item.add("p", fmt::format("{} on a charge, on the tube {}{}", light_ups_text(with->light_ups), with->tube,
                            all ? std::string() : fmt::format("; {}", grade_words(*with))))
      .set("class", "small-print");
}
void write_cards(Tag header, const Choosing& c) {
  const choose::Choice& choice = c.choice;
  const bool several = !choice.for_all.empty();
  const bool single = choice.engines.size() == 1 && !choice.engines.front().places.empty();
  if (!several && !single) return;
  const Tag list = header.add("ul").set("class", "answers");
  if (single) {
    const choose::EngineChoice& engine = choice.engines.front();
    write_card(list, c, engine.engine, engine.places.front().candidate, "");
    return;
  }
  for (const choose::Serving& s : choice.for_all.front().engines) write_card(list, c, s.engine, s.with, loss_words(s));
}
void write_advice(Tag body, const Choosing& c, const Advice& advice) {
  const choose::Choice& choice = c.choice;
  const Tag header = body.add("header");
  const Tag facts = add_title_block(header, choice.name.empty() ? choice.file : choice.name);
  add_fact(facts, "what", "fan, pack, step-up and tube, as chosen by lumwright");
  add_fact(facts, "bin", choice.file);
  add_fact(facts, "engines", std::to_string(choice.engines.size()));
  add_fact(facts, "combinations", std::to_string(choice.effort.combinations));
  const Tag verdict = header.add("p").set("class", std::string("verdict ") + plan::verdict_word(advice.verdict));
  badge(verdict, advice.verdict, advice_word(advice.verdict));
  verdict.add("span", tied(advice.sentence)).set("class", "words");
  write_cards(header, c);
  if (advice.cautions.empty() && choice.shared.empty()) return;
  const Tag box = header.add("section").set("class", "todo").set("aria-labelledby", "todo");
  box.add("h2", "Watch").set("id", "todo");
  const Tag list = box.add("ul");
  for (const std::string& sentence : choice.shared) list.add("li", sentence);
  for (const std::string& sentence : advice.cautions) list.add("li", sentence);
}
void write_choice_contents(Tag body, const Choosing& c) {
  const Tag list = body.add("nav").set("aria-label", "Contents").add("ul");
  if (c.choice.for_all.size() > 1) list.add("li").add("a", "Units for all engines").set("href", "#units");
  for (std::size_t i = 0; i < c.choice.engines.size(); ++i)
    list.add("li").add("a", c.choice.engines[i].engine).set("href", "#" + id_of_engine(i));
}

// Side by side on a desk, one below the other on a phone.
void add_figures(Tag row, const std::vector<std::string>& figures) {
  const Tag cell = row.add("td").set("class", "figures");
  for (const std::string& figure : figures) {
    cell.add("span", figure);
    cell.say(" ");
  }
}
void write_units(Tag main, const Choosing& c) {
  if (c.choice.for_all.empty()) return;
  const Tag part = section(main, "units", "One fan with its pack for all engines");
  const Tag body = table(part, "Units, the best first", {"place", "it serves", "fan, pack, step-up"});
  for (std::size_t i = 0; i < c.choice.for_all.size(); ++i) {
    const choose::UnitChoice& u = c.choice.for_all[i];
    const Tag row = body.add("tr");
    row.add("th", std::to_string(i + 1)).set("scope", "row");
    add_figures(row, {fmt::format("{} of {} engines", u.served, c.choice.engines.size()),
                      u.contented == 0 ? std::string("none as wanted") : fmt::format("{} as wanted", u.contented),
                      c.mass(u.unit.mass)});
    row.add("td", fmt::format("{}, {}, {}", u.unit.fan_name, u.unit.pack_name, u.unit.step_up_name));
  }
}
void add_candidate(Tag row, const Choosing& c, const choose::Candidate& candidate, std::string_view remark) {
  add_figures(row, {c.minutes(candidate), light_ups_text(candidate.light_ups), c.mass(candidate.mass)});
  const Tag with = row.add("td", name_of(candidate));
  if (!remark.empty()) with.add("div", remark).set("class", "faint");
}
void write_ranking(Tag part, const Choosing& c, const choose::EngineChoice& engine) {
  if (engine.places.empty()) return;
  const Tag body = table(part, "The best for " + engine.engine, {"place", "it comes to", "fan, pack, step-up, tube"});
  const std::vector<std::string> remarks = remarks_on(engine.places, c.style);
  for (std::size_t i = 0; i < engine.places.size(); ++i) {
    const choose::Place& p = engine.places[i];
    const Tag row = body.add("tr");
    row.add("th", std::to_string(i + 1)).set("scope", "row");
    add_candidate(row, c, p.candidate, remarks[i]);
  }
}
void write_front(Tag part, const Choosing& c, const choose::EngineChoice& engine) {
  if (engine.front.empty()) return;
  const Tag body =
      table(part, "Unbeaten for " + engine.engine + ": no other is better in minutes, light-ups and mass at once",
            {"place", "it comes to", "fan, pack, step-up, tube"});
  for (const choose::Candidate& candidate : engine.front) {
    const auto found = std::find_if(engine.places.begin(), engine.places.end(), [&](const choose::Place& p) {
      return same_parts(p.candidate.at, candidate.at) ||
             std::any_of(p.equals.begin(), p.equals.end(),
                         [&](const choose::Candidate& e) { return same_parts(e.at, candidate.at); });
    });
    const Tag row = body.add("tr");
    row.add("th",
            found == engine.places.end() ? std::string("none") : std::to_string(found - engine.places.begin() + 1))
        .set("scope", "row");
    add_candidate(row, c, candidate, "");
  }
}
void write_losers(Tag part, const choose::EngineChoice& engine) {
  part.add("h3", "Why the others lose").set("class", "apart");
  if (engine.losses.empty()) part.add("p", "None lose.");
  const Tag tables = part.add("div").set("class", "tables");
  if (!engine.losses.empty()) {
    const Tag body = table(tables, "Combinations of " + engine.engine + " that lose", {"why", "how many"});
    for (const choose::LossCount& loss : engine.losses) {
      const Tag row = body.add("tr");
      row.add("th", choose::words(loss.loss)).set("scope", "row");
      row.add("td", std::to_string(loss.count)).set("class", "number");
    }
  }
  const Tag body = table(tables, "What becomes of each thing on " + engine.engine, {"what", "name", "at best"});
  for (const choose::ItemFate& item : engine.items) {
    const Tag row = body.add("tr");
    row.add("td", item.list);
    row.add("th", item.name).set("scope", "row");
    row.add("td", fate_words(item));
  }
}
void write_engine(Tag main, const Choosing& c, std::size_t number) {
  const choose::EngineChoice& engine = c.choice.engines[number];
  const Tag part = section(main, id_of_engine(number).c_str(), engine.engine);
  if (!engine.lacking.empty()) {
    part.add("p", fmt::format("Nothing can be said of it: the bin lacks {}.", fmt::join(engine.lacking, ", ")));
    return;
  }
  part.add("p", tied(wanted_sentence(engine, c.style))).set("class", "lead");
  if (engine.places.empty()) part.add("p", none_sentence(engine)).set("class", "bad");
  if (!engine.tubes_to_buy.empty()) part.add("p", tubes_sentence(engine));
  write_picture(part, picture_of_choice(engine, fmt::format("choice-{}", number + 1), c.style));
  write_ranking(part, c, engine);
  if (!engine.barred.empty()) part.add("p", barred_sentence(engine));
  write_front(part, c, engine);
  write_losers(part, engine);
}
}  // namespace
}  // namespace lumwright::report::html

namespace lumwright::report {
std::string html_choice(const choose::Choice& choice, const TextStyle& style, const std::vector<Beside>& beside) {
  const html::Choosing c{choice, style};
  const Advice advice = advice_of(choice, style);
  const Markup page("html");
  page.root().set("lang", "en");
  html::write_head(page.root(), fmt::format("{}: {}", choice.name.empty() ? choice.file : choice.name,
                                            html::advice_word(advice.verdict)));
  const Tag body = page.root().add("body");
  html::write_advice(body, c, advice);
  html::write_choice_contents(body, c);
  const Tag main = body.add("main");
  main.add("p", html::tied(tie_sentence(choice))).set("class", "small-print");
  html::write_units(main, c);
  for (std::size_t i = 0; i < choice.engines.size(); ++i) html::write_engine(main, c, i);
  const Tag care = html::section(main, "care", "Cautions that apply here");
  std::vector<const plan::Caution*> cautions;
  for (const plan::Caution& one : choice.cautions) cautions.push_back(&one);
  html::write_cautions(care, cautions, true);
  html::write_beside(main, beside);
  html::write_footer(
      body,
      "What stands first was checked in full with what the bin says. Measure your own parts, write them into "
      "its description, and check it again before you cut metal.");
  return page.html();
}
}  // namespace lumwright::report
