"""Steam raising written a second time from the published equations: fire, firebox, tubes and gas path at one instant, each
coupled balance closed by brentq; fan and pack are in raise_supply.py. SI throughout; temperatures in kelvin.

Where literature leaves the choice open, the closure is lumwright's own: which temperature each property is taken at, how
leaks are described, what a box or a tube is coupled to. Agreement says nothing about those choices.
"""
from math import exp, log, log10, pi, sqrt

import numpy
from fluids.fittings import entrance_distance, entrance_rounded
from scipy.interpolate import CubicHermiteSpline, PchipInterpolator
from scipy.optimize import brentq

GAS_CONSTANT, STEFAN, GRAVITY = 8.314462618, 5.670374419e-8, 9.80665
ATOM = {"C": 12.011, "H": 1.00794, "O": 15.9994, "S": 32.065}  # IUPAC
TIGHT = dict(xtol=1e-11, rtol=1e-13)


def root(f, low, high):
    return brentq(f, low, high, **TIGHT)


def monotone(x, y):
    """Fritsch and Butland's cubic, with the slope of the outermost chords at the ends."""
    slopes = PchipInterpolator(x, y).derivative()(x)
    slopes[0], slopes[-1] = (y[1] - y[0]) / (x[1] - x[0]), (y[-1] - y[-2]) / (x[-1] - x[-2])
    return CubicHermiteSpline(x, y, slopes)


class Air:
    """Dry air as a perfect gas (gas constant 287.05), Sutherland's viscosity and conductivity (White), a table of heat
    capacities."""

    def __init__(self, table, pressure):
        self.pressure = pressure
        curve = monotone(numpy.array([row[0] for row in table]), numpy.array([row[1] for row in table]))
        self.grid = [float(curve(t)) for t in range(200, 2501)]  # every kelvin, straight between: 1e-6

    def rho(self, t):
        return self.pressure / (287.05 * t)

    @staticmethod
    def mu(t):
        return 1.716e-5 * (t / 273.15) ** 1.5 * (273.15 + 110.4) / (t + 110.4)

    @staticmethod
    def k(t):
        return 0.0241 * (t / 273.15) ** 1.5 * (273.15 + 194) / (t + 194)

    def cp(self, t):
        i = int(t)
        return self.grid[i - 200] + (t - i) * (self.grid[i - 199] - self.grid[i - 200])

    def pr(self, t):
        return self.mu(t) * self.cp(t) / self.k(t)

    def free(self, t_wall, t_air, size, cylinder):
        """Churchill and Chu 1975, properties at the film temperature and one atmosphere."""
        film = 0.5 * (t_wall + t_air)
        rho = 101325 / (287.05 * film)
        mu, k, pr = self.mu(film), self.k(film), self.pr(film)
        ra = GRAVITY * abs(t_wall - t_air) / film * size**3 * rho**2 / mu**2 * pr
        still, const = (0.60, 0.559) if cylinder else (0.825, 0.492)
        nu = (still + 0.387 * ra ** (1 / 6) / (1 + (const / pr) ** (9 / 16)) ** (8 / 27)) ** 2
        return nu * k / size


def radiation(emissivity, t, around):
    return emissivity * STEFAN * (t + around) * (t * t + around * around)


class Gas:
    """A mixture by mass shares of NASA's seven-coefficient species: enthalpy of a kilogram, counted from `cold`."""

    def __init__(self, parts, cold):
        low, high = numpy.zeros(6), numpy.zeros(6)
        for share, mass, row in parts:
            scale = share * GAS_CONSTANT / (mass * 1e-3)
            low += scale * numpy.array(row["low"][:6])
            high += scale * numpy.array(row["high"][:6])
        self.low, self.high = low.tolist(), high.tolist()
        self.at_cold = 0.0
        self.at_cold = self.h(cold)

    def h(self, t):
        a = self.low if t < 1000 else self.high
        return t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5)))) + a[5] - self.at_cold

    def blend(self, other, share):
        out = Gas.__new__(Gas)
        out.low = [(1 - share) * a + share * b for a, b in zip(self.low, other.low)]
        out.high = [(1 - share) * a + share * b for a, b in zip(self.high, other.high)]
        out.at_cold = (1 - share) * self.at_cold + share * other.at_cold
        return out


class Fire:
    """An oxygen-limited bed: burning goes with the air through it."""

    def __init__(self, f, matter, cold):
        self.f, self.cold = f, cold
        kinds = matter["species"]
        o2_share, rest = matter["oxygen_share"], matter["rest_mass"]
        o2 = o2_share * kinds["O2"]["mass"] / (o2_share * kinds["O2"]["mass"] + (1 - o2_share) * rest)
        o = 2 * ATOM["O"]
        self.air_demand = (o / ATOM["C"] * f["carbon"] + o / (4 * ATOM["H"]) * f["hydrogen"] + o / ATOM["S"] * f["sulphur"]
                           - f["oxygen"]) / o2
        whole_demand = self.air_demand
        co2 = f["carbon"] * (1 + o / ATOM["C"]) + f["sulphur"] * (1 + o / ATOM["S"])
        water = f["moisture"] + f["hydrogen"] * (1 + ATOM["O"] / (2 * ATOM["H"]))
        nitrogen = self.air_demand * (1 - o2) + f["nitrogen"]
        whole = co2 + water + nitrogen
        n2 = (rest, kinds["N2"])
        self.products = Gas([(co2 / whole, kinds["CO2"]["mass"], kinds["CO2"]), (water / whole, kinds["H2O"]["mass"], kinds["H2O"]),
                             (nitrogen / whole, *n2)], cold)
        # A fuel that gives more or less heat than its analysis says has more or less of all that burns. Carbon that leaves
        # as monoxide keeps back 282.98 kJ/mol and half of its oxygen.
        self.air_demand = whole_demand * f["net_heat"] / f["analysis_heat"]
        carbon = f["carbon"] * f["net_heat"] / f["analysis_heat"]
        half_burnt = f["monoxide_loss"] * f["net_heat"] / (282.98e3 / (ATOM["C"] * 1e-3))
        assert half_burnt <= carbon
        self.air_taken = self.air_demand - half_burnt * ATOM["O"] / ATOM["C"] / o2
        # Ash stays in the pan; what of the fuel goes with the gas is the rest, and never more than there is.
        self.gasified = min((1 - f["ash_left"]) * f["net_heat"] / f["analysis_heat"], 1.0)
        self.pure_air = Gas([(o2, kinds["O2"]["mass"], kinds["O2"]), (1 - o2, *n2)], cold)
        depths = f["bed_depth"] / f["burn_depth"]
        self.conversion = 1 - exp(-depths)
        self.mean_use = 1 - self.conversion / depths  # oxygen used, averaged over the depth: 1 - exp(-z/l)
        self.bed_power = f["bed_mass"] * f["bed_capacity"] * (f["glow"] - cold) * (1 - f["lit_at_start"]) / max(f["kindling"], 1e-9)

    def lit(self, t):
        f = self.f
        return 1.0 if t >= f["kindling"] else f["lit_at_start"] + (1 - f["lit_at_start"]) * t / f["kindling"]

    def burn(self, lit, kindling, bed, past):
        """Flows and powers; the enthalpy of the gas from cold is to_gas / gas."""
        f = self.f
        used = lit * self.conversion * bed
        fuel = used / self.air_taken
        chemical = fuel * f["net_heat"]
        monoxide = f["monoxide_loss"] * chemical
        to_bed = min(self.bed_power, chemical - monoxide) if kindling else 0.0
        gas = bed + past + self.gasified * fuel
        return dict(fuel=fuel, chemical=chemical, monoxide=monoxide, to_bed=to_bed, gas=gas, to_gas=chemical - monoxide - to_bed,
                    mixture=self.pure_air.blend(self.products, used * (1 + self.gasified / self.air_demand) / gas))


def laminar_tube(re, pr, ratio):
    """VDI Heat Atlas G1, wall of one temperature."""
    return (3.66**3 + 0.7**3 + (1.615 * (re * pr * ratio) ** (1 / 3) - 0.7) ** 3) ** (1 / 3)


def turbulent_tube(re, pr, ratio):
    xi = (1.8 * log10(re) - 1.5) ** -2
    return xi / 8 * (re - 1000) * pr / (1 + 12.7 * sqrt(xi / 8) * (pr ** (2 / 3) - 1)) * (1 + ratio ** (2 / 3))


def blended(re, laminar, turbulent):
    if re <= 2300:
        return laminar(re)
    if re >= 4000:
        return turbulent(re)
    share = (re - 2300) / 1700
    return (1 - share) * laminar(2300) + share * turbulent(4000)


class Boiler:
    """Firebox as one stirred zone (Hottel), tubes by exp(-NTU)."""

    def __init__(self, b):
        self.b = b

    def heat(self, fire, water):
        """Temperatures and heat flows of `fire` (from Fire.burn) at a water temperature."""
        b, m, gas = self.b, fire["gas"], fire["mixture"]
        h_in = fire["to_gas"] / m

        def balance(t):
            taken = b["surface"] * (b["emissivity"] * STEFAN * (t**4 - water**4) + b["convection"] * (t - water))
            return m * (h_in - gas.h(t)) - taken
        firebox = root(balance, 200.0, 3400.0)
        h_firebox = gas.h(firebox)
        n, d, length = b["tubes"], b["tube_bore"], b["tube_length"]

        def ntu(t_out):
            mean = 0.5 * (firebox + t_out)
            if abs(firebox - t_out) > 1e-3:
                cp = (h_firebox - gas.h(t_out)) / (firebox - t_out)
            else:
                cp = (gas.h(mean + 0.5) - gas.h(mean - 0.5))
            mu = 1.458e-6 * mean**1.5 / (mean + 110.4)
            k = 2.64638e-3 * mean**1.5 / (mean + 245.4 * 10 ** (-12 / mean))
            re, pr = 4 * m / (n * pi * d * mu), mu * cp / k
            nu = blended(re, lambda r: laminar_tube(r, pr, d / length), lambda r: turbulent_tube(r, pr, d / length))
            return nu * k * pi * length * n / (m * cp)
        if abs(firebox - water) < 1e-7:
            leaves = along = firebox
        else:
            leaves = root(lambda t: water + (firebox - water) * exp(-ntu(t)) - t, min(water, firebox), max(water, firebox))
            along = water + (firebox - leaves) / ntu(leaves)
        taken = m * (h_in - gas.h(leaves))
        absorbed = b["heat_factor"] * taken
        if taken > 0:  # gas that is cooled to the water's temperature has no more to give
            absorbed = min(absorbed, m * (h_in - min(gas.h(water), gas.h(leaves))))
        return dict(firebox=firebox, tube_exit=leaves, tube_mean=along, absorbed=absorbed, stack=m * gas.h(leaves),
                    astray=taken - absorbed)


def friction(re, ratio, rough):
    """Churchill 1977 with Shah's developing flow in place of its laminar term."""
    x = ratio / re
    shah = 4 / re * (3.44 / sqrt(x) + (1.25 / (4 * x) + 16 - 3.44 / sqrt(x)) / (1 + 0.00021 / x**2))
    a = (2.457 * log(1 / ((7 / re) ** 0.9 + 0.27 * rough))) ** 16
    b = (37530 / re) ** 16
    return 8 * ((shah / 8) ** 12 + (a + b) ** -1.5) ** (1 / 12)


def head(m, area, rho):
    return 0.5 * (m / area) ** 2 / rho


def disc(d):
    return pi / 4 * d * d


def in_tube(tube, m, rho, mu):
    d, length = tube["bore"], tube["length"]
    re = 4 * m / (pi * d * mu)
    return friction(re, length / d, tube["roughness"] / d) * length / d * head(m, disc(d), rho)


class Path:
    """From the ash-pan to the fan: suctions add up, leaks join, the gas cools."""

    def __init__(self, p, air, cold, fire, boiler):
        self.p, self.air, self.cold, self.fire, self.boiler = p, air, cold, fire, boiler
        self.rho, self.mu, self.cp = air.rho(cold), air.mu(cold), air.cp(cold)
        s = p["grate_open"]
        self.k_grate = (0.707 * sqrt(1 - s) + 1 - s) ** 2 / s**2  # Idelchik, sharp perforated plate
        self.tubes = boiler.b["tubes"]
        self.tube_area = self.tubes * disc(p["tube"]["bore"])
        self.k_firebox = 0.5 * (1 - self.tube_area / p["firebox"]) ** 0.75  # Idelchik
        a = p["adapter"]
        bore = a["tube"]["bore"]
        self.k_inlet = {"square": lambda: 0.5,
                        "projecting": lambda: entrance_distance(Di=bore, t=a["edge"], l=a["projection"], method="Idelchik"),
                        "rounded": lambda: entrance_rounded(Di=bore, rc=a["radius"], method="Idelchik")}[a["inlet"]]()
        self.k_blast = (bore / (4 * p["blast_pipe_gap"])) ** 2 if p["blast_pipe_gap"] else 0.0
        self.k_box = (1 - (bore / p["box"]["bore"]) ** 2) ** 2 if p["box"] else 1.0  # Borda and Carnot

    def mixed(self, m, t, cold_air):
        c = self.air.cp(t)
        return (m * c * t + cold_air * self.cp * self.cold) / (m * c + cold_air * self.cp)

    def rising(self, height, t):
        return GRAVITY * height * (self.rho - self.air.rho(t))

    def walled(self, t, inside, outside):
        """Conductance through a wall that takes the temperature at which both sides agree."""
        wall = root(lambda w: inside(w) * (t - w) - outside(w) * (w - self.cold), min(t, self.cold), max(t, self.cold))
        return 1 / (1 / inside(wall) + 1 / outside(wall))

    def follow(self, bed, lit, kindling, water):
        """Everything along the path for an air flow through the bed."""
        p, air, cold = self.p, self.air, self.cold
        fire_side = self.fire
        suction = 0.0
        if p["air_entry"]:
            suction += head(bed, p["air_entry"]["discharge"] * p["air_entry"]["area"], self.rho)
        suction += self.k_grate * head(bed, p["grate"], self.rho)
        t_bed = cold + lit * fire_side.mean_use * (fire_side.f["bed_exit"] - cold)
        risen = bed * (1 + lit * fire_side.conversion * fire_side.mean_use * fire_side.gasified / fire_side.air_taken)
        d, e, v = p["particle"] * p["sphericity"], p["voidage"], risen / (air.rho(t_bed) * p["grate"])
        suction += p["bed_depth"] * (150 * air.mu(t_bed) * (1 - e) ** 2 * v / (e**3 * d**2)
                                     + 1.75 * air.rho(t_bed) * (1 - e) * v**2 / (e**3 * d))  # Ergun
        suction -= self.rising(p["bed_depth"], t_bed)
        past = bed * p["past_bed"] / (1 - p["past_bed"])
        fire = fire_side.burn(lit, kindling, bed, past)
        heat = self.boiler.heat(fire, water)
        m = fire["gas"]
        suction -= self.rising(p["firebox_height"], heat["firebox"])
        suction += self.k_firebox * head(m, self.tube_area, air.rho(heat["firebox"]))
        suction += in_tube(p["tube"], m / self.tubes, air.rho(heat["tube_mean"]), air.mu(heat["tube_mean"]))
        suction += head(m, self.tube_area, air.rho(heat["tube_exit"]))
        # momentum of gas that slows down as it cools: (m/A)^2 / 2 (1/rho_hot - 1/rho_cold) comes back
        suction -= head(m, self.tube_area, air.rho(heat["firebox"])) - head(m, self.tube_area, air.rho(heat["tube_exit"]))
        leak = m * p["smokebox_leak"] / (1 - p["smokebox_leak"]) + self.ring(suction)
        t = self.mixed(m, heat["tube_exit"], leak)
        m += leak
        suction -= self.rising(p["smokebox_height"], t)
        suction, t = self.adapter(suction, m, t)
        box_suction = suction
        if p["bleed"] and suction > 0:
            bleed = p["bleed"]["discharge"] * p["bleed"]["area"] * sqrt(2 * self.rho * suction)
            t = self.mixed(m, t, bleed)
            m += bleed
        if p["box"]:
            suction, t = self.box(suction, m, t)
        return dict(bed_air=bed, air=bed + past, fan=m, fan_gas=t, volume=m / air.rho(t), suction=suction,
                    box_suction=box_suction, **fire, heat=heat)

    def ring(self, suction):
        """Plane Poiseuille flow eased by eccentricity, with the heads of inlet and exit."""
        r = self.p["ring"]
        if not r or r["gap"] <= 0 or suction <= 0:
            return 0.0
        viscous = 12 * self.mu * r["engaged"] / (r["gap"] ** 2 * (1 + 1.5 * r["eccentricity"] ** 2))
        inertial = 0.75 * self.rho
        v = (-viscous + sqrt(viscous**2 + 4 * inertial * suction)) / (2 * inertial)
        return self.rho * v * pi * r["mean_diameter"] * r["gap"]

    def adapter(self, suction, m, t):
        a, air = self.p["adapter"], self.air
        d, length, area = a["tube"]["bore"], a["tube"]["length"], disc(a["tube"]["bore"])
        leaves, cooled = t, a["cooled"]  # the part of it outside the chimney
        if abs(t - self.cold) > 1e-6 and cooled > 0:
            re, pr = 4 * m / (pi * d * air.mu(t)), air.pr(t)

            def hausen(r):
                g = d / cooled * r * pr
                return 3.66 + 0.0668 * g / (1 + 0.04 * g ** (2 / 3))

            def gnielinski(r):
                f8 = (0.790 * log(r) - 1.64) ** -2 / 8
                return f8 * (r - 1000) * pr / (1 + 12.7 * sqrt(f8) * (pr ** (2 / 3) - 1))
            inside = blended(re, hausen, gnielinski) * air.k(t) / d * pi * d * cooled
            skin = pi * a["outside"] * cooled
            ua = self.walled(t, lambda w: inside, lambda w: skin * (air.free(w, self.cold, a["outside"], True)
                                                                    + radiation(a["emissivity"], w, self.cold)))
            leaves = self.cold + (t - self.cold) * exp(-ua / (m * air.cp(t)))
        mean = 0.5 * (t + leaves)
        suction += (self.k_blast + self.k_inlet) * head(m, area, air.rho(t))
        suction += in_tube(a["tube"], m, air.rho(mean), air.mu(mean)) + a["fittings"] * head(m, area, air.rho(mean))
        suction += self.k_box * head(m, area, air.rho(leaves)) - self.rising(a["rise"], mean)
        return suction, leaves

    def box(self, suction, m, t):
        b, air = self.p["box"], self.air
        if abs(t - self.cold) > 1e-6:
            ua = self.walled(t, lambda w: b["area"] * b["stirring"] * air.free(w, t, b["height"], False),
                             lambda w: b["area"] * (air.free(w, self.cold, b["height"], False)
                                                    + radiation(b["emissivity"], w, self.cold)))
            t = self.cold + (t - self.cold) / (1 + ua / (m * air.cp(t)))
        shadow = (b["fan_opening"] / (4 * b["distance"])) ** 2
        return suction + shadow * head(m, disc(b["fan_opening"]), air.rho(t)) - self.rising(b["rise"], t), t
