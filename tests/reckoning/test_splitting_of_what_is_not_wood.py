"""A point at the tail opens what is brittle or layered as it opens wood; of the rest it only sinks in."""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.models.material import list_materials, resolve
from advisor.models.substance import Material
from tests.whole.answers import answer

ROD = {"work.form": "round", "work.diameter": "25mm", "work.length": "90mm", "hold.tail.kind": "live-point"}
LAYERED = ("board", "laminate", "plant", "animal")


def materials() -> list[Material]:
    found = {entry["name"]: resolve(entry["name"]).records for entry in list_materials()}
    return [records[0] for records in found.values() if len(records) == 1 and records[0].tensile is not None]


def rod(material: str, more: str = "") -> dict[str, Any]:
    """The answer to a rod of this material, one word of it replaced or added."""
    field, _, value = more.partition("=")
    fields = {"work.material": material, **ROD, **({field: value} if more else {})}
    return answer([f"{key}={word}" for key, word in fields.items()])


def thrust_of(material: str, more: str = "") -> dict[str, Any]:
    part: dict[str, Any] = rod(material, more)["thrust"]
    return part


def splitting(part: dict[str, Any]) -> float | None:
    return next((float(row["n"]) for row in part["limits"] if row["name"] == "splitting"), None)


def test_bone_by_hand() -> None:
    """10 MPa, 7 GPa and 100 J/m²: λ = 1.737/(D/2), S = σ·D/(2·λ), a fifth of it over the share of a 60° point."""
    stress = min(10.0, math.sqrt(0.1 * 7000 / (0.25 * 25)))
    opens = 1 / (math.pi * math.tan(math.radians(30) + math.atan(0.2)))
    by_hand = stress * 25 / (2 * 0.1098**-0.25 / 12.5) / (5 * opens)
    assert splitting(thrust_of("bone")) == pytest.approx(by_hand, rel=1e-3)


def check(material: Material) -> None:
    """A limit where it is brittle or layered, and none where it gives."""
    part = thrust_of(material.id)
    limit = splitting(part)
    if material.brittle or material.family in LAYERED:
        assert limit is not None
        assert part["allowed_n"] <= limit
        assert part["set_n"] <= limit
    else:
        assert limit is None


@pytest.mark.parametrize("material", [pytest.param(entry, id=entry.id) for entry in materials()[::5]])
def test_what_splits_has_a_limit_and_what_gives_has_none(material: Material) -> None:
    check(material)


@pytest.mark.slow
@pytest.mark.parametrize("material", [pytest.param(entry, id=entry.id) for entry in materials()])
def test_every_material_that_splits_has_a_limit(material: Material) -> None:
    check(material)


@pytest.mark.parametrize("material", ["bone", "acrylic", "alabaster", "paper-phenolic", "mdf", "epoxy-casting"])
def test_what_helps_and_what_harms(material: str) -> None:
    bare = splitting(thrust_of(material))
    assert bare is not None
    for better in (thrust_of(material, "hold.tail.kind=live-cup"), thrust_of(material, "hold.tail.point_angle=90deg")):
        assert (splitting(better) or 0.0) > bare
    for worse in ("work.crack.along=10mm", "work.crack.across=5mm", "work.diameter=20mm", "work.length=10mm"):
        assert (splitting(thrust_of(material, worse)) or math.inf) < bare
    assert splitting(thrust_of(material, "work.grain=across")) == pytest.approx(bare)


@pytest.mark.parametrize(("family", "weaker"), [("alabaster", "amber"), ("plaster", "jet")])
def test_stone_is_not_credited_with_more_than_its_strength(family: str, weaker: str) -> None:
    for name in (family, weaker):
        strength = resolve(name).records[0].tensile
        assert strength is not None
        most = strength.low * 25 / (2 * 0.1098**-0.25 / 12.5)
        assert (splitting(thrust_of(name, "hold.tail.kind=live-cup")) or 0.0) <= most / (5 * 0.11) * 1.001


def test_a_gap_is_told_only_where_a_strength_is_missing() -> None:
    def told(material: str) -> bool:
        return any(entry["what"] == "splitting at the centers" for entry in rod(material)["could_not_check"])

    assert told("marble")
    assert not any(told(name) for name in ("bone", "acetal", "brass", "mdf", "sugar maple"))
