"""What a case holds: the fields of the interface, limits that mean something, and contradictions."""

from typing import Any

import jsonschema
import pytest
from pydantic import ValidationError

from advisor.models import case as models
from advisor.models.case import AIDS, METHODS, Case, Hold, Machine, Work, case_schema
from advisor.models.fields import Quantity, Shape, field_names, spec_at, specs
from advisor.models.section import Section
from advisor.units import LENGTH, PERCENT, RPM, SLOPE
from tests.models.twin import CaseContradiction, validated

WORK: dict[str, Any] = {"material": "white ash", "diameter": 254.0, "length": 76.2}

# Written down from the interface page by hand, so that no field is lost or renamed.
FIELDS = """
title units
work.material work.form work.grain work.state work.diameter work.length work.finished_diameter work.thinnest_diameter
work.wall work.floor work.mass work.moisture work.one_side_wet work.raw work.radii work.radii_far_end work.offset
work.balance_test.weight work.balance_test.radius work.axis_from_flat work.grain_slope work.end_waste work.profile
work.parts work.tested work.use work.condition work.crack.along work.crack.across work.crack.gap work.crack.runs
work.purpose work.marks_allowed work.finished_length
machine.kind machine.swing machine.swing_over_carriage machine.between_centers machine.spindle_bore machine.min_rpm
machine.max_rpm machine.speeds machine.rpm_set machine.nose machine.spindle_taper machine.tail_taper machine.mass
machine.base_width machine.spindle_height machine.bolted_down machine.stand machine.power machine.reverse
machine.nose_lock machine.brake machine.drawbar machine.handwheel_lead machine.handwheel_diameter machine.tailstock
machine.altitude machine.extinguisher
hold.method hold.kit hold.drive.teeth hold.drive.outer_diameter hold.drive.inner_diameter hold.drive.face_angle
hold.drive.back_angle hold.drive.tooth_height hold.drive.taper_seated hold.drive.seated_depth hold.drive.shank_taper
hold.drive.kind hold.tail.kind hold.tail.point_angle hold.tail.cup_diameter hold.tail.lip_height hold.tail.rating
hold.steady.position hold.tenon.diameter hold.tenon.length hold.tenon.shoulder_diameter hold.recess.diameter
hold.recess.depth hold.recess.wall hold.screws.count hold.screws.diameter hold.screws.length hold.screws.circle
hold.screws.kind hold.glue.kind hold.glue.diameter hold.glue.cured hold.vacuum.gauge hold.vacuum.seal_diameter
hold.chuck.max_rpm hold.chuck.grip hold.chuck.jaw_depth hold.chuck.jaw_circle hold.chuck.jaw_smallest
hold.chuck.jaw_largest hold.overhang hold.rear_overhang hold.outboard hold.handwheel_torque hold.left_mounted
hold.slip_test.torque hold.slip_test.thrust
cut.operation cut.rotation cut.tool cut.tool_material cut.force cut.depth cut.feed cut.drill_diameter cut.diameter
cut.wanted_rpm cut.cooling
person.reacted_before person.asthma person.respirator person.extraction person.others_in_room
"""


def build(name: str, value: Any, **more: Any) -> Case:
    """A case with one field set by its dotted name, and others by names with `__` for the dot."""
    tree: dict[str, Any] = {"work": dict(WORK)}
    for dotted, one in {name: value, **{key.replace("__", "."): found for key, found in more.items()}}.items():
        *above, last = dotted.split(".")
        here = tree
        for part in above:
            here = here.setdefault(part, {})
        here[last] = one
    return validated(tree)


def test_every_field_of_the_interface_is_there_and_no_other() -> None:
    own = {name for name in field_names(Case) if not name.startswith("expect.")}
    assert own == set(FIELDS.split())


def test_only_three_fields_of_a_case_must_be_there() -> None:
    assert {name for name, info in Work.declared.items() if info.required} == {
        "material",
        "diameter",
        "length",
    }
    with pytest.raises(ValidationError, match="diameter"):
        validated({"work": {"material": "ash", "length": 10}})
    empty = validated({"work": WORK})
    assert empty.machine == Machine()
    assert empty.hold == Hold()
    assert empty.work.condition is None


def test_methods_and_aids_are_those_of_the_interface() -> None:
    assert len(METHODS) == len(set(METHODS)) == 35
    assert AIDS == ("steady-rest", "wrap", "tail-support")
    assert build("hold.kit", ("collet", "steady-rest")).hold.kit == ("collet", "steady-rest")
    with pytest.raises(ValidationError):
        build("hold.method", "steady-rest")


def test_each_quantity_carries_its_kind() -> None:
    for name, kind in {
        "work.diameter": LENGTH,
        "work.radii": LENGTH,
        "work.profile": LENGTH,
        "work.moisture": PERCENT,
        "work.grain_slope": SLOPE,
        "machine.speeds": RPM,
    }.items():
        spec = spec_at(Case, tuple(name.split(".")))
        assert spec is not None
        quantity = spec.quantity if spec.item is None else spec.item.quantity
        assert quantity is not None
        assert quantity.kind is kind
    assert spec_at(Case, ("work", "material", "more")) is None


def quantities(model: type[Section], above: str = "") -> list[tuple[str, Quantity]]:
    found: list[tuple[str, Quantity]] = []
    for name, spec in specs(model).items():
        if spec.section is not None:
            found += quantities(spec.section, f"{above}{name}.")
        elif spec.quantity is not None and spec.shape is not Shape.PAIR:
            found.append((f"{above}{name}", spec.quantity))
    return found


@pytest.mark.parametrize(("name", "quantity"), quantities(Case), ids=[name for name, _ in quantities(Case)])
def test_every_number_has_a_floor_and_a_ceiling(name: str, quantity: Quantity) -> None:
    for value in (quantity.least - 1, quantity.most + 1, float("nan"), float("inf")):
        with pytest.raises(ValidationError):
            build(name, value)


@pytest.mark.parametrize("diameter", [0, -10, 5e-324, 0.9, 3000.1, 1e300])
def test_an_impossible_diameter_is_refused(diameter: float) -> None:
    with pytest.raises(ValidationError):
        build("work.diameter", diameter)


CONTRADICTIONS = [
    ("work.finished_diameter", 300, {}, "work.finished_diameter is larger than work.diameter"),
    ("work.thinnest_diameter", 300, {}, "work.thinnest_diameter is larger than work.diameter"),
    ("work.thinnest_diameter", 60, {"work__finished_diameter": 50}, "larger than work.finished_diameter"),
    ("work.floor", 80, {}, "work.floor is larger than work.length"),
    ("work.wall", 130, {}, "work.wall is larger than half of work.diameter"),
    ("work.offset", 130, {}, "work.offset is larger than half of work.diameter"),
    ("work.end_waste", 40, {}, "work.end_waste is larger than half of work.length"),
    ("work.axis_from_flat", 255, {}, "work.axis_from_flat is larger than work.diameter"),
    ("work.crack.along", 255, {}, "work.crack.along is larger than work.length and work.diameter"),
    ("work.radii", [140] + [120] * 5, {}, "the largest of work.radii is more than a tenth above half of work.diameter"),
    ("work.radii_far_end", [140] * 6, {}, "the largest of work.radii_far_end is more than a tenth"),
    ("work.profile", [(0, 38), (80, 38)], {}, "work.profile runs past work.length"),
    ("work.profile", [(0, 38), (70, 255)], {}, "work.profile is thicker than work.diameter"),
    ("work.profile", [(50, 38), (10, 38)], {}, "the positions of work.profile go back"),
    ("machine.min_rpm", 500, {"machine__max_rpm": 400}, "machine.min_rpm is larger than machine.max_rpm"),
    ("machine.speeds", [32, 500], {"machine__min_rpm": 87}, "the slowest of machine.speeds is below machine.min_rpm"),
    ("machine.speeds", [100, 500], {"machine__max_rpm": 400}, "the fastest of machine.speeds is above machine.max_rpm"),
    ("machine.swing_over_carriage", 300, {"machine__swing": 200}, "larger than machine.swing"),
    ("hold.drive.inner_diameter", 20, {"hold__drive__outer_diameter": 20}, "is not smaller than hold.drive.outer"),
    ("hold.drive.seated_depth", 6, {"hold__drive__tooth_height": 5}, "larger than hold.drive.tooth_height"),
    ("hold.steady.position", 80, {}, "hold.steady.position is larger than work.length"),
    ("hold.tenon.diameter", 255, {}, "hold.tenon.diameter is larger than work.diameter"),
    ("hold.tenon.diameter", 60, {"hold__tenon__shoulder_diameter": 50}, "larger than hold.tenon.shoulder_diameter"),
    ("hold.tenon.shoulder_diameter", 255, {}, "hold.tenon.shoulder_diameter is larger than work.diameter"),
    ("hold.tenon.length", 80, {}, "hold.tenon.length is larger than work.length"),
    ("hold.recess.diameter", 254, {}, "hold.recess.diameter is not smaller than work.diameter"),
    ("hold.recess.depth", 77, {}, "hold.recess.depth is not smaller than work.length"),
    ("hold.screws.circle", 255, {}, "hold.screws.circle is larger than work.diameter"),
    ("hold.glue.diameter", 255, {}, "hold.glue.diameter is larger than work.diameter"),
    ("hold.vacuum.seal_diameter", 255, {}, "hold.vacuum.seal_diameter is larger than work.diameter"),
    ("cut.diameter", 255, {}, "cut.diameter is larger than work.diameter"),
    ("cut.drill_diameter", 254, {}, "cut.drill_diameter is not smaller than work.diameter"),
]


@pytest.mark.parametrize(("name", "value", "more", "text"), CONTRADICTIONS, ids=[row[3][:50] for row in CONTRADICTIONS])
def test_what_cannot_both_be_true_is_refused(name: str, value: Any, more: dict[str, Any], text: str) -> None:
    with pytest.raises(CaseContradiction, match=text.replace(".", r"\.")):
        build(name, value, **more)


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("work.finished_diameter", 254),
        ("work.wall", 127),
        ("work.radii", [139.7] * 6),
        ("work.profile", [(0, 38), (30, 38), (30, 254), (76.2, 254)]),
        ("work.crack.along", 200),
        ("hold.tenon.length", 76.2),
        ("hold.drive.inner_diameter", 20),
    ],
)
def test_what_just_fits_is_accepted(name: str, value: Any) -> None:
    assert build(name, value).work.diameter == 254


@pytest.mark.parametrize("count", [5, 73])
def test_radii_are_six_to_seventy_two(count: int) -> None:
    with pytest.raises(ValidationError, match=r"work\.radii"):
        build("work.radii", [100.0] * count)


def test_a_case_does_not_change_and_knows_no_other_field() -> None:
    case = build("work.form", "disc")
    with pytest.raises(AttributeError, match="does not change"):
        case.work.diameter = 10.0
    with pytest.raises(TypeError, match="Work has no field colour"):
        case.work.altered({"colour": "brown"})
    with pytest.raises(ValidationError, match="Extra inputs"):
        build("work.colour", "brown")


def test_text_is_one_printable_line() -> None:
    assert build("title", "  a   bowl ").title == "a bowl"
    for text in ("", " ", "a" * 101, "a\x1b[31m", "\ud800"):
        with pytest.raises(ValidationError):
            build("title", text)


def test_the_words_of_the_models_are_importable_from_one_place() -> None:
    for name in models.__all__:
        assert hasattr(models, name)


SCHEMA = case_schema()
GOOD: dict[str, Any] = {
    "title": "bowl",
    "units": "inch",
    "work": {
        "material": "ash",
        "diameter": "10 in",
        "length": 3,
        "moisture": "green",
        "condition": ["check", "pith"],
        "radii": ['4"', "4 1/8 in", "4.1 in", "100 mm", "½ in", "4' 2\""],
        "grain_slope": "1:10",
        "raw": True,
        "profile": ["0mm:38mm", ["10 mm", 5], {"1 in": "2 in"}],
        "one_side_wet": "no",
    },
    "machine": {"min_rpm": 50, "speeds": [100, "200 rpm"], "spindle_taper": 2, "altitude": "5000 ft"},
    "hold": {"kit": ["collet", "wrap"], "screws": {"count": "6"}, "vacuum": {"gauge": "20 inHg"}},
}
BAD = [
    {"work": {"material": "ash", "diameter": "10 in"}},
    {"machine": {}},
    {**GOOD, "colour": "brown"},
    {**GOOD, "work": {**GOOD["work"], "diamter": 5}},
    {**GOOD, "work": {**GOOD["work"], "form": "cube"}},
    {**GOOD, "work": {**GOOD["work"], "diameter": "1,5 mm"}},
    {**GOOD, "work": {**GOOD["work"], "diameter": "ten"}},
    {**GOOD, "work": {**GOOD["work"], "diameter": [10]}},
    {**GOOD, "work": {**GOOD["work"], "radii": ["4 in"]}},
    {**GOOD, "work": {**GOOD["work"], "raw": "perhaps"}},
    {**GOOD, "work": {**GOOD["work"], "grain_slope": 10}},
    {**GOOD, "work": {**GOOD["work"], "profile": ["5 mm", "6 mm"]}},
    {**GOOD, "machine": {"spindle_taper": 99}},
    {**GOOD, "machine": {"spindle_taper": "MT2"}},
    {**GOOD, "hold": {"method": "wrap"}},
]


def test_the_schema_is_a_schema_and_takes_a_good_case() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    jsonschema.validate(GOOD, SCHEMA, jsonschema.Draft202012Validator)


@pytest.mark.parametrize("document", BAD)
def test_the_schema_refuses(document: dict[str, Any]) -> None:
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(document, SCHEMA, jsonschema.Draft202012Validator)


def test_the_schema_says_what_each_field_takes() -> None:
    diameter = SCHEMA["properties"]["work"]["properties"]["diameter"]
    assert "from 1 mm to 3000 mm (0.04 in to 118 in)" in diameter["description"]
    assert SCHEMA["properties"]["work"]["required"] == ["material", "diameter", "length"]


@pytest.mark.parametrize(
    ("words", "heading"),
    [
        ({"form": "square"}, "ash square"),
        ({"form": "segmented"}, "segmented ash"),
        ({"form": "irregular"}, "irregular ash"),
        ({}, "ash piece"),
    ],
)
def test_a_case_without_a_title_is_called_what_it_is(words: dict[str, Any], heading: str) -> None:
    case = Case(work=Work(material="ash", diameter=50.0, length=100.0, **words))
    assert case.heading == heading
    assert case.altered({"title": "leg"}).heading == "leg"
