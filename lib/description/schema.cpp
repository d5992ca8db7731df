#include "description/schema.hpp"
#include "data/first_words.hpp"
#include "data/renamed.hpp"
#include "description/bin.hpp"
#include "description/build.hpp"
#include "description/detail/part_reader.hpp"
#include "description/detail/shop_forms.hpp"
#include "description/log.hpp"
#include "description/proof.hpp"
#include "description/readings.hpp"
#include "description/season.hpp"
#include "description/values.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lumwright::description {
namespace {
using Json = nlohmann::ordered_json;

std::string escaped(std::string_view text) {
  std::string out;
  for (char c : text)
    out += std::string_view(".()[]{}+*?^$|\\").find(c) == std::string_view::npos ? std::string(1, c)
                                                                                 : std::string("\\") + c;
  return out;
}
std::string units_of(Kind kind,
                     bool differences) {  // "(?:mm|cm|in)"; with differences, what a spread may be written in
  std::string out;
  for (const UnitRow& row : unit_table()) {
    if (!fits(row, kind) && !(differences && fits(row, {kind.dimension, Scale::ratio}))) continue;
    out += (out.empty() ? "" : "|") + escaped(row.symbol);
    for (std::string_view one : words(row.spellings, '|')) out += "|" + escaped(one);
  }
  return "(?:" + out + ")";
}
// A superset of what quantity/text.cpp reads: number or fraction, unit, spread or range.
std::string pattern(Kind kind) {
  const std::string blank = "[ \\t\\u00a0\\u2009\\u202f]*";
  const std::string decimal =
      "(?:\\d+,(?:\\d{1,2}|\\d{4,})(?!\\d)|0,\\d+|\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";
  const std::string some_blank = blank.substr(0, blank.size() - 1) + "+";
  const std::string number = fmt::format("[+−-]?{0}{1}(?:/{1}|{2}{1}/{1})?", blank, decimal, some_blank);
  const bool pure = kind.dimension == Dimension{};
  const std::string unit = blank + units_of(kind, false),
                    spread_unit = fmt::format("{}(?:{}|%|percent)", blank, units_of(kind, true));
  std::string end = fmt::format("{}{}{}", number, unit, pure ? "?" : "");
  if (kind == kind_of<Duration>)  // 6:30, and 6 min 30 s
    end = fmt::format("(?:{0}|\\d+:[0-5]\\d(?:{1}min)?|(?:\\d+{2}{1})+{0})", end, blank, unit);
  const std::string spread =
      fmt::format("{}(?:±|\\+-|\\+/-){}(?:{}|{}(?:{})?)", blank, blank, end, number, spread_unit);
  const std::string range = fmt::format("{}\\.\\.{}{}", blank, blank, end);
  return fmt::format("^{0}(?:{1}|(?:{1}|{2})(?:{3}|{4})){0}$", blank, end, number, spread, range);
}
std::string definition_name(Kind kind) {
  std::string name = kind_name(kind);
  if (kind.dimension == Dimension{}) return "number or percentage";
  return name.substr(name.find(' ') + 1);
}

class SchemaWriter {
 public:
  SchemaWriter(Json& properties, Json& definitions, std::string path)
      : properties_(properties), definitions_(definitions), path_(std::move(path)) {}

  template <class Q>
  void operator()(Field field, const Given<Q>&, Limits limits) {
    Json& property = start(field, fmt::format(" ({} to {})", limits.low, limits.high));
    property["anyOf"] = {Json{{"$ref", reference(kind_of<Q>)}}, nothing()};
    for (const std::string& form : shop_patterns(full(field.key)))
      property["anyOf"].push_back({{"type", "string"}, {"pattern", "^(?:" + form + ")$"}});
    if (kind_of<Q> == kind_of<Volume>) property["anyOf"].push_back({{"$ref", reference(kind_of<Mass>)}});  // of water
  }
  void operator()(Field field, const Count&, int least, int most) {
    Json& property = start(field, "");
    property["type"] = {"integer", "null"};
    property["minimum"] = least;
    property["maximum"] = most;
  }
  void operator()(Field field, const Text&, Allowed allowed) {
    Json& property = start(field, "");
    if (allowed != nullptr) {
      property["enum"] = allowed();
      for (const std::string& word : allowed())  // an editor reads 304 as a number
        if (word.find_first_not_of("0123456789") == std::string::npos) property["enum"].push_back(std::stoi(word));
      for (const std::string& word : allowed())  // and these as truth values
        if (word == "yes" || word == "no") property["enum"].push_back(word == "yes");
      for (const std::string& word : other_words(full(field.key))) property["enum"].push_back(word);
      property["enum"].push_back(nullptr);
      return;
    }
    property["type"] = {"string", "number", "null"};
    property["minLength"] = 1;
    property["maxLength"] = longest_text;
  }
  template <class X, class Y>
  void operator()(Field field, const Points<X, Y>&, Limits x, Limits y) {
    Json& property = start(field, fmt::format(" ({} to {}; {} to {})", x.low, x.high, y.low, y.high));
    property["anyOf"] = {table({kind_of<X>, kind_of<Y>}, fewest_points), nothing()};
  }
  void operator()(Field field, const EfficiencyTable&) {
    Json& property = start(field, "");
    property["anyOf"] = {Json{{"$ref", reference(kind_of<double>)}},
                         table({kind_of<Voltage>, kind_of<Power>, kind_of<double>}, 1), nothing()};
  }
  template <class Part>
  void section(Field field, const Part& part) {
    Json& property = properties_[std::string(field.key)];
    property = Json{{"description", field.meaning},
                    {"type", {"object", "null"}},
                    {"additionalProperties", false},
                    {"properties", Json::object()}};
    SchemaWriter inner(property["properties"], definitions_, full(field.key));
    Part::fields(part, inner);
  }
  template <class Part>
  void list(Field field, const std::vector<Part>&) {
    Json item{{"type", "object"}, {"additionalProperties", false}, {"properties", Json::object()}};
    SchemaWriter inner(item["properties"], definitions_, full(field.key));
    const Part one{};
    Part::fields(one, inner);
    properties_[std::string(field.key)] = Json{{"description", field.meaning}, {"type", {"array", "null"}},
                                               {"minItems", 1}, {"maxItems", most_items}, {"items", std::move(item)}};
  }

 private:
  std::string full(std::string_view key) const { return (path_.empty() ? "" : path_ + ".") + std::string(key); }
  /// A key with nothing behind its colon: not known.
  static Json nothing() { return {{"type", "null"}}; }
  Json& start(Field field, const std::string& limits) {
    Json& property = properties_[std::string(field.key)];
    property["description"] = std::string(field.meaning) + limits;
    property["examples"] = Json::array({std::string(field.example)});
    return property;
  }
  std::string reference(Kind kind) {
    const std::string name = definition_name(kind);
    if (!definitions_.contains(name)) definitions_[name] = definition(kind);
    std::string path = "#/$defs/";
    for (char c : name) path += c == ' ' ? std::string("%20") : std::string(1, c);
    return path;
  }
  static Json definition(Kind kind) {
    Json text{{"type", "string"},
              {"pattern", pattern(kind)},
              {"patternErrorMessage", kind.dimension == Dimension{} ? "expected a number, as in 0.35 or 35 %"
                                                                    : fmt::format("expected {}, in {}", kind_name(kind),
                                                                                  accepted_units(kind))}};
    if (kind.dimension != Dimension{}) {
      text["description"] =
          fmt::format("{}, in {}; a fraction (9/16), a spread (+- or ±) or a range (a..b) may be given",
                      kind_name(kind), accepted_units(kind));
      return text;
    }
    return {{"description", "a number such as 0.35, or a percentage such as 35 %"},
            {"anyOf", {Json{{"type", "number"}}, text}}};
  }
  Json table(const std::vector<Kind>& members, std::size_t fewest) {
    Json items = Json::array();
    for (Kind kind : members) items.push_back({{"$ref", reference(kind)}});
    Json item{{"type", "array"}, {"prefixItems", items}, {"items", false}, {"minItems", members.size()}};
    return {{"type", "array"}, {"minItems", fewest}, {"maxItems", most_points}, {"items", item}};
  }

  Json& properties_;
  Json& definitions_;
  std::string path_;
};
Json& property_at(Json& properties, std::string_view key) {
  const std::size_t dot = key.find('.');
  Json& here = properties[std::string(key.substr(0, dot))];
  return dot == std::string_view::npos ? here : property_at(here["properties"], key.substr(dot + 1));
}
/// What is read by an older name is valid by it, but not by both.
void add_older_names(Json& properties) {
  for (const data::RenamedKey& key : data::renamed_keys()) {
    const std::size_t dot = key.now.rfind('.');
    Json& section = property_at(properties, std::string_view(key.now).substr(0, dot));
    const std::string old = key.old.substr(key.old.rfind('.') + 1), now = key.now.substr(dot + 1);
    Json property = section["properties"][now];
    property["deprecated"] = true;
    section["properties"][old] = std::move(property);
    section["not"] = {{"type", "object"}, {"required", {old, now}}};  // an empty section has neither
  }
  for (const data::RenamedWord& word : data::renamed_words())
    property_at(properties, word.key)["enum"].push_back(word.old);
}
/// What a bin may say in a word: stock tubes, and no step-up.
void add_words_of_a_bin(Json& properties) {
  Json& items = properties["step_ups"]["items"];
  items = Json{{"anyOf", {items, Json{{"const", "none"}}}}};
  Json& tubes = properties["tubes"];
  const Json meaning = tubes["description"];
  tubes = Json{{"description", meaning}, {"anyOf", {tubes, Json{{"const", "stock"}}}}};
}
template <class Root>
std::string schema_of(std::string_view file, std::string_view about, bool older_names) {
  Json properties = Json::object(), definitions = Json::object();
  SchemaWriter writer(properties, definitions, "");
  const Root empty{};
  Root::fields(empty, writer);
  if (older_names) add_older_names(properties);
  if constexpr (std::is_same_v<Root, Bin>) add_words_of_a_bin(properties);
  const Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                    {"$id", fmt::format("urn:lumwright:{}:1", file)},
                    {"$comment", data::first_lines()},
                    {"title", fmt::format("lumwright {}", file)},
                    {"description", about},
                    {"type", "object"},
                    {"additionalProperties", false},
                    {"properties", std::move(properties)},
                    {"$defs", std::move(definitions)}};
  return schema.dump(2) + "\n";
}
}  // namespace

const std::vector<std::string_view>& schema_files() {
  static const std::vector<std::string_view> all{"description", "bin", "readings", "log", "season", "proof"};
  return all;
}
std::string json_schema(std::string_view file) {
  if (file == "description")
    return schema_of<Build>(file, "a small steam locomotive, the fan that raises its steam, and what drives the fan", true);
  if (file == "bin") return schema_of<Bin>(file, "fans, packs, step-ups and tubes to choose from, and the engines", false);
  if (file == "readings") return schema_of<FanReadings>(file, "what was read at the test of a fan", false);
  if (file == "log") return schema_of<Log>(file, "what was read while steam was raised", false);
  if (file == "season") return schema_of<Season>(file, "every lighting-up of one engine", false);
  if (file == "proof") return schema_of<Proof>(file, "what was read on the finished unit", false);
  throw std::logic_error("no schema of " + std::string(file));
}
std::string json_schema() { return json_schema("description"); }
std::string editor_line(std::string_view file) {
  return fmt::format("# yaml-language-server: $schema={}.schema.json\n", file);
}
}  // namespace lumwright::description
