"""Strength of the teeth against the thrust and the torque of the case."""

from __future__ import annotations

from advisor.centers.inputs import Wanted
from advisor.centers.sensitivity import land_radius
from advisor.centers.wording import length
from advisor.physics.center import ToothedCenter, land
from advisor.physics.center_strength import (
    bending_angle,
    bite,
    face_pressure,
    greatest_bending,
    land_for_angle,
    least_bending_angle,
    thrust_to_bite,
    torque_at,
)

SIDE_DRY, SIDE_WET = 6.0, 2.5
"""What wood bears across the fibers against a driving face, dry hardwood and wet, MPa (memory)."""


def strength(wanted: Wanted, center: ToothedCenter) -> dict[str, object]:
    """Thrust to bite, bite, torque and bending, as far as thrust and torque are known. A rough guide, within a factor
    of two: friction is left out and the strengths are what was given or assumed."""
    crush = wanted.end_strength
    answer: dict[str, object] = {
        "end_strength_mpa": crush,
        "tooth_strength_mpa": wanted.tooth_strength,
        "thrust_to_bite_n": thrust_to_bite(center, crush),
        "bending_angle_deg": bending_angle(center, land(center, land_radius(center))),
        "grade": "rough-guide",
    }
    depth = center.depth
    if wanted.thrust is not None:
        depth = bite(center, wanted.thrust, crush)
        answer |= {"thrust_n": wanted.thrust, "bite_mm": depth}
    if depth > 0:
        answer["torque_dry_nm"] = torque_at(center, depth, SIDE_DRY)
        answer["torque_wet_nm"] = torque_at(center, depth, SIDE_WET)
    answer["torque_at_mm"] = depth
    if wanted.torque is not None:
        answer["torque_nm"] = wanted.torque
        pressure = face_pressure(center, depth, wanted.torque)
        if pressure is not None:
            width = land(center, land_radius(center))
            answer["face_pressure_mpa"] = pressure
            answer["bending_mpa"] = greatest_bending(center, width, pressure)
            answer["least_bending_angle_deg"] = least_bending_angle(pressure, wanted.tooth_strength)
    return answer


def land_for_strength(center: ToothedCenter, answer: dict[str, object]) -> float:
    """Land that the bending of the case asks for (mm), 0 where no torque is known."""
    needed = answer.get("least_bending_angle_deg")
    return land_for_angle(center, needed) if isinstance(needed, float) else 0.0


def strength_warnings(wanted: Wanted, answer: dict[str, object], for_strength: float) -> list[str]:
    """What the numbers say against the case."""
    warnings = []
    if answer.get("bite_mm") == 0.0:
        warnings.append(
            f"This thrust does not push the teeth in: crushing the lands takes {answer['thrust_to_bite_n']:.0f} N. "
            "Press or tap the center into the end on the bench first, or leave less land."
        )
    pressure = answer.get("face_pressure_mpa")
    if isinstance(pressure, float) and pressure > SIDE_WET:
        wood = "even dry hardwood (about 6 MPa)" if pressure > SIDE_DRY else "wet wood (about 2.5 MPa)"
        warnings.append(
            f"The torque presses {pressure:.1f} MPa on the driving faces, more than {wood} bears across its "
            "fibers: the teeth would turn into a drill. Seat them deeper, take lighter cuts, or make a larger center."
        )
    bending, allowed = answer.get("bending_mpa"), answer["tooth_strength_mpa"]
    if "face_pressure_mpa" in answer and bending is None:
        warnings.append("A tip of no angle and no land stands no bending at all. Leave a land.")
    if isinstance(bending, float) and isinstance(allowed, float) and bending > allowed:
        warnings.append(
            f"The tips may bend: up to {bending:.0f} MPa near the tip against {allowed:.0f} MPa allowed. Leave a land "
            f"of {length(for_strength, wanted.system)}, take a larger cutter, or cut less deep."
        )
    return warnings
