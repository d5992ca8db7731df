// One number, one text, one unit on a page: over builds that nobody wrote.
#include "description/random_build.hpp"
#include "plan/figures.hpp"
#include "plan/report_data.hpp"
#include "quantity/units.hpp"
#include "report/../plan/describe.hpp"
#include "report/answers.hpp"
#include "report/judged.hpp"
#include "report/picture/picture.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <regex>
#include <set>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
/// "12.5 min" as it stands in a sentence, a table or a picture.
struct Printed {
  std::string number, unit;
  std::string text() const { return number + " " + unit; }
};
std::vector<Printed> printed_in(const std::string& text) {
  static const std::regex number_and_unit(
      "(?:^|[^-\\w./])(\\d+(?:\\.\\d+)?) ([a-zA-Z%][a-zA-Z0-9/]*(?: [ag])?)(?![a-zA-Z0-9/])");
  std::vector<Printed> found;
  for (std::sregex_iterator it(text.begin(), text.end(), number_and_unit), end; it != end; ++it)
    if (find_unit((*it)[2].str()) != nullptr) found.push_back({(*it)[1], (*it)[2]});
  return found;
}
int figures_in(const std::string& number) {
  std::string digits;
  for (const char c : number)
    if (c != '.') digits += c;
  const auto first = digits.find_first_not_of('0');
  return first == std::string::npos ? 0 : static_cast<int>(digits.size() - first);
}
/// It is what comes of this quantity when it is rounded to as many figures, two at least.
bool stems_from(const Printed& p, AnyQuantity q) {
  const UnitRow* unit = find_unit(p.unit, q.kind);
  const int figures = figures_in(p.number);
  if (unit == nullptr || figures < 2 || figures > 5) return false;
  return format(q.kind.scale == Scale::ratio ? AnyQuantity(std::abs(q.si), q.kind) : q, p.unit, figures) == p.text();
}
struct Sentences {
  const Finding* finding;  // whose other numbers are known too; null for pictures
  std::string text, picture{};
};
std::vector<Sentences> sentences_of(const ReportData& data, const TextStyle& style) {
  std::vector<Sentences> all;
  for (const Finding& f : data.assessment.checks)
    all.push_back({&f, f.why + " " + f.action + " " + against_limit(f, data.assessment, style)});
  for (const auto& picture :
       {picture_of_draught, picture_of_losses, picture_of_raise, picture_of_supply, picture_of_fit}) {
    const Picture one = picture(data, style);
    all.push_back({nullptr, one.says + " " + one.description, one.id});
  }
  return all;
}
std::string family(std::string_view key) { return std::string(key.substr(0, key.find('.'))); }
/// A check that may tell of this result. Others have numbers of their own that may come out alike.
bool may_tell(const Sentences& s, const std::string& result) {
  const Finding* f = s.finding;
  if (f == nullptr) return s.picture == "losses" || !result.starts_with("draught.loss.");
  if (f->id == "fit.stock" || f->id == "power.fuse") return false;
  const std::string check = family(f->id), of = family(result);
  return check == of || (of == "raise" && (check == "heat" || check == "fire" || check == "power"));
}
/// How the numbers are told that the page knows: results, and terms and limits of the check.
std::set<std::string> rightly_told(const ReportData& data, const Finding* f, const TextStyle& style) {
  std::set<std::string> told;
  const auto add = [&](Measure m, int digits) {
    if (m.quantity.kind.scale == Scale::ratio) m.quantity.si = std::abs(m.quantity.si);
    told.insert(format(m.quantity, page_unit(m, style), digits));
  };
  for (const Result& result : data.assessment.results)
    if (const Measure* m = std::get_if<Measure>(&result.value)) add(*m, figures_of(result, style.units));
  if (f == nullptr) return told;
  if (f->id == "draught.cold")  // a U-tube's height of water stands beside the pressure that it is
    for (const char* key : {"draught.smokebox_depression", "draught.cold_smokebox_depression"})
      if (const Result* result = find_result(data.assessment, key))
        for (const char* unit : {"Pa", "mmH2O", "inH2O"})
          told.insert(format(std::get<Measure>(result->value).quantity, unit, figures_of(*result, style.units)));
  for (const int digits : {2, 3}) {
    for (const Term& term : f->terms)
      if (figures_of(data.assessment.results, term.value, style.units, 0) == 0) add(term.value, digits);
    if (f->limit) add(*f->limit, digits);
  }
  return told;
}
/// Numbers that are a result's, and are told otherwise than the result is.
int told_otherwise(const ReportData& data, const TextStyle& style) {
  int wrong = 0;
  for (const Sentences& s : sentences_of(data, style)) {
    const std::set<std::string> right = rightly_told(data, s.finding, style);
    for (const Printed& p : printed_in(s.text)) {
      if (right.count(p.text()) > 0) continue;
      for (const Result& result : data.assessment.results) {
        const Measure* m = std::get_if<Measure>(&result.value);
        if (m == nullptr || !may_tell(s, result.key) || !stems_from(p, m->quantity)) continue;
        CAPTURE(result.key);
        CAPTURE(s.text);
        INFO(p.text(), " for ", answer_text(result, style));
        CHECK(false);
        ++wrong;
      }
    }
  }
  return wrong;
}
/// The unit of each kind, a U-tube and a barometer apart; a length by its system.
std::string on_one_scale(const Measure& m, const TextStyle& style) {
  const std::string unit = page_unit(m, style);
  if (m.quantity.kind != kind_of<Length>) return unit;
  return unit == "in" || unit == "thou" || unit == "ft" ? "inches" : "metric";
}
/// A suction in the smokebox is read on a U-tube, and told so.
bool of_u_tube(const Assessment& a, const Measure& m) {
  for (const char* key : {"draught.smokebox_depression", "draught.cold_smokebox_depression"})
    if (const Result* result = find_result(a, key))
      if (std::get<Measure>(result->value).quantity.si == m.quantity.si) return m.unit.ends_with("H2O");
  return false;
}
bool chosen_once(Kind kind) {
  return kind == kind_of<Length> || kind == kind_of<Pressure> || kind == kind_of<GaugePressure> ||
         kind == kind_of<Temperature> || kind == kind_of<VolumeFlow>;
}
}  // namespace

TEST_CASE(
    "a result has one text on its page, in sentences, checks and pictures; of sixty builds, or as many as asked") {
  const UnitSystem systems[] = {UnitSystem::as_written, UnitSystem::metric, UnitSystem::imperial};
  for (unsigned number = 60000; number < 60000 + how_many_builds(60); ++number) {
    CAPTURE(number);
    const TextStyle style{.units = systems[number % 3]};
    const Build build = read_build({"random.yaml", RandomBuild(number, 0.95, number % 4 == 0).text()});
    const ReportData data =
        report_data(build, {.units = style.units, .tuning = nullptr, .samples = {.count = number % 2 ? 24U : 0U}});
    CHECK(told_otherwise(data, style) == 0);
  }
}

TEST_CASE("a kind has one unit on its page, but for what is quoted as it was written") {
  for (unsigned number = 61000; number < 61000 + how_many_builds(60); ++number) {
    CAPTURE(number);
    const Build build = read_build({"random.yaml", RandomBuild(number, 0.95, number % 4 == 0).text()});
    const Assessment a = assess(build);
    std::vector<std::pair<Kind, std::string>> seen;
    const auto look = [&](const Measure& m) {
      const bool barometer = m.quantity.kind == kind_of<Pressure> && std::abs(m.quantity.si) >= 3000.0;
      if (!chosen_once(m.quantity.kind) || m.quantity.si == 0.0 || barometer || of_u_tube(a, m)) return;
      const std::string unit = on_one_scale(m, {});
      for (const auto& [kind, other] : seen)
        if (kind == m.quantity.kind) {
          CHECK(unit == other);
          return;
        }
      seen.push_back({m.quantity.kind, unit});
    };
    for (const Result& result : a.results)
      if (const Measure* m = std::get_if<Measure>(&result.value)) look(*m);
    for (const Finding& f : a.checks) {
      CAPTURE(f.id);
      if (f.value && f.id != "engine.blast_nozzle") look(*f.value);
      for (const Term& term : f.terms)
        if (term.origin == Origin::computed) look(term.value);
    }
  }
}

TEST_CASE("the arrows of the fit picture are labelled with what they span, on the scale of its bar") {
  const ReportData data = report_data(example("tarn-beck"));
  const Markup page("figure");
  picture_of_fit(data, {}).draw(page.root(), "fit", 700.0);
  const std::string drawn = page.html();
  const auto all = [&](const char* pattern) {
    std::vector<std::smatch> found;
    const std::regex regex(pattern);
    for (std::sregex_iterator it(drawn.begin(), drawn.end(), regex), end; it != end; ++it) found.push_back(*it);
    return found;
  };
  const auto lines = all(R"re(class="axis" x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="\2")re");
  const auto labels = all(R"re(>([\d.]+) mm a side<)re"), bar = all(R"re(>([\d.]+) mm in all three<)re");
  REQUIRE(lines.size() == 4);  // an arrow in each panel, and the bar
  REQUIRE(labels.size() == 3);
  REQUIRE(bar.size() == 1);
  const auto length = [&](std::size_t i) { return std::stod(lines[i][3]) - std::stod(lines[i][1]); };
  const double scale = std::stod(bar[0][1]) / length(3);
  for (std::size_t i = 0; i < 3; ++i)
    CHECK(std::stod(labels[i][1]) == doctest::Approx(scale * length(i)).epsilon(0.01));
}
