"""`field=value` words of a command, alone or over a file."""

from collections.abc import Sequence

from advisor.models.case import Case
from advisor.models.fields import Shape, spec_at
from advisor.reading.fill import unknown
from advisor.reading.nodes import Entry, Fields, Node, Scalar
from advisor.reading.problems import MOST_PRINTED, WORDS, InputFault, Place, Problem

EXAMPLE = 'work.material=ash "work.diameter=10 in" work.condition=[check, pith]'
NESTED = (Shape.LIST, Shape.SECTION)


def lay_over(root: Fields, words: Sequence[str]) -> list[Problem]:
    """Set the fields of the words in a tree, a later word over an earlier one; what is wrong with the words."""
    problems: list[Problem] = []
    for word in words:
        name, equals, text = word.partition("=")
        place = Place(f"the word {word if len(word) <= 60 else word[:59] + '…'}")
        path = tuple(part.strip() for part in name.split("."))
        if not equals:
            problems.append(Problem(*place, "", None, "is not field=value", EXAMPLE))
            continue
        spec = spec_at(Case, path)
        if spec is None:
            above = ".".join(path[:-1]) + "." if len(path) > 1 and spec_at(Case, path[:-1]) else ""
            section = spec_at(Case, path[:-1]) if above else None
            model = section.section if section is not None and section.section is not None else Case
            look = len(problems) < MOST_PRINTED  # the nearest name takes a while to find
            problems.append(unknown(place, above, path[-1] if above else name.strip(), model, look=look))
            continue
        try:
            _put(root, path, place, _node(text, place, spec.shape in NESTED))
        except InputFault:
            message = "cannot be read: brackets open and close, commas between"
            problems.append(Problem(*place, name, text, message, spec.accepted))
    return problems


def _node(text: str, place: Place, nested: bool) -> Node:
    """A value as it stands; with brackets where a list or fields belong, what is in them."""
    if not text.strip():
        return Scalar(None, place)
    if nested and text.strip()[0] in "[{":
        from advisor.reading.from_yaml import tree

        return tree(text, place.file, spot=place)
    return Scalar(text, place)


def _put(root: Fields, path: tuple[str, ...], place: Place, node: Node) -> None:
    """Set a field below a tree. Where the file has a plain value for a section, that stays, to be noted."""
    here = root
    for name in path[:-1]:
        below = here.named(name)
        if below is None or (isinstance(below, Scalar) and below.text is None):
            below = Fields(WORDS)  # what is missing in it is the fault of no one word
            here.put(Entry(name, place, below))
        if not isinstance(below, Fields):
            return
        here = below
    here.put(Entry(path[-1], place, node))
