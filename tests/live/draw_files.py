#!/usr/bin/env python3
"""What `draw` writes for an example, read back: DXF by ezdxf, the printed page by pdftoppm, against its own table of holes.

usage: draw_files.py LUMWRIGHT EXAMPLES_DIR
"""
import csv
import os
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf
import numpy
from PIL import Image

lumwright, examples = sys.argv[1], Path(sys.argv[2])
wrong = []


def check(truth, words):
    if not truth:
        wrong.append(words)


def drawn(name, folder, *more):
    run = subprocess.run([lumwright, 'draw', str(examples / name), '-o', folder, *more], capture_output=True, text=True)
    check(run.returncode == 0, f'{name}: {run.stderr}')


def holes_of(folder):
    with open(Path(folder) / 'holes.csv', newline='') as file:
        return list(csv.DictReader(file))


def circles(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    check(not audit.has_errors and not audit.has_fixes, f'{path}: {[e.message for e in audit.errors + audit.fixes]}')
    return [(c.dxf.center.x, c.dxf.center.y, 2 * c.dxf.radius) for c in document.modelspace().query('CIRCLE')]


def millimetres(hole, what):
    """A size of the table, which is in the description's own unit; drawings for machines are in millimetres."""
    return float(hole[f'{what}_mm']) if f'{what}_mm' in hole else 25.4 * float(hole[f'{what}_in'])


def compare_dxf(folder):
    found = 0
    sheets = {p.name for p in Path(folder).iterdir()}
    for hole in holes_of(folder):
        part = hole['part'] if f'{hole["part"]}_mm.dxf' in sheets else 'side'  # floor and walls of a square box
        x, y, d = (millimetres(hole, k) for k in ('x_from_middle', 'y_from_middle', 'diameter'))
        last = 6e-4 if 'diameter_mm' in hole else 25.4 * 6e-5  # the table has three decimals, of an inch four
        near = [c for c in circles(Path(folder) / f'{part}_mm.dxf')
                if abs(c[0] - x) < last and abs(c[1] - y) < last and abs(c[2] - d) < last]
        check(near, f'{folder}: no circle for {hole}')
        found += bool(near)
    return found


def red_spots(path, page):
    """Middles of what is drawn with the drill pen on a page, in mm from the lower left corner."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(['pdftoppm', '-r', '254', '-f', str(page), '-l', str(page), '-png', path, f'{folder}/p'], check=True)
        pixels = numpy.asarray(Image.open(next(Path(folder).glob('p*.png'))).convert('RGB')).astype(int)
    red = (pixels[:, :, 0] > pixels[:, :, 1] + 40) & (pixels[:, :, 0] > pixels[:, :, 2] + 40)
    red[:, :] &= numpy.arange(red.shape[0])[:, None] < 0.75 * red.shape[0]  # not the legend
    spots = []
    while red.any():
        y, x = numpy.argwhere(red)[0]
        heap, box = [(y, x)], [y, y, x, x]
        red[y, x] = False
        while heap:
            a, b = heap.pop()
            box = [min(box[0], a), max(box[1], a), min(box[2], b), max(box[3], b)]
            for da in range(-3, 4):
                for db in range(-3, 4):
                    if 0 <= a + da < red.shape[0] and 0 <= b + db < red.shape[1] and red[a + da, b + db]:
                        red[a + da, b + db] = False
                        heap.append((a + da, b + db))
        if box[1] - box[0] > 8:  # 0.8 mm
            spots.append(((box[2] + box[3]) / 20, (pixels.shape[0] - (box[0] + box[1]) / 2) / 10))
    return spots


with tempfile.TemporaryDirectory() as folder:
    for name, more in (('tarn-beck.yaml', []), ('great-fell-5in.yaml', []), ('high-tarn-32mm.yaml', ['--draft'])):
        drawn(name, f'{folder}/{name}', *more)
        check(compare_dxf(f'{folder}/{name}') >= 2, f'{name}: too few holes to compare')
    # a square box: floor and walls on one sheet
    text = (examples / 'tarn-beck.yaml').read_text()
    square = text.replace('  box: {', '  box: { shape: square,')
    check(square != text, 'the box of the first example is not where it was')
    Path(f'{folder}/square.yaml').write_text(square)
    drawn(f'{folder}/square.yaml', f'{folder}/square')
    parts = {hole['part'] for hole in holes_of(f'{folder}/square')}
    check({'bottom', 'lower side', 'upper side'} <= parts, f'a square box has holes in {parts} alone')
    check(compare_dxf(f'{folder}/square') == len(holes_of(f'{folder}/square')), 'holes of the square box are not drawn')
    # the printed flange of the first example, behind the general arrangement: three holes on their circle, 0.1 mm
    pdf = f'{folder}/tarn-beck.yaml/templates.pdf'
    holes = [h for h in holes_of(f'{folder}/tarn-beck.yaml') if h['part'] == 'flange' and h['hole'].startswith('screw')]
    spots = red_spots(pdf, 2)
    check(len(spots) == len(holes), f'{len(spots)} drilled holes on the second page, wanted {len(holes)}: {spots}')
    distances = sorted(((a[0] - b[0])**2 + (a[1] - b[1])**2)**0.5 for i, a in enumerate(spots) for b in spots[:i])
    at = [(float(h['x_from_middle_mm']), float(h['y_from_middle_mm'])) for h in holes]
    wanted = sorted(((a[0] - b[0])**2 + (a[1] - b[1])**2)**0.5 for i, a in enumerate(at) for b in at[:i])
    check(len(distances) == len(wanted) and all(abs(d - w) < 0.1 for d, w in zip(distances, wanted)), f'printed {distances}, wanted {wanted}')
    # a print that came out 0.8 % small is put right
    drawn('tarn-beck.yaml', f'{folder}/stretched', '--scale-x', '99.2 mm', '--scale-y', '148.8 mm')
    larger = red_spots(f'{folder}/stretched/templates.pdf', 2)
    greater = sorted(((a[0] - b[0])**2 + (a[1] - b[1])**2)**0.5 for i, a in enumerate(larger) for b in larger[:i])
    check(len(greater) == len(wanted) and all(abs(g - w / 0.992) < 0.1 for g, w in zip(greater, wanted)), f'stretched {greater}')
    check(max(abs(g - w) for g, w in zip(greater, wanted)) > 0.12, 'the stretch does nothing')
    # again into the same folder: the same files, the same bytes
    before = {p.name: p.read_bytes() for p in Path(f'{folder}/tarn-beck.yaml').iterdir()}
    drawn('tarn-beck.yaml', f'{folder}/tarn-beck.yaml')
    check(before == {p.name: p.read_bytes() for p in Path(f'{folder}/tarn-beck.yaml').iterdir()}, 'other bytes the second time')
    text = subprocess.run(['pdftotext', pdf, '-'], capture_output=True, text=True).stdout
    check('pitch circle' in text and ('Ø' in text or '⌀' in text), 'no diameter sign in the PDF')
for words in wrong:
    print(words)
print('what `draw` wrote was read back' if not wrong else f'{len(wrong)} wrong')
sys.exit(bool(wrong))
