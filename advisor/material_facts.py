"""What a piece is made of -> flat facts for the rules: its names, records, hazards, refusals and needs.

Words only. Nothing here weighs one word against another and nothing compares a figure with a threshold: rules do.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from advisor.engine import Fact
from advisor.facts import Value, family, flag, known
from advisor.models import hazards
from advisor.models import material as materials
from advisor.models.hazards import Hazard
from advisor.models.material_names import Named, names_of
from advisor.models.questions import first_steps
from advisor.models.substance import Material
from advisor.situation import Situation
from advisor.situation.shape import CHECKS, SOFT_WOOD

# Needs that a refusal of the same record asks for already.
ASKED_BY = {
    "extraction": "no-extraction",
    "P2": "no-respirator",
    "P3": "no-respirator",
    "water": "no-water",
    "sound-hold": "soft-hold",
}
NEEDS_OF_A_MATERIAL = ("extraction", "P2", "P3", "skin", "covered-ways", "sound-hold", "water")
NEEDS_OF_A_CONDITION = ("extraction", "P2", "P3", "skin")
# What a name says of itself ("treated pine"); other words of a condition stand in work.condition.
REFUSALS_IN_A_NAME = frozenset({"always", "painted"})
SPARKING = frozenset({"nails", "grit"})
IRON = frozenset({"mild-steel", "stainless-steel", "cast-iron"})
HOLES = frozenset({"void", "worm-holes", "bark-inclusion"})
PROOFS = frozenset({"untested", "provenance"})
RESINS = frozenset({"resin", "hybrid", "laminate"})


def controls(situation: Situation) -> tuple[str, str]:
    """Dust control stated as present, and stated as absent: each yes or no."""
    person = situation.case.person
    mask = person.respirator
    stated = person.extraction is True and mask not in (None, "none")
    return flag(stated), flag(person.extraction is False or mask == "none")


def _nearness(reacted: Iterable[str], *names: str) -> str:
    """How near the wood stands to one the person reacted to: same, near, distant or no.

    The pea family is too wide to say much: two of its woods that share neither genus nor allergen are distant.
    """
    found = [entry for word in reacted for entry in hazards.cross_reactions(word, *names)]
    order = ("same", "near", "distant")
    words = ["same" if one.closeness == "same" else "distant" if one.distant else "near" for one in found]
    return min(words, key=order.index, default="no")


def hazard(situation: Situation, entry: Hazard) -> Fact:
    """One known hazard of a wood against this person."""
    person = situation.case.person
    stated, refused = controls(situation)
    values: dict[str, Value | None] = {
        "tier": entry.tier,
        "lung": flag(entry.lung_sensitizer),
        "reacted": _nearness(person.reacted_before or (), entry.id),
        "asthma": flag(person.asthma),
        "stated": stated,
        "refused": refused,
        "use": situation.case.work.use or "unknown",
        "troubling": flag(entry.toxic_or_sensitizing),
    }
    words = {"wood": entry.title, "effects": ", ".join(entry.effect_words), "control": entry.control}
    return Fact("hazard", known(values), words)


def _reacted_to(record: Material, reacted: Iterable[str]) -> str:
    """same, near (another resin when one resin did it) or no."""
    found = [entry for word in reacted for entry in materials.resolve(word).records]
    if any(entry.id == record.id for entry in found):
        return "same"
    resin = record.family in RESINS and record.toxic_or_sensitizing
    return "near" if resin and any(entry.family in RESINS for entry in found) else "no"


def _within(title: str) -> str:
    """A title in the middle of a sentence; one that begins with capitals keeps them."""
    return title if title[1:2].isupper() else title[:1].lower() + title[1:]


def _words(record: Material) -> dict[str, str]:
    law = "law" in record.hazards
    return {
        "title": record.title,
        "thing": _within(record.title),
        "why": record.never if law else record.dust or record.never,
        "step": record.next_step[:1].upper() + record.next_step[1:],
        "fails_by": record.fails_by,
        "never": record.never,
        "next_step": record.next_step,
        "ask_whom": record.ask_whom,
        "fire": record.fire or "its dust burns",
        "extinguisher": record.extinguisher or "water",
    }


def material(situation: Situation, record: Material) -> Fact:
    """What the record of a material outside wood says by itself, and to this person."""
    case = situation.case
    values: dict[str, Value] = {
        "verdict": record.verdict,
        "family": record.family,
        "always": flag("always" in record.refuse_when),
        "proof": flag(bool(PROOFS & set(record.refuse_when))),
        "tested": flag(case.work.tested),
        "lung": flag(record.lung_sensitizer),
        "asthma": flag(case.person.asthma),
        "troubling": flag(record.toxic_or_sensitizing),
        "use": case.work.use or "unknown",
        "reacted": _reacted_to(record, case.person.reacted_before or ()),
    }
    return Fact("material", values, _words(record))


def _cured(situation: Situation) -> str:
    """yes where a test or a sound piece was stated, no where it is uncured, else unknown."""
    found = situation.traits.conditions
    if "uncured" in found:
        return "no"
    return "yes" if situation.case.work.tested is True or "sound" in found else "unknown"


def _stated(situation: Situation, named: Iterable[Named]) -> dict[str, Value | None]:
    """The words of the case that a refusal may hang on."""
    case, found = situation.case, situation.traits.conditions
    moisture = situation.stated_moisture
    iron = any(record.id in IRON for one in named for record in one.records)
    return {
        "raw": flag(case.work.raw),
        "tested": flag(case.work.tested),
        "cured": _cured(situation),
        "cooling": case.cut.cooling or "unknown",
        "extraction": flag(case.person.extraction),
        "respirator": case.person.respirator or "unknown",
        "extinguisher": case.machine.extinguisher or "unknown",
        "method": case.hold.method or "unknown",
        "moisture": situation.moisture_word,
        "moisture_percent": None if isinstance(moisture, str) else moisture,
        "sparks": "yes" if iron or found & SPARKING else "unknown",
        "sound": flag("sound" in found),
        "crazed": flag("stress-crazed" in found),
        "cracked": flag(bool(found & CHECKS)),
        "soft": flag(bool(found & SOFT_WOOD)),
        "void": flag(bool(found & HOLES)),
        "form": situation.traits.form,
        "diameter_mm": situation.body.diameter,
    }


def refusals(record: Material, stated: Mapping[str, Value | None], tokens: Iterable[str]) -> list[Fact]:
    """One fact for each reason to refuse this material; where it is never turned, that one alone."""
    found = ["always"] if "always" in tokens else list(tokens)
    return [
        Fact(
            "refusal",
            known({"token": token, "hard": flag(token in record.hard), "family": record.family, **stated}),
            _words(record),
        )
        for token in found
    ]


def needs(situation: Situation, asked: Mapping[str, Material]) -> list[Fact]:
    """One fact for each control that the piece asks for, in the name of the material that asks it first."""
    person = situation.case.person
    mask = next((level for level in ("P3", "P2") if level in asked), "none")
    tokens = [token for token in asked if not (token == "P2" and mask == "P3")]
    return [
        Fact(
            "need",
            {
                "token": token,
                "mask": mask,
                "extraction": flag(person.extraction),
                "respirator": person.respirator or "unknown",
            },
            _words(asked[token]),
        )
        for token in tokens
    ]


def _conditions(situation: Situation, named: Iterable[Named]) -> list[Material]:
    """Records of the stated conditions of wood, and of those that a name itself states."""
    if situation.wood is None:
        return [record for one in named for record in one.spoken]
    stated = [materials.condition(word) for word in sorted(situation.traits.conditions)]
    found = [record for record in stated if record is not None and record.is_wood]
    return [*found, *(record for one in named for record in one.spoken if record not in found)]


def _asked(situation: Situation, named: Iterable[Named]) -> dict[str, Material]:
    """Each control asked for, and who asks first."""
    asked: dict[str, Material] = {}
    pieces = [record for one in named for record in one.records]
    for record in [*pieces, *_conditions(situation, named)]:
        wanted = NEEDS_OF_A_CONDITION if record.is_wood else NEEDS_OF_A_MATERIAL
        if "always" in record.refuse_when:
            continue
        for token in record.needs:
            if token in wanted and ASKED_BY.get(token) not in record.refuse_when:
                asked.setdefault(token, record)
    return asked


def _name(situation: Situation, named: Named) -> Fact:
    """What a name of the case can mean."""
    reacted = situation.case.person.reacted_before or ()
    near = _nearness(reacted, *named.woods) != "no"
    near = near or any(_reacted_to(record, reacted) != "no" for record in named.records)
    found = situation.traits.conditions
    values: dict[str, Value] = {
        "match": named.match,
        "reacted": "unrelated" if reacted and not near else "related" if reacted else "no",
        "controlled": controls(situation)[0],
        "faulty": flag(bool(found - {"sound"})),
        "crack": flag("crack" in found),
        "diameter_mm": situation.body.diameter,
    }
    words = {
        "material": named.word,
        "choices": "; ".join(named.choices),
        "nearest": f" Nearest names: {', '.join(named.suggestions[:4])}." if named.suggestions else "",
        "questions": first_steps(named.first_question),
        "reacted_to": ", ".join(reacted),
    }
    return Fact("name", values, words)


def _joint(situation: Situation, named: list[Named]) -> list[Fact]:
    """The joint of a piece of several materials; a casting of wood and resin has that in its own record."""
    cast = any(record.family == "hybrid" for record in named[0].records)
    if len(situation.case.work.parts or ()) < 2 or cast:
        return []
    words = {"parts": ", ".join(situation.case.work.parts or ())}
    return [Fact("joint", {"tested": flag(situation.case.work.tested)}, words)]


def _shop(situation: Situation, record: Material | None) -> Fact:
    """What the chips and the dust do to the shop and the machine."""
    traits = set(record.hazards) if record is not None else set()
    values: dict[str, Value] = {
        "family": record.family if record is not None else family(situation),
        "wet": flag(situation.traits.green),
        "operation": situation.operation,
        "extinguisher": situation.case.machine.extinguisher or "unknown",
        "burns": flag(bool(traits & {"fire", "explosible-dust"})),
        "conducts": flag("conductive-dust" in traits),
    }
    return Fact("shop", values, _words(record) if record is not None else {})


def _tool(situation: Situation, record: Material | None) -> Fact:
    """The cutting tool against the material: how thin its chip is, and what it is made of."""
    cut = situation.case.cut
    steel = record is None or record.surface_speed_steel is not None or record.surface_speed_carbide is None
    values: dict[str, Value | None] = {
        "tool": cut.tool or "unknown",
        "tool_material": cut.tool_material or "unknown",
        "family": record.family if record is not None else family(situation),
        "flares": flag(record is not None and "no-class-D" in record.refuse_when),
        "steel_cuts": flag(steel),
        "chip_mm": cut.feed,
    }
    return Fact("tool", known(values), _words(record) if record is not None else {})


def facts_of_materials(situation: Situation) -> list[Fact]:
    """Every fact about what the piece and its parts are made of."""
    named = names_of(situation.case.work.material, situation.case.work.parts or ())
    stated = _stated(situation, named)
    found = [_name(situation, one) for one in named]
    records = list({record.id: record for one in named for record in one.records}.values())
    for record in records:
        found.append(material(situation, record))
        found += refusals(record, stated, [token for token in record.refuse_when if token != "asthma"])
    spoken = [(token, record) for one in named for record in one.spoken for token in record.refuse_when]
    for token, record in dict(reversed(spoken)).items():  # the first record speaks for each token
        found += refusals(record, stated, [token] if token in REFUSALS_IN_A_NAME else [])
    found += needs(situation, _asked(situation, named))
    rows = dict.fromkeys(entry for one in named for entry in hazards.for_species(*one.woods))
    found += [hazard(situation, entry) for entry in rows]
    found += _joint(situation, named)
    shops: list[Material | None] = [*records] or [None]
    found += [_shop(situation, record) for record in shops]
    return [*found, *(_tool(situation, record) for record in shops)]
