"""Friction of work against what holds it.

Friction helps in one formula and hurts in another: take the end that makes the answer safer, low for grip, high for
heat.
"""

from __future__ import annotations

from functools import lru_cache

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.figure import Spread

_TABLE = Table(
    "friction.csv",
    (
        Text("pair"),
        *(
            Number(name, 0.01, 1.5)
            for name in ("low", "typical", "high", "kinetic_low", "kinetic_typical", "kinetic_high")
        ),
        Text("source"),
    ),
    key=("pair",),
    rows=10,
)


@lru_cache(maxsize=1)
def _rows() -> dict[str, Row]:
    return {row.text("pair"): row for row in load(_TABLE)}


def friction(pair: str) -> Spread:
    """Friction at rest: `steel-dry` and `steel-wet` (wood on ground steel), `rubber` (seal on wood), `nylon-steel` ...

    KeyError for a pair the table does not have. Source: derived from published tests or from memory, row by row.

    >>> friction("steel-dry")
    Spread(low=0.2, typical=0.35, high=0.65)
    """
    row = _rows()[pair]
    return Spread(row.number("low"), row.number("typical"), row.number("high"))


def sliding_friction(pair: str) -> Spread:
    """Friction once it slides: lower than at rest, so that what slips keeps slipping and burns. As `friction`.

    >>> sliding_friction("steel-wet").typical
    0.15
    """
    row = _rows()[pair]
    return Spread(row.number("kinetic_low"), row.number("kinetic_typical"), row.number("kinetic_high"))
