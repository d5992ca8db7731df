"""cppcheck and clang-tidy over lib and cli, by the lists in .clang-tidy and cppcheck.txt.

    lint.py [--work DIR] [-j N] [--since COMMIT] [--only cppcheck|clang-tidy] [word]

A file that clang-tidy found clean is passed over until it, a header of ours or .clang-tidy changes.
`word` is a regular expression on paths; --since takes only what has changed since a commit.
"""
import argparse
import hashlib
import json
import re
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
HERE = Path(__file__).resolve().parent


def cppcheck(work, jobs, files):
    cache = work / 'cppcheck'
    cache.mkdir(parents=True, exist_ok=True)
    found = subprocess.run(
        ['cppcheck', '--std=c++20', '--language=c++', '--enable=warning,performance,portability', '--inline-suppr',
         '--quiet', f'--suppressions-list={HERE / "cppcheck.txt"}', f'--cppcheck-build-dir={cache}', '-j', str(jobs),
         '--template={file}:{line}: {severity}: {message} [{id}]', '--error-exitcode=1', '-Ilib', *files],
        cwd=ROOT, capture_output=True, text=True)
    print(found.stdout + found.stderr, end='')
    return found.returncode


def compile_commands(work):
    """clang++ and no precompiled header: what g++ has precompiled clang-tidy cannot read."""
    build = work / 'clang'
    subprocess.run(['cmake', '-S', ROOT, '-B', build, '-G', 'Ninja', '-DCMAKE_CXX_COMPILER=clang++',
                    '-DCMAKE_EXPORT_COMPILE_COMMANDS=ON', '-DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON',
                    '-DLUMWRIGHT_TESTS=OFF'], check=True, stdout=subprocess.DEVNULL)
    return build


def clang_tidy(work, jobs, files):
    build = compile_commands(work)
    common = hashlib.sha256((ROOT / '.clang-tidy').read_bytes())
    for header in sorted([*(ROOT / 'lib').rglob('*.hpp'), *(ROOT / 'cli').rglob('*.hpp')]):
        common.update(header.read_bytes())
    clean_list = work / 'clean.json'
    clean = json.loads(clean_list.read_text()) if clean_list.is_file() else {}

    def stamp(name):
        own = common.copy()
        own.update((ROOT / name).read_bytes())
        return own.hexdigest()

    def tidy(name):
        before, mark = time.monotonic(), stamp(name)
        if clean.get(name) == mark:
            return 0
        done = subprocess.run(['clang-tidy', '-p', build, '--quiet', ROOT / name], capture_output=True, text=True)
        if done.returncode == 0 and not done.stdout.strip():
            clean[name] = mark
            clean_list.write_text(json.dumps(clean))
            print(f'clean {name} {time.monotonic() - before:.0f} s', flush=True)
            return 0
        print(f'{name}\n{done.stdout}' + '\n'.join(x for x in done.stderr.splitlines() if 'error' in x), flush=True)
        return 1

    with ThreadPoolExecutor(jobs) as pool:
        return sum(pool.map(tidy, files))


def main():
    options = argparse.ArgumentParser()
    options.add_argument('--work', type=Path, default=Path(tempfile.gettempdir()) / 'lumwright-lint')
    options.add_argument('-j', type=int, default=1)
    options.add_argument('--since')
    options.add_argument('--only', choices=['cppcheck', 'clang-tidy'])
    options.add_argument('word', nargs='?', default='')
    asked = options.parse_args()
    files = sorted(str(p.relative_to(ROOT)) for top in ('lib', 'cli') for p in (ROOT / top).rglob('*.cpp'))
    if asked.since:
        changed = subprocess.run(['git', 'diff', '--name-only', asked.since], cwd=ROOT, check=True,
                                 capture_output=True, text=True).stdout.split()
        files = [name for name in files if name in changed]
    files = [name for name in files if re.search(asked.word, name)]
    if not files:
        sys.exit('no files')
    asked.work.mkdir(parents=True, exist_ok=True)
    work = asked.work.resolve()
    wrong = 0
    if asked.only != 'clang-tidy':
        wrong += cppcheck(work, asked.j, files)
    if asked.only != 'cppcheck':
        wrong += clang_tidy(work, asked.j, files)
    print(f'{len(files)} files, ' + ('clean' if wrong == 0 else f'{wrong} with findings'))
    sys.exit(wrong != 0)


if __name__ == '__main__':
    main()
