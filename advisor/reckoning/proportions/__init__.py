"""What a hold needs on this piece: diameter, length, wall, count; solved in the real model where there is one.

`proportions` gives the sizes of one hold. `Proportions.put_into` fills them into a case, so that the next stage of a
job can be judged with them; `Proportions.enough` says whether the sizes carry the cut.
"""

from __future__ import annotations

from advisor.reckoning.proportions.fastened import bonded, faceplate, screw_chuck, sealed
from advisor.reckoning.proportions.practice import from_practice, plug, taken
from advisor.reckoning.proportions.recess import recess
from advisor.reckoning.proportions.size import Check, Circle, Proportions, Size, Trial
from advisor.reckoning.proportions.tenon import tenon
from advisor.situation import Situation

__all__ = ["Check", "Circle", "Proportions", "Size", "proportions"]

JAWED = frozenset({
    "jaws-on-tenon", "long-jaws", "collet", "collet-block", "split-bushing", "soft-jaws", "three-jaw",
    "four-jaw-independent", "drill-chuck",
})  # fmt: skip
SOLVED = {
    **dict.fromkeys(JAWED, tenon),
    "jaws-in-recess": recess,
    "faceplate-screws": faceplate,
    "screw-chuck": screw_chuck,
    "glue-block": bonded,
    "waste-block-faceplate": bonded,
    "paper-joint": bonded,
    "double-sided-tape": bonded,
    "vacuum": sealed,
}

WITH_A_STEADY = "only with a steady to take the tipping; without one no size of it is enough"


def _solved(trial: Trial) -> Proportions:
    solve = SOLVED.get(trial.method)
    if trial.method == "offset-faceplate" and trial.situation.wood is not None:
        solve = faceplate
    return solve(trial) if solve is not None else taken(trial)


def proportions(situation: Situation, method: str, rpm: float) -> Proportions:
    """Sizes of one hold at the starting speed `rpm`: the person's own, else those to make, with the smallest that
    carries the cut and the largest there is room for. Where none does alone, a steady takes the tipping if it can.

    Raises KeyError for a method that is none of the 35. Source: each method's own model; common practice, no source,
    for the limits that practice sets.
    """
    trial = Trial(situation, method, rpm)
    found = _solved(trial)
    if found.enough is False and trial.figures().steady_typical is not None:
        steadied = _solved(Trial(situation, method, rpm, steadied=True))
        if steadied.enough:
            found = steadied._replace(notes=(*steadied.notes, WITH_A_STEADY))
    more = from_practice(situation, method)
    if method in JAWED:
        more += plug(situation)
    return found._replace(sizes=found.sizes + more)
