"""Every limit on the spindle speed, each with its figure."""

from __future__ import annotations

import math
from functools import lru_cache

from advisor.data.tables import Number, Table, Text, load
from advisor.physics import balance, burst, drive, rim, slender
from advisor.physics.slender import Ends
from advisor.reckoning import ends
from advisor.reckoning.bands import band
from advisor.reckoning.holds.workmanship import adhesive
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation

GRAVITY = 9.80665
MM_PER_INCH = 25.4
WHIRL_SHARE = 0.6
WHIRL_SHARE_BOWED = 0.5
REAR_SHARE = 0.5
BURST_DIVISOR = 5.0
BOLTED_SHARE = 0.15
NOT_ROUND_CAP = 3500.0
ROUND_CAP = 4000.0
SANDING_BAND = 4500.0
DRILLING_BAND_MM = 15000.0
SIZE_REFERENCE_MM = 100.0
SIZE_POWER = 0.6
SIZE_FLOOR = {"hardwood": 0.6, "softwood": 0.4}
POISSON = 0.4
TOUGHNESS_LOW = 0.2  # MPa·√m, low end from memory
TOUGHNESS_DIVISOR = 2.0
SHOP_GLUES = ("pva", "epoxy", "polyurethane", "cyanoacrylate")
TOUCHED_SHARE = 0.7  # area of a glue joint that really met
DEVICE_CAPS = Table(
    "device_caps.csv",
    (Text("method"), Number("rpm", 100.0, 5000.0), Text("why"), Text("source")),
    key=("method",),
    rows=6,
)
CRACKS = frozenset({"check", "crack", "through-crack", "ring-shake"})
PLASTIC_FAMILIES = frozenset({"plastic", "laminate"})
HEAT_CAP_WOOD_W = 10.0
HEAT_CAP_PLASTIC_W = 3.0
DEAD_FRICTION = 0.5  # dry, high end


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
        force = BOLTED_SHARE * (lathe.mass + body.mass) * GRAVITY
        rpm = 30 / math.pi * math.sqrt(force / (body.mass * body.offset * 1e-3))
        text = f"n = (30/π)·√(F/(m·e)), F = {BOLTED_SHARE:g} of the weight = {force:.4g} N"
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
    return from_figure("walking", figure, why="the unbalance walks or tips the lathe")


def wood_plane_strength(situation: Situation) -> float | None:
    """Tension across the grain in MPa on the plane through the middle, 5 % value, less for a large piece."""
    wood = situation.wood
    if wood is None:
        material = situation.material
        return material.tensile.low if material is not None and material.tensile is not None else None
    low = wood.tension_perpendicular.low
    shrunk = low * min(1.0, (SIZE_REFERENCE_MM / situation.body.diameter) ** SIZE_POWER)
    return max(shrunk, min(low, SIZE_FLOOR.get(wood.group, 0.4)))


def bursting(situation: Situation) -> Limit | None:
    """Speed at which the sound piece would come apart, over five."""
    strength = wood_plane_strength(situation)
    if strength is None:
        return None
    wall = situation.case.work.wall
    hollow = situation.traits.form in ("tube", "ring") and wall is not None
    bore = max(situation.body.diameter - 2 * wall, 0.0) if hollow and wall is not None else 0.0
    figure = burst.disc_stress.figure(
        density=situation.density.high, diameter=situation.body.diameter, rpm=1000.0, poisson=POISSON, bore=bore
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
    if not situation.traits.conditions & CRACKS or strength is None:
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
        stress = TOUGHNESS_LOW / TOUGHNESS_DIVISOR / (1.12 * math.sqrt(math.pi * depth * 1e-3))
        rpm = 1000.0 * math.sqrt(stress / (_mean_stress(situation) * 1e-3))
        text = f"K_I = 1.12·σ·√(π·a) ≤ {TOUGHNESS_LOW:g}/{TOUGHNESS_DIVISOR:g} MPa·√m, a = {depth:.3g} mm"
        found.append(Limit("crack", rpm, "rough-guide", ("memory",), "the crack runs from the rim", text))
    return [min(found, key=lambda entry: entry.value)] if found else []


def _mean_stress(situation: Situation) -> float:
    """Mean stress in kPa on a diameter at 1000 rpm."""
    omega = 2 * math.pi * 1000 / 60
    return situation.density.high * omega**2 * (situation.body.diameter / 2000) ** 2 / 3 / 1000


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


def whirl(situation: Situation, between: bool, tail_up: bool, thrust: float, critical: float | None) -> Limit | None:
    """Six tenths of the speed at which the bar whirls, with the thrust in it."""
    modulus = ends.modulus_low(situation)
    if modulus is None or situation.side_grain:
        return None
    ends_word: Ends = "pinned-pinned" if between else "fixed-pinned" if tail_up else "free"
    length = ends.free_length(situation) if tail_up else situation.case.hold.overhang or situation.body.length
    thick = situation.body.end_diameter
    thin = situation.body.thinnest
    ratio = (2 * length if ends_word == "free" else length) / thick
    shear = slender.whirl_shear_factor(ratio)
    if shear is None:
        return None
    bowed = "bowed" in situation.traits.conditions
    share = (WHIRL_SHARE_BOWED if bowed else WHIRL_SHARE) * shear
    why = "the work whips"
    profile = situation.case.work.profile
    push = min(thrust, critical / 3) if critical is not None and tail_up else 0.0
    if profile and situation.traits.state == "finished":
        figure = slender.profile_whirl_speed.figure(
            profile=profile, modulus=modulus, density=situation.density.high, ends=ends_word, thrust=push
        )
        return from_figure("whirl", figure, share, why)
    figure = slender.whirl_speed.figure(
        diameter=thin, length=length, modulus=modulus, density=situation.density.high, ends=ends_word, thrust=push
    )
    # stiffness of the thinnest section under the mass of the thickest
    return from_figure("whirl", figure, share * thin / thick, why)


def rear_overhang(situation: Situation) -> Limit | None:
    """Half the whirling speed of the bar that stands out behind the spindle."""
    out = situation.case.hold.rear_overhang
    modulus = ends.modulus_low(situation)
    if not out or modulus is None:
        return None
    figure = slender.whirl_speed.figure(
        diameter=situation.body.end_diameter,
        length=out,
        modulus=modulus,
        density=situation.density.high,
        ends="free",
        thrust=0.0,
    )
    return from_figure("rear-overhang", figure, REAR_SHARE, "the bar behind the spindle whips")


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
