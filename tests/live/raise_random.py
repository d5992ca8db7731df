"""Descriptions of made-up engines for raise_reference.py: everything that the raise depends on, drawn at random."""


def description(rng):
    """YAML of one engine, its adapter, fan and supply. Not every draw raises steam, or can be worked out at all."""
    def draw(low, high, digits=3):
        return float(f"%.{digits}g" % rng.uniform(low, high))
    litres = draw(0.15, 1.2) if rng.random() < 0.7 else draw(1.2, 4)
    size = litres ** (1 / 3)
    metal = rng.choice(["", f"    metal: {{ copper: {draw(2.5, 4) * litres:.3f} kg, steel: {draw(0.2, 0.8) * litres:.3f} kg }}\n"])
    bore = draw(6.5, 8.5) * (1 + 0.3 * (litres > 1.2))
    length = draw(130, 190) * size
    tube = draw(18, 26) * size
    chimney = tube + rng.choice([0.3, 0.6, 1.2])
    depth = draw(22, 40)
    fuel = rng.choice(["lump charcoal", "anthracite", "steam coal"])
    lines = f"""name: made up
place: {{ air: {draw(-3, 30)} degC, barometer: {draw(930, 1040, 4)} mbar }}
engine:
  boiler:
    water: {litres} l
{metal}    own_blower_from: {draw(0.8, 2)} bar
    working: {draw(2.5, 6)} bar
  grate: {{ length: {draw(75, 95) * size:.3g} mm, width: {draw(52, 66) * size:.3g} mm, open_share: {draw(25, 50)} % }}
  tubes: {{ count: {rng.randint(7, 14)}, bore: {bore:.3g} mm, length: {length:.3g} mm }}
  chimney: {{ bore: {chimney:.4g} mm, depth: 40 mm, wall: 1.6 mm, material: steel }}
  leakage: {{ past_bed: {draw(5, 40)} %, smokebox: {draw(0, 12)} % }}
"""
    if rng.random() < 0.5:
        lines += f"  air_entry: {{ width: {draw(35, 80) * size:.3g} mm, height: {draw(8, 20) * size:.3g} mm }}\n"
    if rng.random() < 0.5:
        lines += "  cylinders: { count: 2, bore: 16 mm, blast_nozzle: 1.8 mm }\n"
    lines += f"""fuel: {{ kind: {fuel}, lump: {draw(6, 14)} mm, bed: {depth} mm, catches_in: {draw(0, 260)} s, lit_at_start: {draw(3, 40)} %,
  carbon_monoxide_share: {draw(3, 25)} % }}
adapter:
  tube: {{ outside: {tube:.4g} mm, wall: 0.5 mm, length: {draw(35, 90)} mm, material: brass, inlet: {rng.choice(["square", "rounded", "projecting"])} }}
"""
    if rng.random() < 0.8:
        lines += f"  box: {{ diameter: {draw(80, 140)} mm, height: {draw(35, 80)} mm, material: tinplate }}\n"
    if rng.random() < 0.6:
        lines += f"  bleed: {{ holes: {rng.randint(1, 12)}, diameter: {draw(3, 9)} mm }}\n"
    return lines + fan(rng, draw) + supply(rng, draw)


def fan(rng, draw):
    if rng.random() < 0.5:
        free, most = draw(150, 900), draw(70, 330)
        points = ", ".join(f"[{q * free:.4g} l/min, {p * most:.4g} Pa]" for q, p in
                           ((0, 1), (0.2, 0.97), (0.4, 0.88), (0.6, 0.72), (0.8, 0.44), (1, 0)))
        return f"""fan:
  kind: centrifugal
  frame: 75 mm
  thickness: 30 mm
  rated: {{ voltage: 12 V, current: {draw(0.15, 0.6)} A, speed: 4000 rpm }}
  curve: [ {points} ]
"""
    frame, thick = rng.choice([(60, 25), (80, 25), (92, 25), (40, 28)])
    return f"""fan:
  kind: axial
  frame: {frame} mm
  thickness: {thick} mm
  rated: {{ voltage: 12 V, current: {draw(0.1, 0.5)} A, speed: {rng.choice([4500, 6800, 9000])} rpm }}
  mount: {rng.choice(["inside", "outside"])}
"""


def supply(rng, draw):
    kind = rng.choice(["step_up", "direct", "lead"])
    leads = f"  leads: {{ section: 0.5 mm2, length: {draw(300, 900)} mm }}\n"
    if kind == "step_up":
        return f"""supply:
  pack: {{ cell: Li-ion 18650, series: {rng.randint(1, 2)}, capacity: {draw(1500, 3000)} mAh, condition: {rng.choice(["new", "good", "tired"])} }}
  step_up: {{ module: small 1.2 MHz, output: 12 V }}
""" + leads
    if kind == "direct":
        return f"""supply:
  pack: {{ cell: NiMH AA, series: {rng.randint(8, 10)}, capacity: {draw(1200, 2400)} mAh, condition: good, charged: {draw(50, 100)} % }}
""" + leads
    return f"""supply:
  pack: {{ cell: lead-acid 12 V 7 Ah, series: 1, temperature: {draw(5, 25)} degC }}
  control: {{ kind: chopped supply, duty: {draw(60, 95)} % }}
""" + leads
