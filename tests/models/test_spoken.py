"""How a way of holding is called inside a sentence."""

import pytest

from advisor.models.methods import all_methods
from advisor.models.spoken import spoken


@pytest.mark.parametrize(
    ("method", "said"),
    [
        ("three-jaw", "engineer's three-jaw chuck"),
        ("double-sided-tape", "double-sided tape"),
        ("collet", "collet"),
        ("glue-block", "glue block"),
    ],
)
def test_it_is_said_as_the_trade_says_it(method: str, said: str) -> None:
    assert spoken(method) == said


def test_no_two_are_called_alike() -> None:
    names = [spoken(entry.id) for entry in all_methods()]
    assert len(names) == len(set(names))
