#include "report/json.hpp"
#include "quantity/format.hpp"
#include "report/detail/json_parts.hpp"
#include "report/judged.hpp"
#include "report/page.hpp"

namespace lumwright::report {
static Json object(const model::Result& result) {
  const model::Measure* measure = std::get_if<model::Measure>(&result.value);
  Json out = measure != nullptr ? object(*measure) : Json{{"value", std::get<std::string>(result.value)}};
  if (result.low) out["low"] = finite(result.low->quantity.si);
  if (result.high) out["high"] = finite(result.high->quantity.si);
  if (result.share) out["share"] = finite(*result.share);
  return out;
}
static Json object(const plan::Move& move) {
  Json out{{"words", move.words}, {"set", move.settings}};
  if (move.value) out["value"] = object(*move.value);
  if (move.steam) out["steam"] = object(*move.steam);
  return out;
}
static Json object(const plan::Finding& f) {
  Json out{{"id", f.id},
           {"title", f.title},
           {"verdict", plan::verdict_word(f.verdict)},
           {"value", object(f.value)},
           {"limit", object(f.limit)},
           {"bound", f.limit ? Json(bound_words(f.bound)) : Json()},
           {"limit_name", f.limit ? Json(plan::limit_words(f.limit_name)) : Json()},
           {"why", f.why},
           {"do", action_of(f, description::FrontEnd::terminal)},
           {"source", f.basis.source},
           {"standing", data::word_of(f.basis.standing)},
           {"missing", f.missing}};
  if (f.holds) out["holds"] = finite(*f.holds);
  if (f.move) out["move"] = object(*f.move);
  return out;
}
static Json object(const plan::Widening& w) {
  return {{"key", w.key},
          {"meaning", w.meaning},
          {"share", finite(w.share)},
          {"value", finite(w.value.quantity.si)},
          {"low", finite(w.low.quantity.si)},
          {"high", finite(w.high.quantity.si)},
          {"unit", si_symbol(w.value.quantity.kind)}};
}
static Json object(const plan::Narrowing& n) {
  return {{"id", n.id},
          {"of", n.of},
          {"within", n.within},
          {"left", finite(n.left)},
          {"needs", n.needs},
          {"tool", n.tool},
          {"how", description::with_ways(n.how, description::FrontEnd::terminal)},
          {"write", description::with_ways(n.write, description::FrontEnd::terminal)},
          {"source", n.basis.source},
          {"standing", data::word_of(n.basis.standing)}};
}
static Json object(const plan::Sensitivity& l) {
  return {{"answer", l.answer}, {"widest", list(l.widest, object)}, {"measure", list(l.narrowings, object)}};
}
static Json object(const plan::Bands& b) {
  Json out{{"samples", b.samples}, {"seed", b.seed}, {"inputs", b.drawn}, {"share_error", finite(b.share_error)}};
  if (b.edge_error) out["edge_error"] = finite(*b.edge_error);
  out["answers"] = list(b.sensitivities, object);
  return out;
}
static Json object(const plan::Series& series) {
  Json out = Json::object();
  for (const plan::Series::Column& column : series.columns) {
    Json numbers = Json::array();
    for (const double x : column.si) numbers.push_back(finite(x));
    out[column.name] = std::move(numbers);
  }
  return out;
}

std::string json_report(const plan::Assessment& assessment) {
  plan::require_sound(assessment);
  Json results = Json::object(), series = Json::object();
  for (const model::Result& result : assessment.results) results[result.key] = object(result);
  for (const plan::Series& one : assessment.series) series[one.name] = object(one);
  Json report = {{"format", "lumwright/1"},
                 {"build", assessment.build},
                 {"verdict", plan::verdict_word(assessment.verdict)},
                 {"results", std::move(results)},
                 {"checks", list(assessment.checks, object)},
                 {"assumed", list(assessment.assumed, object)},
                 {"cautions", list(assessment.cautions, object)},
                 {"series", std::move(series)}};
  for (const plan::Remark& remark : assessment.remarks)  // only where there is one
    report["remarks"].push_back({{"key", remark.key}, {"text", remark.text}});
  if (assessment.bands) report["bands"] = object(*assessment.bands);
  if (!assessment.tuned.empty())
    report["tuned"] = assessment.tuned;  // no part of the contract: only where it says something
  return text_of(report);
}
}  // namespace lumwright::report
