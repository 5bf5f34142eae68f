"""How limp the bar is under the tool."""

from typing import NamedTuple

from advisor.physics import slender
from advisor.reckoning import ends
from advisor.situation import Situation

PUSH_N = 50.0  # what a tool leans on the work sideways; memory


class Slender(NamedTuple):
    """Length over diameter, and deflection in mm under a 50 N push with the shear share in it."""

    ratio: float
    deflection: float | None
    tail_up: bool


def slender_bar(situation: Situation, between: bool, tail_up: bool) -> Slender:
    """Deflection over its free length at the low stiffness: of the finished profile, else of its thinnest section.

    A profile counts as the even bar that gives as much at its worst place: a neck does not make the whole bar thin.
    """
    modulus = ends.modulus_low(situation)
    length = ends.free_length(situation) if tail_up else situation.case.hold.overhang or situation.body.length
    word: slender.Ends = "pinned-pinned" if between else "fixed-pinned" if tail_up else "free"
    profile, thin = situation.case.work.profile, situation.body.thinnest
    if profile:
        thin = max(thin, slender.even_diameter(profile, word))
    ratio = length / thin
    if modulus is None or situation.side_grain:
        return Slender(ratio, None, tail_up)
    bend = slender.deflection(force=PUSH_N, diameter=thin, length=length, modulus=modulus, ends=word)
    return Slender(ratio, bend * (1 + slender.shear_fraction(length, thin, word)), tail_up)
