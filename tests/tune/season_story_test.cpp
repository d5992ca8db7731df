// What `season` tells, held to seasons that were made up.
#include "tune/season_story.hpp"
#include "description/random_build.hpp"
#include "near.hpp"
#include "plan/describe.hpp"
#include "tune/made_up_season.hpp"
#include <doctest/doctest.h>
#include <fstream>
#include <sstream>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::tune;

namespace {
const Due* find_due(const SeasonStory& story, Due::What what) {
  for (const Due& due : story.due)
    if (due.what == what) return &due;
  return nullptr;
}
}  // namespace

TEST_CASE("eight of ten lighting-ups lie in the band that those before them gave") {
  const Build build = example("tarn-beck");
  const GaugePressure gauge = *build.engine.boiler.own_blower_from;
  int inside = 0, all = 0, near_truth = 0, told = 0;
  for (unsigned seed = 1; seed <= how_many_builds(16); ++seed) {
    const MadeUpSeason made(build, seed, {});
    const SeasonStory story = season_story(build, season_read(made.text()));
    REQUIRE(story.days.size() == static_cast<std::size_t>(made.days()));
    for (const DayStory& day : story.days) {
      const auto truth = made.minutes_of(static_cast<int>(day.log), gauge);
      REQUIRE(truth);
      if (!day.expected) continue;
      ++all, inside += in(*truth, s) > day.expected->low && in(*truth, s) < day.expected->high;
      if (!day.was) continue;
      ++told, near_truth += std::abs(std::log(day.was->value / in(*truth, s))) < 0.05;
    }
  }
  CHECK(inside >= 0.72 * all);
  CHECK(inside <= 0.9 * all);
  CHECK(told > 0.9 * all);
  CHECK(near_truth > 0.95 * told);
}
TEST_CASE("what was expected of a day does not know what was read on it") {
  const Build build = example("tarn-beck");
  const auto last = [&](const std::string& water) {
    return season_story(
               build,
               season_read("lighting_ups:\n  - day: 2026-05-01\n    started_at: 14 degC\n    readings: [ {time: 4 min, "
                           "water: 60 degC}, {time: 6 min, water: 92 degC} ]\n  - day: 2026-05-05\n    started_at: 14 "
                           "degC\n    readings: [ {time: 4 min, water: " +
                           water + "} ]\n"))
        .days.back();
  };
  const DayStory cold = last("55 degC"), hot = last("65 degC");
  CHECK(cold.expected->low == near(hot.expected->low, 0.02));
  CHECK(cold.expected->high == near(hot.expected->high, 0.02));
  CHECK(cold.was->value > 1.03 * hot.was->value);
}
TEST_CASE("tubes that lose 2 % of the heat with each fire are to be swept, and sweeping brings the minutes back") {
  const Build build = example("tarn-beck");
  const MadeUpSeason::Ways sooty{.least_days = 10, .most_days = 10, .soot = -0.02};
  const std::string text = MadeUpSeason(build, 5, sooty).text();
  const SeasonStory story = season_story(build, season_read(text));
  const Due* sweep = find_due(story, Due::What::sweep);
  REQUIRE(sweep != nullptr);
  CHECK(sweep->now);
  REQUIRE(sweep->brings);
  REQUIRE(story.next);
  CHECK(sweep->brings->value < 0.92 * story.next->value);
  // three fires at 2 % each leave 94 %: not yet (hand)
  const MadeUpSeason::Ways few{.wrong = 0.0, .least_days = 4, .most_days = 4, .soot = -0.02};
  const SeasonStory young = season_story(build, season_read(MadeUpSeason(build, 5, few).text()));
  const Due* later = find_due(young, Due::What::sweep);
  CHECK((later == nullptr || !later->now));
}
TEST_CASE("a season of one log is told as well, and what is missing is said") {
  const Build build = example("tarn-beck");
  const SeasonStory story = season_story(
      build,
      season_of(read_log(
          {"l.yaml",
           "started_at: 14 degC\nreadings: [ {time: 4 min, water: 60 degC}, {time: 6 min, water: 92 degC} ]\n"})));
  REQUIRE(story.days.size() == 1);
  CHECK(story.days[0].expected);
  CHECK(story.due.empty());
  const Build bare =
      example("tarn-beck", {{"own_blower_from: 1.1 bar", "own_blower_from:"}, {"working: 3.5 bar", "working:"}});
  const Season season =
      season_of(read_log({"l.yaml", "readings: [ {time: 4 min, water: 60 degC}, {time: 6 min, water: 92 degC} ]\n"}));
  CHECK_THROWS_AS(season_story(bare, season), ModelError);
}
TEST_CASE("the season of the examples: soot is seen, its wrong readings are named, sweeping is due") {
  std::ifstream file(SOURCE_DIR "/examples/seasons/tarn-beck-2026.yaml");
  std::stringstream text;
  text << file.rdbuf();
  const SeasonStory story = season_story(example("tarn-beck"), season_read(text.str()));
  CHECK(find_due(story, Due::What::sweep) != nullptr);
  for (const TunedFactor& f : story.result.fit.factors)
    if (f.key == "tuned.heat") CHECK(f.drift->each.value < 0.0);
}
