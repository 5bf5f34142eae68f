"""When nothing in the kit will do: the one thing to get, and the change that is tried and really helps."""

import pytest

from advisor.advice import advise
from advisor.advice.advise import default_engine
from advisor.advice.beyond import TABLE, one_thing
from advisor.advice.changes import hold_changes, hold_proposals
from advisor.advice.judge import implied_method
from advisor.data.tables import load
from advisor.models.case import METHODS
from advisor.models.spoken import spoken
from advisor.situation import settle
from tests.rules.bench import advice

# The kit holds nothing safe; what an old hand would make of what is there, else get: common practice, no source.
# Situation, thing to make or to get, hold that does then, whether it is made in the shop.
POOR_KITS = [
    ("BOWL; hold.kit=[double-sided-tape, drill-chuck]", "screw-chuck", "screw-chuck", False),
    ("BOWL; hold.kit=[double-sided-tape, three-jaw]", "screw-chuck", "screw-chuck", True),
    ("BOWL; work.moisture=green; hold.kit=[screw-chuck, vacuum]", "faceplate-screws", "faceplate-screws", False),
    ("METALBOWL; work.moisture=green; hold.kit=[screw-chuck, vacuum]", "two-spur-drive", "two-spur-drive", True),
    ("ROD; hold.kit=[double-sided-tape, vacuum]", "spur-drive", "spur-drive", True),
    (
        "ROD; machine.kind=wood-lathe; hold.kit=[double-sided-tape, vacuum]",
        "toothed-ring-drive",
        "toothed-ring-drive",
        False,
    ),
    ("STONE; hold.kit=[screw-chuck, spur-drive]", "glue-block", "glue-block", True),
    ("STONE; hold.kit=[spur-drive]", "four-jaw-independent", "four-jaw-independent", False),
    ("BALL; hold.kit=[three-jaw, spur-drive]", "sphere-cups", "sphere-cups", True),
    ("PEN; hold.method=; hold.kit=[spur-drive]", "mandrel", "mandrel", True),
    ("ROD; work.length=500mm; machine.tailstock=no; hold.kit=[three-jaw, collet]", "steady-rest", "collet", True),
]


@pytest.mark.parametrize(("situation", "thing", "method", "made"), POOR_KITS)
def test_the_one_thing_to_make_or_get_is_named(situation: str, thing: str, method: str, made: bool) -> None:
    found = advice(situation)
    assert not found.judgement.accepted
    one = found.one_thing
    assert one is not None
    assert (one.thing, one.hold.method, bool(one.how)) == (thing, method, made)
    remedy = next(entry.remedy for entry in found.rulings if entry.rule.name == "nothing-in-the-kit-holds-it")
    assert spoken(thing) in remedy
    assert ("nothing need be bought" if made else "nothing made from what is there") in remedy
    words = hold_changes(found, default_engine(), found.used.method)
    assert any(entry.startswith(spoken(thing)) and entry.endswith(one.hold.verdict) for entry in words)


@pytest.mark.parametrize(("situation", "thing"), [(entry[0], entry[1]) for entry in POOR_KITS])
def test_with_the_thing_at_hand_it_is_held(situation: str, thing: str) -> None:
    before, _, kit = situation.partition("hold.kit=[")
    with_it = advice(f"{before}hold.kit=[{kit[:-1]}, {thing}]")
    one = advice(situation).one_thing
    assert one is not None
    assert with_it.judgement.of(one.hold.method).verdict == one.hold.verdict
    assert with_it.judgement.accepted


@pytest.mark.parametrize("situation", ["BOWL", "BOWL; hold.kit=[faceplate-screws, double-sided-tape]", "SPINDLE"])
def test_nobody_with_a_sound_hold_is_sent_shopping(situation: str) -> None:
    found = advice(situation)
    assert found.one_thing is None
    assert one_thing(found.situation, default_engine(), found.judgement) is None


def test_a_thing_that_needs_another_one_comes_last_and_says_so() -> None:
    """A split bushing is nothing without a chuck, so a collet is bought before both."""
    rod = "ROD; machine.kind=wood-lathe; machine.tailstock=no; work.diameter=60mm; work.length=60mm"
    found = advice(f"{rod}; hold.kit=[vacuum]").one_thing
    assert found is not None
    assert not found.carrier


def test_every_way_of_holding_is_made_or_got() -> None:
    rows = load(TABLE)
    assert {row.text("method") for row in rows} == {*METHODS, "steady-rest"}
    assert all(row.text("how") or row.text("alone") == "yes" or row.text("carried_by") for row in rows)


BAR_ALONE = "SPINDLE; work.form=round; work.length=34in; machine.tailstock=no"


@pytest.mark.parametrize(
    ("situation", "rule", "said"),
    [
        (f"{BAR_ALONE}; hold.kit=[double-sided-tape]", "nothing-in-the-kit-holds-it", "nothing outside it either"),
        (BAR_ALONE, "no-hold-found", ", a lathe with a tailstock"),
        ("BALL; work.condition=[check]; machine.tailstock=no; hold.kit=[vacuum]", "nothing-in-the-kit-holds-it", ""),
    ],
)
def test_when_no_hold_helps_the_change_that_does_is_named(situation: str, rule: str, said: str) -> None:
    found = advice(situation)
    remedy = next(entry.remedy for entry in found.rulings if entry.rule.name == rule)
    assert said in remedy


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
