// Builds that nobody wrote, in every view: the text never fails and says what the JSON says, and the JSON keeps its
// contract.
#include "description/random_build.hpp"
#include "plan/assess.hpp"
#include "plan/figures.hpp"
#include "plan/report_data.hpp"
#include "quantity/format.hpp"
#include "report/answers.hpp"
#include "report/json.hpp"
#include "report/picture/picture.hpp"
#include "report/text.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;
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
/// Under the title of the check the text has value and limit of the JSON, and the limit has the same name.
void say_the_same(const Json& row, const Finding& finding, const Assessment& a, const std::string& text,
                  UnitSystem units) {
  const TextStyle style{.units = units};
  const auto shown = [&](const char* which, const Measure& like, int digits) {
    return show({AnyQuantity(row[which]["value"].get<double>(), like.quantity.kind), like.unit}, style, digits);
  };
  const std::string name = row["limit_name"], bound = row["bound"];
  const std::string limit = shown("limit", *finding.limit, 3);
  const std::string value = shown("value", *finding.value, figures_of(a.results, *finding.value, units));
  std::string said = fmt::format("[{}] {}, {} {}{} {}", finding.id, value, bound, limit, name == "to pass" ? "" : ",", name);
  const double at = row["value"]["value"], most = row["limit"]["value"];
  if (value == limit && std::abs(at - most) > 1e-6 * std::abs(most)) said += at > most ? ", a hair above it" : ", a hair below it";
  CAPTURE(said);
  CHECK(text.find(said) != std::string::npos);
}
/// The number of the JSON, written as the text writes it, stands in the text.
void agree(const Json& report, const Assessment& a, const std::string& text, UnitSystem units) {
  for (const Result& result : a.results) {
    const Measure* measure = std::get_if<Measure>(&result.value);
    if (measure == nullptr) continue;
    const AnyQuantity quantity(report["results"][result.key]["value"].get<double>(), measure->quantity.kind);
    const std::string said = show({quantity, measure->unit}, {.units = units}, figures_of(result, units));
    CAPTURE(result.key);
    CAPTURE(said);
    CHECK(text.find(said) != std::string::npos);
  }
  for (const Finding& finding : a.checks) {
    CAPTURE(finding.id);
    CHECK(text.find("[" + finding.id + "]") != std::string::npos);
    const Json& row = *std::find_if(report["checks"].begin(), report["checks"].end(),
                                    [&](const Json& one) { return one["id"] == finding.id; });
    CHECK(row["verdict"] == verdict_word(finding.verdict));
    CHECK(row["limit"].is_null() == row["limit_name"].is_null());
    CHECK(row["limit"].is_null() == row["bound"].is_null());
    if (finding.limit) say_the_same(row, finding, a, text, units);
  }
}
/// The picture of the draught tells of a stall where the check does not pass it, and only there.
void picture_agrees(const Build& build) {
  const ReportData data = report_data(build);
  const Finding* steady = find_check(data.assessment, "draught.steady");
  const Picture picture = picture_of_draught(data, {});
  if (steady == nullptr || steady->verdict == Verdict::unknown || !data.draught) return;
  const bool warns = picture.says.find("stalls and recovers:") != std::string::npos ||
                     picture.says.find("may settle") != std::string::npos;
  CAPTURE(steady->why);
  CAPTURE(picture.says);
  CHECK(warns == (steady->verdict != Verdict::pass));
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
    if (seed % 3 == 0) picture_agrees(build);
  }
}
