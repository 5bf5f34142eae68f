"""Where the cutter goes: the settings that give a wanted land, and the choice worked backwards.

Same frame and symbols as `center`. Source: derived from the process (geometry of the sweep).
"""

from __future__ import annotations

from math import acos, asin, atan, cos, degrees, pi, radians, sin, sqrt, tan

from advisor.physics.center import Setting, ToothedCenter, half_chord


def razor_wall(radius: float, height: float, land: float, teeth: int) -> float:
    """Place of the wall at the face that leaves a land, measured along the arc at one radius.

    yw* = r·cos(θ + asin(z/r) - w/r)
    """
    return radius * cos(2 * pi / teeth + asin(height / radius) - land / radius)


def one_setting(  # the six numbers of the process, each of them free
    diameter: float, hole: float, cutter: float, depth: float, teeth: int, height: float, land: float
) -> Setting:
    """The single setting that leaves a land: Y = yw* + √(h·(c - h)).

    The land is set where the tooth turns sharp first: at the rim for four and more teeth, at the hole for fewer.
    """
    radius = diameter / 2 if teeth >= 4 else hole / 2
    return Setting(razor_wall(radius, height, land, teeth) + half_chord(cutter, depth), height)


def two_settings(
    diameter: float, hole: float, cutter: float, depth: float, teeth: int, height: float, land: float
) -> tuple[Setting, Setting]:
    """Driving faces in one setting, backs in a second, so that the land is parallel for any number of teeth.

    faces  index 0          z = Z,   Y = k (two, three teeth) or the single setting's Y at the rim (five and more)
    backs  index θ - 90°    Y = w - Z + k;   z = Z (two, three) or S·cos θ + Z·sin θ (five and more), S = √(R² - Z²)
    """
    pitch, chord = 2 * pi / teeth, half_chord(cutter, depth)
    back_height = height
    face = Setting(chord, height)
    if teeth >= 5:
        face = one_setting(diameter, hole, cutter, depth, teeth, height, land)
        rim = sqrt(diameter * diameter / 4 - height * height)
        back_height = rim * cos(pitch) + height * sin(pitch)
    return face, Setting(land - height + chord, back_height, degrees(pitch) - 90)


def bore_for_two_settings(center: ToothedCenter) -> float:
    """Diameter to which the face must be bored so that two settings leave no islands (0 for two and three teeth).

    2·√(y² + z² - 2·y·z·cos θ)/sin θ      y = YA - k, z = ZB
    """
    if center.teeth < 5 or len(center.settings) == 1:
        return 0.0
    y = center.driving.y - half_chord(center.cutter, center.depth)
    z = center.backing.z
    pitch = center.pitch
    return 2 * sqrt(max(y * y + z * z - 2 * y * z * cos(pitch), 0.0)) / sin(pitch)


def flank_for_tip(tip: float, teeth: int, settings: int) -> float:
    """ψ₀ that gives a wanted wedge angle (degrees): the same, or atan(tan ψ · sin θ) for one setting and N ≠ 4."""
    if teeth == 4 or settings == 2:
        return tip
    return degrees(atan(tan(radians(tip)) * sin(2 * pi / teeth)))


def depth_for_flank(cutter: float, flank: float) -> float:
    """Depth of cut for a wanted ψ₀: h = a·(1 - sin ψ₀)."""
    return cutter / 2 * (1 - sin(radians(flank)))


def cutter_for_flank(depth: float, flank: float) -> float:
    """Cutter diameter for a wanted ψ₀: c = 2·h/(1 - sin ψ₀)."""
    return 2 * depth / (1 - sin(radians(flank)))


def largest_cutter(center: ToothedCenter) -> float:
    """Largest cutter that still reaches full depth inside the rim: c = h + (S - yw*)²/h."""
    setting = center.driving
    rim = sqrt(center.outer_radius**2 - setting.z**2)
    wall = setting.y - half_chord(center.cutter, center.depth)
    return center.depth + (rim - wall) ** 2 / center.depth


def most_teeth(diameter: float, face_length: float) -> int:
    """Most teeth that one setting gives with a driving face of a wanted length: ⌊360° / acos((R - L)/R)⌋."""
    radius = diameter / 2
    return int(2 * pi / acos((radius - face_length) / radius) + 1e-9)
