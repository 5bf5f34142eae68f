"""Thrust and centers as they stand in the answer: plain dictionaries, values unrounded."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from typing import Any

from advisor.advice.advise import Advice
from advisor.reckoning.center_fit import TailFit, drive_fit, tail_fit
from advisor.reckoning.drives import Drive
from advisor.reckoning.thrust import BETWEEN_CENTERS, Thrust


def _said(values: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in values.items() if value is not None}


def thrust_part(advice: Advice, changes: list[str]) -> dict[str, Any]:
    """The window; no number to set where it is empty."""
    window = advice.thrust
    if window is None:
        return {"window": "not-used", "limits": [], "would_change": []}
    word = advice.window
    need = window.full if word == "empty" or window.light is None else window.light
    part: dict[str, Any] = {
        "window": word,
        "needed_n": need.needed,
        "allowed_n": window.allowed.value,
        "governed_by": window.allowed.name,
        "limits": [limit.as_dict("n") for limit in sorted(window.limits, key=lambda limit: limit.value)],
        "would_change": changes,
    }
    if not math.isfinite(need.needed):
        del part["needed_n"]
    if word != "empty":
        part["set_n"] = need.to_set
        part.update(_wheel(window, advice.situation.case.machine.handwheel_diameter))
        if window.light_share < 1:
            part["light_cuts_n"] = need.force
    if window.wheel is not None:
        part["handwheel_gives_n"] = [window.wheel.low, window.wheel.high]
    part.update(_teeth(window, need.depth, word))
    return part


def _wheel(window: Thrust, diameter: float | None) -> dict[str, Any]:
    """Torque at the handwheel for the thrust to set, never past the most, and the force at its rim."""
    if window.handwheel is None or window.handwheel_most is None:
        return {}
    wind = min(window.handwheel, window.handwheel_most)
    rim = None if diameter is None else wind / (diameter / 2000)
    return _said(
        {
            "handwheel_nm": wind,
            "handwheel_rim_n": rim,
            "handwheel_most_nm": window.handwheel_most,
        }
    )


def _teeth(window: Thrust, depth: float | None, word: str) -> dict[str, Any]:
    possible = word != "empty"
    return _said(
        {
            "runner_up": window.runner_up.name if window.runner_up is not None else None,
            "seat_depth_mm": depth if possible else None,
            "pressed_only_n": window.pressed_only,
            "slip_nm": list(window.slip) if window.slip is not None and possible else None,
            "taper_slips_nm": window.taper_torque,
            "press_in_n": window.press_force if possible else None,
            "press_in_allowed_n": window.press_allowed if possible else None,
        }
    )


def centers_part(advice: Advice) -> dict[str, Any]:
    """The drive and tail center the window was worked out for, how they sit, and what others would do."""
    window = advice.thrust
    if window is None:
        return {}
    fit = tail_fit(advice.situation, window)
    part: dict[str, Any] = {"tail": _tail(window, fit), "tail_choice": _tail_choice(fit)}
    if window.drive is not None:
        part["drive"] = _drive(advice, window, window.drive)
    if window.between:
        part["drive_choice"] = list(_drive_choice(advice))
    return part


def _tail(window: Thrust, fit: TailFit) -> dict[str, Any]:
    center = window.center
    tail: dict[str, Any] = {"kind": center.kind}
    if "point" in center.kind or "cone" in center.kind:
        tail["point_angle_deg"] = 2 * center.half_angle
    if "cup" in center.kind:
        tail["cup_diameter_mm"] = center.cup_diameter
        tail["lip_height_mm"] = center.lip
    tail |= {"opening_share": fit.opening, "width_mm": fit.width, "finished_near_mm": fit.near}
    if fit.heat is not None:
        tail["heat_w"] = fit.heat
    return tail


def _tail_choice(fit: TailFit) -> list[dict[str, Any]]:
    """Every kind of tail center in place of this one, the one that allows most first."""
    return [
        {
            "kind": option.kind,
            "allowed_n": option.allowed,
            "governed_by": option.governed_by,
            "share_of_the_cut": option.light_share,
        }
        for option in sorted(fit.options, key=lambda option: -option.allowed)
    ]


def _drive(advice: Advice, window: Thrust, drive: Drive) -> dict[str, Any]:
    fit = drive_fit(advice.situation, window)
    values: dict[str, Any] = {
        "kind": drive.kind,
        "teeth": drive.teeth,
        "outer_diameter_mm": drive.outer,
        "inner_diameter_mm": drive.inner,
        "face_angle_deg": drive.face_angle,
        "back_angle_deg": drive.back_angle,
        "seating": window.seated,
    }
    if fit is not None:
        values |= {
            "turn_no_thinner_than_mm": fit.least,
            "within_mm_of_the_end": fit.reach,
            "finished_near_mm": fit.near,
            "smaller_drive_mm": fit.small,
            "smaller_drive_carries": fit.small_carries,
        }
    return _said(values)


def _drive_choice(advice: Advice) -> Iterable[dict[str, Any]]:
    """The drives that were judged, best first, with the first thing that speaks for or against each."""
    for hold in advice.judgement.holds:
        if hold.method in BETWEEN_CENTERS:
            why = next((ruling.text for ruling in hold.rulings if ruling.text), "")
            yield {"method": hold.method, "verdict": hold.verdict, "why": why}
