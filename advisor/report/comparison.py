"""Two situations side by side, in words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from advisor.advice.compare import Comparison, Difference, Side
from advisor.advice.trial import Outcome
from advisor.report.numbers import assumed_value, force, limit_down
from advisor.report.outcome import NONE, outcome_lines
from advisor.report.terminal import Line, wrapped
from advisor.report.values import NOT_SAID, said
from advisor.report.words import HEADLINE

GAP = 2
WIDEST = 34


def _outcome(one: Outcome, units: str) -> dict[str, str]:
    thrust = {
        "window": one.window,
        "set_n": one.set_n,
        "allowed_n": one.allowed_n,
        "governed_by": one.thrust_governed_by,
    }
    return outcome_lines(
        {
            "verdict": one.verdict,
            "holding": [{"method": one.hold, "verdict": one.hold_verdict}],
            "speed": {"start_rpm": one.start_rpm, "ceiling_rpm": one.ceiling_rpm, "governed_by": one.governed_by},
            "thrust": {name: value for name, value in thrust.items() if value is not None},
        },
        units,
    )


def _three(rows: Sequence[tuple[str, str, str]], role: str = "text") -> Iterator[Line]:
    """Rows in three columns; a long cell goes on below."""
    import textwrap

    first = max(len(row[0]) for row in rows) + GAP
    second = min(max(len(row[1]) for row in rows), WIDEST) + GAP
    for row in rows:
        cells = [textwrap.wrap(text, WIDEST) or [""] for text in row[1:]]
        for number in range(max(len(cell) for cell in cells)):
            name = row[0] if number == 0 else ""
            left, right = (cell[number] if number < len(cell) else "" for cell in cells)
            yield Line(f"  {name:<{first}}{left:<{second}}{right}".rstrip(), role)


def _title(text: str) -> Iterator[Line]:
    yield Line("")
    yield Line(text, "title")


def _value(entry: Difference, value: Any, stood: str | None, units: str) -> str:
    text = said(entry.field, value, units)
    return f"{text} ({assumed_value(stood, units)} assumed)" if text == NOT_SAID and stood is not None else text


def outcome_changes(before: Outcome, after: Outcome, units: str) -> str:
    """What became different, in one sentence."""
    old, new = _outcome(before, units), _outcome(after, units)
    names = [name for name in dict.fromkeys((*old, *new)) if old.get(name) != new.get(name)]
    return "; ".join(f"{name} {new.get(name, NONE)} instead of {old.get(name, NONE)}" for name in names)


def _limits(found: Comparison, units: str) -> Iterator[tuple[str, str, str]]:
    """The limits that govern on either side, with their values on both, where they differ."""
    a, b = found.a, found.b
    speed, thrust = (a.outcome.governed_by, b.outcome.governed_by), _governs_thrust(found)

    def rate(rpm: float) -> str:
        return f"{limit_down(rpm)} rpm"

    def push(newtons: float) -> str:
        return force(newtons, units, up=False)

    for told, one, other, names in (
        (rate, a.limits, b.limits, speed),
        (push, a.thrust_limits, b.thrust_limits, thrust),
    ):
        for name in dict.fromkeys(name for name in names if name is not None):
            left, right = (told(side[name]) if name in side else NONE for side in (one, other))
            if left != right:
                yield f"limit {name}", left, right


def _governs_thrust(found: Comparison) -> tuple[str | None, str | None]:
    return found.a.outcome.thrust_governed_by, found.b.outcome.thrust_governed_by


def _makers(found: Comparison, units: str) -> Iterator[Line]:
    """Which of the differences makes the difference."""
    start = found.a.outcome
    alone = [(entry, outcome_changes(start, entry.outcome, units)) for entry in found.tried]
    active = [(entry, text) for entry, text in alone if text]
    most = found.matters_most
    if not most:
        yield from wrapped("Nothing: verdict, hold, speed and thrust come out the same.", "  ", "do")
        return
    if not active:
        yield from wrapped(f"Only together: {', '.join(most)}. None of them changes anything alone.", "  ", "do")
        return
    yield from wrapped(f"{' with '.join(most)} matters most.", "  ", "do")
    for entry, text in active:
        yield from wrapped(f"{' with '.join(entry.fields)} alone: {text}", "  - ", hang=4)
    idle = [entry.fields[0] for entry, text in alone if not text]
    if idle:
        yield from wrapped(f"Alone they change nothing: {', '.join(idle)}", "  - ", "quiet", 4)
    if len(found.enough) > 1:
        yield from wrapped(f"All of it takes: {', '.join(found.enough)}", "  - ", hang=4)


def comparison_lines(found: Comparison, names: tuple[str, str], units: str) -> Iterator[Line]:
    """The comparison as lines, what became of the verdict first."""
    a, b = found.a, found.b
    then = HEADLINE[b.outcome.verdict]
    same = a.outcome.verdict == b.outcome.verdict
    yield Line(then if same else f"{then}  Before: {HEADLINE[a.outcome.verdict]}", b.outcome.verdict)
    yield from _reason(b, then=not same)
    yield from _title("What differs")
    if not found.differences:
        yield Line("  nothing that any advice looks at")
        return
    rows = [
        (entry.field, _value(entry, entry.a, entry.assumed_a, units), _value(entry, entry.b, entry.assumed_b, units))
        for entry in found.differences
    ]
    yield from _three([("", *names), *rows])
    yield from _title("What comes of it")
    one, other = _outcome(a.outcome, units), _outcome(b.outcome, units)
    rows = [(name, one.get(name, NONE), other.get(name, NONE)) for name in dict.fromkeys((*one, *other))]
    yield from _three([*rows, *_limits(found, units)])
    yield from _title("What made the difference")
    yield from _makers(found, units)
    if found.silent:
        yield from _title("Assumed differently because of it")
        yield from _three(
            [
                (entry.field, assumed_value(str(entry.assumed_a), units), assumed_value(str(entry.assumed_b), units))
                for entry in found.silent
            ],
            "quiet",
        )


def _reason(side: Side, *, then: bool) -> Iterator[Line]:
    if then and side.reason:
        yield from wrapped(side.reason, "  ", "reason", 2)


def comparison_document(found: Comparison, names: tuple[str, str]) -> dict[str, Any]:
    """The comparison for a script; numbers unrounded, in the unit their name ends with, values of fields as read."""
    sides = zip("ab", names, (found.a, found.b), strict=True)
    return {
        "schema": "1",
        **{key: {"name": name, **_side(side)} for key, name, side in sides},
        "differs": [_plain(entry, "metric") for entry in found.differences],
        "matters_most": list(found.matters_most),
        "all_of_it_takes": list(found.enough),
        "tried": [{"fields": list(entry.fields), **_said(entry.outcome)} for entry in found.tried],
        "assumed_differently": [
            {"field": entry.field, "a": entry.assumed_a, "b": entry.assumed_b} for entry in found.silent
        ],
    }


def _said(outcome: Outcome) -> dict[str, Any]:
    return {key: value for key, value in outcome._asdict().items() if value is not None}


def _side(side: Side) -> dict[str, Any]:
    limits = {"speed_limits_rpm": side.limits, "thrust_limits_n": side.thrust_limits}
    reason = {"rule": side.rule, "reason": side.reason} if side.rule is not None else {}
    return {**_said(side.outcome), **reason, **limits}


def _plain(entry: Difference, units: str) -> dict[str, Any]:
    values = {"field": entry.field, "a": entry.a, "b": entry.b}
    told: dict[str, Any] = {
        key: said(entry.field, value, units) if key in ("a", "b") and value is not None else value
        for key, value in values.items()
    }
    return told | {"assumed_a": entry.assumed_a, "assumed_b": entry.assumed_b}
