"""Random packs and loads stepped through time by scipy, against lumwright's closed forms and integrals over charge.

Use: power_scipy.py <power_probe executable> [number of the draw]. 60 cases, agreement to 5e-6; exit status 1 on a difference.
"""
import os
import random
import sys

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
try:
    import numpy
    from scipy.integrate import solve_ivp
    from scipy.optimize import brentq, minimize_scalar
except ImportError:
    if sys.executable == "/usr/bin/python3":
        sys.exit("python3-scipy is not installed")
    os.execv("/usr/bin/python3", ["/usr/bin/python3"] + sys.argv)
from power_model import ask, cell_groups  # noqa: E402

COUNT, TOLERANCE, DRAW = 60, 5e-6, 20240229
CELLS = {"NiMH AA": (2.0, 0.05, 1.0), "alkaline AA": (2.2, 0.5, 0.9), "Li-ion 18650": (2.6, 0.05, 3.0),
         "LiFePO4 18650": (1.5, 0.06, 2.5)}


def one(rng):
    """A case as power_probe.cpp reads it."""
    cell = rng.choice(list(CELLS))
    charge, ohm, end = CELLS[cell]
    kind = rng.choice(["power", "fan", "step_up"])
    few = rng.randint(1, 3) if end > 2 else rng.randint(3, 6)
    series = few if kind != "fan" else {0.9: 8, 1.0: 10, 2.5: 4, 3.0: 3}[end]
    weak = round(rng.uniform(0.7, 0.95), 3) if cell == "NiMH AA" and rng.random() < 0.4 else 0
    pack = (cell, series, round(charge * rng.uniform(0.5, 1.2), 3), round(series * ohm * rng.uniform(0.5, 2), 4),
            rng.choice([1, round(rng.uniform(1.01, 1.3), 3)]), weak, round(series * end * rng.uniform(0.8, 1.05), 3))
    if kind == "power":
        return pack + (kind, round(rng.uniform(0.3, 4), 3))
    if kind == "fan":
        return pack + (kind, 12, round(rng.uniform(0.05, 0.3), 3))
    output = rng.choice([12, 15, 24])  # three lithium cells pass 12 V through at first
    return pack + (kind, rng.choice(["small 1.2 MHz", "3-35 V 400 kHz"]), output, round(rng.uniform(0.03, 0.15), 3))


def law(case):
    """Current at a terminal voltage; None where the load has no answer."""
    kind, *values = case["load"]
    if kind == "power":
        return lambda v: values[0] / v
    if kind == "fan":
        return lambda v: values[1] * (v / values[0]) ** 2
    _, output, current = values
    rail = output + case["diode_V"]

    def step_up(v):
        if v >= rail:  # passes its input through: the fan follows it, a diode drop below
            return current * ((v - case["diode_V"]) / output) ** 2 + case["quiescent_A"]
        a = case["coil_ohm"] + (1 - v / rail) * case["switch_ohm"]
        b = v - 0.5 * rail * case["switching"]
        c = rail * current + v * case["quiescent_A"]
        inside = b * b - 4 * a * c
        return None if b <= 0 or inside < 0 else 2 * c / (b + inside**0.5)
    return step_up


def working_voltage(emf, ohm, current, floor):
    """The highest voltage with V + R I(V) = E; None below the fold or the floor."""
    def excess(v):
        i = current(v)
        return 1e3 if i is None else v + ohm * i - emf
    grid = numpy.linspace(emf, floor, 400)
    values = [excess(v) for v in grid]
    for i in range(1, len(grid)):
        if values[i] <= 0:
            return brentq(excess, grid[i], grid[i - 1], xtol=1e-13, rtol=1e-14)
    i = int(numpy.argmin(values[1:-1])) + 1  # close above the fold both roots lie between two points of the grid
    least = minimize_scalar(excess, bounds=(grid[i + 1], grid[i - 1]), method="bounded", options={"xatol": 1e-10})
    return brentq(excess, least.x, grid[i - 1], xtol=1e-13, rtol=1e-14) if least.fun <= 0 else None


def run_down(case):
    """Runtime: solve_ivp over charge drawn, from knot to knot so that no step straddles a bend of the tables."""
    groups, current, ohm = cell_groups(case), law(case), case["ohm"]
    knots = sorted({q for _, table in groups for q, _ in table if 0 <= q <= case["Ah"]} | {0.0, case["Ah"]})
    arrays = [(n, numpy.array([q for q, _ in t]), numpy.array([v for _, v in t])) for n, t in groups]

    def emf(q):
        return sum(n * numpy.interp(q, x, y) for n, x, y in arrays)

    def pace(q, _):
        v = working_voltage(emf(q), ohm, current, 0.5 * case["stop"])
        if v is None:
            return [float("nan")]
        i = current(v)
        if i > case["rated_A"]:
            i *= (i / case["rated_A"]) ** (case["exponent"] - 1)
        return [3600 / i]

    def over(q):  # positive while the run goes on
        v = working_voltage(emf(q), ohm, current, 0.5 * case["stop"])
        return -1.0 if v is None else v - case["stop"]

    time, end = 0.0, knots[-1]
    for low, high in zip(knots, knots[1:]):
        stops = over(high) <= 0
        if stops:  # bisect: at a collapse the voltage has no zero to find
            good, bad = low, high
            for _ in range(60):
                middle = 0.5 * (good + bad)
                good, bad = (middle, bad) if over(middle) > 0 else (good, middle)
            end, high = good, good
        if high > low:
            time += solve_ivp(pace, (low, high), [0.0], rtol=1e-9, atol=1e-9, method="DOP853", max_step=(high - low) / 8).y[0, -1]
        if stops:
            break
    return time, end


def main():
    draw = int(sys.argv[2]) if len(sys.argv) > 2 else DRAW
    rng = random.Random(draw)
    answers = ask(sys.argv[1], [one(rng) for _ in range(COUNT)])
    worst, bad, reasons = 0.0, 0, {}
    for case in answers:
        time, end = run_down(case)
        apart = abs(time - case["runtime_s"]) / max(time, 1e-9) if time > 0 or case["runtime_s"] > 0 else 0.0
        left = abs(1 - end / case["Ah"] - case["charge_left"])
        reasons[case["reason"]] = reasons.get(case["reason"], 0) + 1
        worst = max(worst, apart)
        if not (apart <= TOLERANCE and left <= TOLERANCE):
            bad += 1
            print(f"{case['name']}: {case['reason']} {case['runtime_s']:.9g} s, scipy {time:.9g} s, charge off by {left:.1e}")
    print(f"draw {draw}: {COUNT} runs {reasons}, worst difference {worst:.2e}, {bad} beyond {TOLERANCE:g}")
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
