"""Two cases side by side: which difference makes the difference, and which of them are needed for all of it."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest

from advisor.advice import advise, default_engine
from advisor.advice import compare as comparing
from advisor.advice.advise import Advice
from advisor.advice.answer import assumed
from advisor.advice.compare import NOTHING, Comparison, Side, Tried, compare, differing, weight
from advisor.advice.trial import Outcome, Remembering, disagreements, outcome_of
from advisor.engine import Fires
from advisor.models.case import Case
from tests.advice.bench import advice_of, case_of, kept_advice

GOES = Outcome("go", "spur-drive", "suits", 400.0, 800.0, "walking", "open", 300.0, 900.0, "splitting")


def apart(**other: Any) -> tuple[float, ...]:
    return weight(GOES, GOES._replace(**other))


@pytest.mark.parametrize(
    ("other", "place", "size"),
    [
        ({"verdict": "go-with-care"}, 0, 1),
        ({"verdict": "do-not-mount"}, 0, 3),
        ({"hold": "cup-drive"}, 1, 1),
        ({"window": "narrow"}, 2, 1),
        ({"window": "empty"}, 2, 2),
        ({"window": "not-used"}, 2, 1),
        ({"ceiling_rpm": 400.0}, 3, math.log(2)),
        ({"ceiling_rpm": 1600.0}, 3, math.log(2)),  # half and double lie as far
        ({"ceiling_rpm": 0.0}, 3, 10.0),
        ({"start_rpm": 100.0}, 4, math.log(4)),
        ({"start_rpm": None}, 4, 10.0),
        ({"set_n": 600.0}, 5, math.log(2)),
        ({"set_n": None}, 5, 10.0),
        ({"allowed_n": 450.0}, 5, math.log(2)),
        ({"set_n": 600.0, "allowed_n": 450.0}, 5, 2 * math.log(2)),
    ],
)
def test_verdict_hold_window_ceiling_start_and_thrust_weigh_in_that_order(
    other: dict[str, Any], place: int, size: float
) -> None:
    found = apart(**other)
    assert len(found) == len(NOTHING) == 6
    assert found[place] == pytest.approx(size)
    assert [entry for at, entry in enumerate(found) if at != place] == [0] * 5
    back = weight(GOES._replace(**other), GOES)
    assert back == pytest.approx(found)
    assert found > NOTHING


def test_what_nobody_acts_on_weighs_nothing_nor_does_a_rounding() -> None:
    assert apart(governed_by="rim-speed", hold_verdict="with-care", thrust_governed_by="crushing") == NOTHING
    assert apart(ceiling_rpm=800.0 * (1 + 1e-10), start_rpm=400.0 * (1 - 1e-10)) == NOTHING
    assert apart(ceiling_rpm=800.0 * (1 + 1e-8)) > NOTHING
    nothing = GOES._replace(start_rpm=None, set_n=None, allowed_n=None, ceiling_rpm=0.0)
    assert weight(nothing, nothing) == NOTHING


SIDE = Side(GOES, {}, {}, None, "")


def test_the_field_that_does_most_alone_matters_most_and_else_those_that_do_it_together() -> None:
    slower = Tried(("machine.mass",), GOES._replace(ceiling_rpm=400.0))
    idle = Tried(("cut.force",), GOES)
    enough = ("machine.mass", "work.state")
    assert Comparison(SIDE, SIDE, (), (slower, idle), enough, ()).matters_most == ("machine.mass",)
    assert Comparison(SIDE, SIDE, (), (idle,), enough, ()).matters_most == enough
    assert Comparison(SIDE, SIDE, (), (), (), ()).matters_most == ()


def test_fields_that_differ_come_in_the_order_of_a_case_file() -> None:
    one = case_of("SPINDLE; machine.mass=100kg; hold.drive.teeth=2; title=a")
    other = case_of("SPINDLE; cut.force=9N; machine.mass=200kg; work.diameter=2in; title=b")
    assert differing(one, other) == ("work.diameter", "machine.mass", "hold.drive.teeth", "cut.force")
    assert differing(one, one) == ()


KIT = "SPINDLE; hold.kit=[spur-drive]"
MASS, FORCE, ALTITUDE, ASTHMA = "machine.mass=200kg", "cut.force=9N", "machine.altitude=100m", "person.asthma=yes"
M, F, P, A = "machine.mass", "cut.force", "machine.altitude", "person.asthma"
Law = Callable[[frozenset[str]], dict[str, Any]]


def compared(monkeypatch: pytest.MonkeyPatch, law: Law, *words: str) -> Comparison:
    """A spindle against itself with words changed, where the outcome follows a plain law of the fields changed."""
    a, b = case_of(KIT), case_of("; ".join([KIT, *words]))

    def outcome(case: Case) -> Outcome:
        return GOES._replace(**law(frozenset(differing(a, case))))

    class Table:
        def __init__(self, engine: Fires) -> None:
            self.engine = engine

        def outcome(self, case: Case) -> Outcome:
            """As the law has it; no case that contradicts itself is ever tried."""
            assert not disagreements(case)
            return outcome(case)

    monkeypatch.setattr(comparing, "Bench", Table)
    monkeypatch.setattr(comparing, "outcome_of", lambda advice: outcome(advice.situation.case))
    return compare(a, b)


def tried(found: Comparison) -> list[tuple[str, ...]]:
    return [entry.fields for entry in found.tried]


def test_each_difference_is_tried_alone_the_weightiest_first(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(changed: frozenset[str]) -> dict[str, Any]:
        start = 400.0 + 10 * (F in changed) + 20 * (A in changed)
        return {"start_rpm": start, "verdict": "ask-first" if P in changed else "go"}

    found = compared(monkeypatch, law, MASS, FORCE, ALTITUDE, ASTHMA)
    assert tried(found) == [(P,), (A,), (F,), (M,)]
    assert [entry.outcome.start_rpm for entry in found.tried] == [400.0, 420.0, 410.0, 400.0]
    assert found.matters_most == (P,)
    assert found.enough == (P, F, A)  # in the order of a case file; the mass adds nothing
    assert (found.a.outcome, found.b.outcome) == (GOES, GOES._replace(start_rpm=430.0, verdict="ask-first"))


def test_what_two_only_do_together_is_theirs(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(changed: frozenset[str]) -> dict[str, Any]:
        return {"verdict": "ask-first" if {M, A} <= changed else "go"}

    found = compared(monkeypatch, law, MASS, FORCE, ASTHMA)
    assert found.matters_most == found.enough == (M, A)


def test_of_two_that_each_do_all_of_it_the_weightier_alone_is_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(changed: frozenset[str]) -> dict[str, Any]:
        if {M, A} <= changed or A in changed:
            return {"ceiling_rpm": 300.0}
        return {"ceiling_rpm": 600.0 if M in changed else 800.0}

    found = compared(monkeypatch, law, MASS, ASTHMA)
    assert (tried(found), found.enough) == ([(A,), (M,)], (A,))
    same = compared(monkeypatch, lambda changed: {"ceiling_rpm": 300.0 if changed else 800.0}, MASS, ASTHMA)
    assert (tried(same), same.enough) == ([(M,), (A,)], (M,))


def test_differences_that_change_nothing_are_enough_for_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    found = compared(monkeypatch, lambda _: {}, MASS, ASTHMA)
    assert (found.enough, found.matters_most) == ((), ())
    assert [entry.field for entry in found.differences] == [M, A]
    assert tried(found) == [(M,), (A,)]


def test_fields_that_would_contradict_each_other_are_tried_and_kept_together(monkeypatch: pytest.MonkeyPatch) -> None:
    """3 in across finished at 20 mm against 1 in: 1 in with the finished size of before would be no case."""
    a = f"{KIT}; work.finished_diameter=2in"
    monkeypatch.setattr(f"{__name__}.KIT", a)
    small, thin = "work.diameter", "work.finished_diameter"

    def law(changed: frozenset[str]) -> dict[str, Any]:
        return {"ceiling_rpm": 1600.0 if small in changed else 800.0}

    found = compared(monkeypatch, law, "work.diameter=1in", "work.finished_diameter=20mm", MASS)
    assert tried(found) == [(small, thin), (thin,), (M,)]
    assert found.enough == found.matters_most == (small, thin)
    nothing = compared(monkeypatch, lambda _: {}, "work.diameter=1in", "work.finished_diameter=20mm")
    assert nothing.enough == ()


def test_both_sides_tell_their_limits_and_the_first_reason() -> None:
    found = compare(case_of(KIT), case_of(f"{KIT}; work.condition=[through-crack]; machine.tailstock=no"))
    first, second = kept_advice(KIT), advice_of(f"{KIT}; work.condition=[through-crack]; machine.tailstock=no")
    assert found.a.outcome == outcome_of(first)
    assert found.a.limits == {entry.name: entry.value for entry in first.speed.limits}
    assert first.thrust is not None
    assert found.a.thrust_limits == {entry.name: entry.value for entry in first.thrust.limits}
    assert (found.b.outcome, found.b.thrust_limits) == (outcome_of(second), {})
    assert found.b.rule == "cracked-through"
    assert found.b.reason.startswith("A crack runs right through it")
    fine = compare(case_of(f"{KIT}; work.state=round"), case_of(f"{KIT}; work.state=round"))
    assert (fine.a.outcome.verdict, fine.a.rule, fine.a.reason) == ("go", None, "")


def test_what_stood_in_for_what_was_not_said_is_told_on_either_side() -> None:
    wide = f"{KIT}; machine.base_width=700mm; work.diameter=4in"
    found = compare(case_of(KIT), case_of(wide))
    by_field = {entry.field: entry for entry in found.differences}
    assert by_field["machine.base_width"][1:] == (None, 700.0, "500 mm", None)
    assert by_field["work.diameter"][1:] == (pytest.approx(76.2), pytest.approx(101.6), None, None)
    other = compare(case_of(f"{KIT}; machine.base_width=700mm"), case_of(KIT))
    assert other.differences[0][1:] == (700.0, None, None, "500 mm")
    silent = {entry.field: entry for entry in found.silent}
    assert {"work.mass", "work.offset"} <= set(silent)
    assert silent["work.offset"][1:3] == (None, None)
    told = [{one["field"]: one["value"] for one in assumed(advice_of(text))} for text in (KIT, wide)]
    for field in ("work.mass", "work.offset"):
        assert [silent[field].assumed_a, silent[field].assumed_b] == [entry[field] for entry in told]
    assert "machine.base_width" not in silent
    assert "machine.spindle_height" not in silent  # the same on both sides
    assert not {"work.diameter", "machine.base_width"} & set(silent)


def test_the_engine_that_is_given_is_asked_and_remembers() -> None:
    heard: list[Fires] = []

    class Listening(Remembering):
        def __init__(self, engine: Fires) -> None:
            super().__init__(engine)
            heard.append(engine)

    engine = Remembering(default_engine())
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("advisor.advice.trial.Remembering", Listening)
        compare(case_of(KIT), case_of(KIT), engine)
        compare(case_of(KIT), case_of(KIT))
    assert heard == [engine, default_engine()]


def test_both_sides_are_worked_out_by_the_engine_that_remembers(monkeypatch: pytest.MonkeyPatch) -> None:
    heard: list[object] = []

    def listen(case: Case, engine: Fires) -> Advice:
        heard.append(engine)
        return advise(case, engine)

    monkeypatch.setattr(comparing, "advise", listen)
    compare(case_of(KIT), case_of(f"{KIT}; {ASTHMA}"))
    assert [type(engine) for engine in heard] == [Remembering, Remembering]
