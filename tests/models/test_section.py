"""A section: fields declared once, silence where nobody said, nothing changed afterwards."""

from __future__ import annotations

import pickle
from copy import deepcopy

import pytest

from advisor.models.case import Case, Hold, Machine, Tenon, Work

SAID = Work(material="ash", diameter=50.0, length=200.0)


def test_silence_is_none_and_a_default_is_the_default() -> None:
    assert SAID.form is None
    assert Case(work=SAID).machine == Machine()
    assert {name: value for name, value in SAID if value is not None} == {
        "material": "ash",
        "diameter": 50.0,
        "length": 200.0,
    }


def test_equal_fields_make_equal_sections() -> None:
    assert Hold() == Hold(method=None)
    assert hash(Hold()) == hash(Hold(method=None))
    assert Hold(method="collet") != Hold()
    assert Machine() != Hold()


@pytest.mark.parametrize("copy", [deepcopy, lambda case: pickle.loads(pickle.dumps(case))])
def test_a_case_is_handed_from_process_to_process(copy) -> None:  # type: ignore[no-untyped-def] # two kinds of copying
    case = Case(work=SAID, hold=Hold(tenon=Tenon(diameter=40.0)))
    assert copy(case) == case


def test_altered_leaves_the_first_as_it_was() -> None:
    assert SAID.altered({"form": "disc"}).form == "disc"
    assert SAID.form is None


def test_a_dotted_place_that_nobody_filled_is_none() -> None:
    case = Case(work=SAID)
    assert case.at("work.diameter") == 50.0
    assert case.at("hold.tenon.diameter") is None
    assert case.at("nothing.of.this") is None


def test_it_shows_what_was_said() -> None:
    assert repr(SAID) == "Work(material='ash', diameter=50.0, length=200.0)"


def test_an_unknown_field_and_a_change_are_refused() -> None:
    with pytest.raises(TypeError, match="Work has no field colour, weight"):
        Work(weight=1, colour="brown")
    with pytest.raises(AttributeError, match="a case does not change"):
        SAID.diameter = 1.0
