#!/usr/bin/env python3
"""Makes the guide and holds it to what the program says: nothing in it was typed by hand.

usage: guide.py LUMWRIGHT PROJECT_DIR
"""
import json
import math
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

import yaml

LUMWRIGHT, PROJECT = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve()
PAGES = sorted((PROJECT / 'cli/guide').glob('*.md'))
UNITS = {'min': (60, 0), 's': (1, 0), 'h': (3600, 0), 'g/s': (1e-3, 0), 'g': (1e-3, 0), 'degC': (1, 273.15), 'mm': (1e-3, 0), 'V': (1, 0),
         'A': (1, 0), 'W': (1, 0), 'Pa': (1, 0), 'mmH2O': (9.80665, 0), 'l/min': (1e-3 / 60, 0), '%': (1e-2, 0), '': (1, 0)}
# Facts of the trade that no run gives. Each stands in its paragraph with "common practice, no source".
TRADE_FACTS = []
# Digits that are names, and no measure of anything.
HEAD = 'Out of doors only: carbon monoxide\nWater first, then the fire'
NAMES = ['status 0 ', 'with 1 when', 'with 2 when', 'with 3 after']
wrong = []


def squeezed(text):
    return re.sub(r'\s+', '', text)


def words_of(element, skipped=lambda e: False):
    """All the text of an element without its blanks, cells between bars, leaving out elements that `skipped` names."""
    out = ('|' if element.tag == 'tr' else '') + (element.text or '')
    for child in element:
        out += ('' if skipped(child) else words_of(child, skipped)) + (child.tail or '')
    return squeezed(out + ('|' if element.tag in ('th', 'td') else ''))


def fences(text):
    """(kind, lines) of every block between ```."""
    return [(m[1], m[2].splitlines()) for m in re.finditer(r'^```(\w*)\n(.*?)^```$', text, re.M | re.S)]


def run(line, folder):
    """A command as it is told, in the folder of the guide."""
    return subprocess.run(re.sub('^lumwright', str(LUMWRIGHT), line), shell=True, cwd=folder, capture_output=True, text=True, timeout=300)


def check_run(name, lines, shown, folder):
    """A block of a command: what the page shows is a piece of what the program really prints here, whole lines, in order."""
    asked = dict(line.split(': ', 1) for line in lines[1:])
    done = run(lines[0], folder)
    if done.returncode != int(asked.get('exits', 0)):
        wrong.append(f'{name}: `{lines[0]}` leaves with {done.returncode}, not {asked.get("exits", 0)}')
    command = []
    while shown and (not command or command[-1].endswith(' \\')):
        command.append(shown.pop(0))
    told = ' '.join(part.removesuffix(' \\').strip() for part in command)
    if told != '$ ' + lines[0]:
        wrong.append(f'{name}: the page tells `{told}` and not `{lines[0]}`')
    cut_above, cut_below = shown[:1] == ['...'], shown[-1:] == ['...']
    piece = '\n'.join(shown[cut_above:len(shown) - cut_below]).rstrip()
    said = (done.stdout + done.stderr).replace('\u00a0', ' ').rstrip()
    if not piece.startswith(HEAD):  # which stand at the top of the guide anyway
        said = said.removeprefix(HEAD + '\n\n')
    if not piece or ('\n' + piece + '\n') not in '\n' + said + '\n':
        wrong.append(f'{name}: the page shows another run of `{lines[0]}` than there is:\n{piece}\n--- it is\n{said}')
    if not cut_above and not said.startswith(piece.splitlines()[0]) or not cut_below and not said.endswith(piece.splitlines()[-1].strip()):
        wrong.append(f'{name}: `{lines[0]}` is cut without a mark')


def check_screens(pages, sections, folder):
    for page, section in zip(pages, sections):
        blocks = [b for b in fences(page.read_text()) if b[0] in ('run', 'file', 'lines')]
        screens = [e for e in section.iter('div') if e.get('class') == 'screen']
        if len(blocks) != len(screens):
            wrong.append(f'{page.name}: {len(blocks)} blocks, {len(screens)} shown')
        for (kind, lines), screen in zip(blocks, screens):
            shown = [(code.text or '').rstrip() for code in screen]
            if kind == 'run':
                check_run(page.name, lines, shown, folder)
            elif kind == 'file' and [line.rstrip() for line in (PROJECT / lines[0]).read_text().splitlines()] != shown:
                wrong.append(f'{page.name}: {lines[0]} is shown otherwise than it is')
            elif kind == 'lines':
                for line in lines:
                    check_command(page.name, line.removeprefix('$ '))


def options_of():
    """Every command and its options, as a shell completes them."""
    script = subprocess.run([LUMWRIGHT, 'completion', 'bash'], capture_output=True, text=True).stdout
    return {m[1]: m[2].split() for m in re.finditer(r"^    (\w+)\) options='([^']*)' ;;$", script, re.M)}


def check_command(name, line):
    """A command that is named and not run: it is there, and has every option that is told of it."""
    words = line.split()
    known = options_of()
    if len(words) < 2 or words[1] not in known:
        wrong.append(f'{name}: `{line}` is no command')
        return
    for word in words[2:]:
        if word.startswith('--') and word.split('=')[0] not in known[words[1]]:
            wrong.append(f'{name}: `{line}`: there is no {word}')


def plain(text):
    """A page as the words that it prints, blocks left out, placeholders as {{...}}."""
    text = re.sub(r'^```.*?^```$', '', text, flags=re.M | re.S)
    text = re.sub(r'^# .*$', '', text, count=1, flags=re.M)
    text = re.sub(r'^\|[-|]+\|$', '', text, flags=re.M)
    text = re.sub(r'^(## |- |\d+\. |> )', '', text, flags=re.M)
    text = re.sub(r'\[([^\]]*)\]\(#[^)]*\)', r'\1', text)
    return re.sub(r'[`*]', '', text)


def number(text):
    """A number with its unit in SI, and half of what its last digit is worth."""
    digits, _, unit = text.partition(' ')
    if unit not in UNITS:
        raise ValueError(f'{text}: what is {unit}')
    factor, zero = UNITS[unit]
    decimals = len(digits.partition('.')[2])
    return float(digits) * factor + zero, 0.5 * 10.0**-decimals * factor * 1.0001


def near(text, si):
    value, half = number(text)
    return math.isclose(value, si, abs_tol=half, rel_tol=1e-9)


def spelt(text):
    """ "54.7degC" -> "54.7 degC"; blanks were squeezed out. """
    return re.sub(r'^(-?[\d.]+)(?=[^\d.])', r'\1 ', text)


def stands_for(words, text, answers):
    """Whether a placeholder was filled with what the JSON of `check`, the example or the table says."""
    if words[0] == 'usual':
        rows = yaml.safe_load((PROJECT / 'lib/data/typical.yaml').read_text())['values']
        return squeezed(str(next(r.get('value', r.get('word')) for r in rows if r['key'] == words[1]))) == text
    if words[0] == 'written':
        value = yaml.safe_load((PROJECT / f'examples/{words[1]}.yaml').read_text())
        for step in words[2].split('.'):
            value = value[step]
        written = re.search(rf'\b{words[2].split(".")[-1]}: ([^,}}\n]+)', (PROJECT / f'examples/{words[1]}.yaml').read_text())
        return text == squeezed(str(value)) or (isinstance(value, float) and written and text == squeezed(written[1]))
    answer = answers(words[1])
    if words[0] == 'value':
        return near(spelt(text), answer['results'][words[2]]['value'])
    if words[0] == 'band':
        low, high = text.split('to')
        unit = re.sub(r'^-?[\d.]+', '', high)
        result = answer['results'][words[2]]
        return near(spelt(low + unit), result['low']) and near(spelt(high), result['high'])
    check = next(c for c in answer['checks'] if c['id'] == words[2])
    value = check[words[3]]
    return near(spelt(text), value['value']) if isinstance(value, dict) else squeezed(value) == text


def check_words(page, section, answers):
    """Every word of the page stands in the guide, in order, and each placeholder says what the program says."""
    def skipped(e):
        return e.tag in ('figure', 'h2') or e.get('class') in ('screen', 'cautions') or e.get('aria-label') == 'table: what the interview asks'
    told = words_of(section, skipped)
    parts = re.split(r'\{\{(.*?)\}\}', plain(page.read_text()))
    pattern = ''.join('(.+?)' if i % 2 else re.escape(squeezed(part)) for i, part in enumerate(parts))
    found = re.fullmatch(pattern, told)
    if not found:
        wrong.append(f'{page.name}: the guide has other words than the page:\n{told}\n--- wanted\n{pattern}')
        return
    for asked, text in zip(parts[1::2], found.groups()):
        if not stands_for(asked.split(), text, answers):
            wrong.append(f'{page.name}: {{{{{asked}}}}} became `{text}`')


def check_no_figure_by_hand(page):
    """Outside of blocks, placeholders and code nothing is measured."""
    text = re.sub(r'`[^`]*`', '', re.sub(r'\{\{.*?\}\}', '', re.sub(r'^```.*?^```$', '', page.read_text(), flags=re.M | re.S)))
    text = re.sub(r'^\d+\. ', '', text, flags=re.M)
    for name in NAMES:
        text = text.replace(name, '')
    for paragraph in text.split('\n\n'):
        for fact in TRADE_FACTS:
            if fact in paragraph and 'common practice, no source' in paragraph:
                paragraph = paragraph.replace(fact, '')
        for m in re.finditer(r'\d+', paragraph):
            wrong.append(f'{page.name}: a figure was typed by hand: {paragraph[max(0, m.start() - 30):m.end() + 20]!r}')
        spoken = r'\b(two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|hundred|half an?)\s+(milli\w+|centi\w+|met(re|er)s?|inch\w*|volts?|amp\w*|minutes?|seconds?|hours?|degrees?|bar|litres?|grams?)\b'
        for m in re.finditer(spoken, paragraph):
            wrong.append(f'{page.name}: a figure was typed by hand, in words: {m[0]!r}')


def check_cautions(root):
    items = [e for e in root.iter('li') if 'caution' in (e.get('class') or '').split()]
    told = {squeezed(e.find('h3').text): (e, words_of(e)) for e in items}
    files = sorted((PROJECT / 'cautions').glob('*.yaml'))
    if len(files) < 30:
        wrong.append(f'only {len(files)} cautions were found')
    for file in files:
        row = yaml.safe_load(file.read_text())
        element, text = told.get(squeezed(row['title']), (None, ''))
        if squeezed(row['text']) not in text or squeezed(row['authority']) not in text:
            wrong.append(f'the guide does not tell the caution {row["id"]} in full')
        elif 'brief' in row and 'kills' not in element.get('class').split():
            wrong.append(f'the guide does not mark {row["id"]} as one that kills')


def check_files(folder):
    for file in sorted((PROJECT / 'examples').glob('**/*.yaml')):
        if file.name.endswith('.tuned.yaml'):
            continue
        kept = folder / file.relative_to(PROJECT)
        if not kept.is_file() or kept.read_bytes() != file.read_bytes():
            wrong.append(f'{kept.relative_to(folder)} beside the guide is not the example')
    if {p.name for p in folder.iterdir()} != {'guide.html', 'examples'}:
        wrong.append(f'beside the guide lies {sorted(p.name for p in folder.iterdir())}')


def main():
    with tempfile.TemporaryDirectory() as place:
        folder = pathlib.Path(place) / 'guide'
        done = subprocess.run([LUMWRIGHT, 'guide', '-o', folder], capture_output=True, text=True, timeout=600)
        if done.returncode != 0:
            sys.exit(f'guide leaves with {done.returncode}: {done.stderr}')
        check_files(folder)
        text = (folder / 'guide.html').read_text()
        if '{{' in text or '```' in text:
            wrong.append('a placeholder was left in the guide')
        root = ET.fromstring(text.split('\n', 1)[1] if text.startswith('<!DOCTYPE') else text)
        sections = list(root.find('body').find('main').findall('section'))
        if len(sections) != len(PAGES) or len(PAGES) < 8:
            wrong.append(f'{len(PAGES)} pages, {len(sections)} in the guide')
        kept = {}

        def answers(name):
            if name not in kept:
                kept[name] = json.loads(run(f'lumwright check examples/{name}.yaml --format json', fresh).stdout)
            return kept[name]
        fresh = pathlib.Path(place) / 'fresh'
        shutil.copytree(folder, fresh)  # the pages tune their example further down
        for page, section in zip(PAGES, sections):
            check_words(page, section, answers)
            check_no_figure_by_hand(page)
            for span in re.findall(r'`(lumwright [^`]+)`', re.sub(r'^```.*?^```$', '', page.read_text(), flags=re.M | re.S)):
                check_command(page.name, ' '.join(span.split()))
        check_screens(PAGES, sections, folder)
        check_cautions(root)
        whole = ' '.join(p.read_text() for p in PAGES)
        for command in set(options_of()) - {'guide', 'completion'}:
            if f'lumwright {command}' not in whole:
                wrong.append(f'the guide says nothing of `lumwright {command}`')


main()
if wrong:
    sys.exit('\n'.join(wrong))
