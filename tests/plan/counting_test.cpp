// How samples are counted: what each makes of a check, and what their shares make of its verdict.
#include "findings.hpp"
#include "near.hpp"
#include "plan/check.hpp"
#include "plan/detail/bands.hpp"
#include "plan/samples.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <map>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
struct Answers {
  std::size_t passes, watched, fails, still, no_answer;
};
/// A check that is judged `verdict` as described, with these samples of it.
Finding counted(Verdict verdict, const Answers& n) {
  SampleCheck column{"fit.cold", {}};
  const auto add = [&](std::size_t count, Sampled answer) {
    column.answers.insert(column.answers.end(), count, answer);
  };
  add(n.passes, Sampled::passes);
  add(n.watched, Sampled::watched);
  add(n.fails, Sampled::fails);
  add(n.still, Sampled::still);
  add(n.no_answer, Sampled::no_answer);
  Assessment a;
  a.checks = {{.id = "fit.cold", .verdict = verdict}};
  const Build none = described("name: none");
  const Solved solved = solve(none);
  const std::size_t count = column.answers.size();
  add_bands(a, solved, Samples{.count = count, .checks = {column}}, SamplesAsked{.count = count});
  return a.checks.front();
}
std::map<std::string, std::map<Sampled, std::size_t>> sampled(const std::string& text, std::size_t count) {
  const Build build = described(text);
  SamplesAsked asked;
  asked.count = count;
  asked.threads = 2;
  const Samples samples = try_samples(build, solve(build), nullptr, asked);
  std::map<std::string, std::map<Sampled, std::size_t>> out;
  for (const SampleCheck& check : samples.checks) {
    CHECK(check.answers.size() == count);
    for (const Sampled answer : check.answers) ++out[check.key][answer];
  }
  return out;
}
using Of = std::map<Sampled, std::size_t>;
}  // namespace

TEST_CASE("shares are of the samples that answer, and what stands still does not hold") {  // hand
  const Finding f = counted(Verdict::pass, {60, 25, 3, 2, 10});
  CHECK(*f.holds == near(85.0 / 90.0, 1e-12));
  CHECK(f.answered == 90);
  CHECK(f.verdict == Verdict::pass);
  CHECK(says(f, "it passes in 60, is to be watched in 25 of the 90 samples that answer it"));
  CHECK(says(counted(Verdict::pass, {75, 25, 0, 0, 0}), "it passes in 75, is to be watched in 25 of 100 samples"));
  CHECK(*counted(Verdict::pass, {0, 0, 0, 10, 0}).holds == 0.0);
  CHECK_FALSE(counted(Verdict::pass, {0, 0, 0, 0, 10}).holds);
}

TEST_CASE("nine in ten are enough to pass, half of them not to fail, and half must pass without a watch") {  // hand
  CHECK(counted(Verdict::pass, {90, 0, 10, 0, 0}).verdict == Verdict::pass);
  CHECK(counted(Verdict::pass, {899, 0, 101, 0, 0}).verdict == Verdict::watch);
  CHECK(counted(Verdict::pass, {50, 0, 50, 0, 0}).verdict == Verdict::watch);
  CHECK(counted(Verdict::pass, {499, 0, 501, 0, 0}).verdict == Verdict::fail);
  CHECK(counted(Verdict::watch, {0, 499, 501, 0, 0}).verdict == Verdict::fail);
  CHECK(counted(Verdict::watch, {0, 50, 50, 0, 0}).verdict == Verdict::watch);
  CHECK(counted(Verdict::pass, {50, 50, 0, 0, 0}).verdict == Verdict::pass);
  CHECK(counted(Verdict::pass, {499, 501, 0, 0, 0}).verdict == Verdict::watch);
  CHECK(counted(Verdict::fail, {100, 0, 0, 0, 0}).verdict == Verdict::fail);  // as described it fails
  for (const Finding& f : {counted(Verdict::pass, {0, 0, 9, 1, 0}), counted(Verdict::pass, {80, 0, 20, 0, 0})})
    CHECK_FALSE(f.action.empty());
}

TEST_CASE("a sample is counted as what its check finds there") {
  const auto all = sampled(
      "place: { air: 20 degC +- 5 K }\nload: { power: 1.8 W, voltage: 12 V }\nsupply:\n"
      "  pack: { cell: NiMH AA, series: 4 }\n  step_up: { module: small 1.2 MHz, output: 12 V }\n",
      17);
  CHECK(all.at("power.fuse") == Of{{Sampled::watched, 17}});     // none is described
  CHECK(all.at("power.leads") == Of{{Sampled::no_answer, 17}});  // nor are the wires
  CHECK(all.at("fit.cold") == Of{{Sampled::no_answer, 17}});     // nor a tube
  CHECK(all.at("fire.start") == Of{{Sampled::no_answer, 17}});   // not asked
  CHECK(all.at("power.step_up_output") == Of{{Sampled::passes, 17}});
}

TEST_CASE("one cause is counted once in a sample: the first check that it stops fails, the others give no answer") {
  const auto all =
      sampled("load: { power: 500 W, voltage: 12 V }\nsupply:\n  pack: { cell: NiMH AA, series: 4 }\n", 17);
  std::size_t still = 0, silent = 0;
  for (const char* id : {"power.light_ups", "power.stop", "power.start", "power.leads"}) {
    const Of& of = all.at(id);
    still += of.contains(Sampled::still) ? of.at(Sampled::still) : 0;
    silent += of.contains(Sampled::no_answer) ? of.at(Sampled::no_answer) : 0;
  }
  CHECK(still == 17);
  CHECK(silent == 3 * 17);
}

TEST_CASE("every sample is tried, the last one too, whatever their number") {
  const Build build = example("tarn-beck");
  for (const std::size_t count : {1, 7, 8, 9, 17}) {
    CAPTURE(count);
    SamplesAsked asked;
    asked.count = count;
    asked.threads = 2;
    const Samples samples = try_samples(build, solve(build), nullptr, asked);
    const SampleColumn* air = find_column(samples.results, "draught.air_flow");
    REQUIRE(air != nullptr);
    CHECK(air->si.size() == count);
    CHECK(std::none_of(air->si.begin(), air->si.end(), [](double x) { return std::isnan(x); }));
  }
}

TEST_CASE("a spread with tails has a tenth below its low end and a tenth above its high end") {
  const Input spread{AnyQuantity(2.0), 1.5, 5.0, "", Origin::assumed, true};
  CHECK(drawn_from(spread, "x", 0.1) == near(1.5, 1e-9));
  CHECK(drawn_from(spread, "x", 0.5) == near(2.0, 1e-9));
  CHECK(drawn_from(spread, "x", 0.9) == near(5.0, 1e-9));
}

TEST_CASE("a share of one half is good to half of one over the root of the samples") {  // binomial: sqrt(p (1 - p) / n)
  const Assessment a = assess(example("tarn-beck"), UnitSystem::as_written, nullptr, SamplesAsked{.count = 64});
  CHECK(a.bands->share_error == near(0.5 / 8.0, 1e-12));
}
