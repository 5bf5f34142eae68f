"""Grip that jaws lose or gain by their own weight as the chuck turns."""

from __future__ import annotations

import math
from functools import lru_cache
from itertools import pairwise

from advisor.data.tables import Number, Table, Text, load
from advisor.physics import jaws
from advisor.physics.balance import per_minute
from advisor.reckoning.holds import peak, tail_up
from advisor.reckoning.holds.capacity import Job, utilization
from advisor.reckoning.holds.margins import MODELS
from advisor.reckoning.holds.need import need
from advisor.reckoning.holds.strengths import friction
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation
from advisor.situation.assumption import Assumption

SAFETY = 1.5  # both of VDI 3106: on the grip at rest, and on what the cut needs
NEED_MOST = 0.75  # of the grip at rest over its safety; a hold weaker than that is judged as a hold; memory
JAW_MOMENTS = Table(
    "jaw_moments.csv",
    (Text("method"), Number("gripped_mm", 5.0, 500.0), Number("moment_kg_m", 0.001, 2.0), Text("why"), Text("source")),
    key=("method", "gripped_mm"),
    rows=22,
)


@lru_cache(maxsize=1)
def _moments() -> dict[str, tuple[tuple[float, float], ...]]:
    found: dict[str, list[tuple[float, float]]] = {}
    for row in load(JAW_MOMENTS):
        found.setdefault(row.text("method"), []).append((row.number("gripped_mm"), row.number("moment_kg_m")))
    return {method: tuple(sorted(rows)) for method, rows in found.items()}


def jaw_moment(method: str, gripped: float) -> float | None:
    """Mass times radius of all jaws in kg·m of an ordinary chuck closed on `gripped` mm; None for what has no jaws.

    Straight lines between the rows of the table, level beyond them. Source: memory.
    """
    rows = _moments().get(method)
    if rows is None:
        return None
    for (before, low), (after, high) in pairwise(rows):
        if gripped <= after:
            return low + (high - low) * max(gripped - before, 0.0) / (after - before)
    return rows[-1][1]


def jaws_at_speed(situation: Situation, method: str) -> tuple[Limit, Assumption] | None:
    """The speed up to which the jaws keep (or, opened in a recess, do not overdo) their grip; and the jaws assumed.

        outside: F_0 = S·(S·F_need + J·ω²);  in a recess: J·ω² ≤ F_0/S, the other half of what splits it

    Source: VDI 3106; mass of the jaws and the grip of a hand-tightened key from memory.
    """
    if method not in _moments():
        return None
    up = tail_up(situation, method)
    factor = peak(situation, method, up)
    asked = need(situation, method, factor, up, 0.0)
    model = MODELS[method](Job(situation, method, up, factor, asked))
    if model.low is None or model.typical is None or model.size is None:
        return None
    rub = friction(situation)
    low, typical = model.low.pull / rub.low, model.typical.pull / rub.typical
    moment = jaw_moment(method, model.size)
    if moment is None or low <= 0:
        return None
    told = Assumption("mass of the jaws", f"{moment:.2g} kg·m", "all jaws of an ordinary chuck, mass times radius")
    if method == "jaws-in-recess":
        rpm = per_minute(math.sqrt(low / SAFETY / moment))
        text = f"n = (30/π)·√(F_0/(S·J)), F_0 = {low:.0f} N, S = {SAFETY:g}, J = {moment:.2g} kg·m (memory)"
        why = "the jaws open further and split the recess"
        return Limit("jaws-at-speed", rpm, "estimate", ("vdi-3106", "memory"), why, text), told
    grip = min(SAFETY * low, typical)
    wanted = min(SAFETY * typical * utilization(asked, model.typical), NEED_MOST * grip / SAFETY)
    figure = jaws.chuck_speed.figure(grip=grip, needed_grip=wanted, safety=SAFETY, jaw_moment=moment)
    limit = from_figure("jaws-at-speed", figure, why="the jaws lose their grip", text="J of the jaws from memory")
    return None if limit is None else (limit, told)
