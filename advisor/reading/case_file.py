"""Case files and words of a command -> a case, or every problem with them at once."""

import math
from collections.abc import Mapping, Sequence
from typing import Any, TextIO, TypeVar

from advisor.models.case import Case
from advisor.models.fields import specs
from advisor.models.section import Section
from advisor.reading.files import Format, text_of_bytes, text_of_file, text_of_stream
from advisor.reading.fill import Filler
from advisor.reading.nodes import Fields, Node, Scalar
from advisor.reading.problems import WORDS, InputFault, Place, Problem, fault
from advisor.reading.words import EXAMPLE, lay_over
from advisor.units import System

Part = TypeVar("Part", bound=Section)


def read_case(path: str | None, words: Sequence[str] = (), stdin: TextIO | None = None) -> Case:
    """A case from a file (`-`: standard input), from `field=value` words, or from words over a file.

    Raises InputFault with every problem: file, line, column, field, value, what is accepted, what was perhaps meant.
    """
    if path is None:
        if not words:
            raise fault(
                Place("no case"), "neither a file nor a field was named", f"a case file, or words such as {EXAMPLE}"
            )
        return _case(Fields(WORDS), words)
    text, format_ = text_of_stream(stdin) if path == "-" else text_of_file(path)
    return _case(_root(text, format_, "standard input" if path == "-" else path), words)


def read_text(text: str, format_: Format, name: str) -> Case:
    """A case from a text in one of the formats; `name` stands for the file in messages. Raises InputFault."""
    return _case(_root(text_of_bytes(text.encode("utf-8", "surrogatepass"), name), format_, name), ())


def _root(text: str, format_: Format, name: str) -> Fields:
    if format_ == "json":
        from advisor.reading.from_json import tree as json_tree

        node = json_tree(text, name)
    elif format_ == "toml":
        from advisor.reading.from_toml import tree as toml_tree

        node = toml_tree(text, name)
    else:
        from advisor.reading.from_yaml import tree as yaml_tree

        node = yaml_tree(text, name)
    if isinstance(node, Fields):
        return node
    raise fault(node.place, "is no case", f"fields: {', '.join(Case.declared)}", _start(node))


def _start(node: Node) -> str | None:
    return node.text if isinstance(node, Scalar) else None


def _case(root: Fields, words: Sequence[str]) -> Case:
    problems = lay_over(root, words)
    filler = Filler(_bare(root))
    values = filler.section(Case, root)
    problems += filler.problems + filler.contradictions()
    if problems:
        raise InputFault(sorted(problems, key=_order))
    return _built(Case, values)


def _built(model: type[Part], values: Mapping[str, Any]) -> Part:
    """The case of values that the reader has checked, field by field, against the limits of the same models."""
    sections = {name: spec.section for name, spec in specs(model).items() if spec.section is not None}
    inner = {name: _built(sections[name], part) if name in sections else part for name, part in values.items()}
    return model(**inner)


def _order(problem: Problem) -> tuple[float, float]:
    return problem.line or math.inf, problem.column or math.inf


def _bare(root: Fields) -> System | None:
    """What the case says a number without a unit is."""
    node = root.named("units")
    said = (node.text or "").strip().casefold() if isinstance(node, Scalar) else ""
    return next((system for system in System if system.value == said), None)
