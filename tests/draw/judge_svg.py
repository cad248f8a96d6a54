"""Judges a drawing with Python's own XML parser: usage: judge_svg.py FILE. Exit 0: good; 1: what is wrong, a line each.

Every text is drawn to just the width that it names (textLength), so that boxes can be compared whatever the font.
"""

import re
import sys
import xml.etree.ElementTree as ET

SVG = "{http://www.w3.org/2000/svg}"
ALLOWED = {"svg", "title", "desc", "g", "rect", "line", "text"}


def box(text):
    x, y, size, wide = (float(text.get(a)) for a in ("x", "y", "font-size", "textLength"))
    return x, y - 0.75 * size, x + wide, y + 0.2 * size  # ascent and descent of digits and letters


def crosses(a, b):
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def complaints(path):
    root = ET.parse(path).getroot()
    if root.tag != SVG + "svg" or root.get("role") != "img":
        yield "the root is no svg with the role img"
    if [child.tag for child in list(root)[:2]] != [SVG + "title", SVG + "desc"]:
        yield "title and description do not come first"
    if not (root[0].text or "").strip() or not (root[1].text or "").strip():
        yield "title or description is empty"
    wide, high = (float(v) for v in root.get("viewBox").split()[2:])
    if root.get("width") != root.get("viewBox").split()[2] + "mm" or root.get("height") != root.get("viewBox").split()[3] + "mm":
        yield "a unit of the drawing is not a millimetre"
    texts = []
    for one in root.iter():
        if one.tag.replace(SVG, "") not in ALLOWED:
            yield f"{one.tag} has no place here"
        for name, value in one.attrib.items():
            if "href" in name or name == "style" or name.startswith("on") or "url(" in value:
                yield f"{name} has no place here"
            if name in ("fill", "stroke") and value not in ("none", "#000", "#fff", "#ddd"):
                yield f"{value} is a colour"
        if one.tag == SVG + "text":
            texts.append((box(one), one.text))
    texts.sort(key=lambda t: t[0])
    for i, (a, said) in enumerate(texts):
        if a[0] < 0 or a[2] > wide or a[1] < 0 or a[3] > high:
            yield f"'{said}' leaves the sheet"
        for b, other in texts[i + 1 :]:
            if b[0] >= a[2]:
                break
            if crosses(a, b):
                yield f"'{said}' and '{other}' lie over each other"
    lines = [one for one in root.iter(SVG + "line") if one.get("x1") == one.get("x2")]
    for one in lines:
        x, low, top = float(one.get("x1")), *sorted((float(one.get("y1")), float(one.get("y2"))))
        for b, said in texts:
            if b[0] < x < b[2] and low < b[3] and b[1] < top:
                yield f"a line runs through '{said}'"
    if re.search(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\u200b-\u200f\u202a-\u202e\u2066-\u2069]", open(path, encoding="utf-8").read()):
        yield "it holds characters that a reader cannot see"


found = list(complaints(sys.argv[1]))
print("\n".join(found))
sys.exit(1 if found else 0)
