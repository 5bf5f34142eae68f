"""Text as it may stand on a page, whatever it holds: no sign that is invisible, reverses a line or climbs over one."""

from __future__ import annotations

import unicodedata

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


def breakable(text: str, most: int = 18) -> str:
    """The text with invisible places to break in words longer than `most` letters."""
    return " ".join(
        word if len(word) <= most else "\u200b".join(word[i : i + most] for i in range(0, len(word), most))
        for word in text.split(" ")
    )
