"""What a forbidden combination is, and how the list is made: one small function each, its docstring the reason."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache
from typing import Any, NamedTuple

from advisor.models.case import Case
from advisor.rulebook import Effect, Rule, kept_book

Answer = dict[str, Any]
Test = Callable[[Case, Answer], bool]

ROUNDING = 1 + 1e-9
GOING = ("go", "go-with-care")
ACCEPTED = ("suits", "with-care")


class Forbidden(NamedTuple):
    """A combination of case and answer that must never come out."""

    name: str
    why: str
    found_in: Test


FORBIDDEN: list[Forbidden] = []


def never(test: Test) -> Test:
    """Put a combination on the list, named for its function."""
    FORBIDDEN.append(Forbidden(test.__name__.replace("_", " "), (test.__doc__ or "").strip(), test))
    return test


@cache
def _rules() -> dict[str, Rule]:
    return {rule.name: rule for rule in kept_book()}


def spoke(found: Answer, *effects: Effect) -> list[Rule]:
    """The rules that fired with one of these effects, those on a hold left out."""
    rules = [_rules()[name] for name in found["fired"] if name in _rules()]
    return [rule for rule in rules if rule.effect in effects and rule.when.kind != "hold"]


def grounds(hold: dict[str, Any], *effects: Effect) -> bool:
    """Whether a rule with one of these effects stands among the grounds of a hold."""
    return any(_rules()[ground["rule"]].effect in effects for ground in hold["grounds"])


def accepted(found: Answer, *methods: str) -> bool:
    """Whether one of these ways of holding suits, with care or without."""
    return any(hold["method"] in methods and hold["verdict"] in ACCEPTED for hold in found["holding"])


def called(case: Case, *names: str) -> bool:
    """Whether the piece is said to be one of these."""
    return case.work.material.casefold() in names


def condition(case: Case, *words: str) -> bool:
    """Whether one of these words is said of it."""
    return bool(set(words) & set(case.work.condition or ()))


def trued(case: Case) -> bool:
    """Whether it is said to be round already."""
    return case.work.state in ("round", "finished")


def inches(case: Case) -> float:
    """The diameter as given, in inches; what it sweeps is never less."""
    return case.work.diameter / 25.4


def texts(value: Any) -> Iterator[str]:
    """Every text of an answer, names of fields left out."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for part in value.values():
            yield from texts(part)
    elif isinstance(value, (list, tuple)):
        for part in value:
            yield from texts(part)


def numbers(value: Any, name: str = "") -> Iterator[tuple[str, Any]]:
    """Every number of an answer, and whatever stands where nothing should, with the name of its field."""
    if isinstance(value, dict):
        for key, part in value.items():
            yield from numbers(part, key)
    elif isinstance(value, (list, tuple)):
        for part in value:
            yield from numbers(part, name)
    elif value is None or (isinstance(value, (int, float)) and not isinstance(value, bool)):
        yield name, value
