"""Everyday work must come out as everyday work: what every careful turner does (common practice, no source)."""

from typing import Any

import pytest

from tests.rules.bench import advice
from tests.whole.answers import of

ACCEPTED = ("suits", "with-care")
GOING = ("go", "go-with-care")
ORDINARY_HOLDS = {
    "10 in bowl on a 75 mm tenon, tail up": "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
    "the same, hollowing": "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; work.state=round; "
    "cut.operation=hollowing",
    "four No. 12 screws in a green bowl blank": "BOWL; work.moisture=green; hold.method=faceplate-screws; "
    "hold.screws.count=4; hold.screws.diameter=5.5mm",
    "2 in spindle between centers": "SPINDLE; work.diameter=2in; hold.method=spur-drive",
    "6 in blank on a screw chuck": "BOWL; work.diameter=6in; work.length=3in; hold.method=screw-chuck",
    "pen on its mandrel": "PEN",
    "6 in bowl on a 75 mm glue block": "BOWL; work.diameter=6in; work.length=3in; work.state=round; "
    "hold.method=glue-block; hold.glue.kind=pva; hold.glue.diameter=75mm",
    "12 in platter in a recess, finishing cuts": "PLATTER; work.state=round",
}


@pytest.mark.parametrize("situation", ORDINARY_HOLDS.values(), ids=ORDINARY_HOLDS)
def test_ordinary_holds_are_accepted(situation: str) -> None:
    found = of(situation)
    assert found["holding"][0]["verdict"] in ACCEPTED
    assert found["verdict"] in GOING


def ratios(text: str) -> tuple[float, float]:
    figures = advice(text).used.figures
    assert figures.low is not None
    assert figures.typical is not None
    return figures.low, figures.typical / figures.divisor


def test_the_worked_tenon_roughing_and_hollowing() -> None:
    tenon = "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm"
    assert ratios(tenon) == pytest.approx((0.8, 1.9), rel=0.03)
    hollowing = ratios(f"{tenon}; work.state=round; cut.operation=hollowing")
    assert hollowing == pytest.approx((0.8, 1.1), rel=0.05)


def test_a_sound_maple_spindle_has_an_open_window_of_a_few_hundred_newtons() -> None:
    found = of("SPINDLE")
    assert found["thrust"]["window"] == "open"
    assert 150 <= found["thrust"]["set_n"] <= 900
    assert 2 <= found["thrust"]["seat_depth_mm"] <= 6
    assert found["verdict"] in GOING


def test_a_sound_round_spindle_is_simply_go() -> None:
    found = of("SPINDLE; work.state=round")
    assert found["verdict"] == "go"
    assert len(found["cautions"]) <= 5


def test_a_sawn_sound_disc_with_the_tail_up_goes() -> None:
    found = of("BOWL")
    assert found["verdict"] in GOING
    assert not any(entry["verdict"] == "refused" for entry in found["holding"][:3])


def bowl_speed(text: str) -> dict[str, Any]:
    lathe = "machine.mass=120kg; machine.base_width=500mm; machine.spindle_height=1100mm; machine.stand=ordinary"
    speed: dict[str, Any] = of(f"{text}; {lathe}")["speed"]
    return speed


def test_a_ten_inch_bowl_blank_starts_where_everybody_starts_it() -> None:
    speed = bowl_speed("BOWL")
    assert 200 <= speed["start_rpm"] <= 800
    assert speed["ceiling_rpm"] <= 700


def test_the_same_blank_finished_runs_faster_and_never_past_the_band() -> None:
    heavy = of("BOWL; work.state=finished; machine.mass=600kg")["speed"]
    assert 600 <= heavy["ceiling_rpm"] <= 900.001


def test_twelve_inches_not_round_starts_low() -> None:
    assert bowl_speed("BOWL; work.diameter=12in")["start_rpm"] <= 500


def test_a_half_log_is_far_slower_than_a_disc() -> None:
    disc = bowl_speed("BOWL; work.grain=along")["ceiling_rpm"]
    half = bowl_speed("BOWL; work.grain=along; work.form=half-log; work.axis_from_flat=20mm")["ceiling_rpm"]
    assert half < 0.6 * disc
