"""What comes first, in pairs: common practice, no source."""

import pytest

from tests.rules.bench import advice

ROD = "ROD; hold.kit=[three-jaw"
# (situation, first there, what changes, first then)
FIRSTS = [
    (f"{ROD}, collet]", "collet", "hold.kit=[three-jaw, split-bushing]", "split-bushing"),
    (f"{ROD}, split-bushing]", "split-bushing", "hold.kit=[three-jaw]", "three-jaw"),
    ("BOWL", "screw-chuck", "work.moisture=green", "faceplate-screws"),
    ("SPINDLE", "spur-drive", "work.diameter=24mm", "toothed-ring-drive"),
    ("STONE; person.respirator=P3", "glue-block", "hold.kit=[four-jaw-independent]", "four-jaw-independent"),
]


@pytest.mark.parametrize(("situation", "first", "change", "then"), FIRSTS)
def test_the_first_changes(situation: str, first: str, change: str, then: str) -> None:
    assert advice(situation).judgement.holds[0].method == first
    assert advice(f"{situation}; {change}").judgement.holds[0].method == then


TAIL = "tailstock-up"
REACHES = ["BOWL; hold.method=jaws-on-tenon", "DISC", "ROD", "BOWL; hold.method=faceplate-screws", "KNOB"]
CANNOT = ["machine.tailstock=no", "cut.operation=hollowing", "cut.operation=parting", "cut.operation=drilling"]


@pytest.mark.parametrize("situation", REACHES)
def test_the_tailstock_is_asked_for_where_it_reaches(situation: str) -> None:
    assert TAIL in {ruling.rule.name for ruling in advice(situation).rulings}


@pytest.mark.parametrize("change", CANNOT)
def test_and_not_where_it_cannot(change: str) -> None:
    found = advice(f"BOWL; work.state=round; hold.method=jaws-on-tenon; {change}")
    assert TAIL not in {ruling.rule.name for ruling in found.rulings}
    assert not found.used.figures.tail_up
