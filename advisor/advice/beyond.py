"""When nothing to hand holds the piece: the one thing to make or to get, found by judging all that is not to hand.

What can be made in the shop from what is there comes before what must be bought: it is there by evening, it fits this
piece, and a purchase can wait until it has shown that it is needed.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from advisor.advice.judge import JudgedHold, Judgement, judge
from advisor.data.tables import Row, Table, Text, load
from advisor.engine import Fires
from advisor.models.case import METHODS
from advisor.models.fields import changed
from advisor.models.methods import method as method_record
from advisor.models.spoken import spoken
from advisor.reckoning.holds.margins import steady_possible
from advisor.situation import Situation

TABLE = Table(
    "hold_making.csv",
    (
        Text("method"),
        Text("how", required=False),
        Text("carried_by", required=False),
        Text("alone", one_of=("yes", "no")),
        Text("source"),
    ),
    key=("method",),
    rows=36,
)
STEADY = "steady-rest"
CARRIERS = {
    "plate": frozenset({
        "faceplate-screws", "waste-block-faceplate", "clamped-faceplate", "offset-faceplate", "screw-chuck",
    }),
    "jaws": frozenset({
        "jaws-on-tenon", "jaws-in-recess", "long-jaws", "three-jaw", "four-jaw-independent", "soft-jaws",
        "split-bushing",
    }),
}  # fmt: skip
MAKE, BUY, BUY_TWO = range(3)
NEAREST = 4  # holds on which single changes are tried when no other hold would do


class OneThing(NamedTuple):
    """The hold that would do, what has to be made or got for it (a method or an aid), and which of both.

    how: the way to make it; empty for a purchase. carrier: it needs a plate or a chuck as well that is not there.
    """

    hold: JudgedHold
    thing: str
    how: str
    carrier: bool


@lru_cache(maxsize=1)
def _rows() -> dict[str, Row]:
    return {row.text("method"): row for row in load(TABLE)}


def _carried(situation: Situation, row: Row) -> bool:
    """Whether what it is made on, or fixed to, is there; nothing is needed where the table names nothing."""
    words = row.text("carried_by").split()
    kit = frozenset(situation.case.hold.kit or ())
    metal = "metal-lathe" in words and situation.lathe.kind == "metal-lathe"
    return not words or metal or any(kit & CARRIERS.get(word, frozenset()) for word in words)


def _way(situation: Situation, name: str) -> int:
    """Made from what is there, bought, or bought with what carries it."""
    row = _rows()[name]
    carried = _carried(situation, row)
    if row.text("how") and carried:
        return MAKE
    return BUY if carried or row.text("alone") == "yes" else BUY_TWO


def _with_steady(situation: Situation, engine: Fires) -> OneThing | None:
    """The best hold of the kit with a steady made for it, where it is only the reach of the work that defeats it."""
    kit = situation.case.hold.kit
    if not kit or STEADY in kit:
        return None
    richer = situation._replace(case=changed(situation.case, "hold.kit", (*kit, STEADY)))
    if not steady_possible(richer):
        return None
    best = judge(richer, engine).holds[0]
    return OneThing(best, STEADY, _rows()[STEADY].text("how"), False) if best.accepted else None


def one_thing(situation: Situation, engine: Fires, judgement: Judgement) -> OneThing | None:
    """The one thing to make or to get when nothing to hand will do.

    None when something to hand does, when no kit was given, or when nothing else does either.
    """
    if judgement.accepted:
        return None
    judged = {hold.method for hold in judgement.holds}
    others = [name for name in METHODS if name not in judged]
    found = [hold for hold in judge(situation, engine, others).holds if hold.accepted]
    best = min(found, key=lambda hold: _way(situation, hold.method), default=None)
    if best is None or _way(situation, best.method) != MAKE:
        steadied = _with_steady(situation, engine)
        if steadied is not None or best is None:
            return steadied
    way = _way(situation, best.method)
    how = _rows()[best.method].text("how") if way == MAKE else ""
    return OneThing(best, best.method, how, way == BUY_TWO)


def in_words(found: OneThing) -> str:
    """What to make or to get, and why this one."""
    name = spoken(found.thing)
    if found.thing == STEADY:
        held = spoken(found.hold.method)
        return f"make a {name} ({found.how}): with it {held} will do, and nothing need be bought"
    needs = method_record(found.thing).needs
    if found.how:
        return f"{name}, made in the shop: {found.how} (it needs {needs}); nothing need be bought"
    carrier = " with a chuck or a plate to carry it" if found.carrier else ""
    return f"{name}{carrier}, bought (it needs {needs}); nothing made from what is there would hold it"


def nearest_change(situation: Situation, engine: Fires, judgement: Judgement) -> str:
    """The single change that lets a hold pass, tried in the model on what an old hand reaches for; or nothing."""
    from advisor.advice.changes import hold_proposals

    reached = sorted(judgement.holds, key=lambda hold: hold.place)
    for hold in reached[:NEAREST]:
        for proposal in hold_proposals(situation, engine, hold):
            if proposal.verdict in ("suits", "with-care"):
                return f"{spoken(hold.method)}, {proposal.text}"
    return ""


def would_do(situation: Situation, engine: Fires, judgement: Judgement) -> tuple[OneThing | None, str]:
    """The one thing, and the same in words; where no hold would do, the nearest change instead."""
    found = one_thing(situation, engine, judgement)
    if found is not None:
        return found, in_words(found)
    change = nearest_change(situation, engine, judgement)
    outside = "nothing outside it either; " if situation.case.hold.kit else ""
    return None, f"{outside}{change or 'no single change of cut or size does: change the piece'}"
