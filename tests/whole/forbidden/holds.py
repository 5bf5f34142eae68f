"""Ways of holding that must never come out. Sizes are common practice, no source."""

from __future__ import annotations

from advisor.models.case import AIDS, METHODS, Case
from advisor.rulebook import Effect
from tests.whole.forbidden.kinds import (
    ACCEPTED,
    GOING,
    ROUNDING,
    Answer,
    accepted,
    called,
    condition,
    grounds,
    never,
    trued,
)  # fmt: skip

SPLIT_BY_SCREWS = (
    "acrylic", "cast acrylic", "polycarbonate", "acetal", "nylon", "canvas phenolic", "phenolic canvas laminate",
    "alabaster", "soapstone", "horn", "epoxy casting", "resin",
)  # fmt: skip
NOTHING_STICKS = ("acetal", "nylon", "ptfe", "polypropylene", "high-density polyethylene")
SCREWED_OR_SPURRED = ("faceplate-screws", "screw-chuck", "spur-drive", "two-spur-drive")
GLUED = ("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate")
BETWEEN_CENTERS = (
    "spur-drive", "two-spur-drive", "toothed-ring-drive", "cup-drive", "point-and-pin-drive", "square-socket-drive",
    "driving-dog",
)  # fmt: skip
LEAVES_HOLES = ("faceplate-screws", "screw-chuck", "spur-drive", "two-spur-drive")
LARGEST = {
    "collet": 40.0, "collet-block": 40.0, "drill-chuck": 12.0, "three-jaw": 150.0, "four-jaw-independent": 150.0,
    "driving-dog": 75.0, "paper-joint": 200.0, "split-bushing": 75.0,
}  # fmt: skip
NOT_TURNABLE_BY_THREE_JAWS = ("square", "half-log", "slab")
WOOD = ("sugar maple", "hard maple", "american beech", "white oak", "black walnut", "ponderosa pine", "teak", "yew")


def best(found: Answer, *verdicts: str) -> bool:
    """Whether the hold in use has one of these verdicts."""
    return found["holding"][0]["verdict"] in verdicts


@never
def a_hold_that_suits_with_too_little_in_hand(case: Case, found: Answer) -> bool:
    """A margin below 1 is a hold that lets go; a drive meant to slip says so with care."""
    del case
    return any(
        margin["ratio"] * ROUNDING < 1
        for hold in found["holding"] if hold["verdict"] == "suits" for margin in hold["margins"]
    )  # fmt: skip


@never
def a_hold_accepted_against_its_own_grounds(case: Case, found: Answer) -> bool:
    """What a rule refuses or advises against is not taken back by another."""
    del case
    return any(
        hold["verdict"] in ACCEPTED and grounds(hold, Effect.REFUSE, Effect.NOT_ADVISED) for hold in found["holding"]
    )


@never
def a_hold_refused_without_grounds(case: Case, found: Answer) -> bool:
    """Who may not use what he has must be told why."""
    del case
    return any(hold["verdict"] not in ACCEPTED and not hold["grounds"] for hold in found["holding"])


@never
def a_go_with_a_chosen_hold_that_will_not_do(case: Case, found: Answer) -> bool:
    """The hold in use is the one that must hold."""
    chosen = next((hold for hold in found["holding"] if hold["method"] == case.hold.method), None)
    return found["verdict"] in GOING and chosen is not None and chosen["verdict"] not in ACCEPTED


@never
def a_go_with_nothing_that_holds(case: Case, found: Answer) -> bool:
    """No accepted hold, no switch."""
    del case
    return found["verdict"] in GOING and not best(found, *ACCEPTED)


@never
def a_plain_go_with_a_hold_that_asks_for_care(case: Case, found: Answer) -> bool:
    """The care of the hold is the care of the job."""
    del case
    return found["verdict"] == "go" and not best(found, "suits")


@never
def the_chosen_hold_not_judged_first(case: Case, found: Answer) -> bool:
    """Who chose asks about that."""
    return bool(case.hold.method is not None and found["holding"][0]["method"] != case.hold.method)


@never
def a_hold_that_is_not_in_the_kit(case: Case, found: Answer) -> bool:
    """What is not there cannot hold."""
    kit = {word for word in case.hold.kit or () if word in METHODS}
    return (
        bool(kit)
        and case.hold.drive is None
        and not {hold["method"] for hold in found["holding"]} <= kit | {case.hold.method}
    )


@never
def an_aid_taken_for_a_hold(case: Case, found: Answer) -> bool:
    """A steady, a wrap or the tail support holds nothing by itself."""
    del case
    return any(hold["method"] in AIDS for hold in found["holding"])


@never
def a_worse_hold_ranked_above_a_better(case: Case, found: Answer) -> bool:
    """Best first, after the one in use."""
    del case
    order = [hold["verdict"] in ACCEPTED for hold in found["holding"][1:]]
    return order != sorted(order, reverse=True)


@never
def spurs_or_screws_in_what_they_split(case: Case, found: Answer) -> bool:
    """Plastic, laminate, resin, stone and horn split or strip under a thread and a spur."""
    return called(case, *SPLIT_BY_SCREWS) and accepted(found, *SCREWED_OR_SPURRED)


@never
def glue_on_what_nothing_sticks_to(case: Case, found: Answer) -> bool:
    """Polyethylene, polypropylene, PTFE, acetal and nylon let every glue and tape go."""
    return called(case, *NOTHING_STICKS) and accepted(found, *GLUED)


@never
def a_lone_screw_in_a_large_end(case: Case, found: Answer) -> bool:
    """A screw in end grain strips its own thread."""
    across_the_fibers = case.work.grain == "along" and case.work.diameter > 75 * ROUNDING
    return called(case, *WOOD) and across_the_fibers and accepted(found, "screw-chuck")


@never
def centers_without_a_tailstock(case: Case, found: Answer) -> bool:
    """A drive center is half of a hold."""
    return case.machine.tailstock is False and accepted(found, *BETWEEN_CENTERS)


@never
def a_device_larger_than_it_is_made(case: Case, found: Answer) -> bool:
    """Past its size it grips by a hair or not at all."""
    return any(case.work.diameter > most * ROUNDING and accepted(found, method) for method, most in LARGEST.items())


@never
def three_jaws_on_a_square(case: Case, found: Answer) -> bool:
    """Three jaws touch a square at two places."""
    square = case.work.form in NOT_TURNABLE_BY_THREE_JAWS and not trued(case) and case.hold.tenon is None
    return square and accepted(found, "three-jaw")


@never
def tall_work_on_tape(case: Case, found: Answer) -> bool:
    """More than 20 mm tall, it peels."""
    return case.work.length > 20 * ROUNDING and accepted(found, "double-sided-tape")


@never
def heavy_work_in_a_jam_fit(case: Case, found: Answer) -> bool:
    """Friction alone does not carry more than 4 kg."""
    return (case.work.mass or 0.0) > 4 * ROUNDING and accepted(found, "jam-chuck")


@never
def heavy_work_on_one_screw(case: Case, found: Answer) -> bool:
    """Above 8 kg one screw tears out."""
    return (case.work.mass or 0.0) > 8 * ROUNDING and accepted(found, "screw-chuck")


@never
def a_recess_in_end_grain(case: Case, found: Answer) -> bool:
    """The jaws wedge the end apart along the fibers."""
    return called(case, *WOOD) and case.work.grain == "along" and accepted(found, "jaws-in-recess")


@never
def a_hole_that_stays_where_none_may(case: Case, found: Answer) -> bool:
    """The finished face keeps every mark."""
    kept = case.work.state == "finished" and case.work.marks_allowed == "none"
    return kept and accepted(found, *LEAVES_HOLES)


@never
def suction_or_cups_on_a_rough_piece(case: Case, found: Answer) -> bool:
    """A seal needs a true face."""
    rough = case.work.state == "not-round" and condition(case, "live-edge", "worm-holes", "void")
    return rough and accepted(found, "vacuum")


@never
def a_roughing_gouge_on_side_grain(case: Case, found: Answer) -> bool:
    """Its thin tang snaps in a bowl."""
    side = case.work.grain == "across" or (case.work.grain is None and case.work.purpose in ("bowl", "platter"))
    return side and "roughing gouge" in found["tool"].get("kind", "")


@never
def a_tool_that_it_says_never_to_use(case: Case, found: Answer) -> bool:
    """Advice that contradicts itself is followed at random."""
    del case
    kind, refused = found["tool"].get("kind", ""), found["tool"].get("never", "")
    return bool(kind) and f"never a {kind}" in refused
