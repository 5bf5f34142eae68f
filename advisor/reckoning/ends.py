"""What the wood at the two ends, and the bar between them, will stand from the tailstock."""

import math
from typing import NamedTuple

from advisor.models.wood import SPLIT_MODULUS_ALONG, SPLIT_MODULUS_PERPENDICULAR
from advisor.physics import slender, tail
from advisor.physics.relations import grain_angle_strength
from advisor.reckoning.drives import Drive
from advisor.reckoning.limit import Limit, from_figure
from advisor.situation import Situation
from advisor.situation.shape import CHECKS

FRICTION_LOW_DRY = 0.20  # friction-design
FRICTION_LOW_WET = 0.15  # friction-design
CRUSH_DIVISOR = 1.2  # memory
HARDNESS_AREA_MM2 = 100.0  # on which the side hardness of the tables is measured; Wood Handbook, chapter 5
NO_DENT_MM = 0.2  # across: the mark that any point leaves; memory
SINK_MOST_MM = 10.0  # memory
SINK_SHARE_OF_END = 0.4  # memory
CUP_LARGEST_MM = 19.0  # common practice, no source
CUP_SHARE_OF_END = 0.6  # memory
CUP_LIP_MM = 1.25  # memory
PAD_LARGEST_MM = 38.0  # common practice, no source
CENTER_RATING_N = 2000.0  # a firm handwheel; memory
POINT_ANGLE_DEG = 60.0  # common practice, no source
SPLIT_DIVISOR = 3.0  # memory
SPLIT_DIVISOR_WEAK = 5.0  # memory
PITH_SOUND = 0.8  # memory
BUCKLE_DIVISOR = 3.0  # memory
BUCKLE_DIVISOR_BOWED = 5.0  # memory
EULER_FROM_RATIO = 8.0  # memory
LEAN_DIAGONAL_DEG = 45.0  # memory
ARBOR_MM, ARBOR_FREE_MM, STEEL_GPA = 6.0, 150.0, 200.0  # memory
SHORT_COLUMN_SHARE = 0.5  # memory
# Share of the thrust that opens the end, derived in the model of splitting for 60° teeth (memory for ring and cup).
OPENING_AT_DRIVE = {"four": 0.29, "two": 0.57, "ring": 0.11, "cup": 0.11}
# Teeth in line with the plane that splits, as a share of all.
IN_LINE = {"four": 0.5, "two": 1.0}
SHARPEST_DEG = 1.0
# Plastics that flow under a standing load keep half of their compressive strength (memory).
COLD_FLOW = frozenset({"ptfe", "hdpe", "uhmw", "ldpe"})
COLD_FLOW_SHARE = 0.5
OPENING_AT_CUP = 0.11
POINTS = frozenset({"live-point", "dead-point", "live-cone"})
CUPS = frozenset({"live-cup", "dead-cup"})
BORED = frozenset({"tube", "ring"})
ON_ARBOR = frozenset({"mandrel"})  # the tail center bears on the arbor: it neither opens nor dents the work
WEAK = CHECKS | {"pith"}
# Families of which every material comes apart between its layers or fibers, brittle or not; common practice, no source
LAYERED = frozenset({"board", "laminate", "plant", "animal"})
FRACTURE_ENERGY_J_PER_M2 = 100.0  # of cast resin, brittle plastic, dry bone, the low end; memory
FRACTURE_ENERGY_STONE_J_PER_M2 = 15.0  # soft stone, plaster, ice; memory
LIKE_STONE = frozenset({"stone", "soft"})
BRITTLE_AND_DRY = 6.5  # percent; drier wood than this splits like glass


class TailCenter(NamedTuple):
    """Tail center as given or assumed: kind, half-angle in degrees, ring size in mm, rating N."""

    kind: str
    half_angle: float
    cup_diameter: float
    lip: float
    rating: float
    rating_given: bool
    dead: bool


def tail_center(situation: Situation, cup_of_ball: float | None = None) -> TailCenter:
    """The person's tail center, or a live 60° point: the one that splits most readily.

    A ball between two cups has the second of them there, `cup_of_ball` mm across.
    """
    given = situation.case.hold.tail
    kind = given.kind if given is not None and given.kind not in (None, "none") else "live-point"
    end = situation.body.end_diameter
    cup = given.cup_diameter if given is not None else None
    if cup_of_ball is not None and (given is None or given.kind is None):
        kind, cup = "live-cup", cup_of_ball
    lip = given.lip_height if given is not None else None
    angle = given.point_angle if given is not None else None
    rating = given.rating if given is not None else None
    return TailCenter(
        kind=str(kind),
        half_angle=(angle if angle is not None else POINT_ANGLE_DEG) / 2,
        cup_diameter=min(cup if cup is not None else min(CUP_LARGEST_MM, CUP_SHARE_OF_END * end), end),
        lip=lip if lip is not None else CUP_LIP_MM,
        rating=rating if rating is not None else CENTER_RATING_N,
        rating_given=rating is not None,
        dead=str(kind).startswith("dead"),
    )


def friction_low(situation: Situation) -> float:
    """The low end of wood against steel."""
    return FRICTION_LOW_WET if situation.traits.green else FRICTION_LOW_DRY


def end_strength(situation: Situation) -> float | None:
    """Crushing strength in MPa of the end that the center bears on, low end; None where no table has it."""
    wood, material = situation.wood, situation.material
    if wood is not None:
        return wood.perpendicular.low if situation.side_grain else wood.crushing.low
    if material is None or material.compressive is None:
        return None
    return material.compressive.low * (COLD_FLOW_SHARE if material.id in COLD_FLOW else 1.0)


def dent_strength(situation: Situation) -> float | None:
    """Pressure in MPa at which a point or the lip of a cup stops sinking, low end; None where no table has it.

    In end grain the crushing strength. In side grain the proportional limit is that of a plate that covers the wood:
    what a small dent stands is the published side hardness, a ball's load on 100 mm², and never more than end grain.
    """
    wood = situation.wood
    if wood is None or not situation.side_grain:
        return end_strength(situation)
    return min(wood.crushing.low, wood.hardness.low / HARDNESS_AREA_MM2)


def crushing(situation: Situation, center: TailCenter) -> Limit | None:
    """Thrust at which the tail center sinks too far or its ring punches in."""
    strength, dent_at = end_strength(situation), dent_strength(situation)
    if strength is None or dent_at is None:
        return None
    end = situation.body.end_diameter
    if center.kind in CUPS:
        width = tail.cup_crush_width(center.lip)
        figure = tail.ring_crush_force.figure(
            outer_diameter=center.cup_diameter + width,
            inner_diameter=max(center.cup_diameter - width, 0.0),
            strength=dent_at,
        )
        return from_figure("crushing", figure, 1 / CRUSH_DIVISOR, "the ring of the cup crushes the end")
    if center.kind == "live-pad":
        figure = tail.ring_crush_force.figure(
            outer_diameter=min(PAD_LARGEST_MM, CUP_SHARE_OF_END * end), inner_diameter=0.0, strength=strength
        )
        return from_figure("crushing", figure, 1 / CRUSH_DIVISOR, "the pad crushes the end")
    waste = situation.case.work.end_waste
    depth = min(SINK_MOST_MM, situation.body.length / 2, SINK_MOST_MM if waste is None else waste)
    dent = min(2 * depth * math.tan(math.radians(center.half_angle)), SINK_SHARE_OF_END * end)
    dent = max(dent, NO_DENT_MM)
    figure = tail.ring_crush_force.figure(outer_diameter=dent, inner_diameter=0.0, strength=dent_at)
    return from_figure("crushing", figure, 1 / CRUSH_DIVISOR, "the point sinks too far into the end")


def splits(situation: Situation) -> bool:
    """A material that a point opens: brittle, or of layers or fibers. Of the others the point only sinks in."""
    material = situation.material
    return situation.wood is not None or material is None or material.brittle or material.family in LAYERED


def split_capacity(situation: Situation) -> float | None:
    """Opening force in N that the weaker end resists, 5 % value.

    None in the side grain of wood, for what only gives, and where no table has the strength. What is not wood is
    reckoned as of one stiffness along and across.
    """
    wood, material = situation.wood, situation.material
    if wood is not None and situation.side_grain:
        return None
    crack = situation.case.work.crack
    sound, depth = 1.0, 0.0
    if crack is not None:
        sound = 1.0 - min((crack.across or 0.0) / situation.body.end_diameter, 1.0)
        depth = crack.along or 0.0
    if "pith" in situation.traits.conditions:
        sound = min(sound, PITH_SOUND)
    if sound <= 0.0:
        return 0.0
    if wood is not None:
        return tail.split_capacity(
            diameter=situation.body.end_diameter,
            crack_depth=depth,
            sound=sound,
            tension_perpendicular=wood.tension_perpendicular.low,
            modulus_perpendicular=SPLIT_MODULUS_PERPENDICULAR.typical,
            modulus_along=SPLIT_MODULUS_ALONG,
            fracture_energy=wood.fracture_energy,
        )
    if material is None or material.tensile is None or material.modulus is None or not splits(situation):
        return None
    stone = material.family in LIKE_STONE
    whole = tail.split_capacity(
        diameter=situation.body.end_diameter,
        crack_depth=depth,
        sound=sound,
        tension_perpendicular=material.tensile.low,
        modulus_perpendicular=material.modulus.low,
        modulus_along=material.modulus.low,
        fracture_energy=FRACTURE_ENERGY_STONE_J_PER_M2 if stone else FRACTURE_ENERGY_J_PER_M2,
    )
    return whole * tail.short_split_share(situation.body.end_diameter, situation.body.length - depth)


def split_divisor(situation: Situation) -> float:
    """Three for sound wood, five where a check, pith, bone-dry wood or a brittle material invites the split."""
    material = situation.material
    weak = bool(situation.traits.conditions & WEAK) or (material is not None and material.brittle)
    return SPLIT_DIVISOR_WEAK if weak or situation.moisture <= BRITTLE_AND_DRY else SPLIT_DIVISOR


def tail_opening(situation: Situation, center: TailCenter) -> float:
    """Share of the thrust that pulls the tail end apart."""
    if center.kind in CUPS:
        return OPENING_AT_CUP
    if center.kind == "live-pad":
        return 0.0
    return tail.cone_splitting_force(thrust=1.0, half_angle=center.half_angle, friction=friction_low(situation))


def drive_opening(situation: Situation, drive: Drive) -> float:
    """Share of the thrust that pulls the drive end apart; teeth sharper than 60° wedge more, blunter ones no less.

    S/F = n/(2·tan(β + φ)),  n the share of the teeth in line with the split, β half of their included angle
    """
    least = OPENING_AT_DRIVE.get(drive.kind, 0.0)
    if drive.kind not in IN_LINE:
        return least
    half = max((drive.face_angle + drive.back_angle) / 2, SHARPEST_DEG)
    wedge = tail.wedge_splitting_force(thrust=1.0, half_angle=half, friction=friction_low(situation))
    return max(least, IN_LINE[drive.kind] * wedge)


def bore_capacity(situation: Situation) -> float | None:
    """Force in N that opens a bored end from inside, 5 % value; None where it is solid or its wall is not known."""
    wood, material, wall = situation.wood, situation.material, situation.case.work.wall
    if wall is None or situation.traits.form not in BORED or not splits(situation):
        return None
    if wood is not None:
        tension = wood.tension_perpendicular.low
    elif material is not None and material.tensile is not None:
        tension = material.tensile.low
    else:
        return None
    end = situation.body.end_diameter
    return tail.bore_split_capacity(end, min(wall, end / 2), tension)


def splitting(situation: Situation, center: TailCenter, drive: Drive | None) -> Limit | None:
    """The smaller of both ends' splitting thrusts."""
    whole, bore = split_capacity(situation), bore_capacity(situation)
    both = [
        ("the tail end", whole, tail_opening(situation, center), "split-model"),
        ("the bored end", bore, tail_opening(situation, center), "bore-model"),
    ]
    if drive is not None:
        both.append(("the drive end", whole, drive_opening(situation, drive), "split-model"))
    opened = [
        (capacity / opening, where, capacity, opening, model)
        for where, capacity, opening, model in both
        if capacity is not None and opening > 0.0
    ]
    if not opened:
        return None
    least, where, capacity, opening, model = min(opened, key=lambda entry: entry[0])
    divisor = split_divisor(situation)
    text = f"F = S_cap / ({divisor:g} × {opening:.3g}) = {capacity:.4g} N / ({divisor:g} × {opening:.3g})"
    sources = (model,) if situation.wood is not None else (model, "memory")
    return Limit("splitting", least / divisor, "rough-guide", sources, f"{where} splits", text)


def free_length(situation: Situation) -> float:
    """The longest stretch in mm without support."""
    length = situation.body.length
    steady = situation.case.hold.steady
    if steady is None or steady.position is None or not 0 < steady.position < length:
        return length
    return max(steady.position, length - steady.position)


def buckling_capacity(situation: Situation, between_centers: bool) -> tuple[Limit, float] | None:
    """Limit `buckling` and the critical thrust itself, from the thinnest finished section at its 5 % stiffness."""
    modulus = modulus_low(situation)
    if modulus is None or situation.side_grain:
        return None
    length = free_length(situation)
    thin = situation.body.thinnest
    if length / thin < EULER_FROM_RATIO:
        return None
    figure = slender.buckling_force.figure(
        diameter=thin, length=length, modulus=modulus, end_factor=1.0 if between_centers else 0.8
    )
    bowed = "bowed" in situation.traits.conditions
    divisor = BUCKLE_DIVISOR_BOWED if bowed else BUCKLE_DIVISOR
    limit = from_figure("buckling", figure, 1 / divisor, "the work bows under the thrust")
    if limit is None or figure.value is None:
        return None
    return limit, figure.value


def arbor_bows(situation: Situation) -> Limit | None:
    """Limit `buckling` of the slimmest ordinary arbor; its free length is the usual one however short the work.

    Source: buckling of a bar; its size from memory.
    """
    length = max(ARBOR_FREE_MM, situation.body.length)
    figure = slender.buckling_force.figure(diameter=ARBOR_MM, length=length, modulus=STEEL_GPA, end_factor=1.0)
    return from_figure("buckling", figure, 1 / BUCKLE_DIVISOR_BOWED, "the arbor bows under the thrust")


def modulus_low(situation: Situation) -> float | None:
    """Stiffness along the piece in GPa, 5 % value, less where the fibers lean; None where no table has it.

    Fibers at an angle: Hankinson's form between the stiffness along and across. Grain that runs anyhow counts as 45°.
    """
    wood = situation.wood
    if wood is not None:
        slope = situation.case.work.grain_slope
        lean = math.degrees(math.atan(1 / slope)) if slope else 0.0
        if situation.traits.grain in ("diagonal", "none"):
            lean = max(lean, LEAN_DIAGONAL_DEG)
        if lean == 0.0:
            return wood.modulus.low
        across = min(wood.modulus_perpendicular.low, wood.modulus.low)
        return grain_angle_strength(parallel=wood.modulus.low, perpendicular=across, angle=lean)
    material = situation.material
    return material.modulus.low if material is not None and material.modulus is not None else None


def short_column(situation: Situation) -> Limit | None:
    """Half the crushing strength over the thinnest section, without the bore where its wall is known."""
    strength = end_strength(situation)
    if strength is None:
        return None
    thin, wall = situation.body.thinnest, situation.case.work.wall
    bore = max(thin - 2 * wall, 0.0) if wall is not None and situation.traits.form in BORED else 0.0
    figure = tail.ring_crush_force.figure(outer_diameter=thin, inner_diameter=bore, strength=strength)
    return from_figure("short-column", figure, SHORT_COLUMN_SHARE, "the thinnest section is squeezed")


def center_rating(center: TailCenter) -> Limit:
    """What the tail center's bearing is made for."""
    why = (
        "the tail center's own rating" if center.rating_given else "a firm handwheel; the center's rating is not known"
    )
    basis = "practice" if center.rating_given else "rough-guide"
    return Limit("center-rating", center.rating, basis, ("memory",), why, f"F = {center.rating:g} N")
