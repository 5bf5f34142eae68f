"""Which hold a stage gets: the first that is accepted, has a thrust and leaves room for the rest of the job."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from advisor.advice.changes import hold_proposals, window_word
from advisor.advice.judge import HOLD_VERDICT, NOT_LISTED, JudgedHold, judge
from advisor.models.case import METHODS, Case
from advisor.models.fields import changed
from advisor.models.methods import method as method_record
from advisor.models.spoken import spoken
from advisor.planning.faults import Fault, hold_fault
from advisor.planning.jobs import Template, grips
from advisor.planning.progress import SEATED
from advisor.planning.sizes_to_make import Sized, sized
from advisor.planning.stage import InHand
from advisor.situation import Situation, settle

NO_SAFE_HOLD = "no-safe-hold"
ON_A_FACE = ("rim", "bore", "ball")  # where the orders of reach, which think of a blank, do not apply


class Choice(NamedTuple):
    """The hold of a stage at its sizes, or the fault when none will do.

    `judged` are the holds looked at, `rejected` why each was passed over; `limited`: the person's own kit or choice
    leaves no other.
    """

    found: Sized | None
    fault: Fault | None
    judged: tuple[JudgedHold, ...] = ()
    rejected: tuple[tuple[str, Fault], ...] = ()
    limited: bool = False


def in_kit(case: Case, holds: Sequence[str]) -> tuple[str, ...]:
    """Those of the holds that are to hand; all of them when no kit is given."""
    kit = [word for word in case.hold.kit or () if word in METHODS]
    return tuple(method for method in holds if not kit or method in kit)


def choose(work: InHand, template: Template, base: Case, names: Sequence[str], wanted: str | None) -> Choice:
    """The first of these holds that will do for the stage; `wanted` is the one that the person chose."""
    if not names:
        return Choice(None, _nothing_to_hand(work, template, base), limited=True)
    situation = settle(changed(base, "hold.method", wanted))
    ranked = _ranked(work, situation, template, names)
    rejected: list[tuple[str, Fault]] = []
    for entry in ranked:
        found = sized(work, template, base, entry)
        fault = _against(work, template, settle(found.case), found.hold)
        if fault is None:
            return Choice(found, None, tuple(ranked), tuple(rejected))
        rejected.append((entry.method, fault))
    instead = _instead(work, template, base, rejected, wanted)
    limited = not instead if wanted is not None else bool(work.situation.case.hold.kit)
    method, first = rejected[0]
    text = f"Not this hold ({spoken(method)}). {first.text}" if first.name == NO_SAFE_HOLD else first.text
    do = f"{first.do} {instead}".strip() or _opened(work, situation, ranked[0])
    return Choice(None, Fault(first.name, text, do), tuple(ranked), tuple(rejected), limited)


def _ranked(work: InHand, situation: Situation, template: Template, names: Sequence[str]) -> list[JudgedHold]:
    """Accepted first; the grip that is already cut before any other; then the order of reach.

    Holds that no order of reach names stand in the order of the job's own table.
    """
    order, seats = template.holds, work.progress.seats.get(template.grips, (None, None))
    cut = [kind for kind, seat in zip(SEATED, seats, strict=True) if seat is not None]
    before = work.progress.seated_by.get(template.grips)

    def place(hold: JudgedHold) -> tuple[bool, bool, bool, int]:
        own = order.index(hold.method) if hold.method in order else len(order)
        fits = grips()[hold.method].kind in cut
        own = own if hold.place >= NOT_LISTED or template.grips in ON_A_FACE else -1
        return not hold.accepted, bool(cut) and not fits, before is not None and hold.method != before, own

    return sorted(judge(situation, work.engine, names).holds, key=place)


def _against(work: InHand, template: Template, situation: Situation, hold: JudgedHold) -> Fault | None:
    """What speaks against this hold in this stage: the job, its own strength, or the thrust it asks for."""
    fault = hold_fault(work.job, template, hold.method, hold.figures.sizes, work.progress, work.situation.case)
    if fault is not None:
        return fault
    if not hold.accepted:
        return Fault(NO_SAFE_HOLD, _grounds(hold), "")
    word, _ = window_word(situation, hold.method, work.engine)
    if word == "empty":
        return Fault(
            "no-safe-thrust",
            f"Between centers ({spoken(hold.method)}) no thrust both drives the work and leaves its ends whole.",
            "Grip one end instead, or see `advisor thrust` for what opens the window.",
        )
    return None


def _grounds(hold: JudgedHold) -> str:
    """Everything that speaks against a hold as much as the worst of it."""
    worst = [entry.text for entry in hold.rulings if HOLD_VERDICT.get(entry.rule.effect) == hold.verdict and entry.text]
    return " ".join(dict.fromkeys(worst))


def _nothing_to_hand(work: InHand, template: Template, base: Case) -> Fault:
    return Fault(
        "no-hold-to-hand",
        "Nothing in the kit can hold it for this stage.",
        _would_do(work, template, base, template.holds) or "Nothing else would either: change the piece.",
    )


def _instead(
    work: InHand, template: Template, base: Case, rejected: Sequence[tuple[str, Fault]], wanted: str | None
) -> str:
    """What would do: in place of the chosen hold something of the kit, in place of the kit something outside it."""
    usable = in_kit(work.situation.case, template.holds) if wanted is not None else template.holds
    tried = {name for name, _ in rejected}
    return _would_do(work, template, base, [method for method in usable if method not in tried])


def _would_do(work: InHand, template: Template, base: Case, methods: Sequence[str]) -> str:
    """What would hold it here that was not tried: the first that is accepted, with what it needs."""
    if not methods:
        return ""
    situation = settle(base)
    for hold in _ranked(work, situation, template, methods):
        if _against(work, template, situation, hold) is None:
            return f"What would do it: {spoken(hold.method)} (it needs {method_record(hold.method).needs})."
    return ""


def _opened(work: InHand, situation: Situation, hold: JudgedHold) -> str:
    """What would change the verdict on this hold, tried in the model."""
    case = changed(situation.case, "machine.tailstock", True)
    if not situation.lathe.tailstock and judge(settle(case), work.engine, (hold.method,)).accepted:
        return "What would change it: a tailstock."
    proposals = hold_proposals(situation, work.engine, hold)
    found = [entry.text for entry in proposals if entry.verdict in ("suits", "with-care")]
    return f"What would change it: {'; '.join(found)}." if found else "Another piece or another lathe."
