"""A hard stop unscrews a threaded nose."""

import pytest

from tests.rules.bench import fired

RULE = "brake-unscrews"
FIRES = [
    "BOWL; machine.nose=threaded; machine.brake=yes",
]
QUIET = [
    "BOWL",
    "BOWL; machine.nose=threaded",
    "BOWL; machine.nose=cam-lock; machine.brake=yes",
    "BOWL; machine.nose=threaded; machine.brake=yes; machine.nose_lock=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
