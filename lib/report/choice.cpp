#include "report/choice.hpp"
#include "report/detail/choice_words.hpp"
#include "report/text.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
class ChoiceReporter {
 public:
  ChoiceReporter(const choose::Choice& choice, const TextStyle& style) : choice_(choice), page_(style) {}
  std::string write() {
    head();
    for (const choose::EngineChoice& engine : choice_.engines) {
      page_.heading(engine.engine);
      page_.gap();
      if (!engine.lacking.empty()) {
        page_.paragraph(fmt::format("Nothing can be said of it: the bin lacks {}.", fmt::join(engine.lacking, ", ")));
        continue;
      }
      places(engine);
      barred(engine);
      front(engine);
      losers(engine);
    }
    units();
    write_cautions(page_, choice_.cautions);
    return page_.finish();
  }

 private:
  std::string minutes(Duration t) const { return minutes_text(t, page_.style()); }
  std::string mass(const std::optional<Mass>& m) const { return mass_text(m, page_.style()); }

  void head() {
    page_.paragraph(
        fmt::format("{}{} combinations.", choice_.name.empty() ? "" : choice_.name + ": ", choice_.effort.combinations),
        0, Ink::strong);
    page_.paragraph(tie_sentence(choice_));
    for (const std::string& sentence : choice_.shared) {
      page_.gap();
      page_.hung("watch", sentence, Ink::care);
    }
  }
  void places(const choose::EngineChoice& engine) {
    page_.paragraph(wanted_sentence(engine, page_.style()));
    if (engine.places.empty()) {
      page_.paragraph(none_sentence(engine), 0, Ink::bad);
      if (!engine.tubes_to_buy.empty()) page_.paragraph(tubes_sentence(engine));
      return;
    }
    page_.gap();
    std::vector<Page::Row> rows{{{"", "steam", "light-ups", "mass", "with"}, "", Ink::faint}};
    const std::vector<std::string> remarks = remarks_on(engine.places, page_.style());
    for (std::size_t i = 0; i < engine.places.size(); ++i) {
      const choose::Place& p = engine.places[i];
      const choose::Candidate& c = p.candidate;
      rows.push_back(
          {{fmt::format("{}", i + 1), minutes(c.to_steam), fmt::format("{}", c.light_ups), mass(c.mass), name_of(c)},
           remarks[i],
           i == 0 ? Ink::strong : Ink::plain});
    }
    page_.table(rows);
  }
  void barred(const choose::EngineChoice& engine) {
    if (engine.barred.empty()) return;
    page_.gap();
    page_.paragraph(barred_sentence(engine));
  }
  void front(const choose::EngineChoice& engine) {
    if (engine.front.empty()) return;
    page_.heading("No other is better in minutes, light-ups and mass at once");
    page_.gap();
    std::vector<Page::Row> rows{{{"steam", "light-ups", "mass", "with"}, "", Ink::faint}};
    for (const choose::Candidate& c : engine.front)
      rows.push_back({{minutes(c.to_steam), fmt::format("{}", c.light_ups), mass(c.mass), name_of(c)}, "", Ink::plain});
    page_.table(rows);
  }
  void losers(const choose::EngineChoice& engine) {
    page_.heading("Why the others lose");
    page_.gap();
    std::vector<std::string> counts;
    for (const choose::LossCount& loss : engine.losses)
      counts.push_back(fmt::format("{} {}", loss.count, choose::words(loss.loss)));
    page_.paragraph(counts.empty() ? "None lose." : fmt::format("{}.", fmt::join(counts, ", ")));
    page_.gap();
    std::vector<Page::Row> rows;
    for (const choose::ItemFate& item : engine.items)
      rows.push_back({{item.list, item.name, fate_words(item)}, "", Ink::plain});
    page_.table(rows);
  }
  void units() {
    if (choice_.engines.size() < 2) return;
    page_.heading("One fan with its pack for all engines");
    page_.gap();
    if (choice_.for_all.empty()) {
      page_.paragraph("None of them passes on any engine.", 0, Ink::bad);
      return;
    }
    const choose::UnitChoice& best = choice_.for_all.front();
    page_.paragraph(
        fmt::format("{}{}, {}, {} serves {} of {} engines, {} of them as you want it. An adapter tube for each:",
                    best.contented == 0 ? "None does all that you want; the nearest: " : "", best.unit.fan_name,
                    best.unit.pack_name, best.unit.step_up_name, best.served, choice_.engines.size(), best.contented));
    page_.gap();
    std::vector<Page::Row> rows{{{"engine", "tube", "steam", "light-ups"}, "", Ink::faint}};
    for (const choose::Serving& s : best.engines) {
      if (s.with) {
        std::string remark = s.with->in_time && s.with->enough ? "" : grade_words(*s.with);
        const std::string sized = s.sized.empty() ? "" : "sized for it: " + s.sized;
        for (const std::string& more : {watch_words(s.watches), sized})
          if (!more.empty()) remark += (remark.empty() ? "" : "; ") + more;
        rows.push_back({{s.engine, s.with->tube, minutes(s.with->to_steam), fmt::format("{}", s.with->light_ups)},
                        std::move(remark),
                        Ink::plain});
      } else {
        rows.push_back({{s.engine, "-", "-", "-"}, loss_words(s), Ink::bad});
      }
    }
    page_.table(rows);
    next_units();
  }
  void next_units() {
    if (choice_.for_all.size() < 2) return;
    page_.gap();
    page_.paragraph("The next:");
    std::vector<Page::Row> rows{{{"", "fan", "pack", "step-up", "serves", "as wanted", "mass"}, "", Ink::faint}};
    for (std::size_t i = 1; i < choice_.for_all.size(); ++i) {
      const choose::UnitChoice& u = choice_.for_all[i];
      rows.push_back({{fmt::format("{}", i + 1), u.unit.fan_name, u.unit.pack_name, u.unit.step_up_name,
                       fmt::format("{}", u.served), fmt::format("{}", u.contented), mass(u.unit.mass)},
                      "",
                      Ink::plain});
    }
    page_.table(rows);
  }

  const choose::Choice& choice_;
  Page page_;
};
}  // namespace

std::string choice_report(const choose::Choice& choice, const TextStyle& style) {
  return ChoiceReporter(choice, style).write();
}

std::vector<ChoiceDot> choice_dots(const choose::EngineChoice& engine) {
  std::vector<ChoiceDot> dots;
  std::vector<choose::Combination> seen;
  const auto add = [&](const choose::Candidate& c, std::optional<std::size_t> place, bool on_front) {
    for (std::size_t i = 0; i < seen.size(); ++i)
      if (same_parts(seen[i], c.at)) {
        dots[i].on_front = dots[i].on_front || on_front;
        return;
      }
    seen.push_back(c.at);
    dots.push_back({name_of(c), c.to_steam, c.light_ups, c.mass, place, on_front});
  };
  for (std::size_t i = 0; i < engine.places.size(); ++i) add(engine.places[i].candidate, i + 1, false);
  for (const choose::Candidate& c : engine.front) add(c, std::nullopt, true);
  std::stable_sort(dots.begin(), dots.end(),
                   [](const ChoiceDot& a, const ChoiceDot& b) { return a.to_steam < b.to_steam; });
  return dots;
}
}  // namespace lumwright::report
