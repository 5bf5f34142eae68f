"""Helpers of the tests of reading: a case as text, and what is said about a wrong one."""

from advisor.reading import InputFault, Problem, read_case, read_text
from advisor.reading.files import Format

GOOD_YAML = """\
title: ash bowl
units: inch
work:
  material: white ash
  diameter: 10
  length: 3 in
"""


def problems(text: str, format_: Format = "yaml", name: str = "case.yaml") -> list[Problem]:
    """Everything that is wrong with a text; empty for a good one."""
    try:
        read_text(text, format_, name)
    except InputFault as fault:
        return fault.problems
    return []


def word_problems(*words: str, path: str | None = None) -> list[Problem]:
    """Everything that is wrong with words."""
    try:
        read_case(path, words)
    except InputFault as fault:
        return fault.problems
    return []


def only(found: list[Problem]) -> Problem:
    """The one problem there is."""
    assert len(found) == 1, found
    return found[0]
