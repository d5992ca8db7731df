"""One run of every command under valgrind: no error, nothing lost for good.

usage: memcheck.py LUMWRIGHT EXAMPLES_DIR

A command that this list does not know is a fault, so that a new one is not left out.
"""
import re
import subprocess
import sys
import tempfile
from pathlib import Path

LOG = "started_at: 15 degC\nreadings:\n  - { time: 219 s, water: 50 degC }\n  - { time: 369 s, water: 90 degC }\n"
BROKEN = "engine: { boiler: { water: 4OO ml, bore: [1, 2 } }\n"


def runs(examples, folder):
    build, other = examples / "tarn-beck.yaml", examples / "great-fell-5in.yaml"
    log, broken = folder / "log.yaml", folder / "broken.yaml"
    log.write_text(LOG)
    broken.write_text(BROKEN)
    mine = folder / "mine.yaml"
    mine.write_text(build.read_text())
    return [["check", build, "--samples", "8"], ["check", build, "--samples", "8", "--format", "json"], ["check", broken],
            ["check", examples / "high-tarn-32mm.yaml", "--samples", "0", "--units", "imperial"],
            ["explain", "fit.hot", build, "--samples", "0"], ["trace", build], ["tune", mine, log],
            ["prove", build, "--samples", "8"], ["prove", build, examples / "proofs" / "tarn-beck-first-trial.yaml", "--samples", "100"],
            ["report", build, "-o", folder / "report", "--samples", "8"], ["draw", other, "-o", folder / "drawn", "--draft"],
            ["sheet", build], ["choose", examples / "bins" / "tarn-beck-shed.yaml", "-o", folder / "chosen"],
            ["bench", examples / "readings" / "unmarked-fan.yaml"], ["bench", examples / "readings" / "unmarked-fan.yaml", "--box"],
            ["new", folder / "new.yaml"], ["guide", "-o", folder / "guide", "--samples", "0"], ["units"], ["schema"], ["completion", "bash"], ["completion", "zsh"],
            ["completion", "fish"], ["help", "check"], ["help", "--roff"], ["chekc", build]]


def commands(lumwright):
    told = subprocess.run([lumwright, "help"], capture_output=True, text=True, check=True).stdout
    return set(re.findall(r"^  lumwright ([a-z]+) ", told, re.M))


def main():
    lumwright, examples = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    wrong = 0
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place)
        todo = runs(examples, folder)
        if missing := commands(lumwright) - {words[0] for words in todo}:
            sys.exit(f"not run under valgrind: {', '.join(sorted(missing))}")
        for words in todo:
            done = subprocess.run(["valgrind", "--quiet", "--error-exitcode=99", "--leak-check=full", "--show-leak-kinds=definite",
                                   "--errors-for-leak-kinds=definite", lumwright, *map(str, words)], capture_output=True,
                                  text=True, errors="replace", cwd=folder)
            bad = done.returncode == 99 or done.returncode > 2 or done.returncode < 0
            wrong += bad
            shown = " ".join(Path(w).name if isinstance(w, Path) else w for w in words)
            print(f"{'ERROR' if bad else 'clean'}  exit {done.returncode}  lumwright {shown}", flush=True)
            if bad:
                print(done.stderr[-3000:])
    print(f"{len(todo)} runs, {wrong} with errors")
    sys.exit(wrong != 0)


if __name__ == "__main__":
    main()
