"""Case -> situation: every silence filled, every filling listed."""

from typing import NamedTuple

from advisor.figure import Spread
from advisor.models import material as materials
from advisor.models import wood as woods
from advisor.models.case import Case
from advisor.models.material_names import Named, named
from advisor.situation.assumption import Assumption, Ledger
from advisor.situation.cut import Cut, settle_cut
from advisor.situation.lathe import Lathe, settle_lathe
from advisor.situation.shape import CHECKS, Body, Traits, settle_body

GREEN_FORMS = frozenset({"log", "half-log", "slab", "irregular"})
ACROSS_FORMS = frozenset({"disc", "slab", "half-log"})
ACROSS_PURPOSES = frozenset({"bowl", "platter"})
OPERATION_BY_STATE = {"not-round": "roughing", "round": "shaping", "finished": "finishing"}
# Density kg/m³ of a lump nobody can name and that may be stone or metal: memory, from pumice-light resin to granite.
UNNAMED_DENSITY = Spread(900.0, 1400.0, 2700.0)
STRESS = " MPa"
NO_STRESS = {"gravity": "", "density": " kg/m³", "modulus": " GPa", "modulus_perpendicular": " GPa", "hardness": " N"}


class Situation(NamedTuple):
    """One job with nothing left open.

    `wood` is None for anything that is not wood; `material` is None for wood and for names nobody knows.
    `stated_moisture` is what somebody said, in a field or in the name.
    `match` is "one", "several", "unknown" (the person said so), "material" or "none".
    """

    case: Case
    wood: woods.WoodProperties | None
    choices: tuple[str, ...]
    names: tuple[str, ...]
    material: materials.Material | None
    match: str
    traits: Traits
    body: Body
    density: Spread
    moisture: float
    stated_moisture: float | str | None
    operation: str
    cut: Cut
    lathe: Lathe
    assumed: tuple[Assumption, ...]
    gaps: tuple[tuple[str, str], ...]

    @property
    def moisture_word(self) -> str:
        """The word somebody used for it, "given" for a number, "unknown" when nobody said."""
        said = self.stated_moisture
        return said if isinstance(said, str) else "unknown" if said is None else "given"

    @property
    def side_grain(self) -> bool:
        """Fibers across the axis, as in a bowl blank."""
        return self.traits.grain == "across"

    @property
    def trued(self) -> bool:
        """Turned round already."""
        return self.traits.state != "not-round"

    @property
    def purpose(self) -> str:
        """What it is to become, "unknown" when nobody said."""
        return self.case.work.purpose or "unknown"

    @property
    def reversed_piece(self) -> bool:
        """A finished bowl, platter or box, turned about to clear its foot."""
        finished = self.traits.state == "finished"
        return finished and (self.purpose in ("bowl", "platter", "box") or self.traits.grain == "across")


def _words(case: Case, ledger: Ledger) -> tuple[str, str, str]:
    work = case.work
    form, state, grain = work.form, work.state, work.grain
    if form is None:
        form = "irregular"
        ledger.assume("work.form", form, "the shape was not given: the worst of them")
    if state is None:
        state = "not-round"
        ledger.assume("work.state", state, "not said to be round")
    if grain is None:
        across = form in ACROSS_FORMS or (work.purpose or "") in ACROSS_PURPOSES
        grain = "across" if across else "along"
        ledger.assume("work.grain", grain, "as this shape or purpose usually runs")
    return form, state, grain


def _conditions(case: Case) -> frozenset[str]:
    found = set(case.work.condition or ())
    if case.work.crack is not None and not found & CHECKS:
        found.add("crack")
    crack = case.work.crack
    if crack is not None and crack.across is not None and crack.across >= case.work.diameter:
        found.add("through-crack")
    return frozenset(found)


def _moisture(case: Case, said: str | None, form: str, conditions: frozenset[str], ledger: Ledger) -> float | str:
    given = case.work.moisture
    if given is not None:
        return given
    if said is not None:
        ledger.assume("work.moisture", said, "the name says so")
        return said
    wet = form in GREEN_FORMS or "live-edge" in conditions
    word = "green" if wet else "12 %"
    ledger.assume("work.moisture", word, "ordinary for this shape" if not wet else "a log-like piece may well be wet")
    return "green" if wet else 12.0


def _tell(meant: Named, ledger: Ledger) -> None:
    """List what was made of a name that does not say all."""
    if meant.match == "several":
        ledger.assume("work.material", meant.word, "the name fits several woods: the worst of them")
    elif meant.match == "several-materials":
        ledger.assume("work.material", meant.word, "the name fits several materials: the most troublesome of them")
    elif meant.match == "one" and meant.found.note:
        ledger.assume("work.material", meant.found.woods[0].label, meant.found.note)


def _tell_filled(wood: woods.WoodProperties, ledger: Ledger) -> None:
    for name in wood.filled:
        value = getattr(wood, name)
        if isinstance(value, Spread):  # shrinkage is a plain number and decides nothing here
            ledger.assume(f"wood.{name}", f"{value.low:.3g}{NO_STRESS.get(name, STRESS)}", wood.origins[name].text)


def settle(case: Case) -> Situation:
    """Fill every silence of a case with the stated defaults and list them.

    The defaults are those of ordinary practice at its worst; a value the person gave is never changed.
    """
    ledger = Ledger()
    form, state, grain = _words(case, ledger)
    meant = named(case.work.material)
    _tell(meant, ledger)
    conditions = _conditions(case) | meant.said
    found, material = meant.found, meant.records[0] if meant.records else None
    match = "unknown" if meant.match == "dust-only" else meant.match
    wood = None
    moisture: float | str = 12.0
    if material is None and match != "none":
        moisture = _moisture(case, meant.moisture, form, conditions, ledger)
        wood = woods.properties(found, moisture)
        _tell_filled(wood, ledger)
    density = wood.density if wood is not None else UNNAMED_DENSITY if material is None else material.density
    green = wood.green if wood is not None else False
    traits = Traits(form, grain, state, conditions, green)
    body = settle_body(case, traits, density, ledger)
    operation: str | None = case.cut.operation
    if operation is None:
        operation = OPERATION_BY_STATE[state]
        ledger.assume("cut.operation", operation, f"the usual work on a piece that is {state}")
    if case.hold.overhang is None:
        ledger.assume("hold.overhang", f"{body.length:.4g} mm", "the whole length stands out of the hold")
    return Situation(
        case=case,
        wood=wood,
        choices=tuple(choice.label for choice in found.woods) if match == "several" else found.suggestions,
        names=tuple(name for choice in found.woods for name in (choice.label, choice.botanical) if name),
        material=material,
        match=match,
        traits=traits,
        body=body,
        density=density,
        moisture=wood.moisture_percent if wood is not None else 0.0,
        stated_moisture=meant.moisture if case.work.moisture is None else case.work.moisture,
        operation=operation,
        cut=settle_cut(case, traits, body, wood, material, operation, ledger),
        lathe=settle_lathe(case, body, ledger),
        assumed=tuple(ledger.assumed),
        gaps=tuple(ledger.gaps),
    )
