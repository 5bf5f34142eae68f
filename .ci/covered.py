"""Fails when the coverage report on standard input has less than the named share of lines or of branches."""

import json
import sys

totals = json.load(sys.stdin)["totals"]
least = float(sys.argv[1])
shares = {
    "lines": 100 * totals["covered_lines"] / totals["num_statements"],
    "branches": 100 * totals["covered_branches"] / totals["num_branches"],
}
for what, share in shares.items():
    print(f"{share:.1f} % of {what}, at least {least:g} % wanted")
sys.exit(any(share < least for share in shares.values()))
