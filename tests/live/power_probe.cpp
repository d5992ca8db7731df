// Runs packs down for ngspice_discharge.py, power_scipy.py and ratios.py: one pack and load a line in, one JSON object
// a line out. cell;series;Ah;ohm;rate exponent;weakest share or 0;stop V;power;W cell;series;Ah;ohm;rate
// exponent;weakest share or 0;stop V;fan;V;A              current with the square of voltage cell;series;Ah;ohm;rate
// exponent;weakest share or 0;stop V;step_up;module;V;A   current of the fan at the set output
#include "power/discharge.hpp"
#include "quantity/errors.hpp"
#include "stopwatch.hpp"
#include <iostream>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

namespace {
using namespace lumwright;
using namespace lumwright::power;
using Words = std::vector<std::string>;

Words split(const std::string& line) {
  Words out;
  std::istringstream in(line);
  for (std::string word; std::getline(in, word, ';');) out.push_back(word);
  return out;
}
double number(const Words& words, std::size_t i) { return std::stod(words.at(i)); }

PackInput pack_of(const Words& words) {
  PackInput pack{.cell = data::cell(words.at(0)),
                 .series = std::stoi(words.at(1)),
                 .parallel = 1,
                 .capacity = number(words, 2) * Ah,
                 .capacity_factor = 1.0,
                 .resistance_factor = 1.0,
                 .charged = 1.0,
                 .rate_exponent = number(words, 4),
                 .temperature = degC(20.0),
                 .measured = number(words, 3) * ohm,
                 .contacts = 0.0 * ohm,
                 .outside = 0.0 * ohm,
                 .cell_resistance = {},
                 .weakest = {}};
  if (number(words, 5) > 0.0) pack.weakest = number(words, 5);
  return pack;
}
Load load_of(const Words& words) {
  const std::string& kind = words.at(7);
  if (kind == "power") return number(words, 8) * W;
  const std::size_t at = kind == "step_up" ? 9 : 8;
  FanSupply supply{.fan = {.rated_voltage = number(words, at) * V,
                           .rated_current = number(words, at + 1) * A,
                           .current_exponent = 2.0},
                   .control = uncontrolled(),
                   .step_up = {},
                   .motor = data::motor_shares(),
                   .regulator_dropout = data::fan_electrics().regulator_dropout};
  if (kind == "step_up") supply.step_up = step_up_of(data::step_up(words.at(8)), supply.fan.rated_voltage, 0.0 * V);
  return supply;
}

class Json {
 public:
  Json() { std::cout << '{'; }
  ~Json() { std::cout << "}\n"; }
  void put(const char* key, double x) { name(key) << x; }
  void put(const char* key, const std::string& text) { name(key) << '"' << text << '"'; }
  template <class Values, class F>
  void put(const char* key, const Values& values, F number_of) {
    name(key) << '[';
    for (std::size_t i = 0; i < values.size(); ++i) std::cout << (i > 0 ? "," : "") << number_of(values[i]);
    std::cout << ']';
  }

 private:
  std::ostream& name(const char* key) {
    std::cout << (first_ ? "" : ",") << '"' << key << "\":";
    first_ = false;
    return std::cout;
  }
  bool first_ = true;
};

void put_inputs(Json& json, const PackInput& pack, const Load& load) {
  const auto plain = [](double x) { return x; };
  const auto volts = [](Voltage v) { return in(v, V); };
  json.put("soc", pack.cell.soc, plain);
  json.put("ocv", pack.cell.ocv, volts);
  json.put("cells_inside", pack.cell.cells_inside);
  json.put("reversed_soc", pack.cell.chemistry.reversed_soc, plain);
  json.put("reversed_ocv", pack.cell.chemistry.reversed_voltage, volts);
  json.put("rated_A", pack.cell.rated_rate * in(pack.capacity, Ah));
  const auto* supply = std::get_if<FanSupply>(&load);
  if (supply == nullptr || !supply->step_up) return;
  const auto& parts = std::get<StepUpLosses>(supply->step_up->efficiency);
  json.put("switch_ohm", in(parts.switch_resistance, ohm));
  json.put("coil_ohm", in(parts.coil_resistance, ohm));
  json.put("diode_V", in(parts.diode_drop, V));
  json.put("switching", in(parts.switching_time, s) * in(parts.frequency, hertz));
  json.put("quiescent_A", in(parts.quiescent, A));
}

void answer(const Words& words, int runs) {
  const PackInput input = pack_of(words);
  const Load load = load_of(words);
  const Voltage stop = number(words, 6) * V;
  const Pack pack = make_pack(input);
  const Run run = discharge(pack, load, stop);
  Json json;
  put_inputs(json, input, load);
  json.put("reason", name(run.reason));
  json.put("runtime_s", in(run.runtime, s));
  json.put("start_A", in(run.start.current, A));
  json.put("start_V", in(run.start.voltage, V));
  json.put("end_A", in(run.end.current, A));
  json.put("end_V", in(run.end.voltage, V));
  json.put("charge_left", run.charge_left_share);
  if (runs > 0) json.put("seconds", median_seconds(runs, [&] { discharge(pack, load, stop); }));
  if (run.runtime > 600.0 * s) {
    const Sample later = state_after(pack, load, stop, 600.0 * s);
    json.put("later_A", in(later.current, A));
    json.put("later_V", in(later.voltage, V));
  }
  if (run.weak && run.weak->reversed_from) json.put("reversed_s", in(*run.weak->reversed_from, s));
}
}  // namespace

int main(int argc, char** argv) {
  std::cout.precision(std::numeric_limits<double>::max_digits10);
  try {
    for (std::string line; std::getline(std::cin, line);) answer(split(line), argc > 1 ? std::stoi(argv[1]) : 0);
    return 0;
  } catch (const std::exception& e) {
    std::cerr << e.what() << '\n';
    return 1;
  }
}
