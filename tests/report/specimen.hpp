// A made-up assessment that has one of everything a report must show. Not a result of any model.
#pragma once
#include "plan/assessment.hpp"

namespace lumwright {
inline plan::Assessment specimen() {
  plan::Assessment a;
  a.build = "Test Valley fan";
  a.file = "valley.yaml";
  a.verdict = plan::Verdict::fail;
  a.results = {
      {.key = "draught.air_flow",
       .value = model::Measure{0.4 * g_per_s},
       .low = model::Measure{0.31 * g_per_s},
       .high = model::Measure{0.49 * g_per_s}},
      {.key = "draught.cold_air_flow", .value = model::Measure{0.9 * g_per_s}},
      {.key = "draught.fan_static_pressure", .value = model::Measure{3.0 * mmH2O, "mmH2O"}},
      {.key = "draught.free_air_share", .value = model::Measure{0.12}},
      {.key = "heat.fan_gas", .value = model::Measure{degC(61)}},
      {.key = "power.runtime", .value = model::Measure{4000.0 * s}},
      {.key = "power.stop_reason", .value = std::string("stop_at")},
      {.key = "fit.clearance_cold", .value = model::Measure{0.22 * mm, "mm"}},
      {.key = "draught.loss.tube_friction", .value = model::Measure{4.2 * Pa}},
      {.key = "later.invention", .value = model::Measure{GaugePressure{1.2 * bar}, "bar"}},
  };
  a.checks = {
      {.id = "draught.flow",
       .title = "Air through the fire",
       .verdict = plan::Verdict::pass,
       .value = model::Measure{0.4 * g_per_s},
       .limit = model::Measure{0.25 * g_per_s},
       .bound = plan::Bound::at_least,
       .why = "0.400 g/s comes through, and 0.250 g/s raise steam in the time you will wait",
       .basis = {data::Standing::derived, "heat balance"}},
      {.id = "fit.hot",
       .title = "Tube in the chimney, hot",
       .verdict = plan::Verdict::fail,
       .value = model::Measure{-0.012 * mm, "mm"},
       .limit = model::Measure{0.03 * mm, "mm"},
       .bound = plan::Bound::at_least,
       .why = "with the tube at 240 degC and the chimney still at 15 degC the gap is -0.012 mm: the tube seizes",
       .action = "take a tube that is 0.05 mm smaller",
       .basis = {data::Standing::secondary, "linear expansion with handbook coefficients"},
       .formula = "c_hot = D (1 + e_b) - d (1 + e_t) - 2 s\nall lengths at 20 degC",
       .terms = {{"D", "chimney bore", model::Measure{16.0 * mm, "mm"}, model::Origin::written, "engine.chimney.bore"},
                 {"s", "soot on each side", model::Measure{0.05 * mm, "mm"}, model::Origin::assumed,
                  "adapter.tube.soot"},
                 {"e_t", "strain of the tube", model::Measure{0.0044}}}},
      {.id = "power.fuse",
       .title = "The fuse",
       .verdict = plan::Verdict::watch,
       .why = "no fuse is described",
       .action = "put 1.25 A at the pack",
       .basis = {data::Standing::memory, "IEC 60127-2, from memory"}},
      {.id = "power.runtime",
       .title = "Running time",
       .verdict = plan::Verdict::unknown,
       .missing = {"supply.pack.cell", "fan.rated.current"}},
  };
  a.assumed = {{"engine.leakage.past_bed", "25 %", "10 % .. 40 %", "fire-door and ash-pan seams of a small engine",
                data::Basis{data::Standing::estimate, "estimate"}},
               {"adapter.tube.soot", "0.05 mm", "0.02 mm .. 0.1 mm", "between two cleanings",
                data::Basis{data::Standing::practice, "common practice, no source"}}};
  a.cautions = {
      {"carbon-monoxide", "Carbon monoxide", "Raise steam out of doors and nowhere else.", "a public guideline"}};
  a.series = {
      {"discharge",
       {{"t", kind_of<Duration>, {0.0, 0.1, 4000.0}}, {"pack_voltage", kind_of<Voltage>, {6.4, 1.0 / 3.0, 5.0}}}}};
  return a;
}
}  // namespace lumwright
