"""`advisor hold` as people and scripts see the sizes: the command run as a process, and what it prints."""

from __future__ import annotations

import io
import json
import math
import random
import subprocess
import sys
from functools import lru_cache
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from advisor.advice.advise import default_engine
from advisor.advice.judge import judge
from advisor.advice.whole import answer_for
from advisor.models.case import METHODS
from advisor.reading import InputFault, read_case
from advisor.reckoning.proportions import proportions
from advisor.report.schema import answer_schema
from advisor.report.screen import show
from advisor.situation import settle
from tests.conftest import SEED, scale
from tests.rules.bench import words_of
from tests.whole.situations import situation

VALIDATOR = jsonschema.Draft202012Validator(answer_schema())
ROOT = Path(__file__).parent.parent.parent
GREEN = "BOWL; work.state=round; work.moisture=green; hold.method=jaws-on-tenon"
SMALL = "hold.tenon.diameter=52mm"
NO_STEADY = "hold.kit=[jaws-on-tenon]"
SITUATIONS = [
    "BOWL",
    GREEN,
    "HOLLOW",
    "SPINDLE",
    "PLATTER",
    "BALL",
    "STONE",
    "BOWL; work.material=unknown; work.moisture=wet",
    "BOWL; hold.vacuum.gauge=70kPa; work.floor=3mm; work.state=finished",
    "DISC; hold.method=glue-block; hold.glue.cured=no",
]


@lru_cache(maxsize=64)
def answered(text: str) -> dict[str, Any]:
    return answer_for(read_case(None, words_of(text)), ("holding", "proportions"), changes=False)


def printed(text: str, units: str) -> str:
    out = io.StringIO()
    show(answered(text), "a piece", units, out, plain=True, holds=True)
    return out.getvalue()


def hold(text: str, method: str) -> dict[str, Any]:
    return next(entry["proportions"] for entry in answered(text)["holding"] if entry["method"] == method)


def process(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "advisor.cli", "hold", *words], capture_output=True, text=True, cwd=ROOT, check=False
    )


def test_the_command_prints_the_sizes_of_the_hold_and_how_it_dries() -> None:
    case = ["work.material=white ash", "work.diameter=10 in", "work.length=4in", "work.form=disc", "work.grain=across",
            "work.state=round", "work.moisture=green", "work.purpose=bowl", "hold.method=jaws-on-tenon"]  # fmt: skip
    found = process(*case, "--plain", "--units", "inch")
    assert (found.returncode, found.stderr) == (0, "")
    sizes = found.stdout.split("Sizes: chuck jaws closed on a tenon\n")[1].split("\n\n")[0]
    assert "tenon diameter" in sizes
    assert " in  " in sizes
    assert "shoulder diameter" in sizes
    assert "true it when it is dry" in found.stdout
    assert "When it dries" in found.stdout
    assert "White ash" in found.stdout


def test_the_command_gives_scripts_the_same_as_numbers() -> None:
    found = process("cases/oak-bowl-on-tenon.yaml", "--json")
    document = json.loads(found.stdout)
    VALIDATOR.validate(document)
    tenon = document["holding"][0]["proportions"]["sizes"][0]
    assert tenon["name"] == "tenon.diameter"
    assert tenon["given"] is True
    assert tenon["least"] < tenon["value"] == pytest.approx(76.2)
    assert "drying" not in document


def test_other_commands_leave_the_sizes_to_hold() -> None:
    found = answer_for(read_case(None, words_of(GREEN)), ("holding", "speed"), changes=False)
    assert "proportions" not in found["holding"][0]
    assert "drying" not in found


@pytest.mark.parametrize("text", SITUATIONS)
def test_every_hold_of_every_situation_has_sizes_that_follow_the_schema(text: str) -> None:
    found = answered(text)
    VALIDATOR.validate(found)
    json.dumps(found, allow_nan=False)
    assert all("proportions" in entry for entry in found["holding"])


@pytest.mark.parametrize("text", SITUATIONS)
@pytest.mark.parametrize("units", ["metric", "inch"])
def test_every_line_fits_and_speaks_one_system(text: str, units: str) -> None:
    lines = printed(text, units).splitlines()
    assert max(map(len, lines)) <= 88
    tables = [line for line in lines if line.startswith("  ") and " to make " not in line]
    sizes = [line for line in tables if line[2:].split(" ")[0] in ("tenon", "recess", "shoulder", "plate", "face")]
    other = " mm " if units == "inch" else " in "
    assert not [line for line in sizes if other in line[:40]]


@pytest.mark.parametrize("text", ["BOWL", "HOLLOW", "KNOB", "DISC"])
def test_inch_and_metric_words_of_the_same_piece_give_the_same_sizes(text: str) -> None:
    words = words_of(text)
    first, second = (settle(read_case(None, each)) for each in (words, [_metric(word) for word in words]))
    for method in METHODS:
        one, other = proportions(first, method, 500.0), proportions(second, method, 500.0)
        assert [size.value for size in one.sizes] == pytest.approx([size.value for size in other.sizes], rel=1e-6)


def _metric(word: str) -> str:
    name, _, value = word.partition("=")
    if value.endswith("in") and value[:-2].replace(".", "").isdigit():
        return f"{name}={float(value[:-2]) * 25.4:.6f}mm"
    return word


@pytest.mark.parametrize(
    ("text", "method"),
    [
        ("BOWL; work.state=round", "jaws-on-tenon"),
        ("BOWL; work.state=round; cut.operation=hollowing", "jaws-on-tenon"),
        ("BOWL; work.moisture=green", "faceplate-screws"),
        ("BOWL", "screw-chuck"),
        ("HOLLOW", "jaws-on-tenon"),
        ("KNOB", "jaws-on-tenon"),
        ("DISC; hold.glue.cured=yes; hold.glue.kind=epoxy", "glue-block"),
        ("DISC", "double-sided-tape"),
        ("STONE; hold.glue.cured=yes; hold.glue.kind=epoxy", "glue-block"),
    ],
)
def test_the_sizes_to_make_are_accepted_by_the_whole_program(text: str, method: str) -> None:
    """Everyday holds, common practice: the sizes advised are put into the case and judged by rules and model."""
    piece = settle(read_case(None, words_of(text)))
    before = judge(piece, default_engine(), (method,)).holds[0]
    found = proportions(piece, method, before.rpm)
    assert found.enough
    after = judge(settle(found.put_into(piece.case)), default_engine(), (method,)).holds[0]
    assert after.accepted
    assert after.figures.divided == pytest.approx(found.margin)


@pytest.mark.parametrize("text", ["BOWL; work.state=round; cut.operation=hollowing", f"HOLLOW; {NO_STEADY}"])
def test_a_tenon_under_the_least_is_not_accepted(text: str) -> None:
    piece = settle(read_case(None, words_of(text)))
    entry = proportions(piece, "jaws-on-tenon", 500.0).of("tenon.diameter")
    assert entry is not None
    assert entry.least is not None
    small = settle(read_case(None, [*words_of(text), f"hold.tenon.diameter={0.85 * entry.least:.2f}mm"]))
    assert not judge(small, default_engine(), ("jaws-on-tenon",)).holds[0].accepted


def test_text_says_the_jaws_circle_is_not_the_tenons_size() -> None:
    soft = "HOLLOW; work.material=ponderosa pine; work.moisture=green; hold.method=jaws-on-tenon"
    assert "is not its size" in printed(f"{soft}; hold.chuck.jaw_circle=40mm", "metric")
    assert "Cut it to the true circle of your jaws" in printed(soft, "metric")


def test_text_names_the_best_hold_as_well_when_the_chosen_one_will_not_do() -> None:
    found = printed("BOWL; hold.method=double-sided-tape", "metric")
    assert "Sizes: double-sided tape" in found
    assert "Sizes: faceplate and wood screws" in found or "Sizes: screw chuck" in found
    assert "No size of it is enough for this cut." in found


def test_a_hold_refused_for_what_it_is_gets_no_sizes_to_make() -> None:
    """Common practice, no source: nobody is told how large to turn a tenon that jaws would crack."""
    found = printed("STONE; hold.method=jaws-on-tenon", "metric")
    assert "Sizes: chuck jaws" not in found
    assert "Sizes: glue block" in found


def test_text_tells_a_size_too_small_from_none_that_is_enough() -> None:
    small = printed(f"BOWL; work.state=round; cut.operation=hollowing; hold.method=jaws-on-tenon; {SMALL}", "metric")
    assert "Yours is too small for this cut." in small
    none = printed("SPINDLE; work.diameter=40mm; hold.method=jaws-in-recess", "metric")
    assert "No recess fits" in none


def test_text_of_a_wet_solid_piece_says_to_rough_it_oversize() -> None:
    found = printed("ROD; work.moisture=green; work.material=bubinga", "inch")
    assert "Rough it oversize" in found
    assert "the table has no figure of its own" in found


def test_counts_are_printed_as_counts() -> None:
    found = printed("BOWL; work.moisture=green", "metric")
    line = next(line for line in found.splitlines() if line.startswith("  screws  "))
    assert line.split()[1] == "6"
    assert "mm" not in line


@pytest.mark.slow
@pytest.mark.properties
def test_any_situation_gets_sizes_that_fit_and_print() -> None:
    """Random pieces, sound and absurd: sizes above zero, the least never past the most, every line printable."""
    dice = random.Random(SEED)
    looked = 0
    for _ in range(scale(1000)):
        try:
            case = read_case(None, situation(dice))
        except InputFault:
            continue
        found = answer_for(case, ("holding", "proportions"), changes=False)
        json.dumps(found, allow_nan=False)
        for entry in found["holding"]:
            for size in entry["proportions"]["sizes"]:
                assert size["value"] > 0, (entry["method"], size)
                assert size.get("least", 0.0) <= size.get("most", math.inf) * (1 + 1e-9), (entry["method"], size)
        for units in ("metric", "inch"):
            show(found, "a piece", units, io.StringIO(), plain=True, holds=False)
        looked += 1
    assert looked > scale(1000) / 2
