"""The electrical half of raise_model.py: the fan's curve and speed, and the pack that drives it."""
from math import sqrt

import numpy
from raise_model import monotone, root


class Fan:
    def __init__(self, f):
        self.f = f
        x, y = (numpy.array(column) for column in zip(*f["points"]))
        self.free_air, self.shut_off = float(x[-1]), float(y[0])
        self.curve = monotone(x, y) if len(x) > 3 else lambda q: numpy.interp(q, x, y)

    def speed(self, volts):
        x, y = zip(*self.f["speed_line"])
        i = max(1, min(len(x) - 1, int(numpy.searchsorted(x, volts))))
        return y[i - 1] + (y[i] - y[i - 1]) * (volts - x[i - 1]) / (x[i] - x[i - 1])

    def pressure(self, volume, rho, speed):
        """Similarity laws: Q ~ n, p ~ n^2 rho; the curve holds at 1.2 kg/m3."""
        n = speed / self.f["speed"]
        q = volume / n
        at = float(self.curve(q)) if q < self.free_air else -1e3 * (q / self.free_air - 1) * self.shut_off
        return n * n * at * rho / 1.2


class Collapse(Exception):
    """A pack that cannot give the power before it has sunk to its stop: beyond this model."""


class Pack:
    """Open-circuit voltage behind one resistance; the highest voltage at which pack and load agree."""

    def __init__(self, b, fan):
        self.b, self.fan, self.up, self.duty = b, fan, b["step_up"], b["duty"] or 1.0
        soc, volts = b["soc"], b["ocv"]
        order = sorted(range(len(soc)), key=lambda i: soc[i])
        self.soc = [soc[i] for i in order]
        self.ocv = [volts[i] * b["series"] * b["cells_inside"] for i in order]
        floors = [b["stop_at"] or 0.0]
        if self.up:
            floors.append(self.up["input_min"])
        elif not b["duty"]:
            floors.append(fan.f["stops"])
        self.floor = max(floors)
        lowest = self.floor + self.pulse_resistance() * self.current(self.floor)
        above = self.floor * 1.001 + self.pulse_resistance() * self.current(self.floor * 1.001)
        if above <= lowest:
            raise Collapse("the pack collapses above its stop")
        self.end_emf = lowest

    def pulse_resistance(self):
        return self.b["resistance"] / self.duty

    def emf(self, drawn):
        return float(numpy.interp(1 - drawn / self.b["full"], self.soc, self.ocv))

    def fan_current(self, volts):
        return self.b["fan_current"] * (volts / self.b["fan_voltage"]) ** self.b["current_exponent"]

    def chopped(self, volts):
        """Speed and mean current, over rated: D (v - b n) / w = i0 + a n^2."""
        m, v = self.b["motor"], volts / self.b["fan_voltage"]
        n = root(lambda n: self.duty * (v - m["back_emf"] * n) / m["winding"] - m["idle"] - m["air"] * n * n, 0.0, 3.0)
        return n, m["idle"] + m["air"] * n * n

    def current(self, v):
        """Mean current at a terminal voltage."""
        if self.b["duty"]:
            return self.chopped(v)[1] * self.b["fan_current"]
        if not self.up:
            return self.fan_current(v)
        u = self.up
        rail = u["output"] + u["diode"]
        if v >= rail:
            return self.fan_current(v - u["diode"]) + u["quiescent"]
        a = u["coil"] + (1 - v / rail) * u["switch"]
        b = v - 0.5 * rail * u["switching"]
        c = rail * self.fan_current(u["output"]) + v * u["quiescent"]
        return (b - sqrt(b * b - 4 * a * c)) / (2 * a)

    def at(self, drawn):
        emf = max(self.emf(drawn), self.end_emf)
        r = self.pulse_resistance()
        volts = root(lambda v: v + r * self.current(v) - emf, self.floor * (1 - 1e-12), emf)
        amperes = self.current(volts)
        heavy = max(amperes / self.b["rated_current"], 1.0) ** (self.b["rate_exponent"] - 1)  # Peukert
        if self.b["duty"]:
            speed = self.chopped(volts)[0] * self.fan.speed(self.fan.f["rated_voltage"])
        else:
            speed = self.fan.speed(max(self.up["output"], volts - self.up["diode"]) if self.up else volts)
        return dict(volts=volts, amperes=amperes, drain=amperes * heavy, speed=speed)
