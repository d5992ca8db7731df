"""Asks draught_probe for friction factors and bed drops on a random grid and compares with the library fluids.

Use: fluids_grid.py <probe executable>. Fixed seed, 500 points, agreement to 1e-9. Exit status 1 on a difference."""
import random
import subprocess
import sys
import os

try:
    from fluids.friction import Churchill_1977
    from fluids.packed_bed import dP_packed_bed
except ImportError:
    if sys.executable == "/usr/bin/python3":
        sys.exit("python3-fluids is not installed")
    os.execv("/usr/bin/python3", ["/usr/bin/python3"] + sys.argv)

POINTS, TOLERANCE = 500, 1e-9


def spread(rng, low, high):
    """Evenly spread over the decades between low and high."""
    return low * (high / low) ** rng.random()


def one(rng, i):
    """A question for the probe and the library's answer."""
    if i % 2 == 0:
        re, rough = spread(rng, 1.0, 1e7), rng.choice([0.0, spread(rng, 1e-6, 0.05)])
        return ("churchill", re, rough), Churchill_1977(Re=re, eD=rough)
    size, round_, void = spread(rng, 1e-3, 2e-2), rng.uniform(0.5, 1.0), rng.uniform(0.33, 0.6)
    depth, speed = rng.uniform(0.01, 0.1), spread(rng, 1e-3, 3.0)
    rho, mu = rng.uniform(0.2, 1.3), rng.uniform(1.7e-5, 5e-5)
    drop = dP_packed_bed(dp=size, voidage=void, vs=speed, rho=rho, mu=mu, L=depth, sphericity=round_, Method="Ergun")
    return ("ergun", size, round_, void, depth, speed, rho, mu), drop


def main():
    rng = random.Random(20210)
    asked = [one(rng, i) for i in range(POINTS)]
    lines = "".join(" ".join([q[0]] + [repr(float(x)) for x in q[1:]]) + "\n" for q, _ in asked)
    out = subprocess.run([sys.argv[1]], input=lines, capture_output=True, text=True, check=True, timeout=120)
    answers = out.stdout.split("\n")[:-1]
    if len(answers) != POINTS:
        print(f"fluids_grid: {len(answers)} answers to {POINTS} questions")
        return 1
    worst, wrong = 0.0, 0
    for (question, expected), text in zip(asked, answers):
        try:
            off = abs(float(text) / expected - 1.0)
        except ValueError:
            off = float("inf")
        worst = max(worst, off)
        if not off <= TOLERANCE:
            wrong += 1
            print("differs:", *question, "fluids", repr(float(expected)), "lumwright", text)
    print(f"fluids_grid: {POINTS} points, {wrong} differ by more than {TOLERANCE:g}, worst {worst:.2g}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
