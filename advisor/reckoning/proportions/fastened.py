"""Screws in a plate, the one screw of a screw chuck, glued faces, tape and the seal of a vacuum plate."""

from __future__ import annotations

from collections.abc import Sequence

from advisor.physics.screws import LEAD_HOLE_HARDWOOD, LEAD_HOLE_SOFTWOOD
from advisor.reckoning.holds import sizes
from advisor.reckoning.holds.need import overhang
from advisor.reckoning.proportions.size import ENOUGH, Check, Proportions, Size, Trial, said, shop

COUNTS = (4, 6, 8, 10, 12)  # more than twelve is a rim of holes; common practice, no source
THREADS_MM = (15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0)  # as screws are sold; common practice, no source
THREAD_SHARE = 0.5  # of the work's length that may hold thread; common practice, no source
CLEAR_OF_STEEL_MM = 5.0  # between the tool and the tip of a screw; memory
GLUE_SHARE = 0.45  # of the work's diameter: contact that practice asks for; common practice, no source
SEAL_SHARE = 0.95  # common practice, no source
LEAST_SEAL_MM = 25.0  # common practice, no source
TAPE_MOST_MM = 150.0  # common practice, no source
# Diameters of the glued face that the work may stand out: with the tailstock up, and with it away.
REACH = {  # common practice, no source
    "glue-block": (3.0, 1.5),
    "waste-block-faceplate": (3.0, 1.5),
    "paper-joint": (0.5, 0.5),
    "double-sided-tape": (0.25, 0.25),
}
FIRST = {
    "screwed": {"torque": "shears", "moment": "pulls-out", "pull": "pulls-out"},
    "glued": {"torque": "shears", "moment": "peels", "pull": "peels"},
    "sucked": {"torque": "slips", "moment": "lifts", "pull": "lifts", "floor": "cracks"},
}
OTHER_GLUES = ("pva", "polyurethane", "epoxy")


def _told(
    made: Trial, parts: tuple[Size, ...], kind: str, notes: Sequence[str] = (), room: bool = True
) -> Proportions:
    figures = made.figures()
    margins = sorted(figures.margins, key=lambda margin: margin.ratio)
    checks = tuple(
        Check(FIRST[kind].get(margin.name, margin.name), margin.have, margin.need, margin.unit, margin.grade)
        for margin in margins
    )
    first = checks[0].name if checks else ""
    margin = made.margin()
    enough = None if margin is None else room and margin >= ENOUGH
    return Proportions(made.method, parts, enough, margin, first, checks, None, tuple(notes))


def _threads(trial: Trial) -> list[float]:
    """Threads as sold that the work has room for, the longest it has room for among them."""
    most = THREAD_SHARE * trial.situation.body.length
    found = [length for length in THREADS_MM if length <= most]
    return found if most >= THREADS_MM[-1] else [*found, most]


def _lead_hole(trial: Trial) -> tuple[str, ...]:
    wood = trial.situation.wood
    if wood is None:
        return ()
    share = LEAD_HOLE_SOFTWOOD if wood.group == "softwood" else LEAD_HOLE_HARDWOOD
    return (f"lead holes {100 * share:.0f} % of the root of the thread",)


def faceplate(trial: Trial) -> Proportions:
    """Plate, circle, count, diameter and thread of the screws."""
    figures = trial.figures()
    if figures.typical is None or "count" not in figures.sizes:
        return _told(trial, (), "screwed")
    given = trial.situation.case.hold.screws
    threads = _threads(trial)
    count, thread = int(figures.sizes["count"]), figures.sizes["length"]
    advised = {"screws.count": count, "screws.length": thread}
    least_thread = trial.first_of("screws.length", threads, {"screws.count": count})
    least_count = trial.first_of("screws.count", COUNTS, {"screws.length": thread})
    own_count = given is not None and given.count is not None
    own_thread = given is not None and given.length is not None
    notes = [*_lead_hole(trial), f"keep the tool {said(thread + CLEAR_OF_STEEL_MM)} off the plate: steel is in there"]
    if not trial.carries(advised):
        better = _more(trial, count, threads)
        if better is None:
            notes.insert(0, f"no count up to {COUNTS[-1]} and no thread the piece has room for carries this cut")
        most = better or (COUNTS[-1], threads[-1])
        count, thread = count if own_count else most[0], thread if own_thread else most[1]
    parts = (
        Size("plate.diameter", figures.sizes["plate"], "mm", False, None, None, "two fifths of the work"),
        Size("screws.count", count, "", own_count, least_count, float(COUNTS[-1]), "evenly on one circle"),
        Size(
            "screws.circle",
            figures.sizes["circle"],
            "mm",
            given is not None and given.circle is not None,
            None,
            figures.sizes["plate"],
            "as far out as the plate has holes",
        ),
        Size("screws.diameter", figures.sizes["diameter"], "mm", _own_diameter(trial), None, None, "wood screws"),
        Size(
            "screws.length",
            thread,
            "mm",
            own_thread,
            least_thread,
            threads[-1],
            "thread in the wood, half the work at most",
        ),
    )
    made = trial.with_sizes({"screws.count": count, "screws.length": thread})
    return _told(made, parts, "screwed", notes)


def _own_diameter(trial: Trial) -> bool:
    given = trial.situation.case.hold.screws
    return given is not None and given.diameter is not None


def _more(trial: Trial, count: int, threads: Sequence[float]) -> tuple[int, float] | None:
    """Fewest screws, then shortest thread, that carry the cut."""
    for more in (entry for entry in COUNTS if entry >= count):
        thread = trial.first_of("screws.length", threads, {"screws.count": more})
        if thread is not None:
            return more, thread
    return None


def screw_chuck(trial: Trial) -> Proportions:
    """Face, diameter and thread of the one screw."""
    figures = trial.figures()
    if figures.typical is None:
        return _told(trial, (), "screwed")
    given = trial.situation.case.hold.screws
    threads = _threads(trial)
    worm = figures.sizes["diameter"]
    trial = trial.with_sizes({"screws.count": 1, "screws.diameter": worm})
    own = given.length if given is not None else None
    least = trial.first_of("screws.length", threads)
    thread = figures.sizes["length"] if own is not None or least is None else max(figures.sizes["length"], least)
    notes = _lead_hole(trial)
    if least is None:
        notes = (f"no thread up to {said(threads[-1])} carries this cut on one screw", *notes)
    parts = (
        Size("face.diameter", figures.sizes["face"], "mm", False, None, None, "flat or a hair hollow: the face drives"),
        Size("screws.diameter", worm, "mm", given is not None and given.diameter is not None, None, None, "the worm"),
        Size("screws.length", thread, "mm", own is not None, least, threads[-1], "half the work at most"),
    )
    return _told(trial.with_sizes({"screws.length": thread}), parts, "screwed", notes)


def bonded(trial: Trial) -> Proportions:
    """Diameter of a glued face or of a patch of tape."""
    situation = trial.situation
    body, hold = situation.body, situation.case.hold
    tape = trial.method == "double-sided-tape"
    up, away = REACH[trial.method]
    reach = overhang(situation) / (up if trial.job.tail_up else away)
    low = max(reach, 0.0 if tape else min(GLUE_SHARE * body.diameter, body.end_diameter))
    high = min(body.end_diameter, TAPE_MOST_MM) if tape else body.end_diameter
    least = trial.least("glue.diameter", max(low, 10.0), high)
    own = hold.glue.diameter if hold.glue is not None else None
    advised = trial.figures().size or high
    value, why = (advised, "what the trade makes it")
    floor = least if least is not None else high
    if value < floor:
        value, why = shop(floor, high), "the cut asks for it" if floor > low else "tall work on a small face peels off"
    value = own if own is not None else shop(min(value, high), high)
    made = trial.with_sizes({"glue.diameter": value})
    notes = []
    if low > high:
        notes.append(f"too tall for it: {said(reach)} of face would be asked for, there are {said(high)}")
    elif least is None:
        notes.append(f"no face up to {said(high)} carries this cut{_other_glue(trial, low, high)}")
    parts = (Size("glue.diameter", value, "mm", own is not None, least, high, why),)
    return _told(made, parts, "glued", notes, low <= high)


def _other_glue(trial: Trial, low: float, high: float) -> str:
    """The first stronger glue with which a face would do; nothing for tape, wet wood and glue that has not cured."""
    glue = trial.situation.case.hold.glue
    uncured = glue is not None and glue.cured is False
    if trial.method == "double-sided-tape" or trial.situation.traits.green or uncured:
        return ""
    for kind in OTHER_GLUES:
        other = trial.with_sizes({"glue.kind": kind})
        least = other.least("glue.diameter", max(low, 10.0), high)
        if least is not None:
            return f" with the glue named or assumed; with {kind}, {said(shop(least, high))} would"
    return ""


def sealed(trial: Trial) -> Proportions:
    """Diameter of the seal of a vacuum plate."""
    body, hold = trial.situation.body, trial.situation.case.hold
    high = SEAL_SHARE * body.diameter
    least = trial.least("vacuum.seal_diameter", min(LEAST_SEAL_MM, high), high)
    own = hold.vacuum.seal_diameter if hold.vacuum is not None else None
    advised = sizes.SEAL_SHARE * body.diameter
    value = max(advised, shop(least, high)) if least is not None else advised
    why = "the cut asks for it" if value > advised else "what the trade makes it"
    value = own if own is not None else shop(value, high)
    made = trial.with_sizes({"vacuum.seal_diameter": value})
    notes = () if least is not None else (f"no seal up to {said(high)} carries this cut",)
    parts = (Size("vacuum.seal_diameter", value, "mm", own is not None, least, high, why),)
    return _told(made, parts, "sucked", notes)


