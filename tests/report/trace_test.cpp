#include "report/trace.hpp"
#include "quantity/format.hpp"
#include <charconv>
#include <doctest/doctest.h>
#include <limits>
#include <nlohmann/json.hpp>
#include <vector>

using namespace lumwright;
using namespace lumwright::boiler;
using namespace lumwright::plan;
using namespace lumwright::report;
using Json = nlohmann::ordered_json;
namespace {
Assessment traced() {  // made up; not a result of any model
  Assessment a;
  a.build = "Test Valley fan";
  a.series = {{"raise",
               {{"t", kind_of<Duration>, {0.0, 2.5, 1.0 / 3.0}},
                {"water_temperature", kind_of<Temperature>, {288.15, 300.0, 393.5}},
                {"gauge_pressure", kind_of<Pressure>, {0.0, 0.0, 1.0000000000000002e5}},
                {"air_flow", kind_of<MassFlow>, {4e-4, 3.5e-4, 1e-5}},
                {"fan_gas_temperature", kind_of<Temperature>, {}}}},
              {"discharge", {{"t", kind_of<Duration>, {0.0}}, {"pack_voltage", kind_of<Voltage>, {-0.2}}}}};
  a.events = {{RaiseEventKind::boils, 350.0 * s}, {RaiseEventKind::own_blower, 0.1 * s}};
  return a;
}
std::vector<std::vector<std::string>> cells(const std::string& csv) {  // of a table without quotes
  std::vector<std::vector<std::string>> out{{""}};
  for (const char c : csv) {
    if (c == ',')
      out.back().emplace_back();
    else if (c == '\n')
      out.emplace_back(1, "");
    else
      out.back().back() += c;
  }
  out.pop_back();  // behind the last line feed
  return out;
}
}  // namespace

TEST_CASE("a table: units in the head, a line for each time, nothing where nothing is known") {
  const std::string csv = trace_csv(traced(), "raise");
  CHECK(csv ==
        "t_s,water_temperature_K,gauge_pressure_Pa,air_flow_kg_per_s,fan_gas_temperature_K\n"
        "0,288.15,0,0.0004,\n"
        "2.5,300,0,0.00035,\n"
        "0.333333,393.5,100000,1e-05,\n");
  CHECK(trace_csv(traced(), "discharge") == "t_s,pack_voltage_V\n0,-0.2\n");
}

TEST_CASE("every number of the table reads back to six figures") {
  const Assessment a = traced();
  const auto table = cells(trace_csv(a, "raise"));
  REQUIRE(table.size() == 4);
  for (std::size_t i = 0; i < a.series[0].columns.size(); ++i)
    for (std::size_t row = 0; row < a.series[0].columns[i].si.size(); ++row) {
      const std::string& text = table[row + 1].at(i);
      double x = 0.0;
      CHECK(std::from_chars(text.data(), text.data() + text.size(), x).ec == std::errc());
      CHECK(x == doctest::Approx(a.series[0].columns[i].si[row]).epsilon(5e-6));
    }
}

TEST_CASE("a table in the units that are asked for, one a column") {  // hand: 288.15 K is 15 degC, 59 degF
  const std::string metric = trace_csv(traced(), "raise", UnitSystem::metric);
  CHECK(metric.find("water_temperature_degC") != std::string::npos);
  CHECK(metric.find("\n0,15,0,0.4,\n") != std::string::npos);
  CHECK(trace_csv(traced(), "raise", UnitSystem::imperial).find("\n0,59,0,") != std::string::npos);
}
TEST_CASE("text cannot become a formula or a second cell") {  // OWASP: CSV injection; RFC 4180, section 2
  Assessment a = traced();
  a.series[1].columns = {{"=1+1", Kind{}, {1.0}},       {"+a", Kind{}, {1.0}},    {"-a", Kind{}, {1.0}},
                         {"@sum(A1)", Kind{}, {1.0}},   {"\tx", Kind{}, {1.0}},   {"a,\"b\"", Kind{}, {1.0}},
                         {"=cmd\nnext", Kind{}, {1.0}}, {"plain=", Kind{}, {1.0}}};
  CHECK(trace_csv(a, "discharge") ==
        "'=1+1,'+a,'-a,'@sum(A1),'\tx,\"a,\"\"b\"\"\",\"'=cmd\nnext\",plain=\n1,1,1,1,1,1,1,1\n");
}

TEST_CASE("JSON: every series with its units, and the events of the raise") {
  const Assessment a = traced();
  const std::string text = trace_json(a, "");
  CHECK(text.ends_with("}\n"));
  const Json trace = Json::parse(text);
  CHECK(trace["format"] == "lumwright-trace/1");
  CHECK(trace["build"] == a.build);
  REQUIRE(trace["series"].size() == 2);
  for (const Series& series : a.series)
    for (const Series::Column& column : series.columns) {
      CHECK(trace["series"].at(series.name).at(column.name).get<std::vector<double>>() == column.si);
      CHECK(trace["units"].at(series.name).at(column.name) == si_symbol(column.kind));
    }
  CHECK(trace["events"] == Json{{{"kind", "boils"}, {"t", 350.0}}, {{"kind", "own_blower"}, {"t", 0.1}}});
  const Json one = Json::parse(trace_json(a, "discharge"));
  CHECK(one["series"].size() == 1);
  CHECK(one["units"]["discharge"]["pack_voltage"] == "V");
  CHECK(one["events"] == Json::array());
}

TEST_CASE("a series that is not there: the keys that would settle it, or what physics said") {
  const auto complaint = [](const Assessment& a, std::string_view series, bool json) -> std::string {
    try {
      json ? trace_json(a, series) : trace_csv(a, series);
    } catch (const NoAnswer& e) {
      return e.what();
    }
    return "";
  };
  Assessment a;
  a.checks = {{.id = "power.stop", .why = "the pack cannot drive this load"},
              {.id = "raise.time", .missing = {"engine.boiler.water", "fan.kind"}}};
  const std::string lacking = "steam raising cannot be worked out: the description lacks engine.boiler.water, fan.kind";
  CHECK(complaint(a, "raise", false) == lacking);
  CHECK(complaint(a, "raise", true) == lacking);
  CHECK(complaint(a, "", true) == lacking);
  const std::string weak = "the discharge of the pack cannot be worked out: the pack cannot drive this load";
  CHECK(complaint(a, "discharge", false) == weak);
  CHECK(complaint(a, "discharge", true) == weak);
  CHECK(complaint({}, "raise", false) == "steam raising cannot be worked out");
}

TEST_CASE("numbers that are not finite and ragged columns are our mistake and never printed") {
  Assessment a = traced();
  a.series[0].columns[1].si[2] = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(trace_csv(a, "raise"), std::logic_error);
  CHECK_THROWS_AS(trace_json(a, ""), std::logic_error);
  a = traced();
  a.series[0].columns[1].si.pop_back();
  CHECK_THROWS_AS(trace_csv(a, "raise"), std::logic_error);
}
