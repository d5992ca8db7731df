#include "report/answer_schema.hpp"
#include "data/first_words.hpp"
#include "quantity/words.hpp"
#include "report/answers.hpp"
#include "report/detail/answer_keys.hpp"
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lumwright::report {
namespace {
using Json = nlohmann::ordered_json;

/// One step of the paths, with those below it.
struct KeyStep {
  std::string name;
  const AnswerKey* key = nullptr;  // of a member of a list that is an object: none
  std::vector<KeyStep> below{};
  KeyStep& at(std::string_view step) {
    for (KeyStep& one : below)
      if (one.name == step) return one;
    below.push_back({std::string(step)});
    return below.back();
  }
};
KeyStep tree_of(const std::vector<AnswerKey>& keys) {
  KeyStep root{"", nullptr};
  for (const AnswerKey& key : keys) {
    KeyStep* here = &root;
    for (const std::string_view step : words(key.path, '/')) here = &here->at(step);
    here->key = &key;
  }
  return root;
}
Json schema_of_step(const KeyStep& step);

/// The keys below, with what must be there.
Json object_of(const KeyStep& step) {
  Json properties = Json::object(), required = Json::array(), more = false;
  for (const KeyStep& one : step.below) {
    if (one.name == "*") {
      more = schema_of_step(one);
      continue;
    }
    properties[one.name] = schema_of_step(one);
    if (one.key == nullptr || one.key->when == AnswerKey::When::always) required.push_back(one.name);
  }
  return {{"type", "object"}, {"properties", properties}, {"required", required}, {"additionalProperties", more}};
}
Json list_of(const KeyStep& step) {
  Json out{{"type", "array"}};
  for (const KeyStep& one : step.below) out["items"] = schema_of_step(one);
  return out;
}
Json combination_with(const KeyStep& step) {
  static const std::vector<AnswerKey> keys = keys_of_combination();
  KeyStep whole = tree_of(keys);
  for (const KeyStep& one : step.below) whole.below.push_back(one);
  return object_of(whole);
}
Json of_type(std::string_view type, const KeyStep& step) {
  if (type == "object") return object_of(step);
  if (type == "list") return list_of(step);
  if (type == "combination") return combination_with(step);
  if (type == "text") return {{"type", "string"}};
  if (type == "number") return {{"type", "number"}};
  if (type == "whole") return {{"type", "integer"}, {"minimum", 0}};
  if (type == "yes/no") return {{"type", "boolean"}};
  if (type == "number|text") return {{"type", {"number", "string"}}};
  if (type == "texts") return {{"type", "array"}, {"items", {{"type", "string"}}}};
  if (type == "numbers") return {{"type", "array"}, {"items", {{"type", "number"}}}};
  if (type == "measure" || type == "band") return {{"$ref", fmt::format("#/$defs/{}", type)}};
  return {{"enum", words(type, '|')}};
}
Json schema_of_step(const KeyStep& step) {
  if (step.key == nullptr) return object_of(step);
  std::string_view type = step.key->type;
  const bool may_be_null = type.ends_with('?');
  if (may_be_null) type.remove_suffix(1);
  Json out = of_type(type, step);
  if (may_be_null) out = Json{{"anyOf", {out, Json{{"type", "null"}}}}};
  if (step.key->path == "results") {
    Json names = Json::array();
    for (const auto& [key, meaning] : named_results()) names.push_back(key);
    out["propertyNames"] = {{"anyOf", {Json{{"enum", names}}, Json{{"pattern", "^draught\\.loss\\.[a-z_]+$"}}}}};
  }
  out["description"] = step.key->meaning;
  return out;
}
/// {"value": 0.012, "unit": "m"}, in SI; of a band its ends besides.
Json measure_definition(bool band) {
  const Json number{{"type", "number"}};
  Json out{{"type", "object"},
           {"properties",
            {{"value", number}, {"unit", {{"type", "string"}, {"description", "SI; 1 for a share or a count"}}}}},
           {"required", {"value", "unit"}},
           {"additionalProperties", false}};
  if (!band) return out;
  for (const char* end : {"low", "high"}) {
    out["properties"][end] = number;
    out["required"].push_back(end);
  }
  return out;
}
void add_keys(Page& page, const std::vector<AnswerKey>& keys) {
  std::vector<Page::Row> rows{{{"key", "what stands there"}, "", Ink::faint}};
  for (const AnswerKey& key : keys) {
    std::string path;
    for (const std::string_view step : words(key.path, '/'))
      path += step == "[]" ? "[]" : (path.empty() ? "" : ".") + std::string(step);
    std::string type(key.type);
    const bool may_be_null = type.ends_with('?');
    if (may_be_null) type.pop_back();
    for (auto bar = type.find('|'); bar != std::string::npos; bar = type.find('|', bar)) type.replace(bar, 1, ", ");
    const char* often = key.when == AnswerKey::When::maybe ? "; may be left out" : may_be_null ? "; or null" : "";
    rows.push_back({{path, type + often}, std::string(key.meaning)});
  }
  page.table(rows, 40);
}
}  // namespace

std::string answer_schema() {
  Json any = Json::array(), definitions{{"measure", measure_definition(false)}, {"band", measure_definition(true)}};
  for (const AnswerKind& kind : answer_kinds()) {
    any.push_back({{"$ref", fmt::format("#/$defs/{}", kind.name)}});
    definitions[std::string(kind.name)] = object_of(tree_of(kind.keys));
    definitions[std::string(kind.name)]["description"] = fmt::format("lumwright {}", kind.command);
  }
  const Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                    {"$id", "urn:lumwright:answer:1"},
                    {"$comment", data::first_lines()},
                    {"title", "lumwright answer"},
                    {"description", "what the commands answer in JSON; numbers are in SI"},
                    {"anyOf", any},
                    {"$defs", definitions}};
  return schema.dump(2) + "\n";
}
std::string answer_table(const TextStyle& style) {
  Page page(style);
  page.paragraph("The JSON answers, key by key", 0, Ink::strong);
  page.paragraph(
      "Numbers are in SI. [] stands for each member of a list, * for each key of an object. A measure is an object of "
      "value (number) and unit (text); a band has low and high besides.");
  for (const AnswerKind& kind : answer_kinds()) {
    page.heading(fmt::format("lumwright {}", kind.command));
    page.gap();
    add_keys(page, kind.keys);
    if (kind.name == "choose") {
      page.heading("A combination");
      page.gap();
      add_keys(page, keys_of_combination());
    }
  }
  page.heading("The results of check");
  page.gap();
  std::vector<Page::Row> rows;
  for (const auto& [key, meaning] : named_results()) rows.push_back({{key, meaning}, ""});
  rows.push_back({{"draught.loss.*", "where the suction goes, one key for each part of the gas path"}, ""});
  page.table(rows);
  return page.finish();
}
}  // namespace lumwright::report
