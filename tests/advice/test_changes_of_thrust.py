"""What would open the tailstock window: only what was tried and helps, told with the thrust to set then."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import Any

import pytest

from advisor.advice import changes, default_engine
from advisor.advice.advise import Advice
from advisor.advice.changes import (
    thrust_changes,
    thrust_proposals,
    window_word,
)
from advisor.advice.judge import Judgement
from advisor.engine import Fact, Ruling
from advisor.models.spoken import spoken
from advisor.reckoning.speed import first_speed
from advisor.reckoning.thrust_need import Need
from advisor.rulebook import Effect
from advisor.situation import settle
from tests.advice.bench import (
    Deaf,
    Recording,
    advice_of,
    fields,
    judged,
    kept_advice,
    limit,
    ruling,
    situation_of,
)

NARROW = "NARROW; hold.kit=[spur-drive, collet]"


def says(word: str) -> Ruling:
    return ruling(Effect.NOTE, "N.", f"is-{word}", window=word)


class Opening:
    """An engine that reads the centers and says of each window what it is told to."""

    def __init__(self, word_of: Callable[[dict[str, Fact]], str]) -> None:
        self.word_of = word_of

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """One word on the window."""
        return [says(self.word_of({fact.kind: fact for fact in facts}))]


@pytest.mark.parametrize(
    ("text", "method"),
    [
        ("SPINDLE; machine.tailstock=no", "spur-drive"),
        ("BOWL; machine.tailstock=no", "faceplate-screws"),
        ("BOWL; hold.tail.kind=none", "faceplate-screws"),
    ],
)
def test_without_a_center_at_the_tail_there_is_no_window(text: str, method: str) -> None:
    assert window_word(situation_of(text), method, Deaf(says("empty"))) == ("not-used", None)


@pytest.mark.parametrize(
    ("text", "method"),
    [
        ("SPINDLE", "spur-drive"),
        ("SPINDLE; work.diameter=20mm", "driving-dog"),  # a dog has a most speed of its own
        ("BOWL", "faceplate-screws"),
        ("SPINDLE; hold.tail.kind=none", "spur-drive"),
    ],
)
def test_the_window_is_that_of_this_hold_at_its_first_speed_and_the_worst_word_on_it_counts(
    text: str, method: str
) -> None:
    situation = situation_of(text)
    word, window = window_word(situation, method, Deaf(says("narrow"), ruling(Effect.NOTE, "N."), says("open")))
    assert word == "narrow"
    assert window is not None
    up = text != "SPINDLE; hold.tail.kind=none"
    assert (window.method, window.rpm) == (method, first_speed(situation, method, up))
    assert window_word(situation, method, Deaf())[0] == "open"


def test_the_rules_on_the_window_hear_of_the_thrust_and_both_ends() -> None:
    engine = Recording()
    window_word(situation_of("SPINDLE"), "spur-drive", engine)
    assert [fact.kind for fact in engine.asked[0]] == ["thrust", "tail", "drive"]


def tightened(text: str, word: str = "narrow", **thrust: Any) -> Advice:
    """The advice on a situation with its window called narrow or empty, and some of its thrust by hand."""
    base = kept_advice(text)
    assert base.thrust is not None
    return base._replace(thrust=base.thrust._replace(**thrust), rulings=(says(word),))


def offered(advice: Advice) -> dict[str, dict[str, Any]]:
    """What each change would alter in the case, where every change opens the window."""
    base = advice.situation.case
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(changes, "window_word", lambda *_: ("open", advice.thrust))
        found = {entry.text: fields(base, entry.case) for entry in thrust_proposals(advice, Deaf())}
    for altered in found.values():
        if altered.get("hold.method") == advice.used.method:
            del altered["hold.method"]
    return found


CUP = {"hold.tail.kind": "live-cup"}


def test_a_bar_between_centers_is_offered_a_cup_seated_teeth_a_steady_and_a_grip() -> None:
    assert offered(tightened(f"{NARROW}; hold.method=spur-drive")) == {
        "a live cup at the tail": CUP,
        "seat the teeth first, as deep as this end allows": {"hold.drive.seated_depth": None},
        f"grip the headstock end ({spoken('collet')})": {
            "hold.method": "collet",
            "hold.drive.teeth": None,
            "hold.drive.outer_diameter": None,
            "hold.drive.inner_diameter": None,
            "hold.drive.face_angle": None,
            "hold.drive.back_angle": None,
            "hold.drive.seated_depth": None,
        },
    }


ROUND = "SPINDLE; work.form=round; work.state=round; hold.tail.kind=live-cup; hold.kit=[collet, steady-rest]"


def test_a_steady_is_offered_to_a_long_round_bar_where_one_is_to_hand() -> None:
    steady = {"hold.steady.position": pytest.approx(12 * 25.4 / 2)}
    for kit in ("[]", "[spur-drive, steady-rest]"):
        found = offered(tightened(f"{ROUND}; hold.method=spur-drive; hold.kit={kit}"))
        assert found["a steady in the middle"] == steady


@pytest.mark.parametrize(
    "text",
    [
        f"{ROUND}; hold.method=spur-drive; hold.kit=[spur-drive]",
        f"{ROUND}; hold.method=spur-drive; hold.steady.position=100mm",
        f"{ROUND}; hold.method=spur-drive; work.state=not-round",
        f"{ROUND}; hold.method=spur-drive; work.length=3in",  # no longer than it is wide
    ],
)
def test_no_steady_is_offered_where_none_is_to_hand_or_none_can_stand(text: str) -> None:
    assert "a steady in the middle" not in offered(tightened(text))


def test_a_drive_is_offered_larger_than_the_one_there_and_its_teeth_begin_where_they_usually_do() -> None:
    """Half of the end, six tenths, three quarters: the first that is a twentieth larger; 60 mm at most."""
    small = f"{ROUND}; hold.method=spur-drive; hold.drive.outer_diameter={{}}mm; hold.drive.inner_diameter=8mm"
    for given, told in ((20, 38.1), (36.2, 38.1), (36.4, 45.72), (43.6, 57.15)):
        found = offered(tightened(small.format(given)))
        altered = next(then for text, then in found.items() if text.startswith(f"a drive of {told:.0f} mm ("))
        assert altered == {"hold.drive.outer_diameter": pytest.approx(told), "hold.drive.inner_diameter": None}
        assert len([text for text in found if text.startswith("a drive of")]) == 1
    assert not [text for text in offered(tightened(small.format(55))) if text.startswith("a drive of")]
    wide = f"{small.format(50)}; work.diameter=150mm; machine.swing=400mm"
    assert offered(tightened(wide))["a drive of 60 mm (2.4 in) across"]["hold.drive.outer_diameter"] == 60.0


def test_other_drives_are_offered_spurs_and_spurs_their_seat() -> None:
    seat, spurs = "seat the teeth first, as deep as this end allows", "a four-spur drive with its teeth seated"
    for method, told in (
        ("toothed-ring-drive", {spurs}),
        ("cup-drive", {spurs}),
        ("two-spur-drive", {spurs}),
        ("spur-drive", set()),
    ):
        assert {seat, spurs} & set(offered(tightened(f"{ROUND}; hold.method={method}"))) == told
    pressed = "hold.drive.seated_depth=0mm; hold.drive.teeth"
    assert {seat, spurs} <= set(offered(tightened(f"{ROUND}; hold.method=two-spur-drive; {pressed}=2")))
    assert seat in offered(tightened(f"{ROUND}; hold.method=spur-drive; {pressed}=4"))
    ring = offered(tightened(f"{ROUND}; hold.method=toothed-ring-drive; hold.drive.teeth=24"))
    assert ring[spurs] == {"hold.method": "spur-drive", "hold.drive.teeth": None}


def test_what_nothing_drives_is_offered_no_drive() -> None:
    found = offered(tightened("BOWL; hold.method=faceplate-screws; hold.kit=[faceplate-screws]"))
    assert set(found) == {"a live cup at the tail", "a live center made for 150 N (34 lbf)"}


def test_a_stronger_center_is_offered_where_the_one_there_is_what_limits() -> None:
    """Half as much again as what is to be set: less is a narrow window."""
    need = Need(100.0, 600.0, 1000.0, 3.0, True)
    rated = tightened(f"{ROUND}; hold.method=spur-drive", allowed=limit("center-rating", 900.0), full=need)
    assert offered(rated)["a live center made for 1500 N (340 lbf)"] == {"hold.tail.rating": 1500.0}
    split = tightened(f"{ROUND}; hold.method=spur-drive", allowed=limit("splitting", 900.0), full=need)
    assert not [text for text in offered(split) if text.startswith("a live center")]
    endless = rated._replace(thrust=rated.thrust and rated.thrust._replace(full=need._replace(to_set=math.inf)))
    assert not [text for text in offered(endless) if text.startswith("a live center")]


def test_lighter_cuts_are_offered_down_to_a_quarter_of_a_stated_force() -> None:
    light = Need(40.0, 60.0, 100.0, 3.0, True)
    text = f"{ROUND}; hold.method=spur-drive; cut.force=100N"
    told = "lighter cuts, 40 N (9 lbf) at most"
    for share in (0.25, 0.4):
        assert offered(tightened(text, light=light, light_share=share))[told] == {"cut.force": 40.0}
    for share in (0.24, 1.0):
        assert told not in offered(tightened(text, light=light, light_share=share))
    assert told not in offered(tightened(text, light=None, light_share=0.4))
    assert told not in offered(tightened(f"{ROUND}; hold.method=spur-drive", light=light, light_share=0.4))


def test_one_grip_is_offered_the_first_accepted_one_that_is_not_between_centers() -> None:
    base = tightened(f"{ROUND}; hold.method=spur-drive")
    holds = (judged(), judged("cup-drive"), judged("collet", "refused"), judged("long-jaws"), judged("vacuum"))
    found = offered(base._replace(judgement=Judgement(holds, (), (), ()), used=judged()))
    grips = [text for text in found if text.startswith("grip")]
    assert grips == [f"grip the headstock end ({spoken('long-jaws')})"]
    assert found[grips[0]] == {"hold.method": "long-jaws"}


def test_a_grip_that_leaves_the_tail_away_opens_no_window() -> None:
    advice = tightened(f"{NARROW}; hold.method=spur-drive; hold.tail.kind=none")
    advice = advice._replace(judgement=Judgement((judged(), judged("collet")), (), (), ()))
    assert not [entry.text for entry in thrust_proposals(advice, Deaf()) if entry.text.startswith("grip")]


def test_a_cup_is_not_offered_where_one_stands_nor_together_with_anything() -> None:
    found = offered(tightened(f"{ROUND}; hold.method=spur-drive; hold.drive.seated_depth=0mm"))
    assert not [text for text in found if "live cup" in text]


def test_two_changes_are_tried_together_only_where_no_single_one_helps() -> None:
    advice = tightened(f"{NARROW}; hold.method=spur-drive", "empty")

    def both(facts: dict[str, Fact]) -> str:
        seated = facts["thrust"].values["seated"] == "advised"
        return "narrow" if seated and facts["tail"].values["center"] == "live-cup" else "empty"

    found = thrust_proposals(advice, Opening(both))
    assert [(entry.text, entry.window) for entry in found] == [
        ("seat the teeth first, as deep as this end allows, and a live cup at the tail", "narrow")
    ]
    assert (found[0].case.at("hold.tail.kind"), found[0].case.at("hold.drive.seated_depth")) == ("live-cup", None)


@pytest.mark.parametrize(
    ("now", "then", "helps"),
    [("narrow", "open", True), ("empty", "narrow", True), ("narrow", "narrow", False), ("narrow", "empty", False)],
)
def test_a_change_is_told_only_where_the_window_really_widens(now: str, then: str, helps: bool) -> None:
    found = thrust_proposals(tightened(f"{NARROW}; hold.method=spur-drive", now), Opening(lambda _: then))
    assert bool(found) is helps
    assert {entry.window for entry in found} <= {then}


def test_an_open_window_or_none_is_left_alone() -> None:
    advice, engine = tightened(f"{NARROW}; hold.method=spur-drive", "open"), Recording()
    assert thrust_proposals(advice, engine) == []
    assert thrust_proposals(advice._replace(thrust=None, rulings=(says("narrow"),)), engine) == []
    assert engine.asked == []


def test_a_change_comes_with_the_thrust_to_set_then() -> None:
    advice = tightened(f"{NARROW}; hold.method=spur-drive")
    for entry in thrust_proposals(advice, Deaf()):
        again = settle(entry.case)
        _, window = window_word(again, str(entry.case.hold.method), Deaf())
        assert window is not None
        assert entry.to_set == (window.light or window.full).to_set
    told = thrust_changes(advice_of(f"{NARROW}; hold.method=spur-drive"), default_engine())
    assert told[0] == "a live cup at the tail: open, set 510 N (110 lbf)"
    assert len(told) == 3
