"""What would lift the ceiling: as little of it as does, told with what comes of it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from advisor.advice import changes
from advisor.advice.changes import (
    ceiling_of,
    rungs,
    speed_changes,
)
from advisor.reckoning.holds import hold_speed
from advisor.reckoning.speed import first_speed
from advisor.situation import Situation
from tests.advice.bench import advice_of, kept_advice, limit, situation_of


@pytest.mark.parametrize(
    "text",
    [
        "NARROW; cut.wanted_rpm=3500; hold.kit=[spur-drive]",  # whirls under its thrust
        "BOWL; hold.kit=[faceplate-screws]",
        "BOWL; hold.kit=[jaws-on-tenon]; hold.tail.kind=none; work.state=round; cut.operation=hollowing",
        "BOWL; hold.kit=[screw-chuck]; machine.tailstock=no",
        "SPINDLE; hold.kit=[spur-drive]; hold.tail.kind=dead-point; work.state=round; machine.mass=900kg",
    ],
)
def test_the_ceiling_tried_is_that_of_the_whole_advice(text: str) -> None:
    advice = advice_of(text)
    assert ceiling_of(advice.situation, advice.used.method) == (advice.speed.ceiling.value, advice.speed.ceiling.name)


@pytest.mark.parametrize(
    ("text", "method", "up", "pressed"),
    [
        ("SPINDLE; work.diameter=20mm", "driving-dog", True, True),
        ("SPINDLE; hold.tail.kind=none", "spur-drive", False, True),  # between centers it cannot be left away
        ("BOWL", "four-jaw-independent", True, True),
        ("BOWL; hold.tail.kind=none", "four-jaw-independent", False, False),
        ("BOWL; machine.tailstock=no", "four-jaw-independent", False, False),
        ("SPINDLE; machine.tailstock=no", "spur-drive", False, False),
    ],
)
def test_a_ceiling_is_tried_with_the_thrust_at_the_first_speed_and_with_what_the_hold_stands(
    monkeypatch: pytest.MonkeyPatch, text: str, method: str, up: bool, pressed: bool
) -> None:
    situation, base = situation_of(text), kept_advice(HEAVY)
    rate = base.speed._replace(ceiling=limit("hold", 321.0))

    def thrust_window(*asked: object) -> object:
        assert asked == (situation, method, first_speed(situation, method, up))
        return base.thrust

    def speed(*asked: object) -> object:
        assert asked == (situation, method, up, hold_speed(situation, method), base.thrust if pressed else None)
        return rate

    monkeypatch.setattr(changes, "thrust_window", thrust_window)
    monkeypatch.setattr(changes, "speed", speed)
    assert ceiling_of(situation, method) == (321.0, "hold")
    if not pressed:
        assert hold_speed(situation, method) is not None or method == "spur-drive"


def test_the_ladder_begins_with_the_ceiling_of_today_and_knows_the_hold_in_use() -> None:
    advice = advice_of("BOWL; hold.kit=[clamped-faceplate]; machine.mass=900kg")
    found = rungs(advice)
    assert (found[0].ceiling, found[0].governed_by) == (advice.speed.ceiling.value, advice.speed.ceiling.name)
    assert {rung.governed_by for rung in found[1:]} == {"device-mark"}  # clamps on a plate stop at 400 rpm
    assert found[-1].state == "finished"


HEAVY = "BOWL; work.mass=5kg; work.offset=10mm; machine.mass=100kg; hold.kit=[faceplate-screws]"
Law = Callable[[Situation], float]


def lifted(
    monkeypatch: pytest.MonkeyPatch,
    law: Law,
    text: str = HEAVY,
    name: str = "walking",
    verdict: str = "go",
    slowest: float | None = None,
) -> list[str]:
    """What is told where the ceiling follows one plain law of the situation."""
    base = kept_advice(text)

    def ceiling(situation: Situation, method: str) -> tuple[float, str]:
        assert method == base.used.method
        return law(situation), name

    monkeypatch.setattr(changes, "ceiling_of", ceiling)
    rate = base.speed._replace(ceiling=limit(name, law(base.situation)), minimum=slowest)
    return speed_changes(base._replace(speed=rate, verdict=verdict))


def by_offset(situation: Situation) -> float:
    return 5000.0 / max(situation.body.offset, 0.1)


def test_the_center_of_mass_is_asked_no_nearer_than_it_must_be_and_a_weight_no_heavier(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """10 mm off at 5 kg is balanced by 5·10/101.6 = 492 g at four tenths of 254 mm; half of it does here.

    The fixing stands five times 0.25 kg · 0.1016 m · (2π·1016/60)² = 287 N.
    """
    assert lifted(monkeypatch, by_offset, f"{HEAVY}; cut.wanted_rpm=1000") == [
        "center of mass within 5 mm (0.2 in) of the axis (move the centers, saw it rounder): ceiling 1000 rpm",
        "a counterweight of 250 g (8.8 oz) at 102 mm (4 in) radius, bolted through, opposite the heavy side, "
        "its fixing good for 1400 N (320 lbf): ceiling 1000 rpm",
    ]


def test_a_weight_adds_its_own_mass(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return by_offset(situation) if situation.body.mass < 5.492 else 0.0

    assert len(lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1000")) == 1  # all 492.1 g are too much of it
    assert len(lifted(monkeypatch, by_offset, f"{HEAVY}; cut.wanted_rpm=1000")) == 2


def test_less_than_a_millimeter_is_told_too(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return 1000.0 if situation.body.offset <= 0.6 else 500.0

    told = lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1000")[0]
    assert told.startswith("center of mass within 0.59 mm ")


def test_what_must_be_on_the_axis_is_told_so(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return 1000.0 if situation.body.offset < 0.001 else 500.0

    told = lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1000")
    assert told[0] == "center of mass on the axis (move the centers, saw it rounder): ceiling 1000 rpm"
    heaviest = "a counterweight of 492 g (17 oz) at 102 mm (4 in) radius"  # what balances it
    assert told[1].startswith(heaviest)


def test_a_piece_that_is_not_mounted_is_told_where_its_centers_belong(monkeypatch: pytest.MonkeyPatch) -> None:
    text = f"{HEAVY}; cut.wanted_rpm=1000"
    assert kept_advice(text).situation.body.offset_from == kept_advice(HEAVY).situation.body.offset_from
    side = "toward the side that falls to the bottom when the spindle turns free"
    told = lifted(monkeypatch, by_offset, text, verdict="do-not-mount")[0]
    moves = f"move the centers at both ends 10.0 mm {side}: about 0.5 mm stays"
    assert told == f"center of mass within 5 mm (0.2 in) of the axis ({moves}): ceiling 1000 rpm"


def test_one_weight_is_offered_only_where_both_ends_lean_the_same_way(monkeypatch: pytest.MonkeyPatch) -> None:
    """Less than three quarters of the larger offset in common: the rest is a couple that no single weight cures."""
    base = kept_advice(f"{HEAVY}; cut.wanted_rpm=1000")
    monkeypatch.setattr(changes, "ceiling_of", lambda situation, _: (by_offset(situation), "walking"))
    rate = base.speed._replace(ceiling=limit("walking", 500.0), minimum=None)
    for static, told in ((7.4, 1), (7.6, 2), (None, 2)):
        body = base.situation.body._replace(static=static)
        assert len(speed_changes(base._replace(speed=rate, situation=base.situation._replace(body=body)))) == told


def test_a_lathe_is_asked_as_heavy_as_it_must_be_to_two_figures(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return 5.0 * situation.lathe.mass

    told = lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1200")
    assert told == ["a lathe of 250 kg (560 lb), or ballast to that: ceiling 1200 rpm"]  # 240 kg and a little


def test_no_lathe_is_asked_beyond_two_tonnes(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return 5.0 * situation.lathe.mass

    assert lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=10000") == [
        "a lathe of 2000 kg (4500 lb), or ballast to that: ceiling 10000 rpm"
    ]
    (none,) = lifted(monkeypatch, law, f"{HEAVY}; machine.mass=2000kg; cut.wanted_rpm=11000")
    assert none.startswith("no single change")


def test_bolting_it_down_is_offered_where_it_is_not(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        return 1000.0 if situation.lathe.bolted or situation.lathe.mass > 1999 else 500.0

    told = "the lathe bolted to the floor: ceiling 1000 rpm"
    assert lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1000")[1] == told
    bolted = lifted(monkeypatch, lambda _: 500.0, f"{HEAVY}; machine.bolted_down=yes; cut.wanted_rpm=1000")
    assert bolted == ["no single change lifts the ceiling to 1000 rpm: another machine, another piece or slower"]


@pytest.mark.parametrize(
    ("law", "told"),
    [
        (lambda body: 127000.0 / body.diameter, "140 mm (5.5 in)"),  # 141 mm would do
        (lambda body: 127000.0 / body.end_diameter, "140 mm (5.5 in)"),
        (lambda body: 127000.0 / body.thinnest, "140 mm (5.5 in)"),
        (lambda body: 2500.0 / body.mass, "180 mm (7.1 in)"),  # 254 mm · √(500/900) = 189 mm
    ],
)
def test_a_smaller_piece_is_smaller_in_every_way(
    monkeypatch: pytest.MonkeyPatch, law: Callable[[Any], float], told: str
) -> None:
    for state, verb in (("not-round", "sawn"), ("round", "turned")):
        text = f"{HEAVY}; work.state={state}; cut.wanted_rpm=900"
        (found,) = lifted(monkeypatch, lambda situation: law(situation.body), text)
        assert found.startswith(f"{verb} down to {told} across: ceiling 9")


def test_a_piece_is_not_made_wider_by_sawing_it_down(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        body = situation.body
        smallest = min(body.end_diameter, body.thinnest)
        return 1000.0 if smallest <= 50.0 and body.diameter < 128.0 else 500.0

    base = kept_advice(f"{HEAVY}; cut.wanted_rpm=1000")
    monkeypatch.setattr(changes, "ceiling_of", lambda situation, _: (law(situation), "walking"))
    body = base.situation.body._replace(end_diameter=50.0, thinnest=40.0)
    rate = base.speed._replace(ceiling=limit("walking", 500.0), minimum=None)
    told = speed_changes(base._replace(speed=rate, situation=base.situation._replace(body=body)))
    assert told == ["sawn down to 127 mm (5 in) across: ceiling 1000 rpm"]  # and no smaller than half


LONG = "SPINDLE; work.length=13in; hold.kit=[spur-drive]; machine.bolted_down=yes; machine.mass=2000kg"


def test_a_steady_is_offered_to_a_bar_longer_than_four_diameters(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(situation: Situation) -> float:
        steady = situation.case.hold.steady
        return 1000.0 if steady is not None and steady.position == 13 * 25.4 / 2 else 500.0

    assert lifted(monkeypatch, law, f"{LONG}; cut.wanted_rpm=1000") == ["a steady in the middle: ceiling 1000 rpm"]
    for change in ("work.length=12in", "hold.steady.position=50mm"):
        (none,) = lifted(monkeypatch, lambda _: 500.0, f"{LONG}; cut.wanted_rpm=1000; {change}")
        assert none.startswith("no single change lifts the ceiling to 1000 rpm")
        (smaller,) = changes._piece_trials(kept_advice(f"{LONG}; cut.wanted_rpm=1000; {change}"))
        assert smaller.another


def test_a_wish_that_no_change_fulfills_is_told_with_the_one_that_goes_furthest(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def law(situation: Situation) -> float:
        return 900.0 if situation.lathe.bolted else 700.0 if situation.lathe.mass > 1000 else 500.0

    none = "no single change lifts the ceiling to 1000 rpm"
    furthest = "the furthest is 900 rpm with the lathe bolted to the floor"
    text = f"{HEAVY}; cut.wanted_rpm=1000"
    assert lifted(monkeypatch, law, text) == [f"{none}; {furthest}: another machine, another piece or slower"]
    assert lifted(monkeypatch, lambda _: 500.0, text) == [f"{none}: another machine, another piece or slower"]


def test_a_change_that_lifts_by_less_than_a_tenth_is_not_the_furthest_nor_is_half_a_piece(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def law(situation: Situation) -> float:
        return 549.0 if situation.lathe.bolted else 800.0 if situation.body.diameter < 200 else 500.0

    (told,) = lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=1000")
    assert "furthest" not in told


@pytest.mark.parametrize(
    ("slowest", "wanted", "told"),
    [
        (300.0, None, []),  # it goes as slow as it must
        (650.0, None, ["the lathe bolted to the floor: ceiling 800 rpm"]),
        (650.0, 900.0, ["to 900 rpm", "or slower"]),  # what is wanted where that is more
        (650.0, 600.0, ["the lathe bolted to the floor: ceiling 800 rpm"]),
        (850.0, None, ["to 850 rpm", "or a lower pulley"]),
        (None, 500.0, []),  # it may run as fast already
        (None, 400.0, []),
    ],
)
def test_a_lathe_that_cannot_go_as_slow_as_the_ceiling_wants_its_own_slowest_speed(
    monkeypatch: pytest.MonkeyPatch, slowest: float | None, wanted: float | None, told: list[str]
) -> None:
    wish = "" if wanted is None else f"; cut.wanted_rpm={wanted:.0f}"

    def law(situation: Situation) -> float:
        return 800.0 if situation.lathe.bolted else 500.0

    found = lifted(monkeypatch, law, f"{HEAVY}{wish}", "rim-speed", slowest=slowest)
    assert len(found) == min(len(told), 1)
    assert all(words in found[0] for words in told)


@pytest.mark.parametrize("name", ["rim-speed", "operation", "material", "device-mark", "machine-maximum"])
def test_nothing_is_to_be_changed_where_the_trade_s_own_speed_decides_and_nobody_wants_more(
    monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    def law(situation: Situation) -> float:
        return 700.0 if situation.lathe.bolted else 500.0

    assert lifted(monkeypatch, law, HEAVY, name) == []
    assert lifted(monkeypatch, law, f"{HEAVY}; cut.wanted_rpm=600", name) != []
    assert lifted(monkeypatch, law, HEAVY, "walking") == ["the lathe bolted to the floor: ceiling 700 rpm"]


def test_with_no_wish_a_change_is_worth_telling_from_a_fifth_more_on(monkeypatch: pytest.MonkeyPatch) -> None:
    """Twice a tenth: 1.21 of what it is."""
    for rise, told in ((604.0, 0), (606.0, 1)):
        found = lifted(monkeypatch, lambda situation, rise=rise: rise if situation.lathe.bolted else 500.0)  # type: ignore[misc]  # binds the loop's value
        assert len(found) == told
