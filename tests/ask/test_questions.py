"""The table of questions against the fields of a case."""

from __future__ import annotations

import pytest

from advisor.advice import advise
from advisor.advice.trial import disagreements, laid, outcome_of, parts_of_a_case
from advisor.ask.questions import questions, tries, value_of
from advisor.models.fields import Shape
from advisor.reading import InputFault, read_case, read_text, write_case
from tests.rules.bench import words_of

EVERY = {field.name: field for question in questions() for field in question.fields}
# Lists of measurements and details of the drive are for the case file.
NOT_ASKED = {
    "work.radii", "work.radii_far_end", "work.balance_test", "work.end_waste", "work.profile", "work.parts",
    "work.crack.gap", "work.crack.runs", "machine.speeds", "machine.spindle_taper", "machine.tail_taper",
    "machine.reverse", "machine.handwheel_diameter", "machine.altitude", "hold.drive.kind", "hold.drive.teeth",
    "hold.drive.inner_diameter", "hold.drive.face_angle", "hold.drive.back_angle", "hold.drive.tooth_height",
    "hold.drive.taper_seated", "hold.drive.shank_taper", "hold.tail.point_angle", "hold.tail.cup_diameter",
    "hold.tail.lip_height", "hold.tenon.shoulder_diameter", "hold.screws.diameter", "hold.screws.circle",
    "hold.glue.diameter", "hold.chuck.grip", "hold.chuck.jaw_largest", "hold.chuck.jaw_smallest",
    "work.finished_length", "hold.chuck.jaw_circle", "hold.slip_test", "cut.depth", "cut.feed",
    "person.others_in_room",
}  # fmt: skip


def test_every_field_of_a_case_is_asked_for_or_left_to_the_file() -> None:
    assert set(EVERY) | NOT_ASKED == set(parts_of_a_case())
    assert set(EVERY) & NOT_ASKED == set()


@pytest.mark.parametrize("name", EVERY)
def test_the_answers_to_try_can_be_given_and_fit_a_piece_of_any_size(name: str) -> None:
    field = EVERY[name]
    assert field.about
    for size in ("work.diameter=12mm; work.length=60mm", "work.diameter=500mm; work.length=1m"):
        case = read_case(None, words_of(f"SPINDLE; {size}"))
        found = list(tries(field, case))
        assert len(found) == len(field.tries)
        assert all(read_text(write_case(laid(case, {name: value})), "yaml", "x") for value in found[:1])
    for other, text in field.company:
        assert value_of(other, text) is not None
        assert other in EVERY


def test_extremes_are_two_ways_off_for_every_quantity() -> None:
    sized = {"work.diameter", "work.length", "hold.steady.position", "work.moisture"}
    for field in EVERY.values():
        if field.spec.shape in (Shape.QUANTITY, Shape.COUNT) and field.name not in sized:
            assert len(field.tries) >= 2, field.name


def test_a_question_has_words_and_a_reason() -> None:
    for question in questions():
        assert question.text.endswith("?")
        assert question.why.endswith(".")
    assert len({question.text for question in questions()}) == len(questions())


@pytest.mark.parametrize(
    ("name", "fits", "not_so"),
    [
        ("hold.drive.seated_depth", "SPINDLE; hold.method=spur-drive", "SPINDLE; hold.method=collet"),
        ("hold.chuck.max_rpm", "SPINDLE; hold.method=three-jaw", "SPINDLE; hold.method=spur-drive"),
        ("hold.rear_overhang", "SPINDLE; hold.method=three-jaw", "SPINDLE; hold.method=jaws-on-tenon"),
        ("work.crack.along", "SPINDLE; work.condition=[check]", "SPINDLE; work.condition=[knot]"),
        ("work.axis_from_flat", "SPINDLE; work.form=half-log", "SPINDLE"),
        ("cut.drill_diameter", "SPINDLE; cut.operation=drilling", "SPINDLE"),
    ],
)
def test_a_field_is_for_the_work_it_makes_sense_for(name: str, fits: str, not_so: str) -> None:
    for words, wanted in ((fits, True), (not_so, False)):
        case = read_case(None, words_of(words))
        assert EVERY[name].fits(case, outcome_of(advise(case))) is wanted
        assert EVERY["work.form"].fits(case, outcome_of(advise(case)))


@pytest.mark.parametrize(
    ("name", "text", "value"),
    [
        ("work.diameter", "3 in", 76.2),
        ("work.condition", "check, pith", ("check", "pith")),
        ("work.condition", "[check]", ("check",)),
        ("work.moisture", "wet", "wet"),
        ("machine.bolted_down", "no", False),
        ("work.material", "maple, sugar", "maple, sugar"),
        ("hold.glue.kind", "super glue", "cyanoacrylate"),
    ],
)
def test_a_value_is_read_as_in_a_case_file(name: str, text: str, value: object) -> None:
    assert value_of(name, text) == value


@pytest.mark.parametrize(
    ("name", "text", "message"),
    [
        ("work.diameter", "10", "work.diameter: '10'"),
        ("work.diameter", "-3 in", "is too small"),
        ("hold.method", "spur drive x", "is no word of this field; accepted: one of spur-drive"),
        ("work.condition", "[check", "cannot be read: brackets open and close"),
        ("work.condition", "chekc", "did you mean check?"),
        ("work.colour", "red", "is not a known field"),
    ],
)
def test_a_value_that_is_none_is_told_as_for_a_case_file(name: str, text: str, message: str) -> None:
    with pytest.raises(InputFault) as fault:
        value_of(name, text)
    assert message in str(fault.value)
    assert "your answer" not in str(fault.value)


def test_extremes_that_contradict_are_known_as_such() -> None:
    case = read_case(None, words_of("SPINDLE; work.finished_diameter=1in"))
    values = list(tries(EVERY["work.thinnest_diameter"], case))
    assert disagreements(laid(case, {"work.thinnest_diameter": values[-1]}))
