"""Discharges written as circuits and run by ngspice, against lumwright's closed forms and integrals.

Use: ngspice_discharge.py <power_probe executable>. Agreement to 2e-5; exit status 1 on a difference.
The cells' voltage tables come from the probe, everything else is built here: cells as voltage sources driven by the charge
drawn, one series resistor, and a load that solves its own current.
"""
import math
import os
import re
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from power_model import ask, cell_groups  # noqa: E402

TOLERANCE = 2e-5
CASES = [  # as power_probe.cpp reads them
    ("NiMH AA", 4, 2.0, 0.20, 1, 0, 4.0, "power", 3.0),
    ("Li-ion 18650", 1, 2.6, 0.10, 1, 0, 3.0, "power", 3.0),
    ("alkaline AA", 4, 2.2, 1.60, 1, 0, 3.2, "power", 1.0),
    ("alkaline AA", 4, 2.2, 1.60, 1, 0, 2.0, "power", 3.0),  # collapses
    ("lead-acid 12 V 1.3 Ah", 1, 1.3, 0.15, 1, 0, 10.5, "power", 6.0),  # runs empty
    ("NiMH AA", 4, 2.0, 0.20, 1, 0.8, 2.8, "power", 3.0),  # drives its weak cell backwards
    ("NiMH AA", 4, 2.0, 0.20, 1, 0, 4.4, "step_up", "small 1.2 MHz", 12, 0.15),
    ("LiFePO4 18650", 2, 1.2, 0.16, 1.025, 0, 5.0, "step_up", "3-35 V 400 kHz", 12, 0.2),  # with a rate exponent
    ("NiMH AA", 10, 2.0, 0.45, 1, 0, 10.8, "fan", 12, 0.15),
]


def pwl(table):
    # ngspice carries a pwl on along its end pieces: level guard points stop that
    table = [(table[0][0] - 1, table[0][1])] + table + [(table[-1][0] + 1, table[-1][1])]
    return "pwl(v(q), " + ", ".join(f"{q:.12g}, {v:.12g}" for q, v in table) + ")"


def load_current(case):
    """An expression in v(t), and the voltage of the collapse if there is one."""
    kind, *values = case["load"]
    if kind == "power":
        (power,) = values
        fold = math.sqrt(power * case["ohm"])
        # below the fold a resistor of the pack's own value takes over: both meet there, so the circuit always has a root
        floor = max(0.97 * case["stop"], fold)
        return f"v(t) > {floor:.12g} ? {power}/v(t) : v(t)*{power / floor**2:.12g}", fold
    if kind == "fan":
        rated, current = values
        return f"{current / rated**2:.12g}*v(t)*v(t)", 0
    _, output, current = values
    rail = output + case["diode_V"]
    a = f"({case['coil_ohm']} + (1 - v(t)/{rail})*{case['switch_ohm']})"
    b = f"(v(t) - {0.5 * rail * case['switching']:.12g})"
    c = f"({rail * current:.12g} + v(t)*{case['quiescent_A']})"
    return f"2*{c}/({b} + sqrt(max({b}*{b} - 4*{a}*{c}, 0)))", 0


def netlist(case):
    lines = ["discharge", ".options method=gear reltol=1e-7 abstol=1e-10 vntol=1e-8 chgtol=1e-14"]
    top = 0
    for i, (count, table) in enumerate(cell_groups(case)):
        lines.append(f"Bcell{i} e{i} {f'e{i - 1}' if i else '0'} V = {count}*{pwl(table)}")
        top = i
    current, fold = load_current(case)
    amps = f"((v(e{top}) - v(t))/{case['ohm']})"
    drain = amps
    if case["exponent"] != 1:
        drain = f"({amps}*pow(max({amps}/{case['rated_A']}, 1), {case['exponent'] - 1:.12g}))"
    lines += [f"Rpack e{top} t {case['ohm']}", f"Bload t 0 I = {current}", "Cq q 0 1", "Rq q 0 1e15",
              f"Bq 0 q I = {drain}/3600", ".ic v(q)=0", f".nodeset v(t)={case['start_V']:.3f}"]
    if case["weak"]:
        own = f"v(e1) - v(e0) - {case['ohm'] / case['series']:.12g}*{amps}"
        lines += [f"Bweak w 0 V = {own}", ".meas tran reversed when v(w)=0 fall=1"]
    stops = {"stop_at": f"v(t)={case['stop']:.12g} fall=1", "empty": f"v(q)={case['Ah']:.12g} rise=1"}
    if fold:
        stops["collapse"] = f"v(e{top})={2 * fold:.12g} fall=1"
    lines += [f".meas tran {reason} when {event}" for reason, event in stops.items()]
    full = 3600 * case["Ah"]
    lines += [f"Bamps amps 0 V = {amps}", ".meas tran later_a find v(amps) at=600", ".meas tran later_v find v(t) at=600",
              ".meas tran start_v find v(t) at=0", ".meas tran start_a find v(amps) at=0",
              f".tran 1 {1.3 * full / case['start_A']:.0f} 0 {1 if full / case['end_A'] < 2e4 else 5}", ".end"]
    return "\n".join(lines) + "\n"


def run_spice(text):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "discharge.cir")
        with open(path, "w") as file:
            file.write(text)
        return subprocess.run(["ngspice", "-b", path], capture_output=True, text=True, cwd=folder)


def spice(text):
    run = run_spice(text)
    found = {key: float(value) for key, value in re.findall(r"^(\w+)\s+=\s+([-+0-9.eE]+)", run.stdout, re.M)}
    ends = [reason for reason in ("stop_at", "collapse", "empty") if reason in found]
    if not ends:
        raise SystemExit("ngspice found no end of the run\n" + run.stdout[-2000:] + run.stderr[-2000:])
    found["reason"] = min(ends, key=found.get)  # whichever comes first
    found["runtime"] = found[found["reason"]]
    return found


def main():
    failed = False
    for case in ask(sys.argv[1], CASES):
        found = spice(netlist(case))
        pairs = [("runtime_s", "runtime"), ("start_A", "start_a"), ("start_V", "start_v"), ("later_A", "later_a"),
                 ("later_V", "later_v")]
        if case["weak"]:
            pairs.append(("reversed_s", "reversed"))
        failed |= found["reason"] != case["reason"]
        print(case["name"], "->", case["reason"], "ngspice", found["reason"])
        for ours, theirs in pairs:
            apart = abs(case[ours] - found[theirs]) / abs(found[theirs])
            good = apart <= TOLERANCE  # false for NaN too
            failed |= not good
            print(f"   {ours:10} {case[ours]:14.7g}  ngspice {found[theirs]:14.7g}  {apart:.1e} {'' if good else 'TOO FAR'}")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
