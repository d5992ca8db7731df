#!/usr/bin/env python3
"""Edits each example at random and runs the program: a clean assessment or a positioned fault, never a crash, NaN or hang.

usage: random_edits.py LUMWRIGHT EXAMPLES_DIR [EDITS_PER_EXAMPLE]
"""
import json
import math
import pathlib
import random
import re
import subprocess
import sys
import tempfile

lumwright, examples = sys.argv[1], pathlib.Path(sys.argv[2])
edits = int(sys.argv[3]) if len(sys.argv) > 3 else 200
KEY = re.compile(r'([A-Za-z_]+):')
VALUE = re.compile(r'(?<=: )([^,{}\[\]\n#]+)')
UNITS = ['mm', 'in', 'V', 'A', 'Pa', 'kg', 'degC', 'K', '%', 'furlong', 'mAh', 's', 'W', '']
WORDS = ['nonsense', '17', '0 mm', '-3 mm', '1e308 mm', '{}', '[]', '[1, 2]', '{a: b}', 'null', '~', '""', '"12 V"', '22 swg',
         '999 km', '0.0001 mm', '1e-9 mm', '100 %', '0 %', '0', '.nan', '.inf', '1,5 mm', '7..9 mm', '5 mm +- 200 %', '*x', '&x 1', '!t 1']


def delete_key(line, rng):
    found = list(KEY.finditer(line))
    if not found:
        return line
    m = rng.choice(found)
    return line[:m.start()] + re.sub(r'^[^,{}\n]*', '', line[m.start():], count=1)


def misspell_key(line, rng):
    found = list(KEY.finditer(line))
    if not found:
        return line
    m = rng.choice(found)
    at = rng.randrange(m.start(), m.end() - 1)
    return line[:at] + rng.choice('abcxyz_') + line[at + rng.randrange(2):]


def change_value(line, rng):
    found = list(VALUE.finditer(line))
    if not found:
        return line
    m = rng.choice(found)
    return line[:m.start()] + rng.choice(WORDS) + line[m.end():]


def change_unit(line, rng):
    found = list(VALUE.finditer(line))
    if not found:
        return line
    m = rng.choice(found)
    return line[:m.start()] + re.sub(r'[A-Za-z%/0-9]+\s*$', rng.choice(UNITS), m.group(1)) + line[m.end():]


def scale_number(line, rng):
    found = list(re.finditer(r'\d+\.?\d*', line))
    if not found:
        return line
    m = rng.choice(found)
    factor = 10 ** rng.uniform(-3, 3)
    return line[:m.start()] + f'{float(m.group()) * factor:.6g}' + line[m.end():]


def drop_line(line, rng):
    return ''


def garbage(line, rng):
    at = rng.randrange(len(line) + 1)
    return line[:at] + rng.choice(['{', '}', '[', ']', ':', '"', "'", '\t', '\x00', '\xff', '#', '- ', '? ', '|', '>', '°', '±']) + line[at:]


EDITS = [delete_key, misspell_key, change_value, change_unit, scale_number, scale_number, scale_number, drop_line, garbage]


def all_finite(node):
    if isinstance(node, dict):
        return all(all_finite(v) for v in node.values())
    if isinstance(node, list):
        return all(all_finite(v) for v in node)
    return not isinstance(node, float) or math.isfinite(node)


def refuse_constant(name):
    raise ValueError('the JSON holds ' + name)


def judge(path):
    run = subprocess.run([lumwright, 'check', '--samples', '12', '--format', 'json', path], capture_output=True, timeout=20)
    err = run.stderr.decode('utf-8', 'replace')
    if run.returncode in (0, 1):
        answer = json.loads(run.stdout, parse_constant=refuse_constant)
        told = json.dumps([answer['checks'], answer['assumed']])  # the name is the user's own and may say anything
        if not all_finite(answer) or re.search(r'\b(nan|inf)\b', told, re.I):
            return 'a number that is not finite'
        if (run.returncode == 1) != (answer['verdict'] == 'fail'):
            return 'exit status and verdict disagree'
        return None
    if run.returncode == 2:
        return None if re.match(r'.*:\d+:\d+: ', err) else 'a fault without a place: ' + err[:200]
    return f'status {run.returncode}: {err[:300]}'


def main():
    failures = accepted = total = 0
    for example in sorted(examples.glob('*.yaml')):
        text = example.read_text()
        for seed in range(edits):
            rng = random.Random(f'{example.name}-{seed}')
            lines = text.splitlines()
            for _ in range(rng.choice([1, 1, 1, 2, 5])):
                at = rng.randrange(len(lines))
                lines[at] = rng.choice(EDITS)(lines[at], rng)
            with tempfile.NamedTemporaryFile('wb', suffix='.yaml') as file:
                file.write('\n'.join(lines).encode('utf-8', 'surrogateescape'))
                file.flush()
                total += 1
                try:
                    trouble = judge(file.name)
                except (subprocess.TimeoutExpired, ValueError) as error:
                    trouble = repr(error)
                if trouble is None:
                    accepted += 1
                    continue
                failures += 1
                print(f'{example.name} seed {seed}: {trouble}')
    print(f'{accepted} of {total} edits handled')
    if total == 0:
        print('no examples found')
        return 1
    return 1 if failures else 0


if __name__ == '__main__':
    sys.exit(main())
