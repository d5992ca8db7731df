#!/usr/bin/env python3
"""Asks the `units` program again for every conversion in tests/published/conversions.yaml.

A second opinion on the frozen numbers that the unit table is tested against: a wrong number there would show here.
Usage: units_conversions.py CONVERSIONS.YAML. Exit status 0: all agree; 1: a difference; 77: no such program (skipped).
"""
import re
import shutil
import subprocess
import sys

LARGEST_DIFFERENCE = 1e-12  # relative; the program prints 15 digits


def rows(path):
    with open(path, encoding="utf-8") as file:
        for line in file:
            found = re.search(r'id: "([^"]*)".*program: "([^"]*)", si: "([^"]*)", expect: ([^,]*),', line)
            if found:
                yield found.groups()


def ask(expression, unit):
    answer = subprocess.run(["units", "--terse", "--digits", "15", expression, unit], capture_output=True, text=True)
    return float(answer.stdout.split()[0])


def main():
    if shutil.which("units") is None:
        print("the `units` program is not installed")
        return 77
    wrong = count = 0
    for name, expression, unit, expected in rows(sys.argv[1]):
        count += 1
        got = ask(expression, unit)
        if abs(got - float(expected)) > LARGEST_DIFFERENCE * abs(float(expected)):
            wrong += 1
            print(f"{name}: frozen {expected}, units says {got!r} {unit}")
    print(f"{count} conversions, {wrong} differ")
    return 0 if count > 80 and wrong == 0 else 1


sys.exit(main())
