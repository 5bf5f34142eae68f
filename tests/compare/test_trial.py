"""A case with something changed, and what comes of it."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from advisor.advice import advise, default_engine
from advisor.advice.trial import Bench, Remembering, disagreements, laid, outcome_of, parts_of_a_case
from advisor.engine import Fact, Ruling
from advisor.models.case import Case
from advisor.models.fields import field_names
from advisor.reading import read_case
from tests.rules.bench import words_of

CASES = Path(__file__).parent.parent.parent / "cases"


class Counting:
    """The engine, with a count of the facts that reached it."""

    def __init__(self) -> None:
        self.facts = 0

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        self.facts += len(facts)
        return default_engine().run(facts)


@pytest.mark.parametrize("name", ["maple-spindle.yaml", "cocobolo-asthma.yaml", "cracked-log.yaml"])
def test_an_engine_that_remembers_rules_as_the_engine_itself(name: str) -> None:
    engine = Remembering(default_engine())
    for case in (read_case(str(CASES / "maple-spindle.yaml")), read_case(str(CASES / name))):
        plain, remembered = advise(case), advise(case, engine)
        assert [(entry.rule.name, entry.text) for entry in remembered.fired] == [
            (entry.rule.name, entry.text) for entry in plain.fired
        ]
        assert outcome_of(remembered) == outcome_of(plain)


def test_what_was_asked_before_is_not_asked_again() -> None:
    counting = Counting()
    engine = Remembering(counting)
    case = read_case(None, words_of("SPINDLE"))
    advise(case, engine)
    before = counting.facts
    advise(case, engine)
    assert counting.facts == before
    advise(read_case(None, words_of("SPINDLE; person.asthma=yes")), engine)
    assert before < counting.facts < before + 10


def test_one_and_yes_are_two_values() -> None:
    seen: list[object] = []

    class Listing:
        def run(self, facts: Sequence[Fact]) -> list[Ruling]:
            seen.extend(fact.values["x"] for fact in facts)
            return []

    engine = Remembering(Listing())
    engine.run([Fact("any", {"x": 1.0}), Fact("any", {"x": True}), Fact("any", {"x": 1.0})])
    assert seen == [1.0, True]


def test_the_parts_are_the_fields_with_those_that_need_each_other_together() -> None:
    parts = parts_of_a_case()
    whole = set(field_names(Case)) - {"title", "units"}
    assert "work.balance_test" in parts
    assert "hold.slip_test" in parts
    assert {name for name in whole if not name.startswith(("expect.", "work.balance_test.", "hold.slip_test."))} == set(
        parts
    ) - {"work.balance_test", "hold.slip_test"}


def test_a_section_with_nothing_left_in_it_goes_too() -> None:
    case = read_case(None, words_of("SPINDLE; hold.drive.teeth=2"))
    bare = laid(case, {"hold.drive.teeth": None})
    assert bare.hold.drive is None
    assert bare == read_case(None, words_of("SPINDLE"))
    assert bare.at("hold.drive.teeth") is None
    assert laid(bare, {"hold.drive.teeth": 2}) == case


def test_fields_that_contradict_are_named() -> None:
    case = read_case(None, words_of("SPINDLE; work.finished_diameter=2in"))
    assert disagreements(case) == []
    assert disagreements(laid(case, {"work.diameter": 25.4})) == [("work.finished_diameter", "work.diameter")]


def test_a_bench_works_each_case_out_once() -> None:
    counting = Counting()
    bench = Bench(counting)
    found = bench.outcome(read_case(None, words_of("BOWL")))
    before = counting.facts
    assert bench.outcome(read_case(None, words_of("BOWL"))) is found
    assert counting.facts == before


def test_a_piece_that_is_not_mounted_has_no_speed() -> None:
    found = outcome_of(advise(read_case(str(CASES / "cracked-log.yaml"))))
    assert (found.verdict, found.start_rpm, found.ceiling_rpm, found.governed_by) == ("do-not-mount", None, 0.0, None)


@pytest.mark.parametrize(
    "words", ["SPINDLE", "SPINDLE; hold.kit=[vacuum]", "BOWL; hold.method=pin-chuck", "PEN; hold.kit=[jam-chuck]"]
)
def test_what_lies_beyond_the_kit_changes_no_outcome(words: str) -> None:
    case = read_case(None, words_of(words))
    assert outcome_of(advise(case, beyond=False)) == outcome_of(advise(case))
