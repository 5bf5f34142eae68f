"""The sizes of the grip that a stage cuts for a later one: for all that stand on it, and for the drying between."""

from __future__ import annotations

from typing import NamedTuple

from advisor.advice.judge import JudgedHold, judge
from advisor.models.case import Case, Tenon
from advisor.models.fields import changed
from advisor.physics.drying import diameter_to_leave
from advisor.planning.derive import stage_case
from advisor.planning.jobs import Template, grips
from advisor.planning.stage import InHand
from advisor.reckoning.drying import drying
from advisor.reckoning.proportions import proportions
from advisor.reckoning.proportions.size import shop
from advisor.situation import Situation, settle

SIZED = ("tenon", "recess", "screws", "face")


class Sized(NamedTuple):
    """A case with its hold at the sizes to make, the hold judged with them, and the tenon to true out of a wet one."""

    case: Case
    hold: JudgedHold
    when_dry: Tenon | None = None


def sized(work: InHand, template: Template, base: Case, hold: JudgedHold) -> Sized:
    """The case with this hold at the sizes to make.

    Where those sizes are no better than what the trade would take at first sight, that stays.
    """
    plain, kind = changed(base, "hold.method", hold.method), grips()[hold.method].kind
    if kind not in SIZED:
        return Sized(plain, hold)
    situation = settle(plain)
    case = proportions(situation, hold.method, hold.rpm).put_into(base)
    when_dry = None
    if kind == "tenon":
        case = _for_all(work, template, case, hold)
        wet = oversize(situation, case.hold.tenon)
        when_dry = case.hold.tenon if wet is not None else None
        case = changed(case, "hold.tenon", wet or case.hold.tenon)
    judged = judge(settle(case), work.engine, (hold.method,)).holds[0]
    return Sized(case, judged, when_dry) if judged.accepted or not hold.accepted else Sized(plain, hold)


def _for_all(work: InHand, template: Template, case: Case, hold: JudgedHold) -> Case:
    """The tenon as large as the hardest of the stages asks that stand on it, not only the first."""
    tenons = [case.hold.tenon]
    for later in work.ahead[work.ahead.index(template) + 1 :]:
        if template.grips in later.makes:
            break
        if later.grips == template.grips and hold.method in later.holds:
            own = changed(stage_case(work.situation, work.job, later, work.progress), "hold.method", hold.method)
            tenons.append(proportions(settle(own), hold.method, hold.rpm).put_into(own).hold.tenon)
    return changed(case, "hold.tenon", max(filter(None, tenons), key=lambda tenon: tenon.diameter or 0.0))


def oversize(situation: Situation, tenon: Tenon | None) -> Tenon | None:
    """The tenon to cut in wet wood, so large that a true one can be turned out of it when it has dried oval.

    None for dry wood and where the person has a tenon already.
    """
    own = situation.case.hold.tenon
    given = own is not None and own.diameter is not None
    dried = None if given else drying(situation)
    if dried is None or tenon is None or tenon.diameter is None:
        return None
    leave = diameter_to_leave(finished=tenon.diameter, shrinkage=dried.most)
    wide = min(shop(leave), situation.body.end_diameter)
    return tenon.altered({"diameter": wide, "shoulder_diameter": max(tenon.shoulder_diameter or wide, wide)})
