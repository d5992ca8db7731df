// Builds that nobody wrote, assessed in many samples: numbers are numbers, balances close, bands hold their centre, and
// the verdict is what the checks bear out.
#include "description/random_build.hpp"
#include "draught/mass_balance.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "plan/assess.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::draught;
using namespace lumwright::boiler;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
bool has_word(const std::string& text, const std::string& word) {
  const auto letter = [&](std::size_t at) {
    return at < text.size() && std::isalpha(static_cast<unsigned char>(text[at]));
  };
  for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
    if ((at == 0 || !letter(at - 1)) && !letter(at + word.size())) return true;
  return false;
}
bool is_clean(const std::string& text) { return !has_word(text, "nan") && !has_word(text, "inf"); }

void check_numbers(const Assessment& a) {
  for (const Result& result : a.results) {
    CAPTURE(result.key);
    const Measure* value = std::get_if<Measure>(&result.value);
    if (value == nullptr) continue;
    CHECK(std::isfinite(value->quantity.si));
    if (result.low) CHECK(result.low->quantity.si <= value->quantity.si);
    if (result.high) CHECK(result.high->quantity.si >= value->quantity.si);
    if (result.share) CHECK(*result.share >= 0.0);
    if (result.share) CHECK(*result.share <= 1.0);
    if (result.key.ends_with("_share") || result.key == "raise.efficiency") CHECK(value->quantity.si >= 0.0);
  }
  for (const Series& series : a.series)
    for (const Series::Column& column : series.columns) {
      CHECK((column.si.empty() || column.si.size() == series.columns[0].si.size()));
      CHECK(std::all_of(column.si.begin(), column.si.end(), [](double x) { return std::isfinite(x); }));
    }
}
void check_findings(const Assessment& a) {
  bool fails = false, open = false;
  for (const Finding& f : a.checks) {
    CAPTURE(f.id);
    fails = fails || f.verdict == Verdict::fail;
    open = open || f.verdict != Verdict::pass;
    if (!is_clean(f.why) || !is_clean(f.action)) CAPTURE(f.why);
    CHECK(is_clean(f.why));
    CHECK(is_clean(f.action));
    CHECK((f.verdict != Verdict::unknown || !f.missing.empty() || !f.why.empty()));
    if (f.holds) CHECK(*f.holds >= 0.0);
    if (f.holds) CHECK(*f.holds <= 1.0);
    if (f.value && f.limit && f.verdict == Verdict::pass && f.bound == Bound::at_most)
      CHECK(f.value->quantity.kind.dimension == f.limit->quantity.kind.dimension);
  }
  CHECK(a.verdict == (fails ? Verdict::fail : open ? Verdict::watch : Verdict::pass));
}
/// Returns how many balances there were to close.
int check_balances(const Solved& solved) {
  int found = 0;
  if (solved.draught) {
    const PathFlow& flow = solved.draught->hot_flow;
    for (const NodeBalance& node : mass_balance(flow)) {
      CAPTURE(std::string(node.node));
      CHECK(std::abs(node.residual / flow.fan) < 1e-9);
    }
    ++found;
  }
  if (solved.raise) {
    const RaiseAccount& account = solved.raise->raise.account;
    const Energy spent = account.carbon_monoxide + account.bed + account.absorbed + account.stack + account.astray;
    if (account.chemical > 0.0 * unit::J) CHECK(std::abs(spent / account.chemical - 1.0) < 1e-6);
    ++found;
  }
  return found;
}
}  // namespace

TEST_CASE("five hundred builds in eight samples each, or as many as are asked for") {
  int balances = 0, verdicts[4] = {};
  for (unsigned seed = 0; seed < how_many_builds(500); ++seed) {
    const std::string text = RandomBuild(seed, seed % 5 == 0 ? 0.5 : 0.95, seed % 2 == 0).text();
    CAPTURE(seed);
    INFO(text);
    const Build build = read_build({"random.yaml", text});
    Assessment a;
    REQUIRE_NOTHROW(a = assess(build, UnitSystem::as_written, nullptr, {.count = 8, .threads = 2}));
    check_numbers(a);
    check_findings(a);
    balances += check_balances(solve(build));
    ++verdicts[static_cast<int>(a.verdict)];
  }
  if (!enough_builds(500)) return;
  CHECK(balances > 150);  // the generator makes builds that can be solved
  CHECK(verdicts[static_cast<int>(Verdict::fail)] > 50);
}
