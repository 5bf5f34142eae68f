"""Two situations side by side: what differs, what comes of it, and which of the differences makes it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any, NamedTuple

from advisor import verdicts
from advisor.advice.advise import Advice, advise, default_engine
from advisor.advice.answer import assumed, reasons
from advisor.advice.trial import Bench, Outcome, disagreements, laid, outcome_of, parts_of_a_case
from advisor.engine import Fires
from advisor.models.case import Case

WINDOWS = ("not-used", "open", "narrow", "empty")
SAME = 1e-9


class Difference(NamedTuple):
    """A field with its two values; `assumed_*` is what stood in for one that was not said."""

    field: str
    a: Any
    b: Any
    assumed_a: str | None
    assumed_b: str | None


class Tried(NamedTuple):
    """The first situation with these fields, and no others, as in the second."""

    fields: tuple[str, ...]
    outcome: Outcome


class Side(NamedTuple):
    """One situation: what comes of it, its limits on speed and thrust, and the first reason for its verdict."""

    outcome: Outcome
    limits: dict[str, float]
    thrust_limits: dict[str, float]
    rule: str | None
    reason: str


class Comparison(NamedTuple):
    """Both sides, the differences, each tried alone with the weightiest first, and the fewest that make all of it.

    `silent` are values that nobody said and that come out differently because of what was said.
    """

    a: Side
    b: Side
    differences: tuple[Difference, ...]
    tried: tuple[Tried, ...]
    enough: tuple[str, ...]
    silent: tuple[Difference, ...]

    @property
    def matters_most(self) -> tuple[str, ...]:
        """The field whose change alone does most; several where none does anything alone; none where nothing does."""
        if self.tried and weight(self.a.outcome, self.tried[0].outcome) > NOTHING:
            return self.tried[0].fields
        return self.enough


Weight = tuple[float, ...]
NOTHING: Weight = (0.0,) * 6


def weight(one: Outcome, other: Outcome) -> Weight:
    """How far two outcomes lie apart: verdict, hold, window, ceiling, start, thrust, in that order."""
    return (
        abs(verdicts.MOUNT.index(one.verdict) - verdicts.MOUNT.index(other.verdict)),
        one.hold != other.hold,
        abs(WINDOWS.index(one.window) - WINDOWS.index(other.window)),
        _ratio(one.ceiling_rpm, other.ceiling_rpm),
        _ratio(one.start_rpm, other.start_rpm),
        _ratio(one.set_n, other.set_n) + _ratio(one.allowed_n, other.allowed_n),
    )


def _ratio(one: float | None, other: float | None) -> float:
    """Distance of two numbers on a scale of ratios; a number that is missing is far from any."""
    if not one or not other:
        return 0.0 if not one and not other else 10.0
    apart = abs(math.log(one / other))
    return apart if apart > SAME else 0.0


def differing(a: Case, b: Case) -> tuple[str, ...]:
    """The fields, in the order of a case file, that two cases do not share."""
    return tuple(path for path in parts_of_a_case() if a.at(path) != b.at(path))


def compare(a: Case, b: Case, engine: Fires | None = None) -> Comparison:
    """Everything that differs from a to b, and which of it made the difference, tried in the model."""
    bench = Bench(engine if engine is not None else default_engine())
    advice_a, advice_b = advise(a, bench.engine), advise(b, bench.engine)
    fields = differing(a, b)
    assumed_a, assumed_b = _assumed(advice_a), _assumed(advice_b)
    differences = tuple(
        Difference(path, a.at(path), b.at(path), assumed_a.get(path), assumed_b.get(path))
        for path in fields
    )
    silent = tuple(
        Difference(name, None, None, assumed_a[name], assumed_b[name])
        for name in assumed_a
        if name in assumed_b and assumed_a[name] != assumed_b[name] and name not in fields
    )
    start = outcome_of(advice_a)
    tried = [_alone(bench, a, b, path, fields) for path in fields]
    tried.sort(key=lambda entry: weight(start, entry.outcome), reverse=True)
    order = [field for entry in reversed(tried) for field in entry.fields if len(entry.fields) == 1]
    order += [field for field in fields if field not in order]
    enough = _fewest(bench, a, b, order) if weight(start, outcome_of(advice_b)) > NOTHING else ()
    return Comparison(_side(advice_a), _side(advice_b), differences, tuple(tried), enough, silent)


def _assumed(advice: Advice) -> dict[str, str]:
    return {entry["field"]: entry["value"] for entry in assumed(advice)}


def _side(advice: Advice) -> Side:
    first = next(iter(reasons(advice)), None)
    return Side(
        outcome_of(advice),
        {limit.name: limit.value for limit in advice.speed.limits},
        {limit.name: limit.value for limit in advice.thrust.limits} if advice.thrust is not None else {},
        first["rule"] if first is not None else None,
        first["text"] if first is not None else "",
    )


def _with(a: Case, b: Case, fields: Sequence[str]) -> Case:
    return laid(a, {path: b.at(path) for path in fields})


def _alone(bench: Bench, a: Case, b: Case, path: str, fields: Sequence[str]) -> Tried:
    """One field changed; with it those that would contradict it otherwise."""
    chosen = [path]
    case = _with(a, b, chosen)
    while against := {name for group in disagreements(case) for name in group if name in fields and name not in chosen}:
        chosen += sorted(against)
        case = _with(a, b, chosen)
    return Tried(tuple(chosen), bench.outcome(case))


def _fewest(bench: Bench, a: Case, b: Case, fields: Sequence[str]) -> tuple[str, ...]:
    """Fields that together make all of the change; those named first are left out first where they add nothing."""
    wanted, kept = bench.outcome(b), list(fields)
    for path in fields:
        fewer = [name for name in kept if name != path]
        case = _with(a, b, fewer)
        if not disagreements(case) and weight(bench.outcome(case), wanted) <= NOTHING:
            kept = fewer
    return tuple(sorted(kept, key=parts_of_a_case().index))
