// Banks and fans on their volts: at the limits and a hair on either side: verdict, value and the limit that decided.
// The limits stand here a second time, each from where the rule comes from; what is judged is set by hand in a solved
// build.
#include "power_bench.hpp"

using namespace lumwright;
using namespace lumwright::plan;

namespace {
const LimitTests power_bank_at_limits("a power bank: asleep, or asked for too much", [] {
  // ports 0.5 to 3 A (USB 2.0, Type-C), off below 50 to 100 mA (from memory)
  const std::string text = "load: { power: 1.8 W, voltage: 12 V }\nsupply:\n  pack: { cell: power bank }\n" + board;
  at_limits({"power.bank", text,
             [](Bench& b, double x) {
               b.supply().run.start.current = x * A;
               b.supply().run.end.current = 1.0 * A;
               most_current(b) = 0.4 * A;
             },
             Bound::at_least, 0.1, 0.05});
  const auto asked = [&](double x) {
    Bench bench(text);
    most_current(bench) = x * A;
    return bench.judge("power.bank").value();
  };
  const auto most = [&](double x) { return std::optional(asked(x)); };
  either_side({.id = "power.bank", .judge = most, .limit = 0.5, .below = 'p', .above = 'w', .on = 'p'});
  either_side({.id = "power.bank", .judge = most, .limit = 3.0, .below = 'w', .above = 'f', .on = 'w'});
  CHECK(limit(asked(3.0)) == doctest::Approx(0.5));
  CHECK(limit(asked(3.1)) == doctest::Approx(3.0));
});

const LimitTests volts_at_fan("volts at the fan: what it stands, what it starts on", [] {
  const std::string text = fan + lead_acid;
  const auto gets = [](Bench& b, double x) {
    b.supply().start.fan_voltage = x * V;
    b.supply().end.reset();
  };
  // sheets allow 10 to 15 % above the rating; they promise a start at 0.5 to 0.7 of it, single fans start at 0.3
  at_limits({"fan.voltage", text, gets, Bound::at_least, 7.2, 3.6});
  const auto judged = [&](const std::string& changed, const char* id, double x) {
    Bench bench(changed);
    gets(bench, x);
    return bench.judge(id).value();
  };
  const auto side = [&](const std::string& changed, const char* id, double at, char below, char above) {
    either_side({.id = id,
                 .judge = [&](double x) { return std::optional(judged(changed, id, x)); },
                 .limit = at,
                 .below = below,
                 .above = above});
  };
  side(text, "fan.voltage", 13.8, 'p', 'f');
  CHECK(limit(judged(text, "fan.voltage", 14.0)) == doctest::Approx(13.8));
  for (const char* id : {"fan.voltage", "power.start"}) {
    side(text, id, 7.2, 'w', 'p');
    side(text, id, 3.6, 'f', 'w');
    std::string stated = text;  // a fan that was tried starts where it was seen to start
    stated.insert(stated.find(" }\nsupply"), ", starts_at: 5 V, voltage_most: 15 V");
    side(stated, id, 5.0, 'f', 'p');
    side(stated, "fan.voltage", 15.0, 'p', 'f');
  }
  Bench tiring(text);
  tiring.supply().end->fan_voltage = 7.2 * (1 - 1e-9) * V;
  CHECK(tiring.judge("fan.voltage")->verdict == Verdict::watch);
  tiring.supply().end->fan_voltage = 7.2 * V;
  CHECK(tiring.judge("fan.voltage")->verdict == Verdict::pass);
  // six lead-acid blocks put 77 V on a fan for 12 V
  std::string blocks = text;
  blocks.replace(blocks.find("7 Ah }"), 6, "7 Ah, series: 6 }");
  CHECK(verdict(assess(described(blocks)), "fan.voltage") == Verdict::fail);
});
}  // namespace
