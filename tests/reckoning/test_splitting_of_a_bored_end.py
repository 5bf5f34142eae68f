"""A bored end is opened from inside by any center but a flat pad; on an arbor the center is not in the work."""

from __future__ import annotations

import math

import pytest

from tests.whole.answers import answer

RING = {
    "work.material": "sugar maple",
    "work.form": "ring",
    "work.diameter": "90mm",
    "work.length": "120mm",
    "work.wall": "6mm",
    "hold.tail.kind": "live-cone",
    "hold.method": "jam-chuck",
}
OPENS = 1 / (math.pi * math.tan(math.radians(30) + math.atan(0.2)))


def splitting(**changed: str) -> float | None:
    fields = {**RING, **{key.replace("__", "."): word for key, word in changed.items()}}
    found = answer([f"{key}={word}" for key, word in fields.items() if word])["thrust"]["limits"]
    return next((float(row["n"]) for row in found if row["name"] == "splitting"), None)


def test_acrylic_by_hand() -> None:
    """30 MPa at the low end, wall 6 mm at 42 mm: 30·6·√252/1.285, a fifth of it over the share of a cone."""
    by_hand = 30 * 6 * math.sqrt(42 * 6) / (3 * (1 - 0.3**2)) ** 0.25 / (5 * OPENS)
    assert splitting(work__material="acrylic") == pytest.approx(by_hand, rel=1e-3)


@pytest.mark.parametrize("material", ["sugar maple", "acrylic", "bone", "canvas-phenolic"])
def test_a_thinner_wall_bears_less_and_solid_work_more(material: str) -> None:
    walls = [splitting(work__material=material, work__wall=f"{wall}mm") or math.inf for wall in (2, 4, 6, 9)]
    assert walls == sorted(walls)
    assert walls[0] < walls[-1] < math.inf
    assert (splitting(work__material=material, work__form="round") or 0.0) >= walls[-1]


def test_side_grain_bored_has_a_limit_too() -> None:
    across = splitting(work__grain="across")
    assert across is not None
    assert across <= (splitting() or 0.0) * 1.001


def limits_of(**changed: str) -> dict[str, float]:
    fields = {**RING, "work.form": "tube", "work.diameter": "20mm", "work.length": "60mm", "work.wall": "2mm"}
    fields |= {key.replace("__", "."): word for key, word in changed.items()}
    found = answer([f"{key}={word}" for key, word in fields.items() if word])["thrust"]["limits"]
    return {row["name"]: float(row["n"]) for row in found}


def test_on_an_arbor_the_center_is_not_in_the_work() -> None:
    """The arbor bows instead: 6 mm of steel over 150 mm, π²·E·I/L², a fifth of it."""
    assert {"splitting", "crushing"} <= limits_of(hold__method="collet").keys()
    found = limits_of(hold__method="mandrel")
    assert found.keys().isdisjoint({"splitting", "crushing"})
    assert found["buckling"] == pytest.approx(math.pi**2 * 200e3 * math.pi / 64 * 6**4 / 150**2 / 5, rel=1e-6)
    assert limits_of(hold__method="mandrel", work__length="200mm")["buckling"] < found["buckling"] * (150 / 199) ** 2


def test_what_is_squeezed_is_the_wall_and_not_the_bore() -> None:
    walls = {wall: limits_of(work__wall=f"{wall}mm")["short-column"] for wall in (2, 4, 10)}
    solid = limits_of(work__form="round")["short-column"]
    assert walls[2] / solid == pytest.approx(1 - (16 / 20) ** 2)
    assert walls[4] / solid == pytest.approx(1 - (12 / 20) ** 2)
    assert walls[10] == pytest.approx(solid)


@pytest.mark.parametrize(("wall", "form", "method", "told"), [
    ("", "ring", "jam-chuck", True), ("6mm", "ring", "jam-chuck", False), ("", "round", "jam-chuck", False),
    ("", "tube", "mandrel", False),
])  # fmt: skip
def test_without_a_wall_it_is_said(wall: str, form: str, method: str, told: bool) -> None:
    fields = {**RING, "work.wall": wall, "work.form": form, "hold.method": method}
    gaps = answer([f"{key}={word}" for key, word in fields.items() if word])["could_not_check"]
    assert any(gap["what"] == "a bored end opened from inside" for gap in gaps) is told
