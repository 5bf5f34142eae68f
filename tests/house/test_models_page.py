"""docs/models.md says what the comparisons give today."""

from __future__ import annotations

import pytest

from advisor.figure import all_figures
from tests.house.models import MODELS, PAGE, page
from tests.house.published import PUBLISHED, fits, pressure, share

TEXT = PAGE.read_text(encoding="utf-8")


def test_every_figure_stands_there_with_its_grade_and_what_it_was_held_against() -> None:
    for name, formula in all_figures().items():
        grade = formula.spec.grade.value.replace("-", " ")
        assert f"| `{name}` | {formula.spec.title} | {grade} | {formula.spec.valid} |" in TEXT
        assert f"\n* `{name}`: " in TEXT


def test_every_model_says_what_it_leaves_out() -> None:
    assert {formula.spec.section for formula in all_figures().values()} == set(MODELS)
    assert {section for section, _ in PUBLISHED} <= set(MODELS)
    for model in MODELS.values():
        assert f"\n## {model.title}\n" in TEXT
        assert f"\nNot modeled: {model.leaves_out}.\n" in TEXT


def test_a_quick_part_of_the_comparisons() -> None:
    assert f"\n* {fits()}\n" in TEXT
    assert f"\n* {pressure()}\n" in TEXT


@pytest.mark.parametrize(("difference", "text"), [(0.0, "under 0.01 %"), (0.00012, "0.012 %"), (0.1234, "12 %")])
def test_a_difference_in_words(difference: float, text: str) -> None:
    assert share(difference) == text


@pytest.mark.slow
@pytest.mark.properties
def test_the_page_is_what_the_comparisons_give_today() -> None:
    assert page() == TEXT, "python -m tests.house.models writes it anew"
