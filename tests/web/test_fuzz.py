"""Requests made from the page's own description, sound and broken: none may meet a fault or a surprise."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

from tests.conftest import SEED, scale
from tests.web.serving import serving

pytestmark = [pytest.mark.slow, pytest.mark.fuzz]

REQUESTS = 5000
OPERATIONS = 13
CHECKS = (
    "not_a_server_error", "status_code_conformance", "content_type_conformance", "response_schema_conformance",
    "response_headers_conformance",
)  # fmt: skip


def test_the_page_does_what_its_description_says(tmp_path: Path) -> None:
    each = -(-scale(REQUESTS) // OPERATIONS)
    with serving() as page:
        command = [
            str(Path(sys.executable).with_name("st")), "run", f"{page.address}/openapi.json", "--no-color",
            "--phases", "fuzzing", "--max-examples", str(each), "--checks", ",".join(CHECKS), "--seed", str(SEED),
        ]  # fmt: skip
        ran = subprocess.run(command, cwd=tmp_path, check=False, capture_output=True, text=True)
    assert ran.returncode == 0, ran.stdout + ran.stderr
    counted = re.search(r"(\d+) generated, (\d+) passed", ran.stdout)
    assert counted is not None
    print(counted[0])
    assert int(counted[1]) == int(counted[2]) >= 0.9 * scale(REQUESTS)
