"""Answers for the tests of the whole program: from words to the dictionary that `--json` prints."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.reading import read_case
from tests.rules.bench import words_of

ALL = ANSWER_PARTS["advise"]


def answer(words: Sequence[str], changes: bool = False) -> dict[str, Any]:
    """The whole answer to these words."""
    return answer_for(read_case(None, list(words)), ALL, changes=changes)


def of(text: str, changes: bool = False) -> dict[str, Any]:
    """The whole answer to `BASE; field=value; ...`."""
    return answer(words_of(text), changes)


def limit(found: dict[str, Any], part: str, name: str) -> float:
    """One limit of the answer, in rpm or N."""
    key = "rpm" if part == "speed" else "n"
    return float(next(entry[key] for entry in found[part]["limits"] if entry["name"] == name))
