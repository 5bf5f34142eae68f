"""TOML as texts; the places of its fields are found by a scan of the lines."""

import re
import sys
from typing import Any

from advisor.reading.nodes import DEEPEST, Entry, Fields, Listing, Node, Scalar
from advisor.reading.problems import Place, fault

if sys.version_info >= (3, 11):
    import tomllib
else:
    import tomli as tomllib

NAME = r"""(?:[A-Za-z0-9_-]+|"[^"\n]*"|'[^'\n]*')"""
DOTTED = rf"{NAME}(?:[ \t]*\.[ \t]*{NAME})*"
HEADER = re.compile(rf"[ \t]*\[[ \t]*({DOTTED})[ \t]*\]")
FIELD = re.compile(rf"[ \t]*({DOTTED})[ \t]*=[ \t]*")
INNER = re.compile(rf"[{{,][ \t]*({DOTTED})[ \t]*=[ \t]*")
FAULT = re.compile(r"(.*) \(at (?:line (\d+), column (\d+)|end of document)\)", re.DOTALL)
PLAIN_FILE = 'fields as `[work]` and `material = "ash"` below it'
Spots = dict[tuple[str, ...], tuple[int, int]]


def _path(dotted: str) -> tuple[str, ...]:
    return tuple(part.strip("\"'") for part in re.findall(NAME, dotted))


def _spots(text: str) -> Spots:
    """Line and column of the value of every field, of a table's header for the table."""
    found: Spots = {}
    table: tuple[str, ...] = ()
    for number, line in enumerate(text.split("\n"), start=1):
        header, field = HEADER.match(line), FIELD.match(line)
        if header is not None:
            table = _path(header.group(1))
            found.setdefault(table, (number, header.start(1) + 1))
        elif field is not None:
            path = (*table, *_path(field.group(1)))
            found.setdefault(path, (number, field.end() + 1))
            for inner in INNER.finditer(line, field.end()):
                found.setdefault((*path, *_path(inner.group(1))), (number, inner.end() + 1))
    return found


class _Builder:
    def __init__(self, name: str, spots: Spots) -> None:
        self.name = name
        self.spots = spots

    def place(self, path: tuple[str, ...]) -> Place:
        while path and path not in self.spots:
            path = path[:-1]
        return Place(self.name, *self.spots[path]) if path else Place(self.name)

    def node(self, value: Any, path: tuple[str, ...]) -> Node:
        place = self.place(path)
        if len(path) > DEEPEST:
            raise fault(place, "goes too deep", f"at most {DEEPEST} levels")
        if isinstance(value, dict):
            inner = [(name, (*path, name), found) for name, found in value.items()]
            return Fields(
                place, [Entry(name, self.place(below), self.node(found, below)) for name, below, found in inner]
            )
        if isinstance(value, list):
            return Listing(place, [self.node(item, (*path, f"#{number}")) for number, item in enumerate(value)])
        try:
            return Scalar(str(value).lower() if isinstance(value, bool) else str(value), place)
        except ValueError:  # a whole number of thousands of digits, written in another base than ten
            raise fault(place, "is not TOML: it holds a value that cannot be read", PLAIN_FILE) from None


def _place(text: str, name: str, match: re.Match[str] | None) -> Place:
    """Where the parser says a fault is; the last sign where it says the end."""
    if match is None:
        return Place(name)
    if match.group(2) is not None:
        return Place(name, int(match.group(2)), int(match.group(3)))
    return Place(name, text.count("\n") + 1, len(text) - text.rfind("\n"))


def tree(text: str, name: str) -> Node:
    """The tree of a TOML text. Raises InputFault: no TOML, a field twice, too deep."""
    try:
        found = tomllib.loads(text, parse_float=str)
    except RecursionError:
        raise fault(Place(name), "goes too deep", f"at most {DEEPEST} levels") from None
    except ValueError as wrong:  # also a whole number of thousands of digits
        match = FAULT.fullmatch(str(wrong))
        why = match.group(1) if match is not None else "it holds a value that cannot be read"
        raise fault(_place(text, name, match), f"is not TOML: {why}", PLAIN_FILE) from None
    return _Builder(name, _spots(text)).node(found, ())
