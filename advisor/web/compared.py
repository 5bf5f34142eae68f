"""What one change makes of an answer: the lines that differ, before and after."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from advisor.report.outcome import NONE, outcome_lines
from advisor.web.asked import Question
from advisor.web.fields import form_fields

NUMBER = re.compile(r"[\d.,]*\d")


class Row(NamedTuple):
    """One thing before and after."""

    what: str
    before: str
    after: str


class Comparison(NamedTuple):
    """The values that were changed, the lines of the answer that differ, what is said anew and what no longer."""

    changed: list[Row]
    rows: list[Row]
    new: list[str]
    gone: list[str]


def changed_values(before: Question, after: Question) -> list[Row]:
    """The fields that were typed differently."""
    names = list(dict.fromkeys((*before.typed, *after.typed)))
    labels = {entry.name: entry.label for entry in form_fields()}
    pairs = [(name, _typed(before, name), _typed(after, name)) for name in names]
    return [Row(labels.get(name, name), old, new) for name, old, new in pairs if old != new]


def _typed(question: Question, name: str) -> str:
    return ", ".join(question.typed.get(name, ())) or "not said"


def _said(answer: Mapping[str, Any]) -> dict[str, str]:
    """What an answer says in words, verdict first, by the same without its numbers: other numbers, same advice."""
    texts: Iterable[str] = (
        *(entry["text"] for entry in answer["reasons"]),
        *answer["checks"],
        *(entry["text"] for entry in answer["cautions"]),
    )
    return {NUMBER.sub("#", text): text for text in texts}


def compare(before: Mapping[str, Any], after: Mapping[str, Any], units: str, changed: list[Row]) -> Comparison:
    """Two answers side by side, only where they differ."""
    old, new = outcome_lines(before, units), outcome_lines(after, units)
    names = dict.fromkeys((*old, *new))
    rows = [Row(name, old.get(name, NONE), new.get(name, NONE)) for name in names]
    was, now = _said(before), _said(after)
    return Comparison(
        changed,
        [row for row in rows if row.before != row.after],
        [text for key, text in now.items() if key not in was],
        [text for key, text in was.items() if key not in now],
    )
