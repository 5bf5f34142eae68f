"""Where the work begins to whip: its real profile, the thrust in it and the steady where it stands."""

from typing import NamedTuple

from advisor.figure import NoAnswer
from advisor.physics import slender
from advisor.physics.slender import Ends
from advisor.physics.steadied import supported_whirl_speed
from advisor.reckoning import ends
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation

WHIRL_SHARE = 0.6  # memory
WHIRL_SHARE_BOWED = 0.5  # memory
WHIRL_PASSED = 1.3  # above it the whip has died down again; nobody goes there through it; memory
REAR_SHARE = 0.5  # memory
WHY = "the work whips"
Line = tuple[tuple[float, float], ...]


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


def _whole(profile: Line, length: float) -> Line:
    """The profile over the whole bar: where nobody drew it, it goes on as thick as it was."""
    (start, first), (end, last) = profile[0], profile[-1]
    before = ((0.0, first),) if start > 0 else ()
    return (*before, *profile, *(((length, last),) if end < length else ()))


class Bar(NamedTuple):
    """What swings: E GPa, density kg/m³, how its ends are held, the thrust in it N, a steady mm from its beginning."""

    modulus: float
    density: float
    word: Ends
    push: float
    steady: float | None


def whirl(situation: Situation, between: bool, tail_up: bool, thrust: float, critical: float | None) -> Limit | None:
    """Six tenths (bowed: half) of the speed at which the bar whirls, with the thrust and the steady in it.

    A finished piece whose profile is known is reckoned as it is. Before that it has the stiffness of the profile, place
    by place, and the mass of the bar it is cut from. Without a profile the stiffness is that of the thinnest section it
    will have and the mass that of the thickest it has. No shape on the way whips sooner.
    """
    modulus = ends.modulus_low(situation)
    if modulus is None or situation.side_grain:
        return None
    body, profile = situation.body, situation.case.work.profile
    length = body.length if tail_up else situation.case.hold.overhang or body.length
    push = min(thrust, critical / 3) if critical is not None and tail_up else 0.0
    steady, word = _steady_place(situation, length), ends_word(between, tail_up)
    bar = Bar(modulus, situation.density.high, word, push, steady)
    profile = _whole(profile, length) if profile else None
    line = profile or ((0.0, body.thinnest), (length, body.thinnest))
    heavy = None
    if situation.traits.state != "finished" or not profile:
        heavy = max(body.end_diameter, *(diameter for _, diameter in line))
    shear = slender.whirl_shear_factor(_free_stretch(length, steady, word) / max(diameter for _, diameter in line))
    if shear is None:
        return None
    share = share_allowed(situation) * shear
    if steady is not None or (profile and heavy is not None):
        return _by_elements(line, bar, heavy, share)
    if profile:
        figure = slender.profile_whirl_speed.figure(
            profile=profile, modulus=modulus, density=bar.density, ends=word, thrust=push
        )
        return from_figure("whirl", figure, share, WHY)
    figure = slender.whirl_speed.figure(
        diameter=body.thinnest, length=length, modulus=modulus, density=bar.density, ends=word, thrust=push
    )
    return from_figure("whirl", figure, share * body.thinnest / (heavy or body.thinnest), WHY)


def _by_elements(line: Line, bar: Bar, heavy: float | None, share: float) -> Limit | None:
    """A bar with a steady, or one still heavier than its profile."""
    start = line[0][0]
    place = None if bar.steady is None else start + bar.steady
    try:
        rpm = supported_whirl_speed(line, bar.modulus, bar.density, bar.word, bar.push, place, heavy)
    except NoAnswer:
        return None
    held = "" if bar.steady is None else f", y = 0 at {bar.steady:.0f} mm"
    weight = "" if heavy is None else f", A that of {heavy:.3g} mm, I that of the finished shape"
    text = (
        f"{share:.3g} × (30/π)·√(least ω² of (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y{held})"
        f" = {share:.3g} × {rpm:.0f} rpm, E = {bar.modulus:.3g} GPa, F = {bar.push:.0f} N{weight}"
    )
    why = WHY if bar.steady is None else f"{WHY} between its supports"
    return Limit("whirl", share * rpm, "calculated", ("beam-vibration",), why, text)


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
