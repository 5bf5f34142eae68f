"""The tail center that cannot split the work: a cup, or a cone too blunt to wedge."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan, pi, radians, tan
from typing import NamedTuple

from advisor.centers.make_inputs import Making
from advisor.centers.wording import about, two_figures
from advisor.units import NEWTONS_PER_POUND

RUNOUT = 0.05
"""Runout at the point, mm (common practice, no source)."""
FRICTION = 0.20
"""Steel on wood at its lowest, which opens a cone most (memory)."""
LIP_HEIGHT = 1.25
LIP_ANGLE = 60.0
PIN = 2.0
ROOT_RADIUS = 0.5
RING = (10.0, 16.0)
"""Lip height, lip angle, pin, root radius and ring of a cup, mm and degrees (common practice, no source)."""
BLUNT = 120.0
"""Included angle of a cone that hardly opens the wood, degrees (common practice, no source)."""
FAIR_SHARE = 1.2
"""Divisor on the crushing of a ring in even wood (memory)."""


class TailCenter(NamedTuple):
    """Numbers of a tail center: kind, ring diameter, crushing thrust, share of the thrust that opens the work."""

    kind: str
    ring: float
    crush_thrust: float | None
    opening_share: float
    steps: tuple[str, ...]

    def as_dict(self) -> dict[str, object]:
        return {
            "kind": self.kind,
            "ring_mm": self.ring,
            "lip_angle_deg": LIP_ANGLE if self.kind == "cup" else None,
            "lip_height_mm": LIP_HEIGHT if self.kind == "cup" else None,
            "pin_mm": PIN,
            "cone_angle_deg": BLUNT if self.kind == "cone" else None,
            "crush_thrust_n": self.crush_thrust,
            "opening_share": self.opening_share,
            "opening_share_60": opening_share(60.0),
            "steps": list(self.steps),
        }


def opening_share(included: float) -> float:
    """Force that pulls the two halves of the end apart, as a share of the thrust: 1/(π·tan(α + φ)), tan φ = 0.20."""
    return 1 / (pi * tan(radians(included / 2) + atan(FRICTION)))


def tail_center(making: Making) -> TailCenter:
    """Cup or blunt cone sized for the smallest end: ring at most 0.6 of it, 10 to 16 mm where there is room."""
    end = work_end(making)
    ring = min(max(RING[0], 0.4 * end), RING[1], 0.6 * end)
    if making.tail == "cone":
        share = opening_share(BLUNT)
        return TailCenter("cone", ring, None, share, (*_blank(making), *_cone(making, ring, share), *_check(making)))
    width = 2 * LIP_HEIGHT * tan(radians(LIP_ANGLE / 2))
    crush = pi * ring * width * making.wanted.end_strength / FAIR_SHARE
    return TailCenter("cup", ring, crush, 0.0, (*_blank(making), *_cup(making, ring, crush), *_check(making)))


def _blank(making: Making) -> Iterator[str]:
    system = making.wanted.system
    yield (
        "The same steel as the drive; turn head and point in one chucking, cool before the last cut. It turns on a "
        "revolving center as a nose that fits it, or stands dead in the tailstock."
    )
    if making.shank == "taper":
        yield (
            f"Shank: the tailstock's own Morse-type taper, proved with blue; its end chamfered {about(1.5, system)} by "
            "45 deg, so that the ejecting screw spreads the end and not the taper."
        )
    else:
        yield (
            "Shank: straight to fit the nose of the revolving center or a collet in the tailstock, with a flat "
            "shoulder, the corner undercut, so that the shoulder takes the thrust; the struck end chamfered as "
            "on the drive."
        )


def _cone(making: Making, ring: float, share: float) -> Iterator[str]:
    system = making.wanted.system
    yield (
        f"Turn a cone of {BLUNT:g} deg included, {about(ring, system)} across its base, flat tip of "
        f"{about(PIN, system)}; polish it."
    )
    yield f"It opens the end with {share:.0%} of the thrust; a 60 deg point does with {opening_share(60):.0%}."
    yield "Never deeper than its base: a shoulder behind the cone stops it."


def _cup(making: Making, ring: float, crush: float) -> Iterator[str]:
    system = making.wanted.system
    yield (
        f"Turn a ring {about(ring, system)} in diameter with a lip of {LIP_ANGLE:g} deg included, "
        f"{about(LIP_HEIGHT, system)} high, its root rounded {about(ROOT_RADIUS, system)} so that it does not punch "
        "out a plug."
    )
    yield (f"A pin stands {about(PIN, system)} proud of the lip to find the center; make it removable for thin ends.")
    yield (
        f"The ring bears: outside it nothing is wedged apart. It crushes at about {two_figures(crush)} N "
        f"({two_figures(crush / NEWTONS_PER_POUND)} lbf) in an end of {making.wanted.end_strength:.0f} MPa."
    )


def _check(making: Making) -> Iterator[str]:
    system = making.wanted.system
    yield (
        f"Runout {about(RUNOUT, system)} or less at lip and pin, by indicator, in the tailstock it will live in; "
        "wound up against the drive center the two points meet within a hair."
    )
    yield (
        "Dead, it wants a polished lip, a pocket for wax and a light hand; not on plastics, which it melts. Try it on "
        "the scrap blank of the test: no smoke, no squeak, no split."
    )


def work_end(making: Making) -> float:
    """The smallest end to be driven; twice the head where not given (head a quarter to a half of the end)."""
    return making.work_end if making.work_end is not None else 2 * making.wanted.diameter
