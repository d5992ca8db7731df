#include "report/detail/json_parts.hpp"
#include "report/proof.hpp"

namespace lumwright::report {
namespace {
const char* side_name(prove::Side side) {
  return side == prove::Side::low ? "low" : side == prove::Side::high ? "high" : "fits";
}
Json id_of(const data::CauseRow* cause) { return cause == nullptr ? Json("sound") : Json(cause->id); }
}  // namespace

static Json object(const prove::Expected& one) {
  Json out = {{"id", one.row->id},       {"name", one.row->name}, {"tool", one.row->tool},
              {"where", one.row->where}, {"how", one.row->how},   {"fire", one.row->fire}};
  out["why_not"] = one.why_not.empty() ? Json() : Json(one.why_not);
  out["word"] = one.word.empty() ? Json() : Json(one.word);
  out["value"] = object(one.value);
  out["low"] = object(one.low);
  out["high"] = object(one.high);
  out["least"] = object(one.least);
  out["most"] = object(one.most);
  out["source"] = one.row->basis.source;
  return out;
}
static Json object(const prove::NotAsked& one) { return {{"cause", one.cause->id}, {"why", one.why}}; }
static Json object(const prove::JudgedCause& one) {
  Json out = {{"cause", id_of(one.cause)},
              {"name", one.cause == nullptr ? Json("nothing is wrong") : Json(one.cause->name)},
              {"share", finite(one.share)},
              {"tied", one.tied}};
  out["size"] = object(one.size);
  out["size_low"] = object(one.size_low);
  out["size_high"] = object(one.size_high);
  out["sure"] = one.cause == nullptr ? Json() : Json(one.cause->sure);
  out["do"] = one.cause == nullptr ? Json() : Json(one.cause->action);
  return out;
}
static Json object(const prove::Sheet& sheet) {
  return {{"name", sheet.name}, {"samples", sheet.samples}, {"sheet", list(sheet.readings, object)}};
}
static Json readings_of(const prove::Proved& proved) {
  Json all = Json::array();
  for (const prove::JudgedReading& one : proved.readings) {
    Json out = {{"id", proved.sheet.readings[one.expected].row->id}};
    out["word"] = one.word.empty() ? Json() : Json(one.word);
    out["read"] = one.word.empty() ? object(one.read) : Json();
    out["below"] = one.used && one.word.empty() ? Json(finite(one.below)) : Json();
    out["side"] = one.used ? Json(side_name(one.side)) : Json();
    all.push_back(std::move(out));
  }
  return all;
}
static Json parting_of(const prove::Proved& proved) {
  if (!proved.parting) return {};
  const prove::Parting& p = *proved.parting;
  Json out = {{"reading", p.row->id}, {"first", id_of(p.first)}, {"second", id_of(p.second)}};
  out["of_first"] = object(p.of_first);
  out["of_second"] = object(p.of_second);
  out["decides"] = finite(p.decides);
  return out;
}

std::string proof_json(const prove::Sheet& sheet) {
  return text_of({{"format", "lumwright/1"}, {"proof", object(sheet)}, {"cautions", list(sheet.cautions, object)}});
}
std::string proof_json(const prove::Proved& proved) {
  Json proof = object(proved.sheet);
  proof["verdict"] = proved.unexplained ? "unexplained" : proved.sound() ? "sound" : "fault";
  proof["readings"] = readings_of(proved);
  proof["causes"] = list(proved.causes, object);
  proof["not_asked"] = list(proved.not_asked, object);
  proof["next"] = parting_of(proved);
  proof["suspect"] =
      proved.suspect ? Json(proved.sheet.readings[proved.readings[*proved.suspect].expected].row->id) : Json();
  return text_of({{"format", "lumwright/1"}, {"proof", proof}, {"cautions", list(proved.sheet.cautions, object)}});
}
}  // namespace lumwright::report
