"""Advice -> the answer of the interface: plain dictionaries, values unrounded."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from advisor.advice.advise import Advice
from advisor.advice.center_answer import centers_part, thrust_part
from advisor.advice.judge import JudgedHold
from advisor.advice.tools import tool_of
from advisor.data.tables import Number, Table, Text, load
from advisor.engine import Ruling
from advisor.reckoning.balancing import Balance, Move, balance_of, words_of
from advisor.reckoning.way_up import Rung, steps
from advisor.rulebook import Effect
from advisor.situation.assumption import Assumption
from advisor.sources import source

SCHEMA = "1"
VERDICT_RANK = {Effect.DO_NOT_MOUNT: 0, Effect.ASK_FIRST: 1, Effect.WITH_CARE: 2}


def basis_of(ruling: Ruling) -> str:
    """The sources of a ruling as a person reads them."""
    return "; ".join(source(key).title for key in ruling.rule.basis)


def _unique(entries: Iterable[dict[str, Any]]) -> list[dict[str, Any]]:
    """The entries without those whose text was said already, in their order."""
    first: dict[str, dict[str, Any]] = {}
    for entry in entries:
        first.setdefault(entry["text"], entry)
    return list(first.values())


def _tells_how(ruling: Ruling) -> bool:
    """It tells with what care to hold or run the piece, which is no word for one that must not be mounted."""
    return ruling.rule.effect is Effect.WITH_CARE and ruling.rule.topic in ("choice", "thrust", "speed", "slender")


def reasons(advice: Advice) -> list[dict[str, Any]]:
    """Why the verdict, worst first."""
    refused = advice.verdict == "do-not-mount"
    found = [ruling for ruling in advice.rulings if ruling.rule.effect in VERDICT_RANK]
    found = [ruling for ruling in found if not (refused and _tells_how(ruling))]
    found.sort(key=lambda ruling: (VERDICT_RANK[ruling.rule.effect], not ruling.rule.hard))
    return _unique(
        {"rule": entry.rule.name, "text": entry.text, "basis": basis_of(entry), "do": entry.remedy} for entry in found
    )


def cautions(advice: Advice) -> list[dict[str, Any]]:
    """The cautions of every turner and those the case earns."""
    found = [ruling for ruling in advice.rulings if ruling.rule.effect is Effect.CAUTION]
    return _unique({"text": entry.text, "rule": entry.rule.name, "basis": basis_of(entry)} for entry in found)


STEPS = Table(
    "step_order.csv",
    (Text("rule"), Number("place", 1, 99), Text("source")),
    key=("rule",),
    rows=34,
)
MIDDLE = 50.0  # a step whose place in the order of work nobody fixed


def checks(advice: Advice) -> list[str]:
    """What to do before the switch, as the rules ask for it, in the order of the work."""
    places = {row.text("rule"): row.number("place") for row in load(STEPS)}
    found = [entry for entry in advice.rulings if entry.rule.effect is Effect.CHECK]
    found.sort(key=lambda entry: places.get(entry.rule.name, MIDDLE))
    return list(dict.fromkeys(entry.text for entry in found))


def notes(advice: Advice) -> list[str]:
    """Remarks that change nothing and help."""
    found = [entry.text for entry in advice.rulings if entry.rule.effect is Effect.NOTE]
    return list(dict.fromkeys(found))


def one_hold(hold: JudgedHold, rank: int, changes: Iterable[str]) -> dict[str, Any]:
    """One method as it stands in the ranking."""
    grounds = [{"rule": entry.rule.name, "text": entry.text} for entry in hold.rulings if entry.text]
    return {
        "method": hold.method,
        "verdict": hold.verdict,
        "rank": rank,
        "margins": [
            {
                "name": margin.name,
                "have": margin.have,
                "need": margin.need,
                "unit": margin.unit,
                "ratio": margin.ratio,
                "grade": margin.grade,
            }
            for margin in hold.figures.margins
            if math.isfinite(margin.ratio)
        ],
        "grounds": grounds,
        "would_change": list(changes),
        "sizes": {key: value for key, value in hold.figures.sizes.items() if value is not None},
        "tail": "up" if hold.figures.tail_up else "away",
        "low": hold.figures.low,
        "typical_over_divisor": hold.figures.divided,
    }


def holding(advice: Advice, changes: Callable[[str], list[str]]) -> list[dict[str, Any]]:
    """All methods judged, the chosen one first, then best first."""
    ordered = [advice.used, *(hold for hold in advice.judgement.holds if hold is not advice.used)]
    found = []
    for rank, hold in enumerate(ordered, 1):
        entry = one_hold(hold, rank, changes(hold.method))
        found.append({key: value for key, value in entry.items() if value is not None})
    return found


def _rung(rung: Rung) -> dict[str, Any]:
    return {
        "radius_removed_mm": rung.removed,
        "offset_mm": rung.offset,
        "ceiling_rpm": rung.ceiling,
        "governed_by": rung.governed_by,
        "diameter_mm": rung.diameter,
        "state": rung.state,
    }


def speed_part(advice: Advice, rungs: Iterable[Rung], changes: list[str]) -> dict[str, Any]:
    """Start, ceiling, every limit, the way up."""
    if advice.verdict == "do-not-mount":
        return {
            "ceiling_rpm": 0,
            "limits": [limit.as_dict("rpm") for limit in advice.speed.limits],
            "would_change": changes,
        }
    rate = advice.speed
    part: dict[str, Any] = {
        "start_rpm": rate.start,
        "ceiling_rpm": rate.ceiling.value,
        "governed_by": rate.ceiling.name,
        "steps": [
            {"when": step.when, "rpm": step.rpm, "check": step.check, "energy_j": step.energy}
            for step in steps(advice.situation, rate, advice.used.figures.tail_up)
        ],
        "limits": [limit.as_dict("rpm") for limit in rate.limits],
        "energy_j": rate.energy,
        "rim_m_per_s": rate.rim_speed,
        "ladder": [_rung(rung) for rung in rungs],
        "balance": balance_part(balance_of(advice.situation, rate.balanced)),
        "would_change": changes,
    }
    if rate.runner_up is not None:
        part["runner_up"] = rate.runner_up.name
    if rate.whips is not None:
        part["whip_rpm"] = list(rate.whips)
    return part


def balance_part(found: Balance) -> dict[str, Any]:
    """Where the mass is, where the centers belong, and what the counterweight's fixing must hold."""
    weight = found.weight
    values: dict[str, Any] = {
        "mass_kg": found.mass,
        "offset_mm": found.offset,
        "shift_mm": max((move.distance for move in found.moves), default=found.offset),
        "counterweight_g": weight.grams if weight is not None else 0.0,
        "static_mm": found.static,
        "couple_kg_mm2": found.couple,
    }
    if found.moves:
        values["moves"] = [
            {key: value for key, value in {**_move(move), "text": words_of(move)}.items() if value is not None}
            for move in found.moves
        ]
    if weight is not None:
        values |= {
            "counterweight_radius_mm": weight.radius,
            "counterweight_deg": weight.direction,
            "counterweight_pull_n": weight.pull,
            "counterweight_must_hold_n": weight.must_hold,
            "counterweight_bolts": weight.bolts,
            "counterweight_couple_kg_mm2": weight.couple_left,
        }
    return {key: value for key, value in values.items() if value is not None}


def _move(move: Move) -> dict[str, Any]:
    return {
        "end": move.end,
        "distance_mm": move.distance,
        "direction_deg": move.direction,
        "remains_mm": move.remains,
        "swing_mm": move.swing,
    }


def assumed(advice: Advice) -> list[dict[str, Any]]:
    """Everything nobody said, with the value used and why."""
    situation = advice.situation
    found = [*situation.assumed, *advice.used.figures.assumed, *advice.speed.assumed]
    drive = advice.thrust.drive if advice.thrust is not None else None
    if drive is not None:
        found += drive.assumed
    if situation.case.hold.method is None and all(entry.field != "hold.method" for entry in found):
        others = [hold.method for hold in advice.judgement.holds if hold is not advice.used and hold.accepted]
        why = f"what an old hand would reach for; next: {others[0]}" if others else "what an old hand would reach for"
        found.append(Assumption("hold.method", advice.used.method, why))
    if advice.thrust is not None and situation.case.hold.tail is None:
        found.append(Assumption("hold.tail.kind", advice.thrust.center.kind, "the point that splits most readily"))
    return list({entry.field: entry._asdict() for entry in found}.values())


def could_not_check(advice: Advice) -> list[dict[str, str]]:
    """What would have been looked at, and what was missing."""
    found = [*advice.situation.gaps, *advice.used.figures.missing]
    if advice.thrust is not None:
        found += advice.thrust.gaps
    found += [(ruling.text, ruling.remedy) for ruling in advice.rulings if ruling.rule.effect is Effect.COULD_NOT_CHECK]
    return [{"what": what, "missing": missing} for what, missing in dict.fromkeys(found)]


def compose(
    advice: Advice,
    parts: Iterable[str],
    changes: Mapping[str, list[str]],
    hold_changes: Callable[[str], list[str]],
    rungs: Iterable[Rung],
) -> dict[str, Any]:
    """The answer with the parts asked for; the verdict and its reasons are always in it."""
    wanted = set(parts)
    answer: dict[str, Any] = {"schema": SCHEMA, "verdict": advice.verdict, "reasons": reasons(advice)}
    if "holding" in wanted:
        answer["holding"] = holding(advice, hold_changes)
    if "speed" in wanted:
        answer["speed"] = speed_part(advice, rungs, changes.get("speed", []))
    if "thrust" in wanted:
        answer["thrust"] = thrust_part(advice, changes.get("thrust", []))
    if "centers" in wanted:
        answer["centers"] = centers_part(advice)
    if "tool" in wanted:
        answer["tool"] = tool_of(advice)
    answer["cautions"] = cautions(advice)
    answer["checks"] = checks(advice)
    answer["notes"] = notes(advice)
    answer["fired"] = list(dict.fromkeys(ruling.rule.name for ruling in advice.fired))
    answer["assumed"] = assumed(advice)
    answer["could_not_check"] = could_not_check(advice)
    return answer
