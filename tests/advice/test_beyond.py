"""What to make or to get where nothing to hand holds the piece: made before bought, bought before bought in pairs."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from advisor.advice import beyond, changes, default_engine
from advisor.advice.beyond import OneThing, in_words, nearest_change, one_thing, would_do
from advisor.advice.changes import HoldProposal
from advisor.advice.judge import JudgedHold, Judgement, judge
from advisor.engine import Fact, Fires, Ruling
from advisor.models.methods import method
from advisor.models.spoken import spoken
from advisor.situation import Situation
from tests.advice.bench import Allowing, case_of, judged, situation_of

TAPE = "BOWL; hold.kit=[double-sided-tape"
PLATE = f"{TAPE}, faceplate-screws]"
JAWS = f"{TAPE}, soft-jaws]"
NEITHER = f"{TAPE}]"
METAL = f"METAL{TAPE}]"


def refused(situation: Situation) -> Judgement:
    """The kit, none of which will do."""
    return Judgement(tuple(judged(name, "refused") for name in situation.case.hold.kit or ()), (), (), ())


def found(text: str, *would_hold: str) -> tuple[str, bool, bool] | None:
    """What is made or got, whether it is made, and whether it needs a carrier, where only these would hold."""
    situation = situation_of(text)
    one = one_thing(situation, Allowing(*would_hold), refused(situation))
    if one is None:
        return None
    assert one.hold.method == one.thing
    assert one.hold.accepted
    return one.thing, bool(one.how), one.carrier


@pytest.mark.parametrize(
    ("text", "would_hold", "thing"),
    [
        (PLATE, ("glue-block",), ("glue-block", True, False)),
        (JAWS, ("glue-block",), ("glue-block", True, False)),  # a plate or a chuck carries it
        (NEITHER, ("glue-block",), ("glue-block", False, True)),
        (PLATE, ("ring-clamp-plate",), ("ring-clamp-plate", True, False)),
        (JAWS, ("ring-clamp-plate",), ("ring-clamp-plate", False, True)),  # a chuck does not carry it
        (JAWS, ("rubber-button-jaws",), ("rubber-button-jaws", False, False)),
        (PLATE, ("rubber-button-jaws",), ("rubber-button-jaws", False, True)),
        (NEITHER, ("screw-chuck",), ("screw-chuck", False, False)),  # bought whole, it carries itself
        (PLATE, ("screw-chuck",), ("screw-chuck", True, False)),
        (NEITHER, ("toothed-ring-drive",), ("toothed-ring-drive", False, False)),
        (NEITHER, ("mandrel",), ("mandrel", True, False)),
        (NEITHER, ("cup-drive",), ("cup-drive", False, False)),
        (METAL, ("cup-drive",), ("cup-drive", True, False)),  # turned from a bar
        (METAL, ("glue-block",), ("glue-block", False, True)),
        # made before bought, bought before bought in pairs, whatever is reached for first
        (NEITHER, ("screw-chuck", "mandrel"), ("mandrel", True, False)),
        (NEITHER, ("glue-block", "screw-chuck"), ("screw-chuck", False, False)),
        # of two that are bought, what an old hand reaches for
        (NEITHER, ("vacuum", "screw-chuck", "collet"), ("vacuum", False, False)),
        (NEITHER, (), None),
    ],
)
def test_what_can_be_made_from_what_is_there_comes_before_what_must_be_bought(
    text: str, would_hold: tuple[str, ...], thing: tuple[str, bool, bool] | None
) -> None:
    assert found(text, *would_hold) == thing


def test_what_is_to_hand_already_is_not_the_one_thing() -> None:
    assert found(PLATE, "faceplate-screws", "double-sided-tape", "screw-chuck") == ("screw-chuck", True, False)


def test_nothing_is_looked_for_where_something_to_hand_holds() -> None:
    situation = situation_of(PLATE)
    holds = judged("double-sided-tape", "refused"), judged("faceplate-screws", "with-care")
    assert one_thing(situation, Allowing("mandrel"), Judgement(holds, (), (), ())) is None


def test_where_everything_was_judged_there_is_nothing_else() -> None:
    situation = situation_of("BOWL; machine.tailstock=no")
    assert one_thing(situation, Allowing("mandrel"), judge(situation, Allowing())) is None


BAR = "ROD; work.length=500mm; machine.tailstock=no; hold.kit=[three-jaw, collet]"


def steadied(text: str) -> OneThing | None:
    situation = situation_of(text)
    return one_thing(situation, default_engine(), judge(situation, default_engine()))


def test_a_bar_that_only_levers_out_gets_a_steady_and_keeps_its_hold() -> None:
    one = steadied(BAR)
    assert one is not None
    assert (one.thing, one.hold.method, one.hold.verdict) == ("steady-rest", "collet", "with-care")
    assert (one.how, one.carrier) == ("a plywood frame with three waxed hardwood fingers", False)


def test_no_steady_is_made_where_one_is_there_or_none_can_stand() -> None:
    for text in (BAR.replace("]", ", steady-rest]"), f"{BAR}; work.form=square; work.state=not-round"):
        one = steadied(text)
        assert one is None or one.thing != "steady-rest"


class Steadied(Allowing):
    """Holds of the kit pass as soon as there is a steady, others where they are named."""

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        spoken = super().run(facts)
        return [entry for entry in spoken if entry.fact.values.get("steady") != "yes"]


@pytest.mark.parametrize(
    ("others", "thing"),
    [
        ((), "steady-rest"),
        (("vacuum",), "steady-rest"),  # made before bought
        (("mandrel",), "mandrel"),  # what is made as well and held without it
    ],
)
def test_a_steady_is_made_before_anything_is_bought(others: tuple[str, ...], thing: str) -> None:
    situation = situation_of(BAR)
    one = one_thing(situation, Steadied(*others), refused(situation))
    assert one is not None
    assert one.thing == thing
    assert one.hold.method in (thing, "three-jaw", "collet")  # a steady serves what is to hand


def test_a_steady_that_does_not_help_is_not_made() -> None:
    assert found(BAR, "vacuum") == ("vacuum", False, False)
    assert found(BAR) is None


def thing(name: str, hold: str = "", how: str = "", carrier: bool = False) -> OneThing:
    return OneThing(judged(hold or name), name, how, carrier)


def test_in_words_what_is_made_bought_or_bought_with_its_carrier() -> None:
    needs = f"(it needs {method('glue-block').needs})"
    name = spoken("glue-block")
    assert in_words(thing("glue-block", how="a disc")) == (
        f"{name}, made in the shop: a disc {needs}; nothing need be bought"
    )
    bought = f"bought {needs}; nothing made from what is there would hold it"
    assert in_words(thing("glue-block")) == f"{name}, {bought}"
    assert in_words(thing("glue-block", carrier=True)) == f"{name} with a chuck or a plate to carry it, {bought}"


def test_in_words_a_steady_and_the_hold_it_serves() -> None:
    told = in_words(thing("steady-rest", "soft-jaws", "a frame"))
    assert told.startswith("make a steady rest (a frame): with it soft jaws ")
    assert told.endswith("nothing need be bought")


class Bettered:
    """Single changes by hand: which verdicts the changes of a hold come to."""

    def __init__(self, verdicts: dict[str, list[str]]) -> None:
        self.verdicts = verdicts
        self.tried: list[str] = []

    def __call__(self, situation: Situation, engine: Fires, hold: JudgedHold) -> list[HoldProposal]:
        assert isinstance(engine, Allowing)
        assert situation.case == case_of(NEITHER)
        self.tried.append(hold.method)
        told = self.verdicts.get(hold.method, [])
        return [HoldProposal(f"change {place}", situation.case, hold.method, word) for place, word in enumerate(told)]


def nearest(monkeypatch: pytest.MonkeyPatch, verdicts: dict[str, list[str]]) -> tuple[str, list[str]]:
    """Six holds whose order of reach is none of the alphabet, listed the other way about."""
    bettered = Bettered(verdicts)
    monkeypatch.setattr(changes, "hold_proposals", bettered)
    holds = tuple(judged(name, "refused", place) for place, name in reversed(list(enumerate("qbzdea"))))
    told = nearest_change(situation_of(NEITHER), Allowing(), Judgement(holds, (), (), ()))
    return told, bettered.tried


@pytest.mark.parametrize(
    ("verdicts", "told"),
    [
        ({"b": ["suits"], "q": ["with-care"]}, "q, change 0"),
        ({"q": ["not-advised", "could-not-check"], "b": ["not-advised", "suits"]}, "b, change 1"),
        ({"d": ["suits"]}, "d, change 0"),
        ({"e": ["suits"]}, ""),
        ({}, ""),
    ],
)
def test_the_nearest_change_is_tried_on_what_an_old_hand_reaches_for(
    monkeypatch: pytest.MonkeyPatch, verdicts: dict[str, list[str]], told: str
) -> None:
    said, tried = nearest(monkeypatch, verdicts)
    assert said == told
    assert tried == list("qbzd")[: len(tried)]


def test_a_change_really_tried_lets_a_hold_pass() -> None:
    situation = situation_of("BOWL; hold.kit=[faceplate-screws]; hold.screws.kind=plasterboard")
    judgement = judge(situation, default_engine())
    assert not judgement.accepted
    told = nearest_change(situation, default_engine(), judgement)
    assert told == f"{spoken('faceplate-screws')}, sheet-metal screws"


def test_what_would_do_is_the_one_thing_else_the_nearest_change_else_another_piece(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    situation = situation_of(NEITHER)
    one, told = would_do(situation, Allowing("mandrel"), refused(situation))
    assert one is not None
    assert (one.thing, told) == ("mandrel", in_words(one))

    def change(*tried: object) -> str:
        assert tried[0] is situation
        return "soft jaws with a wider tenon"

    monkeypatch.setattr(beyond, "nearest_change", change)
    found = would_do(situation, Allowing(), refused(situation))
    assert found == (None, "nothing outside it either; soft jaws with a wider tenon")
    monkeypatch.setattr(beyond, "nearest_change", lambda *_: "")
    none = "no single change of cut or size does: change the piece"
    assert would_do(situation, Allowing(), refused(situation)) == (None, f"nothing outside it either; {none}")
    everything = situation_of("BOWL")
    assert would_do(everything, Allowing(), judge(everything, Allowing())) == (None, none)
