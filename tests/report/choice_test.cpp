// What is shown of a choice.
#include "report/choice.hpp"
#include "../choose/random_bin.hpp"
#include "description/random_build.hpp"
#include "description/reader.hpp"
#include "plan/assess.hpp"
#include "plan/cautions.hpp"
#include "report/html/choice.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::choose;
using namespace lumwright::report;

namespace {
std::string shed() {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/bins/tarn-beck-shed.yaml", std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
const Choice& choice() {
  static const Choice made = choose::choose(read_bin({"shed.yaml", shed()}));
  return made;
}
std::vector<std::string> lines(const std::string& text) {
  std::vector<std::string> out;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) out.push_back(line);
  return out;
}
}  // namespace

TEST_CASE("the page fits, names every engine and thing, and the best first") {
  for (const int width : {60, 80, 120}) {
    const std::string page = choice_report(choice(), {.width = width});
    for (const std::string& line : lines(page)) CHECK(line.size() <= static_cast<std::size_t>(width));
    for (const EngineChoice& engine : choice().engines) {
      CHECK(page.find("\n" + engine.engine + "\n") != std::string::npos);
      for (const ItemFate& item : engine.items) CHECK(page.find(item.name) != std::string::npos);
    }
    CHECK(page.find("One fan with its pack for all engines") != std::string::npos);
    CHECK(page.find("  1") < page.find("  2"));
  }
}

// As `check` tells them of each combination that is shown; our own rule.
TEST_CASE("the cautions of every combination that is shown are told, in text, JSON and page, and no others") {
  std::set<std::string> told, due;
  for (const Caution& one : choice().cautions) told.insert(one.id);
  for (const EngineChoice& engine : choice().engines)
    for (const Place& place : engine.places) {
      const Assessment a = assess(read_build({"place.yaml", place.description}), UnitSystem::as_written, nullptr);
      for (const Caution& one : a.cautions) due.insert(one.id);
    }
  for (const UnitChoice& unit : choice().for_all)
    for (const Serving& serving : unit.engines) {
      if (serving.description.empty()) continue;
      const Assessment a = assess(read_build({"unit.yaml", serving.description}), UnitSystem::as_written, nullptr);
      for (const Caution& one : a.cautions) due.insert(one.id);
    }
  CHECK(told == due);
  CHECK(told.contains("lithium-cells"));
  CHECK_FALSE(told.contains("lead-acid"));
  const std::string page = choice_report(choice(), {}), html = html_choice(choice(), {}, {});
  const auto json = nlohmann::json::parse(choice_json(choice()));
  CHECK(json["cautions"].size() == told.size());
  for (const Caution& one : choice().cautions) {
    CAPTURE(one.id);
    CHECK(page.find("\n  " + one.title + "\n") != std::string::npos);
    CHECK(html.find("<h3>" + one.title + "</h3>") != std::string::npos);
  }
}
TEST_CASE("a bin of which nothing can be shown gets the cautions of what is not known") {
  std::string little = shed();
  for (const std::string bore : {"bore: 17.60 mm +- 0.02 mm, ", "bore: 13.6 mm +- 0.02 mm, "}) {
    REQUIRE(little.find(bore) != std::string::npos);
    little.erase(little.find(bore), bore.size());
  }
  const Choice none = choose::choose(read_bin({"shed.yaml", little}));
  for (const EngineChoice& engine : none.engines) CHECK_FALSE(engine.lacking.empty());
  CHECK(none.cautions.size() == cautions_for({}, {}).size());
  CHECK(none.cautions.size() > 30);
}

TEST_CASE("the JSON holds the ranking in SI and the chart's dots") {
  const auto json = nlohmann::json::parse(choice_json(choice()));
  CHECK(json["format"] == "lumwright/1");
  const auto& engines = json["choice"]["engines"];
  REQUIRE(engines.size() == choice().engines.size());
  for (std::size_t e = 0; e < engines.size(); ++e) {
    const EngineChoice& engine = choice().engines[e];
    CHECK(engines[e]["engine"] == engine.engine);
    REQUIRE(engines[e]["places"].size() == engine.places.size());
    const Candidate& first = engine.places[0].candidate;
    CHECK(engines[e]["places"][0]["fan"] == first.fan);
    CHECK(engines[e]["places"][0]["to_steam"]["value"] == in(first.to_steam, unit::s));
    CHECK(engines[e]["places"][0]["to_steam"]["unit"] == "s");
    for (std::size_t p = 0; p < engine.places.size(); ++p) {
      const Candidate& c = engine.places[p].candidate;
      const auto& row = engines[e]["places"][p];
      CHECK(row["to_steam"]["value"] == in(c.to_steam, unit::s));
      CHECK(row["runtime"]["value"] == in(c.runtime, unit::s));
      CHECK(row["light_ups"] == c.light_ups);
      CHECK(row["mass"].is_null() == !c.mass.has_value());
      if (c.mass) CHECK(row["mass"]["value"] == in(*c.mass, unit::kg));
      CHECK(row["in_time"] == c.in_time);
      CHECK(row["enough"] == c.enough);
    }
    std::size_t lost = 0, on_front = 0, placed = 0;
    for (const auto& loss : engines[e]["losses"]) lost += loss["count"].get<std::size_t>();
    CHECK(lost < engine.judged.size());
    for (const auto& dot : engines[e]["chart"]) {
      on_front += dot["on_front"].get<bool>();
      placed += !dot["place"].is_null();
    }
    CHECK(on_front == engine.front.size());
    CHECK(placed == engine.places.size());
  }
}

TEST_CASE("the CSV holds every combination once, with its place or its reason") {
  const auto rows = lines(choice_csv(choice()));
  std::size_t all = 0, places = 0;
  for (const EngineChoice& engine : choice().engines) {
    all += engine.judged.size();
    for (const Place& place : engine.places) places += 1 + place.equals.size();
  }
  REQUIRE(rows.size() == all + 1);
  CHECK(rows[0] == "engine,fan,pack,step_up,tube,place,front,to_steam_s,light_ups,mass_kg,why_not");
  std::size_t placed = 0;
  std::vector<std::vector<std::string>> told;
  for (std::size_t i = 1; i < rows.size(); ++i) {
    CAPTURE(rows[i]);
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : rows[i]) {
      if (c == '"') quoted = !quoted;
      if (c == ',' && !quoted)
        cells.emplace_back();
      else
        cells.back() += c;
    }
    REQUIRE(cells.size() == 11);
    CHECK((cells[5] + cells[6]).empty() == !cells[10].empty());
    placed += !cells[5].empty();
    told.push_back(cells);
  }
  CHECK(placed == places);
  for (const EngineChoice& engine : choice().engines)
    for (std::size_t p = 0; p < engine.places.size(); ++p) {
      const Candidate& c = engine.places[p].candidate;
      const auto row = std::find_if(told.begin(), told.end(), [&](const std::vector<std::string>& cells) {
        return cells[0] == engine.engine && cells[1] == c.fan && cells[2] == c.pack && cells[3] == c.step_up &&
               cells[4] == c.tube;
      });
      REQUIRE(row != told.end());
      CAPTURE(c.fan);
      CHECK((*row)[5] == std::to_string(p + 1));
      if (c.mass) CHECK(std::stod((*row)[9]) == doctest::Approx(in(*c.mass, unit::kg)).epsilon(5e-6));
    }
}

// OWASP, CSV injection: a cell that begins with = + - @ is run as a formula by spreadsheets
TEST_CASE("a name that a spreadsheet would run is made harmless") {
  std::string text = shed();
  const std::string from = "name: quick 40 mm", to = "name: '=HYPERLINK(\"a\",\"b\")'";
  text.replace(text.find(from), from.size(), to);
  const std::string csv = choice_csv(choose::choose(read_bin({"shed.yaml", text})));
  CHECK(csv.find(",=") == std::string::npos);
  CHECK(csv.find(",\"'=HYPERLINK(\"\"a\"\",\"\"b\"\")\"") != std::string::npos);
}

TEST_CASE("the dots are those of places and front, the fastest first") {
  for (const EngineChoice& engine : choice().engines) {
    const auto dots = choice_dots(engine);
    CHECK(dots.size() >= std::max(engine.places.size(), engine.front.size()));
    CHECK(dots.size() <= engine.places.size() + engine.front.size());
    CHECK(std::is_sorted(dots.begin(), dots.end(),
                         [](const ChoiceDot& a, const ChoiceDot& b) { return a.to_steam < b.to_steam; }));
  }
}

// identity: every size of bin has a page, the least of all too, however short its names and narrow the paper.
TEST_CASE("a bin of one to twelve places has a page of 20 columns and more") {
  for (unsigned seed = 1; seed <= std::min(60U, how_many_builds(60)); ++seed) {
    const int n = static_cast<int>(seed);
    const BinSize size{1 + n % 3, 1 + n / 3 % 2, 1, 1 + n / 7 % 2, 1 + n % 2};
    std::string text = RandomBin(seed).text(size, true);
    if (seed % 2 == 0)
      for (const char* word : {"fan 00", "pack 00", "tube 00", "engine 00"})
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at))
          text.erase(at, std::string(word).size());
    CAPTURE(text);
    ChooseAsked asked;
    asked.places = 1 + seed % 12;
    const Choice made = choose::choose(read_bin({"bin.yaml", text}), asked);
    for (const int width : {20, 21, 33, 40, 80}) {
      std::string page;
      REQUIRE_NOTHROW(page = choice_report(made, {.width = width}));
      for (const std::string& line : lines(page)) CHECK(line.size() <= static_cast<std::size_t>(width));
    }
  }
}
