#include "report/json.hpp"
#include "quantity/format.hpp"
#include "quantity/sound.hpp"
#include "report/text.hpp"
#include "specimen.hpp"
#include <doctest/doctest.h>
#include <limits>
#include <nlohmann/json.hpp>

using namespace lumwright;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;
using Json = nlohmann::ordered_json;
namespace {
std::vector<std::string> keys(const Json& object) {
  std::vector<std::string> out;
  for (const auto& [key, value] : object.items()) out.push_back(key);
  return out;
}
using Keys = std::vector<std::string>;
}  // namespace

TEST_CASE("the object has the keys of the format, in order, and ends with a line feed") {
  const std::string text = json_report(specimen());
  CHECK(text.ends_with("}\n"));
  const Json report = Json::parse(text);
  CHECK(keys(report) == Keys{"format", "build", "verdict", "results", "checks", "assumed", "cautions", "series", "safety"});
  CHECK(report["format"] == "lumwright/1");
  CHECK(keys(report["checks"][0]) ==
        Keys{"id", "title", "verdict", "value", "limit", "bound", "limit_name", "why", "do", "source", "standing",
             "missing"});
  CHECK(keys(report["assumed"][0]) == Keys{"key", "value", "band", "why", "source", "standing"});
  CHECK(keys(report["cautions"][0]) == Keys{"id", "title", "text", "authority"});
}

TEST_CASE("everything that an assessment holds comes back from its JSON") {
  Assessment a = specimen();
  a.checks[0].holds = 0.75;
  a.checks[0].bound = Bound::at_most;
  a.checks[1].limit_name = LimitName::not_to_fail;
  const Json report = Json::parse(json_report(a));
  CHECK(report["build"] == a.build);
  CHECK(report["verdict"] == "fail");
  REQUIRE(report["results"].size() == a.results.size());
  for (const Result& result : a.results) {
    CAPTURE(result.key);
    const Json& row = report["results"].at(result.key);
    if (const Measure* m = std::get_if<Measure>(&result.value)) {
      CHECK(row["value"].get<double>() == m->quantity.si);
      CHECK(row["unit"] == si_symbol(m->quantity.kind));
    } else {
      CHECK(row == Json{{"value", std::get<std::string>(result.value)}});
    }
    CHECK(row.contains("low") == result.low.has_value());
    if (result.low) CHECK(row["low"].get<double>() == result.low->quantity.si);
    if (result.high) CHECK(row["high"].get<double>() == result.high->quantity.si);
  }
  REQUIRE(report["checks"].size() == a.checks.size());
  for (std::size_t i = 0; i < a.checks.size(); ++i) {
    const Finding& f = a.checks[i];
    const Json& row = report["checks"][i];
    CHECK(row["id"] == f.id);
    CHECK(row["title"] == f.title);
    CHECK(row["verdict"] == verdict_word(f.verdict));
    CHECK(row["value"].is_null() == !f.value.has_value());
    if (f.value) CHECK(row["value"]["value"].get<double>() == f.value->quantity.si);
    CHECK(row["limit"].is_null() == !f.limit.has_value());
    CHECK(row["bound"].is_null() == !f.limit.has_value());
    CHECK(row.contains("holds") == f.holds.has_value());
    if (f.holds) CHECK(row["holds"].get<double>() == *f.holds);
    if (f.limit) {
      CHECK(row["limit"]["value"].get<double>() == f.limit->quantity.si);
      CHECK(row["limit"]["unit"] == si_symbol(f.limit->quantity.kind));
      CHECK(row["bound"] == (f.bound == Bound::at_most ? "at most" : "at least"));
      CHECK(row["limit_name"] == (f.limit_name == LimitName::to_pass ? "to pass" : "or it fails"));
    }
    CHECK(row["why"] == f.why);
    CHECK(row["do"] == f.action);
    CHECK(row["source"] == f.basis.source);
    CHECK(row["standing"] == data::word_of(f.basis.standing));
    CHECK(row["missing"] == f.missing);
  }
  CHECK(report["assumed"][1]["band"] == "0.02 mm .. 0.1 mm");
  CHECK(report["cautions"][0]["authority"] == "a public guideline");
  CHECK(report["series"] == Json{{"discharge", {{"t", {0.0, 0.1, 4000.0}}, {"pack_voltage", {6.4, 1.0 / 3.0, 5.0}}}}});
}

TEST_CASE("numbers are SI with their unit") {  // hand: 0.4 g/s, 61 degC, 3 mmH2O of 9.80665 Pa, 1.2 bar
  const Json results = Json::parse(json_report(specimen()))["results"];
  CHECK(results["draught.air_flow"]["value"].get<double>() == doctest::Approx(4e-4).scale(0));
  CHECK(results["draught.air_flow"]["unit"] == "kg/s");
  CHECK(results["heat.fan_gas"]["value"].get<double>() == doctest::Approx(334.15));
  CHECK(results["heat.fan_gas"]["unit"] == "K");
  CHECK(results["draught.fan_static_pressure"]["value"].get<double>() == doctest::Approx(29.41995));
  CHECK(results["later.invention"]["value"].get<double>() == doctest::Approx(120000));
  CHECK(results["power.stop_reason"] == Json{{"value", "stop_at"}});
}

TEST_CASE("numbers are as short as can be and lose nothing") {
  const std::string text = json_report(specimen());
  CHECK(text.find("0.3333333333333333\n") == std::string::npos);  // followed by a comma or a bracket, never cut
  CHECK(text.find("0.3333333333333333,") != std::string::npos);
  CHECK(text.find("0.1,") != std::string::npos);
  CHECK(text.find("0.1000") == std::string::npos);
}

TEST_CASE("hostile texts cannot break out of their strings") {
  Assessment a = specimen();
  a.build = "\"}\n\\ \x1b[31m \t </script> \u2028 煙突";
  CHECK(Json::parse(json_report(a))["build"] == a.build);
  a.build = "a\xFF\xC3";  // no UTF-8: each bad byte becomes U+FFFD
  CHECK(Json::parse(json_report(a))["build"] == "a\uFFFD\uFFFD");
}

TEST_CASE("a number that is not finite is our mistake and never printed") {
  Assessment a = specimen();
  a.series[0].columns[0].si[0] = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(json_report(a), std::logic_error);
  a = specimen();
  a.results[0].high = Measure{AnyQuantity(std::numeric_limits<double>::infinity(), kind_of<MassFlow>)};
  CHECK_THROWS_AS(json_report(a), std::logic_error);
}

TEST_CASE("the complaint names the result") {
  Assessment a = specimen();
  a.results[0].low = Measure{AnyQuantity(std::numeric_limits<double>::quiet_NaN(), kind_of<MassFlow>)};
  CHECK_THROWS_WITH_AS(json_report(a), (a.results[0].key + ": the low end came to nan kg/s").c_str(), UnsoundNumber);
  CHECK_THROWS_WITH_AS(text_report(a, {}), (a.results[0].key + ": the low end came to nan kg/s").c_str(),
                       UnsoundNumber);
}

TEST_CASE("an assessment of nothing is still the whole object") {
  const Json report = Json::parse(json_report({}));
  CHECK(report["verdict"] == "unknown");
  CHECK(report["results"] == Json::object());
  CHECK(report["checks"] == Json::array());
  CHECK(report["series"] == Json::object());
}
