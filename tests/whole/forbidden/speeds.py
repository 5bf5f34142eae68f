"""Speeds and thrusts that must never come out. Numbers without a source are common practice, no source."""

from __future__ import annotations

import math

from advisor.models.case import Case
from tests.whole.forbidden.kinds import GOING, ROUNDING, Answer, inches, never, trued
from tests.whole.forbidden.verdicts import refused

TOP_BAND = 9000.0  # inch·rpm
GAPING_BAND = 3000.0
SANDING_BAND = 4500.0
FASTEST = {False: 3500.0, True: 4000.0}  # not trued, trued
DRILL = 15_000.0  # rpm·mm
LIVELY_J = 50.0
JAWED = ("jaws-on-tenon", "jaws-in-recess", "long-jaws", "rubber-button-jaws", "three-jaw", "four-jaw-independent")


def _ceiling(found: Answer) -> float:
    return float(found["speed"]["ceiling_rpm"])


def _above(found: Answer, most: float | None) -> bool:
    return most is not None and _ceiling(found) > most * ROUNDING


@never
def a_speed_for_what_must_not_be_mounted(case: Case, found: Answer) -> bool:
    """A number beside a refusal is the number that gets used."""
    del case
    named = {"start_rpm", "steps", "ladder", "governed_by", "energy_j"} & set(found["speed"])
    return refused(found) and (_ceiling(found) != 0 or bool(named))


@never
def no_speed_for_what_may_be_mounted(case: Case, found: Answer) -> bool:
    """An answer without its main number is none."""
    del case
    return not refused(found) and not found["speed"].get("start_rpm", 0) > 0


@never
def a_start_above_the_ceiling(case: Case, found: Answer) -> bool:
    """The first switch-on would be past the limit."""
    del case
    return bool(found["speed"].get("start_rpm", 0) > _ceiling(found) * ROUNDING)


@never
def a_step_above_the_ceiling(case: Case, found: Answer) -> bool:
    """Every step of the way up is a speed that somebody sets."""
    del case
    return any(step["rpm"] > _ceiling(found) * ROUNDING for step in found["speed"].get("steps", ()))


@never
def a_ceiling_above_one_of_its_limits(case: Case, found: Answer) -> bool:
    """The smallest limit is the ceiling."""
    del case
    return any(_ceiling(found) > entry["rpm"] * ROUNDING for entry in found["speed"]["limits"])


@never
def a_governing_limit_that_does_not_govern(case: Case, found: Answer) -> bool:
    """Who mends the wrong limit gains nothing and believes the rest."""
    del case
    by_name = {entry["name"]: entry["rpm"] for entry in found["speed"]["limits"]}
    return not refused(found) and not math.isclose(by_name[found["speed"]["governed_by"]], _ceiling(found))


@never
def a_ceiling_above_the_top_band(case: Case, found: Answer) -> bool:
    """9000 inch·rpm is the top of the trade's tables, for sound true work."""
    return _ceiling(found) > TOP_BAND / inches(case) * ROUNDING


@never
def a_ceiling_above_what_a_gaping_crack_allows(case: Case, found: Answer) -> bool:
    """A crack open more than a millimeter is half way to two pieces."""
    gap = case.work.crack.gap if case.work.crack is not None else None
    return gap is not None and gap > 1 and _above(found, GAPING_BAND / inches(case))


@never
def a_ceiling_past_what_hands_can_follow(case: Case, found: Answer) -> bool:
    """3500 rpm out of round, 4000 rpm round, whatever the machine can do."""
    return _above(found, FASTEST[trued(case)])


@never
def a_ceiling_above_the_machine_maximum(case: Case, found: Answer) -> bool:
    """What the lathe cannot run is no advice."""
    steps = max(case.machine.speeds) if case.machine.speeds else None
    return _above(found, max((top for top in (case.machine.max_rpm, steps) if top is not None), default=None))


@never
def a_ceiling_above_the_speed_marked_on_the_chuck(case: Case, found: Answer) -> bool:
    """Its maker's mark is the speed at which it was proved."""
    chuck = case.hold.chuck
    return chuck is not None and found["holding"][0]["method"] in JAWED and _above(found, chuck.max_rpm)


@never
def a_ceiling_too_fast_for_sanding(case: Case, found: Answer) -> bool:
    """Abrasive burns the work and the fingers long before the cut's speed."""
    return case.cut.operation == "sanding" and _above(found, SANDING_BAND / inches(case))


@never
def a_ceiling_too_fast_for_the_bit(case: Case, found: Answer) -> bool:
    """A wide bit packs, grabs and spins the piece."""
    bit = case.cut.drill_diameter
    return case.cut.operation == "drilling" and bit is not None and _above(found, DRILL / bit)


@never
def a_start_no_speed_of_the_lathe(case: Case, found: Answer) -> bool:
    """A belt has the steps it has."""
    speeds, low = case.machine.speeds, case.machine.min_rpm
    return not refused(found) and bool(speeds) and found["speed"]["start_rpm"] not in (*(speeds or ()), low)


@never
def a_speed_below_the_slowest_of_the_lathe(case: Case, found: Answer) -> bool:
    """It cannot be set: the switch gives the slowest there is, which is faster."""
    low = case.machine.min_rpm
    return not refused(found) and low is not None and found["speed"]["start_rpm"] * ROUNDING < low


@never
def a_brisk_start_out_of_round(case: Case, found: Answer) -> bool:
    """Six tenths of the ceiling, 3000/D and 1800/√D rpm: the first minute decides."""
    free = case.machine.speeds is None and case.machine.min_rpm is None
    wide = inches(case)
    most = min(0.6 * _ceiling(found), 3000 / wide, 1800 / math.sqrt(wide))
    return not refused(found) and not trued(case) and free and found["speed"]["start_rpm"] > most * ROUNDING


@never
def a_plain_go_with_more_energy_than_a_falling_brick(case: Case, found: Answer) -> bool:
    """Above 50 J at the first start care is asked for."""
    del case
    return bool(found["verdict"] == "go" and found["speed"]["energy_j"] > LIVELY_J * ROUNDING)


@never
def a_wanted_speed_over_the_ceiling_passed_in_silence(case: Case, found: Answer) -> bool:
    """Who named a speed will run it unless told."""
    wanted = case.cut.wanted_rpm
    return (
        not refused(found)
        and wanted is not None
        and wanted > _ceiling(found) * 1.001
        and ("wanted-too-fast" not in found["fired"])
    )


@never
def a_dial_left_over_the_ceiling_passed_in_silence(case: Case, found: Answer) -> bool:
    """People have been killed by yesterday's setting."""
    dial = case.machine.rpm_set
    return (
        not refused(found)
        and dial is not None
        and dial > _ceiling(found) * 1.001
        and ("left-at-yesterdays-speed" not in found["fired"] or found["verdict"] == "go")
    )


@never
def a_tool_speed_over_the_ceiling(case: Case, found: Answer) -> bool:
    """A table of tools knows nothing of this blank."""
    del case
    speeds = [rpm for entry in found["tool"].get("speeds", ()) for rpm in entry["rpm"]]
    return not refused(found) and any(rpm > _ceiling(found) * ROUNDING for rpm in speeds)


@never
def a_thrust_number_for_an_empty_window(case: Case, found: Answer) -> bool:
    """Where needed is more than allowed, every number splits or slips."""
    del case
    named = {"set_n", "handwheel_nm", "handwheel_most_nm", "slip_nm", "seat_depth_mm"} & set(found["thrust"])
    return found["thrust"]["window"] == "empty" and bool(named)


@never
def a_go_for_an_empty_window(case: Case, found: Answer) -> bool:
    """No thrust both drives and spares it: ask first."""
    del case
    return found["thrust"]["window"] == "empty" and found["verdict"] in GOING


@never
def a_plain_go_for_a_narrow_window(case: Case, found: Answer) -> bool:
    """A narrow window is hit with care alone."""
    del case
    return bool(found["verdict"] == "go" and found["thrust"]["window"] == "narrow")


@never
def a_thrust_to_set_above_what_is_allowed(case: Case, found: Answer) -> bool:
    """The top of the window is where it splits, crushes or bows."""
    del case
    part = found["thrust"]
    least = min((limit["n"] for limit in part["limits"]), default=math.inf)
    return "set_n" in part and part["set_n"] > min(part["allowed_n"], least) * ROUNDING


@never
def a_thrust_to_set_below_what_is_needed(case: Case, found: Answer) -> bool:
    """It slips, and a drive that slips drills."""
    del case
    part = found["thrust"]
    return "set_n" in part and part["set_n"] * ROUNDING < part["needed_n"]


@never
def a_thrust_above_what_is_marked_on_the_center(case: Case, found: Answer) -> bool:
    """Its bearing was made for that and no more."""
    tail = case.hold.tail
    rating = tail.rating if tail is not None else None
    return rating is not None and found["thrust"].get("set_n", 0.0) > rating * ROUNDING


@never
def a_turn_of_the_wheel_past_the_most(case: Case, found: Answer) -> bool:
    """The wheel is how the thrust is set: past the most is past the window."""
    del case
    part = found["thrust"]
    return "handwheel_nm" in part and part["handwheel_nm"] > part["handwheel_most_nm"] * ROUNDING


@never
def a_thrust_without_a_tailstock(case: Case, found: Answer) -> bool:
    """There is nothing to press with."""
    return case.machine.tailstock is False and found["thrust"]["window"] != "not-used"
