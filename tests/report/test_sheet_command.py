"""`advisor sheet` and `advisor speed -o` as a person runs them: files by their ending, nothing touched on bad input."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from datetime import date
from pathlib import Path
from xml.etree import ElementTree

import pytest
from pypdf import PdfReader

from advisor.cli import main
from advisor.report.output import OutputFault
from advisor.report.sheet.write import day_of_making
from tests.report.sheets import ROOT, pdf_text

CASE = str(ROOT / "cases" / "maple-spindle.yaml")
CRACKED = str(ROOT / "cases" / "cracked-log.yaml")
SVG = "{http://www.w3.org/2000/svg}"


def ran(*words: str) -> tuple[int, str]:
    """Exit code and message of a command."""
    errors = io.StringIO()
    return main(list(words), errors), errors.getvalue()


def process(*words: str, **environment: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "advisor.cli", *words]
    return subprocess.run(
        command, capture_output=True, text=True, cwd=ROOT, env={**os.environ, **environment}, check=False, timeout=120
    )


@pytest.mark.parametrize("ending", [".html", ".HTML", ".svg"])
def test_each_ending_gives_its_file(tmp_path: Path, ending: str) -> None:
    target = tmp_path / f"sheet{ending}"
    assert ran("sheet", CRACKED, "-o", str(target)) == (0, "")
    text = target.read_text(encoding="utf-8")
    assert text.startswith("<!DOCTYPE html>" if ending.lower() == ".html" else "<?xml")
    ElementTree.fromstring(text.partition("\n")[2])
    assert "DO NOT MOUNT." in text


def test_as_a_process_it_writes_the_same_pdf_twice(tmp_path: Path) -> None:
    targets = [tmp_path / "a.pdf", tmp_path / "b.pdf"]
    for target in targets:
        done = process("sheet", CASE, "-o", str(target), "--json", SOURCE_DATE_EPOCH="1700000000")
        assert (done.returncode, done.stderr) == (0, "")
        answer = json.loads(done.stdout)
    assert targets[0].read_bytes() == targets[1].read_bytes()
    text = pdf_text(targets[0].read_bytes())
    assert "2023-11-14" in text
    assert answer["verdict"] == "go-with-care"
    assert f"{answer['speed']['governed_by']} decides" in text


def test_units_are_those_of_the_option_else_of_the_case(tmp_path: Path) -> None:
    target = tmp_path / "x.svg"
    sizes = []
    for option in ([], ["--units", "metric"]):
        assert ran("sheet", CASE, *option, "-o", str(target)) == (0, "")
        sizes.append(ElementTree.parse(target).getroot().attrib["width"])
    assert sizes == ["215.9mm", "210mm"]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["sheet", CASE], "sheet needs -o FILE, a name ending in .html, .pdf or .svg\n"),
        (["sheet", CASE, "-o", ""], "sheet needs -o FILE"),
        (["sheet", CASE, "-o", "x.docx"], "-o x.docx: sheet writes no such file; a name ending in .html, .pdf or .svg"),
        (["sheet", CASE, "-o", "nowhere/x.svg"], "-o nowhere/x.svg: cannot be written (No such file or directory)"),
        (["speed", CASE, "-o", "x.pdf"], "-o x.pdf: speed writes no such file; a name ending in .svg is accepted\n"),
        (["speed", CASE, "-o", "nowhere/x.svg"], "-o nowhere/x.svg: cannot be written"),
    ],
)
def test_a_wrong_target_is_said_and_nothing_is_written(
    words: list[str], said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    code, errors = ran(*words)
    assert code == 2
    assert errors.startswith(said)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("command", ["sheet", "speed"])
@pytest.mark.parametrize("words", [["missing.yaml"], [CASE, "work.diameter=-3mm"], [CASE, "work.colour=red"]])
def test_an_existing_file_is_untouched_by_bad_input(command: str, words: list[str], tmp_path: Path) -> None:
    target = tmp_path / "x.svg"
    target.write_text("mine", encoding="utf-8")
    code, errors = ran(command, *words, "-o", str(target))
    assert code == 2
    assert errors
    assert target.read_text(encoding="utf-8") == "mine"


@pytest.mark.parametrize("case", [CASE, CRACKED])
def test_speed_writes_the_chart_of_its_limits(case: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    target = tmp_path / "chart.svg"
    assert ran("speed", case, "--json", "-o", str(target)) == (0, "")
    answer = json.loads(capsys.readouterr().out)
    root = ElementTree.parse(target).getroot()
    texts = [entry.text or "" for entry in root.iter(f"{SVG}text")]
    assert [limit["name"] for limit in answer["speed"]["limits"] if limit["name"] not in texts] == []
    title = root.findtext(f"{SVG}title") or ""
    assert title.startswith("DO NOT MOUNT." if case == CRACKED else "GO, WITH CARE.")
    assert any(text.startswith("start ") for text in texts) == (case == CASE)


@pytest.mark.slow
@pytest.mark.cases
def test_a_plan_has_a_page_for_each_stage(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    target = tmp_path / "job.pdf"
    words = ["sheet", str(ROOT / "cases" / "green-ash-bowl-plan.yaml"), "--plan", "--json", "-o", str(target)]
    assert ran(*words) == (0, "")
    answer = json.loads(capsys.readouterr().out)
    data = target.read_bytes()
    stages = answer["stages"]
    assert len(PdfReader(io.BytesIO(data)).pages) == len(stages) > 3
    pause = next(number for number, stage in enumerate(stages) if stage["kind"] == "pause")
    for number in (0, pause, len(stages) - 1):
        text = pdf_text(data, number)
        assert f"{number + 1} of {len(stages)}, {stages[number]['name']}" in text
        assert stages[number]["does"] in text
        assert [check for check in stages[number]["checks"] if check not in text] == []
        assert ("NEVER ABOVE" in text) == (number != pause)


def test_a_plan_as_one_file_has_all_its_stages(tmp_path: Path) -> None:
    target = tmp_path / "job.html"
    words = ["work.material=ash", "work.form=square", "work.diameter=2in", "work.length=6in", "work.purpose=handle"]
    assert ran("sheet", *words, "work.moisture=10%", "machine.mass=200kg", "--plan", "-o", str(target)) == (0, "")
    text = target.read_text(encoding="utf-8")
    count = text.count('<main class="page"')
    assert count > 1
    assert all(f"{number} of {count}, " in text for number in range(1, count + 1))


def test_a_plan_that_stops_says_why_on_its_last_page(tmp_path: Path) -> None:
    target = tmp_path / "job.svg"
    words = ["work.material=ash", "work.form=disc", "work.diameter=10in", "work.length=4in", "work.purpose=bowl"]
    words += ["hold.kit=[double-sided-tape]", "machine.kind=wood-lathe", "work.moisture=12%"]
    assert ran("sheet", *words, "--plan", "-o", str(target)) == (0, "")
    text = target.read_text(encoding="utf-8")
    assert "DO NOT MOUNT." in text or "ASK FIRST." in text
    assert "NEVER ABOVE" not in text


def test_a_job_nobody_knows_is_an_error(tmp_path: Path) -> None:
    target = tmp_path / "job.svg"
    words = ["work.material=ash", "work.diameter=3in", "work.length=4in", "work.purpose=other"]
    code, errors = ran("sheet", *words, "--plan", "-o", str(target))
    assert code == 2
    assert "purpose" in errors
    assert not target.exists()


@pytest.mark.parametrize("text", ["soon", "-1", "1.5", "9" * 30, "١"])
def test_a_date_that_is_none_is_refused(text: str) -> None:
    with pytest.raises(OutputFault, match="whole seconds since 1970"):
        day_of_making({"SOURCE_DATE_EPOCH": text}, date(2026, 1, 2))


def test_the_date_is_today_unless_it_is_fixed() -> None:
    assert day_of_making({}, date(2026, 1, 2)) == date(2026, 1, 2)
    assert day_of_making({"SOURCE_DATE_EPOCH": "86400"}, date(2026, 1, 2)) == date(1970, 1, 2)
