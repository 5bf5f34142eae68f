"""Fails when a coverage report has less than the wanted share of lines or of branches: covered.py REPORT SHARE."""

import json
import sys
from pathlib import Path

totals = json.loads(Path(sys.argv[1]).read_text(encoding="utf-8"))["totals"]
least = float(sys.argv[2])
shares = {
    "lines": 100 * totals["covered_lines"] / totals["num_statements"],
    "branches": 100 * totals["covered_branches"] / totals["num_branches"],
}
for what, share in shares.items():
    print(f"{share:.1f} % of {what}, at least {least:g} % wanted")
sys.exit(any(share < least for share in shares.values()))
