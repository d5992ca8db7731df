// A season as a page and as a picture, of a story that was made up: what is told of it.
#include "quantity/words.hpp"
#include "report/picture/season.hpp"
#include "report/season.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <pugixml.hpp>
#include <string>
using namespace lumwright;
using namespace lumwright::report;

namespace {
struct Told {
  tune::SeasonStory story;
  description::Season season;
};
/// `days` lighting-ups, five days apart, each expected within 7 to 8 min; every third one took 9.
Told made_up(int days) {
  std::string text = "name: Tarn Beck\nlighting_ups:\n";
  Told told{};
  for (int i = 0; i < days; ++i) {
    const auto day = std::chrono::sys_days(std::chrono::year(2026) / 4 / 4) + std::chrono::days(5 * i);
    text += "  - day: " + description::day_text(day) + "\n    remarks: x\n";
    tune::DayStory one{static_cast<std::size_t>(i)};
    one.expected = tune::Span{450.0, 420.0, 480.0};
    const double was = i % 3 == 2 ? 540.0 : 440.0;
    one.was = tune::Span{was, was - 5.0, was + 5.0};
    one.heat = 0.9, one.heat_of_engine = {0.9, 0.85, 0.95};
    told.story.days.push_back(one);
  }
  told.story.gauge = {1.2 * bar};
  told.story.next = tune::Span{450.0, 430.0, 470.0};
  told.season = description::read_season({"s.yaml", text});
  return told;
}
std::size_t marks(const pugi::xml_document& document, const char* element, const char* look) {
  return document.select_nodes((std::string("//") + element + "[@class='" + look + "']").c_str()).size();
}
}  // namespace

TEST_CASE("the picture of a season has a bar for each lighting-up and the next, and a cross for each outside") {
  const Told told = made_up(12);
  pugi::xml_document document;
  REQUIRE(document.load_string(season_picture(told.story, told.season, {}).c_str()));
  CHECK(marks(document, "polygon", "band hot") == 13);
  CHECK(marks(document, "circle", "dot-hot") == 8);
  CHECK(marks(document, "line", "dot-bad") == 8);  // four crosses of two strokes
  CHECK(marks(document, "circle", "dot-cold") == 12);
}
TEST_CASE("the page of a season keeps to one screen, however long the season was") {
  for (const int days : {1, 3, 18, 60}) {
    CAPTURE(days);
    const Told told = made_up(days);
    const std::string page = season_report(told.story, told.season, {});
    std::size_t lines = 0;
    for (const std::string_view line : words(page, '\n')) {
      CHECK(characters(line) <= 80);
      ++lines;
    }
    CHECK(lines <= 38);  // two more head every page
    CHECK((page.find("and 42 before them") != std::string::npos) == (days == 60));
    CHECK(page.find("Next time, as described: 7:10 to 7:50") != std::string::npos);
  }
  const std::string page = season_report(made_up(3).story, made_up(3).season, {});
  CHECK(page.find("2 of 3 came") != std::string::npos);
  CHECK(page.find("7:00 to 8:00  9:00") != std::string::npos);
  CHECK(page.find("X\n") != std::string::npos);
  CHECK(page.find("Nothing is due") != std::string::npos);
}
TEST_CASE("what is due is told with its time, and with what it brings") {
  Told told = made_up(3);
  using What = tune::Due::What;
  told.story.due = {{What::sweep, true, {}, tune::Span{400.0, 390.0, 410.0}},
                    {What::reseat, false, tune::Span{4.2, 2.0, HUGE_VAL}, {}},
                    {What::cells, false, tune::Span{5.0, 3.0, 12.0}, {}}};
  const std::vector<std::string> said = due_words(told.story);
  REQUIRE(said.size() == 3);
  CHECK(said[0] == "Sweep the tubes: due now; it brings 7:30 back to about 6:40.");
  CHECK(said[1] == "Reseat smokebox door and lid: due in about 4 lighting-ups (2 to many more).");
  CHECK(said[2] == "Renew the cells: due in about 5 months (3 to 12).");
}
