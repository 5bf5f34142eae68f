"""How much room lettering takes. Widths are those of the usual sans-serif of office machines, rounded up."""

from __future__ import annotations

import unicodedata
from functools import lru_cache

MM_PER_POINT = 25.4 / 72
# Widths in ems of the metric that Arial, Helvetica and Liberation Sans share.
CLASSES = {
    0.24: "'ijl",
    0.28: " !,./:;I[\\]ft·|",
    0.34: "()-`r{}²³",
    0.36: '"•',
    0.4: "*°",
    0.5: "Jcksvxyz^",
    0.56: "#$0123456789?L_abdeghnopqu–≤√",
    0.6: "+<=>~×µ",
    0.62: "FTZ",
    0.68: "&ABEKPSVXY",
    0.74: "CDHNRUwπ",
    0.78: "GOQØΩ",
    0.84: "Mm½¼",
    0.9: "%",
    1.02: "W@…→",
}
BOLD_CLASSES = {
    0.28: " ,./I\\'ijl|·",
    0.34: "!()-:;[]`ft²³",
    0.4: "*r{}°•",
    0.5: 'z"',
    0.56: "#$0123456789J_aceksvxy–≤√",
    0.6: "+<=>^~×µ",
    0.62: "?FLTZbdghnopqu",
    0.68: "EPSVXY",
    0.74: "&ABCDHKNRU",
    0.78: "GOQwØπ",
    0.84: "M½¼Ω",
    0.9: "%m",
    1.02: "W@…→",
}
EMS, BOLD_EMS = ({sign: ems for ems, signs in classes.items() for sign in signs} for classes in (CLASSES, BOLD_CLASSES))
WIDE = 1.35  # ideographs and pictures
OTHER = 0.9
ENORMOUS = {"\ufdfd": 12.0, "\ufdfa": 4.0}  # whole phrases in one sign
LONG_SCRIPT = (0x12000, 0x1254F, 4.0)  # wedges may be several letters wide


@lru_cache(maxsize=4096)
def _ems(sign: str, bold: bool) -> float:
    known = BOLD_EMS if bold else EMS
    if sign in known:
        return known[sign]
    if sign in ENORMOUS:
        return ENORMOUS[sign]
    low, high, ems = LONG_SCRIPT
    if low <= ord(sign) <= high:
        return ems
    wide = unicodedata.east_asian_width(sign) in "WF" or unicodedata.category(sign) == "So"
    return WIDE if wide else OTHER


def width(text: str, points: float, bold: bool = False) -> float:
    """Width of a line of text in mm, on the wide side."""
    return sum(_ems(sign, bold) for sign in text) * points * MM_PER_POINT


def wrap(text: str, points: float, room: float, bold: bool = False) -> list[str]:
    """The text in lines no wider than `room` mm; words that are too long are cut."""
    lines: list[str] = []
    line: list[str] = []
    used = 0.0
    space = width(" ", points, bold)
    for word in text.split(" "):
        wide = width(word, points, bold)
        if line and used + space + wide <= room:
            used += space + wide
            line.append(word)
            continue
        if line:
            lines.append(" ".join(line))
        *full, rest = [word] if wide <= room else _cut(word, points, room, bold)
        lines += full
        line, used = [rest], width(rest, points, bold)
    return [*lines, " ".join(line)]


def _cut(word: str, points: float, room: float, bold: bool) -> list[str]:
    parts = [""]
    for sign in word:
        if parts[-1] and width(parts[-1] + sign, points, bold) > room:
            parts.append("")
        parts[-1] += sign
    return parts
