#include "asked.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "report/html/parts.hpp"
#include "report/json.hpp"
#include "report/judged.hpp"
#include "report/places/places.hpp"
#include "report/six_answers.hpp"
#include <memory>
#include <stdexcept>

namespace lumwright::page {
namespace {
Json assumed_of(const plan::Assessment& assessment) {
  Json all = Json::array();
  for (const model::Assumed& one : assessment.assumed)
    all.push_back({{"key", one.key}, {"value", one.value}, {"band", one.band}, {"why", one.why}});
  return all;
}
Json chief_of(const plan::Assessment& assessment, const report::TextStyle& style) {
  Json all = Json::array();
  for (const report::ChiefAnswer& one : report::six_answers(assessment, style))
    all.push_back(
        {{"title", one.title}, {"verdict", plan::verdict_word(one.verdict)}, {"figure", one.figure}, {"band", one.band}});
  return all;
}
/// The build that was asked about last, worked out: its parts are asked for one after the other, those in sight first.
struct Worked {
  explicit Worked(Json asked)
      : question(std::move(asked)),
        told(question),
        solved(plan::solved_to_judge(told.build, told.units, told.used(), told.samples)),
        data(plan::report_data(solved, told.used(), told.samples)) {
    data.program = "lumwright " LUMWRIGHT_VERSION;
    if (question.value("whole", false))
      plan::try_moves(data.assessment, told.build, told.units, told.used(), told.samples);
  }
  Json question;
  Described told;
  model::Solved solved;
  plan::ReportData data;
};
const Worked& worked(Json question) {
  static std::unique_ptr<const Worked> last;
  question.erase("parts");
  if (!last || last->question != question) {
    last.reset();  // also where the next one throws
    last = std::make_unique<const Worked>(std::move(question));
  }
  return *last;
}
/// A part of the report: a document whose body holds it.
std::string html_of(const std::string& part, const report::html::Writing& w) {
  const report::Markup page("html");
  const report::Tag body = page.root().add("body");
  if (part == "head")
    report::html::write_verdict(body, w);
  else if (part == "pictures")
    report::html::write_chief_pictures(body, w);
  else if (part == "cautions")
    report::html::write_cautions(body, w);
  else if (part == "appendix")
    report::html::write_appendix(body, w, {});
  else
    throw std::logic_error("the report has no part called " + part);
  return page.html();
}
Json sketches_of(const plan::ReportData& data, const report::TextStyle& style) {
  Json all = Json::array();
  for (const auto& [part, picture] : report::places::pictures(*data.build, data.assessment.assumed, style)) {
    const report::Markup page("html");
    picture.draw(page.root().add("body"), "form-" + picture.id, 340.0);
    all.push_back({{"part", part}, {"title", picture.title}, {"html", page.html()}});
  }
  return all;
}
}  // namespace

Json answer(const Json& question) {
  const Worked& work = worked(question);
  const report::TextStyle style = style_of(work.told);
  const plan::Assessment& a = work.data.assessment;
  Json out{{"verdict", plan::verdict_word(a.verdict)},
           {"sentence", report::verdict_sentence(a)},
           {"samples", work.told.samples.count},
           {"checks", a.checks.size()},
           {"assumed", assumed_of(a)},
           {"answers", chief_of(a, style)},
           {"parts", Json::object()}};
  for (const Json& asked : question.at("parts")) {
    const auto part = asked.get<std::string>();
    if (part == "sketches")
      out["sketches"] = sketches_of(work.data, style);
    else
      out["parts"][part] = html_of(part, {work.data, style});
  }
  return out;
}
Json report_as_json(const Json& question) {
  const Described told(question);
  plan::Assessment assessment = plan::assess(told.build, told.units, told.used(), told.samples);
  plan::try_moves(assessment, told.build, told.units, told.used(), told.samples);
  return {{"json", report::json_report(assessment)}};
}
}  // namespace lumwright::page
