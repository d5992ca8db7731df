#!/usr/bin/env python3
"""Measures what the drawing writers drew, with other people's programs.

drawing_probe writes made-up drawings with the places of their holes. The PDF is rastered by pdftoppm and the SVG by
rsvg-convert at 254 dots an inch, ten a millimetre; bars and holes are measured in the pictures. The DXF is read and audited
by ezdxf, words are extracted by pdftotext, sizes by pdfinfo. Usage: drawing_measure.py PROBE
"""
import glob
import itertools
import json
import math
import os
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

import ezdxf
import numpy
from ezdxf.tools.text import plain_text
from PIL import Image

PX = 10.0  # pixels a millimetre at 254 dpi
PICTURE_TOLERANCE = 0.1  # mm, what the pictures are held to
DXF_TOLERANCE = 1e-4  # mm
PAPER = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}  # ISO 216; 8.5 in x 11 in
STRETCH = (100.0 / 99.2, 150.0 / 150.6)  # what the probe was told was measured
CHORD = 30.0 * math.sqrt(3.0) / 2.0  # three holes on 30 mm: handbook constant 0.8660 x pitch-circle diameter

checked = 0
wrong = []


def check(good, words):
    global checked
    checked += 1
    if not good:
        wrong.append(words)


def near(found, wanted, tolerance, words):
    check(abs(found - wanted) <= tolerance, f"{words}: found {found:.6g}, wanted {wanted:.6g} within {tolerance:g}")


def run(*command):
    return subprocess.run(command, check=True, capture_output=True).stdout


def raster_pdf(path):
    stem = path[:-4] + "-raster"
    run("pdftoppm", "-r", "254", "-png", path, stem)
    return [numpy.asarray(Image.open(p).convert("RGB"), dtype=float) for p in sorted(glob.glob(stem + "*.png"))]


def raster_svg(path):
    out = path[:-4] + ".png"
    run("rsvg-convert", "-d", "254", "-p", "254", "-b", "white", path, "-o", out)
    return numpy.asarray(Image.open(out).convert("RGB"), dtype=float)


class Picture:
    def __init__(self, pixels, paper):
        self.pixels = pixels
        self.dark = 255.0 - pixels.mean(axis=2)
        self.width, self.height = PAPER[paper]  # a part of a pixel at the edge counts as one in the picture
        size = (pixels.shape[1] / PX, pixels.shape[0] / PX)
        check(all(-0.05 <= s - p <= 0.11 for s, p in zip(size, PAPER[paper])), f"{paper}: a picture of {size} mm")

    def part(self, array, low_x, low_y, high_x, high_y):
        """Cut out in millimetres from the lower left; with the place of its upper left corner."""
        left, right = int(round(low_x * PX)), int(round(high_x * PX))
        top, bottom = int(round((self.height - high_y) * PX)), int(round((self.height - low_y) * PX))
        return array[top:bottom, left:right], left / PX, self.height - top / PX

    def peaks(self, profile, start):
        """Centres of dark bands, in mm, weighted by darkness: finer than a pixel."""
        found = []
        for dark, group in itertools.groupby(enumerate(profile), key=lambda pair: pair[1] > 40.0):
            if dark:
                at, weight = zip(*group)
                found.append(start + (sum((i + 0.5) * w for i, w in zip(at, weight)) / sum(weight)) / PX)
        return found

    def bars(self, scale_x, scale_y):
        """Length of the level and the upright bar, between the middles of their end ticks."""
        pivot = (self.width / 2, self.height / 2)
        x, y = (pivot[0] + scale_x * (19.0 - pivot[0]), pivot[1] + scale_y * (49.0 - pivot[1]))
        # end ticks reach 2.5 mm from the bar, the longest others 1.8 mm; the bars' other half is free of writing
        level, left, _ = self.part(self.dark, x - 2, y - 2.3, x + 104, y - 2.0)
        upright, _, top = self.part(self.dark, x + 2.0, y - 2, x + 2.3, y + 153)
        across = self.peaks(level.mean(axis=0), left)
        along = self.peaks(upright.mean(axis=1), 0.0)
        level_length, upright_length = (ends[-1] - ends[0] if len(ends) > 1 else math.nan for ends in (across, along))
        return level_length, upright_length, len(across), len(along)

    def hole(self, x, y, diameter):
        """Centre and diameter of the circle in the colour of drilling that fits best near a place (Kasa 1976)."""
        reach = diameter / 2 + 1.2
        pixels, left, top = self.part(self.pixels, x - reach, y - reach, x + reach, y + reach)
        red = numpy.clip(pixels[:, :, 0] - pixels[:, :, 1:].max(axis=2), 0, None)
        rows, columns = numpy.nonzero(red > 30)
        if len(rows) < 20:
            return math.nan, math.nan, math.nan
        weight = numpy.sqrt(red[rows, columns])
        px, py = left + (columns + 0.5) / PX, top - (rows + 0.5) / PX
        matrix = numpy.column_stack([2 * px, 2 * py, numpy.ones_like(px)]) * weight[:, None]
        a, b, c = numpy.linalg.lstsq(matrix, (px**2 + py**2) * weight, rcond=None)[0]
        return a, b, 2 * math.sqrt(c + a * a + b * b)

    def can_be_pricked(self, x, y):
        """Dark all along the cross through a hole's middle."""
        lines = []
        for dx, dy in ((1.0, 0.1), (0.1, 1.0)):
            part, _, _ = self.part(self.dark, x - dx, y - dy, x + dx, y + dy)
            lines.append(part.max(axis=0 if dx > dy else 1))
        return min(line.min() for line in lines) > 60.0


def holes_of(stem):
    with open(stem + ".json", encoding="utf-8") as file:
        return json.load(file)["holes"]


def measure(pictures, stem, what, scale=(1.0, 1.0)):
    """Checks the bars of every sheet; returns how far each hole lies from where it should."""
    for number, picture in enumerate(pictures):
        level, upright, level_ticks, upright_ticks = picture.bars(*scale)
        name = f"{what}, sheet {number + 1}"
        check((level_ticks, upright_ticks) == (2, 2), f"{name}: {level_ticks} and {upright_ticks} end ticks, not 2 and 2")
        near(level, 100.0 * scale[0], PICTURE_TOLERANCE / 2, f"{name}: level bar")
        near(upright, 150.0 * scale[1], PICTURE_TOLERANCE / 2, f"{name}: upright bar")
    misses, places = [], []
    for hole in holes_of(stem):
        picture = pictures[hole["sheet"]]
        pivot = (picture.width / 2, picture.height / 2)
        x, y = (pivot[0] + scale[0] * (hole["x"] - pivot[0]), pivot[1] + scale[1] * (hole["y"] - pivot[1]))
        a, b, diameter = picture.hole(x, y, hole["diameter"])
        near(diameter, hole["diameter"] * sum(scale) / 2, PICTURE_TOLERANCE, f"{what}: diameter of a hole")
        misses.append(math.hypot(a - x, b - y))
        places.append((a, b))
        if misses[-1] < PICTURE_TOLERANCE:
            check(picture.can_be_pricked(x, y), f"{what}: no cross to prick at {x:.2f}, {y:.2f}")
    return misses, places


def all_in_place(misses, what):
    for miss in misses:
        check(miss <= PICTURE_TOLERANCE, f"{what}: a hole lies {miss:.3f} mm off")


def pictures_of(stem, paper="A4"):
    yield "PDF", [Picture(p, paper) for p in raster_pdf(stem + ".pdf")]
    sheets = sorted(glob.glob(stem + "-[0-9].svg"))
    yield "SVG", [Picture(raster_svg(p), paper) for p in sheets]


def check_sizes(stem, paper):
    width, height = PAPER[paper]
    info = run("pdfinfo", stem + ".pdf").decode()
    found = [float(n) for n in re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", info).groups()]
    near(found[0], width * 72 / 25.4, 0.01, f"{paper}: width of the PDF in points")
    near(found[1], height * 72 / 25.4, 0.01, f"{paper}: height of the PDF in points")
    check("CreationDate" not in info, f"{paper}: the PDF carries a date")
    with open(stem + ".pdf", "rb") as file:
        check(re.search(rb"/PrintScaling\s*/None", file.read()) is not None, f"{paper}: the PDF does not ask for 100 %")
    root = ElementTree.parse(stem + "-1.svg").getroot()
    check(root.get("width") == f"{width:g}mm" and root.get("height") == f"{height:g}mm", f"{paper}: size of the SVG")
    check(root.get("viewBox") == f"0 0 {width:g} {height:g}", f"{paper}: view box of the SVG")


def check_words(stem):
    wanted = ("30 ±0.1 PCD", "8BA clear", "every 120°, deburr 50 µm", "3 ×", "1:1", "brass, 1.2 mm (0.047 in) thick")
    pdf = run("pdftotext", "-layout", stem + ".pdf", "-").decode()
    svg = "\n".join(e.text for e in ElementTree.parse(stem + "-1.svg").iter("{http://www.w3.org/2000/svg}text"))
    for name, text, diameter in (("PDF", pdf, "Ø"), ("SVG", svg, "⌀")):
        for words in wanted + (diameter + "30 ±", diameter + "2.3,"):
            check(words in text, f"{name}: the words `{words}` are missing")


def check_unique_ids(path):
    ids = [e.get("id") for e in ElementTree.parse(path).iter() if e.get("id")]
    check(len(ids) == len(set(ids)) and len(ids) > 3, f"{os.path.basename(path)}: ids {ids}")


def read_dxf(path):
    with open(path, "rb") as file:
        check(max(file.read()) < 128, f"{os.path.basename(path)}: not ASCII")
    document = ezdxf.readfile(path)
    auditor = document.audit()
    problems = [e.message for e in list(auditor.errors) + list(auditor.fixes)]
    check(not problems, f"{os.path.basename(path)}: {problems}")
    check(document.dxfversion == "AC1009", f"{os.path.basename(path)}: version {document.dxfversion}")
    return document


def check_dxf(path, holes):
    document = read_dxf(path)
    space = document.modelspace()
    centres = [e.dxf.center for e in space.query("CIRCLE[layer=='DRILL']")]
    points = [e.dxf.location for e in space.query("POINT[layer=='DRILL']")]
    misses = []
    for hole in holes:
        at = (hole["view_x"], hole["view_y"])
        misses.append(min(math.dist(at, (c.x, c.y)) for c in centres))
        check(misses[-1] > DXF_TOLERANCE or min(math.dist(at, (p.x, p.y)) for p in points) <= DXF_TOLERANCE,
              f"{path}: a hole without a point")
    lines = [e for e in space.query("LINE[layer=='CALIB']")]
    check(len(lines) == 1, f"{path}: {len(lines)} lines to check the units by")
    near((lines[0].dxf.end - lines[0].dxf.start).magnitude, 100.0, DXF_TOLERANCE, f"{path}: line of 100 mm")
    words = "\n".join(plain_text(ezdxf.decode_dxf_unicode(e.dxf.text)) for e in space.query("TEXT"))
    return misses, words, document


def check_dxf_parts(folder, holes):
    misses, words, document = check_dxf(folder + "A4_mm.dxf", holes)
    for miss in misses:
        check(miss <= DXF_TOLERANCE, f"DXF: a hole lies {miss:.6f} mm off")
    for wanted in ("Ø30 ±0.1 PCD", "Ø2.3, 8BA clear", "every 120°, deburr 50 µm"):
        check(wanted in words, f"DXF: the words `{wanted}` are missing in {words}")
    outer = [e for e in document.modelspace().query("CIRCLE[layer=='CUT']")]
    check(sorted(round(2 * e.dxf.radius, 6) for e in outer) == [16.1, 40.0], "DXF: the circles to cut")
    for layer, line in (("CUT", "CONTINUOUS"), ("DRILL", "CONTINUOUS"), ("BEND", "CHAIN2"), ("CENTRE", "CHAIN")):
        check(document.layers.get(layer).dxf.linetype.upper() == line, f"DXF: line type of layer {layer}")
    shifted, _, _ = check_dxf(folder + "shifted_mm.dxf", holes)
    check([round(m, 6) for m in shifted] == [0.3, 0.0, 0.0], f"DXF: the shifted hole was not found: {shifted}")

    _, _, strip = check_dxf(folder + "strip_mm.dxf", [])
    arcs = strip.modelspace().query("ARC[layer=='CUT']")
    check([(a.dxf.start_angle, a.dxf.end_angle) for a in arcs] == [(180.0, 0.0)], "DXF: the arc of the strip")
    outline = strip.modelspace().query("POLYLINE[layer=='CUT']")[0]
    check(outline.is_closed and [v.dxf.location.x for v in outline.vertices] == [0.0, 56.5, 56.5, 0.0], "DXF: the outline")
    _, _, section = check_dxf(folder + "section_mm.dxf", [])
    hatch = section.modelspace().query("LINE[layer=='HATCH']")
    slants = {round(math.degrees(math.atan2(h.dxf.end.y - h.dxf.start.y, h.dxf.end.x - h.dxf.start.x)), 3) for h in hatch}
    check(slants == {45.0} and len(hatch) > 10, f"DXF: hatching at {slants}")


def check_hostile(folder):
    check(read_dxf(folder + "hostile_mm.dxf").modelspace().query("TEXT").first is not None, "hostile DXF: no words")
    document = ezdxf.readfile(folder + "hostile_mm.dxf")
    words = [e.dxf.text for e in document.modelspace().query("TEXT")]
    check("EOF" in words and "end" in words, f"hostile DXF: words after the false end are missing: {words}")
    check(all(len(w) <= 255 for w in words), "hostile DXF: a string is longer than R12 reads")
    texts = [e.text for e in ElementTree.parse(folder + "hostile-1.svg").iter("{http://www.w3.org/2000/svg}text")]
    check(any(t.startswith("<b>&amp;\"'</b>]]> (a\\) %%c %% 5%± \\U+0041 \\P ^J ???? ?? ") and "日本 🔥" in t for t in texts),
          f"hostile SVG: {texts}")
    pdf = run("pdftotext", "-layout", folder + "hostile.pdf", "-").decode()
    check(all(words in pdf for words in ("<b>", "]]>", "EOF", "end")), f"hostile PDF: {pdf}")
    check(run("pdfinfo", folder + "hostile.pdf").decode().count("Pages:           1\n") == 1, "hostile PDF: pages")


def check_widths(folder):
    """Widths of words against poppler's own metrics of the core font."""
    with open(folder + "widths.json", encoding="utf-8") as file:
        widths = json.load(file)
    html = run("pdftotext", "-bbox", folder + "widths.pdf", "-").decode()
    root = ElementTree.fromstring(html)
    found = {w.text: float(w.get("xMax")) - float(w.get("xMin")) for w in root.iter("{http://www.w3.org/1999/xhtml}word")}
    for word, width in widths.items():
        key = word.replace("⌀", "Ø")
        check(key in found, f"widths: the word `{key}` is missing in {sorted(found)}")
        if key in found:
            near(found[key] * 25.4 / 72, width, 0.02, f"width of `{key}` in mm")


def main():
    with tempfile.TemporaryDirectory() as folder:
        folder += "/"
        run(sys.argv[1], folder)
        for paper in PAPER:
            stem = folder + paper
            check_sizes(stem, paper)
            check_words(stem)
            check_unique_ids(stem + "-1.svg")
            for name, pictures in pictures_of(stem, paper):
                misses, places = measure(pictures, stem, f"{paper} {name}")
                check(len(misses) == 3, f"{paper} {name}: {len(misses)} holes")
                all_in_place(misses, f"{paper} {name}")
                for one, other in itertools.combinations(places, 2):
                    near(math.dist(one, other), CHORD, PICTURE_TOLERANCE, f"{paper} {name}: between two holes")
            for name, pictures in pictures_of(stem + "-stretched", paper):
                misses, _ = measure(pictures, stem + "-stretched", f"{paper} {name} stretched", STRETCH)
                all_in_place(misses, f"{paper} {name} stretched")
            for ending in (".pdf", "-1.svg"):
                with open(stem + ending, "rb") as one, open(stem + "-again" + ending, "rb") as other:
                    check(one.read() == other.read(), f"{paper}: two runs gave different bytes")
        for name, pictures in pictures_of(folder + "shifted"):
            misses, _ = measure(pictures, folder + "shifted", f"shifted {name}")
            check(0.2 < misses[0] < 0.4, f"{name}: a hole shifted by 0.3 mm was measured {misses[0]:.3f} mm off")
            all_in_place(misses[1:], f"shifted {name}")
        for stem, paper, sheets, holes in (("split", "A4", 3, 11), ("tiles", "Letter", 4, 7)):
            for name, pictures in pictures_of(folder + stem, paper):
                check(len(pictures) == sheets, f"{stem} {name}: {len(pictures)} sheets")
                misses, _ = measure(pictures, folder + stem, f"{stem} {name}")
                check(len(misses) >= holes, f"{stem} {name}: only {len(misses)} holes")
                all_in_place(misses, f"{stem} {name}")
        check_dxf_parts(folder, holes_of(folder + "A4"))
        check_hostile(folder)
        check_widths(folder)
    for words in wrong:
        print(words)
    print(f"{checked} checks, {len(wrong)} wrong")
    return 0 if checked > 200 and not wrong else 1


if __name__ == "__main__":
    sys.exit(main())
