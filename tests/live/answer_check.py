#!/usr/bin/env python3
"""Holds the JSON answers of the program against its schema of them, by a general validator (python3-jsonschema).

Usage: answer_check.py LUMWRIGHT EXAMPLES_DIR [BUILDS]. Every answer of every command that gives JSON, on the examples and on
random builds, must be one of its kind, and every key of the schema must stand in one of them.
Exit status 0: all as it should be; 1: not; 77: a package is missing (skipped).
"""
import copy
import glob
import json
import os
import random
import subprocess
import sys
import tempfile

try:
    import yaml
    from jsonschema import Draft202012Validator
except ImportError as missing:
    print(f"skipped: {missing}")
    sys.exit(77)

program, examples = sys.argv[1:3]
builds = int(sys.argv[3]) if len(sys.argv) > 3 else 40
failures = 0


def complain(words):
    global failures
    failures += 1
    print(words)


def run(*arguments):
    return subprocess.run([program, *arguments], capture_output=True, text=True)


schema = json.loads(run("schema", "answer").stdout)
Draft202012Validator.check_schema(schema)
whole = Draft202012Validator(schema)
kinds = [one["$ref"].rsplit("/", 1)[1] for one in schema["anyOf"]]
validators = {kind: Draft202012Validator({"$ref": f"#/$defs/{kind}", "$defs": schema["$defs"]}) for kind in kinds}
seen = set()  # places of the schema that an answer has filled


def walk(part, answer, place):
    """Marks what stands in an answer, key by key."""
    if "$ref" in part:
        name = part["$ref"].rsplit("/", 1)[1]
        return walk(schema["$defs"][name], answer, name if name in ("measure", "band") else place)
    for other in part.get("anyOf", []):
        if answer is not None:
            walk(other, answer, place)
    if isinstance(answer, dict):
        for key, value in answer.items():
            below = part.get("properties", {}).get(key)
            if below is not None:
                seen.add(f"{place}/{key}")
                walk(below, value, f"{place}/{key}")
            elif isinstance(part.get("additionalProperties"), dict):
                walk(part["additionalProperties"], value, f"{place}/*")
    elif isinstance(answer, list):
        for one in answer:
            walk(part.get("items", {}), one, f"{place}/[]")


def places(part, place):
    """Every key of the schema."""
    if "$ref" in part:
        return
    for other in part.get("anyOf", []):
        yield from places(other, place)
    for key, below in part.get("properties", {}).items():
        yield f"{place}/{key}"
        yield from places(below, f"{place}/{key}")
    if isinstance(part.get("additionalProperties"), dict):
        yield from places(part["additionalProperties"], f"{place}/*")
    if "items" in part:
        yield from places(part["items"], f"{place}/[]")


def hold(kind, name, *command):
    said = run(*command)
    if said.returncode not in (0, 1) or not said.stdout.startswith("{"):
        return None  # refused: said elsewhere
    answer = json.loads(said.stdout)
    errors = [f"{list(e.absolute_path)}: {e.message[:160]}" for e in validators[kind].iter_errors(answer)]
    if errors:
        complain(f"{name}: {errors[0]}")
    walk(schema["$defs"][kind], answer, kind)
    return answer


described = sorted(glob.glob(os.path.join(examples, "*.yaml")))
answers = {}
for path in described:
    answers["check"] = hold("check", path, "check", "--format", "json", path)  # as many samples as usual
    answers["trace"] = hold("trace", path, "trace", "--json", path) or answers.get("trace")
for path in glob.glob(os.path.join(examples, "bins", "*.yaml")):
    answers["choose"] = hold("choose", path, "choose", "--format", "json", path)
for path in glob.glob(os.path.join(examples, "readings", "*.yaml")):
    answers["bench"] = hold("bench", path, "bench", "--format", "json", path)
for path in glob.glob(os.path.join(examples, "proofs", "*.yaml")):
    unit = os.path.join(examples, "tarn-beck.yaml")
    hold("prove", unit, "prove", "--format", "json", unit)
    answers["prove"] = hold("prove", path, "prove", "--format", "json", unit, path)

# what is wrong is seen: a key too many, one too few, a text for a number
for kind in kinds:
    if not answers.get(kind):
        complain(f"no answer of {kind}")
        continue
    if list(whole.iter_errors(answers[kind])):
        complain(f"{kind}: the schema of all answers refuses it")
    for change in (lambda a: a.update(no_such_key=1), lambda a: a.pop("safety"), lambda a: a.update(format=1)):
        broken = copy.deepcopy(answers[kind])
        change(broken)
        if not list(whole.iter_errors(broken)):
            complain(f"{kind}: the schema takes a broken answer")
broken = copy.deepcopy(answers["check"])
next(iter(broken["results"].values()))["value"] = None
if not list(whole.iter_errors(broken)):
    complain("the schema takes a result without a number")


def thinned(part, chance):
    """A description from which keys and whole parts are struck out."""
    if not isinstance(part, dict):
        return part
    return {key: thinned(value, chance) for key, value in part.items() if chance.random() < 0.9}


chance = random.Random(1)
written = 0
with tempfile.TemporaryDirectory() as folder:
    path = os.path.join(folder, "mine.yaml")
    for number in range(builds):
        build = thinned(yaml.safe_load(open(described[number % len(described)], encoding="utf-8")), chance)
        with open(path, "w", encoding="utf-8") as file:
            yaml.safe_dump(build, file, allow_unicode=True)
        samples = "0" if number % 4 else "40"
        written += hold("check", f"build {number}", "check", "--format", "json", "--samples", samples, path) is not None
    if written < builds // 2:
        complain(f"only {written} of {builds} random builds were answered")
    for path_of_readings in glob.glob(os.path.join(examples, "readings", "*.yaml")):  # what then is assumed and warned of
        readings = yaml.safe_load(open(path_of_readings, encoding="utf-8"))
        for key in list(readings):
            with open(path, "w", encoding="utf-8") as file:
                yaml.safe_dump({k: v for k, v in readings.items() if k != key}, file, allow_unicode=True)
            hold("bench", f"readings without {key}", "bench", "--format", "json", path)
    # a slip of the pen, and what was tuned
    slip = open(described[-1], encoding="utf-8").read().replace("capacity: 2400 mAh", "capacity: 24000 mAh")
    with open(path, "w", encoding="utf-8") as file:
        file.write(slip)
    if not (hold("check", "a slip", "check", "--format", "json", "--samples", "0", path) or {}).get("remarks"):
        complain("no remark on a capacity of 24000 mAh")
    log = os.path.join(folder, "log.yaml")
    with open(log, "w", encoding="utf-8") as file:
        file.write("started_at: 12 degC\nreadings:\n" + "".join(
            f"  - {{ time: {time} s, water: {water} degC +- 0.5 K }}\n" for time, water in ((219, 50), (294, 70.5), (369, 90))))
    with open(path, "w", encoding="utf-8") as file:
        file.write(open(described[-1], encoding="utf-8").read())
    tuned = run("tune", path, log)
    if tuned.returncode != 0 or not (hold("check", "tuned", "check", "--format", "json", "--samples", "0", path) or {}).get("tuned"):
        complain(f"nothing was tuned: {tuned.stderr[:300]}")

wanted = {place for kind in kinds for place in places(schema["$defs"][kind], kind)}
wanted |= {f"{name}/{key}" for name in ("measure", "band") for key in schema["$defs"][name]["properties"]}
for place in sorted(wanted - seen):
    complain(f"{place}: no answer has it")
table = run("schema", "answer", "--table").stdout
for kind in kinds:
    for key in schema["$defs"][kind]["properties"]:
        if f"\n  {key} " not in table:
            complain(f"{kind}: the table lacks {key}")

print(f"{len(wanted)} keys in the answers of {len(described)} examples and {written} random builds: {failures} failures")
sys.exit(1 if failures else 0)
