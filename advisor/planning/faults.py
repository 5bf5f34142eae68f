"""Why a stage cannot be done here: each fault has a name, and is looked for forward and backward along the job."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from advisor.models.case import Case
from advisor.models.contradictions import ROUNDING, contradictions
from advisor.models.spoken import spoken
from advisor.planning.jobs import Job, Template, ends, grips
from advisor.planning.progress import CUT, GONE, SEATED, Progress
from advisor.reckoning.speed import slowest
from advisor.situation import Situation

SCREW_CLEAR_MM = 3.0  # of wood between the end of a screw and the finished floor; common practice, no source
FLOOR_OF_LENGTH = 0.15  # of the length that a floor takes when nobody said; memory
RECESS_FLOOR_MM = 5.0  # of wood left under a recess; common practice, no source
HOLLOWED = frozenset({"bowl", "platter"})
WASTE_AT_BOTH_ENDS = "centers"


@dataclass(frozen=True)
class Fault:
    """Why this stage cannot be done with this hold: a name, what is wrong, what would mend it."""

    name: str
    text: str
    do: str


def _at(stage: Template) -> tuple[str, ...]:
    return ends(stage.grips) if stage.grips in ("foot", "top", "both") else ()


def _held_ends(stage: Template, method: str) -> tuple[str, ...]:
    """The ends that a hold takes: a jaw or a block takes one even where centers would take both."""
    kind = grips()[method].kind
    if stage.grips == "both" and kind != WASTE_AT_BOTH_ENDS:
        return ("foot",)
    return _at(stage)


def turned_away(stage: Template, method: str, progress: Progress) -> Fault | None:
    """The end that this hold needs is gone, or no grip was ever cut on it."""
    kind = grips()[method].kind
    if kind in ("touch", "bore"):
        return None
    for end in _held_ends(stage, method):
        if progress.ends[end] == GONE:
            by = progress.gone_by.get(end, "")
            return Fault(
                "grip-turned-away",
                f"The {end} was turned away ({by}): nothing is left to grip for this hold ({spoken(method)}).",
                "Glue a block on, or give the tenon or the recess if there still is one.",
            )
        if kind in SEATED and progress.ends[end] != CUT:
            return Fault(
                "grip-not-cut",
                f"This hold ({spoken(method)}) needs a {kind} at the {end}, and no stage before has cut one.",
                "Cut it first, from a hold at the other end.",
            )
    return None


def cut_where_held(stage: Template, method: str) -> Fault | None:
    """The tool cannot reach the end that sits in the hold; only centers leave both ends in reach."""
    if grips()[method].kind in (WASTE_AT_BOTH_ENDS, "touch", "bore"):
        return None
    blocked = set(_held_ends(stage, method)) & set(stage.makes)
    if not blocked:
        return None
    end = min(blocked)
    return Fault(
        "cut-where-held",
        f"The {end} sits in the hold ({spoken(method)}) and a grip has to be cut on it.",
        "Hold it between centers or by the other end.",
    )


def _uses(stage: Template, method: str, found: Mapping[str, float], case: Case) -> dict[str, float]:
    """Length in mm that each end gives up to this hold."""
    grip, own = grips()[method], found.get("length", 0.0)
    if grip.kind == WASTE_AT_BOTH_ENDS:
        return dict.fromkeys(_held_ends(stage, method), case.work.end_waste or grip.stock)
    length = own if grip.kind in ("tenon", "screws") else 0.0
    hollowed_out = grip.kind == "screws" and stage.grips == "top"
    return {} if hollowed_out else dict.fromkeys(_held_ends(stage, method), length + grip.stock)


def stock_left(
    stage: Template, method: str, found: Mapping[str, float], progress: Progress, case: Case
) -> tuple[dict[str, float], float]:
    """What both ends give up in mm when this hold is used too, and the length that is left of the blank."""
    asked = _uses(stage, method, found, case)
    stock = {end: max(progress.stock[end], asked.get(end, 0.0)) for end in progress.stock}
    return stock, case.work.length - sum(stock.values())


def too_short(
    job: Job, stage: Template, method: str, found: Mapping[str, float], progress: Progress, case: Case
) -> Fault | None:
    """The blank is not long enough for the piece and for what its holds take."""
    _, left = stock_left(stage, method, found, progress, case)
    wanted = case.work.finished_length
    need = wanted if wanted is not None else job.least_length
    if left >= need - 1e-6:
        return None
    whole, taken = case.work.length, case.work.length - left
    piece = f"the finished {job.title}" if wanted is not None else f"any {job.title}"
    return Fault(
        "too-short",
        f"The blank is {whole:.0f} mm long; the holds up to {spoken(method)} take {taken:.0f} mm of it, {left:.0f} mm "
        f"is left and {piece} asks {need:.0f} mm.",
        f"A blank of {taken + need:.0f} mm, or a hold that takes less (a recess, a glued block).",
    )


def _floor(case: Case) -> float:
    return case.work.floor if case.work.floor is not None else FLOOR_OF_LENGTH * case.work.length


def too_deep(
    job: Job, stage: Template, method: str, found: Mapping[str, float], progress: Progress, case: Case
) -> Fault | None:
    """Screws that reach past the hollow, or a recess that goes through the floor."""
    kind = grips()[method].kind
    if kind == "screws" and stage.grips == "top" and job.name in HOLLOWED:
        hollow = case.work.length - progress.stock["foot"] - _floor(case)
        reach = found.get("length", 0.0) + SCREW_CLEAR_MM
        if reach > hollow:
            return Fault(
                "screws-reach-the-piece",
                f"The screws go {found.get('length', 0.0):.0f} mm deep and the hollow is only {hollow:.0f} mm: their "
                "holes would show in the floor.",
                "Shorter screws, or a glued waste block.",
            )
    depth = found.get("depth", 0.0)
    if kind == "recess" and case.work.floor is not None and case.work.floor - depth < RECESS_FLOOR_MM:
        return Fault(
            "recess-through-the-floor",
            f"The floor is {case.work.floor:.0f} mm and the recess {depth:.0f} mm deep: {RECESS_FLOOR_MM:.0f} mm must "
            "be left under it.",
            "A tenon, or a thicker floor.",
        )
    return None


def hold_fault(
    job: Job, stage: Template, method: str, found: Mapping[str, float], progress: Progress, case: Case
) -> Fault | None:
    """The first thing that speaks against this hold in this stage of the job; None when nothing does."""
    return (
        turned_away(stage, method, progress)
        or cut_where_held(stage, method)
        or too_short(job, stage, method, found, progress, case)
        or too_deep(job, stage, method, found, progress, case)
    )


def too_thin(situation: Situation, sizes: Mapping[str, float]) -> Fault | None:
    """The round that is in the blank is smaller than the finished piece."""
    if sizes["finished"] <= sizes["round"] * ROUNDING:
        return None
    return Fault(
        "blank-too-thin",
        f"The round in this {situation.traits.form} is {sizes['round']:.0f} mm and the finished piece asks "
        f"{sizes['finished']:.0f} mm.",
        "A larger blank.",
    )


def too_fast(stage_case: Case) -> Fault | None:
    """The stage holds the lathe to a speed below its slowest."""
    most, least = stage_case.machine.max_rpm, slowest(stage_case.machine)
    if most is None or least is None or least <= most * ROUNDING:
        return None
    return Fault(
        "lathe-too-fast",
        f"This stage is run at {most:.0f} rpm or less and the lathe's lowest speed is {least:.0f} rpm.",
        "A lower pulley, or another lathe.",
    )


def does_not_fit(stage_case: Case) -> Fault | None:
    """What the person gave cannot be true of the piece here, such as a finished size that is not in the blank."""
    found = contradictions(stage_case.at)
    if not found:
        return None
    text = found[0].text
    return Fault("does-not-fit", f"At this stage {text}.", f"Change {' or '.join(found[0].fields)}.")


def removed_too_early(order: Sequence[tuple[Template, str]]) -> Iterable[tuple[int, Fault]]:
    """Backward along the job: every end that a hold needs must still be there, so no stage before may clear it.

    Gives the place of the stage that needs it, the latest first.
    """
    for late in range(len(order) - 1, 0, -1):
        stage, method = order[late]
        if not method or grips()[method].kind in ("touch", "bore"):
            continue
        needed = set(_held_ends(stage, method))
        for early in range(late - 1, -1, -1):
            before = order[early][0]
            for end in sorted(needed & set(before.clears)):
                fault = Fault(
                    "removed-too-early",
                    f"{before.name} takes the {end} away, and {stage.name} still has to hold it there.",
                    f"Clear the {end} after {stage.name}.",
                )
                yield late, fault
            needed -= set(before.makes)
