"""From the tree of any format to the values of a case, every problem noted on the way."""

from functools import cache
from typing import Any

from advisor.models.case import Case
from advisor.models.contradictions import contradictions
from advisor.models.fields import Shape, Spec, field_names, specs
from advisor.models.section import Section
from advisor.reading.nodes import Entry, Fields, Listing, Node, Scalar
from advisor.reading.problems import MOST_PRINTED, WORDS, Place, Problem, nearest
from advisor.reading.values import ValueFault, value
from advisor.units import System

EXAMPLES = {
    "work.material": "material: white ash",
    "work.diameter": "diameter: 10 in",
    "work.length": "length: 3 in",
    "work.balance_test.weight": "weight: 50 g",
    "work.balance_test.radius": "radius: 4 in",
    "hold.slip_test.torque": "torque: 5 N-m",
    "hold.slip_test.thrust": "thrust: 600 N",
}


class Filler:
    """Collects values by dotted name, and problems."""

    def __init__(self, bare: System | None) -> None:
        self.bare = bare
        self.problems: list[Problem] = []
        self.found: dict[str, Any] = {}
        self.places: dict[str, Place] = {}

    def note(
        self, place: Place, field: str, given: str | None, message: str, spec: Spec, near: str | None = None
    ) -> None:
        self.problems.append(Problem(*place, field, given, message, spec.accepted, near))

    def section(self, model: type[Section], node: Fields, above: str = "") -> dict[str, Any]:
        """The values of a section; what is wrong with them is noted and left out."""
        values: dict[str, Any] = {}
        seen: set[str] = set()
        for entry in node.entries:
            name = f"{above}{entry.name}"
            spec = specs(model).get(entry.name)
            if spec is None:
                few = len(self.problems) < MOST_PRINTED  # looking for a likeness takes time
                self.problems.append(unknown(entry.place, above, entry.name, model, look=few))
            elif entry.name in seen:
                self.note(entry.place, name, None, "is given twice", spec)
            else:
                self.field(values, entry, name, spec)
            seen.add(entry.name)
        self.missing(model, node.place, seen, above)
        return values

    def missing(self, model: type[Section], place: Place, seen: set[str], above: str) -> None:
        """Note every field that must be there and is not; of a whole missing section, its fields."""
        for name, info in model.declared.items():
            if not info.required or name in seen:
                continue
            spec = specs(model)[name]
            if spec.section is not None:
                self.missing(spec.section, place, set(), f"{above}{name}.")
                continue
            field = f"{above}{name}"
            example = f'"{above}{EXAMPLES[field].replace(": ", "=")}"' if place == WORDS else EXAMPLES[field]
            self.problems.append(Problem(*place, field, None, "is missing", example=example))

    def field(self, values: dict[str, Any], entry: Entry, name: str, spec: Spec) -> None:
        self.places[name] = entry.node.place
        before = len(self.problems)
        found = self.value(entry.node, name, spec)
        if len(self.problems) == before or spec.section is not None:
            values[entry.name] = self.found[name] = found

    def value(self, node: Node, name: str, spec: Spec) -> Any:
        """The value of a node, None where it is noted as a problem."""
        if spec.section is not None:
            return self.below(node, name, spec)
        if spec.shape is Shape.LIST:
            return self.listing(node, name, spec)
        if spec.shape is Shape.PAIR:
            return self.scalar(pair_text(node), name, spec)
        if isinstance(node, Scalar):
            return self.scalar(node, name, spec)
        what = "a list" if isinstance(node, Listing) else "fields of its own"
        self.note(node.place, name, None, f"has {what} where one value belongs", spec)
        return None

    def below(self, node: Node, name: str, spec: Spec) -> Any:
        assert spec.section is not None
        if isinstance(node, Scalar) and node.text is None:
            node = Fields(node.place)
        if isinstance(node, Fields):
            return self.section(spec.section, node, f"{name}.")
        given = node.text if isinstance(node, Scalar) else None
        self.note(node.place, name, given, "stands where fields belong", spec)
        return None

    def listing(self, node: Node, name: str, spec: Spec) -> Any:
        if not isinstance(node, Listing):
            given = node.text if isinstance(node, Scalar) else None
            self.note(node.place, name, given, "stands where a list belongs", spec)
            return None
        assert spec.item is not None
        least, most = spec.size
        if not least <= len(node.items) <= most:
            self.note(node.place, name, None, f"has {len(node.items)} entries", spec)
            return None
        items = tuple(self.value(item, name, spec.item) for item in node.items)
        twice = next((item for number, item in enumerate(items) if item is not None and item in items[:number]), None)
        if spec.item.shape is Shape.WORD and twice is not None:
            self.note(node.place, name, twice, "is listed twice", spec)
        return items

    def scalar(self, node: Scalar, name: str, spec: Spec) -> Any:
        if node.text is None:
            self.note(node.place, name, None, "has no value; give one or leave the line out", spec)
            return None
        try:
            return value(node.text, spec, self.bare)
        except ValueFault as fault:
            self.note(node.place, name, node.text, fault.message, spec, fault.nearest)
            return None

    def contradictions(self) -> list[Problem]:
        """What the values found say against each other."""
        return [
            Problem(*self.places[entry.fields[0]], " and ".join(entry.fields), None, entry.text)
            for entry in contradictions(self.found.get)
        ]


def pair_text(node: Node) -> Scalar:
    """`a:b`, `{a: b}` and `[a, b]` alike, as `a:b`."""
    if isinstance(node, Fields):
        texts = [text for entry in node.entries for text in (entry.name, plain(entry.node))]
    elif isinstance(node, Listing):
        texts = [plain(item) for item in node.items]
    else:
        return node
    return Scalar(":".join(texts) if len(texts) == 2 else f"{len(texts)} values", node.place)


def plain(node: Node) -> str:
    """The text of a node that should be a single one."""
    return (node.text or "") if isinstance(node, Scalar) else "[..]"


def unknown(place: Place, above: str, name: str, model: type[Section], *, look: bool) -> Problem:
    """The problem of a field that does not exist, with the field it may have been meant for."""
    known = ", ".join(model.declared)
    where = f"fields of {above[:-1]}" if above else "fields of a case"
    near = nearest_field(above, name) if look else None
    return Problem(*place, f"{above}{name}"[:100], None, "is not a known field", f"{where}: {known}", near)


@cache
def _all_names() -> tuple[str, ...]:
    return (*Case.declared, *field_names(Case))


def nearest_field(above: str, name: str) -> str | None:
    """The field of that name elsewhere, or the most like it: in the same section first."""
    plain_name = name.casefold().replace("-", "_").replace(" ", "_").rpartition(".")[2]
    beside = {full[len(above) :]: full for full in _all_names() if full.startswith(above)}
    last = {full.rpartition(".")[2]: full for full in reversed(_all_names())}
    for names in ({key: full for key, full in beside.items() if "." not in key}, last):
        if plain_name in names:
            return names[plain_name]
    near = nearest(plain_name, [key for key in beside if "." not in key])
    if near is not None:
        return beside[near]
    near = nearest(plain_name, list(last))
    return last[near] if near is not None else None
