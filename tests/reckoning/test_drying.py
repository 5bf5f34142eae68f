"""What drying does to a piece: how oval, how large to leave it, and never the wrong way."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.figure import FigureInputError
from advisor.models import wood as woods
from advisor.models.wood_drying import shrinkages
from advisor.physics import drying as dries
from advisor.reckoning.drying import Drying, drying, grip_drying
from advisor.reckoning.proportions import proportions
from tests.reckoning.holds.hold_bench import BOWL, ROD, START_RPM, Section, job

FEW = settings(max_examples=15, deadline=None)
GREEN: Section = {**BOWL, "moisture": "green"}
SPECIES = ("sugar maple", "white oak", "black walnut", "ponderosa pine", "bubinga", "oak", "unknown")


def dried(work: Section) -> Drying:
    found = drying(job(work))
    assert found is not None
    return found


def test_a_maple_bowl_blank_dries_as_oval_as_the_book_says() -> None:
    """9.9 percent tangential from green to oven-dry, so 7.92 from 30 to 6 percent of moisture; along the grain none."""
    found = dried(GREEN)
    assert found.most == pytest.approx(9.9 * 24 / 30)
    assert found.least == 0
    assert found.oval == pytest.approx(254.0 * 0.0792)
    assert found.woods == "Sugar maple"
    assert not found.filled


def test_a_spindle_dries_oval_by_the_difference_of_both_directions() -> None:
    found = dried({**ROD, "moisture": "green"})
    assert (found.most, found.least) == pytest.approx((9.9 * 0.8, 4.8 * 0.8))
    assert found.oval == pytest.approx(40.0 * (9.9 - 4.8) * 0.8 / 100)
    assert found.wall is None


@pytest.mark.parametrize("work", [BOWL, {**BOWL, "material": "acrylic"}, {**BOWL, "moisture": 12.0}])
def test_dry_wood_and_what_is_no_wood_do_not_dry(work: Section) -> None:
    assert drying(job(work)) is None


@FEW
@given(st.sampled_from(SPECIES), st.floats(16, 120), st.floats(0, 60), st.sampled_from(["along", "across", "diagonal"]))
def test_wetter_is_never_less_oval(material: str, moisture: float, more: float, grain: str) -> None:
    work: Section = {**BOWL, "material": material, "grain": grain}
    drier, wetter = (dried({**work, "moisture": each}) for each in (moisture, moisture + more))
    assert wetter.oval >= drier.oval - 1e-9
    assert wetter.most >= drier.most - 1e-9
    assert (wetter.wall or 0) >= (drier.wall or 0) - 1e-9


@FEW
@given(st.sampled_from(SPECIES), st.floats(40, 400), st.floats(1, 2))
def test_larger_is_never_less_oval_nor_left_smaller(material: str, diameter: float, more: float) -> None:
    small, large = (dried({**GREEN, "material": material, "diameter": each}) for each in (diameter, diameter * more))
    assert large.oval >= small.oval
    assert (large.wall or 0) >= (small.wall or 0)


@pytest.mark.parametrize("grain", ["along", "across"])
@pytest.mark.parametrize("material", ["sugar maple", "black walnut", "white oak", "balsa", "ponderosa pine"])
def test_a_wood_nobody_knows_dries_at_least_as_oval_as_any_known_one(material: str, grain: str) -> None:
    known, unknown = (dried({**GREEN, "grain": grain, "material": each}) for each in (material, "unknown"))
    assert unknown.oval >= known.oval
    assert "the worst of" in unknown.woods


def test_a_name_for_several_woods_takes_the_worst_of_them() -> None:
    family = dried({**GREEN, "material": "oak"})
    each = [dried({**GREEN, "material": name}).oval for name in ("white oak", "northern red oak", "overcup oak")]
    assert family.oval >= max(each) - 1e-9


def test_a_wood_without_a_printed_shrinkage_is_marked_and_not_made_rounder_by_it() -> None:
    entry = shrinkages(woods.resolve("bubinga"))[0]
    assert entry.filled
    assert entry.radial <= entry.tangential / 2
    assert dried({**GREEN, "material": "bubinga"}).filled


def test_walls_follow_practice_or_the_oval_whichever_is_more() -> None:
    calm, lively = (dried({**GREEN, "material": name, "diameter": 300.0}) for name in ("mahogany, true", "beech"))
    for found in (calm, lively):
        assert found.wall == pytest.approx(max(30.0, found.wall_of_oval or 0))
    given_wall = dried({**GREEN, "wall": 25.0})
    assert given_wall.finished_wall == 25.0
    assert (given_wall.wall_of_oval or 0) > (dried(GREEN).wall_of_oval or 0)


def test_the_tenon_left_for_truing_holds_the_finished_one_when_dry() -> None:
    situation = job(GREEN)
    found = drying(situation)
    assert found is not None
    made = proportions(situation, "jaws-on-tenon", START_RPM).of("tenon.diameter")
    assert made is not None
    tenon = grip_drying(situation, found, "jaws-on-tenon", made.value, START_RPM)
    assert tenon.leave * (1 - found.most / 100) == pytest.approx(made.value + 2 * dries.LEFT_FOR_TRUING_MM)
    assert tenon.oval == pytest.approx(made.value * found.most / 100)
    assert tenon.loosens is not None
    assert 0 < tenon.loosens < 5  # a few percent of moisture at most take the grip away; common practice, no source


def test_bad_inputs_say_what_is_accepted() -> None:
    with pytest.raises(FigureInputError, match="from 0 to 50 percent"):
        dries.drying_shrinkage(total=60.0, from_moisture=30, to_moisture=6)
    with pytest.raises(FigureInputError, match="at least the smaller one, 8 percent"):
        dries.dried_oval(diameter=100, larger=4, smaller=8)
    with pytest.raises(FigureInputError, match="less than 50 percent"):
        dries.diameter_to_leave(finished=50, shrinkage=50)
    with pytest.raises(FigureInputError, match="at least the smaller one"):
        dries.wall_to_leave(diameter=100, larger=1, smaller=2, finished_wall=6)
    with pytest.raises(FigureInputError, match="more than 0 percent"):
        dries.drying_that_loosens(pressure=1, modulus=1, total=0)
    assert dries.drying_shrinkage(total=8, from_moisture=8, to_moisture=12) == 0
