"""Ceiling, start and the way up."""

import math
from typing import NamedTuple

from advisor.models.case import Machine
from advisor.physics import rim
from advisor.reckoning import speed_limits, whirl
from advisor.reckoning.jaw_speed import jaws_at_speed
from advisor.reckoning.limit import Limit, smallest
from advisor.reckoning.thrust import Thrust
from advisor.situation import Situation
from advisor.situation.assumption import Assumption
from advisor.units import MM_PER_INCH

START_SHARE_NOT_ROUND = 0.6  # common practice, no source
START_SHARE_ROUND = 0.5  # common practice, no source
START_BAND = 3000.0  # common practice, no source
START_ROOT = 1800.0  # common practice, no source
SANDING_START_BAND = 2000.0  # common practice, no source
INTERRUPTED_BAND = 4000.0  # common practice, no source
NOT_TRUE_BAND = 6000.0  # common practice, no source
FROM_UNBALANCE = ("walking", "hold")


class Speed(NamedTuple):
    """Speeds in rpm; `start` is what to set first, `wished_start` what it would be if the machine had every speed.

    `whips` is the band of speeds never to dwell in, `walks` the speed at which the lathe walks; None where there is
    none.
    """

    limits: tuple[Limit, ...]
    ceiling: Limit
    runner_up: Limit | None
    wished_start: float
    start: float
    energy: float
    rim_speed: float
    minimum: float | None
    fastest: float | None
    whips: tuple[float, float] | None
    walks: float | None
    assumed: tuple[Assumption, ...]

    @property
    def balanced(self) -> float:
        """The ceiling in rpm that a piece has once a weight balances it: what the weight must stand."""
        found = [limit.value for limit in self.limits if limit.name not in FROM_UNBALANCE]
        return min(found, default=self.ceiling.value)


def _present(*limits: Limit | None) -> list[Limit]:
    return [limit for limit in limits if limit is not None]


def standing_limits(situation: Situation, method: str, tail_up: bool) -> list[Limit]:
    """The limits that depend on neither the hold nor the thrust."""
    found = _present(
        speed_limits.rim_speed(situation, tail_up),
        speed_limits.walking(situation),
        speed_limits.bursting(situation),
        speed_limits.joint(situation),
        whirl.rear_overhang(situation),
        speed_limits.device(situation, method),
        speed_limits.operation(situation),
        speed_limits.material(situation),
        speed_limits.machine_maximum(situation),
    )
    return found + speed_limits.cracked(situation)


def start_below(situation: Situation, ceiling: float) -> float:
    """The first speed in rpm under a ceiling: the trade's ladder, never more than a share of the ceiling."""
    inches = situation.body.diameter / MM_PER_INCH
    if not situation.trued:
        start = min(START_SHARE_NOT_ROUND * ceiling, START_BAND / inches, START_ROOT / math.sqrt(inches))
    else:
        start = START_SHARE_ROUND * ceiling
    if situation.operation == "sanding":
        start = min(start, SANDING_START_BAND / inches)
    speeds = speed_limits.surface_speeds(situation)
    if speeds is not None:
        start = min(start, 1000.0 * speeds[0] / (math.pi * situation.body.diameter))
    return start


def first_speed(situation: Situation, method: str, tail_up: bool) -> float:
    """Starting speed in rpm before any hold limit and without thrust: holds and thrust are judged at it."""
    ceiling, _ = smallest(standing_limits(situation, method, tail_up))
    return start_below(situation, ceiling.value)


def machine_steps(situation: Situation) -> tuple[float, ...]:
    """The speeds the lathe has, if it has steps."""
    return tuple(sorted(situation.case.machine.speeds or ()))


def slowest(machine: Machine) -> float | None:
    """The lathe's lowest speed in rpm, None when nobody said."""
    lows = [min(machine.speeds)] if machine.speeds else []
    if machine.min_rpm is not None:
        lows.append(machine.min_rpm)
    return max(lows) if lows else None


def fastest(situation: Situation) -> float | None:
    """The lathe's highest speed in rpm, None when nobody said."""
    machine = situation.case.machine
    tops = list(machine_steps(situation)[-1:])
    if machine.max_rpm is not None:
        tops.append(machine.max_rpm)
    return max(tops) if tops else None


def settle_on_machine(situation: Situation, wished: float, ceiling: float) -> float:
    """The wished speed as this lathe can run it: the step below it, else its lowest when that is under the ceiling."""
    steps = [step for step in machine_steps(situation) if step <= wished]
    if steps:
        return steps[-1]
    low = slowest(situation.case.machine)
    if low is not None and low > wished:
        return low if low <= ceiling else wished
    return wished


def speed(situation: Situation, method: str, tail_up: bool, hold_rpm: float | None, thrust: Thrust | None) -> Speed:
    """All limits for the hold in use, the smallest of them, and where to begin."""
    limits = standing_limits(situation, method, tail_up)
    if hold_rpm is not None:
        why = "the hold would let go"
        text = "n = 1000 rpm·√((1/SF − u_0)/(u_1000 − u_0)), u the share of the hold in use standing and at 1000 rpm"
        limits.append(Limit("hold", hold_rpm, "estimate", ("memory",), why, text))
    between = thrust is not None and thrust.between
    push = 0.0 if thrust is None else _thrust_in_bar(thrust)
    critical = thrust.critical if thrust is not None else None
    whip = whirl.whirl(situation, between, tail_up, push, critical)
    jaws = jaws_at_speed(situation, method)
    limits += _present(whip, jaws[0] if jaws is not None else None)
    if thrust is not None and thrust.light is not None:
        limits += _present(speed_limits.heat(situation, thrust.center, thrust.light.to_set))
    ceiling, runner_up = smallest(limits)
    wished = start_below(situation, ceiling.value)
    start = settle_on_machine(situation, wished, ceiling.value)
    body = situation.body
    return Speed(
        limits=tuple(sorted(limits, key=lambda limit: limit.value)),
        ceiling=ceiling,
        runner_up=runner_up,
        wished_start=wished,
        start=start,
        energy=rim.spinning_energy(mass=body.mass, diameter=body.diameter, rpm=start),
        rim_speed=rim.rim_speed(diameter=body.diameter, rpm=start),
        minimum=slowest(situation.case.machine),
        fastest=fastest(situation),
        whips=whirl.whip_band(situation, whip),
        walks=next((limit.value for limit in limits if limit.name == "walking"), None),
        assumed=() if jaws is None else (jaws[1],),
    )


def _thrust_in_bar(thrust: Thrust) -> float:
    """Thrust in N that lowers the whirl: what is set, or a third of buckling where no thrust can be named."""
    third = thrust.critical / 3 if thrust.critical is not None else math.inf
    if thrust.light is None or not math.isfinite(thrust.light.to_set) or thrust.light_share < 1.0:
        return third if math.isfinite(third) else 0.0
    return min(thrust.light.to_set, third)
