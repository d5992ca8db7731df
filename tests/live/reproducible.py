#!/usr/bin/env python3
"""The same input gives the same output: two builds of lumwright asked the same questions, answers compared.

usage: reproducible.py ONE OTHER EXAMPLES_DIR [--quick]

ONE and OTHER come from different compilers or optimisations; pages, drawings and tables must then be the same to the
byte, and numbers that JSON and CSV print in full the same to the six digits that any page shows at most.
Given one program twice, or the same program under two names, everything must be the same to the byte. --quick asks a few questions of one example.
"""
import filecmp
import re
import subprocess
import sys
import tempfile
from pathlib import Path

one, other, examples = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve(), Path(sys.argv[3]).resolve()
quick = '--quick' in sys.argv[4:]
same_program = filecmp.cmp(one, other, shallow=False)
NUMBER = re.compile(rb'-?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?')
DIGITS = 1e-6
wrong = []
compared = numbers = 0
worst = 0.0


def close(a, b):
    """None where the texts between the numbers, or a number, differ; else the largest relative difference."""
    if NUMBER.sub(b'#', a) != NUMBER.sub(b'#', b):
        return None
    global numbers
    most = 0.0
    for x, y in zip(NUMBER.findall(a), NUMBER.findall(b)):
        numbers += 1
        if x == y:
            continue
        p, q = float(x), float(y)
        # what is left of a balance of heat or gas is rounding, and no page prints it
        most = max(most, abs(p - q) / max(abs(p), abs(q), 1e-9))
    return most if most <= DIGITS else None


def first_difference(a, b):
    for x, y in zip(a.splitlines(), b.splitlines()):
        if x != y:
            return f'{x[:160]!r} against {y[:160]!r}'
    return 'one is longer'


def compare(what, a, b, in_full):
    global compared, worst
    compared += 1
    if a == b:
        return
    found = close(a, b) if in_full and not same_program else None
    if found is None:
        wrong.append(f'{what}: {first_difference(a, b)}')
    else:
        worst = max(worst, found)


def ask(program, words, folder):
    run = subprocess.run([program, *words], cwd=folder, capture_output=True, timeout=900)
    return run.returncode, run.stdout, run.stderr


def both(*words, in_full=False):
    with tempfile.TemporaryDirectory() as a, tempfile.TemporaryDirectory() as b:
        first, second = ask(one, words, a), ask(other, words, b)
        what = 'lumwright ' + ' '.join(Path(w).name if '/' in w else w for w in words)
        if first[0] != second[0] or first[0] > 1:
            wrong.append(f'{what}: left with {first[0]} and {second[0]}')
        compare(what, first[1], second[1], in_full)
        compare(what + ' (complaint)', first[2], second[2], False)
        names = {p.relative_to(a) for p in Path(a).rglob('*') if p.is_file()}
        if names != {p.relative_to(b) for p in Path(b).rglob('*') if p.is_file()}:
            wrong.append(f'{what}: writes other files')
            return
        for name in sorted(names):
            compare(f'{what}: {name}', (Path(a) / name).read_bytes(), (Path(b) / name).read_bytes(),
                    name.suffix in ('.json', '.csv', '.html'))


def describe(build):
    both('check', str(build), '--samples', '64')
    both('draw', str(build), '-o', 'out', '--draft')
    if quick:
        return
    both('check', str(build), '--samples', '64', '--format', 'json', in_full=True)
    both('check', str(build), '--samples', '0', '--units', 'imperial')
    both('trace', str(build), in_full=True)
    both('sheet', str(build))
    both('report', str(build), '-o', 'out', '--samples', '64')
    both('explain', 'fit.hot', str(build), '--samples', '64')


builds = sorted(examples.glob('*.yaml'))
for build in builds[:1] if quick else builds:
    describe(build)
for readings in [] if quick else sorted((examples / 'readings').glob('*.yaml')):
    both('bench', str(readings))
    both('bench', str(readings), '--format', 'json', in_full=True)
    both('bench', str(readings), '-o', 'out')
for parts in [] if quick else sorted((examples / 'bins').glob('*.yaml')):
    both('choose', str(parts))
    both('choose', str(parts), '--format', 'json', in_full=True)
    both('choose', str(parts), '-o', 'out')
both('new', '-')
both('schema')

print(f'{compared} outputs, {len(wrong)} differ; {numbers} numbers in full'
      + (f', at most {worst:.1e} apart' if worst else ''))
if wrong:
    sys.exit('\n'.join(wrong))
