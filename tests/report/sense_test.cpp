// The text of builds that nobody wrote, read for sentences that make no sense; and one number in one unit, no finer
// than its band.
#include "description/random_build.hpp"
#include "model/solved.hpp"
#include "plan/assess.hpp"
#include "quantity/format.hpp"
#include "report/../plan/describe.hpp"
#include "report/answers.hpp"
#include "report/build_sheet.hpp"
#include "report/judged.hpp"
#include "report/text.hpp"
#include <doctest/doctest.h>
#include <regex>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
std::string in_one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\n';
    if (!blank || (!out.empty() && out.back() != ' ')) out += blank ? ' ' : c;
  }
  return out;
}
std::size_t times_in(const std::string& text, const std::string& words) {
  std::size_t count = 0;
  for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++count;
  return count;
}
void says_no_nonsense(const Finding& f) {
  static const std::regex nonsense(
      "about 0 |of cool air for|sideways by -|1 in -|-[0-9.]+ \\S+ of wall|stands it there|[0-9]e[+-][0-9]|"
      "by [0-9]{3,} in every 100|gap is -|-[0-9.]+ \\S+ of tin|up 0\\.[0-9]+ times");
  for (const std::string& text : {f.why, f.action}) {
    CAPTURE(f.id);
    CAPTURE(text);
    CHECK_FALSE(std::regex_search(text, nonsense));
  }
}
void names_no_raw_result(const Assessment& a, const std::string& text) {
  for (const Result& result : a.results) {
    CAPTURE(result.key);
    CHECK(text.find(" " + result.key + " ") == std::string::npos);
  }
}
/// Checks that one cause stops: the first says it, the others wait.
int tells_each_message_once(const Assessment& a, const std::string& text) {
  int waiting = 0;
  for (const Finding& f : a.checks) {
    waiting += f.why.starts_with("no answer while ") ? 1 : 0;
    if (f.stands_still.empty()) continue;
    CAPTURE(f.why);
    CHECK(f.verdict == Verdict::fail);
    CHECK(times_in(text, "why " + f.why + " do ") == 1);
  }
  return waiting;
}
}  // namespace

TEST_CASE("two hundred builds in sentences that make sense, or as many as are asked for") {
  int several = 0;
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    const std::string description = RandomBuild(number, number % 5 == 0 ? 0.5 : 0.95, number % 2 == 0).text();
    CAPTURE(number);
    const Assessment a = assess(read_build({"random.yaml", description}));
    const std::string text = in_one_line(text_report(a, {}));
    for (const Finding& f : a.checks) says_no_nonsense(f);
    names_no_raw_result(a, text);
    several += tells_each_message_once(a, text);
  }
  if (!enough_builds(200)) return;
  CHECK(several > 20);  // there were messages to tell once
}

TEST_CASE("the build sheets of two hundred builds make sense, or of as many as are asked for") {
  // seen: "2.036e+04 um", "A U-tube should read 4.63 Pa", "a 83 mm frame", "cold, hot fails", a table of nothing but
  // its head
  const std::regex nonsense(
      "[0-9]e[+-][0-9]|should read [0-9.]+ Pa|has a [0-9.]+ mm frame|\\], [^.]*\\] fails\\.|of cut In this");
  int sheets = 0, readings = 0;
  for (unsigned number = 40000; number < 40000 + how_many_builds(200); ++number) {
    CAPTURE(number);
    const Build build =
        read_build({"random.yaml", RandomBuild(number, number % 5 == 0 ? 0.5 : 0.95, number % 2 == 0).text()});
    const Solved solved = solve(build);
    if (!solved.unit) continue;
    const std::string text = in_one_line(build_sheet(assess(build), solved, {}));
    ++sheets;
    readings += times_in(text, "mmH2O (") > 0 ? 1 : 0;
    std::smatch found;
    const bool bad = std::regex_search(text, found, nonsense);
    CAPTURE((bad ? found.str() : ""));
    CHECK_FALSE(bad);
  }
  if (!enough_builds(200)) return;
  CHECK(sheets > 50);
  CHECK(readings > 5);
}

TEST_CASE("a number with a band is printed no finer than two figures of half the band, in value and check alike") {
  const auto result = [](double value, double low, double high) {
    const auto minutes = [](double x) { return Measure{Duration(x * minute), "min"}; };
    return Result{.key = "raise.to_own_blower", .value = minutes(value), .low = minutes(low), .high = minutes(high)};
  };
  CHECK(answer_text(result(5.2649, 3.4, 7.1), {}) == "5.3 min  (3.4 to 7.1 min)");      // +-35 %: half is 1.85
  CHECK(answer_text(result(7.004, 6.0905, 8.97), {}) == "7.0 min  (6.1 to 9.0 min)");   // half is 1.44
  CHECK(answer_text(result(7.004, 6.99, 7.02), {}) == "7.00 min  (6.99 to 7.02 min)");  // three figures at most
  Assessment a;
  a.results = {result(5.2649, 3.4, 7.1)};
  Finding f{.id = "raise.time", .verdict = Verdict::pass, .value = std::get<Measure>(a.results[0].value)};
  CHECK(against_limit(f, a, {}) == "5.3 min");
}

TEST_CASE("a span never reads \"17.6 to 17.6 mm\"") {
  const auto span = [](double low, double high) {
    return show_span({low * mm, "mm"}, {high * mm, "mm"}, {low * mm, "mm"}, {});
  };
  CHECK(span(17.6, 17.9) == "17.6 to 17.9 mm");
  CHECK(span(17.61, 17.64) == "17.61 to 17.64 mm");
  CHECK(span(17.6, 17.6) == "17.6 mm");
}

TEST_CASE("all temperatures of a page are in one unit, that of the air as written") {
  Build build = example("tarn-beck");
  build.place.air.unit = "degF";  // its value stays
  const Assessment a = assess(build);
  int seen = 0;
  for (const Finding& f : a.checks) {
    CAPTURE(f.id);
    CHECK(f.why.find("degC") == std::string::npos);
    CHECK(f.action.find("degC") == std::string::npos);
    for (const Term& term : f.terms)
      if (term.value.quantity.kind == kind_of<Temperature>) {
        CHECK(term.value.unit == "degF");
        CHECK(show(term.value, {}).find("degF") != std::string::npos);
        ++seen;
      }
  }
  CHECK(seen > 10);
  for (const Assumed& one : a.assumed) {
    CAPTURE(one.key);
    CHECK((one.value + one.band).find("degC") == std::string::npos);
  }
}

TEST_CASE("a unit that makes a number nobody reads gives way to the usual one") {
  const auto shown = [](AnyQuantity q, const char* unit) { return show({q, unit}, {}, 2); };
  CHECK(shown(Duration(0.738 * s), "min") == "0.74 s");  // seen: "passes 60 degC after 0.0123 min"
  CHECK(shown(Duration(558.0 * s), "ns") == "9.3 min");
  CHECK(shown(Duration(420.0 * s), "min") == "7.0 min");
  CHECK(shown(Length(0.196 * mm), "m") == "0.20 mm");
}
