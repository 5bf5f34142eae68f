"""From a file or standard input to text, whatever the file turns out to be."""

import os
import re
import stat
import sys
from pathlib import Path
from typing import Literal, TextIO

from advisor.reading.problems import InputFault, Place, fault, nearest

LARGEST = 64 * 1024  # bytes; a case has a few thousand
Format = Literal["yaml", "toml", "json"]
FORMATS: dict[str, Format] = {".yaml": "yaml", ".yml": "yaml", ".toml": "toml", ".json": "json"}
WANTED = "a case file that ends in .yaml, .toml or .json"
TOML_LINE = re.compile(r"(?:[ \t]*(?:#[^\n]*)?\n)*[ \t]*(?:\[[ \t]*[A-Za-z_]|[A-Za-z_][\w.-]*[ \t]*=)")


def text_of_file(path: str) -> tuple[str, Format]:
    """The text of a case file and its format by its ending.

    Raises InputFault: no such file, a folder, not readable, not a plain file, an ending that is no format, too large,
    not text.
    """
    place = Place(path)
    try:
        kind = os.stat(path).st_mode
        if stat.S_ISDIR(kind):
            raise fault(place, "is a folder", WANTED)
        format_ = FORMATS.get(Path(path).suffix.casefold())
        if format_ is None:
            raise fault(place, "has an ending that names no format", WANTED)
        if not stat.S_ISREG(kind):
            raise fault(place, "is not a plain file", WANTED)
        with Path(path).open("rb") as file:
            return text_of_bytes(file.read(LARGEST + 1), path), format_
    except (OSError, ValueError) as wrong:
        raise _no_file(path, wrong) from None


def _no_file(path: str, wrong: Exception) -> InputFault:
    if not isinstance(wrong, FileNotFoundError):
        why = wrong.strerror if isinstance(wrong, OSError) and wrong.strerror else "no file has such a name"
        return fault(Place(path), f"cannot be read ({why})", WANTED)
    try:
        beside = [other.name for other in Path(path).parent.iterdir() if other.suffix.casefold() in FORMATS]
    except OSError:
        beside = []
    found = fault(Place(path), "there is no such file", WANTED).problems[0]
    return InputFault([found._replace(nearest=nearest(Path(path).name, beside))])


def text_of_stream(stream: TextIO | None) -> tuple[str, Format]:
    """The text on standard input and its format by its first signs. Raises InputFault: too large, not text."""
    source = stream if stream is not None else sys.stdin
    bytes_below = getattr(source, "buffer", None)
    try:
        raw = bytes_below.read(LARGEST + 1) if bytes_below is not None else source.read(LARGEST + 1).encode("utf-8")
    except ValueError:
        raise fault(Place("standard input"), "is not UTF-8 text", "a case as text") from None
    text = text_of_bytes(raw, "standard input")
    if text.lstrip().startswith("{"):
        return text, "json"
    return text, "toml" if TOML_LINE.match(text) else "yaml"


def text_of_bytes(raw: bytes, name: str) -> str:
    """Text from bytes: UTF-8, with or without a mark at its start, any line ends. Raises InputFault."""
    place = Place(name)
    if len(raw) > LARGEST:
        raise fault(place, "is too large for a case", f"at most {LARGEST // 1024} kB")
    if raw.startswith((b"\xff\xfe", b"\xfe\xff")):
        raise fault(place, "is saved as UTF-16", "the same text saved as UTF-8")
    if b"\0" in raw:
        raise fault(place, "is not text", WANTED)
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as wrong:
        before = raw[: wrong.start]
        line, column = before.count(b"\n") + 1, wrong.start - before.rfind(b"\n")
        raise fault(Place(name, line, column), "is not UTF-8 text", "the same text saved as UTF-8") from None
    if not text.strip():
        raise fault(place, "is empty", "a case: at least work with material, diameter and length")
    return text.replace("\r\n", "\n").replace("\r", "\n")
