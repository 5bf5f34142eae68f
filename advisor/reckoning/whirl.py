"""Where the work begins to whip: its real profile, the thrust in it and the steady where it stands."""

from __future__ import annotations

from advisor.figure import NoAnswer
from advisor.physics import slender
from advisor.physics.slender import Ends
from advisor.physics.steadied import steadied_whirl_speed
from advisor.reckoning import ends
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation

WHIRL_SHARE = 0.6
WHIRL_SHARE_BOWED = 0.5
WHIRL_PASSED = 1.3  # above it the whip has died down again; nobody goes there through it
REAR_SHARE = 0.5
WHY = "the work whips"


def share_allowed(situation: Situation) -> float:
    """Share of the whirling speed that is allowed: less for a bar that is bowed already."""
    return WHIRL_SHARE_BOWED if "bowed" in situation.traits.conditions else WHIRL_SHARE


def ends_word(between: bool, tail_up: bool) -> Ends:
    """How the two ends are held."""
    return "pinned-pinned" if between else "fixed-pinned" if tail_up else "free"


def _free_stretch(length: float, steady: float | None, word: Ends) -> float:
    """The longest stretch in mm between supports; one that is free at its end swings like half of a longer one."""
    loose = 2.0 if word == "free" else 1.0
    return loose * length if steady is None else max(steady, loose * (length - steady))


def _steady_place(situation: Situation, length: float) -> float | None:
    steady = situation.case.hold.steady
    place = steady.position if steady is not None else None
    return place if place is not None and 0 < place < length else None


def whirl(situation: Situation, between: bool, tail_up: bool, thrust: float, critical: float | None) -> Limit | None:
    """Six tenths (bowed: half) of the speed at which the bar whirls, with the thrust and the steady in it.

    A finished piece whose profile is known is reckoned as it is. Before that the stiffness is that of the thinnest
    section it will have and the mass that of the thickest it has: no shape on the way whips sooner.
    """
    modulus = ends.modulus_low(situation)
    if modulus is None or situation.side_grain:
        return None
    word = ends_word(between, tail_up)
    body, density = situation.body, situation.density.high
    length = body.length if tail_up else situation.case.hold.overhang or body.length
    steady = _steady_place(situation, length)
    push = min(thrust, critical / 3) if critical is not None and tail_up else 0.0
    profile = situation.case.work.profile if situation.traits.state == "finished" else None
    sag = 1.0 if profile else body.thinnest / body.end_diameter
    line = profile or ((0.0, body.thinnest), (length, body.thinnest))
    slim = max(diameter for _, diameter in line)
    shear = slender.whirl_shear_factor(_free_stretch(length, steady, word) / slim)
    if shear is None:
        return None
    share = share_allowed(situation) * shear * sag
    if steady is not None:
        return _steadied(line, modulus, density, word, push, steady, share)
    if profile:
        figure = slender.profile_whirl_speed.figure(
            profile=profile, modulus=modulus, density=density, ends=word, thrust=push
        )
    else:
        figure = slender.whirl_speed.figure(
            diameter=body.thinnest, length=length, modulus=modulus, density=density, ends=word, thrust=push
        )
    return from_figure("whirl", figure, share, WHY)


def _steadied(
    line: tuple[tuple[float, float], ...],
    modulus: float,
    density: float,
    word: Ends,
    push: float,
    steady: float,
    share: float,
) -> Limit | None:
    start = line[0][0]
    try:
        rpm = steadied_whirl_speed(line, modulus, density, word, push, start + steady)
    except NoAnswer:
        return None
    text = (
        f"{share:.3g} × (30/π)·√(least ω² of (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y, y = 0 at {steady:.0f} mm)"
        f" = {share:.3g} × {rpm:.0f} rpm, E = {modulus:.3g} GPa, F = {push:.0f} N"
    )
    return Limit("whirl", share * rpm, "calculated", ("beam-vibration",), f"{WHY} between its supports", text)


def whip_band(situation: Situation, limit: Limit | None) -> tuple[float, float] | None:
    """Speeds in rpm never to dwell in: from the limit to 1.3 of the whirling speed."""
    if limit is None:
        return None
    return limit.value, limit.value / share_allowed(situation) * WHIRL_PASSED


def rear_overhang(situation: Situation) -> Limit | None:
    """Half the whirling speed of the bar that stands out behind the spindle."""
    out = situation.case.hold.rear_overhang
    modulus = ends.modulus_low(situation)
    if not out or modulus is None:
        return None
    figure = slender.whirl_speed.figure(
        diameter=situation.body.end_diameter,
        length=out,
        modulus=modulus,
        density=situation.density.high,
        ends="free",
        thrust=0.0,
    )
    return from_figure("rear-overhang", figure, REAR_SHARE, "the bar behind the spindle whips")
