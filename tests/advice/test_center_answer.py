"""Thrust and centers as the answer writes them: a number only where there is one to set."""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.advice import center_answer
from advisor.advice.advise import Advice
from advisor.advice.center_answer import centers_part, thrust_part
from advisor.advice.judge import Judgement
from advisor.figure import Spread
from advisor.reckoning.center_fit import DriveFit, TailFit, TailOption
from advisor.reckoning.drives import Drive, Grip
from advisor.reckoning.ends import TailCenter
from advisor.reckoning.thrust import Thrust
from advisor.reckoning.thrust_need import Need
from advisor.rulebook import Effect
from tests.advice.bench import judged, kept_advice, limit, ruling, written

SPURS = "SPINDLE; hold.method=spur-drive; hold.kit=[spur-drive]"
FULL = Need(force=100.0, needed=200.0, to_set=330.0, depth=3.0, depth_fits=True)
LIGHT = Need(force=60.0, needed=120.0, to_set=200.0, depth=2.0, depth_fits=True)
POINT = TailCenter(
    "live-point", half_angle=30.0, cup_diameter=12.0, lip=1.25, rating=2000.0, rating_given=False, dead=False
)
DRIVE = Drive(
    kind="four",
    teeth=4,
    outer=26.0,
    inner=10.0,
    face_angle=30.0,
    back_angle=35.0,
    tooth_height=None,
    share=0.9,
    mean_radius=9.0,
    bearing_length=8.0,
    effective=Grip(0.2, 0.35, 0.5, 0.75),
    given=False,
    assumed=(),
)
RATING, SPLITTING = limit("center-rating", 2000.0), limit("splitting", 900.0)
WINDOW = Thrust(
    method="spur-drive",
    between=True,
    drive=DRIVE,
    center=POINT,
    limits=(RATING, SPLITTING),
    allowed=SPLITTING,
    runner_up=RATING,
    full=FULL,
    light=FULL,
    light_share=1.0,
    pressed_only=1500.0,
    slip=(7.0, 18.0),
    seated="advised",
    press_force=4000.0,
    press_allowed=1800.0,
    depth_most=5.0,
    handwheel=0.8,
    taper_torque=12.0,
    torque=8.0,
    critical=None,
    gaps=(),
    rpm=600.0,
    bound_by="thrust",
    wheel=None,
    handwheel_most=2.0,
)


def advice(window: Thrust | None = WINDOW, word: str = "open", text: str = SPURS) -> Advice:
    spoken = (ruling(Effect.NOTE, "N.", window=word),)
    return kept_advice(text)._replace(thrust=window, rulings=spoken)


def part(window: Thrust = WINDOW, word: str = "open", text: str = SPURS) -> dict[str, Any]:
    return thrust_part(advice(window, word, text), ["a cup: open"])


def test_the_window_says_what_is_needed_what_is_allowed_and_what_to_set() -> None:
    assert part() == {
        "window": "open",
        "needed_n": 200.0,
        "allowed_n": 900.0,
        "set_n": 330.0,
        "governed_by": "splitting",
        "runner_up": "center-rating",
        "handwheel_nm": 0.8,
        "handwheel_most_nm": 2.0,
        "seat_depth_mm": 3.0,
        "pressed_only_n": 1500.0,
        "slip_nm": [7.0, 18.0],
        "taper_slips_nm": 12.0,
        "press_in_n": 4000.0,
        "press_in_allowed_n": 1800.0,
        "limits": [written("splitting", "n", 900.0), written("center-rating", "n", 2000.0)],  # the smallest first
        "would_change": ["a cup: open"],
    }


def test_an_empty_window_has_no_number_to_set() -> None:
    """Neither thrust nor torque nor depth: what is wanted and what is allowed are all there is."""
    found = part(WINDOW._replace(light=LIGHT, light_share=0.6, wheel=Spread(300.0, 500.0, 700.0)), "empty")
    assert found == {
        "window": "empty",
        "needed_n": 200.0,  # of the cut that was asked about
        "allowed_n": 900.0,
        "governed_by": "splitting",
        "runner_up": "center-rating",
        "pressed_only_n": 1500.0,
        "taper_slips_nm": 12.0,
        "handwheel_gives_n": [300.0, 700.0],
        "limits": [written("splitting", "n", 900.0), written("center-rating", "n", 2000.0)],
        "would_change": ["a cup: open"],
    }


def test_where_only_lighter_cuts_fit_the_numbers_are_those_of_the_lighter_cut_which_is_told() -> None:
    found = part(WINDOW._replace(light=LIGHT, light_share=0.6), "narrow")
    assert (found["window"], found["needed_n"], found["set_n"]) == ("narrow", 120.0, 200.0)
    assert (found["light_cuts_n"], found["seat_depth_mm"]) == (60.0, 2.0)
    assert "light_cuts_n" not in part()


def test_without_a_lighter_cut_the_whole_one_stands() -> None:
    assert part(WINDOW._replace(light=None))["set_n"] == 330.0


def test_a_drive_that_cannot_turn_it_needs_no_number_rather_than_an_endless_one() -> None:
    endless = FULL._replace(needed=math.inf, to_set=math.inf)
    assert "needed_n" not in part(WINDOW._replace(full=endless, light=None), "empty")


def test_the_wheel_is_never_wound_past_the_torque_that_stays_under_every_limit() -> None:
    found = part(WINDOW._replace(handwheel=2.6))
    assert (found["handwheel_nm"], found["handwheel_most_nm"]) == (2.0, 2.0)


@pytest.mark.parametrize("unknown", [WINDOW._replace(handwheel=None), WINDOW._replace(handwheel_most=None)])
def test_without_the_travel_of_the_screw_no_torque_is_told(unknown: Thrust) -> None:
    found = part(unknown)
    assert not [key for key in found if key.startswith("handwheel")]


def test_the_pull_at_the_rim_of_the_wheel_is_torque_over_its_radius() -> None:
    """0.8 N·m at a wheel of 100 mm across: 0.8 / 0.050 = 16 N (statics)."""
    assert part(text=f"{SPURS}; machine.handwheel_diameter=100mm")["handwheel_rim_n"] == pytest.approx(16.0)
    assert "handwheel_rim_n" not in part()


def test_what_the_stated_torque_gives_is_told_from_a_stiff_to_an_easy_screw() -> None:
    assert part(WINDOW._replace(wheel=Spread(300.0, 500.0, 700.0)))["handwheel_gives_n"] == [300.0, 700.0]


def test_what_is_not_known_of_the_teeth_is_left_out() -> None:
    bare = WINDOW._replace(
        runner_up=None, pressed_only=None, slip=None, press_force=None, press_allowed=None, taper_torque=None
    )
    absent = {"runner_up", "pressed_only_n", "slip_nm", "press_in_n", "press_in_allowed_n", "taper_slips_nm"}
    assert not absent & set(part(bare))


def test_without_a_tailstock_the_window_is_not_used() -> None:
    nobody = {"window": "not-used", "limits": [], "would_change": []}
    assert thrust_part(advice(None), ["a cup: open"]) == nobody
    assert centers_part(advice(None)) == {}


FIT = TailFit(
    near=40.0,
    width=5.0,
    reach=3.0,
    opening=0.36,
    heat=None,
    options=(
        TailOption("live-cup", 900.0, "crushing", 320.0, 0.8),
        TailOption("live-pad", 1500.0, "center-rating", 330.0, 1.0),
    ),
)
SEAT = DriveFit(near=40.0, reach=6.0, least=32.0, small=None, small_carries=None)


def centers(
    monkeypatch: pytest.MonkeyPatch,
    window: Thrust = WINDOW,
    fit: TailFit = FIT,
    seat: DriveFit | None = SEAT,
    holds: Judgement | None = None,
) -> dict[str, Any]:
    found = advice(window)
    if holds is not None:
        found = found._replace(judgement=holds)

    def tail_fit(*asked: object) -> TailFit:
        assert asked == (found.situation, window)
        return fit

    def drive_fit(*asked: object) -> DriveFit | None:
        assert asked == (found.situation, window)
        return seat

    monkeypatch.setattr(center_answer, "tail_fit", tail_fit)
    monkeypatch.setattr(center_answer, "drive_fit", drive_fit)
    return centers_part(found)


def test_a_point_is_told_by_its_whole_angle_and_how_far_it_stands_in_the_end(monkeypatch: pytest.MonkeyPatch) -> None:
    assert centers(monkeypatch)["tail"] == {
        "kind": "live-point",
        "point_angle_deg": 60.0,
        "opening_share": 0.36,
        "width_mm": 5.0,
        "finished_near_mm": 40.0,
    }


def test_a_cup_is_told_by_its_ring_and_lip_and_a_dead_one_by_its_heat(monkeypatch: pytest.MonkeyPatch) -> None:
    cup = WINDOW._replace(center=POINT._replace(kind="dead-cup", dead=True))
    assert centers(monkeypatch, cup, FIT._replace(heat=4.0))["tail"] == {
        "kind": "dead-cup",
        "cup_diameter_mm": 12.0,
        "lip_height_mm": 1.25,
        "opening_share": 0.36,
        "width_mm": 5.0,
        "finished_near_mm": 40.0,
        "heat_w": 4.0,
    }


@pytest.mark.parametrize(
    ("kind", "told"),
    [
        ("live-cone", {"point_angle_deg"}),
        ("dead-point", {"point_angle_deg"}),
        ("live-cup", {"cup_diameter_mm", "lip_height_mm"}),
        ("live-pad", set()),
    ],
)
def test_each_kind_of_center_has_its_own_sizes(monkeypatch: pytest.MonkeyPatch, kind: str, told: set[str]) -> None:
    found = centers(monkeypatch, WINDOW._replace(center=POINT._replace(kind=kind)))["tail"]
    assert set(found) == {"kind", "opening_share", "width_mm", "finished_near_mm"} | told


def test_other_centers_in_its_place_come_with_the_one_that_allows_most_first(monkeypatch: pytest.MonkeyPatch) -> None:
    assert centers(monkeypatch)["tail_choice"] == [
        {"kind": "live-pad", "allowed_n": 1500.0, "governed_by": "center-rating", "share_of_the_cut": 1.0},
        {"kind": "live-cup", "allowed_n": 900.0, "governed_by": "crushing", "share_of_the_cut": 0.8},
    ]


def test_the_drive_is_told_by_its_teeth_and_how_thin_the_tool_may_turn_at_it(monkeypatch: pytest.MonkeyPatch) -> None:
    drive = {
        "kind": "four",
        "teeth": 4,
        "outer_diameter_mm": 26.0,
        "inner_diameter_mm": 10.0,
        "face_angle_deg": 30.0,
        "back_angle_deg": 35.0,
        "seating": "advised",
    }
    fitted = {**drive, "turn_no_thinner_than_mm": 32.0, "within_mm_of_the_end": 6.0, "finished_near_mm": 40.0}
    assert centers(monkeypatch)["drive"] == fitted
    assert centers(monkeypatch, seat=None)["drive"] == drive
    small = SEAT._replace(small=20.0, small_carries=False)
    found = centers(monkeypatch, seat=small)["drive"]
    assert found == {**fitted, "smaller_drive_mm": 20.0, "smaller_drive_carries": False}


def test_what_nothing_drives_has_a_tail_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    found = centers(monkeypatch, WINDOW._replace(drive=None, between=False))
    assert set(found) == {"tail", "tail_choice"}
    assert set(centers(monkeypatch, WINDOW._replace(drive=None))) == {"tail", "tail_choice", "drive_choice"}


def test_drives_are_listed_in_their_order_with_the_first_word_on_each(monkeypatch: pytest.MonkeyPatch) -> None:
    silent, loud, more = (ruling(Effect.NOTE, text) for text in ("x", "It bites.", "It marks."))
    silent = silent._replace(rule=ruling(Effect.SUITS, "").rule)
    holds = (
        judged("toothed-ring-drive", "suits")._replace(rulings=(silent, loud, more)),
        judged("collet", "suits")._replace(rulings=(loud,)),
        judged("cup-drive", "refused"),
    )
    assert centers(monkeypatch, holds=Judgement(holds, (), (), ()))["drive_choice"] == [
        {"method": "toothed-ring-drive", "verdict": "suits", "why": "It bites."},
        {"method": "cup-drive", "verdict": "refused", "why": ""},
    ]
