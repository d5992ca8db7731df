"""Mutation-style test: makes the slips of *.yaml one at a time in a copy of the tree, builds what is named beside each and
demands that one of its tests fails.

In a row `text` stands exactly once in `file` (under lib/, or under cli/ where the name says so) and is replaced by `by`.
`tests` are the executables test_<folder>, of which at least one must notice, or `program`: the whole program on the
`goldens` of tests/cli. `source` and `case` name the only file and test cases that are run, where the whole takes long.

    run.py --check              only that each text still stands exactly once (fast, part of ctest)
    run.py [--work DIR] [word]  runs all, or those whose file and slip match the word (a regular expression);
                                DIR is kept for the next time
    run.py --in-place BUILD     the same in this very tree with its own build directory, for a copy that nobody else
                                uses: each file is put back afterwards
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
PROGRAM = "program"  # in `tests`: the whole program and its goldens of tests/cli


def changed_file(root, mutant):
    name = mutant["file"]
    return root / name if name.startswith("cli/") else root / "lib" / name


def rows():
    """All slips, those of the physics first; what is said at the head of a file goes for its rows, but for a row that
    names tests of its own."""
    for path in sorted(Path(__file__).parent.glob("*.yaml"), key=lambda p: (p.stem != "physics", p.stem)):
        table = yaml.safe_load(path.read_text())
        usual = table.get("unless_said", {})
        for row in table["slips"]:
            yield row if "tests" in row else usual | row


def read():
    mutants = list(rows())
    bad = []
    for m in mutants:
        path = changed_file(ROOT, m)
        found = path.read_text().count(m["text"]) if path.is_file() else 0
        if found != 1:
            bad.append(f"{m['file']}: `{m['text']}` stands {found} times, not once ({m['slip']})")
        if m["text"] == m["by"]:
            bad.append(f"{m['file']}: `{m['text']}` is replaced by itself")
        for folder in m["tests"]:
            bad += [f"{m['slip']}: {trouble}" for trouble in lacking(folder, m)]
    slips = [m["slip"] for m in mutants]
    bad += [f"two mutants are called: {slip}" for slip in sorted({s for s in slips if slips.count(s) > 1})]
    return mutants, bad


def lacking(folder, mutant):
    """What a mutant names and is not there."""
    if folder == PROGRAM:
        goldens = mutant.get("goldens", [])
        if not goldens:
            yield "no goldens are named"
        for golden in goldens:
            if not (ROOT / "tests" / "cli" / f"{golden}.test").is_file():
                yield f"tests/cli has no {golden}.test"
        return
    files = list((ROOT / "tests" / folder).glob(mutant.get("source", "*_test.cpp")))
    if not files:
        yield f"test_{folder} has no such file"
    words = mutant.get("case", "").strip("*")
    if words and not any(f'"{words}' in path.read_text() for path in files):
        yield f"test_{folder} has no case that begins: {words}"


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
    def __init__(self, work, jobs, in_place):
        self.jobs = jobs
        if in_place:
            self.copy, self.build = ROOT, in_place
            return
        self.copy, self.build = work / "tree", work / "build"
        self.copy.mkdir(parents=True, exist_ok=True)
        refresh(self.copy)
        subprocess.run(["cmake", "-S", self.copy, "-B", self.build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Plain",
                        "-DCMAKE_CXX_FLAGS=-O1 -g0", "-DLUMWRIGHT_TESTS=ON", "-DCMAKE_UNITY_BUILD=ON"], check=True, stdout=subprocess.DEVNULL)

    def make(self, folders):
        targets = ["lumwright" if f == PROGRAM else f"test_{f}" for f in folders]
        done = subprocess.run(["ninja", "-C", self.build, f"-j{self.jobs}", *targets],
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        return None if done.returncode == 0 else done.stdout[-2000:]

    def test(self, folder, mutant):
        """None when all pass, else the first failure in a line."""
        return self.whole_program(mutant["goldens"]) if folder == PROGRAM else self.cases(folder, mutant)

    def whole_program(self, goldens):
        for golden in goldens:
            done = subprocess.run([sys.executable, self.copy / "tests/cli/run.py", self.build / "cli/lumwright",
                                   self.copy / "tests/cli", "--only", golden],
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace",
                                  timeout=TOO_LONG)
            if done.returncode != 0:
                return " ".join(done.stdout.split("\n")[:2])[:120]
        return None

    def cases(self, folder, mutant):
        only = [f"--source-file=*/{folder}/{mutant['source']}"] if "source" in mutant else []
        only += [f"--test-case={mutant['case']}"] if "case" in mutant else []
        try:
            done = subprocess.run([self.build / "tests" / f"test_{folder}", "--abort-after=1", "--no-colors", *only],
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace",
                                  timeout=TOO_LONG)
        except subprocess.TimeoutExpired:
            return f"no end in {TOO_LONG} s"
        if done.returncode == 0:
            return None if " 0 passed" not in done.stdout.split("test cases:")[-1].split("\n")[0] else "no case ran"
        case = None
        for line in done.stdout.splitlines():
            if line.startswith("TEST CASE:"):
                case = line[10:].strip()
            if " ERROR: " in line and case:
                return case
        return f"ended with {done.returncode}" + (f" after: {case}" if case else "")


def try_mutant(tree, m):
    path = changed_file(tree.copy, m)
    sound = path.read_text()
    path.write_text(sound.replace(m["text"], m["by"]))
    try:
        if trouble := tree.make(m["tests"]):
            return "does not build", trouble
        for folder in m["tests"]:
            if noticed := tree.test(folder, m):
                return "caught", f"{folder}: {noticed}"
        return "SURVIVES", "no test failed"
    finally:
        path.write_text(sound)


def sound_before(tree, mutants):
    """The first test that fails before anything is changed."""
    seen = set()
    for m in mutants:
        for folder in m["tests"]:
            asked = (folder, m.get("source"), m.get("case"), tuple(m.get("goldens", [])))
            if asked in seen:
                continue
            seen.add(asked)
            if failed := tree.test(folder, m):
                return f"{folder} fails before anything is changed: {failed}"
    return None


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--check", action="store_true")
    options.add_argument("--work", type=Path, default=Path(tempfile.gettempdir()) / f"mutants-{os.getuid()}")
    options.add_argument("--in-place", type=Path)
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
    tree = Tree(asked.work.resolve(), asked.j, asked.in_place and asked.in_place.resolve())
    if trouble := tree.make(sorted({folder for m in mutants for folder in m["tests"]})):
        sys.exit(trouble)
    if failed := sound_before(tree, mutants):
        sys.exit(failed)
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
