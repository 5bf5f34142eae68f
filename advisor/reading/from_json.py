"""JSON as texts with their places, repeated names kept so that they can be refused."""

import json
import re
from bisect import bisect_right

from advisor.reading.nodes import DEEPEST, Entry, Fields, Listing, Node, Scalar
from advisor.reading.problems import InputFault, Place, fault

SIGN = re.compile(r"[^ \t\r\n]")
STRING = re.compile(r'"(?:[^"\\\x00-\x1f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"')
PLAIN = re.compile(r"-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][-+]?[0-9]+)?|true|false|null")


class _Reader:
    """Reads one JSON value after the other."""

    def __init__(self, text: str, name: str) -> None:
        self.text = text
        self.name = name
        self.at = 0
        self.starts = [0, *(match.end() for match in re.finditer("\n", text))]

    def place(self) -> Place:
        line = bisect_right(self.starts, self.at)
        return Place(self.name, line, self.at - self.starts[line - 1] + 1)

    def wrong(self, wanted: str) -> InputFault:
        given = self.text[self.at : self.at + 20].split("\n")[0]
        return fault(self.place(), "is not JSON here", wanted, given or "the end of the text")

    def skip(self) -> str:
        """The next sign that is no space, empty at the end."""
        match = SIGN.search(self.text, self.at)
        self.at = match.start() if match else len(self.text)
        return self.text[self.at : self.at + 1]

    def sign(self, allowed: str) -> str:
        found = self.skip()
        if not found or found not in allowed:
            raise self.wrong(" or ".join(allowed))
        self.at += 1
        return found

    def string(self) -> str:
        match = STRING.match(self.text, self.at)
        if match is None:
            raise self.wrong("a text in double quotes, closed on its line")
        self.at = match.end()
        return str(json.loads(match.group()))

    def value(self, depth: int = 0) -> Node:
        first, place = self.skip(), self.place()
        if depth > DEEPEST:
            raise fault(place, "goes too deep", f"at most {DEEPEST} levels")
        if first == "{":
            return self.fields(Fields(place), depth)
        if first == "[":
            return self.listing(Listing(place), depth)
        if first == '"':
            return Scalar(self.string(), place)
        match = PLAIN.match(self.text, self.at)
        if match is None:
            raise self.wrong("a text in double quotes, a number, true, false, a list or fields")
        self.at = match.end()
        return Scalar(None if match.group() == "null" else match.group(), place)

    def fields(self, node: Fields, depth: int) -> Fields:
        self.at += 1
        if self.skip() == "}":
            self.at += 1
            return node
        more = ","
        while more == ",":
            self.skip()
            place, name = self.place(), self.string()
            self.sign(":")
            node.entries.append(Entry(name, place, self.value(depth + 1)))
            more = self.sign(",}")
        return node

    def listing(self, node: Listing, depth: int) -> Listing:
        self.at += 1
        if self.skip() == "]":
            self.at += 1
            return node
        more = ","
        while more == ",":
            node.items.append(self.value(depth + 1))
            more = self.sign(",]")
        return node


def tree(text: str, name: str) -> Node:
    """The tree of a JSON text. Raises InputFault: no JSON, too deep, something behind it."""
    reader = _Reader(text, name)
    node = reader.value()
    if reader.skip():
        raise reader.wrong("nothing more: one case in a file")
    return node
