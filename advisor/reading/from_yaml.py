"""YAML as texts with their places: `no`, `1:30` and `0x10` stay what was typed."""

from collections.abc import Callable
from typing import Any

import yaml

from advisor.reading.nodes import DEEPEST, Entry, Fields, Listing, Node, Scalar
from advisor.reading.problems import Place, fault

NOTHING = ("", "~", "null", "Null", "NULL")
PLAIN_FILE = "fields and values as `work:` and `material: ash` below it"


class _Builder:
    """Puts the tree together from YAML's events, one by one, so depth costs no recursion."""

    def __init__(self, place: Callable[[Any], Place]) -> None:
        self.place = place
        self.open: list[tuple[Listing | Fields, Scalar | None]] = []
        self.root: Node | None = None
        self.documents = 0

    def take(self, event: yaml.Event) -> None:
        place = self.place(event.start_mark)
        self._refuse(event, place)
        if isinstance(event, yaml.ScalarEvent):
            nothing = event.style is None and event.value in NOTHING
            self._add(Scalar(None if nothing else event.value, place))
        elif isinstance(event, yaml.CollectionStartEvent):
            if len(self.open) >= DEEPEST:
                raise fault(place, "goes too deep", f"at most {DEEPEST} levels")
            self._start(Listing(place) if isinstance(event, yaml.SequenceStartEvent) else Fields(place))
        elif isinstance(event, yaml.CollectionEndEvent):
            self.open.pop()

    def _refuse(self, event: yaml.Event, place: Place) -> None:
        if isinstance(event, yaml.DocumentStartEvent):
            self.documents += 1
            if self.documents > 1:
                raise fault(place, "a second document starts here", "one case in a file")
        if isinstance(event, yaml.AliasEvent):
            raise fault(place, "is an alias", "the value itself, written out", f"*{event.anchor}")
        if isinstance(event, yaml.NodeEvent) and event.anchor is not None:
            raise fault(place, "is an anchor", "the value without it", f"&{event.anchor}")
        if isinstance(event, yaml.ScalarEvent | yaml.CollectionStartEvent) and event.tag is not None:
            raise fault(place, "is a tag", "the value without it", event.tag)

    def _start(self, node: Listing | Fields) -> None:
        self._add(node)
        self.open.append((node, None))

    def _add(self, node: Node) -> None:
        if not self.open:
            self.root = node
            return
        above, key = self.open[-1]
        if isinstance(above, Listing):
            above.items.append(node)
        elif key is not None:
            above.entries.append(Entry(key.text or "", key.place, node))
            self.open[-1] = (above, None)
        elif not isinstance(node, Scalar):
            raise fault(node.place, "a list or fields stand where the name of a field belongs", PLAIN_FILE)
        elif node.text == "<<":
            raise fault(node.place, "is a merge key", "the fields themselves, written out", "<<")
        else:
            self.open[-1] = (above, node)


def tree(text: str, name: str, spot: Place | None = None) -> Node:
    """The tree of a YAML text. `spot`, when given, is the place of all of it (a word of the command).

    Raises InputFault: no YAML, several documents, anchors, aliases, merge keys, tags, too deep.
    """

    def place(mark: Any) -> Place:
        if spot is not None:
            return spot
        return Place(name) if mark is None else Place(name, mark.line + 1, mark.column + 1)

    builder = _Builder(place)
    try:
        for event in yaml.parse(text, Loader=yaml.SafeLoader):
            builder.take(event)
    except yaml.MarkedYAMLError as found:
        why = found.problem or found.context or "cannot be read"
        raise fault(place(found.problem_mark or found.context_mark), f"is not YAML: {why}", PLAIN_FILE) from None
    except (yaml.YAMLError, ValueError, OverflowError):  # "\U90110000" is no sign at all
        raise fault(place(None), "is not YAML: it holds characters that no text has", PLAIN_FILE) from None
    return builder.root if builder.root is not None else Scalar(None, Place(name))
