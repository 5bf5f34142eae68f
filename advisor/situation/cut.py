"""What the tool asks of the hold: force, arm and peaks."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal, NamedTuple

from advisor.models.case import Case
from advisor.physics import cutting
from advisor.situation.assumption import Ledger
from advisor.situation.shape import Body, Traits

if TYPE_CHECKING:
    from advisor.models.material import Material
    from advisor.models.wood import WoodProperties

# Main cutting force of a hand tool in N on work of 50 mm or more (memory).
HAND_FORCE = {
    "roughing": 100.0,
    "shaping": 60.0,
    "hollowing": 60.0,
    "parting": 60.0,
    "finishing": 25.0,
    "sanding": 10.0,
    "drilling": 0.0,
    "balancing": 0.0,
}
FULL_FORCE_DIAMETER_MM = 50.0
REFERENCE_DENSITY = 650.0
NON_WOOD_SHARE = 0.5
TOOLPOST_DEPTH_MM = 1.0
TOOLPOST_FEED_MM = 0.15
REVERSED_ARM_SHARE = 0.4  # a reversed piece is cut near its foot, not at its rim
DRILL_TORQUE_END_NM = 8.0  # for a 50 mm bit, memory
DRILL_TORQUE_SIDE_NM = 5.0
DRILL_REFERENCE_MM = 50.0
DRILL_SHARE_OF_WORK = 0.4


class Cut(NamedTuple):
    """Force N at its arm mm; `torque` N·m is the drill's, 0 for other cuts; `given` tells whose number the force is."""

    force: float
    given: bool
    arm: float
    torque: float
    drill_diameter: float
    carriage: bool


def density_factor(wood: WoodProperties | None) -> float:
    """Cutting force against a wood of 650 kg/m³ at 12 %, between a half and one and a half."""
    if wood is None:
        return 1.0
    return min(max(wood.density12 / REFERENCE_DENSITY, 0.5), 1.5)


def _carriage_force(case: Case, traits: Traits, wood: WoodProperties | None, material: Material | None) -> float:
    depth = case.cut.depth if case.cut.depth is not None else TOOLPOST_DEPTH_MM
    feed = case.cut.feed if case.cut.feed is not None else TOOLPOST_FEED_MM
    if wood is None:
        specific = material.cutting_k if material is not None and material.cutting_k is not None else 250.0
        return cutting.layer_force(specific=specific, width=depth, thickness=feed)
    mode: Literal["end", "across"] = "end" if traits.grain == "across" else "across"
    chip = min(max(feed, cutting.THINNEST_CHIP_MM), cutting.THICKEST_CHIP_MM)
    return cutting.wood_cutting_force(
        width=depth,
        thickness=chip,
        density=wood.density12,
        mode=mode,
        moisture=wood.moisture_percent,
    )


def _hand_force(operation: str, body: Body, wood: WoodProperties | None) -> float:
    size = body.diameter if body.end_diameter == body.diameter else body.end_diameter
    force = HAND_FORCE[operation] * min(1.0, size / FULL_FORCE_DIAMETER_MM)
    if wood is None:
        return force * NON_WOOD_SHARE
    return force * density_factor(wood) * cutting.moisture_factor(wood.moisture_percent)


def _drill(case: Case, traits: Traits, body: Body, wood: WoodProperties | None, ledger: Ledger) -> tuple[float, float]:
    diameter = case.cut.drill_diameter
    if diameter is None:
        diameter = min(DRILL_REFERENCE_MM, DRILL_SHARE_OF_WORK * body.diameter)
        ledger.assume("cut.drill_diameter", f"{diameter:.3g} mm", "a large bit for this piece")
    base = DRILL_TORQUE_SIDE_NM if traits.grain == "across" else DRILL_TORQUE_END_NM
    return base * (diameter / DRILL_REFERENCE_MM) ** 2 * density_factor(wood), diameter


def settle_cut(
    case: Case,
    traits: Traits,
    body: Body,
    wood: WoodProperties | None,
    material: Material | None,
    operation: str,
    ledger: Ledger,
) -> Cut:
    """Force and arm of the cut: the person's own, or the stated defaults."""
    carriage = case.cut.tool == "carriage"
    torque, drill = _drill(case, traits, body, wood, ledger) if operation == "drilling" else (0.0, 0.0)
    force = case.cut.force
    if force is None:
        no_cut = operation in ("drilling", "balancing")
        if carriage and not no_cut:
            force = _carriage_force(case, traits, wood, material)
            why = "from depth, feed and density"
        else:
            force = _hand_force(operation, body, wood)
            why = "an ordinary hand cut of this kind"
        if not no_cut:
            ledger.assume("cut.force", f"{float(f'{force:.2g}'):g} N", why)
    arm = body.diameter / 2
    if case.cut.diameter is not None:
        arm = min(case.cut.diameter / 2, arm)
    elif _is_reversed(case, traits):
        arm *= REVERSED_ARM_SHARE
    return Cut(force, case.cut.force is not None, arm, torque, drill, carriage)


def _is_reversed(case: Case, traits: Traits) -> bool:
    shallow = (case.work.purpose or "") in ("bowl", "platter", "box") or traits.grain == "across"
    return traits.state == "finished" and shallow
