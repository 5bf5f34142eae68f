"""The trade's rim-speed bands: which one this blank belongs to."""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Number, Table, Text, load
from advisor.situation import Situation

FULL_BAND = 9000.0  # inch·rpm, never advised beyond; common practice, no source
SAWN_ROUND = frozenset({"disc", "octagon", "round"})


class Band(NamedTuple):
    """Inch times rpm that the rim may reach, and what sets it."""

    value: float
    why: str


BANDS = Table(
    "bands.csv",
    (
        Text("when", one_of=("state", "condition", "form", "moisture", "purpose")),
        Text("value"),
        Number("band", 1000.0, FULL_BAND),
        Text("why"),
        Text("source"),
    ),
    key=("when", "value"),
    rows=27,
)


@lru_cache(maxsize=1)
def _rows() -> dict[tuple[str, str], Band]:
    return {(row.text("when"), row.text("value")): Band(row.number("band"), row.text("why")) for row in load(BANDS)}


def _keys(situation: Situation, tail_up: bool) -> list[tuple[str, str]]:
    traits = situation.traits
    state = traits.state
    if state == "not-round" and traits.form in SAWN_ROUND and tail_up:
        state = "sawn-round"
    keys = [("state", state), ("form", traits.form), ("purpose", situation.purpose)]
    keys += [("condition", condition) for condition in sorted(traits.conditions)]
    if traits.green:
        keys.append(("moisture", "green"))
    return keys


def band(situation: Situation, tail_up: bool) -> Band:
    """The lowest band of state, shape, condition and material; inch·rpm.

    Source: common practice, no source (6000 roughing, 9000 finishing; the lower ones ours).
    """
    rows = _rows()
    found = [rows[key] for key in _keys(situation, tail_up) if key in rows]
    material = situation.material
    if material is not None and material.speed_multiplier is not None:
        share = material.speed_multiplier
        found.append(Band(min(share, 1.0) * FULL_BAND, f"{material.title}: {share:g} of {FULL_BAND:.0f}"))
    return min(found, key=lambda entry: entry.value)
