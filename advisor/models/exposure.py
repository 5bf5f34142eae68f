"""Limits for dust and fume in the air of a workplace, as their agencies print them.

A limit is a benchmark for a workplace, not a promise: people have become allergic below every one of them, and
a home shop is outside most of the rules. Ask the agency for the edition in force.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Number, Table, Text, load

READ = ("as printed in the copy read, 2026", "from memory")
LIMITS = Table(
    "exposure_limits.csv",
    (
        Text("id"),
        Text("agency"),
        Text("substance"),
        Number("value", 0.001, 20),
        Text("unit", one_of=("mg/m³", "ppm", "fibers/cm³")),
        Text("averaging", one_of=("8 hours",)),
        Text("note", required=False),
        Text("read", one_of=READ),
        Text("source"),
    ),
    key=("id",),
    rows=15,
)


class ExposureLimit(NamedTuple):
    """One limit: value and unit over the averaging time; `read` says whether a copy was read or it is remembered."""

    id: str
    agency: str
    substance: str
    value: float
    unit: str
    averaging: str
    note: str
    read: str
    source: str

    @property
    def text(self) -> str:
        """The limit as a line to print."""
        line = f"{self.agency}: {self.substance}, {self.value:g} {self.unit} averaged over {self.averaging}"
        return line + (f"; {self.note}" if self.note else "") + f" ({self.read})"


@lru_cache(maxsize=1)
def exposure_limits() -> tuple[ExposureLimit, ...]:
    """Every limit of the table."""
    return tuple(
        ExposureLimit(
            id=row.text("id"),
            agency=row.text("agency"),
            substance=row.text("substance"),
            value=row.number("value"),
            unit=row.text("unit"),
            averaging=row.text("averaging"),
            note=row.text("note"),
            read=row.text("read"),
            source=row.text("source"),
        )
        for row in load(LIMITS)
    )


def limits_page() -> str:
    """Every limit, with what a limit is and is not."""
    lines = [
        "Limits for dust and fume in the air of a workplace, as their agencies print them",
        "",
        "A limit is a benchmark for a workplace and no promise: people have become allergic below every one of them,",
        "and wood dust causes cancer. Keep the dust as low as you can, whatever the number. A home shop is outside",
        "most of these rules; ask the agency for the edition in force.",
        "",
    ]
    return "\n".join([*lines, *(f"  {limit.text}" for limit in exposure_limits())])
