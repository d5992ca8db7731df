// Checks at their limits: a solved build that may be tampered with, a judgement on either side of a limit, and a ledger
// of what was seen, from which limits_test.cpp tells what is not tested.
#pragma once
#include "findings.hpp"
#include "model/fan_unit.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_fan.hpp"
#include "model/solved_fit.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "plan/check.hpp"
#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <map>
#include <memory>
#include <set>

namespace lumwright {
/// What the tests have seen of one check. Verdicts by letter: p pass, w watch, f fail, u unknown, s a part stands
/// still,
/// - not asked. Limits by what they part, a hair apart: "pw", "wf", "pf", "-w".
struct SeenOf {
  std::set<char> verdicts;
  std::set<std::string> parted;
};
inline std::map<std::string, SeenOf, std::less<>>& ledger() {
  static std::map<std::string, SeenOf, std::less<>> all;
  return all;
}
inline char letter(const std::optional<plan::Finding>& f) {
  if (!f) return '-';
  if (!f->stands_still.empty()) return 's';
  return *plan::verdict_word(f->verdict);
}

/// Tests of checks at their limits, run by limits_test.cpp alone: what they have seen must be whole.
struct LimitTests {
  LimitTests(const char* words, void (*run)()) { all().push_back({words, run}); }
  static std::vector<std::pair<std::string, void (*)()>>& all() {
    static std::vector<std::pair<std::string, void (*)()>> tests;
    return tests;
  }
};

inline const plan::Check& named(std::string_view id) {
  for (const plan::Check& check : plan::all_checks())
    if (check.id == id) return check;
  throw std::runtime_error("no check " + std::string(id));
}

/// A solved build that may be tampered with.
class Bench {
 public:
  explicit Bench(const std::string& text, const model::Draw& draw = {})
      : build_(std::make_unique<description::Build>(described(text))), solved_(model::solve(*build_, draw)) {}
  /// With one tuned factor.
  Bench(const std::string& text, const std::string& key, double factor)
      : build_(std::make_unique<description::Build>(described(text))),
        tuning_(std::make_unique<model::Tuning>(
            model::Tuning{.file = "test.tuned.yaml", .values = {{key, {AnyQuantity(factor), factor, factor, ""}}}})),
        solved_(model::solve(*build_, {}, tuning_.get())) {}
  model::Solved& all() { return solved_; }
  model::SolvedSupply& supply() { return solved_.supply.value.own(); }
  model::SolvedDraught& draught() { return solved_.draught.value.own(); }
  model::SolvedFan& fan() { return solved_.fan.value.own(); }
  model::SolvedFit& fit() { return solved_.fit.value.own(); }
  model::SolvedRaise& raised() { return solved_.raise.value.own(); }
  model::FanUnit& unit() { return solved_.unit.value.own(); }
  std::optional<plan::Finding> judge(std::string_view id) const {
    auto found = named(id).judge(solved_);
    ledger()[std::string(id)].verdicts.insert(letter(found));
    return found;
  }

 private:
  std::unique_ptr<description::Build> build_;
  std::unique_ptr<model::Tuning> tuning_;
  model::Solved solved_;
};

/// What stands a hair below a limit, on it and a hair above.
struct EitherSide {
  const char* id;
  std::function<std::optional<plan::Finding>(double)> judge;
  double limit;
  char below, above;
  std::optional<char> on{};  // nothing: what is judged comes to the limit but for rounding
  double hair = 1e-9;        // of the limit; of one where that is zero
};
inline void either_side(const EitherSide& c) {
  const std::string id = c.id;
  CAPTURE(id);
  CAPTURE(c.limit);
  const double step = c.hair * (c.limit == 0.0 ? 1.0 : std::abs(c.limit));
  const char below = letter(c.judge(c.limit - step)), above = letter(c.judge(c.limit + step));
  CHECK(std::string{below, above} == std::string{c.below, c.above});
  if (c.on) CHECK(std::string{letter(c.judge(c.limit))} == std::string{*c.on});
  const std::string order = "-pwfs";  // the better one first
  std::string both = {below, above};
  if (order.find(both[0]) > order.find(both[1])) std::swap(both[0], both[1]);
  if (below != above) ledger()[id].parted.insert(both);
}

struct AtLimits {
  const char* id;
  std::string text;
  std::function<void(Bench&, double)> set;
  plan::Bound bound;
  std::optional<double> pass, fail;  // limits, SI: between pass and watch, between watch and fail
  bool rounded = false;              // what is set comes to the limit but for rounding
  double hair = 1e-9;                // of the limit
};
/// The verdict on either side of both limits, and everywhere the value, and the limit that decided.
inline void at_limits(const AtLimits& c) {
  const plan::Verdict beyond = c.pass && c.fail && *c.pass == *c.fail ? plan::Verdict::fail : plan::Verdict::watch;
  const auto judge = [&](double x) {
    Bench bench(c.text);
    c.set(bench, x);
    const auto found = bench.judge(c.id);
    REQUIRE(found);
    REQUIRE(found->limit);
    CHECK(found->bound == c.bound);
    const bool failed = found->verdict == plan::Verdict::fail;
    CHECK(limit(*found) == doctest::Approx(*(failed ? c.fail : c.pass)).epsilon(1e-6));
    CHECK(found->limit_name == (failed ? plan::LimitName::not_to_fail : plan::LimitName::to_pass));
    CHECK(value(*found) == doctest::Approx(x).epsilon(1e-6));
    CHECK_FALSE(found->why.empty());
    if (found->verdict != plan::Verdict::pass) CHECK_FALSE(found->action.empty());
    return found;
  };
  const auto side = [&](double at, char in, char out) {
    const bool most = c.bound == plan::Bound::at_most;
    either_side({.id = c.id,
                 .judge = judge,
                 .limit = at,
                 .below = most ? in : out,
                 .above = most ? out : in,
                 .on = c.rounded ? std::nullopt : std::optional(in),
                 .hair = c.hair});
  };
  if (c.pass) side(*c.pass, 'p', beyond == plan::Verdict::fail ? 'f' : 'w');
  if (c.fail && beyond == plan::Verdict::watch) side(*c.fail, 'w', 'f');
}
/// Unknown, and what would settle it.
inline void unknown(Bench& bench, const std::string& id, const std::vector<std::string>& keys) {
  CAPTURE(id);
  const auto found = bench.judge(id);
  REQUIRE(found);
  CHECK(letter(found) == 'u');
  CHECK(found->missing == keys);
  CHECK_FALSE(found->value);
  CHECK_FALSE(found->limit);
}
inline void not_asked(Bench& bench, const std::string& id) {
  CAPTURE(id);
  CHECK(letter(bench.judge(id)) == '-');
}
}  // namespace lumwright
