// What a club's records give to the next engine, held to clubs that were made up.
#include "tune/priors.hpp"
#include "data/tuning.hpp"
#include "near.hpp"
#include "plan/describe.hpp"
#include "tune/made_up_season.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <random>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::tune;

namespace {
PriorRecord record(const std::string& text) { return read_prior_record({"r.yaml", text}); }
}  // namespace

// The law of the class drawn by itself: a common value with half of the usual variance, engines apart with the other
// half.
TEST_CASE("of a thousand made-up clubs the next engine lies in the pooled 80 % band in about eight hundred") {
  std::mt19937 random(20261128);
  const auto normal = [&] { return std::normal_distribution<double>()(random); };
  const double half = std::sqrt(0.5);
  int inside = 0;
  double width = 0.0;
  const int clubs = 1000;
  for (int club = 0; club < clubs; ++club) {
    const double common = half * normal(), apart = half * std::exp(data::season_constant("scatter_spread") * normal());
    std::vector<ToldFactor> told;
    const int engines = std::uniform_int_distribution<int>(2, 12)(random);
    for (int i = 0; i < engines; ++i) {
      const double variance = std::pow(std::uniform_real_distribution<double>(0.1, 0.8)(random), 2);
      told.push_back({common + apart * normal() + std::sqrt(variance) * normal(), variance});
    }
    const Span band = next_engine(told);
    const double next = common + apart * normal();
    inside += next > band.low && next < band.high;
    width += (band.high - band.low) / clubs;
  }
  CHECK(inside >= 0.75 * clubs);
  CHECK(inside <= 0.88 * clubs);
  const Span alone = next_engine({});
  CHECK(width < 0.85 * (alone.high - alone.low));            // it is worth pooling
  CHECK(alone.high - alone.low == near(2.0 * 1.2816, 0.1));  // without records the usual band
}
TEST_CASE("records of one mind narrow the usual value of their class, those of another class do not") {
  const Build build = example("tarn-beck");
  const std::string fuel = *build.fuel.kind, fan = *build.fan.kind;
  std::vector<PriorRecord> records;
  for (const double heat : {0.82, 0.85, 0.84, 0.81, 0.86})
    records.push_back(record(fmt::format("fuel: {}\nfan: {}\nheat: {} +- 0.04\n", fuel, fan, heat)));
  records.push_back(record(fmt::format("fuel: coke\nfan: {}\nheat: 1.4 +- 0.04\n", fan)));
  const PooledPriors pooled = pooled_priors(build, records);
  CHECK(pooled.taken == 5);
  CHECK(pooled.left_out.size() == 1);
  CHECK(*pooled.file.tuned.heat == near(0.84, 0.03));
  const double half = 0.5 * (pooled.file.tuned.heat.band->high - pooled.file.tuned.heat.band->low);
  CHECK(half < 0.25);  // the usual one: 0.35
  CHECK(half > 0.04);  // engines of a class differ by more than what is not known of one
  CHECK_FALSE(pooled.file.tuned.fan_pressure);
  CHECK_THROWS_AS(pooled_priors(build, {records.back()}), ModelError);
}
TEST_CASE("an engine's record holds its factor, and no word of whose it is") {
  const Build build = example("tarn-beck");
  const Season season = season_read(MadeUpSeason(build, 7, {.least_days = 10}).text());
  const std::string text = write_prior_record(record_of(build, season));
  const PriorRecord again = record(text);
  CHECK(write_prior_record(again) == text);
  CHECK(again.heat);
  for (const std::string word : {"Tarn", "2026", "day", "name", "water", "mm"})
    CHECK(text.find(word, text.find('\n')) == std::string::npos);
}
TEST_CASE("what a club knows makes a single log tell more") {
  const Build build = example("tarn-beck");
  std::vector<PriorRecord> records;
  for (const double heat : {0.88, 0.9, 0.92, 0.9, 0.89, 0.91})
    records.push_back(
        record(fmt::format("fuel: {}\nfan: {}\nheat: {} +- 0.03\n", *build.fuel.kind, *build.fan.kind, heat)));
  const model::Tuning usual = tuning_of(pooled_priors(build, records).file);
  const Season season = season_of(read_log(
      {"l.yaml", "started_at: 14 degC\nreadings: [ {time: 6 min, water: 88 degC}, {time: 7 min, gauge: 0.3 bar} ]\n"}));
  const auto wide = [&](const model::Tuning* with) {
    const Span engine = tune::tune(build, season, with).fit.factors.front().engine;
    return std::log(engine.high / engine.low);
  };
  CHECK(wide(&usual) < 0.9 * wide(nullptr));
}
TEST_CASE("faults of a record, each with its place") {
  const auto said = [](const std::string& text) -> std::string {
    try {
      record(text);
    } catch (const input::InputError& e) {
      return e.what();
    }
    return "";
  };
  CHECK(said("fuel: coke\nheat: 0.9\n").find("r.yaml:2:7: heat: expected a spread behind the value") !=
        std::string::npos);
  CHECK(said("fuel: coke\nheat: 0.9\n").find("`fan` is missing") != std::string::npos);
  CHECK(said("fuel: coke\nfan: axial\n").find("nothing is told here") != std::string::npos);
  CHECK(said("fuel: coke\nfan: axial\nheat: -0.9 +- 0.1\n").find("expected more than 0") != std::string::npos);
  CHECK(said("fuel: coke\nfan: axial\nheat: 0.9 +- 0.1\nname: x\n").find("this key is not known") != std::string::npos);
}
