"""From what a hold stands and what is asked of it to the ratios that the rules read."""

import math
from collections.abc import Callable, Mapping
from typing import NamedTuple

from advisor.reckoning.holds import between_centers, clamped, fitted, jawed, screwed, stuck
from advisor.reckoning.holds.capacity import NOTHING, Capacity, Divisors, Job, Model, parts, ratio, utilization
from advisor.reckoning.holds.methods import tail_parts
from advisor.reckoning.holds.need import Need, catch_need, need, peak, slips, tail_up
from advisor.situation import Situation
from advisor.situation.assumption import Assumption

TRIAL_RPM = 1000.0  # numerics
LEFT_TO_UNBALANCE = 0.2  # of the capacity over its divisor; memory
NO_STEADY_FORMS = frozenset({"square", "octagon", "irregular", "slab", "half-log"})
PRACTICE_DIVISORS = Divisors(1.5, 2.5)  # memory

MODELS: dict[str, Callable[[Job], Model]] = {
    "spur-drive": between_centers.toothed,
    "two-spur-drive": between_centers.toothed,
    "toothed-ring-drive": between_centers.toothed,
    "cup-drive": between_centers.toothed,
    "mandrel": between_centers.mandrel,
    "friction-block": between_centers.friction_block,
    "sphere-cups": between_centers.sphere_cups,
    "faceplate-screws": screwed.faceplate,
    "screw-chuck": screwed.screw_chuck,
    "waste-block-faceplate": stuck.bond,
    "glue-block": stuck.bond,
    "paper-joint": stuck.bond,
    "double-sided-tape": stuck.bond,
    "jaws-on-tenon": jawed.outside,
    "long-jaws": jawed.outside,
    "soft-jaws": jawed.outside,
    "three-jaw": jawed.outside,
    "four-jaw-independent": jawed.outside,
    "collet": jawed.outside,
    "collet-block": jawed.outside,
    "split-bushing": jawed.outside,
    "drill-chuck": jawed.outside,
    "jaws-in-recess": jawed.recess,
    "rubber-button-jaws": jawed.buttons,
    "jam-chuck": fitted.jam_chuck,
    "vacuum": fitted.suction,
    "clamped-faceplate": clamped.clamps,
    "offset-faceplate": clamped.offset_faceplate,
    "through-spindle": clamped.through_spindle,
}


class Margin(NamedTuple):
    """One load on a hold: `have` is the typical capacity over the divisor, `ratio` is have over need."""

    name: str
    have: float
    need: float
    unit: str
    ratio: float
    grade: str


class HoldFigures(NamedTuple):
    """What is known in numbers of one hold.

    `low` and `typical` are capacity over need at the two ends of ordinary workmanship, all loads together; None where
    practice alone judges. `typical / divisor` is compared with 1. `catch` is what a hard catch asks over the typical
    capacity. `steady_typical` is the ratio with a steady where one can be used. Sizes in mm.
    """

    method: str
    tail_up: bool
    divisor: float
    peak: float
    rpm: float
    low: float | None
    typical: float | None
    margins: tuple[Margin, ...]
    size: float | None
    given: bool
    sizes: Mapping[str, float]
    assumed: tuple[Assumption, ...]
    missing: tuple[tuple[str, str], ...]
    slips: bool
    steady_typical: float | None
    steady_divisor: float
    catch: float | None

    @property
    def divided(self) -> float | None:
        """Typical ratio over its divisor; the hold is enough from 1 on."""
        return None if self.typical is None else self.typical / self.divisor


def model_of(job: Job) -> Model:
    """The method's own model; a drive that lives by the tail stands nothing without it."""
    reckon = MODELS.get(job.method)
    if reckon is None:
        return Model(PRACTICE_DIVISORS)
    model = reckon(job)
    if model.typical is not None and not job.tail_up and tail_parts()[job.method] == "needed":
        model.low = model.typical = NOTHING
    return model


def steady_possible(situation: Situation) -> bool:
    """A steady is to hand and the work is round and longer than it is wide."""
    body, hold = situation.body, situation.case.hold
    to_hand = hold.steady is not None or not hold.kit or "steady-rest" in hold.kit
    return to_hand and situation.trued and situation.traits.form not in NO_STEADY_FORMS and body.length > body.diameter


def _steady(job: Job, model: Model, rpm: float) -> float | None:
    """Typical ratio when a steady takes the tipping."""
    situation, method = job.situation, job.method
    if model.typical is None or job.tail_up or not steady_possible(situation):
        return None
    if tail_parts()[method] == "needed":
        return None
    asked = need(situation, method, peak(situation, method, True), False, rpm)
    return ratio(asked._replace(moment=0.0), model.typical)


def _margins(model: Model, asked: Need, divisor: float) -> tuple[Margin, ...]:
    if model.typical is None:
        return ()
    found = [
        Margin(name, have / divisor, wanted, unit, have / divisor / wanted, model.grade)
        for name, (have, wanted, unit) in parts(asked, model.typical).items()
    ]
    if model.ceiling is not None:
        name, allowed, stress = model.ceiling
        found.append(Margin(name, allowed, stress, "MPa", allowed / stress, model.grade))
    return tuple(found)


def job_of(situation: Situation, method: str, rpm: float) -> Job:
    """What is judged for one method: where the tail stands, how the cut peaks and what it asks at `rpm`."""
    up = tail_up(situation, method)
    k_peak = peak(situation, method, up)
    return Job(situation, method, up, k_peak, need(situation, method, k_peak, up, rpm))


def hold_figures(situation: Situation, method: str, rpm: float) -> HoldFigures:
    """Judge one method in numbers at the starting speed `rpm`, worked out before any limit of the hold.

    T/T_cap + M/M_cap + P/P_cap is the share of the capacity in use; low and typical are its inverse at both ends.
    Raises KeyError for a method that is none of the 35. Source: each method's own model.
    """
    job = job_of(situation, method, rpm)
    model = model_of(job)
    divisor = model.divisors.up if job.tail_up else model.divisors.away
    low = typical = catch = None
    if model.low is not None and model.typical is not None:
        low, typical = ratio(job.need, model.low), ratio(job.need, model.typical)
        low = min(low, typical)
        catch = utilization(catch_need(situation, job.tail_up, rpm), model.typical)
        if model.ceiling is not None:
            share = model.ceiling[1] / model.ceiling[2]
            low, typical = min(low, share), min(typical, share * divisor)
    return HoldFigures(
        method=method,
        tail_up=job.tail_up,
        divisor=divisor,
        peak=job.peak,
        rpm=rpm,
        low=low,
        typical=typical,
        margins=_margins(model, job.need, divisor),
        size=model.size,
        given=model.given,
        sizes=model.sizes,
        assumed=tuple(model.assumed),
        missing=tuple(model.missing),
        slips=slips(situation, method),
        steady_typical=_steady(job, model, rpm),
        steady_divisor=model.divisors.up,
        catch=catch if catch is None or math.isfinite(catch) else None,
    )


def letting_go(situation: Situation, method: str, model: Model, capacity: Capacity, divisor: float) -> float | None:
    """Highest speed in rpm at which this capacity over the divisor still stands the need.

    Only the unbalance grows, with the square of the speed, so two speeds tell the whole curve:
    n = 1000·√((1/SF - u_0)/(u_1000 - u_0)), u the share of the capacity in use. A fifth of 1/SF is always left to the
    unbalance, or a hold just strong enough would be given no speed and a weaker one be judged as a hold; twice the
    need stays. None where it fails standing still or no speed makes it. Source: derived; the fifth from memory.
    """
    standing = utilization(job_of(situation, method, 0.0).need, capacity)
    turning = utilization(job_of(situation, method, TRIAL_RPM).need, capacity)
    if not math.isfinite(standing) or standing > 1 / divisor or turning <= standing:
        return None
    if model.ceiling is not None and model.ceiling[1] < model.ceiling[2]:
        return None
    spare = max(1 / divisor - standing, LEFT_TO_UNBALANCE / divisor)
    return TRIAL_RPM * math.sqrt(spare / (turning - standing))


def hold_speed(situation: Situation, method: str) -> float | None:
    """Highest speed in rpm at which the typical capacity over its divisor still stands the need.

    None where speed does not matter to this hold (tail up, no offset, no model) or where it fails standing still.
    """
    rest = job_of(situation, method, 0.0)
    if rest.need.moment <= 0:
        return None
    model = model_of(rest)
    if model.typical is None:
        return None
    divisor = model.divisors.up if rest.tail_up else model.divisors.away
    return letting_go(situation, method, model, model.typical, divisor)
