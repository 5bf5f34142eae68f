"""Inputs of figures read from text, and refused by name where they make no sense."""

from __future__ import annotations

import math

import pytest

from advisor.figure import FigureInputError, find_figure, reckon
from advisor.physics import balance

BAR = {"diameter": "25mm", "length": "900mm", "modulus": "12.6GPa"}
REFUSED = [
    ("buckling-force", {"diameter": "-25mm"}, "diameter"),
    ("buckling-force", {"diameter": "0mm"}, "diameter"),
    ("buckling-force", {"diameter": "25kg"}, "diameter"),
    ("buckling-force", {"diameter": "25"}, "diameter"),
    ("buckling-force", {"diameter": "wide"}, "diameter"),
    ("buckling-force", {"length": "0in"}, "length"),
    ("buckling-force", {"modulus": "0GPa"}, "modulus"),
    ("buckling-force", {"end_factor": "0"}, "end_factor"),
    ("buckling-force", {"ends": "free"}, "ends"),
]


@pytest.mark.parametrize(("name", "changed", "at_fault"), REFUSED)
def test_senseless_input_is_refused_by_name(name: str, changed: dict[str, str], at_fault: str) -> None:
    with pytest.raises(FigureInputError) as caught:
        reckon(name, {**BAR, **changed})
    assert caught.value.name == at_fault
    assert caught.value.accepted
    assert at_fault in str(caught.value)


def test_an_input_that_was_not_given_is_missing() -> None:
    assert str(FigureInputError("bore", None, "a diameter")) == "bore: is missing; accepted: a diameter"
    assert str(FigureInputError("bore", 0.0, "a diameter")) == "bore: 0.0 was given; accepted: a diameter"


OTHER_REFUSED = [
    ("jaw-torque", "friction=-0.1 grip=4kN diameter=50mm", "friction"),
    ("moisture-strength", "dry=54MPa green=28MPa moisture=10% intersection=12", "intersection"),
    ("lower-value", "mean=54MPa variation=18", "variation"),
    ("lower-value", "mean=54bananas variation=0.18", "mean"),
    ("lower-value", "mean=much variation=0.18", "mean"),
    ("ring-crush-force", "outer_diameter=16mm inner_diameter=16mm strength=38MPa", "inner_diameter"),
    ("ring-drive-torque", "friction=0.3 thrust=1kN outer_radius=10mm inner_radius=12mm", "inner_radius"),
    ("offset-from-radii", "radii=50mm,51mm,52mm", "radii"),
    ("offset-from-radii", "radii=50mm,51mm,52mm,53mm,52mm,51", "radii"),
    ("offset-from-radii", "radii=X50mm,51mm,52mm,53mm,52mm,51mm", "radii"),
    ("profile-whirl-speed", "profile=0mm:25mm modulus=12GPa density=700kg/m3 ends=free", "profile"),
    ("profile-whirl-speed", "profile=0mm:25mm,900mm modulus=12GPa density=700kg/m3 ends=free", "profile"),
    ("profile-whirl-speed", "profile=0mm:25mm,90mm:25mm,50mm:25mm modulus=12GPa density=700kg/m3 ends=free", "profile"),
    ("profile-whirl-speed", "profile=0mm:25mm,900mm:0mm modulus=12GPa density=700kg/m3 ends=free", "profile"),
    ("whirl-speed", "diameter=25mm length=900mm modulus=12GPa density=700kg/m3 ends=pined-pinned", "ends"),
    ("required-thrust", "cutting_force=30N radius=20mm peak=1.5 safety=1.5 share=0.9 grip=0.5 mean_radius=10mm "
     "tail_friction=0.3", "tail_radius"),
    ("required-thrust", "cutting_force=30N radius=20mm peak=1.5 safety=0.5 share=0.9 grip=0.5 mean_radius=10mm",
     "safety"),
    ("disc-stress", "density=700kg/m3 diameter=300mm rpm=1000 poisson=0.6", "poisson"),
    ("disc-stress", "density=700kg/m3 diameter=300mm rpm=1000 poisson=0.4 bore=300mm", "bore"),
    ("recess-force", "diameter=50mm depth=4mm outside_diameter=50mm tension_perpendicular=3MPa", "outside_diameter"),
    ("jam-fit", "interference=0.1mm diameter=80mm outside_diameter=70mm modulus=0.8GPa length=10mm friction=0.3",
     "outside_diameter"),
    ("screw-withdrawal", "gravity=0.5 diameter=5mm thread=20mm kind=nail fiber=side", "kind"),
    ("screw-group-moment", "withdrawal=1kN positions=0mm,0mm", "positions"),
    ("tooth-penetration", "thrust=800N teeth=2.5 inner_radius=4mm outer_radius=11mm face_angle=30deg back_angle=30deg "
     "parallel=49MPa perpendicular=5MPa", "teeth"),
    ("tooth-penetration", "thrust=800N teeth=4 inner_radius=11mm outer_radius=11mm face_angle=30deg back_angle=30deg "
     "parallel=49MPa perpendicular=5MPa", "inner_radius"),
    ("air-pressure", "altitude=20000m", "altitude"),
    ("plastic-cutting-force", "material=unobtainium width=2mm thickness=0.2mm", "material"),
    ("heat-growth", "diameter=25mm expansion=11e-6/K rise=25mm", "rise"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "words", "at_fault"), OTHER_REFUSED)
def test_other_senseless_input_is_refused_by_name(name: str, words: str, at_fault: str) -> None:
    with pytest.raises(FigureInputError) as caught:
        reckon(name, dict(word.split("=", 1) for word in words.split()))
    assert caught.value.name == at_fault


def test_missing_input_is_named_with_what_is_accepted() -> None:
    with pytest.raises(FigureInputError, match="length") as caught:
        reckon("buckling-force", {"diameter": "25mm", "modulus": "12GPa"})
    assert "mm" in caught.value.accepted


@pytest.mark.parametrize(
    ("name", "words", "hint"),
    [
        ("bukling-force", BAR, "buckling-force"),
        ("buckling-force", {**BAR, "lenght": "1m"}, "length"),
        ("deflection", {**BAR, "force": "50N", "ends": "pinned"}, "pinned-pinned"),
        ("plastic-cutting-force", {"material": "nylom", "width": "1mm", "thickness": "0.1mm"}, "nylon"),
    ],
)
def test_did_you_mean(name: str, words: dict[str, str], hint: str) -> None:
    with pytest.raises(FigureInputError, match="did you mean") as caught:
        reckon(name, words)
    assert hint in caught.value.accepted.split("did you mean")[1]


def test_no_guess_for_a_name_like_nothing() -> None:
    with pytest.raises(FigureInputError, match="advisor list figures"):
        find_figure("zzzz")


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, -1.0])
def test_number_that_is_none_is_refused_in_code_too(value: float) -> None:
    with pytest.raises(FigureInputError):
        balance.unbalance_force(mass=5, offset=value, rpm=500)
