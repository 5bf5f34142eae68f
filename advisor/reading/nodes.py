"""What every format is read into: texts, lists and fields, each with the place where it stands."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple, TypeAlias

from advisor.reading.problems import Place

DEEPEST = 12  # a case goes four deep


class Scalar(NamedTuple):
    """One value as it was written; None where nothing was."""

    text: str | None
    place: Place


@dataclass
class Listing:
    """Values in a row."""

    place: Place
    items: list[Node] = field(default_factory=list)


class Entry(NamedTuple):
    """A field and what was given for it."""

    name: str
    place: Place
    node: Node


@dataclass
class Fields:
    """Fields in the order they were written, repeated ones too."""

    place: Place
    entries: list[Entry] = field(default_factory=list)

    def named(self, name: str) -> Node | None:
        """What was given first for a field."""
        return next((entry.node for entry in self.entries if entry.name == name), None)

    def put(self, entry: Entry) -> None:
        """Set a field, in the place of an earlier one of that name."""
        for number, old in enumerate(self.entries):
            if old.name == entry.name:
                self.entries[number] = entry
                return
        self.entries.append(entry)


Node: TypeAlias = Scalar | Listing | Fields
