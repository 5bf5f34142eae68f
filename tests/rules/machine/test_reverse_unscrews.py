"""A threaded nose unscrews in reverse."""

import pytest

from tests.rules.bench import fired

RULE = "reverse-unscrews"
FIRES = [
    "BOWL; machine.nose=threaded; cut.rotation=reverse",
    "BOWL; machine.nose=threaded; cut.rotation=reverse; machine.nose_lock=no",
]
QUIET = [
    "BOWL",
    "BOWL; machine.nose=threaded",
    "BOWL; machine.nose=threaded; cut.rotation=reverse; machine.nose_lock=yes",
    "BOWL; machine.nose=cam-lock; cut.rotation=reverse",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
