"""A page for every reason for which a plan stops; its source stands in the row."""

from __future__ import annotations

from advisor.data.tables import Table, Text, load
from advisor.sources import source

PAGES = Table(
    "plan_faults.csv",
    (Text("fault"), Text("title"), Text("why"), Text("do"), Text("quiet"), Text("source")),
    ("fault",),
    13,
)


def fault_names() -> list[str]:
    """Every named reason of the plan itself; a stage may also stop for a rule of the rule book."""
    return [row.text("fault") for row in load(PAGES)]


def fault_page(name: str) -> str | None:
    """Why a plan stops for it and what to do; None for a name that is none of them."""
    row = next((row for row in load(PAGES) if row.text("fault") == name), None)
    if row is None:
        return None
    parts = {
        "Why it matters": row.text("why"),
        "What to do": row.text("do"),
        "Does not apply": row.text("quiet"),
        "Sources": source(row.text("source")).title,
    }
    body = "\n".join(f"{label}\n    {text}" for label, text in parts.items())
    return f"{name} (stops a plan)\n{row.text('title')}\n\n{body}\n"
