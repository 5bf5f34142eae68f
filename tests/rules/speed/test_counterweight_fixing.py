"""A counterweight is one more piece that can fly."""

import pytest

from tests.rules.bench import fired

RULE = "counterweight-fixing"
FIRES = [
    "BOWL; work.offset=12mm",
]
QUIET = [
    "SPINDLE",
    "BOWL; work.offset=0.5mm; machine.mass=600kg",
    "BOWL; work.state=round",
    "BOWL; work.offset=12mm; work.diameter=4.5in",
    "BOWL; work.offset=12mm; work.state=round",
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]; work.radii_far_end=[36mm, 37mm, 40mm, 41mm, 40mm, 37mm]",
    "SPINDLE; work.radii=[40mm, 38mm, 36mm, 38mm, 40mm, 41mm]; "
    "work.radii_far_end=[40mm, 39mm, 38mm, 39mm, 40mm, 39mm]; work.length=12in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
