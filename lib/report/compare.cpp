#include "description/keys.hpp"
#include "description/written.hpp"
#include "report/answers.hpp"
#include "report/judged.hpp"
#include "report/side_by_side.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
/// What a build says of each key, as it would stand in a file.
class Saying {
 public:
  std::vector<std::pair<std::string, std::string>> all;
  template <class Q>
  void operator()(description::Field field, const description::Given<Q>& given, description::Limits) {
    add(field, given ? description::written(given) : "");
  }
  void operator()(description::Field field, const description::Count& count, int, int) {
    add(field, count ? std::to_string(*count) : "");
  }
  void operator()(description::Field field, const description::Text& text, description::Allowed) {
    add(field, text ? *text : "");
  }
  template <class X, class Y>
  void operator()(description::Field field, const description::Points<X, Y>& points, description::Limits,
                  description::Limits) {
    std::string text;
    for (const auto& p : points.points)
      text += fmt::format("{}{} {}", text.empty() ? "" : "; ", description::written(AnyQuantity(p.x), points.x_unit),
                          description::written(AnyQuantity(p.y), points.y_unit));
    add(field, text);
  }
  void operator()(description::Field field, const description::EfficiencyTable& table) {
    std::string text = table.share ? fmt::format("{:.3g} %", 100.0 * *table.share) : "";
    for (const auto& p : table.points)
      text += fmt::format("{}{:.3g} V {:.3g} W {:.3g} %", text.empty() ? "" : "; ", in(p.input, unit::V),
                          in(p.output, unit::W), 100.0 * p.share);
    add(field, text);
  }
  template <class Part>
  void section(description::Field field, const Part& part) {
    const std::string outer = path_;
    path_ += std::string(field.key) + ".";
    Part::fields(part, *this);
    path_ = outer;
  }

 private:
  void add(description::Field field, std::string text) {
    all.emplace_back(path_ + std::string(field.key), std::move(text));
  }
  std::string path_;
};
std::vector<std::pair<std::string, std::string>> said_by(const description::Build& build) {
  Saying saying;
  description::Build::fields(build, saying);
  return std::move(saying.all);
}

std::vector<Page::Row> differing_keys(const std::vector<Compared>& all) {
  constexpr std::size_t longest = 20;
  std::vector<std::vector<std::pair<std::string, std::string>>> sayings;
  for (const Compared& one : all) sayings.push_back(said_by(one.build));
  std::vector<Page::Row> rows;
  for (std::size_t k = 0; k < sayings.front().size(); ++k) {
    if (sayings.front()[k].first == "name") continue;
    Page::Row row{{sayings.front()[k].first}, ""};
    bool differs = false;
    for (const auto& saying : sayings) {
      const std::string& text = saying[k].second;
      differs = differs || text != sayings.front()[k].second;
      row.cells.push_back(text.empty() ? "-" : text.size() <= longest ? text : text.substr(0, longest - 3) + "...");
    }
    if (differs) rows.push_back(std::move(row));
  }
  return rows;
}
struct BandEnds {
  double low, high;
};
std::optional<BandEnds> span_of(const plan::Assessment& a, std::string_view key) {
  const model::Result* result = plan::find_result(a, key);
  const model::Measure* middle = result == nullptr ? nullptr : std::get_if<model::Measure>(&result->value);
  if (middle == nullptr) return std::nullopt;
  if (!result->low || !result->high) return BandEnds{middle->quantity.si, middle->quantity.si};
  return BandEnds{result->low->quantity.si, result->high->quantity.si};
}
/// "more than is uncertain" where some two bands do not meet.
std::string weight_of(const std::vector<Compared>& all, std::string_view key) {
  std::vector<BandEnds> spans;
  for (const Compared& one : all) {
    const auto span = span_of(one.assessment, key);
    if (!span) return "";
    spans.push_back(*span);
  }
  const bool samples =
      std::all_of(all.begin(), all.end(), [](const Compared& one) { return one.assessment.bands.has_value(); });
  if (!samples) return "";
  for (const BandEnds& x : spans)
    for (const BandEnds& y : spans)
      if (x.high < y.low) return "clear";
  return "within the spread";
}
std::vector<Page::Row> answers(const std::vector<Compared>& all, const TextStyle& style) {
  constexpr std::string_view keys_told[] = {"raise.to_own_blower", "raise.to_working", "draught.air_flow",
                                            "heat.fan_gas",        "power.runtime",    "power.light_ups_per_charge",
                                            "fit.clearance_cold",  "fit.clearance_hot"};
  std::vector<Page::Row> rows;
  for (const std::string_view key : keys_told) {
    Page::Row row{{words_for(key)}, ""};
    bool differs = false;
    for (const Compared& one : all) {
      const model::Result* result = plan::find_result(one.assessment, key);
      row.cells.push_back(result != nullptr ? answer_text(*result, style) : "-");
      differs = differs || row.cells.back() != row.cells[1];
    }
    row.cells.push_back(weight_of(all, key));
    if (differs) rows.push_back(std::move(row));
  }
  return rows;
}
std::vector<Page::Row> verdicts(const std::vector<Compared>& all) {
  std::vector<Page::Row> rows;
  for (const plan::Finding& f : all.front().assessment.checks) {
    Page::Row row{{f.title.empty() ? f.id : f.title}, ""};
    bool differs = false;
    for (const Compared& one : all) {
      const plan::Finding* there = plan::find_check(one.assessment, f.id);
      row.cells.emplace_back(there == nullptr ? "not asked" : plan::verdict_word(there->verdict));
      differs = differs || row.cells.back() != row.cells[1];
    }
    if (differs) rows.push_back(std::move(row));
  }
  return rows;
}
void put(Page& page, const std::string& heading, std::vector<Page::Row> rows, const Page::Row& head, const char* none) {
  page.heading(heading);
  if (rows.empty()) return page.paragraph(none, 2);
  rows.insert(rows.begin(), head);
  page.table(rows);
}
}  // namespace

std::string compare_report(const std::vector<Compared>& all, const TextStyle& style) {
  Page page(style);
  Page::Row head{{""}, "", Ink::faint};
  for (const Compared& one : all) {
    page.paragraph(
        fmt::format("{}  {}", static_cast<char>('A' + head.cells.size() - 1), verdict_sentence(one.assessment)), 0,
        ink_of(one.assessment.verdict));
    head.cells.emplace_back(1, static_cast<char>('A' + head.cells.size() - 1));
  }
  put(page, "What differs in the builds", differing_keys(all), head, "nothing");
  Page::Row of_answers = head;
  of_answers.cells.emplace_back("difference");
  put(page, "What differs in the answers", answers(all, style), of_answers, "nothing");
  put(page, "Checks that differ", verdicts(all), head, "none");
  page.gap();
  if (all.front().assessment.bands)
    page.paragraph(
        "Clear: the bands of two of them do not meet. Within the spread: they do, so that what is not known for sure "
        "may turn it round.",
        0, Ink::faint);
  return page.finish();
}
}  // namespace lumwright::report
