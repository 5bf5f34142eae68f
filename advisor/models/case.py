"""A case: one piece of work on one lathe, held and cut in one way, by one person.

Every quantity is a plain number in the canonical unit of its kind (`advisor.units`): mm, kg, N, N·m, kPa, degrees,
rpm, W, hours; altitude in m. Missing means that nobody said. Field names are those of a case file.
"""

from typing import Annotated, Any, get_args

from advisor.models.fields import Length, Quantity, whole
from advisor.models.section import Section, needed, said
from advisor.models.words import (
    Aid,
    Condition,
    Cooling,
    CrackRun,
    DriveKind,
    Extinguisher,
    Form,
    GlueKind,
    Grain,
    MachineKind,
    MarksAllowed,
    Method,
    MethodOrAid,
    MoistureWord,
    Nose,
    Operation,
    Purpose,
    Respirator,
    Rotation,
    ScrewKind,
    Stand,
    State,
    TailKind,
    Tool,
    ToolMaterial,
    UnitSystem,
    Use,
)
from advisor.units import (
    ALTITUDE,
    ANGLE,
    FORCE,
    LENGTH,
    MASS,
    PER_TURN,
    PERCENT,
    POWER,
    PRESSURE,
    RPM,
    SLOPE,
    TIME,
    TORQUE,
)

__all__ = [
    "AIDS",
    "METHODS",
    "BalanceTest",
    "Case",
    "Chuck",
    "Condition",
    "Crack",
    "Cut",
    "Drive",
    "Form",
    "Glue",
    "Grain",
    "Hold",
    "Machine",
    "Method",
    "MethodOrAid",
    "Person",
    "Recess",
    "Screws",
    "SlipTest",
    "State",
    "Steady",
    "Tail",
    "Tenon",
    "Vacuum",
    "Work",
]

METHODS: tuple[str, ...] = get_args(Method)
AIDS: tuple[str, ...] = get_args(Aid)


Text = str  # one printable line
Names = Annotated[tuple[Text, ...], Length(1, 20)]
Swept = Annotated[float, Quantity(LENGTH, 1.0, 3000.0)]
Long = Annotated[float, Quantity(LENGTH, 1.0, 10_000.0)]
Place = Annotated[float, Quantity(LENGTH, 0.0, 10_000.0)]
Size = Annotated[float, Quantity(LENGTH, 0.1, 3000.0)]
SizeOrZero = Annotated[float, Quantity(LENGTH, 0.0, 3000.0)]
Pair = tuple[Place, Place]  # a diameter above that of the work is a contradiction
Radii = Annotated[tuple[Size, ...], Length(6, 72)]
Mass = Annotated[float, Quantity(MASS, 0.0001, 2000.0)]
Turning = Annotated[float, Quantity(RPM, 1.0, 60_000.0)]
Force = Annotated[float, Quantity(FORCE, 0.1, 200_000.0)]
Torque = Annotated[float, Quantity(TORQUE, 0.01, 20_000.0)]
FlankAngle = Annotated[float, Quantity(ANGLE, 0.0, 80.0)]
PointAngle = Annotated[float, Quantity(ANGLE, 10.0, 170.0)]
Lead = Annotated[float, Quantity(PER_TURN, 0.2, 50.0)]
Feed = Annotated[float, Quantity(PER_TURN, 0.001, 20.0)]
Morse = Annotated[int, whole(0, 7)]


class Crack(Section):
    """A visible crack."""

    along: Size | None = said("length along the fibers, in from the end or the rim")
    across: Size | None = said("how far it runs over the face")
    gap: SizeOrZero | None = said("how wide it gapes")
    runs: CrackRun | None = said("which way it runs")


class BalanceTest(Section):
    """A weight at a radius that holds the heavy side up."""

    weight: Mass = needed("the weight")
    radius: Size = needed("its distance from the axis")


class Work(Section):
    """The piece as it is now and as it shall be."""

    material: Text = needed("name of a wood, plastic, laminate, stone, metal; unknown is allowed")
    form: Form | None = said("shape as it is now")
    grain: Grain | None = said("direction of the fibers against the lathe axis")
    state: State | None = said("as it is now")
    diameter: Swept = needed("largest swept diameter, corner to corner for a square")
    length: Long = needed("along the axis")
    finished_diameter: Size | None = said("largest diameter when finished")
    finished_length: Size | None = said("length or height when finished")
    thinnest_diameter: Size | None = said("smallest diameter when finished")
    wall: Size | None = said("wall thickness when finished")
    floor: Size | None = said("thickness of the bottom when finished")
    mass: Mass | None = said("mass as it is now")
    moisture: Annotated[float, Quantity(PERCENT, 1.0, 250.0)] | MoistureWord | None = said("moisture content")
    one_side_wet: bool | None = said("one side is wetter than the other")
    raw: bool | None = said("bone, horn, shell or hide not cleaned or of unknown origin")
    radii: Radii | None = said("measured from the axis at equal angles, one turn")
    radii_far_end: Radii | None = said("the same at the far end")
    offset: SizeOrZero | None = said("distance of the center of mass from the axis")
    balance_test: BalanceTest | None = said("a weight at a radius that holds the heavy side up")
    axis_from_flat: SizeOrZero | None = said("half-log along its grain: distance of the axis from the flat")
    grain_slope: Annotated[float, Quantity(SLOPE, 1.0, 1000.0)] | None = said("slope of the grain against the axis")
    end_waste: SizeOrZero | None = said("length at each end that is cut away in the end")
    profile: Annotated[tuple[Pair, ...], Length(2, 200)] | None = said("finished shape along the axis")
    parts: Names | None = said("materials of a mixed piece")
    tested: bool | None = said("a certificate or a test exists (stone, old molding, glue)")
    use: Use | None = said("what it is for")
    condition: Annotated[tuple[Condition, ...], Length(1, 27)] | None = said("everything that is to be seen on it")
    crack: Crack | None = said("the crack, measured")
    purpose: Purpose | None = said("what it shall become")
    marks_allowed: MarksAllowed | None = said("marks that may stay on the finished piece")


class Machine(Section):
    """The lathe."""

    kind: MachineKind | None = said("wood lathe or metal lathe")
    swing: Size | None = said("largest diameter over the bed")
    swing_over_carriage: Size | None = said("largest diameter over the carriage or tool rest")
    between_centers: Long | None = said("largest length between centers")
    spindle_bore: Size | None = said("bore of the spindle")
    min_rpm: Turning | None = said("slowest speed")
    max_rpm: Turning | None = said("fastest speed")
    speeds: Annotated[tuple[Turning, ...], Length(1, 64)] | None = said("the speeds there are, when it has steps")
    rpm_set: Turning | None = said("speed as it stands now")
    nose: Nose | None = said("spindle nose")
    spindle_taper: Morse | None = said("Morse number of the spindle")
    tail_taper: Morse | None = said("Morse number of the tailstock")
    mass: Annotated[float, Quantity(MASS, 1.0, 20_000.0)] | None = said("lathe, with its bench when bolted to it")
    base_width: Annotated[float, Quantity(LENGTH, 50.0, 5000.0)] | None = said("width of the stand at the floor")
    spindle_height: Annotated[float, Quantity(LENGTH, 50.0, 3000.0)] | None = said("spindle above the floor")
    bolted_down: bool | None = said("bolted to the floor")
    stand: Stand | None = said("kind of stand")
    power: Annotated[float, Quantity(POWER, 10.0, 100_000.0)] | None = said("power of the motor")
    reverse: bool | None = said("turns in reverse")
    nose_lock: bool | None = said("the nose locks against unscrewing")
    brake: bool | None = said("has a brake")
    drawbar: bool | None = said("a drawbar fits the spindle")
    handwheel_lead: Lead | None = said("travel of the tailstock quill per turn of its handwheel")
    handwheel_diameter: Annotated[float, Quantity(LENGTH, 20.0, 1000.0)] | None = said("diameter of that handwheel")
    tailstock: bool | None = said("has a tailstock")
    altitude: Annotated[float, Quantity(ALTITUDE, -500.0, 9000.0)] | None = said("height above the sea")
    extinguisher: Extinguisher | None = said("fire extinguisher within reach")


class Drive(Section):
    """The drive center in the headstock."""

    kind: DriveKind | None = said("kind of drive")
    teeth: Annotated[int, whole(1, 200)] | None = said("number of teeth")
    outer_diameter: Size | None = said("over the teeth or the rim")
    inner_diameter: SizeOrZero | None = said("where the teeth begin, or inside the rim")
    face_angle: FlankAngle | None = said("driving flank, from the axis")
    back_angle: FlankAngle | None = said("back of a tooth, from the axis")
    tooth_height: Size | None = said("height of a tooth")
    taper_seated: bool | None = said("its shank was seated with a tap")
    seated_depth: SizeOrZero | None = said("teeth sunk in; 0 mm when only pressed")
    shank_taper: Morse | None = said("Morse number of its shank")


class Tail(Section):
    """The center in the tailstock."""

    kind: TailKind | None = said("kind of center")
    point_angle: PointAngle | None = said("included angle of the point")
    cup_diameter: Size | None = said("outside diameter of the cup")
    lip_height: Size | None = said("height of the cup's lip")
    rating: Force | None = said("largest thrust marked on it")


class Steady(Section):
    """A steady rest."""

    position: Place | None = said("distance from the headstock end of the work")


class Tenon(Section):
    """A tenon for jaws."""

    diameter: Size | None = said("diameter of the tenon")
    length: Size | None = said("length of the tenon")
    shoulder_diameter: Size | None = said("outside diameter of the shoulder")


class Recess(Section):
    """A recess for jaws."""

    diameter: Size | None = said("diameter of the recess")
    depth: Size | None = said("depth of the recess")
    wall: Size | None = said("wood left round the recess")


class Screws(Section):
    """Screws that hold the work."""

    count: Annotated[int, whole(1, 60)] | None = said("number of screws")
    diameter: Annotated[float, Quantity(LENGTH, 1.0, 30.0)] | None = said("outside diameter of the thread")
    length: Annotated[float, Quantity(LENGTH, 2.0, 300.0)] | None = said("threaded length in the work")
    circle: Size | None = said("diameter of the circle they stand on")
    kind: ScrewKind | None = said("kind of screw")


class Glue(Section):
    """A glued or taped hold."""

    kind: GlueKind | None = said("kind of glue")
    diameter: Size | None = said("diameter of the glued face")
    cured: bool | None = said("fully cured")


class Vacuum(Section):
    """A suction hold."""

    gauge: Annotated[float, Quantity(PRESSURE, 1.0, 101.325)] | None = said("gauge reading with the work on")
    seal_diameter: Size | None = said("diameter of the seal")


class Chuck(Section):
    """The chuck."""

    max_rpm: Turning | None = said("highest speed marked on it")
    grip: Force | None = said("force with which all jaws together grip")
    jaw_depth: Size | None = said("depth of the jaws that can grip")
    jaw_circle: Size | None = said("diameter at which the jaws close to a true circle")
    jaw_smallest: Size | None = said("smallest diameter the jaws close on from outside")
    jaw_largest: Size | None = said("largest diameter the jaws close on from outside, at their travel mark")


class SlipTest(Section):
    """A measured pair: the torque at which the drive slipped under a thrust."""

    torque: Torque = needed("torque at which it slipped")
    thrust: Force = needed("thrust at that moment")


class Hold(Section):
    """How the work is held, and what there is to hold it with."""

    method: Method | None = said("the way of holding, when already chosen")
    kit: Annotated[tuple[MethodOrAid, ...], Length(0, 60)] | None = said("methods and aids to hand; missing means all")
    drive: Drive | None = said("the drive center")
    tail: Tail | None = said("the tail center")
    steady: Steady | None = said("the steady rest")
    tenon: Tenon | None = said("the tenon")
    recess: Recess | None = said("the recess")
    screws: Screws | None = said("the screws")
    glue: Glue | None = said("the glue or tape")
    vacuum: Vacuum | None = said("the suction hold")
    chuck: Chuck | None = said("the chuck")
    overhang: Place | None = said("length that stands out in front of the hold")
    rear_overhang: Place | None = said("bar that stands out behind the spindle")
    outboard: bool | None = said("held on the outboard side")
    handwheel_torque: Annotated[float, Quantity(TORQUE, 0.01, 200.0)] | None = said("torque on the tail handwheel")
    left_mounted: Annotated[float, Quantity(TIME, 0.0, 10_000.0)] | None = said("how long it stayed in the hold")
    slip_test: SlipTest | None = said("a measured slip of this drive in this wood")


class Cut(Section):
    """What is cut, and with what."""

    operation: Operation | None = said("what is being done")
    rotation: Rotation | None = said("which way the work turns")
    tool: Tool | None = said("tool held by hand or by the carriage")
    tool_material: ToolMaterial | None = said("material of the cutting edge")
    force: Annotated[float, Quantity(FORCE, 0.1, 20_000.0)] | None = said("cutting force")
    depth: Annotated[float, Quantity(LENGTH, 0.001, 100.0)] | None = said("depth of cut")
    feed: Feed | None = said("advance per turn")
    drill_diameter: Size | None = said("diameter of the bit")
    diameter: Size | None = said("where the tool cuts")
    wanted_rpm: Turning | None = said("speed the person has in mind")
    cooling: Cooling | None = said("dry, air or wet")


class Person(Section):
    """Who stands at the lathe."""

    reacted_before: Names | None = said("materials this person has reacted to")
    asthma: bool | None = said("has asthma")
    respirator: Respirator | None = said("mask that is worn")
    extraction: bool | None = said("dust is drawn off")
    others_in_room: bool | None = said("others are in the room")


class Expect(Section):
    """What must come out of an example: tests read it, advice does not."""

    verdict: Text | None = said("the verdict")
    hold: Text | None = said("the hold in use")
    governed_by: Text | None = said("the limit that sets the ceiling")
    window: Text | None = said("the tailstock window")
    fired: Names | None = said("rules that must speak")
    stages: Names | None = said("stages of the plan, in their order")


class Case(Section):
    """A whole case."""

    title: Text | None = said("a name for the case")
    units: UnitSystem | None = said("what numbers without a unit are taken for")
    work: Work = needed()
    machine: Machine = Machine()
    hold: Hold = Hold()
    cut: Cut = Cut()
    person: Person = Person()
    expect: Expect | None = said("what must come out, in an example")

    @property
    def heading(self) -> str:
        """Its title; where it has none, what the piece is."""
        work = self.work
        if work.form in ("irregular", "segmented"):
            return self.title or f"{work.form} {work.material}"
        return self.title or f"{work.material} {work.form or 'piece'}"


def case_schema() -> dict[str, Any]:
    """JSON Schema of a case as people write it."""
    from advisor.models.schema import case_schema as build

    return build()
