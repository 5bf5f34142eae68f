"""What a person types at a question."""

from __future__ import annotations

from typing import Any

import pytest

from advisor.ask.questions import questions
from advisor.ask.typed import plain, values_of
from advisor.reading import InputFault

EVERY = {field.name: field for question in questions() for field in question.fields}
SIZE = ("work.diameter", "work.length")
FLOOR = ("machine.mass", "machine.stand", "machine.bolted_down")
PERSON = ("person.asthma", "person.reacted_before")


def typed(line: str, *names: str, needed: tuple[str, ...] = ()) -> Any:
    return values_of(line, [EVERY[name] for name in names], needed=needed)


@pytest.mark.parametrize("line", ["3 in, 18 in", "3 in x 18 in", "3 in by 18 in", "3 in × 18 in", "76.2 mm,457.2 mm"])
def test_two_sizes_may_stand_as_people_write_them(line: str) -> None:
    found = typed(line, *SIZE)
    assert found == pytest.approx({"work.diameter": 76.2, "work.length": 457.2})


@pytest.mark.parametrize("line", ["70 to 1400", "70, 1400"])
def test_speeds_too(line: str) -> None:
    assert typed(line, "machine.min_rpm", "machine.max_rpm") == {"machine.min_rpm": 70, "machine.max_rpm": 1400}


def test_parts_that_are_not_known_are_left_out() -> None:
    assert typed("-, light", *FLOOR) == {"machine.stand": "light"}
    assert typed("90 kg, don't know, no", *FLOOR) == {"machine.mass": 90, "machine.bolted_down": False}
    assert typed("", *FLOOR) == {}
    assert typed("Don't know.", "hold.method") == {}


def test_the_last_part_may_be_a_list() -> None:
    assert typed("yes, cocobolo, rosewood", *PERSON) == {
        "person.asthma": True,
        "person.reacted_before": ("cocobolo", "rosewood"),
    }


def test_a_name_with_a_comma_is_one_answer() -> None:
    assert typed("maple, sugar", "work.material") == {"work.material": "maple, sugar"}


@pytest.mark.parametrize(
    ("line", "names", "needed", "message"),
    [
        ("90 kg, light, no, yes", FLOOR, (), "has more than 3 parts"),
        ("", SIZE, SIZE, "work.diameter, work.length"),
        ("3 in", SIZE, SIZE, "cannot be left out"),
        ("3 in, eighteen", SIZE, SIZE, "work.length: 'eighteen'"),
    ],
)
def test_what_cannot_be_taken_is_told(line: str, names: tuple[str, ...], needed: tuple[str, ...], message: str) -> None:
    with pytest.raises(InputFault) as fault:
        typed(line, *names, needed=needed)
    assert message in str(fault.value)


def test_words_are_looked_up_whatever_their_case_and_dots() -> None:
    assert plain("  Don't   KNOW. ") == "don't know"
