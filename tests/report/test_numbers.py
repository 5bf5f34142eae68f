"""Numbers as a person reads them: two figures and no more, a limit down, a need up."""

import re

import pytest

from advisor.report.numbers import limit_down, power
from advisor.report.terminal import lines
from tests.whole import answers


@pytest.mark.parametrize(
    ("value", "told"), [(2049.0, "2000"), (265524.0, "260000"), (101.6, "100"), (2.29, "2.2"), (0.94, "0.94"), (0, "0")]
)
def test_a_limit_is_never_flattered(value: float, told: str) -> None:
    assert limit_down(value) == told


@pytest.mark.parametrize(("watts", "told"), [(346.0, "350 W"), (1301.0, "1400 W"), (5.12, "5.2 W")])
def test_what_the_motor_has_to_give_is_told_up(watts: float, told: str) -> None:
    assert power(watts) == told


def test_no_limit_and_no_margin_is_told_to_more_than_two_figures() -> None:
    text = "\n".join(line.text for line in lines(answers.of("SPINDLE"), "leg", "metric"))
    told = re.findall(r"^  [a-z-]+ +(\d+) .*█", text, re.MULTILINE) + re.findall(r", margin ([\d.]+)", text)
    assert len(told) > 10
    assert [number for number in told if len(number.replace(".", "").strip("0")) > 2] == []
