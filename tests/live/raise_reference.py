"""Raises steam a second time, with raise_model.py and scipy's integrator, from the numbers that raise_probe prints of a
description, and compares with what lumwright makes of it.

Use: raise_reference.py <raise_probe executable> <how many made-up engines> <number of the draw> DESCRIPTION...
Exit status 1 on a difference, or when fewer than half of the made-up engines can be compared.
"""
import json
import os
import random
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
try:
    from iapws import IAPWS97
    from iapws.iapws97 import _PSat_T, _TSat_P
    from scipy.integrate import solve_ivp
    from scipy.interpolate import CubicSpline
    from scipy.optimize import brentq
except ImportError as missing:
    if sys.executable == "/usr/bin/python3":
        sys.exit(f"{missing}: python3-scipy, python3-iapws and python3-fluids are needed")
    os.execv("/usr/bin/python3", ["/usr/bin/python3"] + sys.argv)
import numpy  # noqa: E402
from raise_model import Air, Boiler, Fire, Path  # noqa: E402
from raise_random import description  # noqa: E402
from raise_supply import Collapse, Fan, Pack  # noqa: E402

STATES = ["water", "drawn", "fuel", "chemical", "monoxide", "bed", "absorbed", "stack", "outside", "steam"]
WATER, DRAWN, STEAM = STATES.index("water"), STATES.index("drawn"), STATES.index("steam")
ABSOLUTE = [1e-5, 1e-3, 1e-9, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 1e-9]
# What is left between them is mostly the water, two fits of one substance (0.02 % of its heat). The charge is allowed more: one
# step of lumwright may pass several bends of the open-circuit table.
ALLOWED = {"time": (1e-3, "of the time"), "water": (0.2, "K"), "fan gas": (0.1, "K"), "air": (2e-4, "of the flow"),
           "volts": (2e-4, "of the voltage"), "heat": (1e-3, "of the fuel's heat"), "suction": (2e-4, "of the suction"),
           "amperes": (2e-4, "of the current"), "charge": (5e-4, "of a full charge"), "fuel": (1e-3, "of the fuel")}


class Water:
    """IAPWS-IF97 of Debian's python3-iapws: internal energy of saturated water, by a spline through its points."""

    def __init__(self):
        grid = numpy.arange(273.16, 520.0, 4.0)
        self.energy = CubicSpline(grid, [IAPWS97(T=t, x=0).u * 1e3 for t in grid])
        self.capacity = self.energy.derivative()

    @staticmethod
    def boiling(absolute):
        return _TSat_P(absolute * 1e-6)

    @staticmethod
    def pressure(t):
        return _PSat_T(t) * 1e6

    def steam_over_water(self, t):
        """Heat that a kilogram of water takes up in leaving as steam, over its energy in the boiler."""
        return IAPWS97(T=t, x=1).h * 1e3 - float(self.energy(t))


class Reference:
    def __init__(self, told, water):
        self.told, self.properties = told, water
        cold = told["air"]
        air = Air(told["matter"]["air_heat_capacity"], told["barometer"])
        self.fire = Fire(told["fire"], told["matter"], cold)
        self.path = Path(told["path"], air, cold, self.fire, Boiler(told["boiler"]))
        self.fan = Fan(told["fan"])
        self.pack = Pack(told["battery"], self.fan)
        self.air, self.cold, self.bed, self.calls = air, cold, None, 0
        self.metal = self.metal_of(told["inputs"])
        self.boils = water.boiling(told["barometer"])
        self.latent = water.steam_over_water(self.boils)
        volume, fill = told["inputs"]["engine.boiler.water"], told["inputs"]["raise.fill"]
        self.left, self.pieces = 1000 * volume, []
        self.purge = told["inputs"]["raise.purge"] * volume * (1 - fill) / fill * IAPWS97(T=self.boils, x=1).rho

    @staticmethod
    def metal_of(inputs):
        """Heat capacity from the masses; usual specific heats of copper, brass and mild steel, 20 to 150 degC."""
        masses = [(inputs.get("engine.boiler.metal." + name), c) for name, c in (("copper", 390), ("brass", 380), ("steel", 480))]
        if all(mass is None for mass, _ in masses):
            return 390 * inputs["engine.boiler.copper_per_litre"] * 1e3 * inputs["engine.boiler.water"]
        return sum(mass * c for mass, c in masses if mass is not None)

    def instant(self, t, water, drawn, kindling):
        """The air flow at which the fan holds what the path asks for."""
        self.calls += 1
        lit = self.fire.lit(t) if kindling else 1.0
        supply = self.pack.at(drawn)

        def follow(bed):
            return self.path.follow(bed, lit, kindling, water)

        def spare(bed):
            f = follow(bed)
            return self.fan.pressure(f["volume"], self.air.rho(f["fan_gas"]), supply["speed"]) - f["suction"]
        if self.bed is None:  # from far too much down to the first flow that leaves pressure to spare
            high = self.fan.free_air * self.air.rho(self.cold)
            while spare(high * 0.8) < 0:
                high *= 0.8
            low = high * 0.8
        else:
            low, high = 0.995 * self.bed, 1.005 * self.bed
            while spare(low) < 0:
                low, high = 0.9 * low, low
            while spare(high) > 0:
                low, high = high, 1.1 * high
        self.bed = brentq(spare, low, high, xtol=1e-13, rtol=1e-9)
        return dict(**follow(self.bed), **supply)

    def outside(self, rise):
        """A conductance, or plates: bare ones lose with the rise to 1.2 (16.6 W/m2K at 120 K), behind felt in series."""
        loss = self.told["boiler"]["loss"]
        if not isinstance(loss, dict):
            return loss * rise
        hinders = 1 / (loss["bare"] * (abs(rise) / 120) ** 0.2) if rise else 0.0
        if loss["lagging"]:
            hinders += 1 / loss["lagging"]
        return loss["surface"] * rise / hinders if rise else 0.0

    def rates(self, t, x, kindling, venting):
        now = self.instant(t, x[WATER], x[DRAWN], kindling)
        heat = now["heat"]
        outside = self.outside(x[WATER] - self.cold)
        net = heat["absorbed"] - outside
        climb = 0.0 if venting else net / (self.left * float(self.properties.capacity(x[WATER])) + self.metal)
        return [climb, now["drain"], now["fuel"], now["chemical"], now["monoxide"], now["to_bed"], heat["absorbed"],
                heat["stack"], outside, net / self.latent if venting else 0.0]

    def run(self):
        """Times of the events; the pieces between the corners stay in `pieces`."""
        told = self.told["raise"]
        x, t, found = numpy.zeros(len(STATES)), 0.0, {}
        x[WATER], x[DRAWN] = told["start"], self.told["battery"]["drawn"]
        goals = {name: self.properties.boiling(told[name + "_at"] + self.told["barometer"])
                 for name in ("own_blower", "working") if told[name + "_at"] is not None}
        last = max(goals, key=goals.get)
        goals["boils"] = self.boils
        venting, kindled = False, self.told["fire"]["kindling"]
        while last not in found and "pack_stops" not in found and t < told["give_up"]:
            kindling = t < kindled
            watched = {}
            if venting:
                watched["purged"] = lambda t, x: x[STEAM] - self.purge
            else:
                for name in goals.keys() - found.keys():
                    watched[name] = lambda t, x, goal=goals[name]: x[WATER] - goal
            watched["pack_stops"] = lambda t, x: min(self.pack.emf(x[DRAWN]) - self.pack.end_emf,
                                                     1.0 - x[DRAWN] / self.told["battery"]["full"])
            for event in watched.values():
                event.terminal = True
            piece = solve_ivp(lambda t, x: self.rates(t, x, kindling, venting), (t, kindled if kindling else told["give_up"]), x,
                              events=list(watched.values()), rtol=1e-6, atol=ABSOLUTE, dense_output=True, first_step=1.0, max_step=10.0)
            if not piece.success and piece.status != 1:
                sys.exit(f"the reference does not integrate: {piece.message}")
            self.pieces.append((t, piece.t[-1], kindling, piece.sol))
            t, x = piece.t[-1], piece.y[:, -1]
            for name, times in zip(watched, piece.t_events):
                if len(times):
                    found[name] = (t, dict(zip(STATES, x)))
            if "boils" in found and "purged" not in found:
                venting = self.purge > 0
            if "purged" in found and venting:
                venting = False
                self.left -= self.purge
        return found

    def at(self, t):
        """State and instant at any time of the run, or nothing beyond its end."""
        for begin, end, kindling, solution in self.pieces:
            if t <= end * (1 + 1e-9):
                x = solution(min(max(t, begin), end))
                return x[WATER], x[DRAWN], self.instant(t, x[WATER], x[DRAWN], kindling)
        return None


class Worst:
    def __init__(self):
        self.found = {}

    def note(self, what, apart, where):
        if not apart <= self.found.get(what, (-1.0,))[0]:
            self.found[what] = (apart, where)

    def bad(self):
        return [what for what, (apart, _) in self.found.items() if not apart <= ALLOWED[what][0]]

    def __str__(self):
        return ", ".join(f"{what} {apart:.2g} {ALLOWED[what][1]} ({where})" for what, (apart, where) in self.found.items())


def compare_events(ours, found, worst):
    """lumwright's events and accounts against the reference's."""
    for name in ("own_blower", "working", "pack_stops"):
        if (ours[name] is None) != (name not in found):
            worst.note("time", float("inf"), f"{name} is on one side only")
        if ours[name] is None or name not in found:
            continue
        t, x = found[name]
        worst.note("time", abs(ours[name]["at"]["t"] / t - 1), name)
        account = ours[name]["account"]
        for term in ("chemical", "monoxide", "bed", "absorbed", "stack", "outside"):
            worst.note("heat", abs(account[term] - x[term]) / x["chemical"], f"{term} at {name}")
        worst.note("fuel", abs(account["fuel"] / x["fuel"] - 1), name)
        closes = x["chemical"] - x["monoxide"] - x["bed"] - x["absorbed"] - x["stack"]
        worst.note("heat", abs(closes) / x["chemical"], f"the reference's own balance at {name}")


def compare_series(ours, reference, worst):
    end = reference.pieces[-1][1]
    for row in ours["series"]:
        if row["t"] > end:
            continue
        water, drawn, now = reference.at(row["t"])
        where = f"at {row['t']:.0f} s"
        worst.note("water", abs(row["water"] - water), where)
        worst.note("fan gas", abs(row["fan_gas"] - now["fan_gas"]), where)
        worst.note("air", abs(row["air"] / now["air"] - 1), where)
        worst.note("volts", abs(row["volts"] / now["volts"] - 1), where)
        worst.note("amperes", abs(row["amperes"] / now["amperes"] - 1), where)
        worst.note("charge", abs(row["charge_left"] - 1 + drawn / reference.told["battery"]["full"]), where)
        worst.note("suction", abs(row["box_suction"] / now["box_suction"] - 1), where)


def lived_through(told, water):
    """Light-ups of one charge, each raised from what the last one left; complaints."""
    ours, full = told["light_ups"], told["battery"]["full"]
    told = json.loads(json.dumps(told))
    told["raise"]["working_at"] = None
    times = []
    while told["battery"]["drawn"] < full:
        found = Reference(told, water).run()
        if "own_blower" not in found or (ours["within"] and found["own_blower"][0] > ours["within"]):
            break
        t, x = found["own_blower"]
        times.append(t)
        told["battery"]["drawn"] = x["drawn"]
    print(f"  light-ups one after the other: {len(times)}, {times[0]:.1f} s at first and {times[-1]:.1f} s at last; ours "
          f"{ours['count']}, {ours['first']:.1f} and {ours['last']:.1f} s" if times else "  no light-up")
    if abs(len(times) - ours["count"]) > 1:
        return ["count of light-ups"]
    return ["last light-up"] if times and abs(ours["last"] / times[-1] - 1) > 0.01 else []


def ask(probe, file, *more):
    run = subprocess.run([probe, file, *more], capture_output=True, text=True)
    return (json.loads(run.stdout), "") if run.returncode == 0 else (None, run.stderr.strip())


def compare(told, water):
    """Differences, and a line about the reference's run."""
    reference, worst = Reference(told, water), Worst()
    found = reference.run()
    compare_events(told["raise"], found, worst)
    compare_series(told["raise"], reference, worst)
    times = ", ".join(f"{name} {t:.1f} s" for name, (t, _) in found.items() if name != "purged")
    return worst, f"{times}; {reference.calls} instants"


def examples(probe, files, water):
    failed = False
    for file in files:
        told, complaint = ask(probe, file)
        if told is None:
            sys.exit(f"{file}: {complaint}")
        worst, line = compare(told, water)
        failed = failed or bool(worst.bad())
        print(f"{os.path.basename(file)}: {line}\n  worst: {worst}")
        if worst.bad():
            print("  BEYOND WHAT IS ALLOWED: " + ", ".join(f"{what} {ALLOWED[what][0]:g}" for what in worst.bad()))
        if told["raise"]["own_blower"] and not told["battery"]["step_up"]:  # behind a step-up all are alike
            wrong = lived_through(told, water)
            failed = failed or bool(wrong)
            if wrong:
                print("  BEYOND WHAT IS ALLOWED: " + ", ".join(wrong))
    return failed


def made_up(probe, count, number, water):
    rng, all_worst, skipped, failed = random.Random(number), Worst(), {}, False
    with tempfile.TemporaryDirectory() as directory:
        for i in range(count):
            file, text = os.path.join(directory, f"{i}.yaml"), description(rng)
            with open(file, "w") as out:
                out.write(text)
            told, why = ask(probe, file)
            if told is not None:
                try:
                    worst, line = compare(told, water)
                except Collapse as collapse:
                    told, why = None, str(collapse)
            if told is None:
                skipped[why.splitlines()[0][:90]] = skipped.get(why.splitlines()[0][:90], 0) + 1
                continue
            for what, (apart, where) in worst.found.items():
                all_worst.note(what, apart, f"engine {i}, {where}")
            if worst.bad():
                failed = True
                print(f"made-up engine {i}: {line}\n  BEYOND WHAT IS ALLOWED: {worst}\n{text}")
    left_out = sum(skipped.values())
    print(f"draw {number}: {count - left_out} of {count} made-up engines compared\n  worst: {all_worst}")
    for why, times in skipped.items():
        print(f"  left out {times}: {why}")
    return failed or left_out > count / 2


def main():
    if len(sys.argv) < 5:
        sys.exit(__doc__)
    probe, count, number, files = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), sys.argv[4:]
    water = Water()
    failed = examples(probe, files, water)
    if count:
        failed = made_up(probe, count, number, water) or failed
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
