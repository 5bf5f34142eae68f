"""Exact shape of a drive center whose teeth are milled by walking an end mill in from the rim.

Frame: X along the part axis with the turned face at 0 and the stock behind it, Z along the cutter's axis (up), Y away
from the operator. `u` is the depth below the turned face. One setting of the cutter removes, between the face and the
depth of cut h, everything with z above the cutter's end and y beyond the wall

    yw(u) = Y - √(a² - (a - h + u)²)        a = half the cutter's diameter

and the same turned by every whole multiple of θ = 360°/N. Everything below follows from that alone, so one set of
functions serves any number of teeth and one or two settings for each tooth. Lengths in mm, angles in degrees unless
a name says otherwise.

Valid for 0 < h ≤ a, the cutter's end closer to the axis than the hole's edge, and the turned face flat.
Source: derived from the process (geometry of the sweep).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import acos, asin, atan2, cos, degrees, hypot, pi, radians, sin, sqrt
from typing import NamedTuple

ROUNDING = 1e-12  # numerics
"""Arc below which a land is taken as zero (radian): rounding, far below anything a machine can hold."""

RAZOR = 1e-5  # numerics
"""Share of the depth below which a lowered tip is taken as a razor edge still on the turned face: rounding again."""

CORE_STATION = 0.999  # numerics
"""Share of the depth at which the core is measured: at the very root the wall runs out flat into the floor."""


class Setting(NamedTuple):
    """A place of the cutter: its center from the part axis, its end over the axis, the pocket's turn (deg)."""

    y: float
    z: float
    turn: float = 0.0


class ToothedCenter(NamedTuple):
    """A center as cut: blank, cutter, depth and the settings. The first setting makes the driving faces."""

    diameter: float
    hole: float
    cutter: float
    depth: float
    teeth: int
    settings: tuple[Setting, ...]
    corner_radius: float = 0.0

    @property
    def outer_radius(self) -> float:
        return self.diameter / 2

    @property
    def hole_radius(self) -> float:
        return self.hole / 2

    @property
    def mid_radius(self) -> float:
        return (self.outer_radius + self.hole_radius) / 2

    @property
    def cutter_radius(self) -> float:
        return self.cutter / 2

    @property
    def pitch(self) -> float:
        """Angle from tooth to tooth, radian."""
        return 2 * pi / self.teeth

    @property
    def driving(self) -> Setting:
        return self.settings[0]

    @property
    def backing(self) -> Setting:
        """The setting whose wall is the back of the tooth: the second where there are two."""
        return self.settings[-1]

    @property
    def parallel(self) -> bool:
        """Whether the back runs parallel to the driving face: four teeth, or two settings for each tooth."""
        return self.teeth == 4 or len(self.settings) == 2

    @property
    def x(self) -> float:
        """Cutter center outside the turned face: Xc = a - h."""
        return self.cutter_radius - self.depth


def half_chord(cutter: float, depth: float) -> float:
    """Half the chord that the cutter cuts in the turned face: k = √(h·(c - h))."""
    return sqrt(max(depth * (cutter - depth), 0.0))


def wall_at(center: ToothedCenter, setting: Setting, u: float, radius_of_cutter: float | None = None) -> float:
    """Distance of the pocket's wall from the part axis at depth u: yw(u) = Y - √(a² - (a - h + u)²)."""
    a = center.cutter_radius if radius_of_cutter is None else radius_of_cutter
    return setting.y - sqrt(max(a * a - (center.x + u) ** 2, 0.0))


def removed_arc(center: ToothedCenter, setting: Setting, radius: float, u: float) -> tuple[float, float] | None:
    """Angles (radian, in the pocket's own frame) that one pocket removes from the circle of a radius at a depth.

    asin(z/r) to acos(yw/r), cut down to the part of the circle that lies in the pocket; None where nothing is cut.
    """
    yw = wall_at(center, setting, u)
    if yw >= radius or setting.z >= radius:
        return None
    reach = acos(max(yw / radius, -1.0))
    floor = asin(max(setting.z / radius, -1.0))
    low, high = max(floor, -reach), min(reach, pi - floor)
    if high <= low:
        return None
    if center.corner_radius > 0:
        return _inside_corner(center, setting, radius, u, (low, high))
    return low, high


def _inside_corner(
    center: ToothedCenter, setting: Setting, radius: float, u: float, sharp: tuple[float, float]
) -> tuple[float, float] | None:
    """The arc that is left of `sharp` when the cutter's end has a corner radius: found by halving from inside out."""
    a, rho = center.cutter_radius, center.corner_radius

    def cut(angle: float) -> bool:
        above = radius * sin(angle) - setting.z
        lift = max(rho - above, 0.0)
        reach = a - rho + sqrt(max(rho * rho - lift * lift, 0.0))
        if reach <= center.x + u:
            return False
        return radius * cos(angle) > wall_at(center, setting, u, reach)

    low, high = sharp
    deep = a - rho  # the cutter's reach at its very end
    clear = deep > center.x + u and radius * cos(low) > wall_at(center, setting, u, deep)
    square = radius * sin(high) - setting.z >= rho
    if clear and square:
        return sharp
    inside = next((low + (high - low) * i / 64 for i in range(63, 0, -1) if cut(low + (high - low) * i / 64)), None)
    if inside is None:
        return None
    return low if clear else _edge(cut, low, inside), high if square else _edge(cut, high, inside)


def _edge(cut: Callable[[float], bool], outside: float, inside: float) -> float:
    for _ in range(48):
        middle = (outside + inside) / 2
        if cut(middle):
            inside = middle
        else:
            outside = middle
    return (outside + inside) / 2


def _arcs(center: ToothedCenter, radius: float, u: float) -> list[tuple[float, float]]:
    """What every setting removes on one circle, in the frame of the driving face (radian)."""
    arcs = []
    for setting in center.settings:
        arc = removed_arc(center, setting, radius, u)
        if arc is not None:
            turn = radians(setting.turn)
            arcs.append((arc[0] + turn, arc[1] + turn))
    return arcs


def thickness(center: ToothedCenter, radius: float, u: float) -> float:
    """Arc length of steel left for each tooth on the circle of a radius, at a depth below the turned face.

        t(r, u) = r·[θ - acos(yw(u)/r) + asin(z/r)]     for one setting, limited to 0 … r·θ

    With two settings it is the pitch less the arcs of both pockets together; r·θ where nothing is cut.
    """
    pitch = center.pitch
    spans = []
    for low, high in _arcs(center, radius, u):
        if high - low >= pitch:
            return 0.0
        start = low % pitch
        end = start + high - low
        spans += [(start, min(end, pitch)), (0.0, end - pitch)]
    left, reached = 0.0, 0.0
    for low, high in sorted(spans):
        left += max(low - reached, 0.0)
        reached = max(reached, high)
    left += pitch - reached
    return radius * left if left > ROUNDING else 0.0


def _tooth_stands(center: ToothedCenter, radius: float, u: float) -> bool:
    """Whether steel stands right behind the driving face (an island elsewhere on the circle is no tooth)."""
    arcs, pitch = _arcs(center, radius, u), center.pitch
    if len(arcs) < len(center.settings):
        return True
    start = arcs[0][0]
    for low, high in arcs:
        past = (high - start) % pitch
        if high - low - past > ROUNDING:
            return False
    return True


def land(center: ToothedCenter, radius: float) -> float:
    """Width of the land along the arc, on the turned face: the thickness at no depth."""
    return thickness(center, radius, 0.0)


def tip_drop(center: ToothedCenter, radius: float) -> float:
    """How far the tip stands below the turned face at a radius, because the wall was walked past the land.

    0 while a land is left; the whole depth where no tooth is left. For one setting it is

        √(a² - (Y - e)²) - (a - h)      e = s·cos θ - z·sin θ,  s = √(r² - z²)
    """
    if _tooth_stands(center, radius, 0.0):
        return 0.0
    low, high = 0.0, center.depth
    if not _tooth_stands(center, radius, high):
        return center.depth
    for _ in range(60):
        middle = (low + high) / 2
        if _tooth_stands(center, radius, middle):
            high = middle
        else:
            low = middle
    return high if high > RAZOR * center.depth else 0.0


def wedge_angle(center: ToothedCenter, u: float) -> float | None:
    """Angle between driving face and back at a depth, in the plane square to the driving edge, degrees.

        ψ₀ = asin((a - h + u)/a)               back parallel to the face (four teeth, or two settings)
        ψ  = atan(tan ψ₀ / sin θ)              one setting, any other number of teeth

    None for two teeth of one setting: the back stands square to the driving face.
    """
    flank = asin(min((center.x + u) / center.cutter_radius, 1.0))
    if center.parallel:
        return degrees(flank)
    if center.teeth == 2:
        return None
    return degrees(atan2(sin(flank), cos(flank) * sin(center.pitch)))


def tip_angle(center: ToothedCenter, radius: float) -> float | None:
    """Wedge angle at the tip that stands at a radius, degrees; None where no wedge stands."""
    drop = tip_drop(center, radius)
    if drop >= center.depth:
        return None
    return wedge_angle(center, drop)


def face_span(center: ToothedCenter, u: float) -> tuple[float, float]:
    """Inner and outer end of the driving face at a depth, along the face from the foot of the axis.

        from max(s₀, yw(u)) to S       s₀ = √(r₀² - z²), S = √(R² - z²)

    Where one setting has lowered the tip, the face reaches only as far as the tooth: (yw(u) + z·sin θ)/cos θ is its new
    inner end for three teeth, its new outer end for five and more.
    """
    setting, pitch = center.driving, center.pitch
    wall = wall_at(center, setting, u)
    inner = max(sqrt(center.hole_radius**2 - setting.z**2), wall)
    outer = sqrt(center.outer_radius**2 - setting.z**2)
    if not center.parallel and center.teeth != 2:
        limit = (wall + setting.z * sin(pitch)) / cos(pitch)
        inner, outer = (max(inner, limit), outer) if center.teeth == 3 else (inner, min(outer, limit))
    return inner, max(outer, inner)


def face_depth(center: ToothedCenter, along: float | None = None) -> float:
    """Depth of the flat driving face at a distance along it (its middle when none is given), from the turned face.

        h - ρ  for s ≥ Y;   √((a - ρ)² - (Y - s)²) - (a - h)  for s < Y

    0 where nothing is cut at the face.
    """
    rho, setting = center.corner_radius, center.driving
    if along is None:
        along = (sqrt(center.hole_radius**2 - setting.z**2) + sqrt(center.outer_radius**2 - setting.z**2)) / 2
    if along >= setting.y:
        return center.depth - rho
    inside = (center.cutter_radius - rho) ** 2 - (setting.y - along) ** 2
    return max(sqrt(max(inside, 0.0)) - center.x, 0.0)


def core_radius(center: ToothedCenter, u: float | None = None) -> float:
    """Radius of the solid core inside all pockets: max(r₀, hypot(max(yw, 0), max(z, 0))), the least over the settings.

    Without a depth it is taken at 0.999 of the depth of cut, where it can be measured: the last thousandth of the wall
    runs out flat into the floor.
    """
    at = CORE_STATION * center.depth if u is None else u
    reaches = [hypot(max(wall_at(center, s, at), 0.0), max(s.z, 0.0)) for s in center.settings]
    return max(center.hole_radius, min(reaches))


def root_thickness(center: ToothedCenter) -> float | None:
    """Thickness at the root, square to the driving face at the rim.

        Y + z                                 back parallel to the face
        (Y - S·cos θ)/sin θ + z               one setting, other numbers of teeth, S = √(R² - z²)

    None for two teeth of one setting, where a line square to the face never meets the back.
    """
    if center.parallel:
        return center.backing.y + center.driving.z
    if center.teeth == 2:
        return None
    setting = center.driving
    rim = sqrt(center.outer_radius**2 - setting.z**2)
    return (setting.y - rim * cos(center.pitch)) / sin(center.pitch) + setting.z


def ring_inside(center: ToothedCenter) -> float:
    """Radius of the ring that is left standing at the face inside the pockets; the hole's radius where none is."""
    return max(center.hole_radius, min(max(wall_at(center, s, 0.0), 0.0) for s in center.settings))


def section_area(center: ToothedCenter, u: float) -> float:
    """Area of steel on a plane at a depth: N·∫ t(r, u) dr from the hole to the rim (mm²)."""
    inner, outer = center.hole_radius, center.outer_radius
    kinks = {inner, outer}
    for setting in center.settings:
        wall = wall_at(center, setting, u)
        kinks |= {abs(wall), hypot(wall, setting.z), abs(setting.z)}
    kinks |= {hypot(end, center.driving.z) for end in face_span(center, u)}
    edges = sorted(k for k in kinks if inner <= k <= outer)
    return center.teeth * sum(_integral(center, u, low, high) for low, high in pairwise(edges))


def _integral(center: ToothedCenter, u: float, low: float, high: float, steps: int = 64) -> float:
    """∫ t dr by Simpson's rule in an angle that crowds the points at both ends, where t leaves with a root."""
    half, middle = (high - low) / 2, (high + low) / 2
    width = pi / steps
    total = 0.0
    for i in range(1, steps):
        angle = i * width
        total += (4 if i % 2 else 2) * thickness(center, middle - half * cos(angle), u) * sin(angle)
    return total * half * width / 3
