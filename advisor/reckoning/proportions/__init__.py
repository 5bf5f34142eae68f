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


def proportions(situation: Situation, method: str, rpm: float) -> Proportions:
    """Sizes of one hold at the starting speed `rpm`: the person's own, else those to make, with the smallest that
    carries the cut and the largest there is room for.

    Raises KeyError for a method that is none of the 35. Source: each method's own model; common practice, no source,
    for the limits that practice sets.
    """
    trial = Trial(situation, method, rpm)
    solve = SOLVED.get(method)
    if method == "offset-faceplate" and situation.wood is not None:
        solve = faceplate
    found = solve(trial) if solve is not None else taken(trial)
    more = from_practice(situation, method)
    if method in JAWED:
        more += plug(situation)
    return found._replace(sizes=found.sizes + more)
