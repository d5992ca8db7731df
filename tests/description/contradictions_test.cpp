#include "description/detail/contradictions.hpp"
#include "description/description.hpp"
#include <doctest/doctest.h>
#include <string>
#include <vector>
using namespace lumwright;
using namespace lumwright::description;

TEST_CASE("two keys that cannot both be true: the fault names the other's line") {
  struct Row {
    std::string from, to, expected;
  };
  const std::vector<Row> rows{
      {"engaged: 34 mm", "engaged: 50 mm",
       "adapter.tube.engaged: expected no more than the tube's length, 42 mm on line 21, got '50 mm'"},
      {"wall: 0.014 in", "wall: 8 mm",
       "adapter.tube.wall: expected less than half of the tube's outside, 5/8 in on line 21, got '8 mm'"},
      {"flange: { outside: 34 mm", "flange: { outside: 15 mm",
       "adapter.tube.outside: expected less than the flange's outside, 15 mm on line 22, got '5/8 in'"},
      {"pitch_circle: 27 mm", "pitch_circle: 34 mm",
       "adapter.flange.holes.pitch_circle: expected less than the flange's outside, 34 mm on line 22, got '34 mm'"},
      {"own_blower_from: 1.2 bar", "own_blower_from: 60 psi",
       "engine.boiler.own_blower_from: expected less than the working pressure, 3.5 bar on line 8, got '60 psi'"},
      {"blast_nozzle: 1.7 mm", "blast_nozzle: 16 mm",
       "engine.cylinders.blast_nozzle: expected less than the cylinder bore, 16 mm on line 16, got '16 mm'"},
      {"starts_at: 5 V", "starts_at: 13 V",
       "fan.starts_at: expected no more than the rated voltage, 12 V on line 30, got '13 V'"},
      {"input_min: 2.5 V", "input_min: 12 V",
       "supply.step_up.input_min: expected less than the step-up's output, 12 V on line 44, got '12 V'"},
      {"output: 9 V", "output: 13 V",
       "supply.control.output: expected no more than the step-up's output, 12 V on line 44, got '13 V'"},
      {"[0 l/min, 58 Pa]", "[0 l/min, 0 Pa]", ""},
      {"[390 l/min, 0 Pa]", "[390 l/min, 60 Pa]",
       "fan.curve: expected a pressure that falls towards free air, got 58 Pa at the first point and 60 Pa at the "
       "last"},
      {"series regulator, output: 9 V", "series regulator", "supply.control.kind: a series regulator needs `output`"},
      {"series regulator, output: 9 V", "lower output", "supply.control.kind: a lower output needs `output`"},
      {"series regulator, output: 9 V", "chopped supply", "supply.control.kind: a chopped supply needs `duty`"},
      {"series regulator, output: 9 V", "none, output: 9 V",
       "supply.control.output: this has a meaning only with `kind: lower output` or `kind: series regulator`"},
      {"series regulator, output: 9 V", "none, duty: 60 %",
       "supply.control.duty: this has a meaning only with `kind: chopped supply`"},
      {"kind: series regulator, output: 9 V", "duty: 60 %",
       "supply.control.duty: this has a meaning only with `kind: chopped supply`"},
      {"series regulator, output: 9 V", "chopped supply, duty: 60 %", ""},
      {"power: 1.8 W +- 0.1 W, ", "", "load.voltage: this needs `load.power`, the power that was measured"},
      {", voltage: 12 V }\n", " }\n", "load.power: this needs `load.voltage`, the voltage at which it was measured"},
      {"engaged: 34 mm", "engaged: 43 mm +- 2 mm", ""},  // 41 mm lies within the spread
      {"engaged: 34 mm", "engaged: 42 mm", ""}};
  for (const Row& row : rows) {
    CAPTURE(row.to);
    const bool in_load = row.from == ", voltage: 12 V }\n";
    const std::string text = in_load ? full_description.substr(0, full_description.rfind(row.from)) + row.to
                                     : with(full_description, row.from, row.to);
    const std::string what = complaint(text), line = what.substr(0, what.find('\n'));
    CHECK((line.size() > 7 ? line.substr(line.find(": ") + 2) : "") == row.expected);
  }
  CHECK(complaint("fan: { curve: [ [0 l/min, 0 Pa], [1 l/min, 0 Pa] ] }\n")
            .find("expected a pressure above 0 somewhere, got none") != std::string::npos);
}

TEST_CASE("a build that merely will not work is no contradiction") {
  CHECK(complaint(with(full_description, "bore: 17.20 mm +- 0.03 mm", "bore: 12 mm"))
            .empty());  // the tube does not go in
  CHECK(complaint(with(full_description, "depth: 36 mm", "depth: 20 mm")).empty());
  CHECK(complaint(with(full_description, "lump: 7..9 mm", "lump: 50 mm")).empty());
}
