"""What the cut, the weight and the unbalance ask of a hold."""

import math
from typing import NamedTuple

from advisor.physics.balance import GRAVITY
from advisor.reckoning.holds.methods import SLIPS, SPURS, groups, tail_parts
from advisor.situation import Situation

TAIL_IN_THE_WAY = frozenset({"hollowing", "parting", "drilling"})
PEAK_ROUND = 1.5  # memory
PEAK_UNEVEN = 2.0  # memory
PEAK_INTERRUPTED = 3.0  # memory
PEAK_UNSUPPORTED = 1.25  # more for work that stands out further than it is wide; memory
PULL_SHARE = 0.3  # of the cutting force, along the axis when hollowing; memory
MOTOR_STALL = 1.5  # memory
CATCH_FORCE_N = 1000.0  # the hard end of a catch; memory
FULL_FORCE_MM = 50.0  # memory
PLATTER_LIKE = frozenset({"bowl", "platter"})


class Need(NamedTuple):
    """Torque N·m, tipping moment N·m and axial pull N that the hold must stand."""

    torque: float
    moment: float
    pull: float


def tail_up(situation: Situation, method: str) -> bool:
    """Whether the tail center stands against the work: wherever the method takes one and the cut leaves room.

    Not up when hollowing, parting or drilling (there it carries the bit), without a tailstock, or when the person
    says there is no tail center. Source: common practice, no source.
    """
    given = situation.case.hold.tail
    if tail_parts()[method] == "none" or situation.operation in TAIL_IN_THE_WAY or not situation.lathe.tailstock:
        return False
    return given is None or given.kind != "none"


def overhang(situation: Situation) -> float:
    """How far the work stands out of the hold, in mm: its whole length unless the person says."""
    given = situation.case.hold.overhang
    return given if given is not None else situation.body.length


def slips(situation: Situation, method: str) -> bool:
    """A drive that is meant to slip in a catch; not with a carriage tool, whose feed goes on while the work stands."""
    return method in SLIPS and not situation.cut.carriage


def peak(situation: Situation, method: str, tail_up: bool) -> float:
    """How much the cutting force peaks over its mean, as a factor.

    1.5 on round work with a sharp tool and on a reversed piece; 2 out of round, on a bowl (the grain turns over twice
    a turn) and on a square between centers; 3 on a natural edge and on a square in jaws or on a plate; a quarter more
    where neither tail nor steady holds work that stands out further than it is wide. A drive meant to slip: 1.
    Source: memory.
    """
    if slips(situation, method):
        return 1.0
    factor = _cut_peak(situation, method)
    unsupported = not tail_up and situation.case.hold.steady is None
    if unsupported and overhang(situation) > situation.body.diameter:
        factor *= PEAK_UNSUPPORTED
    return factor


def _cut_peak(situation: Situation, method: str) -> float:
    traits = situation.traits
    if situation.reversed_piece:
        return PEAK_ROUND
    square = traits.form == "square" and traits.state == "not-round"
    if "live-edge" in traits.conditions or (square and groups()[method] != "between-centers"):
        return PEAK_INTERRUPTED
    uneven = traits.state == "not-round" or situation.side_grain or situation.purpose in PLATTER_LIKE
    return PEAK_UNEVEN if uneven else PEAK_ROUND


def need(situation: Situation, method: str, k_peak: float, tail_up: bool, rpm: float) -> Need:
    """Torque, moment and pull at `rpm`.

        T = k·F·R;  tail away: M = k·F·L + (m·g + m·e·ω²)·L/2, and P = 0.3·k·F when hollowing

    F N and R mm of the cut, L mm of overhang, m kg, e mm. With the tail up, and when drilling, M = P = 0. The torque
    on seated teeth is never more than the stalling motor gives. Source: derived.
    """
    force = k_peak * situation.cut.force
    torque = force * situation.cut.arm * 1e-3 + situation.cut.torque
    power = situation.case.machine.power
    if power is not None and rpm > 0 and method in SPURS:
        torque = min(torque, MOTOR_STALL * power / (math.tau * rpm / 60))
    if tail_up or situation.operation == "drilling":
        return Need(torque, 0.0, 0.0)
    reach = overhang(situation) * 1e-3
    body = situation.body
    turning = body.mass * body.offset * 1e-3 * (math.tau * rpm / 60) ** 2
    moment = force * reach + (body.mass * GRAVITY + turning) * reach / 2
    pull = PULL_SHARE * force if situation.operation == "hollowing" else 0.0
    return Need(torque, moment, pull)


def catch_need(situation: Situation, tail_up: bool, rpm: float) -> Need:
    """The same for a hard catch at the rim: 1 kN on work of 50 mm or more, or what the stalling motor pushes.

    Source: memory.
    """
    body = situation.body
    radius = body.diameter / 2 * 1e-3
    force = CATCH_FORCE_N * min(1.0, body.diameter / FULL_FORCE_MM)
    power = situation.case.machine.power
    if power is not None and rpm > 0:
        force = min(force, MOTOR_STALL * power / (math.tau * rpm / 60) / radius)
    return Need(force * radius, 0.0 if tail_up else force * overhang(situation) * 1e-3, 0.0)
