"""Every command as a person runs it: a process with words, output, errors and an exit code."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import jsonschema
import pytest

ROOT = Path(__file__).parent.parent
BOWL = ["work.material=sugar maple", "work.form=disc", "work.diameter=10 in", "work.length=4in", "work.grain=across",
        "work.state=not-round", "work.moisture=12%"]  # fmt: skip
ANSWERS = ("advise", "mount", "hold", "speed", "thrust")


def advisor(*words: str, stdin: str = "", **environment: str) -> subprocess.CompletedProcess[str]:
    """Run the command in an empty-handed environment."""
    return subprocess.run(
        [sys.executable, "-m", "advisor.cli", *words],
        input=stdin,
        capture_output=True,
        text=True,
        cwd=ROOT,
        env={**os.environ, **environment},
        timeout=60,
        check=False,
    )


def document(*words: str) -> Any:
    """The one JSON document of a command."""
    done = advisor(*words, "--json")
    assert done.returncode == 0, done.stderr
    assert done.stderr == ""
    return json.loads(done.stdout)


@pytest.mark.parametrize("command", ANSWERS)
def test_each_answer_follows_its_schema_and_has_its_part(command: str) -> None:
    found = document(command, *BOWL)
    jsonschema.validate(found, document("schema", "answer"))
    part = {"hold": "holding", "speed": "speed", "thrust": "thrust"}.get(command)
    if part is not None:
        assert part in found
    assert found["cautions"]


def test_a_verdict_is_the_same_whichever_command_asks() -> None:
    words = [*BOWL, "work.condition=[check]", "machine.nose=threaded"]
    assert len({document(command, *words)["verdict"] for command in ANSWERS}) == 1


def test_text_and_plain_say_the_verdict_first() -> None:
    done = advisor("advise", *BOWL, "--plain")
    assert done.returncode == 0
    assert done.stdout.startswith("GO")
    assert "\x1b[" not in done.stdout
    assert "never above" in done.stdout


def test_units_change_what_is_printed_and_nothing_else() -> None:
    inch = advisor("thrust", *BOWL, "--units", "inch").stdout
    metric = advisor("thrust", *BOWL, "--units", "metric").stdout
    assert inch != metric
    assert "lbf" in inch


@pytest.mark.parametrize("name", ["cracked-log.yaml", "thin-beech-no-window.toml", "heavy-disc-light-lathe.json"])
def test_case_files_of_every_format_are_read(name: str) -> None:
    assert document("advise", f"cases/{name}")["schema"] == "1"


def test_words_win_over_the_file_and_dash_is_standard_input() -> None:
    text = (ROOT / "cases" / "wet-ash-faceplate.yaml").read_text(encoding="utf-8")
    assert advisor("mount", "-", "work.condition=[treated]", stdin=text).stdout.startswith("DO NOT MOUNT")


def test_a_do_not_mount_is_an_answer() -> None:
    done = advisor("advise", "cases/cracked-log.yaml")
    assert done.returncode == 0
    assert done.stdout.startswith("DO NOT MOUNT")
    assert document("advise", "cases/cracked-log.yaml")["speed"]["ceiling_rpm"] == 0


WRONG = {
    "no such command": ["adwise"],
    "no case": ["advise"],
    "no such file": ["advise", "nowhere.yaml"],
    "two files": ["advise", "cases/cracked-log.yaml", "cases/wet-ash-faceplate.yaml"],
    "unknown field": ["advise", *BOWL, "work.colour=red"],
    "bare number": ["advise", "work.material=ash", "work.diameter=10", "work.length=3in"],
    "negative": ["advise", "work.material=ash", "work.diameter=-10in", "work.length=3in"],
    "no such figure": ["reckon", "buckling"],
    "missing input": ["reckon", "buckling-force", "diameter=25mm"],
    "unknown input": ["reckon", "buckling-force", "diameter=25mm", "length=1m", "modulus=12GPa", "color=red"],
    "no such list": ["list", "people"],
    "no such name": ["explain", "spur-driv"],
    "no such schema": ["schema", "cat"],
    "a center that cannot be cut": ["center", "diameter=1in", "hole=0.251in", "cutter=1/2in", "depth=0.4in"],
    "half a pair": ["center", "diameter"],
}


@pytest.mark.parametrize("words", WRONG.values(), ids=WRONG)
def test_wrong_input_is_told_plainly_with_exit_code_two(words: list[str]) -> None:
    done = advisor(*words)
    assert done.returncode == 2
    assert done.stdout == ""
    assert done.stderr.strip()
    assert "Traceback" not in done.stderr


def test_a_binary_and_an_endless_file_are_refused(tmp_path: Path) -> None:
    binary, large = tmp_path / "x.yaml", tmp_path / "y.yaml"
    binary.write_bytes(bytes(range(256)))
    large.write_bytes(b"work: {material: ash}\n" * 500_000)
    for path in (binary, large):
        done = advisor("advise", str(path))
        assert done.returncode == 2
        assert path.name in done.stderr


@pytest.mark.parametrize("kind", ["species", "materials", "methods", "rules", "figures", "sources"])
def test_lists_have_names_and_titles(kind: str) -> None:
    found = document("list", kind)
    assert len(found) > 30
    assert all(entry["name"] and entry["title"] for entry in found)
    heads = [line for line in advisor("list", kind).stdout.splitlines() if not line.startswith(" ")]
    assert len(heads) == len(found)


def test_there_are_the_published_species_and_enough_rules() -> None:
    assert len(document("list", "species")) == 193
    assert len(document("list", "rules")) >= 60


@pytest.mark.parametrize("name", ["cracked-through", "whirl-speed", "spur-drive", "acetal", "sugar maple", "maple"])
def test_explain_knows_rules_figures_methods_materials_and_woods(name: str) -> None:
    done = advisor("explain", name)
    assert done.returncode == 0
    assert len(done.stdout) > 40


def test_reckon_gives_the_figure_of_the_interface() -> None:
    found = document("reckon", "buckling-force", "diameter=25mm", "length=900mm", "modulus=12.6GPa")
    assert found["value"] == pytest.approx(2944, rel=1e-3)
    assert set(found) >= {"figure", "value", "unit", "grade", "formula", "worked", "sources", "range"}


def test_a_drive_that_cannot_turn_a_dead_center_is_no_answer_and_no_error() -> None:
    drive = ["cutting_force=30N", "radius=20mm", "peak=1.5", "safety=1.5", "share=0.9", "grip=0.05", "mean_radius=3mm"]
    dead = ["tail_friction=0.5", "tail_radius=8mm", "tail_half_angle=30deg"]
    found = document("reckon", "required-thrust", *drive, *dead)
    assert found["value"] is None
    assert found["no_answer"]


def test_schemas_are_valid() -> None:
    for schema in document("schema").values():
        jsonschema.Draft202012Validator.check_schema(schema)


def test_center_answers_and_draws(tmp_path: Path) -> None:
    words = ["center", "diameter=1in", "hole=0.251in", "cutter=1/2in", "depth=0.240in", "land=0"]
    found = document(*words)
    assert found["tip_angle_deg"] == pytest.approx(2.29, abs=0.01)
    for name in ("x.svg", "x.dxf"):
        assert advisor(*words, "-o", str(tmp_path / name)).returncode == 0
        assert (tmp_path / name).stat().st_size > 500


def test_help_and_version_and_every_command_has_an_example() -> None:
    assert advisor("--version").stdout.startswith("advisor ")
    for command in (*ANSWERS, "center", "reckon", "explain", "list", "schema"):
        done = advisor(command, "--help")
        assert done.returncode == 0
        assert "example: advisor " in done.stdout


def test_no_color_without_a_terminal_and_in_a_bare_locale() -> None:
    done = advisor("advise", *BOWL, LC_ALL="C", PYTHONIOENCODING="", NO_COLOR="1")
    assert done.returncode == 0
    assert "\x1b[" not in done.stdout


def test_a_word_may_follow_an_option() -> None:
    first = advisor(
        "speed", "work.material=maple", "--plain", "--units", "inch", "work.diameter=3in", "work.length=9in"
    )
    last = advisor("speed", "work.material=maple", "work.diameter=3in", "work.length=9in", "--plain", "--units", "inch")
    assert (first.returncode, first.stdout) == (0, last.stdout), first.stderr
