"""What a careful hand says before unusual material is mounted, in pairs that differ by one thing.

Every verdict here is common practice, no source. The bases are those of `tests.rules.bench`: sound, dry, round where
nothing else is said, dust extraction on and a P2 mask worn.
"""

import pytest

from tests.rules.bench import advice

WOOD = "SPINDLE; work.state=round; work.form=round; work.diameter=45mm; work.length=150mm; hold.tail.kind=live-cup"
SHEET = "PLASTIC; person.respirator=P3"
ROCK = "STONE; person.respirator=P3"
GO, CARE, ASK, NO = "go", "go-with-care", "ask-first", "do-not-mount"

# one line each: the situation, what everybody says to it, what is changed, what everybody says then
PAIRS = {
    "maple with extraction, without": (WOOD, GO, "person.extraction=no", CARE),
    "maple with a mask, with a bare face": (WOOD, GO, "person.respirator=none", CARE),
    "maple sound, spalted": (WOOD, GO, "work.condition=[spalted]", CARE),
    "maple sound, treated": (WOOD, GO, "work.condition=[treated]", NO),
    "maple sound, painted": (WOOD, GO, "work.condition=[painted]", ASK),
    "maple sound, nails in it": (WOOD, GO, "work.condition=[nails]", ASK),
    "maple sound, rotten": (WOOD, GO, "work.condition=[rot]", ASK),
    "maple sound, cracked through": (WOOD, GO, "work.condition=[through-crack]", NO),
    "maple, asthma": (WOOD, GO, "person.asthma=yes", CARE),
    "maple for nobody, for food": (WOOD, GO, "work.use=food", GO),
    "maple, who reacted to rosewood": (WOOD, GO, "person.reacted_before=[rosewood]", GO),
    "maple, who reacted to maple": (WOOD, GO, "person.reacted_before=[maple]", ASK),
    "maple named, a name nobody knows": (WOOD, GO, "work.material=flubberwood", ASK),
    "maple named, unknown": (WOOD, GO, "work.material=unknown", CARE),
    "maple, oleander": (WOOD, GO, "work.material=oleander", NO),
    "pine, treated pine": (f"{WOOD}; work.material=loblolly pine", GO, "work.material=treated pine", NO),
    "pine, painted pine": (f"{WOOD}; work.material=loblolly pine", GO, "work.material=painted pine", ASK),
    "spalted wood, asthma": (f"{WOOD}; work.condition=[spalted]", CARE, "person.asthma=yes", ASK),
    "spalted wood, no extraction": (f"{WOOD}; work.condition=[spalted]", CARE, "person.extraction=no", ASK),
    "unknown wood small, its dust control unsaid": (f"{WOOD}; work.material=unknown", CARE, "person.extraction=", ASK),
    "unknown wood sound, checked": (f"{WOOD}; work.material=unknown", CARE, "work.condition=[check]", ASK),
    "walnut, for food": (f"{WOOD}; work.material=black walnut", GO, "work.use=food", ASK),
    "walnut, who reacted to walnut": (f"{WOOD}; work.material=walnut", GO, "person.reacted_before=[walnut]", ASK),
    "cocobolo with dust control, without": (f"{WOOD}; work.material=cocobolo", CARE, "person.extraction=no", ASK),
    "cocobolo, who reacted to its kin": (
        f"{WOOD}; work.material=cocobolo", CARE, "person.reacted_before=[rosewood]", ASK),
    "cocobolo, who reacted to iroko": (f"{WOOD}; work.material=cocobolo", CARE, "person.reacted_before=[iroko]", CARE),
    "cocobolo, asthma": (f"{WOOD}; work.material=cocobolo", CARE, "person.asthma=yes", ASK),
    "purpleheart, who reacted to another of the pea family": (
        f"{WOOD}; work.material=purpleheart", GO, "person.reacted_before=[rosewood]", GO),
    "beech with dust control, unsaid": (f"{WOOD}; work.material=American beech", CARE, "person.extraction=", CARE),
    "red cedar, asthma": (f"{WOOD}; work.material=western redcedar", CARE, "person.asthma=yes", ASK),
    "yew, who reacted to yew": (f"{WOOD}; work.material=yew", ASK, "person.reacted_before=[yew]", NO),
    "birch, who reacted to its kin": (
        f"{WOOD}; work.material=yellow birch", GO, "person.reacted_before=[black willow]", CARE),
    "acrylic sound, crazed": ("PLASTIC", CARE, "work.condition=[stress-crazed]", NO),
    "acrylic warm, with extraction, without": ("PLASTIC", CARE, "person.extraction=no", CARE),
    "acetal from the rod, a plastic nobody can name": (
        "PLASTIC; work.material=acetal", GO, "work.material=unknown plastic", ASK),
    "polyethylene named, plastic": ("PLASTIC; work.material=hdpe", GO, "work.material=plastic", ASK),
    "nylon, PTFE": ("PLASTIC; work.material=nylon", GO, "work.material=ptfe", CARE),
    "PTFE clean, a nail in it": ("PLASTIC; work.material=ptfe", CARE, "work.condition=[nails]", NO),
    "celluloid small with water, with a powder extinguisher": (
        "PLASTIC; work.material=celluloid; work.diameter=20mm; machine.extinguisher=water",
        ASK, "machine.extinguisher=powder", NO),
    "celluloid small, large": (
        "PLASTIC; work.material=celluloid; work.diameter=20mm; machine.extinguisher=water",
        ASK, "work.diameter=60mm", NO),
    "casein dry, flooded": ("PLASTIC; work.material=casein; work.moisture=dry", CARE, "cut.cooling=wet", NO),
    "epoxy cured, fresh": (
        f"{SHEET}; work.material=epoxy casting; work.tested=yes", CARE, "work.condition=[uncured]", NO),
    "epoxy cured, cure unsaid": (f"{SHEET}; work.material=epoxy casting; work.tested=yes", CARE, "work.tested=", ASK),
    "epoxy, asthma": (f"{SHEET}; work.material=epoxy casting; work.tested=yes", CARE, "person.asthma=yes", ASK),
    "epoxy, who reacted to epoxy": (
        f"{SHEET}; work.material=epoxy casting; work.tested=yes", CARE, "person.reacted_before=[epoxy casting]", ASK),
    "wood in resin cured, cure unsaid": (
        f"{SHEET}; work.material=wood and resin; work.condition=[sound]", CARE, "work.condition=", ASK),
    "wood in resin sound, a void": (
        f"{SHEET}; work.material=wood and resin; work.tested=yes", CARE, "work.condition=[void]", ASK),
    "canvas phenolic with extraction, without": (
        f"{SHEET}; work.material=canvas phenolic", CARE, "person.extraction=no", NO),
    "canvas phenolic, extraction unsaid": (f"{SHEET}; work.material=canvas phenolic", CARE, "person.extraction=", ASK),
    "canvas phenolic P3, a bare face": (f"{SHEET}; work.material=canvas phenolic", CARE, "person.respirator=none", ASK),
    "canvas phenolic, laminate nobody can name": (
        f"{SHEET}; work.material=canvas phenolic", CARE, "work.material=unknown laminate", ASK),
    "canvas phenolic, asthma": (f"{SHEET}; work.material=canvas phenolic", CARE, "person.asthma=yes", ASK),
    "glass laminate masked, a bare face": (f"{SHEET}; work.material=glass epoxy", CARE, "person.respirator=none", NO),
    "glass laminate masked, mask unsaid": (f"{SHEET}; work.material=glass epoxy", CARE, "person.respirator=", ASK),
    "glass laminate, asbestos laminate": (
        f"{SHEET}; work.material=glass epoxy", CARE, "work.material=asbestos laminate", NO),
    "board small, large": (f"{SHEET}; work.material=mdf", CARE, "work.diameter=250mm", NO),
    "board with extraction, without": (f"{SHEET}; work.material=mdf", CARE, "person.extraction=no", NO),
    "plywood sound, a void": ("PLASTIC; work.material=plywood", CARE, "work.condition=[void]", ASK),
    "bone cleaned, raw": (f"{ROCK}; work.material=bone; work.raw=no", CARE, "work.raw=yes", NO),
    "bone cleaned, nobody said": (f"{ROCK}; work.material=bone; work.raw=no", CARE, "work.raw=", ASK),
    "bone with extraction, without": (f"{ROCK}; work.material=bone; work.raw=no", CARE, "person.extraction=no", ASK),
    "horn prepared, raw": (f"{ROCK}; work.material=horn; work.raw=no", CARE, "work.raw=yes", NO),
    "antler, ivory": (f"{ROCK}; work.material=antler; work.raw=no", CARE, "work.material=elephant ivory", NO),
    "pearl wet, dry": (
        f"{ROCK}; work.material=mother of pearl; work.raw=no; cut.cooling=wet", CARE, "cut.cooling=dry", NO),
    "pearl wet, nobody said": (
        f"{ROCK}; work.material=mother of pearl; work.raw=no; cut.cooling=wet", CARE, "cut.cooling=", ASK),
    "soapstone tested, untested": (
        f"{ROCK}; work.material=soapstone; cut.cooling=wet", CARE, "work.tested=no", NO),
    "soapstone tested, nobody said": (f"{ROCK}; work.material=soapstone; cut.cooling=wet", CARE, "work.tested=", ASK),
    "soapstone wet, dry": (f"{ROCK}; work.material=soapstone; cut.cooling=wet", CARE, "cut.cooling=dry", NO),
    "soapstone, unnamed stone": (
        f"{ROCK}; work.material=soapstone; cut.cooling=wet; work.tested=no", NO, "work.material=unknown stone", NO),
    "alabaster with extraction, without": (ROCK, CARE, "person.extraction=no", NO),
    "alabaster, marble": (ROCK, CARE, "work.material=marble", NO),
    "alabaster whole, glued to a nail": (ROCK, CARE, "work.parts=[alabaster, lead]", NO),
    "nut dry, wet": (f"{WOOD}; work.material=tagua nut", CARE, "work.moisture=wet", NO),
    "nut dry, damp": (f"{WOOD}; work.material=tagua nut", CARE, "work.moisture=40%", NO),
    "brass for a bush, for food": ("PLASTIC; work.material=brass", CARE, "work.use=food", ASK),
    "bronze with its number, without": ("PLASTIC; work.material=bronze; work.tested=yes", CARE, "work.tested=no", NO),
    "bronze with its number, nobody said": (
        "PLASTIC; work.material=bronze; work.tested=yes", CARE, "work.tested=", ASK),
    "brass, metal nobody can name": ("PLASTIC; work.material=brass", CARE, "work.material=unknown metal", NO),
    "aluminum, magnesium": ("PLASTIC; work.material=aluminum", CARE, "work.material=magnesium", ASK),
    "magnesium with class D, with water": (
        "PLASTIC; work.material=magnesium; machine.extinguisher=class-D", ASK, "machine.extinguisher=water", NO),
    "two woods tested, untested": (
        f"{WOOD}; work.parts=[sugar maple, black walnut]; work.tested=yes", CARE, "work.tested=", ASK),
    "two woods, one of them poison": (
        f"{WOOD}; work.parts=[sugar maple, black walnut]; work.tested=yes",
        CARE, "work.parts=[sugar maple, oleander]", NO),
    "two woods, one nobody knows": (
        f"{WOOD}; work.parts=[sugar maple, black walnut]; work.tested=yes",
        CARE, "work.parts=[sugar maple, flubber]", ASK),
}  # fmt: skip
VERDICTS = [(text, verdict) for first, before, change, after in PAIRS.values() for text, verdict in (
    (first, before), (f"{first}; {change}", after))]  # fmt: skip


@pytest.mark.parametrize(("first", "before", "change", "after"), PAIRS.values(), ids=PAIRS)
def test_one_change_moves_the_verdict_as_everybody_would(first: str, before: str, change: str, after: str) -> None:
    assert advice(first).verdict == before
    assert advice(f"{first}; {change}").verdict == after


def test_there_are_enough_of_them_and_enough_may_go() -> None:
    situations = dict(VERDICTS)
    assert len(situations) >= 80
    assert sum(verdict in (GO, CARE) for verdict in situations.values()) >= 15
    assert {GO, CARE, ASK, NO} == set(situations.values())
    assert sum(before != after for _, before, _, after in PAIRS.values()) >= 60


@pytest.mark.parametrize("text", dict(VERDICTS))
def test_a_worse_verdict_has_a_reason_and_a_next_step(text: str) -> None:
    found = advice(text)
    reasons = [ruling for ruling in found.rulings if ruling.rule.effect.value == found.verdict]
    assert reasons or found.verdict == GO
    if found.verdict in (ASK, NO):
        assert any(ruling.remedy for ruling in reasons)
