#include "asked.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "report/html/parts.hpp"
#include "report/json.hpp"
#include "report/judged.hpp"
#include "report/six_answers.hpp"

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
/// The parts of the report, each in a division of the body that the page takes over.
std::string html_of(const plan::ReportData& data, const report::TextStyle& style, bool whole) {
  const report::html::Writing w{data, style};
  const report::Markup page("html");
  const report::Tag body = page.root().add("body");
  report::html::write_verdict(body.add("div").set("id", "part-head"), w);
  const report::Tag pictures = body.add("div").set("id", "part-pictures");
  report::html::write_chief_pictures(pictures, w);
  report::html::write_cautions(body.add("div").set("id", "part-cautions"), w);
  if (whole) report::html::write_appendix(body.add("div").set("id", "part-appendix"), w, {});
  return page.html();
}
}  // namespace

Json answer(const Json& question) {
  const Described told(question);
  const bool whole = question.value("whole", false);
  const model::Solved solved = plan::solved_to_judge(told.build, told.units, told.used(), told.samples);
  plan::ReportData data = plan::report_data(solved, told.used(), told.samples);
  data.program = "lumwright " LUMWRIGHT_VERSION;
  if (whole) plan::try_moves(data.assessment, told.build, told.units, told.used(), told.samples);
  const report::TextStyle style{.units = told.units};
  const plan::Assessment& a = data.assessment;
  return {{"verdict", plan::verdict_word(a.verdict)}, {"sentence", report::verdict_sentence(a)}, {"samples", told.samples.count},
          {"checks", a.checks.size()},          {"assumed", assumed_of(a)},        {"answers", chief_of(a, style)},
          {"html", html_of(data, style, whole)}};
}
Json report_as_json(const Json& question) {
  const Described told(question);
  plan::Assessment assessment = plan::assess(told.build, told.units, told.used(), told.samples);
  plan::try_moves(assessment, told.build, told.units, told.used(), told.samples);
  return {{"json", report::json_report(assessment)}};
}
}  // namespace lumwright::page
