"""A case with something changed, and what comes of it: what `compare` and `ask` try things out with."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from typing import Any, NamedTuple

from advisor.advice.advise import Advice, advise
from advisor.engine import Fact, Fires, Ruling
from advisor.models.case import Case
from advisor.models.contradictions import contradictions
from advisor.models.fields import changed, specs
from advisor.models.section import Section

APART = ("title", "units", "expect")  # fields of a case that no advice reads


class Outcome(NamedTuple):
    """What a person acts on. A piece that must not be mounted has no start, no limit and a ceiling of 0."""

    verdict: str
    hold: str
    hold_verdict: str
    start_rpm: float | None
    ceiling_rpm: float
    governed_by: str | None
    window: str
    set_n: float | None
    allowed_n: float | None
    thrust_governed_by: str | None

    @property
    def decides(self) -> tuple[str, ...]:
        """Verdict, hold, window and the limits that govern: what no rounding touches."""
        return (self.verdict, self.hold, self.window, str(self.governed_by), str(self.thrust_governed_by))


def outcome_of(advice: Advice) -> Outcome:
    """The part of advice that a person acts on."""
    mounted = advice.verdict != "do-not-mount"
    thrust, window = advice.thrust, advice.window
    need = None if thrust is None else thrust.light or thrust.full
    return Outcome(
        verdict=advice.verdict,
        hold=advice.used.method,
        hold_verdict=advice.used.verdict,
        start_rpm=advice.speed.start if mounted else None,
        ceiling_rpm=advice.speed.ceiling.value if mounted else 0.0,
        governed_by=advice.speed.ceiling.name if mounted else None,
        window=window,
        set_n=need.to_set if need is not None and window != "empty" else None,
        allowed_n=thrust.allowed.value if thrust is not None else None,
        thrust_governed_by=thrust.allowed.name if thrust is not None else None,
    )


class Remembering:
    """An engine that is asked once about each fact: facts are matched one by one, so a ruling never changes."""

    def __init__(self, engine: Fires) -> None:
        self.engine = engine
        self.known: dict[object, tuple[Ruling, ...]] = {}

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """The rulings on these facts, as the engine itself would give them."""
        keys = [
            (fact.kind, frozenset((key, type(value), value) for key, value in fact.values.items())) for fact in facts
        ]
        new = {key: fact for key, fact in zip(keys, facts, strict=True) if key not in self.known}
        if new:
            rulings = self.engine.run(list(new.values()))
            for key, fact in new.items():
                self.known[key] = tuple(ruling for ruling in rulings if ruling.fact is fact)
        pairs = zip(keys, facts, strict=True)
        return [Ruling(ruling.rule, fact) for key, fact in pairs for ruling in self.known[key]]


class Bench:
    """Cases tried in the whole model, each once."""

    def __init__(self, engine: Fires) -> None:
        self.engine = Remembering(engine)
        self.known: dict[Case, Outcome] = {}

    def outcome(self, case: Case) -> Outcome:
        """What comes of a case."""
        if case not in self.known:
            self.known[case] = outcome_of(advise(case, self.engine, beyond=False))
        return self.known[case]


@cache
def parts_of_a_case() -> tuple[str, ...]:
    """Every field that can be set by itself, by dotted name; those that need each other stand as their section."""
    return tuple(_parts(Case, ""))


def _parts(model: type[Section], above: str) -> Iterator[str]:
    for name, spec in specs(model).items():
        section = spec.section
        if not above and name in APART:
            continue
        together = section is not None and above and any(info.required for info in section.declared.values())
        if section is None or together:
            yield f"{above}{name}"
        else:
            yield from _parts(section, f"{above}{name}.")


def laid(case: Case, values: Mapping[str, Any]) -> Case:
    """The case with these fields set; None takes a field out, and a section with nothing left in it too."""
    for path, value in values.items():
        case = changed(case, path, value)
        above = path.rpartition(".")[0]
        section = case.at(above) if "." in above else None
        if value is None and section is not None and all(entry is None for _, entry in section):
            case = changed(case, above, None)
    return case


def disagreements(case: Case) -> list[tuple[str, ...]]:
    """The groups of fields that contradict each other."""
    return [entry.fields for entry in contradictions(case.at)]
