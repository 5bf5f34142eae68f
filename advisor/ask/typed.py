"""What a person types at a question: parts with commas between, or words that steer the interview."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from advisor.ask.questions import Asked, value_of
from advisor.models.fields import Shape
from advisor.reading.problems import Place, fault

UNKNOWN = frozenset({"", "-", "?-", "don't know", "dont know", "don’t know", "do not know", "no idea", "not known"})
WHY = frozenset({"?", "why", "why?", "help"})
BACK, ENOUGH, RESTART = "back", "enough", "restart"
BETWEEN = re.compile(r"\s+(?:x|to|by)\s+|\s*×\s*")
SIZES = frozenset({Shape.QUANTITY, Shape.COUNT})


def plain(line: str) -> str:
    """A line as it is looked up."""
    return " ".join(line.split()).casefold().rstrip(".")


def values_of(line: str, fields: Sequence[Asked], *, needed: Sequence[str] = ()) -> Mapping[str, Any]:
    """The values of the parts of a line; a part that is not known is left out. Raises InputFault."""
    parts = _split(line, fields)
    found = {}
    for field, part in zip(fields, parts, strict=False):
        if plain(part) not in UNKNOWN:
            found[field.name] = value_of(field.name, part)
    missing = [field.name for field in fields if field.name in needed and field.name not in found]
    if missing:
        raise fault(Place("this one"), "cannot be left out", value_words(fields), ", ".join(missing))
    return found


def value_words(fields: Sequence[Asked]) -> str:
    """The parts in their order, in words."""
    return ", ".join(field.about for field in fields)


def _split(line: str, fields: Sequence[Asked]) -> list[str]:
    if len(fields) == 1:
        return [line]
    if all(field.spec.shape in SIZES for field in fields):
        line = BETWEEN.sub(", ", line)
    parts = [part.strip() for part in line.split(",", len(fields) - 1)]
    last = fields[-1].spec.shape
    if len(parts) == len(fields) and "," in parts[-1] and last is not Shape.LIST:
        raise fault(Place("your answer"), f"has more than {len(fields)} parts", value_words(fields))
    return parts
