"""What holds a segmented blank."""

import pytest

from tests.rules.bench import advice, fired

RULE = "segmented-blank"
SEGMENTED = "BOWL; work.form=segmented"
FIRES = [SEGMENTED, f"{SEGMENTED}; work.purpose=platter", f"{SEGMENTED}; work.condition=[glued-joint]"]
QUIET = [
    "SPINDLE",
    "BOWL",
    f"{SEGMENTED}; work.state=round",
    f"{SEGMENTED}; work.grain=along",
    "BOWL; work.condition=[glued-joint]",
    f"{SEGMENTED}; work.material=acrylic",
    f"{SEGMENTED}; work.diameter=14in",  # heavy, which comes before
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)


def test_a_glued_block_comes_before_a_screw_in_the_segments() -> None:
    order = [hold.method for hold in advice(SEGMENTED).judgement.holds]
    assert order.index("waste-block-faceplate") < order.index("screw-chuck")
