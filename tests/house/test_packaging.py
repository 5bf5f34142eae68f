"""What a wheel puts into an environment, and that the program runs from it alone."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests.house.tree import copy_to, files

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A wheel built, without a network, from a copy of the files that belong to the repository."""
    source, target = tmp_path_factory.mktemp("source"), tmp_path_factory.mktemp("wheel")
    copy_to(source)
    build = ["-m", "pip", "wheel", "--quiet", "--no-deps", "--no-index", "--no-build-isolation", "-w", str(target), "."]
    subprocess.run([sys.executable, *build], cwd=source, check=True, capture_output=True)
    (built,) = target.glob("*.whl")
    return built


def test_everything_of_the_program_is_in_it_and_nothing_else(wheel: Path) -> None:
    packed = {name for name in zipfile.ZipFile(wheel).namelist() if ".dist-info/" not in name}
    product = [path for path in files() if path.parts[0] in ("advisor", "rules", "cases")]
    links = {Path("advisor/rules"), Path("advisor/cases")}
    expected = {
        str(path if path.parts[0] == "advisor" else Path("advisor") / path) for path in product if path not in links
    }
    assert packed == expected
    assert {name.split("/")[0] for name in packed} == {"advisor"}


def test_it_advises_far_from_the_clone(wheel: Path, tmp_path: Path) -> None:
    place = tmp_path / "installed"
    zipfile.ZipFile(wheel).extractall(place)
    environment = {**os.environ, "PYTHONPATH": str(place), "PYTHONDONTWRITEBYTECODE": "1"}
    whose = "import advisor, advisor.rules; print(advisor.__file__, advisor.rules.__file__)"
    told = subprocess.run(
        [sys.executable, "-c", whose], cwd=tmp_path, env=environment, check=True, capture_output=True, text=True
    ).stdout.split()
    assert told == [str(place / "advisor/__init__.py"), str(place / "advisor/rules/__init__.py")]
    start = "import sys; from advisor.cli import main; sys.exit(main(sys.argv[1:]))"
    case = str(place / "advisor/cases/maple-spindle.yaml")
    advised = subprocess.run(
        [sys.executable, "-c", start, "advise", case], cwd=tmp_path, env=environment, check=True, capture_output=True,
        text=True,
    )  # fmt: skip
    assert "rpm" in advised.stdout
