#include "description/template.hpp"

namespace lumwright::description {
std::string new_bin() {
  return R"(# A bin to choose from, then `lumwright choose`. Everything waits behind a `#`, with an example: take the `#` away from
# what you have and write your own things over the examples; what you do not know is left out, or has nothing behind its
# colon. Every list may hold as many as you like; each item needs a name. Keys are those of a description
# (`lumwright new`).
name: My shed
#place: { air: 15 degC }
#want: { steam_within: 12 min, light_ups_per_charge: 4 }
#fuel: { kind: lump charcoal, lump: 9 mm, bed: 28 mm }
#pairs: no                    # yes: two of a fan are tried in series and side by side, where `count` is 2 or more

# What all adapters have in common. Box, fuse and wires that do not suit a combination are sized for it; what an engine
# names for itself below is kept.
adapter:
  #tube: { length: 44 mm, engaged: 33 mm, material: brass, inlet: square }
  #box: { diameter: 84 mm, height: 50 mm, sheet: 0.25 mm, material: tinplate }
  #joint: silver braze
  #bleed: { holes: 8, diameter: 8 mm }
supply:
  #leads: { section: 0.34 mm2, length: 300 mm }

fans:
  #- { name: grey fan, kind: axial, frame: 50 mm, thickness: 20 mm, rated: { voltage: 12 V, current: 0.16 A, speed: 5200 rpm } }
  #- { name: old blower, kind: centrifugal, frame: 50 mm, thickness: 15 mm, rated: { voltage: 12 V, current: 0.19 A, speed: 6100 rpm } }

drawers:                      # loose cells, of which packs can be made
  #- { name: loose AA, cell: NiMH AA, count: 8, capacity: 1900 mAh, condition: good }
packs:
  #- { name: five AA, from: loose AA, series: 5 }
  #- { name: two lithium, cell: Li-ion 18650, series: 2, capacity: 2400 mAh, condition: good, stop_at: 6.2 V }

step_ups:
  #- none                     # the fan on the pack itself
  #- { name: small board, module: small 1.2 MHz, output: 12 V }

#tubes: stock                 # or a list: - { name: turned brass, outside: 17.1 mm, wall: 0.45 mm }

engines:
  #- name: No 1
  #  engine:
  #    boiler: { water: 420 ml, metal: { copper: 1.3 kg, brass: 0.2 kg }, own_blower_from: 1.2 bar, working: 3.5 bar }
  #    firebox: { heating_surface: 80 cm2 }
  #    grate: { length: 58 mm, width: 42 mm, open_share: 35 % }
  #    tubes: { count: 8, bore: 8 mm, length: 140 mm }
  #    chimney: { bore: 17.6 mm, depth: 36 mm, wall: 1.6 mm, material: brass, seam_ridge: 0 mm }
)";
}
}  // namespace lumwright::description
