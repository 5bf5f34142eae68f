"""What would better a hold: only what was tried and helps, told with the verdict then."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import pytest

from advisor.advice import changes
from advisor.advice.beyond import OneThing
from advisor.advice.changes import (
    HoldProposal,
    hold_changes,
    hold_proposals,
)
from advisor.engine import Fact, Ruling
from advisor.models.spoken import spoken
from advisor.rulebook import Effect
from tests.advice.bench import (
    Allowing,
    Deaf,
    Recording,
    fields,
    judged,
    kept_advice,
    ruling,
    situation_of,
)


def bettered(text: str, method: str, **figures: Any) -> dict[str, dict[str, Any]]:
    """What each change would alter in the case, where every change makes the hold suit."""
    situation = situation_of(text)
    found = hold_proposals(situation, Deaf(), judged(method, "refused", **figures))
    assert {(entry.method, entry.verdict) for entry in found} <= {(method, "suits")}
    return {entry.text: fields(situation.case, entry.case) for entry in found}


def test_a_hold_that_lets_go_of_a_heavy_cut_is_tried_with_lighter_ones_and_less_overhang() -> None:
    text = "SPINDLE; work.state=round; work.form=round; cut.force=50N"
    assert bettered(text, "long-jaws") == {
        "light cuts, up to 25 N (6 lbf)": {"cut.force": 25.0},
        "finishing cuts only": {"cut.operation": "finishing"},
        "half the overhang": {"hold.overhang": pytest.approx(6 * 25.4)},
    }
    for operation, lighter in (("roughing", True), ("hollowing", True), ("finishing", False), ("sanding", False)):
        found = bettered(f"{text}; cut.operation={operation}", "long-jaws")
        assert ("finishing cuts only" in found) is lighter
        assert ("light cuts, up to 25 N (6 lbf)" in found) is lighter
    assert "half the overhang" not in bettered(f"{text}; work.length=3in", "long-jaws")


@pytest.mark.parametrize("method", ["spur-drive", "friction-block", "mandrel"])
def test_nothing_is_tried_to_hollow_a_piece_between_centers(method: str) -> None:
    text = "SPINDLE; work.purpose=box; cut.operation={}"
    assert bettered(text.format("hollowing"), method, tail_up=False) == {}
    assert bettered(text.format("roughing"), method, tail_up=False) != {}


TAIL = "the tailstock up (for as long as the cut leaves room)"


@pytest.mark.parametrize("operation", ["hollowing", "parting"])
def test_the_tail_is_tried_where_the_cut_left_it_away(operation: str) -> None:
    text = f"BOWL; cut.operation={operation}; work.state=round"
    assert bettered(text, "faceplate-screws", tail_up=False)[TAIL] == {"cut.operation": "shaping"}
    assert TAIL not in bettered(text, "faceplate-screws", tail_up=True)
    assert TAIL not in bettered(f"{text}; machine.tailstock=no", "faceplate-screws", tail_up=False)
    assert TAIL not in bettered("BOWL; work.state=round", "faceplate-screws", tail_up=False)


def test_a_tail_that_was_said_to_be_away_a_backward_turn_and_a_lathe_without_a_tail_are_tried_otherwise() -> None:
    text = "BOWL; work.state=round; hold.tail.kind={}; cut.rotation={}; machine.tailstock={}"
    away = bettered(text.format("none", "reverse", "yes"), "faceplate-screws")
    assert away["a tail center up against it"] == {"hold.tail.kind": None}
    assert away["turning forward"] == {"cut.rotation": "forward"}
    assert "a lathe with a tailstock" not in away
    there = bettered(text.format("live-cup", "forward", "no"), "faceplate-screws")
    assert {"a tail center up against it", "turning forward"}.isdisjoint(there)
    assert there["a lathe with a tailstock"] == {"machine.tailstock": True}


def test_an_uneven_piece_is_tried_turned_round_between_centers_where_there_is_a_tail() -> None:
    told = "turned round first, between centers"
    assert bettered("BOWL", "collet")[told] == {"work.state": "round", "cut.operation": "shaping"}
    assert told not in bettered("BOWL; work.state=round", "collet")
    assert told not in bettered("BOWL; machine.tailstock=no", "collet")


TENON = "BOWL; work.state=round; hold.tenon.diameter=60mm; hold.tenon.length=30mm; hold.chuck.jaw_depth=12mm"


def sizes_of(text: str, method: str, **sizes: float) -> dict[str, dict[str, Any]]:
    found = bettered(text, method, sizes=sizes)
    return {told: altered for told, altered in found.items() if told.startswith(("a tenon", "a recess"))}


def test_a_tenon_is_tried_half_as_wide_again_where_the_end_has_room_and_short_of_the_jaws_depth() -> None:
    wide = {"a tenon of 90 mm (3.5 in)": {"hold.tenon.diameter": 90.0}}
    short = {"a tenon of 10 mm (0.39 in), so that it does not bottom": {"hold.tenon.length": 10.0}}
    assert sizes_of(TENON, "jaws-on-tenon", diameter=60.0, length=30.0) == {**wide, **short}
    assert sizes_of(TENON, "jaws-on-tenon", diameter=60.0, length=12.0) == wide
    assert sizes_of(TENON, "jaws-on-tenon", diameter=170.0, length=12.0) == {}  # 255 mm of 254
    assert sizes_of(TENON, "jaws-on-tenon") == {}
    assert sizes_of(TENON, "long-jaws", diameter=60.0, length=30.0) == short
    assert sizes_of(TENON, "three-jaw", diameter=60.0, length=30.0) == {}
    unknown = TENON.replace("; hold.chuck.jaw_depth=12mm", "")
    assert sizes_of(unknown, "jaws-on-tenon", diameter=60.0, length=30.0) == wide
    assert sizes_of(f"{unknown}; hold.chuck.grip=5kN", "jaws-on-tenon", diameter=60.0, length=30.0) == wide
    stub = {"a tenon of 6 mm (0.24 in), so that it does not bottom": {"hold.tenon.length": 6.0}}
    assert sizes_of(TENON.replace("=12mm", "=8mm"), "long-jaws", length=30.0) == stub
    assert sizes_of(TENON.replace("=12mm", "=7.9mm"), "long-jaws", length=30.0) == {}  # shorter gives the jaws nothing


def test_a_recess_is_tried_with_wood_round_it() -> None:
    """20 mm all round: 254 mm leave 214."""
    told = "a recess of 214 mm (8.4 in) with 20 mm (0.79 in) of wood round it"
    wide = {told: {"hold.recess.wall": 20.0, "hold.recess.diameter": 214.0}}
    bowl = "BOWL; work.state=round"
    assert sizes_of(bowl, "jaws-in-recess", wall=19.9) == wide
    assert sizes_of(bowl, "jaws-in-recess") == wide
    assert sizes_of(bowl, "jaws-in-recess", wall=20.0) == {}
    assert sizes_of(bowl, "long-jaws", wall=10.0) == {}
    assert sizes_of(f"{bowl}; work.diameter=40mm", "jaws-in-recess", wall=10.0) == {}


def fastened(text: str, method: str) -> dict[str, dict[str, Any]]:
    found = bettered(text, method)
    return {told: altered for told, altered in found.items() if "screws" in told or "glue" in told}


SCREWS = {"eight screws, 40 mm (1.6 in) into the wood": {"hold.screws.count": 8, "hold.screws.length": 40.0}}
METAL = {"sheet-metal screws": {"hold.screws.kind": "sheet-metal"}}
GLUES = {
    "polyurethane glue": {"hold.glue.kind": "polyurethane"},
    "epoxy glue": {"hold.glue.kind": "epoxy"},
}
CURED = {"the glue fully cured": {"hold.glue.cured": True}}


@pytest.mark.parametrize(
    ("said", "method", "told"),
    [
        ("work.state=round", "faceplate-screws", SCREWS),
        ("hold.screws.kind=plasterboard", "faceplate-screws", {**METAL, **SCREWS}),
        ("hold.screws.kind=wood", "faceplate-screws", SCREWS),
        ("hold.screws.kind=plasterboard", "waste-block-faceplate", {**METAL, **SCREWS, **GLUES}),
        ("hold.screws.kind=plasterboard", "glue-block", GLUES),
        ("hold.glue.cured=no", "glue-block", {**CURED, **GLUES}),
        ("hold.glue.cured=no", "paper-joint", {**CURED, **GLUES}),
        ("hold.glue.cured=yes", "paper-joint", GLUES),
        ("hold.glue.kind=epoxy", "glue-block", {"polyurethane glue": GLUES["polyurethane glue"]}),
        ("hold.glue.kind=polyurethane", "glue-block", {"epoxy glue": GLUES["epoxy glue"]}),
        ("hold.glue.cured=no", "double-sided-tape", {}),
    ],
)
def test_what_is_screwed_or_glued_is_tried_with_more_and_better_of_it(
    said: str, method: str, told: dict[str, dict[str, Any]]
) -> None:
    assert fastened(f"BOWL; {said}", method) == told


@pytest.mark.parametrize(
    ("now", "then", "told"),
    [
        ("suits", Effect.SUITS, False),
        ("with-care", Effect.SUITS, True),
        ("with-care", Effect.HOLD_WITH_CARE, False),
        ("not-advised", Effect.COULD_NOT_CHECK, True),
        ("could-not-check", Effect.NOT_ADVISED, False),
        ("refused", Effect.NOT_ADVISED, True),
    ],
)
def test_a_change_of_a_hold_is_told_only_where_the_verdict_really_betters(now: str, then: Effect, told: bool) -> None:
    class Saying(Allowing):
        def run(self, facts: Sequence[Fact]) -> list[Ruling]:
            return [Ruling(ruling(then, "So.").rule, fact) for fact in facts if fact.kind == "hold"]

    found = hold_proposals(situation_of("BOWL"), Saying(), judged("faceplate-screws", now))
    assert bool(found) is told


def test_nothing_is_tried_on_a_hold_that_suits() -> None:
    engine = Recording()
    assert hold_proposals(situation_of("BOWL"), engine, judged("faceplate-screws", "suits")) == []
    assert engine.asked == []


def test_another_hold_that_suits_is_no_change_of_this_one() -> None:
    assert hold_proposals(situation_of("BOWL"), Allowing("spur-drive"), judged("faceplate-screws", "refused")) == []


def test_changes_of_a_hold_are_told_with_its_verdict_then_and_the_one_thing_beside_them(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    base = kept_advice("BOWL; hold.kit=[faceplate-screws, vacuum]")
    engine = Deaf()

    def proposals(*asked: object) -> list[HoldProposal]:
        assert asked == (base.situation, engine, base.judgement.of("vacuum"))
        return [HoldProposal("less vacuum", base.situation.case, "vacuum", "with-care")]

    monkeypatch.setattr(changes, "hold_proposals", proposals)
    assert hold_changes(base, engine, "vacuum") == ["less vacuum: with-care"]
    made = base._replace(one_thing=OneThing(judged("glue-block"), "glue-block", "a disc", False))
    assert hold_changes(made, engine, "vacuum") == ["less vacuum: with-care", f"{spoken('glue-block')} instead: suits"]
    steady = base._replace(one_thing=OneThing(judged("collet", "with-care"), "steady-rest", "a frame", False))
    assert hold_changes(steady, engine, "vacuum")[1] == "steady rest with collet instead: with-care"
