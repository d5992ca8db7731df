#include "held/held.hpp"
#include "numeric/root.hpp"
#include "power/cell.hpp"
#include "power/leads.hpp"
#include "power/published_packs.hpp"
#include <cmath>

namespace lumwright::held {
namespace {
using namespace power;

enum class End { low, usual, high };
template <class Q>
Q at(const Band<Q>& band, End end) {
  return end == End::low ? band.low : end == End::high ? band.high : band.value;
}
End other(End end) { return end == End::low ? End::high : end == End::high ? End::low : End::usual; }
/// The three of them; low and high are those of the answer.
template <class F>
Band<double> ends(F answer) {
  return {answer(End::usual), answer(End::low), answer(End::high)};
}

/// One new cell, at its best or its worst.
Pack one(const char* id, End end, double celsius = 20.0) {
  const data::CellRow& cell = data::cell(id);
  PackInput input = plain_pack(cell, 1, at(cell.capacity, end));
  input.rate_exponent = at(cell.rate_exponent, other(end));
  input.cell_resistance = at(cell.resistance, other(end));
  input.temperature = degC(celsius);
  return make_pack(input);
}
Reckoned through(Resistance load, Duration unit) {
  return {ends([&](End e) { return in(discharge(one("alkaline AAA", e), resistor(load), 0.9 * V).runtime, unit); })};
}
double given(const Pack& pack, Current i, Voltage stop) {
  return in(discharge(pack, steady_current(i), stop).runtime * i, Ah);
}
Reckoned kept(double days) {
  const data::ChemistryRow& nimh = data::cell("NiMH AA").chemistry;
  return {
      ends([&](End e) { return charge_kept(nimh, at(nimh.loss_per_month, other(e)), days * 24.0 * hour, degC(20)); })};
}
/// Of the label, from new or old cells at a current of so many It.
Reckoned of_the_label(const char* condition, double rate) {
  const data::CellRow& cell = data::cell("NiMH AA");
  return {ends([&](End e) {
    const Charge capacity = at(data::condition(condition).capacity, e) * Ah;
    const Rating rating{capacity, cell.rated_rate * Ah / hour, at(cell.rate_exponent, other(e))};
    return in(capacity_at(rating, rate * Ah / hour), Ah);
  })};
}
Reckoned at_rate(double rate) {
  const data::CellRow& cell = data::cell("NiMH AAA");
  return {ends([&](End e) {
    const Rating rating{1.0 * Ah, cell.rated_rate * Ah / hour, at(cell.rate_exponent, other(e))};
    return in(capacity_at(rating, rate * Ah / hour), Ah);
  })};
}
StepUp board(const char* id, Voltage output) { return step_up_of(data::step_up(id), output, 0.5 * V); }
double efficiency(const char* id, Voltage output, StepUpDuty duty) {
  return 100.0 * step_up_state(board(id, output), duty).efficiency;
}
/// What comes out of a board that takes so much from one lithium cell.
Current output_at(const char* id, Voltage output, Current input) {
  const auto over = [&](double milliamperes) {
    return in(step_up_state(board(id, output), {.input = 3.7 * V, .output = milliamperes * mA}).input - input, A);
  };
  return numeric::bracketed_root(over, 10.0, 400.0, "output of a board") * mA;
}
Cases holder_and_label_cases() {
  return {
      {"holder",
       [] {
         const Resistance leads = loop_resistance(wire_resistance(0.14 * mm2), 150.0 * mm, degC(20));
         return Reckoned{ends([&](End e) {
           return in(2.0 * at(data::series_resistance("spring contact").resistance, e) + leads, ohm);
         })};
       }},
      {"label old", [] { return of_the_label("salvaged", 0.2); }},
      {"label new", [] { return of_the_label("new", 0.43); }},
      {"label tired", [] { return of_the_label("tired", 0.2); }},
      {"worn resistance",
       [] {
         const data::CellRow& cell = data::cell("NiMH AA");
         const Band<double> factor = data::condition("salvaged").resistance;
         return Reckoned{ends([&](End e) { return in(at(factor, e) * at(cell.resistance, e), ohm); })};
       }},
  };
}
Cases alkaline_cases() {
  return {
      {"alkaline 5.1 ohm", [] { return through(5.1 * ohm, minute); }},
      {"alkaline 10 ohm", [] { return through(10.0 * ohm, minute); }},
      {"alkaline 75 ohm", [] { return through(75.0 * ohm, hour); }},
      {"alkaline pulses",
       [] { return Reckoned{ends([](End e) { return given(one("alkaline AAA", e), 0.6 * A, 0.9 * V); })}; }},
      {"alkaline AA clock tester",
       [] { return Reckoned{ends([](End e) { return given(one("alkaline AA", e), 0.5 * A, 0.75 * V); })}; }},
      {"alkaline AA laboratory",
       [] { return Reckoned{ends([](End e) { return given(one("alkaline AA", e), 0.5 * A, 0.1 * V); })}; }},
      {"alkaline cold",
       [] {
         const auto left = [](double amperes) {
           return given(one("alkaline AA", End::usual, 0.0), amperes * A, 0.9 * V) /
                  given(one("alkaline AA", End::usual), amperes * A, 0.9 * V);
         };
         return Reckoned{{left(0.3), left(0.45), left(0.1)}};
       }},
  };
}
Cases nimh_cases() {
  return {
      {"kept 28 days", [] { return kept(28.0); }},
      {"kept 20 days", [] { return kept(20.0); }},
      {"kept 51 days", [] { return kept(51.0); }},
      {"kept three months", [] { return kept(91.0); }},
      {"NiMH half It", [] { return at_rate(0.5); }},
      {"NiMH one It", [] { return at_rate(1.0); }},
      {"NiMH cold",
       [] { return Reckoned{exactly(temperature_factors(data::cell("NiMH AA").chemistry, degC(0)).capacity)}; }},
  };
}
Cases board_cases() {
  return {
      {"board 8.15 V",
       [] {
         return Reckoned{exactly(efficiency("small 1.2 MHz", 8.15 * V, {.input = 1.2 * V, .output = 15.0 * mA}))};
       }},
      {"board 3.29 V",
       [] {
         return Reckoned{exactly(efficiency("small 1.2 MHz", 3.29 * V, {.input = 1.2 * V, .output = 20.0 * mA}))};
       }},
      {"board light load",
       [] { return Reckoned{exactly(efficiency("small 1.2 MHz", 3.3 * V, {.input = 2.5 * V, .output = 13.2 * mA}))}; }},
      {"board near its limit",
       [] {
         const auto at_input = [](double amperes) {
           return efficiency("small 1.2 MHz", 12.0 * V,
                             {.input = 3.7 * V, .output = output_at("small 1.2 MHz", 12.0 * V, amperes * A)});
         };
         return Reckoned{exactly(at_input(0.8) / at_input(0.4))};
       }},
      {"board gives up",
       [] {
         const data::Row row = published("trials", "board_gives_up").front();
         const auto [low, high] = span(row.numbers("amperes"));
         return Reckoned{exactly(1.0), {{1.0, high / low}}};
       }},
      {"board most output",
       [] {
         const Current limit = *data::step_up("small 1.2 MHz").input_limit;
         return Reckoned{exactly(in(output_at("small 1.2 MHz", 12.4 * V, limit), mA))};
       }},
  };
}
}  // namespace

const Cases& power_cases() {
  static const Cases cases = [] {
    Cases all;
    for (Cases some : {holder_and_label_cases(), alkaline_cases(), nimh_cases(), board_cases()}) all.merge(some);
    return all;
  }();
  return cases;
}
}  // namespace lumwright::held
