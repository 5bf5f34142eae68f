"""Every limit on the spindle speed, each with its figure."""

from __future__ import annotations

import math
from functools import lru_cache

from advisor.data.tables import Number, Table, Text, load
from advisor.physics import balance, burst, drive, rim
from advisor.reckoning import ends
from advisor.reckoning.bands import band
from advisor.reckoning.holds.workmanship import adhesive
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation
from advisor.units import MM_PER_INCH

BURST_DIVISOR = 5.0  # memory
NOT_ROUND_CAP = 3500.0  # common practice, no source
ROUND_CAP = 4000.0  # common practice, no source
SANDING_BAND = 4500.0  # common practice, no source
DRILLING_BAND_MM = 15000.0  # common practice, no source
SHOP_GLUES = ("pva", "epoxy", "polyurethane", "cyanoacrylate")
TOUCHED_SHARE = 0.7  # area of a glue joint that really met; memory
DEVICE_CAPS = Table(
    "device_caps.csv",
    (Text("method"), Number("rpm", 100.0, 5000.0), Text("why"), Text("source")),
    key=("method",),
    rows=6,
)
HEAT_CAP_WOOD_W = 10.0  # memory
HEAT_CAP_PLASTIC_W = 3.0  # memory
DEAD_FRICTION = 0.5  # dry, high end; friction-design


def rim_speed(situation: Situation, tail_up: bool) -> Limit | None:
    """The trade's band over the largest swept diameter."""
    chosen = band(situation, tail_up)
    figure = rim.rim_rule_speed.figure(diameter=situation.body.diameter, band=chosen.value)
    return from_figure("rim-speed", figure, why=chosen.why)


def walking(situation: Situation) -> Limit | None:
    """The turning force of the unbalance against the machine's own weight and footing."""
    body, lathe = situation.body, situation.lathe
    if body.offset <= 0 or body.mass <= 0:
        return None
    if lathe.bolted:
        force = balance.bolted_force(lathe.mass + body.mass)
        rpm = balance.speed_of_force(force, body.mass, body.offset)
        text = f"n = (30/π)·√(F/(m·e)), F = {balance.SHARE_BOLTED:g} of the weight = {force:.4g} N"
        why = "the unbalance shakes the bolted lathe"
        return Limit("walking", rpm, "rough-guide", ("floor-model",), why, text)
    figure = balance.walking_speed.figure(
        lathe_mass=lathe.mass,
        blank_mass=body.mass,
        offset=body.offset,
        friction=lathe.floor_friction,
        half_base=lathe.base_width / 2,
        spindle_height=lathe.spindle_height,
        amplification=lathe.amplification,
    )
    mass = lathe.mass + body.mass
    slides = balance.slide_force(mass=mass, friction=lathe.floor_friction)
    tips = balance.tip_force(mass=mass, half_base=lathe.base_width / 2, spindle_height=lathe.spindle_height)
    verb = "tips" if tips < slides else "slides"
    return from_figure("walking", figure, why=f"the unbalance rocks the lathe until it {verb}")


def wood_plane_strength(situation: Situation) -> float | None:
    """Tension across the grain in MPa on the plane through the middle, 5 % value, less for a large piece."""
    wood = situation.wood
    if wood is None:
        material = situation.material
        return material.tensile.low if material is not None and material.tensile is not None else None
    return burst.diametral_strength(wood.tension_perpendicular.low, situation.body.diameter, wood.group)


def bursting(situation: Situation) -> Limit | None:
    """Speed at which the sound piece would come apart, over five."""
    strength = wood_plane_strength(situation)
    if strength is None:
        return None
    wall = situation.case.work.wall
    hollow = situation.traits.form in ("tube", "ring") and wall is not None
    bore = max(situation.body.diameter - 2 * wall, 0.0) if hollow and wall is not None else 0.0
    figure = burst.disc_stress.figure(
        density=situation.density.high,
        diameter=situation.body.diameter,
        rpm=1000.0,
        poisson=burst.POISSON_WOOD,
        bore=bore,
    )
    if figure.value is None or figure.value <= 0:
        return None
    rpm = 1000.0 * math.sqrt(strength / BURST_DIVISOR / (figure.value * 1e-3))
    text = f"n = 1000 rpm·√({strength:.3g} MPa / {BURST_DIVISOR:g} / {figure.value:.3g} kPa)"
    return Limit("burst", rpm, "estimate", figure.sources, "the piece bursts", text)


def sound_share(situation: Situation) -> float:
    """Share of the section through the middle that still holds; what was not measured is at its worst."""
    crack = situation.case.work.crack
    body = situation.body
    if crack is None:
        return 0.3
    runs = crack.runs or "unknown"
    across = (crack.across if crack.across is not None else body.diameter * 0.7) / body.diameter
    along = (crack.along if crack.along is not None else body.length * 0.7) / body.length
    share = {"along-axis": along, "across-face": across, "pith-to-rim": across}.get(runs, max(across, along))
    return max(1.0 - share, 0.0)


def cracked(situation: Situation) -> list[Limit]:
    """The cracked section, and the crack that opens from the rim."""
    strength = wood_plane_strength(situation)
    if not situation.traits.checked or strength is None:
        return []
    share = sound_share(situation)
    if share <= 0.0:
        return []
    body = situation.body
    found = []
    figure = burst.cracked_disc_speed.figure(
        density=situation.density.high, diameter=body.diameter, sound=share, strength=strength / BURST_DIVISOR
    )
    limit = from_figure("crack", figure, why="the cracked section lets go")
    if limit is not None:
        found.append(limit)
    crack = situation.case.work.crack
    depth = crack.across if crack is not None else None
    if depth is not None and depth > 0:
        rpm = 1000.0 * math.sqrt(burst.crack_stress(depth) / (_mean_stress(situation) * 1e-3))
        cap = f"{burst.TOUGHNESS_LOW:g}/{burst.TOUGHNESS_DIVISOR:g}"
        text = f"K_I = {burst.EDGE_CRACK:g}·σ·√(π·a) ≤ {cap} MPa·√m, a = {depth:.3g} mm"
        found.append(Limit("crack", rpm, "rough-guide", ("memory",), "the crack runs from the rim", text))
    return [min(found, key=lambda entry: entry.value)] if found else []


def _mean_stress(situation: Situation) -> float:
    """Mean stress in kPa on a diameter at 1000 rpm."""
    return burst.mean_disc_stress(situation.density.high, situation.body.diameter, 1000.0)


def joint_strength(situation: Situation) -> tuple[str, float]:
    """Kind of glue and its opening strength in MPa at its low end; a shop's weakest ordinary glue when nobody says."""
    glue = situation.case.hold.glue
    given = glue.kind if glue is not None else None
    kinds = (given,) if given in SHOP_GLUES else SHOP_GLUES
    strengths = {str(kind): adhesive(str(kind)).shear.low * adhesive(str(kind)).peel for kind in kinds}
    weakest = min(strengths, key=lambda kind: strengths[kind])
    return weakest, strengths[weakest] * TOUCHED_SHARE


def joint(situation: Situation) -> Limit | None:
    """Glue lines across the piece, at the weakest joint a shop makes."""
    glued = situation.traits.form == "segmented" or situation.traits.conditions & {"glued-joint", "untested-glue"}
    if not glued:
        return None
    kind, strength = joint_strength(situation)
    wood = wood_plane_strength(situation)
    if wood is not None:
        strength = min(strength, wood)
    rpm = 1000.0 * math.sqrt(strength / BURST_DIVISOR / (_mean_stress(situation) * 1e-3))
    text = f"n = 1000 rpm·√({strength:.3g} MPa / {BURST_DIVISOR:g} / {_mean_stress(situation):.3g} kPa)"
    return Limit("joint", rpm, "rough-guide", ("memory",), f"the glue line opens (taken as {kind})", text)


@lru_cache(maxsize=1)
def _caps() -> dict[str, tuple[float, str]]:
    return {row.text("method"): (row.number("rpm"), row.text("why")) for row in load(DEVICE_CAPS)}


def device(situation: Situation, method: str) -> Limit | None:
    """The speed marked on the holding device, or the trade's cap for its kind."""
    chuck = situation.case.hold.chuck
    found = []
    if chuck is not None and chuck.max_rpm is not None:
        found.append((chuck.max_rpm, "marked on the chuck"))
    if method in _caps():
        found.append(_caps()[method])
    if not found:
        return None
    rpm, why = min(found)
    return Limit("device-mark", rpm, "practice", ("common-practice",), why, f"n = {rpm:g} rpm")


def operation(situation: Situation) -> Limit:
    """Caps that the work itself sets: drilling, sanding, and the highest speeds anybody needs."""
    inches = situation.body.diameter / MM_PER_INCH
    cap = ROUND_CAP if situation.trued else NOT_ROUND_CAP
    rpm, why, text = cap, "no hand needs more", f"n = {cap:g} rpm"
    if situation.operation == "sanding" and SANDING_BAND / inches < rpm:
        rpm, why, text = SANDING_BAND / inches, "sanding", f"n = {SANDING_BAND:g} inch·rpm / {inches:.3g} in"
    if situation.operation == "drilling" and DRILLING_BAND_MM / situation.cut.drill_diameter < rpm:
        size = situation.cut.drill_diameter
        rpm, why, text = DRILLING_BAND_MM / size, "drilling", f"n = {DRILLING_BAND_MM:g} mm·rpm / {size:.3g} mm"
    return Limit("operation", rpm, "practice", ("common-practice",), why, text)


def surface_speeds(situation: Situation) -> tuple[float, float] | None:
    """Low and high surface speed in m/min for the tool in use; None for wood."""
    material = situation.material
    if material is None:
        return None
    steel, carbide = material.surface_speed_steel, material.surface_speed_carbide
    low = steel if steel is not None else carbide
    tool = carbide if situation.case.cut.tool_material == "carbide" and carbide is not None else steel or carbide
    if low is None or tool is None:
        return None
    return low[0], tool[1]


def material(situation: Situation) -> Limit | None:
    """The highest surface speed published for this material and tool."""
    speeds = surface_speeds(situation)
    if speeds is None:
        return None
    rpm = 1000.0 * speeds[1] / (math.pi * situation.body.diameter)
    text = f"n = v/(π·D), v = {speeds[1]:g} m/min"
    return Limit("material", rpm, "practice", ("common-practice",), "heat in the material", text)


def machine_maximum(situation: Situation) -> Limit | None:
    """What the machine can do."""
    machine = situation.case.machine
    tops = [machine.max_rpm] if machine.max_rpm is not None else []
    tops += [max(machine.speeds)] if machine.speeds else []
    if not tops:
        return None
    return Limit(
        "machine-maximum",
        min(tops),
        "calculated",
        ("common-practice",),
        "the machine's own top speed",
        f"n = {min(tops):g} rpm",
    )


def heat(situation: Situation, center: ends.TailCenter, thrust: float) -> Limit | None:
    """Speed at which a dead center scorches wood or melts plastic."""
    if not center.dead or thrust <= 0:
        return None
    cap = HEAT_CAP_PLASTIC_W if situation.wood is None else HEAT_CAP_WOOD_W
    strength = situation.wood.crushing.low if situation.wood is not None else 40.0
    radius = math.sqrt(4 * thrust / (math.pi * strength)) / 3
    if center.kind == "dead-cup":
        radius = center.cup_diameter / 2
    watts = drive.dead_center_heat(
        friction=DEAD_FRICTION, thrust=thrust, radius=radius, half_angle=center.half_angle, rpm=1000.0
    )
    rpm = 1000.0 * cap / watts
    text = f"P = µ·F·r·ω/sin α ≤ {cap:g} W"
    return Limit("heat", rpm, "rough-guide", ("memory",), "the dead center burns the end", text)
