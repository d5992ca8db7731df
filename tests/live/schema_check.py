#!/usr/bin/env python3
"""Holds the program's JSON Schema against a general validator (python3-jsonschema) and its own reader.

Usage: schema_check.py LUMWRIGHT EXAMPLES_DIR. The schema must be a valid one of its draft; it must accept the examples, the
description that `new` writes, and values in every form; it must refuse what the reader refuses for its form.
Exit status 0: all as it should be; 1: not; 77: a package is missing (skipped).
"""
import copy
import glob
import json
import os
import re
import subprocess
import sys
import tempfile

try:
    import jsonschema
    import yaml
    from jsonschema import Draft202012Validator
except ImportError as missing:
    print(f"skipped: {missing}")
    sys.exit(77)

program, examples = sys.argv[1:3]


class Yaml12(yaml.SafeLoader):
    """As editors read: 1:06 and a date are texts, not 66 and a moment as in YAML 1.1."""


Yaml12.yaml_implicit_resolvers = {first: [(tag, kind) for tag, kind in kinds if tag not in
                                          ("tag:yaml.org,2002:int", "tag:yaml.org,2002:float", "tag:yaml.org,2002:timestamp")]
                                  for first, kinds in yaml.SafeLoader.yaml_implicit_resolvers.items()}
Yaml12.add_implicit_resolver("tag:yaml.org,2002:int", re.compile(r"^[-+]?[0-9]+$"), list("-+0123456789"))
Yaml12.add_implicit_resolver("tag:yaml.org,2002:float", re.compile(r"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$"),
                             list("-+0123456789."))


def run(*arguments):
    return subprocess.run([program, *arguments], capture_output=True, text=True)


schema = json.loads(run("schema").stdout)
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
failures = 0


def expect(accepted, name, description):
    global failures
    errors = [error.message for error in validator.iter_errors(description)]
    if accepted != (not errors):
        failures += 1
        print(f"{name}: {'refused: ' + errors[0] if errors else 'accepted'}")


def put(description, path, value):
    changed = copy.deepcopy(description)
    *parents, last = path.split(".")
    place = changed
    for key in parents:
        if place.get(key) is None:
            place[key] = {}
        place = place[key]
    place[last] = value
    return changed


def reader_refuses(text):
    with tempfile.NamedTemporaryFile("w", suffix=".yaml", encoding="utf-8") as file:
        file.write(text)
        file.flush()
        return run("check", file.name).returncode == 2


files = sorted(glob.glob(os.path.join(examples, "*.yaml")))
for path in files:
    with open(path, encoding="utf-8") as file:
        expect(True, path, yaml.safe_load(file))
with tempfile.TemporaryDirectory() as folder:
    path = os.path.join(folder, "new.yaml")
    run("new", path)
    with open(path, encoding="utf-8") as file:
        start = yaml.safe_load(file)
    expect(True, "lumwright new", start)

accepted = [
    ("engine.chimney.bore", value)
    for value in ["17.2 mm", "17.2mm", "9/16 in", '9/16"', "1 1/2 in", ".5 in", "1e-2 m", "17.2 mm ± 0.05 mm", "17.2 ± 0.05 mm",
                  "17.2 mm +- 2 thou", "17.2 mm +/- 10 %", "7..9 mm", "7 mm..0.4 in", "1/2..3/4 in", "+17 mm", "17 millimetres"]
] + [
    ("place.air", value) for value in ["12 degC", "54 °F", "285 K", "12 degC +- 2 K", "-5..5 °C", "12 ± 2 degC"]
] + [
    ("engine.boiler.working", value) for value in ["3.5 bar", "3.5 bar g", "50 psi", "50 psig +- 1 psi"]
] + [
    ("engine.grate.open_share", value) for value in [0.35, "0.35", "35 %", "35%", "30..40 %", "35 % +- 5 %", "1/3"]
] + [
    ("fan.rated.speed", "5200 1/min"), ("fan.mass", "1 1/2 oz"), ("engine.tubes.count", 8), ("name", 1234), ("name", "é"), ("fan", None),
    ("engine.chimney.material", 304), ("supply.step_up.efficiency", "88 %"), ("supply.step_up.efficiency", 0.88),
    ("supply.step_up.efficiency", [["6 V", "1 W", "88 %"], ["6 V", "2 W", 0.85]]), ("fan.speed_at", [["7 V", "3100 rpm"], ["12 V", "5200 rpm"]]),
]
accepted += [("fan.holes.measured", value) for value in ["yes", "no", True, False]]
accepted += [(path, None) for path in ("name", "engine.chimney.bore", "engine.tubes.count", "fan.kind", "fan.holes.measured", "fan.curve",
                                       "supply.step_up.efficiency", "fan.rated")]  # nothing behind the colon: not known
accepted += [("engine.chimney.bore", "17,2 mm"), ("engine.chimney.bore", "17,25 mm +- 0,125 mm"), ("adapter.box.sheet", "26 SWG")]
accepted += [("supply.leads.section", value) for value in ["22 swg", "24 AWG", "AWG 24", "7/0.2", "7/0,2 mm", "0.22 mm2", "1/2 mm2"]]
accepted += [("fuel.catches_in", value) for value in ["6:30", "6 min 30 s", "1 h 5 min", "6:30 +- 10 s", "5:30..6:30", "2,5 min"]]
accepted += [("engine.boiler.water", "300 g"), ("engine.boiler.water", "300 ml"), ("adapter.joint", "silver solder")]
accepted += [("fuel.catches_in", "150 s"), ("supply.control.kind", "lead pwm"), ("supply.control.kind", "chopped supply")]
expect(True, "an older name", {"fuel": {"kindling": "150 s"}})
expect(False, "a name of today and its older one", {"fuel": {"kindling": "150 s", "catches_in": "150 s"}})
for path, value in accepted:
    expect(True, f"{path}: {value}", put(start, path, value))

refused = [
    ("engine.chimney.bore", value)
    for value in ["14 V", "14", 14, "1,000 mm", "1,2,3 mm", "22 swg", "mm", "", "nan mm", "1 2 mm", "5 mm 6 mm", "7-9 mm", ["5 mm"], "1.2.3 mm", "5 mm +- 1 V"]
] + [
    ("place.air", value) for value in ["12 C", "12", 12, "12 degC +- 1 mm"]
] + [
    ("engine.boiler.working", value) for value in ["3.5 bar a", "50 psia"]
] + [
    ("place.barometer", "1 bar g"), ("engine.grate.open_share", "35 mm"), ("engine.grate.open_share", "wide"), ("engine.tubes.count", 0),
    ("engine.tubes.count", 8.5), ("engine.tubes.count", "many"), ("fan.kind", "axail"), ("fan.brore", "1 mm"), ("bore", "1 mm"),
    ("engine", "5 mm"), ("engine.tubes", [1, 2]), ("fan.curve", "5 Pa"), ("fan.curve", [["0 l/min", "58 Pa"]]), ("name", ""), ("name", "x" * 201),
    ("fan.curve", [["0 l/min", "58 Pa"], ["1 l/min"]]), ("fan.curve", [["0 l/min", "58 Pa"], ["1 l/min", "1 V"]]),
    ("supply.step_up.efficiency", [["6 V", "1 W"]]), ("supply.step_up.efficiency", []),
]
refused += [("supply.leads.section", value) for value in ["22 gauge", "22", "7/36", "24 AWG copper"]]
refused += [("fuel.catches_in", value) for value in ["6:60", "6:5", "1:06:30", "6 min 30"]]
refused += [("adapter.box.sheet", "26 AWG"), ("engine.chimney.bore", "6:30"), ("fuel.bed_mass", "30 ml"), ("adapter.joint", "solder")]
refused += [("fan.holes.measured", value) for value in ["true", "maybe", 1, [True]]]
for path, value in refused:
    broken = put(start, path, value)
    expect(False, f"{path}: {value}", broken)
    if not reader_refuses(yaml.safe_dump(broken, allow_unicode=True)):
        failures += 1
        print(f"{path}: {value}: the reader accepts what this test takes for broken")

# the other kinds of file: valid schemas that take the examples and no key that there is not
others = [("bin", os.path.join(examples, "bins", "*.yaml")), ("readings", os.path.join(examples, "readings", "*.yaml")),
          ("proof", os.path.join(examples, "proofs", "*.yaml"))]
for kind, pattern in others + [("season", os.path.join(examples, "seasons", "*.yaml")), ("log", os.path.join(examples, "logs", "*.yaml"))]:
    other = json.loads(run("schema", kind).stdout)
    Draft202012Validator.check_schema(other)
    validator = Draft202012Validator(other)
    for name in glob.glob(pattern):
        text = yaml.load(open(name, encoding="utf-8"), Loader=Yaml12)
        expect(True, name, text)
        expect(False, name + ", a key too many", {**text, "no_such_key": 1})
        files.append(name)
day = {"day": "3 May", "water": "428 ml", "readings": [{"time": "2 min", "water": "29 degC"}]}
expect(True, "a log", day)
expect(False, "a log, a reading of nothing known", {**day, "readings": [{"tiem": "2 min"}]})
stock = yaml.safe_load(open(glob.glob(others[0][1])[0], encoding="utf-8"))
validator = Draft202012Validator(json.loads(run("schema", "bin").stdout))
expect(True, "stock tubes", {**stock, "tubes": "stock"})
expect(False, "tubes of a word that is none", {**stock, "tubes": "stok"})

print(f"jsonschema on {len(files)} examples, {len(accepted)} good and {len(refused)} broken values: {failures} failures")
sys.exit(1 if failures or not files else 0)
