#!/usr/bin/env python3
"""Every command's output has the two lines that head it, and every example that help, README and guide tell is run.

usage: told.py LUMWRIGHT PROJECT_DIR
"""
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

LUMWRIGHT, PROJECT = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve()
HEAD = ['Out of doors only: carbon monoxide', 'Water first, then the fire']
EXAMPLES = PROJECT / 'examples'
wrong = []


def run(line, folder):
    """A line of shell as it is told, with `lumwright` for the program and no other door out of the folder."""
    told = re.sub(r'(^|\s)(\.build/cli/)?lumwright(?=\s)', lambda m: m[1] + str(LUMWRIGHT), line, count=1)
    answers = 'Tarn Beck\n' + 40 * '\n' if '--ask' in line else ''
    return subprocess.run(told, shell=True, cwd=folder, input=answers, capture_output=True, text=True, timeout=600, env={'HOME': str(folder), 'PATH': '/usr/bin:/bin'})


def bench(folder):
    """What the examples name: a description, a log, readings and a bin."""
    shutil.copytree(EXAMPLES, folder / 'examples')
    for name in ('build.yaml', 'mine.yaml', 'other.yaml', 'description.yaml'):
        shutil.copy(EXAMPLES / 'tarn-beck.yaml', folder / name)
    shutil.copy(EXAMPLES / 'readings' / 'unmarked-fan.yaml', folder / 'fan.yaml')
    shutil.copy(EXAMPLES / 'bins' / 'tarn-beck-shed.yaml', folder / 'shed.yaml')
    shutil.copy(EXAMPLES / 'proofs' / 'tarn-beck-first-trial.yaml', folder / 'readings.yaml')
    (folder / '.local/share/bash-completion/completions').mkdir(parents=True)
    help_of_tune = run('lumwright help tune', folder).stdout
    found = re.search(r'^Example of a log\n(( +).*?)(?=\n\s*\n|\Z)', help_of_tune, re.M | re.S)
    text = found[1] if found else ''
    (folder / 'log.yaml').write_text('\n'.join(line[len(found[2]):] for line in text.splitlines()) + '\n' if found else '')


def season(folder):
    """A season beside mine.yaml, and records of what it and another taught: for examples that go on from there."""
    shutil.copy(EXAMPLES / 'seasons' / 'tarn-beck-2026.yaml', folder / 'mine.season.yaml')
    for name in ('mine-record.yaml', 'other-record.yaml'):
        (folder / name).write_text(run('lumwright priors mine.yaml', folder).stdout)


def commands():
    listed = subprocess.run([LUMWRIGHT, 'completion', 'bash'], capture_output=True, text=True).stdout
    return re.search(r"compgen -W '([^']*) --help --version'", listed)[1].split()


def examples_told():
    """Lines of shell: those of help (two blanks, then `lumwright`) and those of README."""
    for command in commands():
        page = subprocess.run([LUMWRIGHT, 'help', command], capture_output=True, text=True).stdout
        for line in page.splitlines():
            if re.match(r' {2,}lumwright \S+ ', line) and not re.search(r'\b[A-Z]{3,}\b|\s{2}\S.*:$', line.strip()):
                yield f'help {command}', line.strip()
    for line in (PROJECT / 'README.md').read_text().splitlines():
        if re.match(r'    (\$ |\.build/cli/)lumwright ', line):
            yield 'README', line.strip().removeprefix('$ ').split(' # ')[0].strip()


def check_examples():
    told = list(examples_told())
    if len(told) < 15:
        wrong.append(f'only {len(told)} examples were found')
    for where, line in told:
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            bench(folder)
            if ' log mine.yaml' not in line:
                season(folder)
            made = re.search(r'lumwright new (?:--\w+ )?(\S+\.yaml)', line)
            if made:
                (folder / made[1]).unlink(missing_ok=True)
            done = run(line, folder)
            if done.returncode not in (0, 1) or (done.returncode == 1 and not done.stdout):
                wrong.append(f'{where}: `{line}` leaves with {done.returncode}: {(done.stderr or done.stdout)[:400]}')


def check_shown_run():
    """The run that README shows, line by line."""
    lines = (PROJECT / 'README.md').read_text().splitlines()
    for at, line in enumerate(lines):
        if not line.startswith('    $ lumwright '):
            continue
        shown = []
        for one in lines[at + 1:]:
            if one and not one.startswith('    '):
                break
            shown.append(one[4:])
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            bench(folder)
            said = run(line.strip().removeprefix('$ '), folder).stdout
        if '\n'.join(shown).strip() != said.strip():
            wrong.append(f'README shows another run than `{line.strip()}` gives')


def check_heads():
    lines = ['check mine.yaml --samples 0', 'check mine.yaml --samples 0 --format json', 'explain fit.hot mine.yaml --samples 0',
             'explain raise.time mine.yaml', 'trace mine.yaml', 'trace mine.yaml --json', 'log mine.yaml log.yaml', 'tune mine.yaml log.yaml', 'season mine.yaml', 'season mine.yaml -o season', 'priors mine.yaml',
             'prove mine.yaml --samples 0', 'prove mine.yaml readings.yaml', 'prove mine.yaml readings.yaml --format json', 'new --proof -',
             'report mine.yaml -o out --samples 0', 'choose shed.yaml', 'choose shed.yaml --format json', 'choose shed.yaml --format csv',
             'choose shed.yaml -o shed', 'bench fan.yaml', 'bench --box fan.yaml', 'bench fan.yaml -o fan-test', 'draw mine.yaml -o drawn',
             'sheet mine.yaml', 'day mine.yaml --samples 0', 'day mine.yaml -o today --samples 0', 'sweep mine.yaml adapter.bleed.holes 6..8', 'sweep mine.yaml adapter.bleed.holes 6..8 --format csv',
             'compare mine.yaml mine.yaml --samples 0', 'check --full mine.yaml --samples 0', 'check --only fit mine.yaml --samples 0', 'new -', 'new fresh.yaml', 'new --readings -', 'new --ask asked.yaml', 'guide -o guide --samples 0', 'units', 'schema', 'completion bash', 'completion zsh',
             'completion fish', '--version', '--help', 'help'] + [f'help {command}' for command in commands()]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        bench(folder)
        missed = set(commands()) - {line.split()[0] for line in lines}
        if missed:
            wrong.append(f'no line tries {missed}')
        for line in lines:
            done = run('lumwright ' + line, folder)
            if done.returncode not in (0, 1):
                wrong.append(f'`{line}` leaves with {done.returncode}: {done.stderr[:300]}')
            for words in HEAD:
                if words not in done.stdout + done.stderr:
                    wrong.append(f'`{line}` does not say "{words}"')
        for file in sorted(folder.glob('*/*')):  # tables for programs have no room; a PDF's words are packed
            if file.parent.name in ('examples', '.local') or file.suffix in ('.csv', '.pdf') or not file.is_file():
                continue
            text = file.read_text()
            for words in HEAD:
                if words not in text and file.suffix in ('.html', '.md', '.json', '.txt', '.svg'):
                    wrong.append(f'{file.parent.name}/{file.name} does not say "{words}"')


check_heads()
check_shown_run()
check_examples()
if wrong:
    sys.exit('\n'.join(wrong))
