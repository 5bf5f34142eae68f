"""Three worked situations, calculated by hand from the published strengths, through the whole program."""

import pytest

from tests.whole.answers import answer, limit, of

DISC = [
    "work.material=sugar maple",
    "work.form=disc",
    "work.state=not-round",
    "work.grain=across",
    "work.diameter=300mm",
    "work.length=100mm",
    "work.mass=4.98kg",
    "work.offset=8mm",
    "machine.mass=110kg",
    "machine.base_width=500mm",
    "machine.spindle_height=1100mm",
    "machine.stand=ordinary",
    "machine.bolted_down=no",
]


def close(value: float) -> object:
    return pytest.approx(value, rel=0.02)


def test_slender_beech_between_teeth_and_point() -> None:
    thrust = of("NARROW")["thrust"]
    assert thrust["window"] == "narrow"
    assert thrust["needed_n"] == close(306)
    assert thrust["set_n"] == close(510)
    assert thrust["allowed_n"] == close(668)
    assert thrust["governed_by"] == "splitting"
    assert limit({"thrust": thrust}, "thrust", "buckling") == close(1326)


def test_a_cup_opens_the_narrow_window() -> None:
    thrust = of("NARROW", changes=True)["thrust"]
    assert any("live cup" in change for change in thrust["would_change"])
    assert of("NARROW; hold.tail.kind=live-cup")["thrust"]["window"] == "open"


def test_thin_beech_has_no_safe_thrust() -> None:
    found = of("THIN", changes=True)
    thrust = found["thrust"]
    assert thrust["window"] == "empty"
    assert "set_n" not in thrust
    assert "handwheel_nm" not in thrust
    assert thrust["needed_n"] == close(184)
    assert thrust["allowed_n"] == close(136)
    assert limit(found, "thrust", "splitting") == close(154)
    assert found["verdict"] == "ask-first"
    assert thrust["would_change"]


def test_heavy_disc_on_a_light_lathe_walks_first() -> None:
    speed = answer(DISC)["speed"]
    assert speed["ceiling_rpm"] == close(309)
    assert speed["governed_by"] == "walking"
    assert speed["runner_up"] == "rim-speed"
    assert limit({"speed": speed}, "speed", "rim-speed") == close(508)
    assert limit({"speed": speed}, "speed", "burst") > 1000


def test_inch_and_metric_of_the_same_disc_agree() -> None:
    other_units = {
        "work.diameter=300mm": "work.diameter=11.81102362204724in",
        "work.length=100mm": "work.length=3.937007874015748in",
        "work.mass=4.98kg": "work.mass=10.979020657lb",
        "work.offset=8mm": "work.offset=0.31496062992126in",
    }
    inch = [other_units.get(word, word) for word in DISC]
    metric, other = answer(DISC)["speed"], answer(inch)["speed"]
    assert other["ceiling_rpm"] == pytest.approx(metric["ceiling_rpm"], rel=1e-6)
    assert other["start_rpm"] == pytest.approx(metric["start_rpm"], rel=1e-6)
