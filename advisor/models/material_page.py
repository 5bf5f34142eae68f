"""Half a page on one material, in the voice of a good colleague."""

from __future__ import annotations

from advisor.models.substance import NEEDS, REFUSALS, Band, Material
from advisor.sources import source

_OPENINGS = {
    "go": "Go ahead, with the usual care.",
    "go-with-care": "It can be turned, with care.",
    "ask-first": "Ask first. Do not start before the questions below are answered.",
    "do-not-mount": "Do not mount it.",
}
_GLUE = {
    "yes": "Glue holds on it once the face is clean.",
    "no": "No glue holds on it.",
    "care": "Try the glue on a scrap first.",
}


def _sentence(text: str) -> str:
    text = text.strip()
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "!", "?")) else ".")


def _numbers(band: Band, unit: str) -> str:
    gap = "" if unit == "°" else " "
    if band.low == band.high:
        return f"{band.low:g}{gap}{unit}"
    return f"{band.low:g} to {band.high:g}{gap}{unit}"


def _speed(record: Material) -> str:
    parts = []
    if record.surface_speed_steel is not None:
        parts.append(f"steel tool {_numbers(record.surface_speed_steel, 'm/min')}")
    if record.surface_speed_carbide is not None:
        parts.append(f"carbide {_numbers(record.surface_speed_carbide, 'm/min')}")
    if record.speed_multiplier is not None:
        parts.append(f"{record.speed_multiplier:g} of the usual rim speed")
    if record.rpm_cap is not None:
        parts.append(f"no more than {record.rpm_cap:g} rpm")
    return "; ".join(parts)


def _geometry(record: Material) -> str:
    parts = []
    if record.rake is not None:
        parts.append(f"top rake {_numbers(record.rake, '°')}")
    if record.clearance is not None:
        parts.append(f"clearance {_numbers(record.clearance, '°')}")
    if record.feed is not None:
        parts.append(f"feed {_numbers(record.feed, 'mm')} a turn")
    return ", ".join(parts)


def _work(record: Material) -> list[str]:
    lines = [f"How it fails: {record.fails_by}."]
    if record.holding != "none":
        lines.append(f"Holding: {record.holding}. {_GLUE[record.takes_glue]}")
    if record.tool != "none":
        lines.append(f"Tool: {record.tool}.")
    speed, geometry = _speed(record), _geometry(record)
    if speed:
        printed = record.surface_speed_steel or record.surface_speed_carbide
        lines.append(f"Speed: {speed}." + (" Tables disagree: start at the low end." if printed else ""))
    if geometry:
        lines.append(f"In the toolpost: {geometry}.")
    if record.heat_cap is not None:
        lines.append(f"Keep it below {record.heat_cap:g} °C.")
    if record.coolant:
        lines.append(f"Cooling: {record.coolant}.")
    return lines


def _harm(record: Material) -> list[str]:
    lines = []
    if record.dust:
        lines.append(f"Dust and fume: {record.dust}.")
    if record.fire:
        lines.append(
            f"Fire: {record.fire}." + (f" Have at hand: {record.extinguisher}." if record.extinguisher else "")
        )
    if record.dust_control:
        lines.append("Against the dust: " + "; ".join(record.dust_control_words) + ".")
    others = [NEEDS[code] for code in record.needs if code not in record.dust_control]
    if others:
        lines.append("It needs " + "; ".join(others) + ".")
    return lines


def _limits(record: Material) -> list[str]:
    lines = [f"Leave it alone when: {record.never}."]
    firm = [REFUSALS[token] for token in record.hard]
    if firm:
        lines.append("Not to be argued with: " + "; ".join(firm) + ".")
    for other in record.look_alikes:
        lines.append(f"Easily taken for {other.other.replace('-', ' ')}: {other.tell}.")
    lines.append(f"Next step: {record.next_step}.")
    lines.append(f"Ask: {record.ask_whom}.")
    return lines


_SHOWN = {
    "speed-steel": "speed with steel",
    "speed-carbide": "speed with carbide",
    "speed-multiplier": "share of the rim speed",
    "rpm-cap": "highest rpm",
    "rake": "rake",
    "clearance": "clearance",
    "feed": "feed",
    "heat-cap": "temperature",
}


def _origins(record: Material) -> list[str]:
    by_source: dict[str, list[str]] = {}
    for key, name in _SHOWN.items():
        if key in record.values:
            by_source.setdefault(record.values[key].source, []).append(name)
    by_source.setdefault(record.source, []).append("the words")
    cited = [f"{source(key).title} ({', '.join(names)})" for key, names in by_source.items()]
    return ["Sources: " + "; ".join(cited) + "."]


def explain(record: Material) -> str:
    """Title, verdict, then how it fails, how to work it, what it does to you, when to leave it, whom to ask."""
    names = f"Also called: {', '.join(record.names)}." if record.names else ""
    head = [record.title, names, _OPENINGS[record.verdict]]
    lines = [*head, *_work(record), *_harm(record), *_limits(record), *_origins(record)]
    return "\n".join(_sentence(line) if index else line for index, line in enumerate(lines) if line)
