"""When nothing in the kit will do: the one thing to get, and the change that is tried and really helps."""

import pytest

from advisor.advice import advise
from advisor.advice.advise import default_engine
from advisor.advice.changes import hold_changes, hold_proposals
from advisor.advice.judge import beyond_the_kit, implied_method
from advisor.models.case import METHODS
from advisor.situation import settle
from tests.rules.bench import advice

# The kit holds nothing safe; what an old hand would go and get: common practice, no source.
POOR_KITS = [
    ("BOWL; hold.kit=[double-sided-tape, drill-chuck]", "screw-chuck"),
    ("BOWL; work.moisture=green; hold.kit=[screw-chuck, vacuum]", "faceplate-screws"),
    ("ROD; hold.kit=[double-sided-tape, vacuum]", "collet"),
    ("STONE; hold.kit=[screw-chuck, spur-drive]", "glue-block"),
    ("BALL; hold.kit=[three-jaw, spur-drive]", "sphere-cups"),
    ("PEN; hold.method=; hold.kit=[spur-drive]", "mandrel"),
]


@pytest.mark.parametrize(("situation", "wanted"), POOR_KITS)
def test_the_one_thing_to_get_is_named(situation: str, wanted: str) -> None:
    found = advice(situation)
    assert not found.judgement.accepted
    best = beyond_the_kit(found.situation, default_engine(), found.judgement)
    assert best is not None
    assert best.method == wanted
    remedy = next(entry.remedy for entry in found.rulings if entry.rule.name == "nothing-in-the-kit-holds-it")
    assert wanted.replace("-", " ") in remedy
    words = hold_changes(found, default_engine(), found.used.method)
    assert f"{wanted.replace('-', ' ')} instead: {best.verdict}" in words
    with_it = advice(f"{situation.partition('hold.kit')[0]}hold.kit=[{wanted}]")
    assert with_it.judgement.holds[0].verdict == best.verdict


@pytest.mark.parametrize("situation", ["BOWL", "BOWL; hold.kit=[faceplate-screws, double-sided-tape]", "SPINDLE"])
def test_nobody_with_a_sound_hold_is_sent_shopping(situation: str) -> None:
    found = advice(situation)
    assert beyond_the_kit(found.situation, default_engine(), found.judgement) is None


def test_when_nothing_outside_helps_it_says_so() -> None:
    found = advice("SPINDLE; work.form=round; work.length=34in; machine.tailstock=no; hold.kit=[double-sided-tape]")
    remedy = next(entry.remedy for entry in found.rulings if entry.rule.name == "nothing-in-the-kit-holds-it")
    assert "nothing outside it either" in remedy


TRIED = [
    "HOLLOWING; hold.tenon.diameter=60mm",
    "HOLLOWING; hold.tenon.length=30mm; hold.chuck.jaw_depth=12mm",
    "BOWL; hold.method=screw-chuck; cut.rotation=reverse",
    "BOWL; hold.method=spur-drive; hold.tail.kind=none",
    "BOWL; hold.method=faceplate-screws; hold.screws.kind=plasterboard",
    "BOWL; hold.method=jaws-in-recess",
    "BOWL; hold.method=vacuum",
    "DISC; hold.method=glue-block; hold.glue.cured=no",
    "DISC; hold.method=glue-block; work.moisture=green; hold.glue.kind=pva",
    "PLATTER; hold.recess.wall=10mm",
    "SPINDLE; hold.method=collet; work.diameter=35mm",
    "BALL; hold.method=rubber-button-jaws; cut.operation=shaping",
    "LONGHOLD",
]


@pytest.mark.parametrize("situation", TRIED)
def test_a_change_that_is_named_really_changes_the_verdict(situation: str) -> None:
    found = advice(situation)
    proposals = hold_proposals(found.situation, default_engine(), found.used)
    assert proposals
    for proposal in proposals:
        again = advise(proposal.case).judgement.of(proposal.method)
        assert again.verdict == proposal.verdict, proposal.text
        order = ("suits", "with-care", "could-not-check", "not-advised", "refused")
        assert order.index(again.verdict) < order.index(found.used.verdict), proposal.text


@pytest.mark.parametrize("method", METHODS)
def test_the_chosen_method_is_judged_in_the_kit_or_not(method: str) -> None:
    situation = settle(advice(f"BOWL; hold.method={method}; hold.kit=[faceplate-screws]").situation.case)
    assert implied_method(situation) == method
    assert advice(f"BOWL; hold.method={method}; hold.kit=[faceplate-screws]").used.method == method
