"""Grip, fit, friction and glue as shops reach them: the low end and the ordinary value, one table each."""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Number, Table, Text, load

UNNAMED_ADHESIVE = "hot-melt"  # the weakest of those in use


class Ends(NamedTuple):
    """The low end of ordinary workmanship and its typical value."""

    low: float
    typical: float


class Adhesive(NamedTuple):
    """Shear strength in MPa, and opening strength as a share of it."""

    shear: Ends
    peel: float


SIZES_TABLE = Table(
    "hold_sizes.csv",
    (
        Text("method"),
        Text("name"),
        Number("low", 0.01, 20000),
        Number("typical", 0.01, 20000),
        Text("unit"),
        Text("source"),
    ),
    key=("method", "name"),
    rows=29,
)
ADHESIVES_TABLE = Table(
    "adhesives.csv",
    (
        Text("kind"),
        Number("shear_low", 0.01, 20),
        Number("shear_typical", 0.01, 20),
        Number("peel", 0.01, 1),
        Number("heat_cap", 30, 200),
        Text("source"),
    ),
    key=("kind",),
    rows=6,
)


@lru_cache(maxsize=1)
def _sizes() -> dict[tuple[str, str], Ends]:
    return {
        (row.text("method"), row.text("name")): Ends(row.number("low"), row.number("typical"))
        for row in load(SIZES_TABLE)
    }


def workmanship(method: str, name: str) -> Ends:
    """Low and typical value of one quantity of one method. KeyError when the table has no such row."""
    return _sizes()[method, name]


@lru_cache(maxsize=1)
def _adhesives() -> dict[str, Adhesive]:
    return {
        row.text("kind"): Adhesive(Ends(row.number("shear_low"), row.number("shear_typical")), row.number("peel"))
        for row in load(ADHESIVES_TABLE)
    }


def adhesive(kind: str) -> Adhesive:
    """Strength of one kind of adhesive, fully cured, side grain, at room temperature; of the weakest if unknown."""
    return _adhesives().get(kind, _adhesives()[UNNAMED_ADHESIVE])
