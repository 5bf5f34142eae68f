"""What defects leave of the strength of the wood where it is gripped."""

from __future__ import annotations

from advisor.situation import Situation
from advisor.situation.shape import CHECKS, SOFT_WOOD

# Shares of the strength of clear wood that remain; they multiply (memory).
KNOT = 0.7
PITH = 0.8
CHECKED = 0.7
REACTION_WOOD = 0.8
SOFT = 0.3
SLOPE_SHARES = ((5.0, 0.5), (10.0, 0.8))  # 1 in 5, 1 in 10
STRAIGHT_SLOPE = 20.0

_KNOTS = frozenset({"knot"})
_PITHS = frozenset({"pith"})
_REACTION = frozenset({"reaction-wood"})
_SHARES = ((_KNOTS, KNOT), (_PITHS, PITH), (CHECKS, CHECKED), (_REACTION, REACTION_WOOD), (SOFT_WOOD, SOFT))


def defect_share(situation: Situation) -> float:
    """Share of the strength across the grain that knots, pith, checks, reaction wood and soft wood leave, 0 to 1.

    Nobody says where a knot or a check sits, so it sits in the grip. Source: memory.
    """
    conditions = situation.traits.conditions
    share = 1.0
    for group, left in _SHARES:
        if conditions & group:
            share *= left
    return share


def slope_share(situation: Situation) -> float:
    """Share of the strength along the grain that a slope of 1:n leaves; straight between the points, 1 from 1:20 on.

    Steeper than 1:5 the share falls with n. Source: memory.
    """
    slope = situation.case.work.grain_slope
    if slope is None or slope >= STRAIGHT_SLOPE:
        return 1.0
    (steep, steep_left), (mild, mild_left) = SLOPE_SHARES
    if slope <= steep:
        return steep_left * slope / steep
    if slope <= mild:
        return steep_left + (mild_left - steep_left) * (slope - steep) / (mild - steep)
    return mild_left + (1.0 - mild_left) * (slope - mild) / (STRAIGHT_SLOPE - mild)
