"""The page of a figure is for a person: what it is, its formula, inputs, range and source, and no program."""

import pytest

from advisor.figure import all_figures
from advisor.report.explain import explain


@pytest.mark.parametrize("name", sorted(all_figures())[::12])
def test_the_page_of_a_figure_holds_no_example_of_the_program(name: str) -> None:
    page = explain(name)[1]
    assert ">>>" not in page
    assert all(word in page for word in ("Formula", "Inputs", "Gives", "Valid", "Source", "Grade"))
