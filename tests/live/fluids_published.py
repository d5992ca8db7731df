"""Computes with the library fluids every row of tests/published/gas_path.yaml that it knows, so that a wrong frozen
number cannot stand. The first argument, a probe, is not needed and ignored. Exit status 1 if a row is wrong."""
import math
import os
import re
import sys

try:
    import fluids
    import yaml
    from fluids import fittings, friction, packed_bed
except ImportError:
    if sys.executable == "/usr/bin/python3":
        sys.exit("python3-fluids or python3-yaml is not installed")
    os.execv("/usr/bin/python3", ["/usr/bin/python3"] + sys.argv)

UNITS = {"mm": 1e-3, "m": 1.0, "cm2": 1e-4, "m/s": 1.0, "kg/m3": 1.0, "Pa": 1.0, "Pa s": 1.0, "kg/s": 1.0, "g/s": 1e-3,
         "mmH2O": 9.80665, "J/kg/K": 1.0, "W/K": 1.0, "W/m/K": 1.0, "W/m2/K": 1.0, "K": 1.0}
R_AIR = 287.05


def si(text):
    """The SI number of '13.5 mm', '20 degC', '0.6'; other words stay words."""
    match = re.fullmatch(r"([-+0-9.eE]+)(?: (.+))?", str(text))
    if not match:
        return text
    number, unit = float(match[1]), match[2]
    if unit == "degC":
        return number + 273.15
    return number * (UNITS[unit] if unit else 1.0)


def air_density(t):
    return 101325.0 / (R_AIR * t)


def air_viscosity(t):
    return 1.716e-5 * (t / 273.15) ** 1.5 * (273.15 + 110.4) / (t + 110.4)


def book(r):
    return r.get("against", r.get("handbook", "rennels")).capitalize()


def bed(r):
    law = {"ergun": "Ergun", "carman": "Carman", "erdim": "Erdim, Akgiray & Demir", "kta": "KTA", "brauer": "Brauer"}
    return packed_bed.dP_packed_bed(dp=r["particle"], voidage=r["voidage"], vs=r["speed"], rho=r["density"],
                                    mu=r["viscosity"], L=r["depth"], sphericity=r["sphericity"], Method=law[r["law"]])


def bed_flow(r):
    """The flow at which the library's Ergun drop is the row's, by halving."""
    rho, mu = air_density(r["temperature"]), air_viscosity(r["temperature"])
    low, high = 0.0, 0.1
    for _ in range(100):
        mid = 0.5 * (low + high)
        drop = packed_bed.Ergun(dp=r["particle"] * r["sphericity"], voidage=r["voidage"], vs=mid / rho / r["grate"],
                                rho=rho, mu=mu, L=r["depth"])
        low, high = (mid, high) if drop < r["drop"] else (low, mid)
    return low


LAWS = {
    "churchill": lambda r: friction.Churchill_1977(Re=r["re"], eD=r["roughness"]),
    "colebrook": lambda r: friction.Colebrook(Re=r["re"], eD=r["roughness"]),
    "square inlet": lambda r: fittings.entrance_sharp(method=book(r)),
    "projecting inlet": lambda r: fittings.entrance_distance(Di=r["bore"], t=r["wall"], l=r["projection"], method=book(r)),
    "rounded inlet": lambda r: fittings.entrance_rounded(Di=r["bore"], rc=r["radius"], method=book(r)),
    "sudden expansion": lambda r: fittings.diffuser_sharp(Di1=r["small"], Di2=r["large"]),
    "sudden contraction": lambda r: None if book(r) == "Idelchik" else fittings.contraction_sharp(
        Di1=r["large"], Di2=r["small"], method=book(r)),
    "reynolds": lambda r: fluids.Reynolds(V=r["speed"], D=r["bore"], rho=r["density"], mu=r["viscosity"]),
    "friction lengths": lambda r: fluids.K_from_f(fd=r["friction"], L=r["length"], D=r["bore"]),
    "heads": lambda r: fluids.dP_from_K(K=r["k"], rho=r["density"], V=r["speed"]),
    "terminal velocity": lambda r: fluids.v_terminal(D=r["size"], rhop=r["piece"], rho=r["density"], mu=r["viscosity"]),
    "bed": bed,
    "bed flow": bed_flow,
    "packed voidage": lambda r: packed_bed.voidage_Benyahia_Oneil(Dpe=r["particle"], Dt=r["box"],
                                                                  sphericity=r["sphericity"]),
}
# Rows whose tolerance lets our curve stray from the library's say less about the frozen number: it must still be exact.
FROZEN_DIGITS = 6e-6


def main():
    path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "published", "gas_path.yaml")
    with open(path, encoding="utf-8") as file:
        table = yaml.safe_load(file)["rows"]
    checked = wrong = 0
    for row in table:
        law = LAWS.get(row["what"])
        r = {key: si(value) for key, value in row.items() if key not in ("id", "what", "source", "standing")}
        live = law(r) if law else None
        if live is None:
            continue
        checked += 1
        allowed = FROZEN_DIGITS if "via fluids" in row["source"] else max(FROZEN_DIGITS, r["tolerance"])
        if not math.isclose(live, r["expect"], rel_tol=allowed):
            wrong += 1
            print(f"row {row['id']}: frozen {r['expect']!r}, fluids {float(live)!r}")
    print(f"fluids_published: {checked} of {len(table)} rows recomputed with fluids {fluids.__version__}, {wrong} wrong")
    return 1 if wrong or checked < 66 else 0


if __name__ == "__main__":
    sys.exit(main())
