"""Every hold judged and ranked: class first, then what an old hand reaches for, then the margin."""

from __future__ import annotations

import pytest

from advisor.advice.judge import Judgement, candidates, implied_method, judge
from advisor.engine import Ruling
from advisor.models.case import METHODS
from advisor.reckoning.speed import first_speed
from advisor.rulebook import Effect
from tests.advice.bench import Book, Deaf, Recording, judged, ruling, situation_of


@pytest.mark.parametrize(
    ("said", "method"),
    [
        ("hold.drive.kind=toothed-ring", "toothed-ring-drive"),
        ("hold.drive.kind=cup", "cup-drive"),
        ("hold.drive.kind=point", "point-and-pin-drive"),
        ("hold.drive.outer_diameter=30mm", "spur-drive"),
        ("hold.drive.teeth=2", "two-spur-drive"),
        ("hold.drive.teeth=4", "spur-drive"),
        ("hold.drive.teeth=24", "toothed-ring-drive"),  # so many teeth stand in a ring
        ("hold.drive.kind=toothed; hold.drive.teeth=24", "spur-drive"),  # unless it is said that they do not
        ("hold.drive.kind=toothed; hold.drive.teeth=2", "two-spur-drive"),
        ("hold.drive.kind=cup; hold.drive.teeth=2", "cup-drive"),
        ("hold.drive.teeth=2; hold.method=collet", "collet"),  # what is named counts before what is described
        ("work.purpose=spindle", None),
    ],
)
def test_a_drive_center_that_is_described_is_a_way_of_holding(said: str, method: str | None) -> None:
    assert implied_method(situation_of(f"SPINDLE; {said}")) == method


@pytest.mark.parametrize(
    ("said", "methods"),
    [
        ("hold.kit=[vacuum, spur-drive]", ("vacuum", "spur-drive")),
        ("hold.kit=[vacuum, steady-rest]", ("vacuum",)),  # a steady alone holds nothing
        ("hold.kit=[steady-rest]", METHODS),
        ("work.purpose=spindle", METHODS),
        ("hold.kit=[vacuum]; hold.method=collet", ("collet", "vacuum")),
        ("hold.kit=[vacuum, collet]; hold.method=collet", ("vacuum", "collet")),
    ],
)
def test_the_kit_is_judged_everything_without_one_and_the_chosen_hold_in_any_case(
    said: str, methods: tuple[str, ...]
) -> None:
    assert candidates(situation_of(f"SPINDLE; {said}")) == tuple(methods)


@pytest.mark.parametrize(
    ("verdict", "accepted"),
    [("suits", True), ("with-care", True), ("could-not-check", False), ("not-advised", False), ("refused", False)],
)
def test_what_suits_even_with_care_is_accepted_and_nothing_else(verdict: str, accepted: bool) -> None:
    assert judged(verdict=verdict).accepted is accepted
    assert Judgement((judged(verdict="refused"), judged(verdict=verdict)), (), (), ()).accepted is accepted


def test_a_hold_is_found_by_its_name() -> None:
    judgement = Judgement((judged("collet"), judged("vacuum"), judged("spur-drive")), (), (), ())
    assert [judgement.of(name).method for name in ("vacuum", "spur-drive", "collet")] == [
        "vacuum",
        "spur-drive",
        "collet",
    ]


KIT = "SPINDLE; work.length=4in; hold.kit=[spur-drive, collet, vacuum, jaws-on-tenon]"


def ranked(spoken: dict[str, list[Ruling]], *reach: tuple[int, tuple[str, ...]], text: str = KIT) -> list[str]:
    return [hold.method for hold in judge(situation_of(text), Book(spoken, *reach)).holds]


CARE = ruling(Effect.HOLD_WITH_CARE, "Tug it.", "tug")
AGAINST = ruling(Effect.NOT_ADVISED, "Rather not.", "rather-not")
REFUSED = ruling(Effect.REFUSE, "Never.", "never")
UNSEEN = ruling(Effect.COULD_NOT_CHECK, "Not known.", "unseen")
REMARK = ruling(Effect.NOTE, "By the way.", "remark")
SUITS = ruling(Effect.SUITS, "", "good")


def test_what_an_old_hand_reaches_for_comes_first_among_those_that_do_and_a_refused_one_last() -> None:
    order = ("vacuum", "jaws-on-tenon", "collet", "spur-drive")
    assert ranked({}, (1, order)) == list(order)
    spoken = {"vacuum": [REFUSED], "jaws-on-tenon": [AGAINST], "collet": [CARE]}
    assert ranked(spoken, (1, order)) == ["collet", "spur-drive", "jaws-on-tenon", "vacuum"]


def test_what_could_not_be_checked_stands_with_what_is_not_advised() -> None:
    spoken = {"vacuum": [AGAINST], "jaws-on-tenon": [UNSEEN], "collet": [REFUSED]}
    order = ("jaws-on-tenon", "vacuum", "collet", "spur-drive")
    assert ranked(spoken, (1, order)) == ["spur-drive", "jaws-on-tenon", "vacuum", "collet"]


def test_the_first_row_that_speaks_gives_the_order() -> None:
    rows = (7, ("collet", "vacuum")), (3, ("vacuum", "spur-drive")), (9, ("jaws-on-tenon",))
    judgement = judge(situation_of(KIT), Book({}, *rows))
    assert [hold.method for hold in judgement.holds][:2] == ["vacuum", "spur-drive"]
    assert [entry.rule.name for entry in judgement.reach] == ["row-3"]
    assert [judgement.of(name).place for name in ("vacuum", "spur-drive")] == [0, 1]
    assert len({judgement.of("collet").place, judgement.of("jaws-on-tenon").place}) == 1
    assert judgement.of("collet").place >= len(METHODS)  # behind whatever an order names


def test_without_an_order_one_that_suits_comes_before_one_that_wants_care_and_then_the_margin_counts() -> None:
    """Jaws on a tenon stand more than teeth in the end; suction on a bare square stands least."""
    judgement = judge(situation_of(KIT), Book({}))
    margins = [hold.figures.divided or 0.0 for hold in judgement.holds]
    assert margins == sorted(margins, reverse=True)
    assert judgement.holds[0].method != "vacuum"
    best = judgement.holds[0].method
    assert ranked({best: [CARE]})[-1] == best
    assert judgement.reach == ()


def test_practice_alone_counts_as_no_margin() -> None:
    for modeled in ("spur-drive", "vacuum"):  # ample, and hardly any
        text = f"SPINDLE; work.length=4in; hold.kit=[square-socket-drive, {modeled}]"
        assert ranked({}, text=text) == [modeled, "square-socket-drive"]


FINISHED = "work.diameter=10in; work.state=finished; work.form=disc; machine.mass=1500kg; work.offset=0.1mm"


@pytest.mark.parametrize(
    ("text", "lively"),
    [
        ("work.mass=10kg; cut.operation=balancing; work.diameter=20mm; machine.max_rpm=60", False),
        ("work.mass=10.1kg; cut.operation=balancing; work.diameter=20mm; machine.max_rpm=60", True),
        (f"{FINISHED}; work.mass=5.5kg", False),  # m·(π·D·n)²/4 at 450 rpm: 49 J
        (f"{FINISHED}; work.mass=5.7kg", True),  # 51 J
    ],
)
def test_on_a_heavy_or_lively_piece_what_wants_care_comes_behind_what_suits(text: str, lively: bool) -> None:
    """Heavy is more than 10 kg, lively more than 50 J at the first start (common practice, no source)."""
    order = ranked({"collet": [CARE]}, (1, ("collet", "spur-drive", "vacuum", "jaws-on-tenon")), text=f"{KIT}; {text}")
    assert order.index("collet") == (3 if lively else 0)


def test_each_hold_is_judged_at_its_own_first_start() -> None:
    """Button jaws are never run fast (common practice, no source); the liveliest of the starts makes it lively."""
    situation = situation_of(f"{KIT[:-1]}, rubber-button-jaws]; {FINISHED}; work.mass=5.7kg")
    buttons, spurs = "rubber-button-jaws", "spur-drive"
    found = judge(situation, Book({buttons: [CARE]}, (1, (buttons, spurs))))
    for hold in found.holds:
        assert hold.rpm == first_speed(situation, hold.method, hold.figures.tail_up) == hold.figures.rpm > 0
    assert found.of(buttons).rpm < found.of(spurs).rpm
    assert found.holds[-1].method == buttons
    plate = "BOWL; hold.kit=[faceplate-screws]"  # an uneven piece starts slower without the tail
    up, away = (judge(situation_of(f"{plate}{tail}"), Book({})).holds[0] for tail in ("", "; hold.tail.kind=none"))
    assert up.rpm > away.rpm


@pytest.mark.parametrize(
    ("spoken", "verdict"),
    [
        ([], "suits"),
        ([SUITS, REMARK], "suits"),
        ([SUITS, CARE], "with-care"),
        ([CARE, UNSEEN], "could-not-check"),
        ([UNSEEN, AGAINST], "not-advised"),
        ([REFUSED, AGAINST], "refused"),
    ],
)
def test_the_worst_word_on_a_hold_is_its_verdict(spoken: list[Ruling], verdict: str) -> None:
    found = judge(situation_of(KIT), Book({"collet": spoken}))
    assert found.of("collet").verdict == verdict
    assert found.of("vacuum").verdict == "suits"


def test_what_made_the_verdict_is_told_first_and_remarks_last() -> None:
    spoken = [REMARK, SUITS, CARE, UNSEEN, AGAINST, REFUSED]
    found = judge(situation_of(KIT), Book({"collet": spoken})).of("collet")
    assert [entry.rule.name for entry in found.rulings] == [
        "never",
        "rather-not",
        "unseen",
        "tug",
        "good",
        "remark",
    ]


def test_one_request_tells_of_the_piece_and_of_every_hold_and_which_of_them_was_chosen() -> None:
    engine = Recording()
    found = judge(situation_of(f"{KIT}; hold.method=collet"), engine)
    (facts,) = engine.asked
    assert found.facts == tuple(facts)
    assert [entry.kind for entry in facts] == ["reach", "hold", "hold", "hold", "hold"]
    assert [entry.values["method"] for entry in facts[1:]] == ["spur-drive", "collet", "vacuum", "jaws-on-tenon"]
    assert found.rulings
    assert all(any(entry.fact is sent for sent in facts) for entry in found.rulings)


def test_the_rules_are_told_which_hold_was_chosen() -> None:
    engine = Recording()
    judge(situation_of("SPINDLE; hold.method=collet"), engine, ("vacuum", "collet"))
    (facts,) = engine.asked
    assert [entry.values["named"] for entry in facts[1:]] == ["no", "yes"]


def test_methods_that_are_named_are_judged_instead_of_the_kit() -> None:
    found = judge(situation_of(KIT), Deaf(), ("screw-chuck", "pin-chuck"))
    assert {hold.method for hold in found.holds} == {"screw-chuck", "pin-chuck"}
    assert judge(situation_of(KIT), Deaf(), ()).holds == ()
