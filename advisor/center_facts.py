"""Both centers and the tailstock -> flat facts for the rules. Nothing here compares a figure with a threshold."""

from __future__ import annotations

import math

from advisor.engine import Fact
from advisor.facts import Value, about, family, flag, known, length, turns
from advisor.physics.tail import handwheel_torque
from advisor.reckoning import ends
from advisor.reckoning.center_fit import DriveFit, TailFit, drive_fit, tail_fit
from advisor.reckoning.holds.need import catch_need
from advisor.reckoning.speed_limits import HEAT_CAP_PLASTIC_W, HEAT_CAP_WOOD_W
from advisor.reckoning.thrust import HANDWHEEL_EFFICIENCY, Thrust
from advisor.situation import Situation
from advisor.units import NEWTONS_PER_POUND, NM_PER_INCH_POUND, two_figures

LEAST_SHARE = 0.5  # of an ordinary cut: the least anybody takes without noticing
USUAL_LEAD_MM = 4.0  # travel of an ordinary quill for a turn of its handwheel; memory


def share(part: float | None, whole: float | None) -> float | None:
    """part / whole; None where either is missing or the ratio is no number."""
    if part is None or whole is None or whole <= 0 or not math.isfinite(part):
        return None
    return part / whole


def force(value: float, up: bool, most: float = math.inf) -> str:
    """A force in newtons and pounds to two figures: a requirement up, a limit down; rounded past no limit it keeps."""
    if not math.isfinite(value):
        return "no thrust at all"
    if value <= 0:
        return "none"
    told = []
    for unit, word in ((1.0, "N"), (NEWTONS_PER_POUND, "lbf")):
        figure = two_figures(value / unit, up)
        if value <= most < math.inf:
            figure = min(figure, two_figures(most / unit, False))
        told.append(f"{figure:.2g} {word}" if figure < 10 else f"{figure:.0f} {word}")
    return f"{told[0]} ({told[1]})"


def turning(value: float) -> str:
    """A torque to two figures."""
    return f"{about(value)} N·m"


def at_the_wheel(value: float) -> str:
    """A torque to wind to, in both units, to two figures and down: it is not to be passed."""
    if not math.isfinite(value):
        return "no torque at all"
    inch = two_figures(value / NM_PER_INCH_POUND, False)
    return f"{turning(two_figures(value, False))} ({about(inch)} lbf·in)"


def facts_of_centers(situation: Situation, window: Thrust) -> list[Fact]:
    """The window, the driven end and the tail end of one job."""
    fit = drive_fit(situation, window)
    found = [thrust(situation, window, fit), tail(situation, window, tail_fit(situation, window))]
    if window.between:
        found.append(drive(situation, window, fit))
    return found


def thrust(situation: Situation, window: Thrust, fit: DriveFit | None) -> Fact:
    """The tailstock window as ratios."""
    center_drive, chosen = window.drive, window.light or window.full
    machine, allowed = situation.case.machine, window.allowed.value
    outer = center_drive.outer if center_drive is not None else None
    given = situation.cut.given
    wheel = window.wheel
    values: dict[str, Value | None] = {
        "between": flag(window.between),
        "drive": center_drive.kind if center_drive is not None else "none",
        "force_given": flag(given),
        "seated": window.seated,
        "turns": flag(math.isfinite(window.full.to_set)),
        "set_over_allowed": share(chosen.to_set, allowed),
        "light_share": window.light_share,
        "cut_over_least": window.light_share / (1.0 if given else LEAST_SHARE),
        "taper_over_need": share(window.taper_torque, window.torque),
        "drive_share": share(outer, situation.body.end_diameter),
        "finished_share": share(outer, fit.near) if fit is not None else None,
        "press_over_limit": share(window.press_force, window.press_allowed),
        "pressed_over_set": share(window.pressed_only, chosen.to_set),
        "lead": flag(machine.handwheel_lead is not None),
        "wheel_size": flag(machine.handwheel_diameter is not None),
        "wheel_over_allowed": share(wheel.typical if wheel is not None else None, allowed),
        "wheel_high_over_allowed": share(wheel.high if wheel is not None else None, allowed),
        "wheel_low_over_set": share(wheel.low if wheel is not None else None, chosen.to_set),
        "wheel_torque_over_most": share(window.handwheel, window.handwheel_most),
    }
    return Fact(
        "thrust", known(values), {**_window_words(window), **_fit_words(window, fit), **_wheel_words(situation, window)}
    )


def _window_words(window: Thrust) -> dict[str, str]:
    chosen = window.light or window.full
    short = (
        f"{force(window.full.to_set, True)} wanted, {force(window.allowed.value, False)} allowed ({window.allowed.why})"
    )
    more = f"more would need more thrust than {window.allowed.name} allows"
    if window.bound_by == "depth":
        deepest = length(window.depth_most or 0, 1)
        short = f"the teeth would have to go deeper than the {deepest} that this end and these teeth allow"
        more = f"more would need teeth deeper than the {deepest} that this end and these teeth allow"
    pressed = window.pressed_only
    return {
        "needed": force(window.full.to_set, True),
        "set": force(chosen.to_set, True, window.allowed.value),
        "allowed": force(window.allowed.value, False),
        "governed_by": window.allowed.name,
        "why": window.allowed.why,
        "short": short,
        "more": more,
        "light": force(window.light.force, False) if window.light is not None else "nothing",
        "depth": length(chosen.depth or 0, 1),
        "pressed": force(pressed, True) if pressed is not None else "no thrust at all",
    }


def _fit_words(window: Thrust, fit: DriveFit | None) -> dict[str, str]:
    outer = window.drive.outer if window.drive is not None else 0.0
    return {"outer": length(outer), "finished": length(fit.near if fit is not None else 0.0)}


def _wheel_words(situation: Situation, window: Thrust) -> dict[str, str]:
    """What stands in a sentence about the handwheel."""
    machine, wheel = situation.case.machine, window.wheel
    feel = handwheel_torque((window.light or window.full).to_set, USUAL_LEAD_MM, HANDWHEEL_EFFICIENCY.typical)
    most = window.handwheel_most or 0.0
    slack = HANDWHEEL_EFFICIENCY.low / HANDWHEEL_EFFICIENCY.high
    words = {
        "wheel_torque": at_the_wheel(window.handwheel or 0.0),
        "wheel_most": at_the_wheel(most),
        "wheel_least": force(slack * window.allowed.value, False),
        "feel": at_the_wheel(feel),
    }
    if window.handwheel is not None and machine.handwheel_diameter is not None:
        words["rim"] = force(window.handwheel / (machine.handwheel_diameter / 2000), True)
    if wheel is not None:
        words |= {
            "given_torque": turning(situation.case.hold.handwheel_torque or 0.0),
            "wheel_low": force(wheel.low, False),
            "wheel_usual": force(wheel.typical, True),
            "wheel_high": force(wheel.high, True),
        }
    return words


def drive(situation: Situation, window: Thrust, fit: DriveFit | None) -> Fact:
    """The driven end: what bites it, how it sits, what lets go first."""
    center_drive, body = window.drive, situation.body
    catch = catch_need(situation, True, window.rpm).torque
    slip = window.slip
    given = situation.case.hold.drive
    values: dict[str, Value | None] = {
        "drive": center_drive.kind if center_drive is not None else "none",
        "grain": situation.traits.grain,
        "state": situation.traits.state,
        "wet": flag(situation.traits.green),
        "checked": flag(situation.traits.checked),
        "seated": window.seated,
        "sized": flag(given is not None and given.outer_diameter is not None),
        "tested": flag(situation.case.hold.slip_test is not None),
        "end_mm": body.end_diameter,
        "drive_share": share(center_drive.outer, body.end_diameter) if center_drive is not None else None,
        "hardness_n": situation.wood.hardness.typical if situation.wood is not None else None,
        "press_over_limit": share(window.press_force, window.press_allowed),
        "least_over_end": share(fit.least, body.end_diameter) if fit is not None else None,
        "small_carries": None if fit is None or fit.small_carries is None else flag(fit.small_carries),
        "slip_low_over_catch": share(slip[0], catch) if slip is not None else None,
        "slip_high_over_catch": share(slip[1], catch) if slip is not None else None,
        "taper_over_slip_low": share(window.taper_torque, slip[0]) if slip is not None else None,
        "taper_over_slip_high": share(window.taper_torque, slip[1]) if slip is not None else None,
    }
    words = {
        "outer": length(center_drive.outer if center_drive is not None else 0.0),
        "end": length(body.end_diameter),
        "depth": length((window.light or window.full).depth or 0, 1),
        "catch": turning(catch),
        "slip": f"{turning(slip[0])} to {turning(slip[1])}" if slip is not None else "nobody knows what",
        "taper": turning(window.taper_torque or 0.0),
        "press": force(window.press_force or 0.0, True),
        "set": force((window.light or window.full).to_set, True, window.allowed.value),
    }
    if fit is not None:
        words |= {"least": length(fit.least), "reach": length(fit.reach), "small": length(fit.small or 0.0)}
    return Fact("drive", known(values), words)


def tail(situation: Situation, window: Thrust, fit: TailFit) -> Fact:
    """The tail end: which center, how it sits, what another would allow."""
    center, body = window.center, situation.body
    cup = next(option for option in fit.options if option.kind == "live-cup")
    cap = HEAT_CAP_WOOD_W if situation.wood is not None else HEAT_CAP_PLASTIC_W
    values: dict[str, Value | None] = {
        "center": center.kind,
        "family": family(situation),
        "grain": situation.traits.grain,
        "purpose": situation.purpose,
        "bored": None if window.method in ends.ON_ARBOR else flag(situation.traits.form in ends.BORED),
        "reversed": flag(situation.reversed_piece),
        "end_mm": body.end_diameter,
        "ring_share": share(center.cup_diameter, body.end_diameter) if center.kind in ends.CUPS else None,
        "width_share": share(fit.width, body.end_diameter),
        "near_share": share(fit.width, fit.near),
        "cup_over_now": share(cup.allowed, window.allowed.value),
        "heat_over_cap": share(fit.heat, cap),
    }
    words = {
        "center": center.kind.replace("-", " "),
        "end": length(body.end_diameter),
        "width": length(fit.width),
        "near": length(fit.near),
        "reach": length(fit.reach),
        "opening": f"{fit.opening:.0%}",
        "allowed": force(window.allowed.value, False),
        "cup_allowed": force(cup.allowed, False),
        "heat": f"{two_figures(fit.heat or 0, True):.0f} W",
        "cap": f"{cap:.0f} W",
        "rpm": turns(window.rpm, up=True),
    }
    return Fact("tail", known(values), words)
