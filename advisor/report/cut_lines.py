"""The tool in numbers: speeds of every table at this diameter, feed, depth, nose, heat, what the motor has to give."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from advisor.report.numbers import angle, fine_length, force, limit_down, power, surface_speed, torque


def _band(texts: Sequence[str]) -> str:
    """Two ends as a person says them: one where they are alike, the unit once."""
    low, high = texts
    return low if low == high else f"{low.partition(' ')[0]} to {high}"


def _speed(row: Mapping[str, Any], units: str) -> str:
    published = _band([surface_speed(end, units) for end in row["m_per_min"]])
    here = _band([limit_down(end) for end in row["rpm"]])
    held = ", held down by the ceiling" if row["clipped"] else ""
    return f"{row['tool']} {published}: {here} rpm here{held} ({row['table']}; {row['source']})"


def _ground(part: Mapping[str, Any], units: str) -> Iterator[str]:
    if "feed_mm" in part:
        text = f"feed {_band([fine_length(end, units) for end in part['feed_mm']])} a turn"
        if "feed_finish_mm" in part:
            text += f", finishing {fine_length(part['feed_finish_mm'], units)}"
        yield text
    if "depth_mm" in part:
        yield f"depth {fine_length(part['depth_mm'], units)}"
    if "nose_mm" in part:
        yield f"nose radius {_band([fine_length(end, units) for end in part['nose_mm']])}"


def _load(part: Mapping[str, Any], units: str) -> str:
    push = force(part["force_n"], units, up=True)
    text = f"the cut pushes with {push}, {torque(part['torque_nm'], units)}, {power(part['power_w'])} at the start"
    if "motor_share" in part:
        text += f": {100 * part['motor_share']:.0f} % of the motor"
    return text


def cut_lines(part: Mapping[str, Any], units: str) -> Iterator[str]:
    """One text a matter, the cautious table first; nothing for a tool without numbers."""
    for row in sorted(part.get("speeds", ()), key=lambda row: (row["tool"] != "steel", row["m_per_min"][0])):
        yield _speed(row, units)
    ground = "; ".join(_ground(part, units))
    if ground:
        yield ground
    for row in part.get("tables", ())[1:]:
        if "rake_deg" in row:
            yield f"{row['table']} has rake {angle(row['rake_deg'])} ({row['source']})"
    if "coolant" in part:
        yield f"coolant: {part['coolant']}" + (
            f"; keep the surface below {part['heat_cap_c']:.0f} °C" if "heat_cap_c" in part else ""
        )
    if part.get("never"):
        yield f"never: {part['never']}"
    if part.get("force_n"):
        yield _load(part, units)
