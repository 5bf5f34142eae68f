"""Verdicts that must never come out. Names of woods and stuffs are the trade's; what they do is common practice."""

from __future__ import annotations

from advisor.models.case import Case
from advisor.rulebook import Effect
from tests.whole.forbidden.kinds import GOING, ROUNDING, Answer, called, condition, inches, never, spoke, texts, trued

NEVER_TURNED = (
    "oleander", "manchineel", "elephant ivory", "ivory", "asbestos", "unknown metal", "beryllium copper",
    "railway sleeper", "treated pine", "pressure-treated wood", "granite",
)  # fmt: skip
STRONG_SENSITIZERS = (
    "cocobolo", "rosewood", "teak", "wenge", "iroko", "padauk", "obeche", "yew", "mansonia", "white oak",
    "american beech", "western red cedar",
)  # fmt: skip
HARD_ON_LUNGS = ("cocobolo", "teak", "iroko", "obeche", "western red cedar", "wenge")
ORDER = {Effect.WITH_CARE: "go-with-care", Effect.ASK_FIRST: "ask-first", Effect.DO_NOT_MOUNT: "do-not-mount"}
WORDS = ("go", "go-with-care", "ask-first", "do-not-mount")
LARGE_MM = 457.2  # 18 in
HEAVY_KG = 20.0
TOLD = ("machine.swing", "machine.min_rpm", "machine.mass")


def refused(found: Answer) -> bool:
    """Whether it is not to be mounted."""
    return bool(found["verdict"] == "do-not-mount")


@never
def milder_than_a_rule_that_spoke(case: Case, found: Answer) -> bool:
    """Worst wins: a refusal that something else softens is no refusal."""
    del case
    worst = max((WORDS.index(ORDER[rule.effect]) for rule in spoke(found, *ORDER)), default=0)
    return WORDS.index(found["verdict"]) < worst


@never
def harsher_than_every_rule_that_spoke(case: Case, found: Answer) -> bool:
    """A verdict that nothing explains is not believed, and the next one neither."""
    del case
    worst = max((WORDS.index(ORDER[rule.effect]) for rule in spoke(found, *ORDER)), default=0)
    return WORDS.index(found["verdict"]) > worst


@never
def a_verdict_without_a_reason(case: Case, found: Answer) -> bool:
    """Who is told to wait must be told why."""
    del case
    return found["verdict"] != "go" and not found["reasons"]


@never
def a_first_reason_that_is_not_the_worst(case: Case, found: Answer) -> bool:
    """People read the first line."""
    del case
    first = found["reasons"][0]["rule"] if found["reasons"] else None
    rules = {rule.name: ORDER[rule.effect] for rule in spoke(found, *ORDER)}
    return first is not None and rules.get(first) != found["verdict"]


@never
def a_go_for_what_is_cracked_through_or_treated(case: Case, found: Answer) -> bool:
    """A through crack flies apart; preserved wood is poison as dust."""
    return not refused(found) and condition(case, "through-crack", "treated")


@never
def a_go_for_what_is_never_turned(case: Case, found: Answer) -> bool:
    """Poison, fiber, silica, an unknown alloy, ivory: no hold or mask mends what they are."""
    return not refused(found) and called(case, *NEVER_TURNED)


@never
def a_go_for_magnesium_without_the_extinguisher_for_it(case: Case, found: Answer) -> bool:
    """Burning magnesium takes the oxygen out of water."""
    asked = found["verdict"] == "ask-first" and case.machine.extinguisher is None
    ready = case.machine.extinguisher == "class-D" or asked
    return not refused(found) and called(case, "magnesium") and not ready


@never
def a_go_for_celluloid_cut_dry_without_water(case: Case, found: Answer) -> bool:
    """It burns like powder and needs no air."""
    dry = case.machine.extinguisher not in (None, "water") and case.cut.cooling in ("dry", "air")
    return not refused(found) and called(case, "celluloid") and dry


@never
def a_go_for_a_stone_that_may_hold_asbestos_cut_dry(case: Case, found: Answer) -> bool:
    """Soapstone lies beside asbestos in the ground."""
    return (
        found["verdict"] in GOING and called(case, "soapstone") and case.cut.cooling != "wet" and not case.work.tested
    )


@never
def a_go_in_reverse_on_a_nose_that_unscrews(case: Case, found: Answer) -> bool:
    """The chuck leaves with the work."""
    turning_off = case.machine.nose == "threaded" and case.cut.rotation == "reverse" and not case.machine.nose_lock
    return not refused(found) and turning_off


@never
def a_go_for_what_strikes_the_machine(case: Case, found: Answer) -> bool:
    """Wider than the swing, it cannot turn once round."""
    swing = case.machine.swing
    return not refused(found) and swing is not None and case.work.diameter > swing * ROUNDING


@never
def a_go_out_of_round_over_the_carriage(case: Case, found: Answer) -> bool:
    """It strikes the cross-slide in the first turn."""
    swing = case.machine.swing_over_carriage
    return not refused(found) and not trued(case) and swing is not None and case.work.diameter > swing * ROUNDING


@never
def a_go_for_a_long_bar_behind_the_spindle(case: Case, found: Answer) -> bool:
    """More than ten diameters unsupported bend square and sweep the shop."""
    behind = case.hold.rear_overhang or 0.0
    return not refused(found) and behind > 10 * case.work.diameter * ROUNDING


@never
def a_go_for_an_unknown_large_cracked_lump(case: Case, found: Answer) -> bool:
    """Neither its strength nor what it does to lungs is known, and it is already parting."""
    cracked = condition(case, "crack", "through-crack") or case.work.crack is not None
    return found["verdict"] in GOING and called(case, "unknown") and cracked and inches(case) > 6


@never
def a_plain_go_for_an_unknown_piece(case: Case, found: Answer) -> bool:
    """What nobody can name has unknown dust and unknown strength."""
    return found["verdict"] == "go" and called(case, "unknown", "flubberwood")


@never
def a_go_for_a_strong_sensitizer_with_nothing_against_it(case: Case, found: Answer) -> bool:
    """The first exposure that is one too many cannot be taken back."""
    bare = case.person.extraction is False or case.person.respirator == "none"
    return found["verdict"] in GOING and called(case, *STRONG_SENSITIZERS) and bare


@never
def a_plain_go_for_a_strong_sensitizer_where_nothing_was_said_of_dust(case: Case, found: Answer) -> bool:
    """Missing words are never better than the worst of them by two steps."""
    silent = case.person.extraction is None and case.person.respirator is None
    return found["verdict"] == "go" and called(case, *STRONG_SENSITIZERS) and silent


@never
def a_strong_sensitizer_without_a_word_of_a_mask(case: Case, found: Answer) -> bool:
    """Who is not told of the mask turns without it."""
    said = " ".join(texts([found["cautions"], found["reasons"], found["checks"], found["notes"]]))
    return (
        not refused(found)
        and case.person.respirator in (None, "none")
        and called(case, *STRONG_SENSITIZERS)
        and not any(word in said for word in ("mask", "respirator", "P2", "P3"))
    )


@never
def a_go_for_asthma_and_a_wood_that_sensitizes_lungs(case: Case, found: Answer) -> bool:
    """An attack at the lathe: a physician is asked first."""
    return found["verdict"] in GOING and called(case, *HARD_ON_LUNGS) and case.person.asthma is True


@never
def a_plain_go_for_asthma(case: Case, found: Answer) -> bool:
    """Any dust is too much for it."""
    return found["verdict"] == "go" and case.person.asthma is True


@never
def a_go_for_what_this_person_reacted_to(case: Case, found: Answer) -> bool:
    """The next reaction is the worse one."""
    reacted = [word.casefold() for word in case.person.reacted_before or ()]
    return found["verdict"] in GOING and case.work.material.casefold() in reacted and called(case, *STRONG_SENSITIZERS)


@never
def a_go_for_large_work_on_a_machine_nobody_described(case: Case, found: Answer) -> bool:
    """It walks, tips or strikes a lathe too small for it."""
    large = case.work.diameter > LARGE_MM * ROUNDING or (case.work.mass or 0.0) > HEAVY_KG * ROUNDING
    told = all(case.at(name) is not None for name in TOLD)
    return found["verdict"] in GOING and large and (not told and case.machine.speeds is None)


@never
def a_plain_go_for_large_work(case: Case, found: Answer) -> bool:
    """Above 18 in or 20 kg nothing is ordinary."""
    return found["verdict"] == "go" and (case.work.diameter > LARGE_MM or (case.work.mass or 0.0) > HEAVY_KG)


@never
def a_go_outboard(case: Case, found: Answer) -> bool:
    """No tailstock, no guard, and the switch across the swing."""
    return found["verdict"] in GOING and case.hold.outboard is True


@never
def a_go_with_nails_in_it(case: Case, found: Answer) -> bool:
    """Iron breaks the edge and throws sparks into dust."""
    return found["verdict"] in GOING and condition(case, "nails")


@never
def a_plain_go_for_frozen_wood(case: Case, found: Answer) -> bool:
    """It thaws in the jaws."""
    return found["verdict"] == "go" and case.work.moisture == "frozen"


@never
def a_go_for_food_and_a_sensitizer(case: Case, found: Answer) -> bool:
    """What troubles skin and lungs has no place at a meal."""
    return found["verdict"] in GOING and case.work.use in ("food", "toy") and called(case, *STRONG_SENSITIZERS)
