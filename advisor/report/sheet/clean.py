"""Text as it may stand on a page, whatever it holds: no sign that is invisible, reverses a line or climbs over one."""

from __future__ import annotations

import re
import unicodedata

BREAK = "\N{ZERO WIDTH SPACE}"
MOST_MARKS = 2  # accents on one letter; more of them climb over the neighboring lines


def clean(text: str) -> str:
    """The text in one line, with a replacement sign for all that cannot be printed."""
    kept: list[str] = []
    marks = 0
    for sign in " ".join(text.split()):
        marks = marks + 1 if unicodedata.combining(sign) or unicodedata.category(sign) == "Me" else 0
        if marks <= MOST_MARKS:
            kept.append(sign if sign.isprintable() else "\N{REPLACEMENT CHARACTER}")
    return "".join(kept)


JOINT = re.compile(r"(?<=[._/=-])")


def breakable(text: str, most: int = 18) -> str:
    """The text with invisible places to break in words over `most` letters, at their joints if they have any."""
    return " ".join(word if len(word) <= most else BREAK.join(_pieces(word, most)) for word in text.split(" "))


def _pieces(word: str, most: int) -> list[str]:
    parts = [part for part in JOINT.split(word) if part]
    return [part[i : i + most] for part in parts for i in range(0, len(part), most)]
