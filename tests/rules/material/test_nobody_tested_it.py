"""What may be something worse is tested first."""

import pytest

from tests.rules.bench import fired

RULE = "nobody-tested-it"
FIRES = [
    "STONE; work.material=soapstone; work.tested=no",
    "PLASTIC; work.material=bronze; work.tested=no",
]
QUIET = [
    "STONE; work.tested=no",
    "PLASTIC",
    "STONE; work.material=soapstone",
    "STONE; work.material=unknown stone; work.tested=no",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
