"""Advice -> answer: every field in its place, every list in its order, nothing said twice and nothing left out."""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.advice import answer
from advisor.advice.advise import Advice
from advisor.advice.answer import SCHEMA, compose
from advisor.advice.judge import Judgement
from advisor.reckoning.balancing import Balance, Counterweight, Move
from advisor.reckoning.way_up import Rung
from advisor.rulebook import Effect
from tests.advice.bench import PRACTICE, TORQUE, judged, kept_advice, limit, ruling, silence, written

SPINDLE = "SPINDLE; hold.kit=[spur-drive, jaws-on-tenon]; hold.method=spur-drive"
SPURS, JAWS, SCREWS = judged(), judged("jaws-on-tenon", "with-care"), judged("faceplate-screws", "refused")
ALL = ("holding", "speed", "thrust", "centers", "tool")


def nothing(_: str) -> list[str]:
    """Nothing would change it."""
    return []


def with_rulings(*rulings: Any) -> Advice:
    return kept_advice(SPINDLE)._replace(rulings=rulings)


def with_holds(*holds: Any) -> Advice:
    return kept_advice(SPINDLE)._replace(judgement=Judgement(holds, (), (), ()), used=holds[0])


def test_the_sources_of_a_rule_stand_by_their_titles() -> None:
    found = ruling(Effect.CAUTION, "Mind it.", basis=("en-204", "common-practice"))
    assert answer.basis_of(found) == f"EN 204; {PRACTICE}"


def test_reasons_come_worst_first_and_what_nothing_switches_off_before_the_rest() -> None:
    advice = with_rulings(
        ruling(Effect.WITH_CARE, "Go slowly.", "slow"),
        ruling(Effect.ASK_FIRST, "Ask.", "ask"),
        ruling(Effect.DO_NOT_MOUNT, "It may part.", "parts"),
        ruling(Effect.CAUTION, "Mask.", "mask"),
        ruling(Effect.DO_NOT_MOUNT, "It bursts.", "bursts", hard=True, do="Burn {size}.", basis=("en-204",)),
        ruling(Effect.NOTE, "Wood.", "wood"),
    )
    found = answer.reasons(advice)
    assert [entry["rule"] for entry in found] == ["bursts", "parts", "ask", "slow"]
    assert found[0] == {"rule": "bursts", "text": "It bursts.", "basis": "EN 204", "do": "Burn 7."}


def test_what_must_not_be_mounted_is_not_told_with_what_care_to_hold_or_run_it() -> None:
    topics = ("choice", "thrust", "speed", "slender")
    how = [ruling(Effect.WITH_CARE, f"Mind the {topic}.", topic, topic=topic) for topic in topics]
    stays = [
        ruling(Effect.WITH_CARE, "Mind the dust.", "dust", topic="hazard"),
        ruling(Effect.ASK_FIRST, "Ask for a hold.", "hold", topic="choice"),
        ruling(Effect.DO_NOT_MOUNT, "It parts.", "parts", topic="speed"),
    ]
    advice = with_rulings(*how, *stays)
    refused = answer.reasons(advice._replace(verdict="do-not-mount"))
    assert [entry["rule"] for entry in refused] == ["parts", "hold", "dust"]
    assert {entry["rule"] for entry in answer.reasons(advice._replace(verdict="ask-first"))} > set(topics)


def test_the_same_words_are_a_reason_once_from_the_rule_that_spoke_first() -> None:
    advice = with_rulings(
        ruling(Effect.ASK_FIRST, "Ask.", "first"),
        ruling(Effect.ASK_FIRST, "Ask.", "second"),
        ruling(Effect.ASK_FIRST, "Ask again.", "third"),
    )
    assert [entry["rule"] for entry in answer.reasons(advice)] == ["first", "third"]


def test_cautions_are_said_once_each_in_the_order_they_came() -> None:
    advice = with_rulings(
        ruling(Effect.CAUTION, "Mask.", "mask", basis=("en-204",)),
        ruling(Effect.CHECK, "Look.", "look"),
        ruling(Effect.CAUTION, "Mask.", "mask-again"),
        ruling(Effect.CAUTION, "Shield.", "shield"),
    )
    assert answer.cautions(advice) == [
        {"text": "Mask.", "rule": "mask", "basis": "EN 204"},
        {"text": "Shield.", "rule": "shield", "basis": PRACTICE},
    ]


def test_checks_come_in_the_order_of_the_work_and_one_without_a_place_before_the_last_looks() -> None:
    """Cracks are looked for before anything is mounted; a step nobody placed comes before what is watched for later."""
    advice = with_rulings(
        ruling(Effect.CHECK, "Wet wood moves.", "green-moves"),
        ruling(Effect.CHECK, "Oil the rest.", "a-step-of-no-place"),
        ruling(Effect.CHECK, "Cover the ways.", "cover-the-ways"),
        ruling(Effect.CHECK, "Tail up.", "tailstock-up"),
        ruling(Effect.NOTE, "A remark.", "look-for-cracks"),
        ruling(Effect.CHECK, "Look for cracks.", "look-for-cracks"),
        ruling(Effect.CHECK, "Tail up.", "another"),
    )
    order = ["Look for cracks.", "Tail up.", "Cover the ways.", "Oil the rest.", "Wet wood moves."]
    assert answer.checks(advice) == order


def test_notes_are_said_once_each() -> None:
    notes = [ruling(Effect.NOTE, text) for text in ("One.", "Two.", "One.")]
    assert answer.notes(with_rulings(*notes, ruling(Effect.CHECK, "Three."))) == ["One.", "Two."]


def test_one_hold_shows_what_it_has_and_what_it_needs() -> None:
    hold = judged(margins=(TORQUE, TORQUE._replace(name="moment", ratio=math.inf)), sizes={"depth": 3.0, "land": None})
    spoken = ruling(Effect.HOLD_WITH_CARE, "Tug it.", "tug"), ruling(Effect.SUITS, "", "silent")
    assert answer.one_hold(hold._replace(rulings=spoken), 3, ("a bigger tenon: suits",)) == {
        "method": "spur-drive",
        "verdict": "suits",
        "rank": 3,
        "margins": [
            {"name": "torque", "have": 12.0, "need": 8.0, "unit": "N·m", "ratio": 1.5, "grade": "rough-guide"},
        ],
        "grounds": [{"rule": "tug", "text": "Tug it."}],
        "would_change": ["a bigger tenon: suits"],
        "sizes": {"depth": 3.0},
        "tail": "up",
        "low": 1.25,
        "typical_over_divisor": 1.5,
    }


def test_a_hold_judged_by_practice_alone_has_no_ratio_and_not_nought() -> None:
    (entry,) = answer.holding(with_holds(judged(tail_up=False, low=None, typical=None)), nothing)
    assert entry["tail"] == "away"
    assert "low" not in entry
    assert "typical_over_divisor" not in entry


def test_the_hold_in_use_comes_first_and_the_others_keep_their_order() -> None:
    advice = with_holds(SPURS, JAWS, SCREWS)._replace(used=JAWS)
    found = answer.holding(advice, lambda method: [f"more for {method}"])
    assert [(entry["method"], entry["rank"], entry["verdict"]) for entry in found] == [
        ("jaws-on-tenon", 1, "with-care"),
        ("spur-drive", 2, "suits"),
        ("faceplate-screws", 3, "refused"),
    ]
    assert [entry["would_change"] for entry in found] == [[f"more for {entry['method']}"] for entry in found]


RUNG = Rung(removed=2.0, offset=0.5, diameter=72.0, ceiling=1500.0, governed_by="rim-speed", state="round")


def speed_part(advice: Advice) -> dict[str, Any]:
    return answer.speed_part(advice, (RUNG,), ["less weight: ceiling 900 rpm"])


def test_speed_names_start_ceiling_what_sets_it_and_every_limit() -> None:
    walks, rim = limit("walking", 700.0), limit("rim-speed", 900.0)
    rate = kept_advice(SPINDLE).speed._replace(
        limits=(walks, rim), ceiling=walks, runner_up=rim, start=420.0, energy=5.0, rim_speed=3.0, whips=(650.0, 800.0)
    )
    found = speed_part(kept_advice(SPINDLE)._replace(speed=rate))
    steps, balance = found.pop("steps"), found.pop("balance")
    assert found == {
        "start_rpm": 420.0,
        "ceiling_rpm": 700.0,
        "governed_by": "walking",
        "runner_up": "rim-speed",
        "limits": [written("walking", "rpm", 700.0), written("rim-speed", "rpm", 900.0)],
        "energy_j": 5.0,
        "rim_m_per_s": 3.0,
        "ladder": [
            {
                "radius_removed_mm": 2.0,
                "offset_mm": 0.5,
                "ceiling_rpm": 1500.0,
                "governed_by": "rim-speed",
                "diameter_mm": 72.0,
                "state": "round",
            }
        ],
        "would_change": ["less weight: ceiling 900 rpm"],
        "whip_rpm": [650.0, 800.0],
    }
    assert list(steps[0]) == ["when", "rpm", "check", "energy_j"]
    assert (steps[0]["when"], steps[0]["rpm"]) == ("first switch-on", 420.0)
    assert steps[0]["check"].startswith("tailstock up; look at the dial")
    assert steps[-1]["rpm"] == 700.0
    assert steps[1]["energy_j"] / steps[0]["energy_j"] == pytest.approx((steps[1]["rpm"] / 420.0) ** 2)
    body = kept_advice(SPINDLE).situation.body
    assert (balance["mass_kg"], balance["offset_mm"]) == (body.mass, body.offset)


def test_a_counterweight_is_fixed_for_the_speed_it_makes_possible_not_for_the_one_it_cures() -> None:
    walks, rim = limit("walking", 700.0), limit("rim-speed", 1400.0)
    rate = kept_advice(SPINDLE).speed
    alone, both = (
        speed_part(kept_advice(SPINDLE)._replace(speed=rate._replace(limits=limits, ceiling=limits[0])))["balance"]
        for limits in ((rim,), (walks, rim))
    )
    assert both["counterweight_pull_n"] == alone["counterweight_pull_n"]


def test_a_speed_with_one_limit_and_no_whirl_says_nothing_of_a_second_or_of_whipping() -> None:
    rate = kept_advice(SPINDLE).speed._replace(runner_up=None, whips=None)
    assert {"runner_up", "whip_rpm"}.isdisjoint(speed_part(kept_advice(SPINDLE)._replace(speed=rate)))


def test_what_is_not_to_be_mounted_has_a_ceiling_of_nought_and_no_start() -> None:
    rate = kept_advice(SPINDLE).speed._replace(limits=(limit("crack", 90.0),))
    assert speed_part(kept_advice(SPINDLE)._replace(verdict="do-not-mount", speed=rate)) == {
        "ceiling_rpm": 0,
        "limits": [written("crack", "rpm", 90.0)],
        "would_change": ["less weight: ceiling 900 rpm"],
    }


NEAR = Move("near", distance=4.0, direction=90.0, toward="toward radius 3 of 8", remains=1.0, swing=150.0)
FAR = Move("far", distance=6.0, direction=None, toward="toward the flat", remains=2.0, swing=None)
WEIGHT = Counterweight(
    grams=200.0, radius=100.0, direction=270.0, rpm=600.0, pull=79.0, must_hold=395.0, bolts=2, couple_left=9.0
)


def test_balance_tells_each_move_and_the_weight_with_its_fixing() -> None:
    found = answer.balance_part(Balance(5.0, 8.0, 3.0, 40.0, (NEAR, FAR), WEIGHT))
    first, second = found.pop("moves")
    assert found == {
        "mass_kg": 5.0,
        "offset_mm": 8.0,
        "shift_mm": 6.0,
        "counterweight_g": 200.0,
        "static_mm": 3.0,
        "couple_kg_mm2": 40.0,
        "counterweight_radius_mm": 100.0,
        "counterweight_deg": 270.0,
        "counterweight_pull_n": 79.0,
        "counterweight_must_hold_n": 395.0,
        "counterweight_bolts": 2,
        "counterweight_couple_kg_mm2": 9.0,
    }
    assert first == {
        "end": "near",
        "distance_mm": 4.0,
        "direction_deg": 90.0,
        "remains_mm": 1.0,
        "swing_mm": 150.0,
        "text": "at the end of work.radii 4.0 mm toward radius 3 of 8: about 1.0 mm stays; it then sweeps 150 mm",
    }
    assert second == {
        "end": "far",
        "distance_mm": 6.0,
        "remains_mm": 2.0,
        "text": "at the far end 6.0 mm toward the flat: about 2.0 mm stays",
    }


def test_without_measured_radii_the_centers_shift_by_the_whole_offset_and_no_weight_is_told() -> None:
    assert answer.balance_part(Balance(5.0, 8.0, None, None, (), None)) == {
        "mass_kg": 5.0,
        "offset_mm": 8.0,
        "shift_mm": 8.0,
        "counterweight_g": 0.0,
    }


def listed(advice: Advice) -> dict[str, tuple[str, str]]:
    return {entry["field"]: (entry["value"], entry["why"]) for entry in answer.assumed(advice)}


def test_what_nobody_said_is_listed_from_the_piece_the_hold_the_speed_and_the_drive() -> None:
    base = kept_advice(SPINDLE)
    thrust = base.thrust
    assert thrust is not None
    assert thrust.drive is not None
    said = base._replace(
        situation=base.situation._replace(assumed=(silence("machine.mass"),)),
        used=judged(assumed=(silence("hold.tenon"),)),
        speed=base.speed._replace(assumed=(silence("hold.chuck.grip"),)),
        thrust=thrust._replace(drive=thrust.drive._replace(assumed=(silence("hold.drive.teeth", "4", "spurs"),))),
    )
    assert listed(said) == {
        "machine.mass": ("40 kg", "not given"),
        "hold.tenon": ("40 kg", "not given"),
        "hold.chuck.grip": ("40 kg", "not given"),
        "hold.drive.teeth": ("4", "spurs"),
        "hold.tail.kind": ("live-point", "the point that splits most readily"),
    }
    assert "hold.drive.teeth" not in listed(said._replace(thrust=thrust._replace(drive=None)))
    assert list(listed(said._replace(thrust=None))) == ["machine.mass", "hold.tenon", "hold.chuck.grip"]


def test_a_hold_that_nobody_chose_is_assumed_and_the_next_that_would_do_is_told() -> None:
    base = kept_advice("SPINDLE; hold.kit=[spur-drive]")
    advice = base._replace(judgement=Judgement((SPURS, SCREWS, JAWS), (), (), ()), used=SPURS)
    reach = "what an old hand would reach for"
    assert listed(advice)["hold.method"] == ("spur-drive", f"{reach}; next: jaws-on-tenon")
    alone = advice._replace(judgement=Judgement((SPURS, SCREWS), (), (), ()))
    assert listed(alone)["hold.method"] == ("spur-drive", reach)
    said = alone._replace(used=judged(assumed=(silence("hold.method", "spur-drive", "the drive says so"),)))
    assert listed(said)["hold.method"] == ("spur-drive", "the drive says so")


def test_what_was_said_is_not_assumed() -> None:
    assert "hold.method" not in listed(kept_advice(SPINDLE))
    said = kept_advice(f"{SPINDLE}; hold.tail.kind=live-cup")
    assert "hold.tail.kind" not in listed(said)


def test_what_could_not_be_checked_is_told_once_with_what_is_missing() -> None:
    base = kept_advice(SPINDLE)
    assert base.thrust is not None
    advice = base._replace(
        situation=base.situation._replace(gaps=(("splitting", "the strength"),)),
        used=judged(missing=(("the jaws", "their depth"), ("splitting", "the strength"))),
        thrust=base.thrust._replace(gaps=(("thrust by feel", "the lead"),)),
        rulings=(
            ruling(Effect.COULD_NOT_CHECK, "The dust.", do="A name."),
            ruling(Effect.NOTE, "A remark.", do="Nothing."),
        ),
    )
    told = [
        {"what": "splitting", "missing": "the strength"},
        {"what": "the jaws", "missing": "their depth"},
        {"what": "thrust by feel", "missing": "the lead"},
        {"what": "The dust.", "missing": "A name."},
    ]
    assert answer.could_not_check(advice) == told
    assert answer.could_not_check(advice._replace(thrust=None)) == [told[0], told[1], told[3]]


ALWAYS = ["cautions", "checks", "notes", "fired", "assumed", "could_not_check"]
FIRST = ["schema", "verdict", "reasons"]


@pytest.mark.parametrize("parts", [(), *((part,) for part in ALL), ALL])
def test_an_answer_has_the_parts_asked_for_and_those_that_every_answer_has(parts: tuple[str, ...]) -> None:
    found = compose(kept_advice(SPINDLE), parts, {}, nothing, ())
    assert list(found) == [*FIRST, *parts, *ALWAYS]


def test_the_answer_says_of_each_part_what_was_worked_out() -> None:
    advice = kept_advice(SPINDLE)
    tried = {"speed": ["lighter"], "thrust": ["a cup"]}
    found = compose(advice, ALL, tried, lambda method: [f"other {method}"], (RUNG,))
    assert (found["schema"], found["verdict"]) == (SCHEMA, advice.verdict) == ("1", "go-with-care")
    assert found["reasons"] == answer.reasons(advice) != []
    assert [entry["would_change"] for entry in found["holding"]] == [["other spur-drive"], ["other jaws-on-tenon"]]
    assert found["speed"]["would_change"] == ["lighter"]
    assert [entry["radius_removed_mm"] for entry in found["speed"]["ladder"]] == [2.0]
    assert (found["thrust"]["window"], found["thrust"]["would_change"]) == ("open", ["a cup"])
    assert found["centers"]["drive"]["kind"] == "four"
    assert found["tool"]["kind"] == "spindle roughing gouge"
    assert found["cautions"] == answer.cautions(advice) != []
    assert found["checks"] == answer.checks(advice) != []
    assert found["notes"] == answer.notes(advice) != []
    assert found["assumed"] == answer.assumed(advice) != []
    assert found["could_not_check"] == answer.could_not_check(advice)


def test_changes_that_were_not_tried_are_none() -> None:
    found = compose(kept_advice(SPINDLE), ("speed", "thrust"), {}, nothing, ())
    assert found["speed"]["would_change"] == []
    assert found["thrust"]["would_change"] == []


def test_every_rule_that_spoke_is_named_once_holds_first() -> None:
    base = kept_advice(SPINDLE)
    holds = Judgement((SPURS,), (), (ruling(Effect.SUITS, "", "holds-well"), ruling(Effect.SUITS, "", "again")), ())
    spoken = ruling(Effect.NOTE, "A.", "again"), ruling(Effect.NOTE, "B.", "last")
    found = compose(base._replace(judgement=holds, rulings=spoken, used=SPURS), (), {}, nothing, ())
    assert found["fired"] == ["holds-well", "again", "last"]
