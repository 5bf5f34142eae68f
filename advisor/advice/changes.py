"""What would change the answer: single changes tried in the whole model, never guessed."""

import math
from collections.abc import Callable, Iterable
from typing import NamedTuple

from advisor import facts as fact_of
from advisor import verdicts
from advisor.advice.advise import Advice
from advisor.advice.judge import JudgedHold, judge
from advisor.center_facts import facts_of_centers
from advisor.engine import Fires
from advisor.models.case import Case
from advisor.models.fields import changed
from advisor.models.spoken import spoken
from advisor.physics.balance import unbalance_force
from advisor.reckoning import holds
from advisor.reckoning.balancing import COUNTERWEIGHT_SHARE, FIXING_DIVISOR, moves, words_of
from advisor.reckoning.holds.sizes import TENON_SHORTEST_MM
from advisor.reckoning.speed import first_speed, speed
from advisor.reckoning.thrust import BETWEEN_CENTERS, Thrust, thrust_window
from advisor.reckoning.way_up import Rung, ladder
from advisor.situation import Situation, settle
from advisor.units import MM_PER_INCH, two_figures

LIFT = 1.10  # a change that lifts the ceiling less than this is not worth telling
SEARCH_STEPS = 10
HEAVIEST_LATHE_KG = 2000.0
WINDOWS = ("open", "narrow", "empty")
LARGEST_DRIVE_MM = 60.0
LEAST_LIGHTER = 0.25  # of the stated force: lighter than that is another job
TENON_CLEAR_MM = 2.0  # between the end of a tenon and the bottom of the jaws
RECESS_WALL_MM = 20.0
CUSTOM = ("rim-speed", "operation", "material", "device-mark", "machine-maximum")
STATIC_SHARE = 0.75  # of the larger offset of two ends: less, and the rest is a couple
NARROW_FROM = 1.5  # a thrust within this of its limit is a narrow window


class Proposal(NamedTuple):
    """A change that opens the tailstock window: its words, the case with it, the window it gives, thrust to set N."""

    text: str
    case: Case
    window: str
    to_set: float


def window_word(situation: Situation, method: str, engine: Fires) -> tuple[str, Thrust | None]:
    """The window of one method as the rules see it, at the starting speed of this very situation."""
    up = holds.tail_up(situation, method)
    if not situation.lathe.tailstock or not (up or method in BETWEEN_CENTERS):
        return "not-used", None
    window = thrust_window(situation, method, first_speed(situation, method, up))
    rulings = engine.run(facts_of_centers(situation, window))
    return verdicts.worst(WINDOWS, (entry.rule.window for entry in rulings if entry.rule.window)), window


def _drive_trials(advice: Advice, thrust: Thrust, case: Case) -> Iterable[tuple[str, Case]]:
    """Another drive, or the same one seated."""
    method, drive, end = advice.used.method, thrust.drive, advice.situation.body.end_diameter
    if drive is None:
        return
    if method in ("spur-drive", "two-spur-drive") and thrust.seated != "advised":
        yield "seat the teeth first, as deep as this end allows", changed(case, "hold.drive.seated_depth", None)
    sizes = (min(share * end, LARGEST_DRIVE_MM) for share in (0.5, 0.6, 0.75))
    larger = next((size for size in sizes if size > 1.05 * drive.outer), None)
    if larger is not None:
        wide = changed(changed(case, "hold.drive.outer_diameter", larger), "hold.drive.inner_diameter", None)
        yield f"a drive of {fact_of.length(larger)} across", wide
    if method in ("toothed-ring-drive", "cup-drive", "two-spur-drive"):
        bare = changed(changed(case, "hold.drive", None), "hold.method", "spur-drive")
        yield "a four-spur drive with its teeth seated", bare


def _support_trials(advice: Advice, thrust: Thrust, case: Case) -> Iterable[tuple[str, Case]]:
    """A steady, a stronger tail center, lighter cuts, or a grip on one end."""
    situation, kit = advice.situation, case.hold.kit
    to_hand = not kit or "steady-rest" in kit
    long = situation.body.length > situation.body.diameter
    if case.hold.steady is None and situation.trued and to_hand and long:
        yield "a steady in the middle", changed(case, "hold.steady.position", situation.body.length / 2)
    if thrust.allowed.name == "center-rating" and math.isfinite(thrust.full.to_set):
        rating = NARROW_FROM * thrust.full.to_set
        yield f"a live center made for {fact_of.newtons(rating)}", changed(case, "hold.tail.rating", rating)
    if situation.cut.given and thrust.light is not None and LEAST_LIGHTER <= thrust.light_share < 1:
        light = thrust.light.force
        yield f"lighter cuts, {fact_of.newtons(light)} at most", changed(case, "cut.force", light)
    grips = (hold.method for hold in advice.judgement.holds if hold.accepted and hold.method not in BETWEEN_CENTERS)
    grip = next(grips, None) if thrust.between else None
    if grip is not None:
        gripped = changed(changed(case, "hold.drive", None), "hold.method", grip)
        yield f"grip the headstock end ({spoken(grip)})", gripped


def _thrust_trials(advice: Advice, thrust: Thrust) -> Iterable[tuple[str, Case]]:
    """Single changes, and each of them with a cup at the tail as well."""
    case = changed(advice.situation.case, "hold.method", advice.used.method)
    singles = [*_drive_trials(advice, thrust, case), *_support_trials(advice, thrust, case)]
    if thrust.center.kind == "live-cup":
        yield from singles
        return
    yield "a live cup at the tail", _with_cup(case)
    yield from singles
    for text, tried in singles:
        yield f"{text}, and a live cup at the tail", _with_cup(tried)


def _with_cup(case: Case) -> Case:
    return changed(case, "hold.tail.kind", "live-cup")


def thrust_proposals(advice: Advice, engine: Fires) -> list[Proposal]:
    """Changes that widen a narrow or empty window, each tried in the model; two together only where one does not."""
    word, thrust = advice.window, advice.thrust
    if thrust is None or word not in WINDOWS[1:]:
        return []
    found: list[Proposal] = []
    for text, case in _thrust_trials(advice, thrust):
        if ", and " in text and found:
            break
        tried, window = window_word(settle(case), case.at("hold.method"), engine)
        if window is not None and WINDOWS.index(tried) < WINDOWS.index(word):
            found.append(Proposal(text, case, tried, (window.light or window.full).to_set))
    return found


def thrust_changes(advice: Advice, engine: Fires) -> list[str]:
    """The same in words."""
    return [
        f"{entry.text}: {entry.window}, set {fact_of.newtons(entry.to_set)}"
        for entry in thrust_proposals(advice, engine)
    ]


def ceiling_of(situation: Situation, method: str) -> tuple[float, str]:
    """Ceiling in rpm and its limit for one situation held by one method, through the whole model."""
    up = holds.tail_up(situation, method)
    thrust = None
    if situation.lathe.tailstock and (up or method in BETWEEN_CENTERS):
        thrust = thrust_window(situation, method, first_speed(situation, method, up))
    rate = speed(situation, method, up, holds.hold_speed(situation, method), thrust)
    return rate.ceiling.value, rate.ceiling.name


def rungs(advice: Advice) -> tuple[Rung, ...]:
    """The ceiling from now to finished for the hold in use."""
    return ladder(advice.situation, lambda stage: ceiling_of(stage, advice.used.method))


Change = Callable[[float], tuple[str, Situation]]


class Trial(NamedTuple):
    """One change by a value, and its mildest and strongest value; the same for what is done or not.

    another: half of it makes another piece. fixed: it turns with the piece, so its fixing must hold.
    """

    change: Change
    mild: float
    strong: float
    another: bool = False
    fixed: bool = False


def _balance_trials(advice: Advice) -> Iterable[Trial]:
    """The center of mass nearer to the axis, by moving the centers or by a weight."""
    situation, body = advice.situation, advice.situation.body
    told = "; ".join(words_of(move) for move in moves(situation)) if advice.verdict == "do-not-mount" else ""
    how = f"move the centers {told}" if told else "move the centers, saw it rounder"
    radius = COUNTERWEIGHT_SHARE * body.diameter

    def offset(value: float) -> tuple[str, Situation]:
        moved = situation._replace(body=body._replace(offset=value))
        place = f"within {fact_of.about(value)} mm ({fact_of.about(value / MM_PER_INCH)} in) of" if value > 0 else "on"
        return f"center of mass {place} the axis ({how})", moved

    def counterweight(value: float) -> tuple[str, Situation]:
        left = max(body.offset - value * radius / (body.mass * 1000), 0.0)
        piece = f"{fact_of.small_mass(value)} at {fact_of.length(radius)} radius"
        words = f"a counterweight of {piece}, bolted through, opposite the heavy side"
        return words, situation._replace(body=body._replace(offset=left, mass=body.mass + value / 1000))

    yield Trial(offset, body.offset, 0.0)
    if body.static is None or body.static > STATIC_SHARE * body.offset:  # one weight cures no lean of the two ends
        yield Trial(counterweight, 0.0, body.mass * body.offset / radius * 1000, fixed=True)


def _lathe_trials(advice: Advice) -> Iterable[Trial]:
    """A heavier lathe, or one that is bolted down."""
    situation, lathe = advice.situation, advice.situation.lathe

    def mass(value: float) -> tuple[str, Situation]:
        return f"a lathe of {fact_of.mass(value)}, or ballast to that", situation._replace(
            lathe=lathe._replace(mass=value)
        )

    def bolted(_: float) -> tuple[str, Situation]:
        return "the lathe bolted to the floor", situation._replace(lathe=lathe._replace(bolted=True))

    if lathe.mass < HEAVIEST_LATHE_KG:
        yield Trial(mass, lathe.mass, HEAVIEST_LATHE_KG)
    if not lathe.bolted:
        yield Trial(bolted, 1.0, 1.0)


def _piece_trials(advice: Advice) -> Iterable[Trial]:
    """A smaller piece, or a steady along it."""
    situation, body = advice.situation, advice.situation.body

    def diameter(value: float) -> tuple[str, Situation]:
        cut = body._replace(
            diameter=value,
            end_diameter=min(body.end_diameter, value),
            thinnest=min(body.thinnest, value),
            mass=body.mass * (value / body.diameter) ** 2,
        )
        verb = "turned" if situation.trued else "sawn"
        return f"{verb} down to {fact_of.length(value)} across", situation._replace(body=cut)

    def steady(_: float) -> tuple[str, Situation]:
        supported = changed(situation.case, "hold.steady.position", body.length / 2)
        return "a steady in the middle", situation._replace(case=supported)

    yield Trial(diameter, body.diameter, body.diameter / 2, another=True)
    if situation.case.hold.steady is None and body.length > 4 * body.diameter:
        yield Trial(steady, 1.0, 1.0)


def _speed_trials(advice: Advice) -> Iterable[Trial]:
    """Every single change."""
    yield from _balance_trials(advice)
    yield from _lathe_trials(advice)
    yield from _piece_trials(advice)


def _least(trial: Trial, reaches: Callable[[Situation], bool]) -> float:
    """The mildest value that reaches, as a person is told it: to two figures toward the stronger, never past that."""
    low, high = trial.mild, trial.strong
    for _ in range(SEARCH_STEPS if low != high else 0):
        middle = (low + high) / 2
        low, high = (low, middle) if reaches(trial.change(middle)[1]) else (middle, high)
    if trial.strong < trial.mild:
        return max(two_figures(high, up=False), trial.strong)
    return min(two_figures(high, up=True), trial.strong)


def speed_changes(advice: Advice) -> list[str]:
    """The smallest single changes that lift the ceiling to the speed the person wants, or that none does.

    A lathe that cannot go as slow as the ceiling wants its own slowest speed, whatever the person wants. Where the
    trade's own speed for such a piece decides and nobody wants more, nothing is to be changed.
    """
    wanted, slowest = advice.situation.case.cut.wanted_rpm, advice.speed.minimum
    now = advice.speed.ceiling.value
    if slowest is not None and slowest > now:
        wanted = slowest if wanted is None else max(slowest, wanted)
    target = wanted if wanted is not None and wanted > now else None
    if wanted is not None and target is None:
        return []
    if target is None and advice.speed.ceiling.name in CUSTOM:
        return []
    goal = target if target is not None else now * LIFT * LIFT
    found = []
    furthest = (now * LIFT, "")
    for trial in _speed_trials(advice):
        words, situation = trial.change(trial.strong)
        most = ceiling_of(situation, advice.used.method)[0]
        furthest = furthest if trial.another else max(furthest, (most, words))
        if most < goal:
            continue
        value = _least(trial, lambda tried: ceiling_of(tried, advice.used.method)[0] >= goal)
        words, situation = trial.change(value)
        reached = ceiling_of(situation, advice.used.method)[0]
        if trial.fixed:
            radius = COUNTERWEIGHT_SHARE * advice.situation.body.diameter
            pull = unbalance_force(mass=value / 1000, offset=radius, rpm=reached)
            words += f", its fixing good for {fact_of.newtons(FIXING_DIVISOR * pull)}"
        found.append(f"{words}: ceiling {fact_of.turns(reached)}")
    if target is not None and not found:
        slower = "slower" if target != slowest else "a lower pulley"
        best = f"; the furthest is {fact_of.turns(furthest[0])} with {furthest[1]}" if furthest[1] else ""
        none = f"no single change lifts the ceiling to {target:.0f} rpm"
        return [f"{none}{best}: another machine, another piece or {slower}"]
    return found


class HoldProposal(NamedTuple):
    """A change that betters the verdict on one hold: its words, the case with it, the hold and its verdict then."""

    text: str
    case: Case
    method: str
    verdict: str


def _cut_trials(situation: Situation, hold: JudgedHold) -> Iterable[tuple[str, Case]]:
    """Another cut, another way round, the tail, or a rounder piece."""
    case = situation.case
    if not hold.figures.tail_up and situation.operation in ("hollowing", "parting") and situation.lathe.tailstock:
        yield "the tailstock up (for as long as the cut leaves room)", changed(case, "cut.operation", "shaping")
    if case.hold.tail is not None and case.hold.tail.kind == "none":
        yield "a tail center up against it", changed(case, "hold.tail", None)
    if case.cut.rotation == "reverse":
        yield "turning forward", changed(case, "cut.rotation", "forward")
    if not situation.lathe.tailstock:
        yield "a lathe with a tailstock", changed(case, "machine.tailstock", True)
    elif situation.traits.state == "not-round":
        rounder = changed(changed(case, "work.state", "round"), "cut.operation", "shaping")
        yield "turned round first, between centers", rounder
    if situation.operation in ("roughing", "shaping", "hollowing"):
        light = situation.cut.force / 2
        yield f"light cuts, up to {fact_of.newtons(light)}", changed(case, "cut.force", light)
        yield "finishing cuts only", changed(case, "cut.operation", "finishing")
    if situation.body.length > situation.body.diameter:
        yield "half the overhang", changed(case, "hold.overhang", situation.body.length / 2)


def _jaw_trials(case: Case, hold: JudgedHold, across: float) -> Iterable[tuple[str, Case]]:
    """Another tenon, or a recess with more wood round it."""
    sizes = hold.figures.sizes
    if hold.method == "jaws-on-tenon":
        size = sizes.get("diameter", 0.0) * 1.5
        if 0 < size < across:
            yield f"a tenon of {fact_of.length(size)}", changed(case, "hold.tenon.diameter", size)
    deep = case.hold.chuck.jaw_depth if case.hold.chuck is not None else None
    if hold.method in ("jaws-on-tenon", "long-jaws") and deep is not None and sizes.get("length", 0.0) > deep:
        short = deep - TENON_CLEAR_MM
        if short >= TENON_SHORTEST_MM:
            yield (
                f"a tenon of {fact_of.length(short)}, so that it does not bottom",
                changed(case, "hold.tenon.length", short),
            )
    if hold.method == "jaws-in-recess" and sizes.get("wall", 0.0) < RECESS_WALL_MM:
        narrow = across - 2 * RECESS_WALL_MM
        if narrow > 0:
            wide = changed(changed(case, "hold.recess.wall", RECESS_WALL_MM), "hold.recess.diameter", narrow)
            yield f"a recess of {fact_of.length(narrow)} with {fact_of.length(RECESS_WALL_MM)} of wood round it", wide


def _fastened_trials(case: Case, hold: JudgedHold) -> Iterable[tuple[str, Case]]:
    """Other screws, another glue, glue that has cured."""
    if hold.method in ("faceplate-screws", "waste-block-faceplate"):
        more = changed(changed(case, "hold.screws.count", 8), "hold.screws.length", 40.0)
        if case.hold.screws is not None and case.hold.screws.kind == "plasterboard":
            yield "sheet-metal screws", changed(case, "hold.screws.kind", "sheet-metal")
        yield "eight screws, 40 mm (1.6 in) into the wood", more
    if hold.method in ("glue-block", "waste-block-faceplate", "paper-joint"):
        if case.hold.glue is not None and case.hold.glue.cured is False:
            yield "the glue fully cured", changed(case, "hold.glue.cured", True)
        for kind in ("polyurethane", "epoxy"):
            if case.hold.glue is None or case.hold.glue.kind != kind:
                yield f"{kind} glue", changed(case, "hold.glue.kind", kind)


def hold_proposals(situation: Situation, engine: Fires, hold: JudgedHold) -> list[HoldProposal]:
    """Single changes that better the verdict on one hold, each tried through the model and the rules."""
    if hold.verdict == "suits":
        return []
    if situation.operation == "hollowing" and hold.method in BETWEEN_CENTERS:
        return []  # a center stands where the hollow is to be, whatever else changes
    trials = [
        *_cut_trials(situation, hold),
        *_jaw_trials(situation.case, hold, situation.body.end_diameter),
        *_fastened_trials(situation.case, hold),
    ]
    better = []
    for words, case in trials:
        tried = judge(settle(case), engine, (hold.method,)).holds[0]
        if verdicts.HOLD.index(tried.verdict) < verdicts.HOLD.index(hold.verdict):
            better.append(HoldProposal(words, case, hold.method, tried.verdict))
    return better


def hold_changes(advice: Advice, engine: Fires, method: str) -> list[str]:
    """The same in words; where nothing in the kit does, the best hold outside it as well."""
    situation = advice.situation
    found = hold_proposals(situation, engine, advice.judgement.of(method))
    better = [f"{entry.text}: {entry.verdict}" for entry in found]
    one = advice.one_thing
    if one is not None:
        name = spoken(one.thing)
        held = "" if one.thing == one.hold.method else f" with {spoken(one.hold.method)}"
        better.append(f"{name}{held} instead: {one.hold.verdict}")
    return better
