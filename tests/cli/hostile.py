#!/usr/bin/env python3
"""Hostile files, terminals and disks: a clean answer or a plain refusal, never a crash, a hang, a lie or half a file.

usage: hostile.py LUMWRIGHT EXAMPLES_DIR

What this machine cannot set up (a read-only or full disk without root, a locale that is not there) is skipped and said so.
"""
import json
import math
import os
import pathlib
import pty
import random
import re
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unicodedata

LUMWRIGHT, EXAMPLES = sys.argv[1], pathlib.Path(sys.argv[2]).resolve()
EXAMPLE = EXAMPLES / 'tarn-beck.yaml'
OTHER = EXAMPLES / 'great-fell-5in.yaml'
BIN = EXAMPLES / 'bins' / 'tarn-beck-shed.yaml'
READINGS = EXAMPLES / 'readings' / 'unmarked-fan.yaml'
LOG = b'started_at: 15 degC\nreadings:\n  - { time: 219 s, water: 50 degC }\n  - { time: 369 s, water: 90 degC }\n'
SECONDS = 30
failures, skipped, counted = [], [], 0


def run(*arguments, **more):
    more.setdefault('stdin', subprocess.DEVNULL)
    more.setdefault('timeout', SECONDS)
    if 'input' in more:
        del more['stdin']
    return subprocess.run([LUMWRIGHT, *map(os.fspath, arguments)], capture_output=True, **more)


def expect(holds, what):
    global counted
    counted += 1
    if not holds:
        failures.append(what)


def refuse_constant(name):
    raise ValueError('the JSON holds ' + name)


def finite(node):
    if isinstance(node, dict):
        return all(map(finite, node.values()))
    if isinstance(node, list):
        return all(map(finite, node))
    return not isinstance(node, float) or math.isfinite(node)


def plain(text):
    """Readable, and nothing in it that a terminal would obey."""
    reordering = range(0x200E, 0x2010), range(0x2028, 0x202F), range(0x2066, 0x206A)
    return all(c == '\n' or (unicodedata.category(c) != 'Cc' and not any(ord(c) in one for one in reordering)) for c in text.decode('utf-8'))


def judged(result, what, statuses=(0, 1, 2)):
    expect(result.returncode in statuses, f'{what}: status {result.returncode}: {result.stderr[:300]!r}')
    expect(b'internal error' not in result.stderr, f'{what}: {result.stderr[:300]!r}')
    try:
        expect(plain(result.stderr), f'{what}: an unreadable complaint: {result.stderr[:300]!r}')
    except UnicodeDecodeError:
        expect(False, f'{what}: the complaint is not UTF-8: {result.stderr[:300]!r}')
    expect((result.returncode == 2) == (result.stdout == b''), f'{what}: answer and status disagree')
    return result


# --- what a file may hold -------------------------------------------------------------------------------------------

def bore(value):
    return EXAMPLE.read_bytes().replace(b'bore: 17.60 mm +- 0.02 mm', b'bore: ' + value)


def renamed(name):
    return re.sub(rb'(?m)^name: .*', lambda _: b'name: ' + json.dumps(name, ensure_ascii=False).encode(), EXAMPLE.read_bytes(), count=1)


def check_text(text, what, statuses):
    result = judged(run('check', '--samples', '4', '--format', 'json', '-', input=text), what, statuses)
    if result.returncode in (0, 1):
        answer = json.loads(result.stdout, parse_constant=refuse_constant)
        expect(finite(answer), f'{what}: a number that is not finite')
        expect((answer['verdict'] == 'fail') == (result.returncode == 1), f'{what}: verdict and status disagree')
    if result.returncode == 2:
        expect(re.match(rb'standard input:\d+:\d+: ', result.stderr), f'{what}: no place: {result.stderr[:200]!r}')
    return result


def texts():
    example = EXAMPLE.read_bytes()
    line = example.index(b'\n') + 1
    expect(bore(b'x') != example and renamed('x') != example, 'the example has no such bore: this test must be told')
    usual = check_text(example, 'the example', (0, 1)).stdout

    # the same description in other clothes
    for what, text in {'CRLF': example.replace(b'\n', b'\r\n'), 'a byte order mark': b'\xef\xbb\xbf' + example,
                       'no line feed at the end': example.rstrip(b'\n'), 'a comment of two bytes a letter': example + '# é\n'.encode(),
                       'a micro sign': bore('17600 µm +- 20 µm'.encode()), 'a Greek mu': bore('17600 μm +- 20 μm'.encode())}.items():
        result = check_text(text, what, (0, 1))
        if 'm' not in what[:9]:
            expect(result.stdout == usual, f'{what}: changes the answer')
    same = [check_text(bore(t.encode()), t, (0, 1)).stdout for t in ('17600 µm +- 20 µm', '17600 μm +- 20 μm')]
    expect(same[0] == same[1], 'two signs for micro give two answers')

    refused = {
        'nothing': b'', 'blanks': b' \n \n', 'one comma': b',', 'a NUL': example[:line] + b'\0' + example[line:],
        'an escape': example.replace(b'name: ', b'name: \x1b[31m', 1), 'latin-1': example + 'a: é\n'.encode('latin-1'),
        'UTF-16': example.decode().encode('utf-16'), 'an overlong slash': example + b'# \xc0\xaf\n',
        'half a character at the end': example + b'# \xe2\x82', 'a surrogate': example + b'# \xed\xa0\x80\n',
        'tabs': b'engine:\n\tgrate: { length: 58 mm }\n', 'a mark in the middle': example[:line] + b'\xef\xbb\xbf' + example[line:],
        'more than 64 kB': example + b'#' * 65536, 'more than 1 MB': b'a: ' * 700000, 'random bytes': random.Random(1).randbytes(5000),
        'seventeen levels': b'fan: ' + b'[' * 17 + b']' * 17, 'thirty thousand levels': b'[' * 30000,
        'thirty thousand maps': b'{a: ' * 15000, 'deep by indent': b'\n'.join(b' ' * i + b'a:' for i in range(300)),
        'a list of 101 points': b'fan: { curve: [ ' + b', '.join(b'[%d l/min, 5 Pa]' % i for i in range(101)) + b' ] }',
        'a list of ten thousand': b'fan: { curve: [ ' + b','.join([b'[]'] * 10000) + b' ] }',
        'a thousand keys': b''.join(b'key%d: 1\n' % i for i in range(1000)),
        'one key a thousand times': b'name: a\n' * 1000, 'a key of 50 kB': b'k' * 50000 + b': 1\n', 'a name of 201 letters': b'name: ' + b'n' * 201,
        'a laugh': b'a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\n', 'a cycle': b'a: &a [*a]\n', 'a second document': example + b'---\na: 1\n',
        'a tag': b'name: !!python/object:os.system "x"\n',
    }
    for what, text in refused.items():
        check_text(text, what, (2,))
    for value in ('1e400 mm', '-0 mm', '-16 mm', '1e-320 mm', 'nan mm', '.inf', '-.inf mm', 'inf mm', '1e308 m', '0x10 mm', '17_2 mm', '17.2.0 mm',
                  '1e mm', '1e9999999999999999999 mm', '9' * 100 + ' mm', '0' * 119 + ' mm', '0' * 500 + ' mm', '１７.２ mm', '17.2 ㎜', '17.2 mｍ',
                  '17٫2 mm', '١٧ mm', '17,2 mm', '17·2 mm', '17.2 mm ± nan mm', '17.2 mm ± 1e400 mm', '17.2 mm +- 300 %', '17..2 mm', '1/0 mm',
                  '17.2’', '17.2′', '5/8”', 'l7.2 mm', '17.2 ⅿⅿ', '−17.2 mm', '17.2 mm\u200b', '\u202e17.2 mm', '[]', '{}', '""', 'true'):
        check_text(bore(value.encode()), f'a bore of {value[:40]}', (2,))
    for value in ('17.2 mm', '17.2\u00a0mm', '17.2\u2009mm', '17.2\u202fmm', '17.2 mm ± 0 mm', '0017.2 mm', '17.2e0 mm', '+17.2 mm', '1.72e1 mm', '~', 'null'):
        check_text(bore(value.encode()), f'a bore of {value}', (0, 1))
    for name in ('../../../etc/passwd', '<script>alert(1)</script>', '=cmd()', '煙突', '%s%n{}', "'; drop", 'a' * 200):
        result = check_text(renamed(name), f'a name {name[:20]}', (0, 1))
        expect(json.loads(result.stdout)['build'] == name, f'the name {name} comes back changed')

    # the other readers, with the worst of them
    worst = [refused[k] for k in ('nothing', 'one comma', 'a NUL', 'latin-1', 'UTF-16', 'thirty thousand levels', 'a laugh', 'more than 1 MB')]
    with tempfile.TemporaryDirectory() as folder:
        for number, text in enumerate(worst):
            path = pathlib.Path(folder) / 'bad.yaml'
            path.write_bytes(text)
            for command in (['choose', path], ['choose', path, '-o', folder], ['bench', path], ['bench', path, '-o', folder], ['tune', EXAMPLE, path], ['explain', 'fit.hot', path],
                            ['trace', path], ['draw', path, '-o', folder], ['report', path, '-o', folder], ['sheet', path]):
                result = judged(run(*command), f'{command[0]} on bad text {number}', (2,))
                expect(re.match(rb'[^\n]*:\d+:\d+: ', result.stderr), f'{command[0]} on bad text {number}: no place')
            expect(os.listdir(folder) == ['bad.yaml'], f'bad text {number} left {os.listdir(folder)}')


# --- files in odd places --------------------------------------------------------------------------------------------

def places():
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        absent, long_path = folder / 'absent.yaml', folder / ('x' * 300)
        fifo_free = [absent, long_path, folder, pathlib.Path('/' + 'd/' * 3000 + 'f'), folder / 'a' / 'b']
        for path in fifo_free:
            for command in (['check', path], ['explain', 'fit.hot', path], ['trace', path], ['tune', path, path], ['tune', EXAMPLE, path],
                            ['choose', path], ['bench', path], ['sheet', path], ['draw', path, '-o', folder / 'out'],
                            ['report', path, '-o', folder / 'out']):
                judged(run(*command), f'{command[0]} {str(path)[-30:]}', (2,))
        expect(os.listdir(folder) == [], f'a refusal left {os.listdir(folder)}')
        for path in ('/dev/zero', '/dev/urandom', '/dev/null'):
            judged(run('check', path), f'check {path}', (2,))
        for name in (b'line\nfeed.yaml', b'esc\x1b[31m.yaml', b'\xff\xfe.yaml', b'-o.yaml', 'Größe µ.yaml'.encode()):
            path = os.path.join(os.fsencode(folder), name)
            shutil.copy(EXAMPLE, path)
            result = judged(run('check', '--samples', '0', path), f'a file called {name!r}', (0, 1))
            expect(plain(result.stdout), f'a file called {name!r} reaches the terminal')
            os.truncate(path, 5)
            judged(run('check', path), f'a bad file called {name!r}', (2,))
            os.remove(path)
        longest = folder / ('n' * 250 + '.yaml')
        expect(run('new', longest).returncode == 0 and longest.read_bytes() == run('new', '-').stdout, 'a name of 255 bytes')
        expect(run('check', '--samples', '0', longest).returncode in (0, 1), 'a file of 255 bytes of name is read')
        longest.unlink()

        # what stands in the way of `new`
        (folder / 'there').write_text('mine')
        (folder / 'link').symlink_to(folder / 'there')
        (folder / 'dangling').symlink_to(folder / 'nowhere')
        (folder / 'sub').mkdir()
        for name in ('there', 'link', 'dangling', 'sub', 'there/x', 'absent/x', ''):
            judged(run('new', str(folder) + '/' + name), f'new {name}', (2,))
        expect((folder / 'there').read_text() == 'mine' and not (folder / 'nowhere').exists(), '`new` wrote through a link')
        expect(sorted(os.listdir(folder)) == ['dangling', 'link', 'sub', 'there'], f'`new` left {os.listdir(folder)}')


def draw(folder, example=EXAMPLE, **more):
    return run('draw', example, '-o', folder, **more)


def contents(folder):
    return {p.name: p.read_bytes() for p in pathlib.Path(folder).iterdir() if p.is_file()}


def whole(folder, versions):
    """No file under a real name that is not one of the whole ones; what was under way may lie there as .part."""
    for name, text in contents(folder).items():
        if not name.endswith('.part') and all(version.get(name) != text for version in versions):
            return name
    return None


def folders(good, other):
    with tempfile.TemporaryDirectory() as top:
        top = pathlib.Path(top)
        escaping = top / 'escaping.yaml'
        escaping.write_bytes(renamed('../../../evil/$(x);é'))
        (top / 'deep').mkdir()
        expect(draw(top / 'deep' / 'out', escaping).returncode == 0, 'a name that would escape')
        expect(set(contents(top / 'deep' / 'out')) == set(good), 'the name of a build names a file')
        for command in ('report', 'check'):
            run(command, '--samples', '8', *(['-o', top / 'deep' / 'report'] if command == 'report' else []), escaping)
        expect(all(re.fullmatch(r'[a-z0-9_-]+\.[a-z]+', name) for name in os.listdir(top / 'deep' / 'report')), 'the name of a build names a file')
        expect(sorted(os.listdir(top)) == ['deep', 'escaping.yaml'], 'a name escaped from its folder')

        real, link = top / 'real', top / 'link'
        real.mkdir()
        link.symlink_to(real)
        expect(draw(link).returncode == 0 and link.is_symlink() and contents(real) == good, 'a link to a folder')
        (top / 'nowhere').symlink_to(top / 'gone')
        (top / 'loop').symlink_to(top / 'loop')
        (top / 'file').write_text('mine')
        for name in ('nowhere', 'loop', 'file', 'file/sub', 'x' * 300):
            judged(draw(top / name), f'draw -o {name[:10]}', (2,))
        expect((top / 'file').read_text() == 'mine' and not (top / 'gone').exists(), 'a file in the way was touched')

        victim, name = top / 'victim', sorted(good)[0]
        victim.write_text('mine')
        (real / name).unlink()
        (real / name).symlink_to(victim)
        expect(draw(real).returncode == 0, 'a link in place of a file')
        expect(victim.read_text() == 'mine' and contents(real) == good and not (real / name).is_symlink(), 'written through a link')
        (real / name).unlink()
        (real / name).mkdir()
        judged(draw(real), 'a directory in place of a file', (2,))
        expect((real / name).is_dir() and whole(real, [good]) is None, 'a directory in the way')
        expect(not [n for n in os.listdir(real) if n.endswith('.part')], 'a refusal leaves parts behind')

        # a file may not grow: as a full disk does, wherever that strikes
        sizes = sorted({len(text) for text in good.values()})
        for most in (0, 100, sizes[0], (sizes[0] + sizes[-1]) // 2, sizes[-1] - 1):
            out = top / f'limited-{most}'

            def limited():
                signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
                resource.setrlimit(resource.RLIMIT_FSIZE, (most, most))
            result = subprocess.run([LUMWRIGHT, 'draw', EXAMPLE, '-o', out], stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                    preexec_fn=limited, timeout=SECONDS)
            expect(result.returncode == 3 and b'File too large' in result.stderr, f'files of {most} bytes at most: {result}')
            expect(not out.exists() or not os.listdir(out), f'files of {most} bytes at most leave {out.exists() and os.listdir(out)}')


def mounted(options, use):
    """Runs `use` in a small file system; False where none can be mounted."""
    with tempfile.TemporaryDirectory() as place:
        if os.geteuid() != 0 or subprocess.run(['mount', '-t', 'tmpfs', '-o', options, 'tmpfs', place], capture_output=True).returncode != 0:
            return False
        try:
            use(pathlib.Path(place))
        finally:
            subprocess.run(['umount', place], check=True)
    return True


def disks(good):
    def full(place):
        (place / 'out').mkdir()
        result = draw(place / 'out')
        expect(result.returncode == 3 and b'No space left' in result.stderr, f'a full disk: {result}')
        expect(os.listdir(place / 'out') == [], f'a full disk keeps {os.listdir(place / "out")}')
        result = draw(place / 'made')
        expect(result.returncode in (2, 3) and not (place / 'made').exists(), f'a full disk and a new folder: {result}')
        shutil.copy(EXAMPLE, place / 'own.yaml')
        (place / 'log.yaml').write_bytes(LOG)
        with open(place / 'filler', 'wb', buffering=0) as filler:
            try:
                while filler.write(b'x' * 1024):
                    pass
            except OSError:
                pass
        for command in (['new', place / 'new.yaml'], ['tune', place / 'own.yaml', place / 'log.yaml']):
            expect(run(*command).returncode in (1, 2, 3), f'{command[0]} on a full disk')
        expect(sorted(os.listdir(place)) == ['filler', 'log.yaml', 'out', 'own.yaml'], f'a full disk keeps {os.listdir(place)}')

    def read_only(place):
        (place / 'out').mkdir()
        subprocess.run(['mount', '-o', 'remount,ro', place], check=True)
        for command in (['draw', EXAMPLE, '-o', place / 'out'], ['draw', EXAMPLE, '-o', place / 'made'], ['new', place / 'new.yaml']):
            result = judged(run(*command), f'{command[0]} on a read-only disk', (2,))
            expect(b'Read-only file system' in result.stderr, f'{command[0]} on a read-only disk: {result.stderr!r}')
    if not mounted('size=64k,nr_inodes=100', full):
        skipped.append('a full disk (needs root and a mount)')
    if not mounted('size=1m', read_only):
        skipped.append('a read-only disk (needs root and a mount)')
    if os.geteuid() == 0:
        skipped.append('a folder without the right to write (root has every right)')
        return
    with tempfile.TemporaryDirectory() as place:
        os.chmod(place, 0o555)
        judged(draw(place), 'a folder without the right to write', (2,))
        expect(os.listdir(place) == [], 'written without the right to')
        os.chmod(place, 0o755)


def kills(good, other):
    rng = random.Random(7)
    begun = time.monotonic()
    with tempfile.TemporaryDirectory() as place:
        draw(pathlib.Path(place) / 'warm')
    usual = time.monotonic() - begun
    cut = 0
    for number in range(40):
        with tempfile.TemporaryDirectory() as place:
            place = pathlib.Path(place)
            if number % 2:
                draw(place / 'out', OTHER)
            process = subprocess.Popen([LUMWRIGHT, 'draw', EXAMPLE, '-o', place / 'out'], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            if number % 4 < 2:
                time.sleep(rng.uniform(0, 1.1 * usual))
            else:  # once the first file is there: in the midst of the writing
                before = set(contents(place / 'out')) if (place / 'out').exists() else set()
                while process.poll() is None and not ((place / 'out').exists() and set(os.listdir(place / 'out')) != before):
                    pass
                time.sleep(rng.uniform(0, 0.002))
            process.kill()
            cut += process.wait() == -signal.SIGKILL
            if (place / 'out').exists():
                bad = whole(place / 'out', [good, other])
                expect(bad is None, f'killed: {bad} is half a file')
    expect(cut >= 10, f'only {cut} of 40 were killed in time')
    new = run('new', '-').stdout
    for number in range(40):
        with tempfile.TemporaryDirectory() as place:
            process = subprocess.Popen([LUMWRIGHT, 'new', os.path.join(place, 'new.yaml')], stdout=subprocess.DEVNULL)
            time.sleep(rng.uniform(0, 0.02))
            process.kill()
            process.wait()
            expect(whole(place, [{'new.yaml': new}]) is None, 'killed: half a new.yaml')


def stops(good):
    """SIGINT, SIGTERM and SIGHUP leave no .part; what SIGKILL left is cleared by the next run, not what a living process has."""
    for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP, signal.SIGKILL):
        with tempfile.TemporaryDirectory() as out:
            stopped = 0
            for i in range(40):
                process = subprocess.Popen([LUMWRIGHT, 'draw', EXAMPLE, '-o', out], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
                until = time.monotonic() + SECONDS
                while process.poll() is None and time.monotonic() < until and not any(n.endswith('.part') for n in os.listdir(out)):
                    pass
                process.send_signal(number)
                stopped += process.wait(SECONDS) == -number
                if number != signal.SIGKILL:
                    expect(not [n for n in os.listdir(out) if n.endswith('.part')], f'signal {number} leaves parts behind')
            expect(stopped > 0, f'signal {number} never came in time')
            dead, alive, strange = '.lumwright-%d-00000000.part' % process.pid, '.lumwright-%d-00000000.part' % os.getpid(), 'mine.part'
            for name in (dead, alive, strange):
                pathlib.Path(out, name).write_text('half')
            expect(draw(out).returncode == 0, 'a run after others were stopped')
            expect({n for n in os.listdir(out) if n.endswith('.part')} == {alive, strange}, f'after signal {number}: {os.listdir(out)}')


def rivals(good, other):
    with tempfile.TemporaryDirectory() as place:
        for number in range(6):
            both = [subprocess.Popen([LUMWRIGHT, 'draw', example, '-o', place], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
                    for example in (EXAMPLE, OTHER)]
            for process in both:
                expect(process.wait(SECONDS) == 0, f'two at once: {process.stderr.read()!r}')
                process.stderr.close()
            bad = whole(place, [good, other])
            expect(bad is None and set(contents(place)) == set(good) | set(other), f'two at once: {bad} is a mixture, or a file is missing')
        for number in range(10):
            name = os.path.join(place, f'new-{number}.yaml')
            four = [subprocess.Popen([LUMWRIGHT, 'new', name], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) for _ in range(4)]
            expect(sorted(p.wait(SECONDS) for p in four) == [0, 2, 2, 2], 'four make one file')


# --- terminals and surroundings ---------------------------------------------------------------------------------------

def surroundings():
    usual = run('check', '--samples', '8', EXAMPLE)
    for what, environment in {'nothing': {}, 'no HOME': {'PATH': os.environ['PATH']}, '20 columns': {**os.environ, 'COLUMNS': '20'},
                              'columns of nonsense': {**os.environ, 'COLUMNS': '-1'}, 'a dumb terminal': {**os.environ, 'TERM': 'dumb'},
                              'a locale that is not there': {**os.environ, 'LC_ALL': 'xx_YY.UTF-8'}}.items():
        result = run('check', '--samples', '8', EXAMPLE, env=environment)
        expect((result.returncode, result.stdout, result.stderr) == (usual.returncode, usual.stdout, b''), f'{what}: another answer')

    with tempfile.TemporaryDirectory() as place:
        made = shutil.which('localedef') and subprocess.run(['localedef', '-i', 'de_DE', '-f', 'UTF-8', os.path.join(place, 'de_DE.UTF-8')],
                                                            capture_output=True).returncode in (0, 1)
        if made and os.path.exists(os.path.join(place, 'de_DE.UTF-8')):
            comma = {**os.environ, 'LC_ALL': 'de_DE.UTF-8', 'LOCPATH': place}
            for command in (['check', '--samples', '8', EXAMPLE], ['check', '--samples', '8', '--format', 'json', EXAMPLE], ['trace', EXAMPLE],
                            ['bench', READINGS], ['units'], ['new', '-'], ['sheet', EXAMPLE]):
                expect(run(*command, env=comma).stdout == run(*command).stdout, f'{command[0]}: decimal commas change the answer')
            out, there = os.path.join(place, 'out'), os.path.join(place, 'usual')
            expect(draw(out, env=comma).returncode == 0 and draw(there).returncode == 0 and contents(out) == contents(there), 'draw: decimal commas')
        else:
            skipped.append('decimal commas (no localedef or no de_DE here)')

    def closed(*numbers):
        return lambda: [os.close(n) for n in numbers]
    for numbers, status in (((0,), usual.returncode), ((1,), 3), ((0, 1), 3)):
        process = subprocess.run([LUMWRIGHT, 'check', '--samples', '0', EXAMPLE], stderr=subprocess.PIPE,
                                 stdout=subprocess.DEVNULL, preexec_fn=closed(*numbers), timeout=SECONDS)
        expect(process.returncode == status, f'streams {numbers} closed: status {process.returncode}: {process.stderr!r}')
    for numbers in ((2,), (1, 2), (0, 1, 2)):
        process = subprocess.run([LUMWRIGHT, 'check', '/nowhere.yaml'], preexec_fn=closed(*numbers), timeout=SECONDS)
        expect(process.returncode == 2, f'streams {numbers} closed: status {process.returncode}')
    process = subprocess.run([LUMWRIGHT, 'check', '-'], preexec_fn=closed(0), capture_output=True, timeout=SECONDS)
    expect(process.returncode == 2 and b'cannot read standard input' in process.stderr, f'stdin closed: {process}')
    with tempfile.TemporaryDirectory() as place:  # a stream that is closed must not turn into the file that is opened next
        for numbers in ((1,), (2,), (0, 1, 2)):
            out = os.path.join(place, f'out{len(os.listdir(place))}')
            subprocess.run([LUMWRIGHT, 'draw', EXAMPLE, '-o', out], preexec_fn=closed(*numbers), timeout=SECONDS,
                           stderr=subprocess.DEVNULL, stdout=subprocess.DEVNULL)
            expect(whole(out, [contents_of_example]) is None, f'streams {numbers} closed: the answer went into a file')

    def alone():  # RLIMIT_NPROC binds nobody who is root, an address space binds all: no room for a thread's stack
        resource.setrlimit(resource.RLIMIT_STACK, (1 << 30, resource.getrlimit(resource.RLIMIT_STACK)[1]))
        resource.setrlimit(resource.RLIMIT_AS, (800 << 20, 800 << 20))
    process = subprocess.run([LUMWRIGHT, 'check', '--samples', '8', EXAMPLE], preexec_fn=alone, capture_output=True, timeout=SECONDS)
    expect(process.returncode == usual.returncode and process.stdout == usual.stdout, f'no threads to be had: {process.returncode}, {process.stderr!r}')

    ours, theirs = pty.openpty()
    process = subprocess.Popen([LUMWRIGHT, 'check', '--samples', '8', EXAMPLE], stdout=theirs, stderr=theirs, stdin=theirs,
                               env={**os.environ, 'TERM': 'dumb', 'COLUMNS': '20'})
    os.close(theirs)
    said = b''
    try:
        while piece := os.read(ours, 65536):
            said += piece
    except OSError:
        pass
    process.wait(SECONDS)
    os.close(ours)
    expect(said.replace(b'\r\n', b'\n') == usual.stdout, 'a dumb terminal of 20 columns gets another answer')


with tempfile.TemporaryDirectory() as a, tempfile.TemporaryDirectory() as b:
    expect(draw(a).returncode == 0 and draw(b, OTHER).returncode == 0, 'the examples cannot be drawn')
    contents_of_example, contents_of_other = contents(a), contents(b)
texts()
places()
folders(contents_of_example, contents_of_other)
disks(contents_of_example)
kills(contents_of_example, contents_of_other)
stops(contents_of_example)
rivals(contents_of_example, contents_of_other)
surroundings()
for failure in failures:
    print(failure)
for what in skipped:
    print(f'skipped: {what}')
print(f'{counted} expectations, {len(failures)} not met')
sys.exit(1 if failures else 0)
