#include "report/detail/bands.hpp"
#include "numeric/statistics.hpp"
#include "report/../plan/describe.hpp"
#include "report/json.hpp"
#include "report/text.hpp"
#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
using namespace lumwright;
using namespace lumwright::numeric;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;

namespace {
Assessment with_samples(const Build& build, std::size_t count, std::uint64_t seed, unsigned threads) {
  SamplesAsked asked;
  asked.count = count;
  asked.seed = seed;
  asked.threads = threads;
  return assess(build, UnitSystem::as_written, nullptr, asked);
}
}  // namespace

TEST_CASE("the same seed gives the same bytes on any number of threads, another seed does not") {
  const Build build = example("tarn-beck");
  const std::string once = json_report(with_samples(build, 150, 7, 1));
  for (unsigned threads = 1; threads <= 5; ++threads) CHECK(json_report(with_samples(build, 150, 7, threads)) == once);
  const auto results = [](const std::string& text) { return nlohmann::json::parse(text)["results"]; };  // not the seed itself
  CHECK(results(json_report(with_samples(build, 150, 8, 2))) != results(once));
}
TEST_CASE("what many samples show stands on the page and in the JSON") {
  Build hurried = example("tarn-beck");  // a wish that some samples miss
  hurried.want.steam_within.band = exactly(9.6 * minute);
  const Assessment a = with_samples(hurried, 200, 1, 2);
  const std::string page = text_report(a, TextStyle{});
  for (const char* words : {"What widens the answer, and what to measure next", "tuned.heat", "fails in none of 200 samples",
                            "of 100 samples", "200 samples, seed 1"}) {
    CAPTURE(words);
    CHECK(page.find(words) != std::string::npos);
  }
  const auto json = nlohmann::json::parse(json_report(a));
  CHECK(json["bands"]["samples"] == 200);
  CHECK(json["bands"]["answers"][0]["answer"] == "raise.to_own_blower");
  CHECK(json["bands"]["answers"][0]["widest"].size() >= 1);
  CHECK(json["bands"]["answers"][0]["widest"].size() <= 3);
  for (const auto& answer : json["bands"]["answers"])
    for (const auto& one : answer["widest"]) CHECK(one["share"] >= 3.0 * share_of_nothing(200));
  CHECK(json["results"]["raise.to_own_blower"]["low"] < json["results"]["raise.to_own_blower"]["high"]);
  for (const auto& check : json["checks"])
    if (check["id"] == "raise.time") CHECK(check["holds"] > 0.9);
  const std::string plain = text_report(assess(example("tarn-beck")), TextStyle{});
  CHECK(plain.find("fails in") == std::string::npos);
}
TEST_CASE("shares of samples in words") {
  const Bands bands{.samples = 1000, .seed = 1, .drawn = 3, .share_error = 0.02, .sensitivities = {}};
  CHECK(in_samples(1.0, bands) == "all 1000 samples");
  CHECK(in_samples(0.999, bands) == "more than 99 of 100 samples");
  CHECK(in_samples(0.995, bands) == "more than 99 of 100 samples");  // seen: "100 of 100", with one that fails
  CHECK(in_samples(0.934, bands) == "93 of 100 samples");
  CHECK(in_samples(0.001, bands) == "fewer than 1 of 100 samples");
  CHECK(in_samples(0.0, bands) == "none of 1000 samples");
}
TEST_CASE("how sure the samples are, in words") {  // hand
  const Bands bands{
      .samples = 1000, .seed = 7, .drawn = 3, .edge_error = 0.031, .share_error = 0.0158, .sensitivities = {}};
  CHECK(sureness(bands).starts_with("1000 samples, seed 7, 3 inputs drawn; a share is good to 1.6 in 100, the ends of "
                                    "the first band to 3.1 % of its width"));
}
TEST_CASE("without samples the page says that spreads are left out, with samples it does not") {
  const Build build = example("tarn-beck");
  const std::string words = "Spreads are left out";
  CHECK(text_report(with_samples(build, 0, 1, 1), TextStyle{}).find(words) != std::string::npos);
  CHECK(text_report(with_samples(build, 32, 1, 1), TextStyle{}).find(words) == std::string::npos);
  CHECK(without_spreads({}, description::FrontEnd::terminal).empty());  // nothing was judged
}
