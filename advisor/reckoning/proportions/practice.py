"""Sizes that practice alone gives, and those that a model already took: nothing is solved for here."""

from __future__ import annotations

from functools import lru_cache

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.reckoning.holds.methods import SPURS
from advisor.reckoning.holds.sizes import clamp
from advisor.reckoning.proportions.size import ENOUGH, Proportions, Size, Trial
from advisor.situation import Situation

TABLE = Table(
    "practice_sizes.csv",
    (
        Text("method"),
        Text("name"),
        Text("of"),
        Number("share", 0, 1),
        Number("least", 1, 2000),
        Number("most", 1, 2000),
        Text("unit", required=False),
        Text("why"),
        Text("source"),
    ),
    key=("method", "name"),
    rows=22,
)
# What a model calls its sizes, where the case has no field for them.
NAMES = {
    "mandrel": {"diameter": "mandrel.diameter"},
    "friction-block": {"diameter": "pad.diameter"},
    "sphere-cups": {"diameter": "cup.diameter"},
    "jam-chuck": {"diameter": "jam.diameter", "length": "jam.length"},
}
DRIVE = {"outer_diameter": "drive.outer_diameter", "seated_depth": "drive.seated_depth"}
MODEL_WHY = {
    "mandrel.diameter": "its two faces drive",
    "pad.diameter": "half the work, faced with rubber or cork",
    "cup.diameter": "a half to two thirds of the ball",
    "jam.diameter": "turned to the work, with one or two degrees of taper",
    "jam.length": "longer does not go on straight",
    "drive.outer_diameter": "a quarter to a half of the end, six tenths for a ring",
    "drive.seated_depth": "sunk in before the tailstock holds it",
}


@lru_cache(maxsize=1)
def _rows() -> dict[str, tuple[Row, ...]]:
    found: dict[str, tuple[Row, ...]] = {}
    for row in load(TABLE):
        found[row.text("method")] = (*found.get(row.text("method"), ()), row)
    return found


def from_practice(situation: Situation, method: str) -> tuple[Size, ...]:
    """The rows of practice for this method on this piece; a share of the work between two limits."""
    body = situation.body
    whole = {"nothing": 0.0, "end": body.end_diameter, "diameter": body.diameter, "length": body.length}
    return tuple(
        Size(
            row.text("name"),
            clamp(row.number("share") * whole[row.text("of")], row.number("least"), row.number("most")),
            row.text("unit"),
            False,
            None,
            None,
            row.text("why"),
        )
        for row in _rows().get(method, ())
    )


def plug(situation: Situation) -> tuple[Size, ...]:
    """A plug in the end of a tube that jaws close on; nothing where there is no tube or nobody said its wall."""
    wall = situation.case.work.wall
    bore = None if wall is None else situation.body.end_diameter - 2 * wall
    if situation.traits.form not in ("tube", "ring") or bore is None or bore <= 0:
        return ()
    why = "a plug in the end, or the jaws press the tube out of round"
    return (
        Size("plug.diameter", bore, "mm", False, None, None, why),
        Size("plug.length", max(bore, 25.0), "mm", False, None, None, "past the end of the jaws"),
    )


def taken(trial: Trial) -> Proportions:
    """The sizes the model of this method took; they are the trade's or the person's own."""
    figures = trial.figures()
    names = NAMES.get(trial.method, DRIVE)
    sizes = tuple(
        Size(names[key], value, "mm", figures.given, None, None, MODEL_WHY[names[key]])
        for key, value in figures.sizes.items()
        if key in names
    )
    margin = trial.margin()
    first = "tears" if trial.method in SPURS else "slips"
    return Proportions(
        trial.method, sizes, None if margin is None else margin >= ENOUGH, margin, first if margin is not None else ""
    )
