"""Takes one rule after another out of a copy of the program and says which of them the rule's own test does not miss.

    .venv/bin/python .ci/without.py [COUNT]

ADVISOR_SEED chooses which COUNT of all the rules; without a count it is every rule. A rule that nothing misses: exit
code 1.
"""

from __future__ import annotations

import os
import random
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from queue import SimpleQueue

from plant import copy_tracked_files, fails, mirror, program_files

WORKERS = 2


def main() -> int:
    rules = [path for path in program_files() if path.parts[0] == "rules"]
    if len(sys.argv) > 1:
        rules = random.Random(int(os.environ.get("ADVISOR_SEED", "1"))).sample(rules, int(sys.argv[1]))
    with tempfile.TemporaryDirectory() as folder:
        copies: SimpleQueue[Path] = SimpleQueue()
        for number in range(WORKERS):
            copy = Path(folder) / str(number)
            copy.mkdir()
            copy_tracked_files(copy)
            copies.put(copy)
        with ThreadPoolExecutor(WORKERS) as workers:
            missed = list(workers.map(lambda rule: missed_by_its_test(rule, copies), rules))
    print(f"{sum(missed)} of {len(rules)} rules are missed by their tests when they are gone")
    return int(not all(missed))


def missed_by_its_test(rule: Path, copies: SimpleQueue[Path]) -> bool:
    """Whether the test that mirrors a rule fails without it."""
    copy = copies.get()
    sound = (copy / rule).read_bytes()
    (copy / rule).unlink()
    try:
        tests = mirror(rule, copy)
        found = tests.endswith(".py") and fails(tests, copy, workers=0)
    finally:
        (copy / rule).write_bytes(sound)
        copies.put(copy)
    if not found:
        print(f"nothing misses {rule}", flush=True)
    return found


if __name__ == "__main__":
    sys.exit(main())
