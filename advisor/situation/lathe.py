"""The machine on its floor."""

from typing import NamedTuple

from advisor.models.case import Case
from advisor.situation.assumption import Ledger
from advisor.situation.shape import Body
from advisor.units import MM_PER_INCH

LIGHT_LATHE_KG = 40.0  # up to 10 in of work; grows with the square of the diameter beyond; memory
ORDINARY_BASE_MM = 500.0  # memory
ORDINARY_SPINDLE_HEIGHT_MM = 1100.0  # memory
FLOOR_FRICTION = 0.4  # memory
# How much a stand rocks on its own at 300 to 900 rpm (memory).
AMPLIFICATION = {"heavy-iron": 1.5, "ordinary": 3.0, "light": 5.0}


class Lathe(NamedTuple):
    """Mass kg, base and spindle height mm; `amplification` is the stand's own rocking."""

    kind: str
    mass: float
    base_width: float
    spindle_height: float
    bolted: bool
    stand: str
    amplification: float
    floor_friction: float
    tailstock: bool


def settle_lathe(case: Case, body: Body, ledger: Ledger) -> Lathe:
    """Fill what was not said of the machine with a light lathe on an ordinary stand."""
    machine = case.machine
    mass = machine.mass
    if mass is None:
        mass = LIGHT_LATHE_KG * max(1.0, (body.diameter / (10 * MM_PER_INCH)) ** 2)
        ledger.assume("machine.mass", f"{mass:.0f} kg", "a light lathe for this diameter")
    base = machine.base_width
    if base is None:
        base = ORDINARY_BASE_MM
        ledger.assume("machine.base_width", f"{base:.0f} mm", "ordinary stand")
    height = machine.spindle_height
    if height is None:
        height = ORDINARY_SPINDLE_HEIGHT_MM
        ledger.assume("machine.spindle_height", f"{height:.0f} mm", "ordinary stand")
    if machine.stand is None:
        ledger.assume("machine.stand", "ordinary", "not given")
    if machine.bolted_down is None:
        ledger.assume("machine.bolted_down", "no", "not given")
    ledger.assume("floor friction", f"{FLOOR_FRICTION}", "an ordinary floor; memory")
    stand = machine.stand or "ordinary"
    return Lathe(
        kind=machine.kind or "unknown",
        mass=mass,
        base_width=base,
        spindle_height=height,
        bolted=bool(machine.bolted_down),
        stand=stand,
        amplification=AMPLIFICATION[stand],
        floor_friction=FLOOR_FRICTION,
        tailstock=machine.tailstock is not False,
    )
