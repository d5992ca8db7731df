"""Compares lumwright's saturation states with Debian's python3-iapws (IF97) at 200 random temperatures, 5 to 195 degC.

usage: python3 iapws_saturation.py <path of water_probe> [number of the grid]
"""
import random
import subprocess
import sys

from iapws import IAPWS97
from iapws.iapws97 import _PSat_T, _TSat_P

# Pressure and temperature are the same equation on both sides. The rest are two fits to the same water (SR1-86 and
# IF97 regions 1 and 2): the allowance is their greatest distance over this range, found by comparing both.
ALLOWED = {
    "pressure": ("relative", 1e-9),
    "temperature": ("relative", 1e-9),
    "water density": ("relative", 3e-5),
    "steam density": ("relative", 1.6e-4),
    "water enthalpy": ("J/kg", 250.0),
    "steam enthalpy": ("J/kg", 250.0),
    "water energy": ("J/kg", 250.0),
    "steam energy": ("J/kg", 250.0),
}


def library(kelvins):
    water, steam = IAPWS97(T=kelvins, x=0), IAPWS97(T=kelvins, x=1)
    pressure = _PSat_T(kelvins)
    return [pressure * 1e6, _TSat_P(pressure), water.rho, steam.rho, water.h * 1e3, steam.h * 1e3, water.u * 1e3,
            steam.u * 1e3]


def main():
    grid_number = int(sys.argv[2]) if len(sys.argv) > 2 else random.SystemRandom().randrange(2**32)
    print("grid", grid_number)
    dice = random.Random(grid_number)
    grid = [dice.uniform(278.15, 468.15) for _ in range(200)]
    probe = subprocess.run([sys.argv[1]], input="\n".join(map(repr, grid)), capture_output=True, text=True, check=True)
    lines = probe.stdout.splitlines()
    if len(lines) != len(grid):
        sys.exit(f"{len(grid)} temperatures in, {len(lines)} states out")
    worst = dict.fromkeys(ALLOWED, 0.0)
    for kelvins, line in zip(grid, lines):
        for (name, (kind, _)), ours, theirs in zip(ALLOWED.items(), map(float, line.split()), library(kelvins)):
            apart = abs(ours - theirs) / (abs(theirs) if kind == "relative" else 1.0)
            worst[name] = max(worst[name], apart if apart == apart else float("inf"))
    failed = False
    for name, (kind, allowed) in ALLOWED.items():
        verdict = "ok" if worst[name] <= allowed else "TOO FAR"
        failed |= verdict != "ok"
        print(f"{name:15} worst {worst[name]:.3g}, allowed {allowed:.3g} {kind}: {verdict}")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
