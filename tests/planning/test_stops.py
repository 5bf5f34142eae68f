"""A stage without a safe hold stops the plan, with the reason named and what would mend it. Practice, no source."""

from __future__ import annotations

import pytest

from tests.planning.bench import PLATTER, SCHEMA, answer_of, plan_of, stopped

BAD = "do-not-mount"
SHALLOW = "BOWL; work.length=45mm; work.finished_length=40mm"
RECESS_ONLY = f"{PLATTER}; hold.kit=[faceplate-screws, jaws-in-recess, friction-block]"
SHUT_AT_HOLLOW = {
    "grip-turned-away": ("BOWL; work.state=finished; cut.operation=hollowing", "nothing is left to grip"),
    "no-safe-hold": (f"{RECESS_ONLY}; hold.recess.diameter=75mm; hold.recess.wall=12mm", "Less than 15 mm of wood"),
    "no-safe-hold, and what would open it": (
        "BOWL; work.length=6in; work.state=round; cut.operation=hollowing; hold.method=jaws-in-recess; "
        "hold.kit=[jaws-in-recess]",
        "What would change it: finishing cuts only",
    ),
    "recess-through-the-floor": (f"{RECESS_ONLY}; work.floor=8mm", "the floor is 8 mm"),
    "too-short": (f"{SHALLOW}; hold.kit=[screw-chuck, jaws-on-tenon, friction-block]", "asks 40 mm"),
}
SHUT_AT_ONCE = {
    "no-hold-to-hand": ("SPINDLE; hold.kit=[jaws-in-recess]", "four-spur drive"),
    "screws-reach-the-piece": (
        "BOWL; work.length=40mm; work.floor=20mm; hold.kit=[faceplate-screws, jaws-on-tenon]",
        "holes would show",
    ),
    "cut-where-held": ("KNOB; hold.kit=[four-jaw-independent]", "sits in the hold"),
    "grip-not-cut": ("KNOB; hold.kit=[long-jaws]", "no stage before has cut one"),
    "cracked-through": ("BOWL; work.condition=[through-crack]", "two pieces"),
    "cannot-go-slow-enough": ("BOWL; machine.min_rpm=700", "700"),
}
OPEN_TO_OTHERS = [
    ("SPINDLE; work.finished_diameter=60mm", "rough", "blank-too-thin", "is 54 mm and the finished piece asks 60 mm"),
    ("BOWL; hold.tenon.diameter=8in; work.finished_diameter=7in", "finish", "does-not-fit", "tenon.diameter is larger"),
    ("BOWL; hold.method=double-sided-tape", "rough", "no-safe-hold", "What would do it: screw chuck"),
    ("SPINDLE; machine.tailstock=no; hold.kit=", "rough", "no-safe-hold", "What would change it: a tailstock"),
    ("BOWL; work.state=finished; cut.operation=hollowing; hold.kit=", "hollow", "grip-turned-away", "Glue a block on"),
]
THIN_ROD = "THIN; work.purpose=rod; hold.kit=[spur-drive]; cut.force=8N"
SHORT_BOWL = "BOWL; work.length=36mm; hold.kit=[spur-drive, jaws-on-tenon, friction-block]"
GREEN = "BOWL; work.moisture=green; work.finished_diameter=9in; hold.kit="
STOPS = [
    (f"{GREEN}; machine.min_rpm=410", "true the grip", "lathe-too-fast", "lowest speed is 410 rpm", "ask-first"),
    (f"{GREEN}; machine.speeds=[410, 900]", "true the grip", "lathe-too-fast", "lower pulley", "ask-first"),
    ("BOWL; hold.kit=[faceplate-screws, jaws-on-tenon]", "clear the foot", "no-hold-to-hand", "friction block", BAD),
    (SHORT_BOWL, "hollow", "too-short", "any bowl asks 25 mm", BAD),
    (THIN_ROD, "finish", "no-safe-thrust", "no thrust", BAD),
    (THIN_ROD.replace("8N", "20N"), "finish", "no-safe-hold", "Another piece or another lathe", BAD),
    *((text, "hollow", fault.split(",")[0], says, BAD) for fault, (text, says) in SHUT_AT_HOLLOW.items()),
    *((text, "rough", fault, says, BAD) for fault, (text, says) in SHUT_AT_ONCE.items()),
    *((*row, "ask-first") for row in OPEN_TO_OTHERS),
]


@pytest.mark.parametrize(("text", "where", "fault", "says", "verdict"), STOPS, ids=[row[2] for row in STOPS])
def test_the_plan_stops_there_for_that_reason(text: str, where: str, fault: str, says: str, verdict: str) -> None:
    found = answer_of(text)
    assert stopped(text) == (where, fault)
    told = found["stopped"]
    assert says.lower() in f"{told['text']} {told['do']}".lower()
    assert told["do"]
    assert found["verdict"] == verdict
    assert found["stages"][-1]["name"] == where
    assert found["reasons"][0]["rule"] == fault
    assert found["reasons"][0]["text"].startswith(f"The plan stops at stage {len(found['stages'])}, {where}: ")
    SCHEMA.validate(found)


def test_nothing_is_given_to_turn_at_in_the_stage_that_stops() -> None:
    for text, where, *_ in STOPS:
        last = answer_of(text)["stages"][-1]
        assert last["name"] == where
        assert last.get("speed", {}).get("ceiling_rpm", 0) == 0
        assert "leave" not in last


def test_holds_that_were_passed_over_say_why() -> None:
    text = "BOWL; work.state=finished; cut.operation=hollowing"
    passed = answer_of(text)["stages"][-1]["passed_over"]
    assert {entry["fault"] for entry in passed} == {"grip-turned-away"}
    assert len(passed) == len(plan_of(text).stages[-1].judged)


TREATED = "SPINDLE; hold.kit=; machine.tailstock=no; work.condition=[treated]"


def test_a_refusal_of_the_piece_itself_stands_before_the_hold_it_lacks() -> None:
    found = answer_of(TREATED)
    assert stopped(TREATED) == ("rough", "no-safe-hold")
    assert found["stages"][0]["verdict"] == "ask-first"
    assert found["verdict"] == "do-not-mount"
    assert found["reasons"][0]["rule"] == "treated-wood"
    assert found["reasons"][-1]["rule"] == "no-safe-hold"
    assert "treated-wood" in found["fired"]


def test_the_usual_cautions_are_given_even_when_nothing_can_be_turned() -> None:
    for text, *_ in STOPS:
        assert any("Safety glasses under a face shield" in entry["text"] for entry in answer_of(text)["cautions"]), text
