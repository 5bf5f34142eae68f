"""The readers under a fuzzer that keeps every input which reaches new code: units, YAML, TOML, JSON, words.

    .venv/bin/python -m tests.reading.guided SECONDS        ADVISOR_SEED=... repeats a run; needs atheris

The first byte of an input chooses the reader, and whether the rest is repeated until the reader refuses its size: what
takes the square of its length shows there. Anything but a case or a plain complaint ends the run with the input.
"""

from __future__ import annotations

import ast
import json
import math
import os
import sys
import tempfile
import warnings
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from advisor.reading import InputFault  # no reader is imported before the fuzzer can watch it

ROOT = Path(__file__).resolve().parents[2]
CASES = sorted((ROOT / "cases").glob("*.yaml"))
TESTS = sorted([*Path(__file__).parent.glob("test_*.py"), *(ROOT / "tests").glob("test_[uq]*.py")])
PUMPED = 128
QUANTITIES = 8  # kinds that each text of the tests is tried as from the start; the fuzzer finds the others
LONGEST_COMPLAINT = 3000  # of one problem: it quotes 60 signs of the word, the field and the value, each as \\U0001f600
SLOWEST = 60  # seconds for one input, of at most 64 kB, on a busy machine
LONGEST = 4096  # bytes of an input before it is repeated
WORDS_BASE = ("work.material=ash", "work.diameter=10 in", "work.length=3 in")


def read_yaml(text: str) -> None:
    _read(text, "yaml")


def read_toml(text: str) -> None:
    _read(text, "toml")


def read_json(text: str) -> None:
    _read(text, "json")


def _read(text: str, format_: str) -> None:
    from typing import cast

    from advisor.reading import read_text
    from advisor.reading.files import Format

    _judged(lambda: read_text(text, cast(Format, format_), "case"))


def read_words(text: str) -> None:
    from advisor.reading import read_case

    _judged(lambda: read_case(None, (*WORDS_BASE, *text.split("\n"))))


def _judged(read: Callable[[], object]) -> None:
    """A case that reads back equal, or an InputFault that says what is wrong."""
    from advisor.models.case import Case
    from advisor.reading import InputFault, read_text, write_case

    try:
        case = read()
    except InputFault as fault:
        _plain_complaint(fault)
        return
    assert isinstance(case, Case)
    assert read_text(write_case(case), "yaml", "written") == case, "does not read back"


def _plain_complaint(fault: InputFault) -> None:
    assert fault.problems, "a fault without a problem"
    for problem in fault.problems:
        said = str(problem)
        assert problem.message, f"no message: {said!r}"
        assert said.isprintable(), f"a complaint that a terminal would obey: {said!r}"
        assert len(said) < LONGEST_COMPLAINT + len(problem.accepted or ""), f"a long complaint: {said!r}"


def read_units(text: str) -> None:
    """The kind of quantity that the first sign chooses: a finite number that can be shown, or a complaint."""
    from advisor import units

    kinds = [kind for kind in vars(units).values() if isinstance(kind, units.Kind)]
    kind = kinds[ord(text[0]) % len(kinds)]
    for bare in (None, *units.System):
        try:
            value = units.parse(text[1:], kind, bare)
        except units.UnitError:
            continue
        assert math.isfinite(value)
        for system in units.System:
            assert units.show(value, kind, system)


READERS = (read_yaml, read_toml, read_json, read_words, read_units)


def one_input(data: bytes) -> None:
    """One input of the fuzzer. Whatever it raises is a finding."""
    if not data:
        return
    from advisor.reading import InputFault
    from advisor.reading.files import LARGEST, text_of_bytes

    choice, rest = data[0], data[1:]
    if choice >= PUMPED and rest:
        rest *= max(1, LARGEST // len(rest))
    try:
        text = text_of_bytes(rest, "case")
    except InputFault:
        return
    READERS[choice % PUMPED % len(READERS)](text)


def corpus() -> Iterator[bytes]:
    """What the fuzzer starts from: the cases in every format, and every text in the tests of reading."""
    from advisor.reading.from_yaml import tree

    for path in CASES:
        text = path.read_text(encoding="utf-8")
        yield from (bytes([0]) + text.encode(), bytes([2]) + json.dumps(plain(tree(text, path.name))).encode())
        yield bytes([1]) + "\n".join(toml_lines(plain(tree(text, path.name)))).encode()
        yield bytes([3]) + "\n".join(word.replace(" = ", "=") for word in toml_lines(plain(tree(text, "")))).encode()
    for path in TESTS:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value:
                raw = node.value.encode("utf-8", "surrogatepass")
                yield from (bytes([number]) + raw for number in range(len(READERS) - 1))
                yield from (bytes([len(READERS) - 1, 64 + kind]) + raw for kind in range(QUANTITIES))


def plain(node: object) -> object:
    """A tree of the readers as dictionaries, lists and texts."""
    from advisor.reading.nodes import Fields, Listing, Scalar

    if isinstance(node, Fields):
        return {entry.name: plain(entry.node) for entry in node.entries}
    if isinstance(node, Listing):
        return [plain(item) for item in node.items]
    assert isinstance(node, Scalar)
    return node.text


def toml_lines(value: object, name: str = "") -> Iterator[str]:
    """Dotted TOML lines of a dictionary; a field without a value has none."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from toml_lines(inner, f"{name}.{key}" if name else key)
    elif value is not None:
        yield f"{name} = {json.dumps(value, ensure_ascii=False)}"


def dictionary() -> list[str]:
    """The words that open a reader's doors."""
    from advisor import units
    from advisor.models.case import Case
    from advisor.models.fields import field_names, spec_at

    names = field_names(Case)
    found = {part for name in names for part in name.split(".")} | set(names)
    for name in names:
        spec = spec_at(Case, tuple(name.split(".")))
        assert spec is not None
        found |= set(spec.words) | set(spec.item.words if spec.item is not None else ())
    for kind in (kind for kind in vars(units).values() if isinstance(kind, units.Kind)):
        found |= set(units.spellings(kind))
    return sorted(word for word in found if word.isascii() and word)


def main(seconds: int) -> None:
    """Fuzz for so long. Ends the process: 0 when nothing was found."""
    import atheris

    with warnings.catch_warnings(), atheris.instrument_imports(include=["advisor", "yaml", "tomllib"]):
        warnings.simplefilter("ignore")
        import advisor.reading
        import advisor.reading.from_json
        import advisor.reading.from_toml
        import advisor.reading.from_yaml
        import advisor.units  # noqa: F401 -- imported here to be instrumented
    seed = int(os.environ.get("ADVISOR_SEED", "1")) % 2**31 or 1
    print(f"ADVISOR_SEED={seed}, {seconds} s", flush=True)
    folder = Path(tempfile.mkdtemp(prefix="readers-"))
    (folder / "corpus").mkdir()
    for number, data in enumerate(dict.fromkeys(corpus())):
        (folder / "corpus" / f"{number:05}").write_bytes(data)
    (folder / "words").write_text("".join(f"{json.dumps(word)}\n" for word in dictionary()), encoding="ascii")
    flags = [f"-seed={seed}", f"-max_total_time={seconds}", f"-timeout={SLOWEST}", f"-max_len={LONGEST}"]
    flags += [f"-dict={folder / 'words'}", f"-artifact_prefix={folder}/", "-print_final_stats=1", "-verbosity=1"]
    atheris.Setup([sys.argv[0], *flags, str(folder / "corpus")], one_input)
    atheris.Fuzz()


if __name__ == "__main__":
    main(int(sys.argv[1]))
