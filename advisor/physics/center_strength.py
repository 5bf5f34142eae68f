"""How a toothed center bites and what its teeth stand: a model, not tested on material.

    thrust    F = A(p)·σc         A(p) = N·∫ t(r, p) dr, σc crushing strength of the end of the work
    torque    T = N·q·M₁(p)       M₁(p) = ∫₀ᵖ (S² - s(u)²)/2 du, q pressure on the driving faces
    bending   σ ≤ 3·q·cot² μ      μ from the land and the back's radius: the weak place is near the tip, not at the root

Friction on face and back is left out, so the bite of a knife-like tip is overstated. Lengths mm, forces N, stresses
MPa, torque N·m. Source: derived from the process (geometry of the sweep) and elementary beam theory.
"""

from __future__ import annotations

from math import acos, atan, atan2, cos, degrees, hypot, radians, sin, sqrt, tan

from advisor.physics.center import ToothedCenter, face_span, section_area, tip_drop, wedge_angle


def thrust_to_bite(center: ToothedCenter, end_strength: float) -> float:
    """Thrust that crushes the lands (and any plateau between them) before the teeth enter at all: A(0)·σc."""
    return section_area(center, 0.0) * end_strength


def bite(center: ToothedCenter, thrust: float, end_strength: float) -> float:
    """Depth the teeth enter under a thrust: A(p)·σc = F, at most the depth of cut."""
    if thrust <= thrust_to_bite(center, end_strength):
        return 0.0

    def short(depth: float) -> float:
        return section_area(center, depth) - thrust / end_strength

    low, high = 0.0, center.depth
    missing, spare = short(low), short(high)
    if spare <= 0:
        return high
    while high - low > 1e-6 * center.depth:
        # a chord from both ends, kept off them so that the bracket shrinks from either side
        share = min(max(missing / (missing - spare), 0.05), 0.95)
        middle = low + share * (high - low)
        over = short(middle)
        if over < 0:
            low, missing = middle, over
        else:
            high, spare = middle, over
    return low + (high - low) * missing / (missing - spare)


def face_moment(center: ToothedCenter, penetration: float, steps: int = 64) -> float:
    """M₁(p) = ∫₀ᵖ (S² - s(u)²)/2 du: first moment of one driving face's area about the axis, mm³."""

    def moment(u: float) -> float:
        inner, outer = face_span(center, u)
        return (outer * outer - inner * inner) / 2

    width = penetration / steps
    inside = sum((4 if i % 2 else 2) * moment(i * width) for i in range(1, steps))
    return width / 3 * (moment(0.0) + inside + moment(penetration))


def torque_at(center: ToothedCenter, penetration: float, pressure: float) -> float:
    """Torque that the faces carry at a bite and a pressure on them: T = N·q·M₁(p)."""
    return center.teeth * pressure * face_moment(center, penetration) / 1000


def face_pressure(center: ToothedCenter, penetration: float, torque: float) -> float | None:
    """Pressure on the driving faces that a torque asks for: q = T/(N·M₁(p)); None where no face is in the work."""
    moment = face_moment(center, penetration)
    return torque * 1000 / (center.teeth * moment) if moment > 0 else None


def bending_angle(center: ToothedCenter, land: float) -> float:
    """μ, the angle that stands for the tooth's stiffness near its tip, degrees.

        μ = κ + acos(a/ρ)     ρ = hypot(w + a·cos ψ, a·sin ψ),  κ = atan2(a·sin ψ, w + a·cos ψ)

    With no land it is the wedge angle itself; one setting and N ≠ 4 takes that too, which is on the safe side.
    """
    drop = tip_drop(center, center.outer_radius)
    wedge = wedge_angle(center, drop)
    if wedge is None:
        return 90.0
    if land <= 0 or drop > 0 or not center.parallel:
        return wedge
    a, tip = center.cutter_radius, radians(wedge)
    across, up = land + a * cos(tip), a * sin(tip)
    return degrees(atan2(up, across) + acos(min(a / hypot(across, up), 1.0)))


def greatest_bending(center: ToothedCenter, land: float, pressure: float) -> float | None:
    """Upper bound of the bending stress in a tooth: 3·q·cot² μ, MPa; None for a razor edge of no angle at all.

    Good for μ under about 30 degrees (beam theory).
    """
    angle = bending_angle(center, land)
    if angle <= 0:
        return None
    return 3 * pressure / tan(radians(angle)) ** 2


def least_bending_angle(pressure: float, allowed: float) -> float:
    """μ that keeps the bound within an allowed stress: atan √(3·q/σ), degrees."""
    return degrees(atan(sqrt(3 * pressure / allowed)))


def land_for_angle(center: ToothedCenter, angle: float) -> float:
    """Land that brings μ to a wanted angle: w = a·(1 - cos(μ - ψ))/cos μ, 0 where the bare wedge reaches it.

    The line at μ through the tip's corner on the driving face just touches the back.
    """
    wedge = wedge_angle(center, 0.0)
    if wedge is None or not center.parallel or angle <= wedge:
        return 0.0
    wanted, tip = radians(angle), radians(wedge)
    return center.cutter_radius * (1 - cos(wanted - tip)) / cos(wanted)
