"""Every named limit on speed stands in the answer where it applies, with grade, formula and source."""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.physics import jaws
from advisor.reckoning.jaw_speed import jaw_moment
from tests.rules.bench import advice
from tests.whole.answers import limit, of

TENON = "hold.method=jaws-on-tenon; hold.tenon.diameter=75mm"
WHERE = {
    "rim-speed": "BOWL",
    "walking": "BOWL",
    "burst": "BOWL",
    "operation": "BOWL",
    "hold": "BOWL; work.state=round; work.offset=6mm; cut.operation=hollowing; hold.method=faceplate-screws",
    "whirl": "NARROW",
    "rear-overhang": "ROD; hold.method=through-spindle; hold.rear_overhang=400mm",
    "crack": "BOWL; work.condition=[crack]; work.crack.across=60mm",
    "joint": "BOWL; work.form=segmented; work.state=round",
    "jaws-at-speed": f"BOWL; {TENON}",
    "device-mark": f"BOWL; {TENON}; hold.chuck.max_rpm=450",
    "material": "PLASTIC",
    "heat": "SPINDLE; hold.tail.kind=dead-point; work.state=round",
    "machine-maximum": "BOWL; machine.max_rpm=500",
}


def names(found: dict[str, Any]) -> set[str]:
    return {entry["name"] for entry in found["speed"]["limits"]}


@pytest.mark.parametrize("name", WHERE)
def test_the_limit_is_there_with_all_that_belongs_to_it(name: str) -> None:
    found = of(WHERE[name])
    entry = next(entry for entry in found["speed"]["limits"] if entry["name"] == name)
    assert math.isfinite(entry["rpm"])
    assert entry["rpm"] > 0
    assert entry["grade"] in ("calculated", "estimate", "rough-guide", "practice")
    assert all(entry[part] for part in ("formula", "source", "why"))
    assert found["speed"]["ceiling_rpm"] <= entry["rpm"]


@pytest.mark.parametrize("name", sorted(set(WHERE) - {"rim-speed", "walking", "burst", "operation"}))
def test_a_limit_that_does_not_apply_is_left_out(name: str) -> None:
    assert name not in names(of("DISC; hold.method=glue-block"))


def test_the_ceiling_is_the_smallest_and_says_which() -> None:
    for text in WHERE.values():
        speed = of(text)["speed"]
        if speed["ceiling_rpm"]:
            ordered = sorted(speed["limits"], key=lambda entry: entry["rpm"])
            assert speed["ceiling_rpm"] == ordered[0]["rpm"]
            assert speed["governed_by"] == ordered[0]["name"]
            assert speed["runner_up"] == ordered[1]["name"]
            assert 0 < speed["start_rpm"] <= speed["ceiling_rpm"]


def test_jaws_at_speed_by_the_relation_of_vdi_3106() -> None:
    """Of 3 kN of grip 1/1.5 is counted; a cut of one newton needs next to nothing of it."""
    text = f"BOWL; {TENON}; work.state=round; cut.operation=finishing; cut.force=1N; hold.chuck.grip=3kN"
    moment = jaw_moment("jaws-on-tenon", 75.0)
    assert moment is not None
    found = limit(of(text), "speed", "jaws-at-speed")
    nothing_needed = jaws.chuck_speed(grip=3000, needed_grip=0, safety=1.5, jaw_moment=moment)
    assert found == pytest.approx(nothing_needed, rel=0.05)
    assert found < nothing_needed


def test_the_jaws_assumed_are_said() -> None:
    assert "mass of the jaws" in {entry["field"] for entry in of(f"BOWL; {TENON}")["assumed"]}


def test_walking_names_what_gives_way_first() -> None:
    tall = "BOWL; machine.base_width=400mm; machine.spindle_height=1200mm"
    squat = "BOWL; machine.base_width=1200mm; machine.spindle_height=900mm"
    for text, word in ((tall, "tips"), (squat, "slides")):
        entry = next(entry for entry in of(text)["speed"]["limits"] if entry["name"] == "walking")
        assert word in entry["why"]


def test_a_bolted_lathe_carries_fifteen_hundredths_of_its_weight() -> None:
    found = of("BOWL; work.mass=4kg; work.offset=5mm; machine.mass=196kg; machine.bolted_down=yes")
    force = 4 * 0.005 * (2 * math.pi * limit(found, "speed", "walking") / 60) ** 2
    assert force == pytest.approx(0.15 * 200 * 9.80665)


PROFILE = "work.profile=[[0mm, 25mm], [250mm, 25mm], [250mm, 12mm], [350mm, 12mm], [350mm, 25mm], [600mm, 25mm]]"


def test_a_finished_profile_counts_as_it_is_and_an_unfinished_one_at_its_worst() -> None:
    uniform = limit(of("NARROW; work.state=finished"), "speed", "whirl")
    profiled = limit(of(f"NARROW; {PROFILE}; work.state=finished"), "speed", "whirl")
    on_the_way = limit(of(f"NARROW; {PROFILE}"), "speed", "whirl")
    assert on_the_way < profiled < uniform


def test_a_neck_to_come_does_not_make_the_whole_bar_thin() -> None:
    """A bar of 2 in with a neck of half an inch to be cut still runs at its own speeds (common practice, no source)."""
    neck = "work.profile=[0in:2in, 8in:1in, 10in:0.5in, 12in:1in, 20in:2in]"
    bar = "NARROW; work.diameter=2in; work.length=20in"
    on_the_way, thin_all_along = (
        limit(of(f"{bar}; {words}"), "speed", "whirl") for words in (neck, "work.thinnest_diameter=0.5in")
    )
    assert thin_all_along < 500 < 1000 < on_the_way
    drawn_in_part = limit(
        of(f"{bar}; work.profile=[2in:2in, 8in:1in, 10in:0.5in, 12in:1in, 18in:2in]"), "speed", "whirl"
    )
    assert drawn_in_part == pytest.approx(on_the_way, rel=0.2)


@pytest.mark.parametrize("place", [150, 300, 450])
def test_a_steady_lifts_the_whip_most_in_the_middle(place: int) -> None:
    bare = limit(of("NARROW"), "speed", "whirl")
    here = limit(of(f"NARROW; hold.steady.position={place}mm"), "speed", "whirl")
    middle = limit(of("NARROW; hold.steady.position=300mm"), "speed", "whirl")
    assert bare < here <= middle
    assert middle == pytest.approx(4 * bare, rel=0.15)


def test_fibers_that_lean_make_a_bar_whip_sooner() -> None:
    straight, leaning, diagonal = (
        limit(of(f"NARROW; {words}"), "speed", "whirl")
        for words in ("work.grain=along", "work.grain_slope=1:8", "work.grain=diagonal")
    )
    assert diagonal < leaning < straight


def test_the_band_of_the_whip_begins_at_the_limit() -> None:
    speed = of("NARROW")["speed"]
    low, high = speed["whip_rpm"]
    assert low == limit({"speed": speed}, "speed", "whirl")
    assert high == pytest.approx(low / 0.6 * 1.3)
    bowed = of("NARROW; work.condition=[bowed]")["speed"]["whip_rpm"]
    assert bowed[1] == pytest.approx(bowed[0] / 0.5 * 1.3)


def test_drilling_and_sanding_have_speeds_of_their_own() -> None:
    drilling = of("HOLLOW; cut.operation=drilling; cut.drill_diameter=50mm; hold.method=jaws-on-tenon")
    assert limit(drilling, "speed", "operation") == pytest.approx(300)
    sanding = of("BOWL; work.state=finished; cut.operation=sanding")["speed"]
    assert limit({"speed": sanding}, "speed", "operation") == pytest.approx(450)
    assert sanding["start_rpm"] <= 200.001


def test_a_dial_that_can_run_away_is_named_with_the_way_to_prevent_it() -> None:
    found = of("BOWL; machine.max_rpm=3000")
    assert "runaway-dial" in found["fired"]
    assert any("cannot pass 900 rpm" in entry["text"] for entry in found["cautions"])
    assert "runaway-dial" not in of("BOWL; machine.max_rpm=1300")["fired"]


def test_a_lathe_that_cannot_go_slow_enough_says_what_to_do_instead() -> None:
    found = of("BOWL; work.offset=20mm; machine.min_rpm=500; machine.mass=60kg", changes=True)
    assert found["verdict"] == "do-not-mount"
    reason = next(entry for entry in found["reasons"] if entry["rule"] == "cannot-go-slow-enough")
    assert all(word in reason["do"] for word in ("rounder", "centers", "pulley", "another machine"))
    assert found["speed"]["ceiling_rpm"] == 0


# Inch times rpm of trade practice for a finished piece 10 in across (common practice, no source).
BANDS = {
    "work.condition=[sound]": 9000,
    "work.condition=[crack]": 3000,
    "work.condition=[spalted]": 3000,
    "work.condition=[bark-inclusion]": 3000,
    "work.condition=[live-edge]": 4000,
    "work.condition=[void]": 4000,
    "work.condition=[burl]": 5400,
    "work.condition=[crotch]": 6300,
    "work.form=segmented": 5400,
    "work.moisture=green": 7200,
    "work.purpose=hollow-form": 7200,
    "work.state=round": 6000,
    "work.state=not-round": 6000,
    "work.state=not-round; machine.tailstock=no": 4000,
    "work.state=not-round; work.form=irregular": 4000,
}


@pytest.mark.parametrize("words", BANDS)
def test_the_band_of_each_state_and_condition(words: str) -> None:
    assert limit(of(f"BOWL; work.state=finished; {words}"), "speed", "rim-speed") == pytest.approx(BANDS[words] / 10)


@pytest.mark.parametrize("name", WHERE)
def test_hold_in_use_is_the_one_meant(name: str) -> None:
    wanted = next((part.partition("=")[2] for part in WHERE[name].split("; ") if part.startswith("hold.method")), None)
    assert wanted in (None, advice(WHERE[name]).used.method)


def test_a_bar_that_folds_up_is_not_given_a_deflection() -> None:
    texts = of(
        "NARROW; work.diameter=8mm; work.length=1200mm; hold.drive.inner_diameter=3mm; hold.drive.outer_diameter=7mm"
    )["checks"]
    assert any("springs more than 20 mm" in text for text in texts)
