"""What a hold stands, before any divisor, and how several loads share it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from advisor.reckoning.holds.need import Need
from advisor.situation import Situation
from advisor.situation.assumption import Assumption

MOST_RATIO = 1000.0  # a hold that is asked for nothing; numerics


class Capacity(NamedTuple):
    """Torque N·m, tipping moment N·m and axial pull N at which the hold lets go."""

    torque: float
    moment: float
    pull: float


NOTHING = Capacity(0.0, 0.0, 0.0)  # exact


class Divisors(NamedTuple):
    """What typical capacity is divided by, with the tail up and with it away."""

    up: float
    away: float


class Job(NamedTuple):
    """One hold to be judged: the work, the method, where the tail is, how the cut peaks, and what is asked."""

    situation: Situation
    method: str
    tail_up: bool
    peak: float
    need: Need


@dataclass
class Model:
    """Capacity at both ends of its own scatter; None where practice alone judges.

    `size` is the size in mm by which the trade judges the hold's proportion, `given` whether the person stated it.
    `ceiling` is a further ratio that caps the result, such as a floor that suction would crack.
    """

    divisors: Divisors
    grade: str = "rough-guide"
    low: Capacity | None = None
    typical: Capacity | None = None
    size: float | None = None
    given: bool = False
    sizes: dict[str, float] = field(default_factory=dict)
    assumed: list[Assumption] = field(default_factory=list)
    missing: list[tuple[str, str]] = field(default_factory=list)
    ceiling: tuple[str, float, float] | None = None

    def take(self, field_: str, own: float | None, advised: float, unit: str = "mm") -> float:
        """The person's value, or the advised one with a note that it was supplied; kept under its last word."""
        value = advised if own is None else own
        if own is None:
            self.assumed.append(Assumption(f"hold.{field_}", f"{value:.3g} {unit}", "the size advised for this work"))
        self.sizes[field_.rpartition(".")[2]] = value
        return value

    def suppose(self, what: str, value: str, why: str) -> None:
        """Note a value that has no length, such as a grip or the kind of a glue."""
        self.assumed.append(Assumption(what, value, why))


def _part(need: float, capacity: float) -> float:
    if need <= 0:
        return 0.0
    return need / capacity if capacity > 0 else math.inf


def utilization(need: Need, capacity: Capacity) -> float:
    """T/T_cap + M/M_cap + P/P_cap: linear, on the safe side. Source: derived."""
    return (
        _part(need.torque, capacity.torque) + _part(need.moment, capacity.moment) + _part(need.pull, capacity.pull)
    )


def ratio(need: Need, capacity: Capacity) -> float:
    """Capacity over need when the loads come together; at most 1000, 0 for a hold that stands nothing."""
    used = utilization(need, capacity)
    return min(1 / used, MOST_RATIO) if used > 0 else MOST_RATIO


def parts(need: Need, capacity: Capacity) -> Mapping[str, tuple[float, float, str]]:
    """(capacity, need, unit) of each load there is."""
    loads = {
        "torque": (capacity.torque, need.torque, "N·m"),
        "moment": (capacity.moment, need.moment, "N·m"),
        "pull": (capacity.pull, need.pull, "N"),
    }
    return {name: load for name, load in loads.items() if load[1] > 0}
