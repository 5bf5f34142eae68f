"""Where one more letter, digit or step makes the difference between a value and a fault, and what is then said."""

import pytest

from advisor.reading import read_case
from advisor.units import CUTTING_SPEED, LENGTH, UnitError, parse
from tests.reading.texts import only, word_problems

THREE = ["work.material=ash", "work.diameter=10 in", "work.length=3 in"]


@pytest.mark.parametrize(
    ("text", "value"), [("5 ft 11.5 in", 1816.1), ("0 ft 5 in", 127), ("1 7/8 in", 47.625), ("1 ft 0 in", 304.8)]
)
def test_parts_smaller_than_one_of_the_part_above_are_taken(text: str, value: float) -> None:
    assert parse(text, LENGTH) == value


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("5 ft 12 in", "holds more than one number"),
        ("5 in 5 ft", "holds more than one number"),
        ("5 ft 5 ft", "holds more than one number"),
        ("1 8/8 in", "holds 1 8/8, which is no ordinary fraction"),
        ("APPROX 5 in", "does not start with a number"),
        ("about 5 in", "does not start with a number"),
        ("Ca 5 in", "does not start with a number"),
        ("NaN mm", "is not a number"),
        ("-INF mm", "is not a number"),
        ("5 in2", "has a unit that is not known here (in2)"),
        ("5 1/in", "has a unit that is not known here (1/in)"),
        ("5 m/min", "is a cutting speed, not a length"),
    ],
)
def test_reason(text: str, reason: str) -> None:
    with pytest.raises(UnitError) as refused:
        parse(text, LENGTH)
    assert refused.value.given == text
    assert refused.value.reason.startswith(reason)
    assert str(refused.value).startswith(f"'{text}' {reason}")


def test_names_of_kinds_are_words() -> None:
    with pytest.raises(UnitError, match="is a length, not a cutting speed"):
        parse("5 mm", CUTTING_SPEED)


@pytest.mark.parametrize("length", [60, 61])
def test_what_was_given_is_quoted_up_to_sixty_signs(length: int) -> None:
    with pytest.raises(UnitError) as refused:
        parse("x" * length, LENGTH)
    assert refused.value.given == ("x" * 60 if length == 60 else "x" * 59 + "…")


def test_every_wrong_word_is_named_and_the_right_ones_still_count() -> None:
    found = word_problems("x", "zzz=1", *THREE, "work.diametr=3 in", "y", "hold.drive.theeth=4", "machin.x=3")
    assert [(problem.file, problem.field, problem.nearest) for problem in found] == [
        ("the word x", "", None),
        ("the word zzz=1", "zzz", None),
        ("the word work.diametr=3 in", "work.diametr", "work.diameter"),
        ("the word y", "", None),
        ("the word hold.drive.theeth=4", "hold.drive.theeth", "hold.drive.teeth"),
        ("the word machin.x=3", "machin.x", None),
    ]
    assert [(problem.accepted or "").partition(":")[0] for problem in found] == [
        found[0].accepted,
        "fields of a case",
        "fields of work",
        found[0].accepted,
        "fields of hold.drive",
        "fields of a case",
    ]


@pytest.mark.parametrize("length", [60, 61])
def test_a_long_word_is_named_by_its_first_sixty_signs(length: int) -> None:
    word = "x" * (length - 2) + "=1"
    problem = only(word_problems(*THREE, word))
    assert problem.file == "the word " + (word if length == 60 else word[:59] + "…")


@pytest.mark.parametrize(
    ("word", "field", "value", "message"),
    [
        ("work.condition=check", "work.condition", "check", "stands where a list belongs"),
        ("hold=3", "hold", "3", "stands where fields belong"),
        ("hold.drive.teeth=4.5", "hold.drive.teeth", "4.5", "is not a whole number"),
        ("hold.drive.teeth=x", "hold.drive.teeth", "x", "is not a number"),
        ("hold.drive.teeth=201", "hold.drive.teeth", "201", "is too large"),
        ("work.condition=[", "work.condition", "[", "cannot be read: brackets open and close, commas between"),
        ("work.condition=[knot, knot]", "work.condition", "knot", "is listed twice"),
        ("work.radii=[1 mm]", "work.radii", None, "has 1 entries"),
        ("work.moisture=12 kg", "work.moisture", "12 kg", "is a mass, not a percent"),
    ],
)
def test_one_fault_of_one_word(word: str, field: str, value: str | None, message: str) -> None:
    problem = only(word_problems(*THREE, word))
    assert (problem.file, problem.field, problem.value) == (f"the word {word}", field, value)
    assert problem.message.startswith(message)


def test_most_entries_are_taken_and_one_more_is_not() -> None:
    assert len(read_case(None, [*THREE, f"work.radii=[{', '.join(['4 in'] * 72)}]"]).work.radii or ()) == 72
    assert only(word_problems(*THREE, f"work.radii=[{', '.join(['4 in'] * 73)}]")).message == "has 73 entries"


def test_bare_numbers_follow_the_units_of_the_case() -> None:
    assert (
        read_case(None, ["units=inch", "work.material=ash", "work.diameter=10", "work.length=3"]).work.diameter == 254
    )
    assert (
        read_case(None, ["units=metric", "work.material=ash", "work.diameter=10", "work.length=3"]).work.diameter == 10
    )
    assert read_case(None, ["units=metric", *THREE, "work.moisture=12"]).work.moisture == 12
