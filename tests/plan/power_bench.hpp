// A solved supply that may be tampered with, for tests of its checks.
#pragma once
#include "findings.hpp"
#include "plan/check.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <functional>
#include <memory>

namespace lumwright {
inline const Check& named(std::string_view id) {
  for (const Check& check : all_checks())
    if (check.id == id) return check;
  throw std::runtime_error("no check " + std::string(id));
}
inline std::string nimh(const std::string& more) {
  return "load: { power: 1.8 W, voltage: 12 V }\nplace: { air: 20 degC }\nsupply:\n"
         "  pack: { cell: NiMH AA, series: 4, capacity: 2000 mAh, condition: good }\n" +
         more;
}
inline const std::string board = "  step_up: { module: small 1.2 MHz, output: 12 V }\n";
inline const std::string wired = "  leads: { section: 0.25 mm2, length: 300 mm }\n  fuse: 1.25 A\n";
inline const std::string fan =
    "fan: { kind: axial, frame: 60 mm, thickness: 25 mm, rated: { voltage: 12 V, current: 0.15 A, speed: 4000 rpm } "
    "}\n";
inline const std::string lead_acid = "supply:\n  pack: { cell: lead-acid 12 V 7 Ah }\n" + wired;

/// A solved build that may be tampered with.
class Bench {
 public:
  explicit Bench(const std::string& text) : build_(std::make_unique<Build>(described(text))), solved_(solve(*build_)) {}
  SolvedSupply& supply() { return solved_.supply.value.value(); }
  Solved& all() { return solved_; }
  std::optional<Finding> judge(std::string_view id) const { return named(id).judge(solved_); }

 private:
  std::unique_ptr<Build> build_;
  Solved solved_;
};

struct AtLimits {
  const char* id;
  std::string text;
  std::function<void(Bench&, double)> set;
  Bound bound;
  std::optional<double> pass, fail;  // limits, SI: between pass and watch, between watch and fail
};
inline void at_limits(const AtLimits& c) {
  const std::string id = c.id;
  CAPTURE(id);
  const double inward = c.bound == Bound::at_most ? 1.0 - 1e-9 : 1.0 + 1e-9, outward = 2.0 - inward;
  const auto expect = [&](double x, Verdict verdict, double decided) {
    CAPTURE(x);
    Bench bench(c.text);
    c.set(bench, x);
    const auto found = bench.judge(c.id);
    REQUIRE(found);
    CHECK(found->verdict == verdict);
    REQUIRE(found->limit);
    CHECK(found->bound == c.bound);
    CHECK(limit(*found) == doctest::Approx(decided).epsilon(1e-6));
    CHECK(value(*found) == doctest::Approx(x).epsilon(1e-6));
    CHECK_FALSE(found->why.empty());
    if (verdict != Verdict::pass) CHECK_FALSE(found->action.empty());
  };
  const Verdict beyond = c.pass && c.fail && *c.pass == *c.fail ? Verdict::fail : Verdict::watch;
  if (c.pass) {
    expect(*c.pass * inward, Verdict::pass, *c.pass);
    expect(*c.pass * outward, beyond, *c.pass);
  }
  if (c.fail && beyond == Verdict::watch) {
    expect(*c.fail * inward, Verdict::watch, *c.pass);
    expect(*c.fail * outward, Verdict::fail, *c.fail);
  }
}
inline Current& most_current(Bench& b) { return b.supply().run.most_current; }
}  // namespace lumwright
