"""Everyday situations for the tests of the rules, and what fires on them with one thing changed."""

from functools import lru_cache

from advisor.advice import advise
from advisor.advice.advise import Advice, default_engine
from advisor.advice.trial import Remembering
from advisor.engine import Engine
from advisor.reading import read_case
from advisor.rulebook.rule import SILENT

PERSON = ["person.extraction=yes", "person.respirator=P2"]
LATHE = ["machine.kind=wood-lathe", "machine.mass=150kg", "machine.nose=cam-lock", "machine.min_rpm=50"]
METAL = ["machine.kind=metal-lathe", "machine.mass=600kg", "machine.nose=cam-lock", "machine.min_rpm=50"]
DRY = ["work.moisture=12%"]
MAPLE = ["work.material=sugar maple", *DRY]
BASES = {
    "SPINDLE": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=square",
        "work.diameter=3in",
        "work.length=12in",
        "work.grain=along",
        "work.state=not-round",
        "work.purpose=spindle",
    ],
    "BOWL": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=disc",
        "work.diameter=10in",
        "work.length=4in",
        "work.grain=across",
        "work.state=not-round",
        "work.purpose=bowl",
    ],
    "METALBOWL": [
        *MAPLE,
        *METAL,
        *PERSON,
        "work.form=disc",
        "work.diameter=10in",
        "work.length=4in",
        "work.grain=across",
        "work.state=not-round",
        "work.purpose=bowl",
    ],
    "PLATTER": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=disc",
        "work.diameter=12in",
        "work.length=30mm",
        "work.grain=across",
        "work.state=finished",
        "work.purpose=platter",
        "cut.operation=finishing",
        "hold.method=jaws-in-recess",
        "hold.recess.diameter=75mm",
        "hold.recess.depth=4mm",
        "hold.recess.wall=37mm",
    ],
    "HOLLOW": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=round",
        "work.diameter=5in",
        "work.length=8in",
        "work.grain=along",
        "work.state=round",
        "work.purpose=hollow-form",
        "cut.operation=hollowing",
    ],
    "KNOB": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=square",
        "work.diameter=2in",
        "work.length=2in",
        "work.grain=along",
        "work.state=not-round",
        "work.purpose=knob",
    ],
    "ROD": [
        *MAPLE,
        *METAL,
        *PERSON,
        "work.form=round",
        "work.diameter=25mm",
        "work.length=120mm",
        "work.grain=along",
        "work.state=round",
        "work.purpose=handle",
    ],
    "DISC": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=disc",
        "work.diameter=100mm",
        "work.length=12mm",
        "work.grain=across",
        "work.state=round",
        "work.purpose=other",
    ],
    "BALL": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=sphere",
        "work.diameter=60mm",
        "work.length=60mm",
        "work.grain=along",
        "work.state=round",
        "work.purpose=sphere",
        "cut.operation=finishing",
    ],
    "PEN": [
        *MAPLE,
        *LATHE,
        *PERSON,
        "work.form=tube",
        "work.diameter=16mm",
        "work.length=60mm",
        "work.wall=4mm",
        "work.grain=along",
        "work.state=round",
        "work.purpose=pen",
        "hold.method=mandrel",
    ],
    "PLASTIC": [
        *METAL,
        *PERSON,
        "work.material=acrylic",
        "work.form=round",
        "work.diameter=40mm",
        "work.length=80mm",
        "work.grain=none",
        "work.state=round",
    ],
    "STONE": [
        *METAL,
        *PERSON,
        "work.material=alabaster",
        "work.form=disc",
        "work.diameter=100mm",
        "work.length=60mm",
        "work.grain=none",
        "work.state=round",
        "work.tested=yes",
    ],
    "THIN": [
        "work.material=American beech",
        *DRY,
        *PERSON,
        "work.form=round",
        "work.diameter=12mm",
        "work.length=300mm",
        "work.thinnest_diameter=10mm",
        "work.grain=along",
        "work.state=round",
        "cut.operation=finishing",
        "cut.force=15N",
        "hold.method=spur-drive",
        "hold.drive.teeth=4",
        "hold.drive.outer_diameter=10mm",
        "hold.drive.inner_diameter=4mm",
        "hold.drive.face_angle=30deg",
        "hold.drive.back_angle=30deg",
        "hold.drive.seated_depth=0mm",
        "hold.tail.kind=live-point",
        "hold.tail.point_angle=60deg",
    ],
    "NARROW": [
        "work.material=American beech",
        *DRY,
        *PERSON,
        "work.form=round",
        "work.diameter=25mm",
        "work.length=600mm",
        "work.grain=along",
        "work.state=round",
        "cut.operation=finishing",
        "cut.force=30N",
        "hold.method=spur-drive",
        "hold.drive.teeth=4",
        "hold.drive.outer_diameter=25mm",
        "hold.drive.inner_diameter=10mm",
        "hold.drive.face_angle=30deg",
        "hold.drive.back_angle=30deg",
        "hold.drive.seated_depth=0mm",
        "hold.tail.kind=live-point",
        "hold.tail.point_angle=60deg",
    ],
}
BASES["HOLLOWING"] = [*BASES["BOWL"], "work.state=round", "cut.operation=hollowing", "hold.method=jaws-on-tenon"]
BASES["TAPETALL"] = [*BASES["DISC"], "hold.method=double-sided-tape", "work.length=40mm"]
BASES["LONGHOLD"] = [*BASES["HOLLOW"], "hold.method=jaws-on-tenon", "work.length=14in", "hold.tenon.diameter=90mm"]


def words_of(text: str) -> list[str]:
    """`BASE; field=value; ...` -> the words of the case, later ones instead of earlier ones."""
    base, *changes = [part.strip() for part in text.split(";")]
    fields = {word.partition("=")[0]: word for word in BASES[base]}
    for change in changes:
        key, _, value = change.partition("=")
        if value:
            fields[key] = change
        else:
            fields.pop(key, None)
    return list(fields.values())


@lru_cache(maxsize=1)
def remembering(engine: Engine) -> Remembering:
    """That engine, asked once about each fact: most situations share most of them."""
    return Remembering(engine)


@lru_cache(maxsize=512)
def advice(text: str) -> Advice:
    """The advice on one situation."""
    return advise(read_case(None, words_of(text)), remembering(default_engine()))


def fired(text: str) -> frozenset[str]:
    """Names of the rules that spoke on the work and on the hold in use; of the orders of reach, the one that counts.

    `BASE@method; ...` looks at that method of the ranking instead of the one in use.
    """
    base, at, rest = text.partition("@")
    method, _, changes = rest.partition(";")
    found = advice(f"{base}; {changes}" if at and changes else base if at else text)
    hold = found.judgement.of(method.strip()) if at else found.used
    spoken = [*found.rulings, *hold.rulings, *found.judgement.reach]
    assert all(ruling.text or ruling.rule.effect in SILENT for ruling in spoken if ruling.remedy is not None)
    return frozenset(ruling.rule.name for ruling in spoken)
