"""Numbers as a person reads them: two figures and no more, a limit down, a need up."""

import re

import pytest

from advisor.report.numbers import assumed_value, limit_down, power
from advisor.report.sentences import assumed_lines
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


@pytest.mark.parametrize(
    ("text", "inch"),
    [
        ("101.6 mm", "4 in"),
        ("5.7 kg", "12.6 lb"),
        ("3000 to 6000 N", "674 to 1350 lbf"),
        ("0.28 mm", "0.011 in"),
        ("6 screws", "6 screws"),
        ("0.016 kg·m", "0.016 kg·m"),
        ("not-round", "not-round"),
        ("White oak", "White oak"),
    ],
)
def test_what_nobody_said_is_told_in_the_units_that_are_printed(text: str, inch: str) -> None:
    assert assumed_value(text, "inch") == inch
    assert assumed_value(text, "metric") == text


@pytest.mark.parametrize("base", ["BOWL", "SPINDLE", "NARROW", "PLATTER"])
def test_an_inch_answer_assumes_no_length_mass_or_force_in_metric(base: str) -> None:
    told = list(assumed_lines(answers.of(f"{base}; units=inch"), "inch"))
    assert any(re.search(r" = [\d.]+ in: ", text) for text in told)
    assert not [text for text in told if re.search(r" = [\d.]+( to [\d.]+)? (mm|kg|N):", text)]
