// A full description of our own, and what the reader makes of any text.
#pragma once
#include "description/reader.hpp"
#include <string>

namespace lumwright {
inline const std::string full_description = R"(name: Tarn Beck lighting-up fan
place: { air: 12 degC, barometer: 1005 mbar }
engine:
  boiler:
    water: 420 ml
    metal: { copper: 1.30 kg, brass: 0.22 kg, steel: 0.40 kg }
    own_blower_from: 1.2 bar          # gauge
    working: 3.5 bar                  # gauge
    heat_loss: 0.40 W/K
  firebox: { heating_surface: 80 cm2, emissivity: 0.7, convection: 20 W/m2/K }
  grate: { length: 58 mm, width: 42 mm, open_share: 35 % }
  air_entry: { width: 40 mm, height: 12 mm }
  tubes: { count: 8, bore: 8 mm, length: 140 mm }
  chimney: { bore: 17.20 mm +- 0.03 mm, depth: 36 mm, wall: 1.6 mm, material: steel, seam_ridge: 0 mm, measured_within: 0.02 mm }
  leakage: { past_bed: 25 %, smokebox: 5 % }
  cylinders: { count: 2, bore: 16 mm, blast_nozzle: 1.7 mm }
fuel:
  { kind: lump charcoal, started_on: soaked charcoal, lump: 7..9 mm, bed: 30 mm, catches_in: 150 s, lit_at_start: 10 % +- 5 %, carbon_monoxide_share: 0.12,
    burn_depth: 8 mm, bed_mass: 20 g, voidage: 47 %, sphericity: 0.7, heating_value: 29.5 MJ/kg, ash: 3 %, moisture: 5 % }
adapter:
  tube: { outside: 5/8 in, wall: 0.014 in, length: 42 mm, engaged: 34 mm, material: brass, inlet: square, soot: 0.05 mm, measured_within: 0.005 mm }
  flange: { outside: 34 mm, thickness: 1.5 mm, material: brass, holes: { count: 3, pitch_circle: 27 mm, thread: 8BA } }
  box: { shape: round, diameter: 84 mm, height: 52 mm, sheet: 0.24 mm, material: tinplate }
  joint: silver braze
  bleed: { holes: 0, diameter: 3 mm }
fan:
  kind: axial
  frame: 50 mm
  thickness: 20 mm
  rated: { voltage: 12 V, current: 0.16 A, speed: 5200 rpm, current_is: typical }
  curve: [ [0 l/min, 58 Pa], [120 l/min, 44 Pa], [240 l/min, 26 Pa], [390 l/min, 0 Pa] ]
  curve_from: data sheet
  curve_within: 12 %
  speed_at: [ [7 V, 3100 rpm], [12 V, 5200 rpm] ]
  starts_at: 5 V
  gas_limit: 158 degF
  mount: outside
  mass: 45 g
  guard: { kind: wire rings, open_share: 80 % }
  holes: { measured: yes, pitch: 40 mm, diameter: 4.3 mm, opening: 48 mm, lugs: [ [47.3 mm, 7.4 mm], [4.3 mm, 45.4 mm] ], inlet_x: 25 mm, inlet_y: 26 mm }
supply:
  pack: { cell: NiMH AA, series: 5, parallel: 1, capacity: 1900 mAh, condition: good, resistance: 0.20 ohm, contacts: 60 mohm,
    charged: 100 %, rate_exponent: 1.05, temperature: 15 degC, days_since_charge: 12 }
  step_up: { module: small 1.2 MHz, output: 12 V, input_limit: 0.8 A, input_min: 2.5 V, input_most: 24 V, output_most: 28 V, efficiency: [ [6 V, 1 W, 88 %], [6 V, 2 W, 0.85] ] }
  control: { kind: series regulator, output: 9 V }
  leads: { section: 0.25 mm2, length: 350 mm, outside: 3 mm }
  charger: { current: 500 mA, stops: yes }
  fuse: 1.25 A
  stop_at: 5.0 V
  switch: toggle switch
  plugs: 1
  polarity: Schottky diode
  polarity_drop: 0.35 V
want: { steam_within: 10 min, light_ups_per_charge: 6 }
draught: { air_flow: 0.40 g/s }
load: { power: 1.8 W +- 0.1 W, voltage: 12 V }
)";

inline description::Build read(const std::string& text) { return description::read_build({"b.yaml", text}); }
/// What the user sees; empty if there is nothing to complain of.
inline std::string complaint(const std::string& text) {
  try {
    read(text);
    return "";
  } catch (const input::InputError& e) {
    return e.what();
  }
}
/// The text with its first `from` replaced. A test that replaces nothing tests nothing: throws.
inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  if (at == std::string::npos) throw std::logic_error("no `" + from + "` to replace");
  return text.replace(at, from.size(), to);
}
}  // namespace lumwright
