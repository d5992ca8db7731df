// Every check of the supply at its limits and a hair on either side: verdict, value and the limit that decided. The
// limits stand here a second time, each from where the rule comes from; what is judged is set by hand in a solved
// build.
#include "power_bench.hpp"

using namespace lumwright;

TEST_CASE("current of the cells at its limits") {
  // NiMH AA of 2 Ah: happy up to 2 It, to 5 It for a short time (Linden's Handbook of Batteries, ch. 22, from memory)
  at_limits({"power.cells", nimh(board + wired), [](Bench& b, double x) { most_current(b) = x * A; }, Bound::at_most,
             4.0, 10.0});
  // two strings share it
  at_limits({"power.cells", nimh(board + wired),
             [](Bench& b, double x) {
               b.supply().pack_input.parallel = 2;
               most_current(b) = 2.0 * x * A;
             },
             Bound::at_most, 4.0, 10.0});
}

TEST_CASE("currents: fuse, wires and step-up at their limits") {
  // UL 248-14: 75 % of the rating for ever; 1.25 A
  at_limits({"power.fuse", nimh(board + wired), [](Bench& b, double x) { most_current(b) = x * A; }, Bound::at_most,
             0.9375, 0.9375});
  // IEC 60127-2: 2.1 times the rating opens it for certain
  const auto shorted = [](double amperes) {
    Bench bench(nimh(board + wired));
    Pack& pack = bench.supply().pack;
    pack.inside = 0.75 * ohm;
    pack.outside = 0.25 * ohm;
    pack.curve.voltage.front() = amperes * V;
    return bench.judge("power.fuse").value();
  };
  CHECK(shorted(2.625 * (1 + 1e-9)).verdict == Verdict::pass);
  CHECK(shorted(2.625 * (1 - 1e-9)).verdict == Verdict::fail);
  CHECK(limit(shorted(2.6)) == doctest::Approx(2.625));
  CHECK(value(shorted(2.6)) == doctest::Approx(2.6));
  CHECK(shorted(2.6).bound == Bound::at_least);
  // common practice: 3 % of the voltage
  at_limits({"power.leads",
             nimh(board + wired),
             [](Bench& b, double x) {
               b.supply().leads = 0.1 * ohm;
               b.supply().run.end.voltage = 4.0 * V;
               most_current(b) = 10.0 * x * A;
             },
             Bound::at_most,
             0.12,
             {}});
  // the small board carries 0.8 A for long (independent test of 2023); a tenth less is kept in hand
  at_limits({"power.step_up_input", nimh(board + wired), [](Bench& b, double x) { most_current(b) = x * A; },
             Bound::at_most, 0.72, 0.8});
}

TEST_CASE("a fuse is rated at 0.69 of what its wire carries at most") {
  // gauge 24, 0.205 mm2: 3.5 A in free air (chassis wiring tables, from memory); IEC 60364-4-43: 1/1.45
  const auto verdict_with = [&](const std::string& leads) {
    return Bench(nimh(board + leads)).judge("power.fuse_wire").value();
  };
  const std::string wire = "  leads: { section: 0.205 mm2, length: 300 mm }\n";
  CHECK(verdict_with(wire + "  fuse: 2.4149999 A\n").verdict == Verdict::pass);
  const Finding beyond = verdict_with(wire + "  fuse: 2.4150001 A\n");
  CHECK(beyond.verdict == Verdict::fail);
  CHECK(limit(beyond) == doctest::Approx(0.69 * 3.5).epsilon(1e-9));
  CHECK(says(beyond, "0.220 mm2"));  // the next on sale: 3.77 A, 2.6 A of fuse
  // seen to pass: 10 A on 0.05 mm2, 2.5 A on 0.14 mm2
  CHECK(verdict_with("  leads: { section: 0.05 mm2, length: 300 mm }\n  fuse: 10 A\n").verdict == Verdict::fail);
  CHECK(verdict_with("  leads: { section: 0.14 mm2, length: 300 mm }\n  fuse: 2.5 A\n").verdict == Verdict::fail);
  CHECK(verdict_with("  leads: { section: 0.34 mm2, length: 300 mm }\n  fuse: 1 A\n").verdict == Verdict::pass);
  const Finding unknown = verdict_with("  fuse: 1 A\n");
  CHECK(unknown.verdict == Verdict::unknown);
  CHECK(unknown.missing == std::vector<std::string>{"supply.leads.section"});
}

TEST_CASE("start, sag and weak cell at their limits") {
  // a starting fan asks for 2.5 times its running current; 1.5 of that is in hand, 1.0 is the end: E^2 / 4R over 2.5 P
  const auto with_margin = [](Bench& b, double margin) {
    SolvedSupply& s = b.supply();
    s.run.end.open_circuit = 5.0 * V;
    s.run.end.voltage = 1.0 * V;
    s.run.end.current = 1.0 * A;
    s.pack.inside_at_once = 25.0 / (4.0 * 2.5 * margin) * ohm;
    s.pack.outside = 0.0 * ohm;
    s.pack.inside = 99.0 * ohm;  // what holds for an hour does not count
  };
  at_limits({"power.start", nimh(board + wired), with_margin, Bound::at_least, 1.5, 1.0});
  // similarity: pressure with the square of speed; 70 % is a judgement (estimate)
  at_limits({"power.sag",
             nimh(wired + fan),
             [](Bench& b, double x) {
               b.supply().start.speed = 1.0;
               b.supply().end->speed = std::sqrt(x);
             },
             Bound::at_least,
             0.7,
             {}});
  // makers' rule for NiMH: 1.2 V for each cell but one; a minute backwards is too long (estimate)
  at_limits({"power.weak_cell",
             nimh(board + wired),
             [](Bench& b, double x) {
               b.supply().with_weak_cell->weak->in_reversal = 0.0 * unit::s;
               b.supply().with_weak_cell->end.voltage = x * V;
             },
             Bound::at_least,
             3.6,
             {}});
}

TEST_CASE("the least input of a step-up, at its limits, and a minute backwards") {
  // the small board misbehaves below 2.5 V, the 400 kHz one below 4.0 V and is then dangerous; 2 % in hand (estimate)
  const auto ends_at = [](Bench& b, double x) {
    b.supply().run.reason = StopReason::stop_at;
    b.supply().run.end.voltage = x * V;
  };
  at_limits({"power.step_up_minimum", nimh(board + wired), ends_at, Bound::at_least, 2.55, {}});
  at_limits({"power.step_up_minimum", nimh("  step_up: { module: 3-35 V 400 kHz, output: 12 V }\n" + wired), ends_at,
             Bound::at_least, 4.08, 4.08});
  for (const StopReason reason : {StopReason::collapse, StopReason::step_up_minimum}) {  // nothing stops it above
    Bench bench(nimh(board + wired));
    bench.supply().run.reason = reason;
    bench.supply().run.end.voltage = 5.0 * V;
    const Finding f = bench.judge("power.step_up_minimum").value();
    CHECK(f.verdict == Verdict::watch);
    CHECK(value(f) == doctest::Approx(2.5));
  }
  Bench backwards(nimh(board + wired));
  backwards.supply().with_weak_cell->weak->in_reversal = 60.001 * unit::s;
  CHECK(backwards.judge("power.weak_cell")->verdict == Verdict::fail);
  backwards.supply().with_weak_cell->weak->in_reversal = 60.0 * unit::s;
  backwards.supply().with_weak_cell->end.voltage = 3.7 * V;
  CHECK(backwards.judge("power.weak_cell")->verdict == Verdict::pass);
}

TEST_CASE("what a step-up stands, how warm it gets, what it passes on, at the limits") {
  at_limits({"power.step_up_output", nimh(board + wired),
             [](Bench& b, double x) { b.supply().feed.step_up->output = x * V; }, Bound::at_most, 24.0,
             24.0});  // the parts' data sheets, from memory
  at_limits({"power.step_up_output", nimh(board + wired),
             [](Bench& b, double x) {
               b.supply().output_most.reset();
               b.supply().run.start.open_circuit = x * V;
             },
             Bound::at_most, 24.0, 24.0});
  std::string stated_text = nimh("  step_up: { module: small 1.2 MHz, output: 26 V, output_most: 28 V }\n" + wired);
  stated_text.replace(stated_text.find("12 V"), 4, "26 V");  // a load for that voltage
  Bench stated(stated_text);
  CHECK(stated.judge("power.step_up_output")->verdict == Verdict::pass);  // what is written stands
  Bench too_many(nimh("  step_up: { module: small 1.2 MHz, output: 12 V, input_most: 5 V }\n" + wired));
  CHECK(too_many.judge("power.step_up_output")->verdict == Verdict::fail);  // four NiMH stand at 5.78 V
  Bench share(nimh("  step_up: { output: 12 V, efficiency: 85 % }\n" + wired));
  CHECK(share.judge("power.step_up_output")->verdict == Verdict::unknown);
  CHECK(share.judge("power.step_up_heat")->verdict == Verdict::unknown);
  CHECK(share.judge("power.step_up_input")->verdict == Verdict::unknown);
  // 46 K for each watt, 85 degC at most (independent test of 2023); 15 K in hand; air 20 degC
  const auto loses = [](Bench& b, double kelvins) {
    b.supply().start.step_up->loss = (kelvins - 293.15) / 46.0 * W;
    b.supply().end.reset();
  };
  at_limits({"power.step_up_heat", nimh(board + wired), loses, Bound::at_most, 343.15, 358.15});
  // the diode drops 0.45 V; 12 V set; a 12 V fan stands 1.15 times its rating, 13.8 V
  const auto stands_at = [](Bench& b, double x) { b.supply().run.start.open_circuit = (x + 0.45) * V; };
  Bench passing("place: { air: 20 degC }\n" + fan + "supply:\n  pack: { cell: NiMH AA, series: 4 }\n" + board);
  const auto passes = [&](double x) {
    stands_at(passing, x);
    return passing.judge("power.pass_through");
  };
  CHECK_FALSE(passes(12.0 * (1.0 - 1e-9)));
  CHECK(passes(12.0 * (1.0 + 1e-9))->verdict == Verdict::watch);
  CHECK(passes(13.8 * (1.0 - 1e-9))->verdict == Verdict::watch);
  CHECK(passes(13.8 * (1.0 + 1e-9))->verdict == Verdict::fail);
  CHECK(limit(*passes(14.0)) == doctest::Approx(13.8));
  CHECK(limit(*passes(13.0)) == doctest::Approx(12.0));
}

TEST_CASE("charge: shelf, what is left, light-ups, at the limits") {
  // kept = (1 - loss) ^ (30 days over a twelfth of a year), without the first day's loss
  at_limits({"power.storage",
             nimh(board + wired),
             [](Bench& b, double kept) {
               data::ChemistryRow& chemistry = b.supply().pack_input.cell.chemistry;
               chemistry.loss_on_first_day = 0.0;
               chemistry.loss_per_month.value = 1.0 - std::pow(kept, 365.25 / 12.0 / 30.0);
             },
             Bound::at_least,
             0.7,
             {}});
  at_limits({"power.stop",
             nimh(board + wired),
             [](Bench& b, double x) {
               b.supply().run.reason = StopReason::stop_at;
               b.supply().run.charge_left_share = x;
             },
             Bound::at_most,
             0.25,
             {}});
  for (const StopReason reason : {StopReason::collapse, StopReason::step_up_minimum}) {
    Bench bench(nimh(board + wired));
    bench.supply().run.reason = reason;
    bench.supply().run.charge_left_share = 0.01;
    CHECK(bench.judge("power.stop")->verdict == Verdict::watch);  // dead in seconds, however little is left
    CHECK_FALSE(bench.judge("power.stop")->limit);
  }
  const auto counted = [](const std::string& want, int count) {
    Bench bench(nimh(board + wired) + want);
    bench.all().light_ups->count = count;
    return bench.judge("power.light_ups").value();
  };
  CHECK(counted("want: { light_ups_per_charge: 6 }\n", 6).verdict == Verdict::pass);
  CHECK(counted("want: { light_ups_per_charge: 6 }\n", 5).verdict == Verdict::fail);
  CHECK(counted("", 1).verdict == Verdict::pass);
  CHECK(counted("", 0).verdict == Verdict::fail);
}

TEST_CASE("a lithium pack that is run too far down fails, another is to be watched, and the weak cell is named") {
  const auto pack = [](const std::string& cell, const std::string& stop) {
    return "load: { power: 1.8 W, voltage: 12 V }\nsupply:\n  pack: { cell: " + cell + " }\n" + board + stop;
  };
  const auto stop = [](Bench& b, double x) { b.supply().stop_at = x * V; };
  // end of discharge: Li-ion 3.0 V, LiFePO4 2.5 V (Linden's Handbook of Batteries, ch. 26, from memory); NiMH 1.0 V
  // (IEC 61951-2), lead-acid 1.75 V (IEC 61056-1)
  at_limits({"power.over_discharge", pack("Li-ion 18650", "  stop_at: 3.3 V\n"), stop, Bound::at_least, 3.0, 3.0});
  at_limits({"power.over_discharge", pack("LiFePO4 18650", "  stop_at: 2.9 V\n"), stop, Bound::at_least, 2.5, 2.5});
  at_limits({"power.over_discharge", pack("NiMH AA, series: 4", ""), stop, Bound::at_least, 4.0, {}});
  at_limits(
      {"power.over_discharge", "load: { power: 1.8 W, voltage: 12 V }\n" + lead_acid, stop, Bound::at_least, 10.5, {}});
  // seen to pass: 2.2 V a cell of Li-ion, 1.8 V of LiFePO4
  CHECK(Bench(pack("Li-ion 18650, series: 2", "  stop_at: 4.4 V\n")).judge("power.over_discharge")->verdict ==
        Verdict::fail);
  CHECK(Bench(pack("LiFePO4 18650, series: 2", "  stop_at: 3.6 V\n")).judge("power.over_discharge")->verdict ==
        Verdict::fail);
  Bench uneven(pack("Li-ion 18650, series: 2", "  stop_at: 6.6 V\n"));
  const auto weakest_at = [&](double x) {
    uneven.supply().with_weak_cell->weak->voltage_end = x * V;
    return uneven.judge("power.over_discharge").value();
  };
  CHECK(weakest_at(3.0).verdict == Verdict::pass);
  CHECK(says(weakest_at(3.0), "one cell with 92 %"));  // cells in regular use: 92 % (common practice, no source)
  CHECK(weakest_at(3.0 - 1e-9).verdict == Verdict::watch);
  CHECK(value(weakest_at(2.9)) == doctest::Approx(2.9));
  CHECK(limit(weakest_at(2.9)) == doctest::Approx(3.0));
}
