"""What a figure is, how it is asked for, and what it says when asked wrongly."""

from __future__ import annotations

import doctest
import importlib
import inspect
import json
import subprocess
import sys
from types import ModuleType
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from advisor.figure import (
    Figure,
    Formula,
    Grade,
    NoAnswer,
    all_figures,
    figure,
    reckon,
    show_number,
    show_quantity,
)
from advisor.physics import balance, burst, slender, tail, teeth
from advisor.quantity import mm

SCHEMA = {
    "type": "object",
    "additionalProperties": False,
    "required": ["figure", "value", "unit", "grade", "formula", "worked", "sources", "range"],
    "properties": {
        "figure": {"type": "string"},
        "value": {"type": ["number", "null"]},
        "unit": {"type": "string"},
        "grade": {"enum": ["calculated", "estimate", "rough-guide", "practice"]},
        "formula": {"type": "string", "minLength": 3},
        "worked": {"type": "string", "minLength": 3},
        "sources": {"type": "array", "minItems": 1, "items": {"type": "string", "minLength": 3}},
        "range": {"type": "string", "minLength": 3},
        "also": {
            "type": "object",
            "additionalProperties": {
                "type": "object",
                "required": ["value", "unit"],
                "properties": {"value": {"type": "number"}, "unit": {"type": "string"}},
            },
        },
        "no_answer": {"type": "string", "minLength": 3},
    },
}
# figure: the inputs that must be given, then those that may be left out
INTERFACE = {
    "grain-angle-strength": "parallel perpendicular angle",
    "moisture-strength": "dry green moisture [intersection]",
    "lower-value": "mean variation",
    "tooth-penetration": "thrust [share] teeth inner_radius outer_radius face_angle back_angle [friction] parallel "
    "perpendicular",
    "tooth-slip-torque": "thrust [share] teeth inner_radius outer_radius face_angle back_angle [friction] parallel "
    "perpendicular",
    "ring-drive-torque": "friction thrust outer_radius [inner_radius]",
    "cone-torque": "friction thrust half_angle mean_radius",
    "taper-torque": "friction thrust half_angle mean_radius",
    "required-thrust": "cutting_force radius peak safety share grip mean_radius [tail_friction] [tail_radius] "
    "[tail_half_angle]",
    "dead-center-heat": "friction thrust radius half_angle rpm",
    "cone-sink": "thrust end_strength half_angle",
    "ring-crush-force": "outer_diameter inner_diameter strength",
    "cone-splitting-force": "thrust half_angle friction",
    "wedge-splitting-force": "thrust half_angle friction",
    "split-capacity": "diameter [crack_depth] [sound] tension_perpendicular modulus_perpendicular modulus_along "
    "fracture_energy",
    "buckling-force": "diameter length modulus [end_factor]",
    "handwheel-thrust": "torque lead [efficiency]",
    "deflection": "force diameter length modulus ends",
    "whirl-speed": "diameter length modulus density ends [thrust]",
    "profile-whirl-speed": "profile modulus density ends [thrust]",
    "offset-from-radii": "radii",
    "half-log-offset": "radius axis_from_flat",
    "unbalance-force": "mass offset rpm",
    "balance-grade": "offset rpm",
    "permissible-offset": "grade rpm",
    "slide-force": "mass friction",
    "tip-force": "mass half_base spindle_height",
    "walking-speed": "lathe_mass blank_mass offset friction half_base spindle_height amplification",
    "counterweight": "mass offset radius",
    "rim-rule-speed": "diameter band",
    "rim-speed": "diameter rpm",
    "fragment-energy": "mass speed",
    "spinning-energy": "mass diameter rpm",
    "disc-stress": "density diameter rpm poisson [bore]",
    "ring-stress": "density speed",
    "cracked-disc-speed": "density diameter sound strength",
    "jaw-torque": "friction grip diameter",
    "jaw-moment": "friction grip diameter length [shoulder_radius]",
    "jaw-crush-force": "diameter length strength [contact]",
    "tenon-root-moment": "diameter strength",
    "recess-force": "diameter depth outside_diameter tension_perpendicular",
    "tenon-root-diameter": "moment strength divisor",
    "tenon-grip-length": "grip diameter strength [contact]",
    "recess-outside-diameter": "grip diameter depth tension_perpendicular",
    "glue-face-diameter": "torque moment shear peel divisor",
    "screw-count": "torque lateral radius divisor",
    "thread-length": "pull gravity diameter divisor",
    "drying-shrinkage": "total from_moisture to_moisture",
    "dried-oval": "diameter larger smaller",
    "diameter-to-leave": "finished shrinkage [allowance]",
    "wall-to-leave": "diameter larger smaller finished_wall",
    "drying-that-loosens": "pressure modulus total",
    "chuck-speed": "grip needed_grip safety jaw_moment",
    "collet-grip": "draw_force half_angle friction",
    "screw-withdrawal": "gravity diameter thread kind fiber",
    "screw-group-moment": "withdrawal positions",
    "glue-torque": "shear diameter",
    "glue-moment": "peel diameter",
    "jam-fit": "interference diameter outside_diameter modulus length friction",
    "air-pressure": "altitude",
    "vacuum-force": "pressure diameter",
    "suction-floor-stress": "pressure radius thickness poisson",
    "wood-cutting-force": "width thickness density mode [sharpness] [moisture] [rake]",
    "plastic-cutting-force": "material width thickness",
    "cutting-power": "force diameter rpm",
    "feed-per-turn": "traverse rpm",
    "spindle-speed": "cutting_speed diameter",
    "cutting-speed": "diameter rpm",
    "heat-growth": "diameter expansion rise",
}
FIGURES = all_figures()
BAR = {"diameter": "25mm", "length": "900mm", "modulus": "12.6GPa"}


@pytest.mark.parametrize("name", sorted(INTERFACE))
def test_figure_takes_the_inputs_it_is_known_for(name: str) -> None:
    words = INTERFACE[name].split()
    optional = {word.strip("[]") for word in words if word.startswith("[")}
    inputs = FIGURES[name].inputs
    assert set(inputs) == {word.strip("[]") for word in words}
    assert {key for key, entry in inputs.items() if not entry.required} == optional


def test_there_are_no_other_figures() -> None:
    assert set(FIGURES) == set(INTERFACE)


def _documented() -> list[tuple[str, ModuleType, Any]]:
    found = []
    for formula in FIGURES.values():
        module = importlib.import_module(formula.__module__)
        found += [(name, module, thing) for name, thing in vars(module).items() if callable(thing)]
    own = {(module.__name__, name): (name, module, thing) for name, module, thing in found
           if getattr(thing, "__module__", None) == module.__name__ and getattr(thing, "__doc__", None)}
    return [own[key] for key in sorted(own)]


@pytest.mark.parametrize(
    ("name", "module", "thing"), _documented(), ids=lambda part: part if isinstance(part, str) else ""
)
def test_example_in_the_documentation_runs(name: str, module: ModuleType, thing: Any) -> None:
    test = doctest.DocTestParser().get_doctest(thing.__doc__, dict(vars(module)), name, None, 0)
    said: list[str] = []
    assert doctest.DocTestRunner().run(test, out=said.append).failed == 0, "".join(said)
    assert test.examples or not isinstance(thing, Formula), f"{name} shows no example"


@pytest.mark.parametrize("name", sorted(FIGURES))
def test_documentation_names_every_input_and_has_its_parts(name: str) -> None:
    formula = FIGURES[name]
    doc = inspect.cleandoc(formula.__doc__ or "")  # Python 3.13 takes the margin off by itself
    for part in ("Formula", "Inputs", "Gives", "Valid", "Source"):
        assert f"\n{part}" in doc, f"{name}: no {part}"
    for key in formula.inputs:
        assert key in doc, f"{name}: {key} is not explained"
    assert formula.spec.title[0].islower()
    assert not formula.spec.title.endswith(".")


def test_calling_gives_the_bare_number_and_figure_the_same_with_its_story() -> None:
    bare = slender.buckling_force(25, 900, modulus=12.6)
    whole = slender.buckling_force.figure(25, 900, modulus=12.6)
    assert whole.value == bare
    assert whole.inputs["end_factor"] == (1.0, "")
    assert whole.inputs["diameter"] == (25, "mm")
    assert whole.worked == "F_cr = π²·E·I/(K·L)² = π²·12.6 GPa·19175 mm⁴/(1·900 mm)² = 2.944 kN (diameter = 25 mm)"


def test_json_of_a_figure() -> None:
    answer = reckon("buckling-force", BAR).as_dict()
    Draft202012Validator(SCHEMA).validate(answer)
    assert list(answer) == [*SCHEMA["required"], "also"]  # type: ignore[misc]  # a list of strings, as written above
    assert answer["figure"] == "buckling-force"
    assert answer["value"] == pytest.approx(2943.85, abs=0.01)
    assert answer["unit"] == "N"
    assert answer["also"]["second_moment"] == {"value": pytest.approx(19174.76, abs=0.01), "unit": "mm⁴"}
    assert json.loads(json.dumps(answer)) == answer


def test_json_where_there_is_no_answer() -> None:
    answer = reckon("buckling-force", {**BAR, "length": "100mm"}).as_dict()
    Draft202012Validator(SCHEMA).validate(answer)
    assert answer["value"] is None
    assert "crushes" in answer["no_answer"]
    assert answer["no_answer"] in answer["worked"]
    assert "also" not in answer


NO_ANSWERS = [
    ("moisture-strength", "dry=54MPa green=28MPa moisture=5%"),
    ("whirl-speed", "diameter=25mm length=900mm modulus=12GPa density=700kg/m3 ends=pinned-pinned thrust=3kN"),
    ("whirl-speed", "diameter=25mm length=120mm modulus=12GPa density=700kg/m3 ends=pinned-pinned"),
    ("profile-whirl-speed", "profile=0mm:25mm,900mm:25mm modulus=12GPa density=700kg/m3 ends=free thrust=800N"),
    ("profile-whirl-speed", "profile=0mm:25mm,90mm:25mm modulus=12GPa density=700kg/m3 ends=fixed-fixed"),
    (
        "required-thrust",
        "cutting_force=30N radius=20mm peak=1.5 safety=1.5 share=0.9 grip=0.2 mean_radius=6mm tail_friction=0.5 "
        "tail_radius=3mm tail_half_angle=30deg",
    ),
    (
        "tooth-slip-torque",
        "thrust=1kN teeth=2 inner_radius=2mm outer_radius=9mm face_angle=0deg back_angle=0deg friction=0 "
        "parallel=50MPa perpendicular=8MPa",
    ),
    (
        "walking-speed",
        "lathe_mass=100kg blank_mass=4kg offset=0mm friction=0.4 half_base=250mm spindle_height=1m amplification=3",
    ),
    ("chuck-speed", "grip=4kN needed_grip=3kN safety=1.5 jaw_moment=0.1kg-m"),
    ("collet-grip", "draw_force=4kN half_angle=80deg friction=0.5"),
    ("wood-cutting-force", "width=5mm thickness=0.04mm density=650kg/m3 mode=along"),
    ("wood-cutting-force", "width=5mm thickness=1.6mm density=650kg/m3 mode=along"),
    ("wood-cutting-force", "width=5mm thickness=0.2mm density=650kg/m3 mode=along rake=46deg"),
    ("wood-cutting-force", "width=5mm thickness=0.2mm density=650kg/m3 mode=along rake=-5deg"),
    ("plastic-cutting-force", "material=nylon width=2mm thickness=2mm"),
]


@pytest.mark.parametrize(("name", "words"), NO_ANSWERS)
def test_no_answer_is_an_answer(name: str, words: str) -> None:
    answer = reckon(name, dict(word.split("=", 1) for word in words.split()))
    assert answer.value is None
    assert answer.no_answer
    assert answer.also == {}
    json.dumps(answer.as_dict(), allow_nan=False)


def test_unknown_keyword_is_python_s_own_error() -> None:
    with pytest.raises(TypeError, match="colour"):
        balance.unbalance_force(mass=5, offset=1, rpm=500, colour=3)  # type: ignore[call-arg]  # the fault under test


def test_lower_value_answers_in_the_unit_it_was_given() -> None:
    answer = reckon("lower-value", {"mean": "1 1/2 kN", "variation": "0.18"})
    assert answer.unit == "kN"
    assert answer.value == pytest.approx(1.5 * (1 - 1.645 * 0.18))
    assert "1.5 kN" in answer.worked
    assert reckon("lower-value", {"mean": "0.35", "variation": "0.6"}).unit == ""


def test_formula_is_the_one_that_was_used() -> None:
    solid = burst.disc_stress.figure(density=700, diameter=300, rpm=1000, poisson=0.4)
    bored = burst.disc_stress.figure(density=700, diameter=300, rpm=1000, poisson=0.4, bore=50)
    assert "/8" in solid.formula
    assert "/4" in bored.formula
    assert "(50 mm/2)²" in bored.worked


def test_rough_guide_shows_two_figures_and_keeps_all_of_them() -> None:
    answer = tail.split_capacity.figure(
        diameter=50, tension_perpendicular=7, modulus_perpendicular=0.8, modulus_along=12, fracture_energy=300
    )
    assert answer.grade is Grade.ROUGH_GUIDE
    assert "= 3.1 kN" in answer.worked
    assert answer.value == pytest.approx(3102.44, abs=0.01)


def test_self_holding_teeth_have_no_number_for_climbing_out() -> None:
    inputs = {"teeth": 4.0, "inner_radius": 5.0, "outer_radius": 12.5, "parallel": 54.0, "perpendicular": 10.0}
    steep = teeth.tooth_slip_torque.figure(thrust=1000, face_angle=5, back_angle=30, **inputs)
    assert "grip_ride" not in steep.also
    json.dumps(steep.as_dict(), allow_nan=False)


def test_grade_prints_as_its_word() -> None:
    assert f"{Grade.ROUGH_GUIDE}" == "rough-guide"


@pytest.mark.parametrize(
    ("value", "shown"),
    [(0, "0"), (19174.8, "19175"), (2.9444, "2.944"), (0.000123456, "0.0001235"), (1500, "1500"), (1e-9, "1.000e-09")],
)
def test_numbers_are_shown_to_four_figures(value: float, shown: str) -> None:
    assert show_number(value) == shown


@pytest.mark.parametrize(
    ("value", "unit", "shown"),
    [
        (2944.0, "N", "2.944 kN"),
        (30.0, "°", "30°"),
        (None, "mm", "0 mm"),
        ("along", "", "along"),
        ((1.0, 2.5), "mm", "1, 2.5 mm"),
        (((0.0, 20.0), (50.0, 10.0)), "mm", "0:20, 50:10 mm"),
    ],
)
def test_quantities_are_shown_with_their_unit(value: Any, unit: str, shown: str) -> None:
    assert show_quantity(value, unit) == shown


def test_figure_made_of_a_function_of_one_s_own() -> None:
    def half(diameter: mm) -> float:
        """Half."""
        return diameter / 2

    made = Formula(half, FIGURES["rim-speed"].spec)
    assert made.name == "half"
    assert isinstance(made.figure(diameter=3), Figure)
    assert made(3) == 1.5
    assert callable(figure)


def test_no_answer_carries_its_reason() -> None:
    with pytest.raises(NoAnswer) as caught:
        slender.bowing_factor(100, 100)
    assert caught.value.reason == str(caught.value)


def _modules_after(statement: str) -> set[str]:
    code = f"import sys\n{statement}\nprint(*sys.modules)"
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return set(run.stdout.split())


def test_figure_is_imported_without_the_physics() -> None:
    loaded = _modules_after("import advisor.figure")
    assert not {name for name in loaded if name.startswith(("advisor.physics", "advisor.units", "advisor.models"))}


def test_physics_is_imported_without_anything_heavy() -> None:
    loaded = _modules_after("from advisor.figure import all_figures; all_figures()")
    assert not loaded & {"numpy", "scipy", "pydantic", "yaml", "durable", "rich", "advisor.units"}
