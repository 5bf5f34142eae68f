"""Two ends that are heavy on opposite sides shake even when the whole balances."""

import pytest

from tests.rules.bench import fired

RULE = "ends-lean-apart"
FIRES = [
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]; work.radii_far_end=[36mm, 37mm, 40mm, 41mm, 40mm, 37mm]",
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]; "
    "work.radii_far_end=[40mm, 39mm, 38mm, 39mm, 40mm, 39mm]; work.length=12in",
]
QUIET = [
    "SPINDLE",
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]",
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]; work.radii_far_end=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
