"""Advice for the tests of how it is put together: worked out for small kits, or filled in by hand.

Nothing here is kept between tests unless it says so: a test works out anew what it is about.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from functools import lru_cache
from typing import Any

from advisor import facts as fact_of
from advisor.advice import advise, default_engine
from advisor.advice.advise import Advice
from advisor.advice.judge import JudgedHold
from advisor.advice.trial import parts_of_a_case
from advisor.engine import Engine, Fact, Ruling
from advisor.material_facts import facts_of_materials
from advisor.models.case import METHODS, Case
from advisor.reading import read_case
from advisor.reckoning.holds import HoldFigures, Margin, hold_figures
from advisor.reckoning.limit import Limit
from advisor.reckoning.thrust import thrust_window
from advisor.rulebook import Effect, Rule, fact, kept_book
from advisor.situation import Situation, settle
from advisor.situation.assumption import Assumption
from tests.rules.bench import words_of

PRACTICE = "common practice, no source"


def case_of(text: str) -> Case:
    """`BASE; field=value; ...` as a case; a base without a kit has few ways of holding to hand."""
    return read_case(None, words_of(text))


def situation_of(text: str) -> Situation:
    """The same with every silence filled."""
    return settle(case_of(text))


def advice_of(text: str) -> Advice:
    """The advice on it, worked out anew."""
    return advise(case_of(text), default_engine())


@lru_cache(maxsize=64)
def kept_advice(text: str) -> Advice:
    """The advice on it, worked out once: for tests of what is made of an advice."""
    return advice_of(text)


def fields(case: Case, other: Case) -> dict[str, Any]:
    """What one case says otherwise than another."""
    return {path: other.at(path) for path in parts_of_a_case() if case.at(path) != other.at(path)}


def read_once() -> None:
    """For a process that is forked for every small change of the program: the rule book and the tables, read once."""
    book, situation = kept_book(), situation_of("SPINDLE")
    Engine(book).run([fact_of.reach(situation)])
    hold_figures(situation, "spur-drive", 600.0)
    thrust_window(situation, "spur-drive", 600.0)
    facts_of_materials(situation)
    vars(sys.modules[default_engine.__module__])["kept_book"] = lambda: book


class Deaf:
    """An engine that hears no fact: it says the same of every one, nothing when nothing is given."""

    def __init__(self, *rulings: Ruling) -> None:
        self.rulings = list(rulings)

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """The same for any facts."""
        return self.rulings if facts else []


def ruling(effect: Effect, says: str, name: str = "some-rule", kind: str = "blank", **more: Any) -> Ruling:
    """A rule that spoke on a fact of that kind."""
    rule = Rule(when=fact("blank", form="disc"), effect=effect, says=says, name=name, **more)
    return Ruling(rule, Fact(kind, {"size": 7.0}))


def limit(name: str, value: float, why: str = "it walks") -> Limit:
    """A limit filled in by hand."""
    return Limit(name, value, "rough-guide", ("statics", "memory"), why, f"n = {value:.0f}")


def written(name: str, unit: str, value: float) -> dict[str, Any]:
    """The same limit as an answer writes it."""
    return {
        "name": name,
        unit: value,
        "grade": "rough-guide",
        "formula": f"n = {value:.0f}",
        "source": "statics, derived here; from memory",
        "why": "it walks",
    }


TORQUE = Margin("torque", 12.0, 8.0, "N·m", 1.5, "rough-guide")
FIGURES = HoldFigures(
    method="spur-drive",
    tail_up=True,
    divisor=2.0,
    peak=2.0,
    rpm=600.0,
    low=1.25,
    typical=3.0,
    margins=(TORQUE,),
    size=None,
    given=False,
    sizes={"seated_depth": 3.0},
    assumed=(),
    missing=(),
    slips=False,
    steady_typical=None,
    steady_divisor=1.5,
    catch=None,
)


def judged(method: str = "spur-drive", verdict: str = "suits", place: int = 0, **figures: Any) -> JudgedHold:
    """A judged way of holding filled in by hand."""
    return JudgedHold(method, verdict, FIGURES._replace(method=method, **figures), (), place, 600.0)


def silence(field: str, value: str = "40 kg", why: str = "not given") -> Assumption:
    """One value that nobody said."""
    return Assumption(field, value, why)


class Book:
    """Rules by the method they speak on, and orders of reach."""

    def __init__(self, spoken: dict[str, list[Ruling]], *reach: tuple[int, tuple[str, ...]]) -> None:
        self.spoken = spoken
        self.reach = reach

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """What is written, on the facts that were sent."""
        found = []
        for sent in facts:
            if sent.kind == "reach":
                for row, order in self.reach:
                    when = fact("reach", form="disc")
                    found.append(Ruling(Rule(when, Effect.REACH, order=order, row=row, name=f"row-{row}"), sent))
            elif sent.kind == "hold":
                spoken = self.spoken.get(str(sent.values["method"]), ())
                found += [Ruling(entry.rule, sent) for entry in spoken]
        return found


class Allowing(Book):
    """An engine that refuses every way of holding but some; of these the first named is reached for first."""

    def __init__(self, *methods: str) -> None:
        refused = [ruling(Effect.REFUSE, "Not here.")]
        spoken = {method: refused for method in METHODS if method not in methods}
        super().__init__(spoken, *([(1, methods)] if methods else []))


class Recording:
    """The engine itself, with a list of what it was asked."""

    def __init__(self) -> None:
        self.asked: list[list[Fact]] = []

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """What the engine rules."""
        self.asked.append(list(facts))
        return default_engine().run(facts)

    def fact(self, kind: str) -> Fact:
        """The last fact of a kind that was asked about."""
        return next(fact for facts in reversed(self.asked) for fact in facts if fact.kind == kind)
