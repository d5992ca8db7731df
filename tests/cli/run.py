#!/usr/bin/env python3
"""Runs the program on the *.test files of a folder and compares all it says.

  run.py LUMWRIGHT FOLDER [--only NAME] [--update]

A test is one file. Its first line says what it promises. Then come sections, each behind a line that starts with `=== `:
  === file NAME          a file in the directory where the program runs
  === run ARGUMENTS      one run; a test may have several, in the same directory
  === with NAME=VALUE    a variable of the environment of that run
  === terminal           standard output is a terminal
  === stdout closed      standard output is closed; `=== stdout broken`: a pipe that nobody reads; `=== stdout PATH`: a file
  === stdin              what the program reads from standard input
  === status N           the status it leaves with (0 when nothing is said)
  === output             all that it prints; `=== output json`: JSON that has a value at each of these paths (a/b/c); `=== output has`: these lines, in this order;
                         `=== output lacks`: none of these lines
  === complaint          the same for standard error; `=== complaint has`
  === wrote FILE         these lines stand, in this order, in a file that the run wrote
  === width N            no line of the output is wider than that
Without a section for them, output and complaint must be empty. `examples` in that directory is the project's folder.
--update writes the outputs, complaints and statuses that came out into the files; read them before you keep them.
"""
import json, os, pty, shlex, subprocess, sys, tempfile
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[2]
SECONDS = 20


class Section:
    def __init__(self, head, body):
        self.word, _, self.rest = head.partition(' ')
        self.body = body


def read_test(path):
    lines = path.read_text().split('\n')
    promise, sections = lines[0], []
    for line in lines[1:]:
        if line.startswith('=== '):
            sections.append(Section(line[4:], []))
        elif sections:
            sections[-1].body.append(line)
    for section in sections:  # the line before the next section is a blank for the eye
        while section.body and section.body[-1] == '':
            section.body.pop()
    return promise, sections


def text_of(section):
    return '\n'.join(section.body) + '\n' if section.body else ''


def split_runs(sections):
    files, runs = [], []
    for section in sections:
        if section.word == 'run':
            runs.append([section])
        elif runs:
            runs[-1].append(section)
        else:
            files.append(section)
    return files, runs


def read_terminal(end):
    out = b''
    while True:
        try:
            piece = os.read(end, 65536)
        except OSError:  # the other side is closed
            return out
        if not piece:
            return out
        out += piece


def run_program(program, run, directory):
    said = {s.word: s for s in run}
    environment = {k: v for k, v in os.environ.items() if k not in ('NO_COLOR', 'TERM')}
    environment['TERM'] = 'xterm'
    environment.update(s.rest.split('=', 1) for s in run if s.word == 'with')
    arguments = [program] + shlex.split(run[0].rest)
    given = text_of(said['stdin']).encode() if 'stdin' in said else b''
    where = said['stdout'].rest if 'stdout' in said else ''
    if 'terminal' in said:
        ours, theirs = pty.openpty()
        process = subprocess.Popen(arguments, cwd=directory, env=environment, stdin=subprocess.DEVNULL, stdout=theirs, stderr=subprocess.PIPE)
        os.close(theirs)
        out = read_terminal(ours).replace(b'\r\n', b'\n')
        os.close(ours)
        err = process.communicate(timeout=SECONDS)[1]
    else:
        if where == 'closed':
            arguments = ['sh', '-c', 'exec "$@" >&-', 'sh'] + arguments
        stdout = subprocess.PIPE
        if where == 'broken':
            reader, stdout = os.pipe()
            os.close(reader)
        elif where not in ('', 'closed'):
            stdout = os.open(where, os.O_WRONLY)
        process = subprocess.Popen(arguments, cwd=directory, env=environment, stdin=subprocess.PIPE, stdout=stdout, stderr=subprocess.PIPE)
        out, err = process.communicate(given, timeout=SECONDS)
        out = out or b''
        if stdout != subprocess.PIPE:
            os.close(stdout)
    return process.returncode, out.decode('utf-8', 'backslashreplace'), err.decode('utf-8', 'backslashreplace')


def has_path(value, path):
    for step in path:
        try:
            value = value[int(step) if isinstance(value, list) else step]
        except (KeyError, IndexError, ValueError, TypeError):
            return False
    return True


def compare(section, name, text):
    """What is wrong with `text`, or nothing."""
    kind = section.rest if section else ''
    if kind == 'json':
        try:
            report = json.loads(text)
        except ValueError as e:
            return f'{name} is no JSON: {e}'
        absent = [path for path in section.body if not has_path(report, path.split('/'))]
        return f'{name} has nothing at {", ".join(absent)}' if absent else None
    if kind == 'has':
        if not section.body:
            return f'the {name} section asks for nothing'
        left = text
        for line in section.body:
            _, found, left = left.partition(line)
            if not found:
                return f'{name} lacks, or has in another order: {line}\n--- it is\n{text}'
        return None
    if kind == 'lacks':
        found = [line for line in section.body if line in text]
        return f'{name} has: {found[0]}\n--- it is\n{text}' if found or not section.body else None
    wanted = text_of(section) if section else ''
    if text != wanted:
        return f'{name} differs\n--- wanted\n{wanted}--- it is\n{text}'
    return None


def replace_body(run, word, text):
    sections = [s for s in run if s.word == word]
    if any(s.rest for s in sections):
        return
    body = text.rstrip('\n').split('\n') if text else []
    if sections:
        sections[0].body = body
    elif body:
        run.append(Section(word, body))


def run_test(program, path, update):
    promise, sections = read_test(path)
    files, runs = split_runs(sections)
    if not runs:
        return ['there is no run in it']
    wrong = []
    with tempfile.TemporaryDirectory() as directory:
        os.symlink(PROJECT / 'examples', Path(directory) / 'examples')
        for section in files:
            (Path(directory) / section.rest).write_text(text_of(section))
        for run in runs:
            try:
                status, out, err = run_program(program, run, directory)
            except subprocess.TimeoutExpired:
                wrong.append(f'$ lumwright {run[0].rest}\nit does not end')
                continue
            if update:
                replace_body(run, 'output', out)
                replace_body(run, 'complaint', err)
                run[:] = [s for s in run if s.word != 'status']
                run.insert(1, Section(f'status {status}', []))
            wanted = next((int(s.rest) for s in run if s.word == 'status'), 0)
            problems = [f'status {status}, wanted {wanted}'] if status != wanted else []
            for word, text in (('output', out), ('complaint', err)):
                problems += [compare(s, word, text) for s in [s for s in run if s.word == word] or [None]]
            for section in [s for s in run if s.word == 'wrote']:
                path_of = Path(directory) / section.rest
                written = path_of.read_text() if path_of.is_file() else ''
                problems.append(compare(Section('wrote has', section.body), section.rest, written))
            for limit in [int(s.rest) for s in run if s.word == 'width']:
                problems += [f'wider than {limit}: {line}' for line in out.split('\n') if len(line) > limit]
            wrong += [f'$ lumwright {run[0].rest}\n{p}' for p in problems if p]
    if update:
        parts = [promise, '']
        for section in files + [s for run in runs for s in run]:
            parts.append(('=== ' + section.word + ' ' + section.rest).rstrip())
            parts += section.body + ([''] if section.body else [])
        path.write_text('\n'.join(parts).rstrip('\n') + '\n')
    return wrong


def main():
    arguments = [a for a in sys.argv[1:] if a != '--update']
    only = arguments[arguments.index('--only') + 1] if '--only' in arguments else None
    program, folder = os.path.abspath(arguments[0]), Path(arguments[1])
    tests = [t for t in sorted(folder.glob('*.test')) if only is None or t.stem == only]
    if not tests:
        sys.exit(f'no tests in {folder}')
    failed = 0
    said = ''.join(path.read_text() for path in tests)
    idle = [e.name for e in sorted((PROJECT / 'examples').glob('*.yaml')) if f'examples/{e.name}' not in said]
    if idle and only is None:
        failed += 1
        print('examples that no test runs: ' + ', '.join(idle) + '\n')
    for path in tests:
        wrong = run_test(program, path, '--update' in sys.argv)
        failed += bool(wrong)
        for text in wrong:
            print(f'{path.name}: {text}\n')
    print(f'{len(tests)} whole-program tests, {failed} problems')
    sys.exit(1 if failed else 0)


main()
