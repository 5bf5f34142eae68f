"""What a proportion is, and how a size is tried in the real model. All mm unless a size says otherwise."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from advisor.models.case import Case, Hold
from advisor.models.fields import changed, spec_at
from advisor.reckoning.holds.capacity import Job
from advisor.reckoning.holds.margins import HoldFigures, hold_figures, job_of
from advisor.reckoning.holds.methods import GLUED, SCREW_METHODS
from advisor.situation import Situation
from advisor.units import MM_PER_INCH

ENOUGH = 1.0  # typical capacity over its divisor, over the need: from here on a hold is accepted; exact by definition
SCAN = 10  # sizes tried between both ends before the search closes in; numerics
CLOSE_IN = 9  # halvings: to a five-thousandth of the span; numerics
SCREW_CHUCK = "screw-chuck"


class Size(NamedTuple):
    """One size of a hold: `name` is the field of the case below `hold` where there is one, `unit` "mm" or "" (a count).

    value is the person's own, else the one to make. least is the smallest that carries the cut or that practice takes,
    most what the piece or the jaws leave room for; None where nobody can say, or where none carries it.
    """

    name: str
    value: float
    unit: str
    given: bool
    least: float | None
    most: float | None
    why: str


class Check(NamedTuple):
    """One way to fail that a size decides: what it stands against what comes, in the same unit."""

    name: str
    have: float
    need: float
    unit: str
    grade: str


class Circle(NamedTuple):
    """The true circle of the jaws: its diameter where it is known, the margin of the hold when the jaws touch fully and
    when they touch at their corners only."""

    diameter: float | None
    on: float
    off: float


class Proportions(NamedTuple):
    """What one hold needs on this piece.

    enough: whether the sizes to make carry the cut; None where practice alone judges. margin: typical capacity over its
    divisor, over the need. gives_first: turns, tips, snaps, crushes, splits, pulls-out, opens, slips, or nothing known.
    """

    method: str
    sizes: tuple[Size, ...]
    enough: bool | None
    margin: float | None
    gives_first: str
    checks: tuple[Check, ...] = ()
    circle: Circle | None = None
    notes: tuple[str, ...] = ()

    def of(self, name: str) -> Size | None:
        """The size of that name."""
        return next((size for size in self.sizes if size.name == name), None)

    def put_into(self, case: Case) -> Case:
        """The case with this hold chosen and its sizes filled in, so that the next stage can be judged with them."""
        filled = changed(case, "hold.method", self.method)
        for size in self.sizes:
            if spec_at(Hold, tuple(size.name.split("."))) is not None:
                value: float = int(size.value) if size.unit == "" else size.value
                filled = changed(filled, f"hold.{size.name}", value)
        return filled


def shop(value: float, most: float | None = None) -> float:
    """A length rounded up to a whole millimeter, never past `most`."""
    up = math.ceil(value - 1e-9)
    return up if most is None or up <= most else most


def said(millimeters: float) -> str:
    """A length as both systems say it."""
    return f"{millimeters:.0f} mm ({millimeters / MM_PER_INCH:.2g} in)"


def as_judged(situation: Situation, method: str) -> Situation:
    """The situation with this method chosen and only those sizes of the person's that belong to it, as the model reads
    them."""
    hold = situation.case.hold
    update: dict[str, Any] = {"method": method}
    if hold.screws is not None:
        fits = (hold.screws.count == 1) == (method == SCREW_CHUCK) and hold.method not in SCREW_METHODS
        if not fits and hold.method != method:
            update["screws"] = None
    elsewhere = hold.method not in (None, method)
    if hold.glue is not None and elsewhere and hold.method in (*GLUED, "double-sided-tape"):
        update["glue"] = hold.glue.altered({"diameter": None})
    if hold.chuck is not None and elsewhere and method != "through-spindle":
        update["chuck"] = hold.chuck.altered({"grip": None})
    case = situation.case.altered({"hold": hold.altered(update)})
    return situation._replace(case=case)


class Trial:
    """One method on one situation at one speed; sizes are tried by putting them into the case and judging it anew."""

    def __init__(self, situation: Situation, method: str, rpm: float, steadied: bool = False) -> None:
        self.situation = as_judged(situation, method)
        self.method = method
        self.rpm = rpm
        self.steadied = steadied

    @property
    def job(self) -> Job:
        """What is judged, as the model takes it; a steady takes the tipping."""
        job = job_of(self.situation, self.method, self.rpm)
        return job._replace(need=job.need._replace(moment=0.0)) if self.steadied else job

    @property
    def divisor(self) -> float:
        """What the typical capacity is divided by."""
        figures = self.figures()
        return figures.steady_divisor if self.steadied else figures.divisor

    def with_sizes(self, sizes: Mapping[str, float | str]) -> Trial:
        """The same with these fields below `hold` set."""
        case = self.situation.case
        for name, value in sizes.items():
            case = changed(case, f"hold.{name}", value)
        return Trial(self.situation._replace(case=case), self.method, self.rpm, self.steadied)

    def figures(self, sizes: Mapping[str, float] | None = None) -> HoldFigures:
        """The judgment in numbers with these sizes."""
        trial = self.with_sizes(sizes) if sizes else self
        return hold_figures(trial.situation, self.method, self.rpm)

    def margin(self, sizes: Mapping[str, float] | None = None) -> float | None:
        """Typical capacity over its divisor, over the need; with a steady to take the tipping where there is one."""
        found = self.figures(sizes)
        if not self.steadied:
            return found.divided
        return None if found.steady_typical is None else found.steady_typical / found.steady_divisor

    def carries(self, sizes: Mapping[str, float]) -> bool:
        """Whether the hold is enough with these sizes; a method without a model never is by numbers."""
        found = self.margin(sizes)
        return found is not None and found >= ENOUGH

    def first_of(self, name: str, values: Sequence[float], others: Mapping[str, float] | None = None) -> float | None:
        """The first of these values, smallest first, that carries the cut."""
        more = dict(others or {})
        return next((value for value in values if self.carries({**more, name: value})), None)

    def least(self, name: str, low: float, high: float, others: Mapping[str, float] | None = None) -> float | None:
        """The smallest size from `low` to `high` that carries the cut; None where none does."""
        if high < low:
            return None
        more = dict(others or {})
        steps = [low + (high - low) * step / SCAN for step in range(SCAN + 1)]
        found = self.first_of(name, steps, more)
        if found is None or found == low:
            return found
        fails, carries = found - (high - low) / SCAN, found
        for _ in range(CLOSE_IN):
            middle = (fails + carries) / 2
            if self.carries({**more, name: middle}):
                carries = middle
            else:
                fails = middle
        return carries
