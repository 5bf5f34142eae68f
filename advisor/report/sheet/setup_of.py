"""Case and answer -> what the drawing shows: sizes of the blank are the case's, those of the hold the answer's."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from advisor.drawing.setup import Blank, Drive, Held, Setup, Tail
from advisor.models.case import Case
from advisor.situation import Situation
from advisor.situation.assumption import Ledger
from advisor.situation.shape import half_log_axis


def setup_of(case: Case, situation: Situation, answer: Mapping[str, Any]) -> Setup:
    """The setup the answer speaks of; of a piece that is not to be mounted only the blank."""
    blank = _blank(case, situation)
    if answer["verdict"] == "do-not-mount" or not answer.get("holding"):
        return Setup(blank)
    first = answer["holding"][0]
    centers = answer.get("centers") or {}
    held = Held(first["method"], first["sizes"], _drive(centers.get("drive"), answer["thrust"]), case.hold.overhang)
    steady = case.hold.steady.position if case.hold.steady is not None else None
    return Setup(
        blank=blank,
        held=held,
        tail=_tail(centers["tail"]) if first["tail"] == "up" and "tail" in centers else None,
        steady=steady,
        hand_rest=not situation.cut.carriage,
    )


def _blank(case: Case, situation: Situation) -> Blank:
    work, body, traits = case.work, situation.body, situation.traits
    trued = situation.trued
    log: tuple[float, float] | tuple[None, None] = (None, None)
    if traits.form == "half-log" and traits.grain == "along":
        log = half_log_axis(case, body.diameter, Ledger())
    crack = work.crack
    return Blank(
        form=traits.form,
        diameter=body.diameter,
        length=body.length,
        end=body.end_diameter,
        trued=trued,
        across=situation.side_grain,
        log_radius=log[0],
        flat=log[1],
        wall=work.wall,
        floor=work.floor,
        finished=work.finished_diameter,
        profile=tuple(work.profile or ()),
        crack=crack.across if crack is not None else None,
        from_pith=crack is not None and crack.runs == "pith-to-rim",
    )


def _drive(drive: Mapping[str, Any] | None, thrust: Mapping[str, Any]) -> Drive | None:
    if drive is None:
        return None
    return Drive(
        kind=drive["kind"],
        outer=drive["outer_diameter_mm"],
        inner=drive.get("inner_diameter_mm", 0.0),
        teeth=drive.get("teeth"),
        seated=thrust.get("seat_depth_mm", 0.0),
    )


def _tail(tail: Mapping[str, Any]) -> Tail:
    return Tail(tail["kind"], tail.get("point_angle_deg"), tail.get("cup_diameter_mm"))
