// Builds that nobody wrote, in every view: the text never fails and says what the JSON says, and the JSON keeps its
// contract.
#include "build/random_build.hpp"
#include "plan/assess.hpp"
#include "quantity/format.hpp"
#include "report/json.hpp"
#include "report/text.hpp"
#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
using namespace lumwright;
using Json = nlohmann::ordered_json;

namespace {
std::string without_breaks(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\n';
    if (!blank || (!out.empty() && out.back() != ' ')) out += blank ? ' ' : c;
  }
  return out;
}
bool is_measure(const Json& j) { return j["value"].is_number() && j["unit"].is_string(); }

void keeps_contract(const Json& report, const Assessment& a) {
  CHECK(report["format"] == "lumwright/1");
  CHECK(report["verdict"] == verdict_word(a.verdict));
  REQUIRE(report["results"].size() == a.results.size());
  for (const auto& [key, result] : report["results"].items()) {
    CAPTURE(key);
    CHECK((is_measure(result) || result["value"].is_string()));
    if (result.contains("low")) CHECK(result["low"].is_number());
    if (result.contains("low")) CHECK(result["low"] <= result["value"]);
    if (result.contains("high")) CHECK(result["high"] >= result["value"]);
  }
  REQUIRE(report["checks"].size() == a.checks.size());
  for (const Json& check : report["checks"]) {
    CHECK(check["id"].is_string());
    CHECK((check["value"].is_null() || is_measure(check["value"])));
    CHECK((check["limit"].is_null() || is_measure(check["limit"])));
    for (const char* key : {"title", "verdict", "why", "do", "source", "standing"}) CHECK(check[key].is_string());
  }
  for (const auto& [name, series] : report["series"].items()) {
    CAPTURE(name);
    REQUIRE(series["t"].is_array());
    for (const auto& [column, numbers] : series.items())
      CHECK((numbers.empty() || numbers.size() == series["t"].size()));
  }
}
/// The number of the JSON, written as the text writes it, stands in the text.
void agree(const Json& report, const Assessment& a, const std::string& text, UnitSystem units) {
  for (const Result& result : a.results) {
    const Measure* measure = std::get_if<Measure>(&result.value);
    if (measure == nullptr) continue;
    const AnyQuantity quantity(report["results"][result.key]["value"].get<double>(), measure->quantity.kind);
    const std::string said = show({quantity, measure->unit}, {.units = units});
    CAPTURE(result.key);
    CAPTURE(said);
    CHECK(text.find(said) != std::string::npos);
  }
  for (const Finding& finding : a.checks) {
    CAPTURE(finding.id);
    CHECK(text.find("[" + finding.id + "]") != std::string::npos);
  }
}
}  // namespace

TEST_CASE("three hundred builds as text and as JSON, or as many as are asked for") {
  const UnitSystem systems[] = {UnitSystem::as_written, UnitSystem::metric, UnitSystem::imperial};
  for (unsigned seed = 10000; seed < 10000 + how_many_builds(300); ++seed) {
    const std::string description = RandomBuild(seed, seed % 5 == 0 ? 0.4 : 0.9, seed % 2 == 0).text();
    CAPTURE(seed);
    INFO(description);
    const UnitSystem units = systems[seed % 3];
    const Build build = read_build({"random.yaml", description});
    const Assessment a = assess(build, units, nullptr, {.count = seed % 4, .threads = 1});
    std::string json, text;
    REQUIRE_NOTHROW(json = json_report(a));
    REQUIRE_NOTHROW(text = text_report(a, {.units = units}));
    REQUIRE_NOTHROW(text_report(a, {.units = units, .colour = true, .width = 40}));
    const Json report = Json::parse(json);
    keeps_contract(report, a);
    agree(report, a, without_breaks(text), units);
  }
}
