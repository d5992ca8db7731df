// One rule for verdicts: over every check of builds that nobody wrote, verdict, value, printed limit and counts of the
// samples agree. identity: the rule is what two_limits.hpp promises, read off the finding alone.
#include "description/random_build.hpp"
#include "findings.hpp"
#include "plan/detail/two_limits.hpp"
#include <doctest/doctest.h>
#include <set>
using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;

namespace {
bool within_limit(const Finding& f) {
  return f.bound == Bound::at_most ? value(f) <= limit(f) : value(f) >= limit(f);
}
/// By value and limit alone; nothing where no number is shown with a limit.
std::optional<Verdict> borne_out(const Finding& f) {
  if (!f.limit) return std::nullopt;
  if (f.limit_name == LimitName::not_to_fail) return within_limit(f) ? std::nullopt : std::optional(Verdict::fail);
  return within_limit(f) ? Verdict::pass : Verdict::watch;
}
int weight(Verdict verdict) { return verdict == Verdict::fail ? 2 : verdict == Verdict::watch ? 1 : 0; }

void check_as_described(const Finding& f) {
  CAPTURE(f.id);
  if (f.verdict == Verdict::unknown) {
    CHECK_FALSE(f.value);
    CHECK_FALSE(f.limit);
    return;
  }
  if (!f.limit) return;
  REQUIRE(f.value);  // a limit is a limit of something
  CHECK(f.value->quantity.kind.dimension == f.limit->quantity.kind.dimension);
  CHECK(f.value->quantity.kind.scale == f.limit->quantity.kind.scale);
  CHECK(borne_out(f) == std::optional(f.verdict));
}
/// The number before `word` in "it passes in 720, is to be watched in 280 of 1000 samples".
std::optional<double> number_behind(const std::string& text, const std::string& words) {
  const auto at = text.rfind(words);
  return at == std::string::npos ? std::nullopt : std::optional(std::stod(text.substr(at + words.size())));
}
void check_counts(const Finding& f, const Finding& described, double samples) {
  CAPTURE(f.id);
  CAPTURE(f.why);
  if (f.limit) {
    CHECK(value(f) == value(described));
    CHECK(limit(f) == limit(described));
  }
  CHECK(weight(f.verdict) >= weight(described.verdict));  // what may lie elsewhere makes nothing surer
  if (!f.holds) return;
  const auto passing = number_behind(f.why, "it passes in "), watched = number_behind(f.why, "is to be watched in ");
  CHECK(passing.has_value() == watched.has_value());
  const auto answered = static_cast<double>(f.answered);
  CHECK(answered <= samples);
  if (passing) CHECK(*passing + *watched == doctest::Approx(answered * *f.holds));
  if (f.verdict == Verdict::pass) CHECK(*f.holds >= 0.9);
  if (f.verdict == Verdict::pass && passing) CHECK(*passing >= 0.5 * answered);
  if (*f.holds < 0.5) CHECK(f.verdict == Verdict::fail);
}
}  // namespace

TEST_CASE("verdict, value, printed limit and counts agree over every check of five hundred builds") {
  std::set<std::string> judged;
  for (unsigned number = 0; number < how_many_builds(500); ++number) {
    const std::string text = RandomBuild(30000 + number, number % 5 == 0 ? 0.5 : 0.95, number % 2 == 0).text();
    CAPTURE(number);
    INFO(text);
    const Build build = read_build({"random.yaml", text});
    const Assessment plain = assess(build);
    for (const Finding& f : plain.checks) {
      check_as_described(f);
      if (f.limit) judged.insert(f.id);
    }
    if (number % 4 != 0) continue;
    constexpr std::size_t samples = 8;
    const Assessment sampled = assess(build, UnitSystem::as_written, nullptr, {.count = samples, .threads = 2});
    for (const Finding& f : sampled.checks)
      if (f.id != "raise.time")  // which keeps a reserve where no samples are drawn
        check_counts(f, finding(plain, f.id), samples);
  }
  CHECK(judged.size() >= 35);  // of 47 checks, those that hold a number against a limit
}

TEST_CASE("the graver of two sides is shown with its own value and limit, the first of equals") {
  Finding f;
  judge_by(f, {AnyQuantity(0.04), "%"}, {Bound::at_most, AnyQuantity(0.05), AnyQuantity(0.15)});
  CHECK_FALSE(and_by(f, {AnyQuantity(2.0), ""}, {Bound::at_least, AnyQuantity(1.0), std::nullopt}));
  CHECK(value(f) == 0.04);
  CHECK(and_by(f, {AnyQuantity(0.9), ""}, {Bound::at_least, AnyQuantity(1.0), std::nullopt}));
  CHECK(f.verdict == Verdict::watch);
  CHECK(value(f) == 0.9);
  CHECK(f.limit_name == LimitName::to_pass);
  CHECK(and_by(f, {AnyQuantity(0.2), "%"}, {Bound::at_most, AnyQuantity(0.05), AnyQuantity(0.15)}));
  CHECK(f.verdict == Verdict::fail);
  CHECK(limit(f) == 0.15);
  CHECK(f.bound == Bound::at_most);
  CHECK(f.limit_name == LimitName::not_to_fail);
  CHECK_FALSE(and_by(f, {AnyQuantity(0.1), "%"}, {Bound::at_most, AnyQuantity(0.05), AnyQuantity(0.15)}));
}

// seen to pass with "1.60 mm, at least 2.20 mm": a plate too thin to tap has nuts, and no number to hold against anything
TEST_CASE("a flange that takes nuts passes without a number") {
  const Assessment nuts = assess(example("tarn-beck", {{"38 mm, thickness: 1.6 mm", "38 mm, thickness: 0.6 mm"}}));
  const Finding& f = finding(nuts, "make.thread");
  CHECK(f.verdict == Verdict::pass);
  CHECK(says(f, "nuts"));
  CHECK_FALSE(f.value);
  CHECK_FALSE(f.limit);
}
