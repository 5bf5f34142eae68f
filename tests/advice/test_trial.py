"""A case with something changed, and what a person would act on then."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from advisor.advice import advise
from advisor.advice.trial import Bench, Outcome, Remembering, disagreements, laid, outcome_of, parts_of_a_case
from advisor.engine import Fact, Ruling
from advisor.reckoning.thrust_need import Need
from advisor.rulebook import Effect
from tests.advice.bench import Recording, advice_of, case_of, kept_advice, limit, ruling

SPURS = "SPINDLE; hold.method=spur-drive; hold.kit=[spur-drive]"


def test_what_a_person_acts_on_is_verdict_hold_speeds_and_thrust() -> None:
    base = kept_advice(SPURS)
    assert base.thrust is not None
    full = Need(100.0, 200.0, 330.0, 3.0, True)
    light = Need(50.0, 100.0, 170.0, 2.0, True)
    thrust = base.thrust._replace(full=full, light=light, allowed=limit("splitting", 250.0))
    speed = base.speed._replace(start=420.0, ceiling=limit("walking", 700.0))
    advice = base._replace(thrust=thrust, speed=speed, verdict="go", rulings=())
    assert outcome_of(advice) == Outcome(
        verdict="go",
        hold="spur-drive",
        hold_verdict=base.used.verdict,
        start_rpm=420.0,
        ceiling_rpm=700.0,
        governed_by="walking",
        window="open",
        set_n=170.0,  # the cut that the end stands, not the one that was wanted
        allowed_n=250.0,
        thrust_governed_by="splitting",
    )
    assert outcome_of(advice._replace(thrust=thrust._replace(light=None))).set_n == 330.0


def test_an_empty_window_has_nothing_to_set_but_still_a_most() -> None:
    base = kept_advice(SPURS)
    assert base.thrust is not None
    spoken = (ruling(Effect.NOTE, "N.", window="empty"),)
    found = outcome_of(base._replace(rulings=spoken))
    assert (found.window, found.set_n) == ("empty", None)
    assert (found.allowed_n, found.thrust_governed_by) == (base.thrust.allowed.value, base.thrust.allowed.name)


def test_without_a_tailstock_there_is_no_thrust() -> None:
    found = outcome_of(kept_advice(SPURS)._replace(thrust=None))
    assert (found.window, found.set_n, found.allowed_n, found.thrust_governed_by) == ("not-used", None, None, None)


def test_what_is_not_mounted_has_no_speed() -> None:
    found = outcome_of(kept_advice(SPURS)._replace(verdict="do-not-mount"))
    assert (found.start_rpm, found.ceiling_rpm, found.governed_by) == (None, 0.0, None)


def test_what_decides_is_the_words_and_the_names_of_what_governs() -> None:
    found = outcome_of(kept_advice(SPURS))
    assert found.decides == (
        found.verdict,
        "spur-drive",
        found.window,
        str(found.governed_by),
        str(found.thrust_governed_by),
    )
    assert found._replace(start_rpm=1.0, set_n=1.0).decides == found.decides
    other = found._replace(governed_by=None, thrust_governed_by=None)
    assert other.decides[-2:] == ("None", "None")


class Naming:
    """An engine that rules once on each fact, and keeps what reached it."""

    def __init__(self) -> None:
        self.asked: list[list[Fact]] = []

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """One ruling a fact."""
        self.asked.append(list(facts))
        return [Ruling(ruling(Effect.NOTE, "N.", f"on-{fact.kind}").rule, fact) for fact in facts]


def test_a_fact_that_is_known_is_not_asked_about_and_its_ruling_speaks_with_the_new_words() -> None:
    inner = Naming()
    engine = Remembering(inner)
    first = Fact("blank", {"form": "disc", "size": 2.0}, {"name": "ash"})
    engine.run([first])
    again = Fact("blank", {"size": 2.0, "form": "disc"}, {"name": "oak"})
    other = Fact("person", {"size": 2.0, "form": "disc"})
    found = engine.run([again, other, first])
    assert inner.asked == [[first], [other]]
    assert [(entry.rule.name, entry.fact) for entry in found] == [
        ("on-blank", again),
        ("on-person", other),
        ("on-blank", first),
    ]
    assert found[0].fact.words == {"name": "oak"}


def test_a_known_fact_does_not_wake_the_engine_at_all() -> None:
    inner = Naming()
    engine = Remembering(inner)
    fact = Fact("blank", {"form": "disc"})
    engine.run([fact])
    engine.run([fact, fact])
    assert len(inner.asked) == 1
    assert engine.run([]) == []


@pytest.mark.parametrize(
    ("one", "other"),
    [({"x": 1.0}, {"x": 2.0}), ({"x": 1.0}, {"y": 1.0}), ({"x": True}, {"x": 1.0}), ({"x": 1.0}, {"x": 1.0, "y": 1.0})],
)
def test_facts_that_differ_in_anything_matched_are_two(one: dict[str, float], other: dict[str, float]) -> None:
    inner = Naming()
    engine = Remembering(inner)
    engine.run([Fact("blank", one)])
    engine.run([Fact("blank", other)])
    assert len(inner.asked) == 2


def test_a_bench_asks_its_own_engine_once_for_a_case_and_looks_for_nothing_beyond_the_kit() -> None:
    engine = Recording()
    bench = Bench(engine)
    poor = case_of("BOWL; hold.kit=[double-sided-tape]")
    found = bench.outcome(poor)
    asked = len(engine.asked)
    assert asked == 2
    assert bench.outcome(poor) is found
    assert len(engine.asked) == asked
    assert found == outcome_of(advise(poor, beyond=False))
    assert bench.outcome(case_of(SPURS)) == outcome_of(advice_of(SPURS)) != found


def test_every_field_that_can_be_set_alone_is_a_part_and_no_field_that_no_advice_reads() -> None:
    parts_of_a_case.cache_clear()
    parts = parts_of_a_case()
    assert {"work.material", "hold.drive.teeth", "cut.force", "machine.mass", "person.asthma"} <= set(parts)
    assert {"work.balance_test", "hold.slip_test"} <= set(parts)  # two numbers that say nothing alone
    assert not {"title", "units", "expect", "work", "hold.drive", "work.balance_test.weight"} & set(parts)
    assert not [name for name in parts if name.startswith("expect")]
    assert list(parts[:3]) == ["work.material", "work.form", "work.grain"]


def test_fields_are_laid_on_a_case_and_a_section_that_is_left_empty_goes() -> None:
    case = case_of("SPINDLE; hold.drive.teeth=2; hold.drive.kind=toothed")
    assert laid(case, {"hold.drive.teeth": 4, "work.diameter": 50.0}).at("hold.drive.teeth") == 4
    assert laid(case, {"hold.drive.teeth": 4, "work.diameter": 50.0}).work.diameter == 50.0
    half = laid(case, {"hold.drive.teeth": None})
    assert half.hold.drive is not None
    assert half.hold.drive.kind == "toothed"
    assert laid(half, {"hold.drive.kind": None}).hold.drive is None
    assert laid(case, {}) == case


def test_a_section_of_a_case_stays_though_nothing_is_left_in_it() -> None:
    """work, machine, hold, cut and person are there in every case."""
    bare = laid(case_of("SPINDLE; cut.force=9N"), {"cut.force": None})
    assert bare.cut is not None
    assert bare == case_of("SPINDLE")


def test_taking_out_what_was_never_said_changes_nothing() -> None:
    case = case_of("SPINDLE; hold.drive.teeth=2")
    assert laid(case, {"hold.tail.kind": None, "hold.drive.kind": None}) == case


def test_a_finished_size_above_the_blank_contradicts_it() -> None:
    case = case_of("SPINDLE; work.finished_diameter=2in")
    assert disagreements(case) == []
    assert disagreements(laid(case, {"work.diameter": 25.4})) == [("work.finished_diameter", "work.diameter")]
