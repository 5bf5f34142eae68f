"""Everyday windows between centers, 1 to 4 in work in five woods (common practice, no source).

Between seated teeth and a cup, shaping always finds a window; a toothed ring shapes; a cup drive finishes.
"""

from __future__ import annotations

from typing import Any

import pytest

from tests.rules.bench import LATHE, PERSON
from tests.whole.answers import answer, of

WOODS = ("sugar maple", "white oak", "black walnut", "ponderosa pine", "American beech")
SIZES = (1.0, 1.5, 2.0, 3.0, 4.0)
MOST = 2.0**0.5  # across the corners of a square of side 1


def window(wood: str, inches: float, method: str, operation: str) -> dict[str, Any]:
    """The answer for a foot of this wood, a square of this side when roughed, else a round."""
    rough = operation == "roughing"
    across = inches * (MOST if rough else 1.0)
    found: dict[str, Any] = answer(
        [
            *LATHE,
            *PERSON,
            f"work.material={wood}",
            "work.moisture=12%",
            f"work.form={'square' if rough else 'round'}",
            f"work.state={'not-round' if rough else 'round'}",
            f"work.diameter={across!r}in",
            "work.length=12in",
            "work.grain=along",
            "work.purpose=spindle",
            f"cut.operation={operation}",
            f"hold.method={method}",
            f"hold.kit=[{method}]",
            "hold.tail.kind=live-cup",
        ]
    )
    return found


def is_light(found: dict[str, Any]) -> bool:
    """Narrow, and the answer says light cuts."""
    said = [entry["text"].lower() for entry in found["reasons"]]
    return found["thrust"]["window"] == "narrow" and any("light cuts only" in text for text in said)


@pytest.mark.parametrize("wood", WOODS)
def test_shaping_on_seated_teeth_never_finds_an_empty_window(wood: str) -> None:
    for inches in SIZES:
        part = window(wood, inches, "spur-drive", "shaping")["thrust"]
        assert part["window"] in ("open", "narrow"), (inches, part)
        assert part["seat_depth_mm"] >= 2
        assert part["set_n"] <= part["allowed_n"]


@pytest.mark.parametrize("wood", WOODS)
def test_roughing_squares_on_seated_teeth_at_worst_takes_light_cuts(wood: str) -> None:
    for inches in SIZES:
        found = window(wood, inches, "spur-drive", "roughing")
        assert found["thrust"]["window"] == "open" or is_light(found), (inches, found["thrust"])


@pytest.mark.parametrize("wood", WOODS)
def test_a_toothed_ring_shapes_one_to_three_inches(wood: str) -> None:
    for inches in (1.0, 1.5, 2.0, 3.0):
        part = window(wood, inches, "toothed-ring-drive", "shaping")["thrust"]
        assert part["window"] in ("open", "narrow"), (inches, part)
        assert "light_cuts_n" not in part


@pytest.mark.parametrize("wood", WOODS)
def test_a_cup_drive_roughs_squares_lightly_or_not_at_all(wood: str) -> None:
    for inches in SIZES:
        found = window(wood, inches, "cup-drive", "roughing")
        assert found["thrust"]["window"] == "empty" or is_light(found), (inches, found["thrust"])
    assert window(wood, 4.0, "cup-drive", "roughing")["thrust"]["window"] == "empty"


@pytest.mark.parametrize("wood", WOODS)
def test_a_cup_drive_finishes(wood: str) -> None:
    for inches in SIZES:
        part = window(wood, inches, "cup-drive", "finishing")["thrust"]
        assert part["window"] in ("open", "narrow"), (inches, part)
        assert "light_cuts_n" not in part


@pytest.mark.parametrize("wood", WOODS)
@pytest.mark.parametrize("tail", ["live-point", "live-cup"])
@pytest.mark.parametrize("method", ["two-spur-drive", "spur-drive"])
def test_a_bowl_blank_between_spurs_and_tail_finds_a_window(wood: str, tail: str, method: str) -> None:
    for inches in (6, 10):
        part = answer(
            [
                *LATHE,
                *PERSON,
                f"work.material={wood}",
                "work.moisture=12%",
                "work.form=disc",
                "work.state=not-round",
                f"work.diameter={inches}in",
                "work.length=4in",
                "work.grain=across",
                "work.purpose=bowl",
                f"hold.method={method}",
                f"hold.kit=[{method}]",
                f"hold.tail.kind={tail}",
            ]
        )["thrust"]
        assert part["window"] in ("open", "narrow"), (inches, part)


def test_a_wider_cup_of_work_asks_for_more_thrust() -> None:
    sets = [window("sugar maple", inches, "toothed-ring-drive", "shaping")["thrust"]["set_n"] for inches in SIZES]
    assert sets == sorted(sets)


@pytest.mark.parametrize("wood", ["sugar maple", "white oak", "ponderosa pine"])
@pytest.mark.parametrize("size", ["0.5in", "0.75in"])
def test_where_nobody_chose_the_hold_it_is_one_that_a_thrust_can_be_set_for(wood: str, size: str) -> None:
    """A thin square is not left on a ring that no thrust turns in it (common practice, no source)."""
    found = of(f"SPINDLE; work.material={wood}; work.diameter={size}; work.length=8in")
    assert found["thrust"]["window"] in ("open", "narrow", "not-used")
    assert found["holding"][0]["verdict"] in ("suits", "with-care")
    chosen = of(f"SPINDLE; work.material={wood}; work.diameter={size}; work.length=8in; hold.method=toothed-ring-drive")
    assert chosen["thrust"]["window"] == "empty"
