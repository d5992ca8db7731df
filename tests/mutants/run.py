"""Mutation-style test of the physics: makes the slips of mutants.yaml one at a time in a copy of the tree, builds the
tests named beside each and demands that one of them fails.

    run.py --check              only that each text still stands exactly once (fast, part of ctest)
    run.py [--work DIR] [word]  runs all, or those whose file and slip match the word (a regular expression);
                                DIR is kept for the next time
"""
import argparse
import filecmp
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import yaml

ROOT = Path(__file__).resolve().parents[2]
TOO_LONG = 900  # s: a slip may also make a search run on and on


def read():
    mutants = yaml.safe_load((Path(__file__).parent / "mutants.yaml").read_text())
    bad = []
    for m in mutants:
        path = ROOT / "lib" / m["file"]
        found = path.read_text().count(m["text"]) if path.is_file() else 0
        if found != 1:
            bad.append(f"{m['file']}: `{m['text']}` stands {found} times, not once ({m['slip']})")
        if m["text"] == m["by"]:
            bad.append(f"{m['file']}: `{m['text']}` is replaced by itself")
        for folder in m["tests"]:
            if not any((ROOT / "tests" / folder).glob(m.get("source", "*_test.cpp"))):
                bad.append(f"{m['slip']}: test_{folder} has no such file")
    return mutants, bad


def refresh(copy):
    """Writes only what differs, so that the next build is short; takes away what is gone."""
    wanted = set()
    for top in ("CMakeLists.txt", "README.md", "DEVELOPERS.md", "lib", "cli", "tests", "examples", "cautions"):
        start = ROOT / top
        for path in [start] if start.is_file() else start.rglob("*"):
            if not path.is_file() or "node_modules" in path.parts or "__pycache__" in path.parts:
                continue
            name = path.relative_to(ROOT)
            wanted.add(name)
            to = copy / name
            if not to.is_file() or not filecmp.cmp(path, to, shallow=False):
                to.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(path, to)
                shutil.copymode(path, to)
    for path in list(copy.rglob("*")):
        if path.is_file() and path.relative_to(copy) not in wanted:
            path.unlink()


class Tree:
    def __init__(self, work, jobs):
        self.copy, self.build, self.jobs = work / "tree", work / "build", jobs
        self.copy.mkdir(parents=True, exist_ok=True)
        refresh(self.copy)
        subprocess.run(["cmake", "-S", self.copy, "-B", self.build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Plain",
                        "-DCMAKE_CXX_FLAGS=-O1 -g0", "-DLUMWRIGHT_TESTS=ON", "-DCMAKE_UNITY_BUILD=ON"], check=True, stdout=subprocess.DEVNULL)

    def make(self, folders):
        done = subprocess.run(["ninja", "-C", self.build, f"-j{self.jobs}", *(f"test_{f}" for f in folders)],
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        return None if done.returncode == 0 else done.stdout[-2000:]

    def test(self, folder, source=None):
        """None when all pass, else the first failure in a line."""
        only = [f"--source-file=*/{folder}/{source}"] if source else []
        try:
            done = subprocess.run([self.build / "tests" / f"test_{folder}", "--abort-after=1", "--no-colors", *only],
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace",
                                  timeout=TOO_LONG)
        except subprocess.TimeoutExpired:
            return f"no end in {TOO_LONG} s"
        if done.returncode == 0:
            return None
        case = None
        for line in done.stdout.splitlines():
            if line.startswith("TEST CASE:"):
                case = line[10:].strip()
            if " ERROR: " in line and case:
                return case
        return f"ended with {done.returncode}" + (f" after: {case}" if case else "")


def try_mutant(tree, m):
    path = tree.copy / "lib" / m["file"]
    sound = path.read_text()
    path.write_text(sound.replace(m["text"], m["by"]))
    try:
        if trouble := tree.make(m["tests"]):
            return "does not build", trouble
        for folder in m["tests"]:
            if noticed := tree.test(folder, m.get("source")):
                return "caught", f"{folder}: {noticed}"
        return "SURVIVES", "no test failed"
    finally:
        path.write_text(sound)


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--check", action="store_true")
    options.add_argument("--work", type=Path, default=Path(tempfile.gettempdir()) / f"mutants-{os.getuid()}")
    options.add_argument("-j", type=int, default=1)
    options.add_argument("word", nargs="?", default="")
    asked = options.parse_args()
    mutants, bad = read()
    if bad:
        sys.exit("\n".join(bad))
    if asked.check:
        print(f"{len(mutants)} mutants apply")
        return
    mutants = [m for m in mutants if re.search(asked.word, m["file"] + " " + m["slip"])]
    if not mutants:
        sys.exit(f"no mutant is called {asked.word}")
    tree = Tree(asked.work.resolve(), asked.j)
    asked_of = sorted({(f, m.get("source", "")) for m in mutants for f in m["tests"]})
    if trouble := tree.make(sorted({folder for folder, _ in asked_of})):
        sys.exit(trouble)
    for folder, source in asked_of:
        if failed := tree.test(folder, source):
            sys.exit(f"test_{folder} fails before anything is changed: {failed}")
    missed = 0
    for m in mutants:
        before = time.monotonic()
        verdict, detail = try_mutant(tree, m)
        missed += verdict != "caught"
        print(f"{verdict:<10} {m['file']:<28} {m['slip']:<62} {time.monotonic() - before:5.0f} s  {detail}", flush=True)
    print(f"{len(mutants) - missed} of {len(mutants)} caught")
    sys.exit(missed != 0)


if __name__ == "__main__":
    main()
