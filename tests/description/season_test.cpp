// The season's file: what goes into it, that nothing in it is ever changed, and what is refused.
#include "description/season.hpp"
#include "data/questions.hpp"
#include "description/interview.hpp"
#include "description/keys.hpp"
#include "near.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <random>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using std::chrono::sys_days;

namespace {
template <class F>
std::string season_complaint(F&& read, const std::string& text) {
  try {
    read(Source{"s.yaml", text});
  } catch (const InputError& e) {
    return e.what();
  }
  return "";
}
Log lit(const std::string& text) { return read_lighting_up({"log.yaml", text}); }
constexpr auto may = [](unsigned day) {
  return sys_days(std::chrono::year(2026) / std::chrono::May / static_cast<int>(day));
};
}  // namespace

// ISO 8601, 5.2.2.1: calendar date in the extended format; the rest by the Gregorian calendar
TEST_CASE("a day is read as a date, whatever stands behind it") {
  for (const char* text :
       {"2026-05-03", "2026-05-03, dry", "3 May 2026", "3 may 2026 dry", "03 May 2026", "3. May 2026"}) {
    CAPTURE(text);
    REQUIRE(day_of(text));
    CHECK(*day_of(text) == may(3));
  }
  for (const char* text : {"3 May", "3 May, dry", "2026-02-29", "2026-13-01", "31 June 2026", "3 Mai 2026", "May 2026",
                           "", "2026", "2026-05-03T10", "3 May 20260", "0 May 2026", "2026-05-"})
    CHECK_FALSE(day_of(text));
  CHECK(day_of("2028-02-29"));  // a leap year
  CHECK(day_text(may(3)) == "3 May 2026");
  for (int i = 0; i < 4000; ++i)
    CHECK(day_of(day_text(may(1) + std::chrono::days(i))) == may(1) + std::chrono::days(i));
}

TEST_CASE("what goes into a season comes back, and what stood there stays byte for byte") {
  std::mt19937 random(3);
  std::optional<Source> season;
  std::vector<unsigned> days;
  for (unsigned day = 1; day <= 30; ++day) days.push_back(day);
  std::shuffle(days.begin(), days.end(), random);
  for (const unsigned day : days) {
    const Log log = lit(fmt::format(
        "day: 2026-05-{:02}, dry\nplace: {{ air: {} degC }}\nwater: 428 ml +- 1 ml\npack: {{ put_back: {} mAh }}\n"
        "done: {{ swept: {} }}\nreadings:\n  - {{ time: 8:1{}, gauge: 1.2 bar +- 0.1 bar }}\n"
        "  - {{ time: 9:20, water: 104 degC, fuel: 11 g }}\nremarks: \"slow: the left side\"\n",
        day, day % 7, 600 + random() % 300, day % 5 == 0 ? "yes" : "no", day % 10));
    const std::string text = with_lighting_up(season, log);
    if (season) CHECK(text.starts_with(season->text));
    season = Source{"mine.season.yaml", text};
    const Season read = read_season(*season);
    const Log* found = same_lighting_up(read, log);
    REQUIRE(found != nullptr);
    CHECK(*found->day == *log.day);
    CHECK(*found->readings[0].time == *log.readings[0].time);
    CHECK(found->readings[0].gauge.band->low.above_barometer == log.readings[0].gauge.band->low.above_barometer);
    CHECK(*found->pack.put_back == *log.pack.put_back);
    CHECK(part::says_yes(found->done.swept) == (day % 5 == 0));
    CHECK(*found->remarks == "slow: the left side");
  }
  const Season all = read_season(*season);
  REQUIRE(all.lighting_ups.size() == 30);
  for (unsigned i = 0; i < 30; ++i) CHECK(all.lighting_ups[i].date() == may(i + 1));  // in the order of the days
  CHECK(season->text.find("time: 8:11") != std::string::npos);                        // as it was written
}
TEST_CASE("a season that its owner has written by hand is gone on with as it is indented") {
  for (const char* text : {"lighting_ups:\n- day: 2026-05-01\n  remarks: cold\n",
                           "lighting_ups:\n    -   day: 2026-05-01\n        remarks: cold",
                           "name: first\r\nlighting_ups:\r\n  - day: 2026-05-01\r\n    remarks: cold\r\n"}) {
    CAPTURE(text);
    const std::string more = with_lighting_up(Source{"s.yaml", text}, lit("day: 2026-05-02\nremarks: warm\n"));
    CHECK(more.starts_with(text));
    CHECK(read_season({"s.yaml", more}).lighting_ups.size() == 2);
  }
  // behind a key that stands last, or a list in brackets, nothing can be written
  for (const char* text : {"lighting_ups:\n  - day: 2026-05-01\n    remarks: cold\nname: first\n",
                           "lighting_ups: [ {day: 2026-05-01, remarks: cold} ]\n"}) {
    CAPTURE(text);
    const std::string said = season_complaint(
        [](const Source& source) { return with_lighting_up(source, lit("day: 2026-05-02\nremarks: warm\n")); }, text);
    CHECK(said.find("let `lighting_ups:` stand last in the file") != std::string::npos);
  }
}
TEST_CASE("faults of a season, each with its place") {
  struct Row {
    std::string text, expected;
  };
  const Row rows[] = {
      {"lighting_ups: []\n", "s.yaml:1:15: lighting_ups: expected 1 to 200 of them, got 0"},
      {"name: x\n", "lighting_ups: a season needs lighting-ups"},
      {"lighting_ups:\n  - day: 3 May\n    remarks: x\n",
       "s.yaml:2:10: lighting_ups.day: 1. of the list: expected a date, got '3 May'"},
      {"lighting_ups:\n  - remarks: x\n", "s.yaml:2:5: lighting_ups.day: 1. of the list: `day` is missing"},
      {"lighting_ups:\n  - day: 2026-05-03\n",
       "s.yaml:2:5: lighting_ups.readings: 1. of the list: nothing is told of this lighting-up"},
      {"lighting_ups:\n  - day: 2026-05-03\n    remarks: x\n  - day: 3 May 2026\n    remarks: y\n",
       "s.yaml:4:10: lighting_ups.day: 2. of the list: this day stands on line 2 already"},
      {"lighting_ups:\n  - day: 2026-05-03\n    readings: [ {time: 1 min, watter: 5 degC} ]\n",
       "s.yaml:3:31: lighting_ups.readings.watter: 1. of the list: 1. of the list: this key is not known"},
      {"lighting_ups:\n  - day: 2026-05-03\n    readings:\n      - { time: 2 min, water: 5 degC }\n      - { time: 1 "
       "min, water: 6 degC }\n",
       "s.yaml:5:17: lighting_ups.readings.time: 1. of the list: 2. of the list: expected no less than 2 min on line "
       "4"},
      {"lighting_ups:\n  - day: 2026-05-03\n    pack: { ran_flat: yes }\n    remarks: x\n",
       "s.yaml:3:23: lighting_ups.pack.ran_flat: 1. of the list: a pack that ran flat tells its capacity by "
       "`put_back`"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const std::string said = season_complaint(read_season, row.text);
    CAPTURE(said);
    CHECK(said.find(row.expected) != std::string::npos);
  }
  CHECK(season_complaint(
            read_season,
            "lighting_ups:\n  - day: 2026-05-03\n    remarks: x\n  - day: 2026-05-03\n    number: 2\n    remarks: y\n")
            .empty());
}
TEST_CASE("the interview takes a lighting-up answer by answer, and says what is wrong with one") {
  const std::vector<Key> keys = list_keys<Log>();
  for (const data::QuestionRow& row : data::log_questions())
    CHECK(std::any_of(keys.begin(), keys.end(), [&](const Key& key) { return key.path == row.key; }));
  LogInterview asked;
  CHECK(asked.take("day", "third of May").find("expected a date") != std::string::npos);
  CHECK(asked.take("day", "3 May 2026, dry").empty());
  CHECK(asked.take("water", "428 K").find("expected a volume") != std::string::npos);
  CHECK(asked.take("water", "428 g").empty());
  CHECK(asked.take("readings", "8:10 guage 1.2 bar").find("write the time and what was read then") !=
        std::string::npos);
  CHECK(asked.take("readings", "4:00 water 58 degC, fan current 0.16 A").empty());
  CHECK(asked.take("readings", "8:10: gauge 1,2 bar; fuel 11 g").empty());
  CHECK(asked.take("readings", "7:00 gauge 1 bar").find("expected no less than") != std::string::npos);
  CHECK(asked.take("pack.ran_flat", "").empty());
  const Log log = asked.log();
  REQUIRE(log.readings.size() == 2);
  CHECK(*log.readings[0].fan_current == near(0.16 * A, 1e-12));
  CHECK(*log.readings[1].time == near(490.0 * s, 1e-12));
  CHECK(in(log.readings[1].gauge.band->value.above_barometer, bar) == near(1.2, 1e-12));
  CHECK(*log.readings[1].fuel == near(11.0 * g, 1e-12));
}
