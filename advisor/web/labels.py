"""Words beside the fields, and which fields belong to which question and to which limit."""

GROUPS = {
    "work": "The piece",
    "machine": "The lathe",
    "hold": "The hold",
    "cut": "The cut",
    "person": "The person at the lathe",
}

LABELS = {
    "work.form": "Shape now",
    "work.grain": "Grain against the axis",
    "work.state": "State now",
    "work.diameter": "Largest diameter",
    "work.one_side_wet": "One side wetter",
    "work.raw": "Raw or of unknown origin",
    "work.radii": "Radii round one turn",
    "work.radii_far_end": "Radii at the far end",
    "work.offset": "Center of mass off the axis",
    "work.balance_test.weight": "Balance test: weight",
    "work.balance_test.radius": "Balance test: radius",
    "work.axis_from_flat": "Axis from the flat",
    "work.end_waste": "Waste at each end",
    "work.parts": "Materials it is made of",
    "work.tested": "Tested or certified",
    "work.condition": "What you see on it",
    "work.crack.along": "Crack: along the fibers",
    "work.crack.across": "Crack: over the face",
    "work.crack.runs": "Crack: which way",
    "work.purpose": "What it is to become",
    "work.marks_allowed": "Marks that may stay",
    "machine.kind": "Kind of lathe",
    "machine.swing_over_carriage": "Swing over the carriage",
    "machine.between_centers": "Length between centers",
    "machine.min_rpm": "Slowest speed",
    "machine.max_rpm": "Fastest speed",
    "machine.speeds": "Speeds it has",
    "machine.rpm_set": "Speed as it stands now",
    "machine.nose": "Spindle nose",
    "machine.mass": "Mass of the lathe",
    "machine.base_width": "Width of the stand",
    "machine.spindle_height": "Spindle above the floor",
    "machine.stand": "Kind of stand",
    "machine.reverse": "Turns in reverse",
    "machine.handwheel_lead": "Quill travel per turn",
    "machine.handwheel_diameter": "Tail handwheel, diameter",
    "machine.extinguisher": "Extinguisher in reach",
    "hold.method": "Way of holding",
    "hold.kit": "To hand",
    "hold.drive.kind": "Drive center",
    "hold.tail.kind": "Tail center",
    "hold.overhang": "Stands out in front",
    "hold.rear_overhang": "Stands out behind",
    "hold.handwheel_torque": "Torque on the tail handwheel",
    "hold.left_mounted": "Time it stayed in the hold",
    "cut.operation": "What is being done",
    "cut.rotation": "Turning",
    "cut.tool": "Tool held by",
    "cut.tool_material": "Cutting edge",
    "cut.diameter": "Diameter where it cuts",
    "cut.drill_diameter": "Bit, diameter",
    "cut.wanted_rpm": "Speed you have in mind",
    "person.reacted_before": "Reacted to before",
    "person.respirator": "Mask worn",
    "person.extraction": "Dust is drawn off",
    "person.others_in_room": "Others in the room",
}
"""What stands beside a field where the words of its name would not do."""

ALWAYS = ("work.material", "work.diameter", "work.length", "work.form")
"""The fields of every question, in the order they are asked for."""

FIRST = {
    "advise": ("work.state", "work.moisture", "work.purpose", "work.condition", "machine.kind", "hold.method"),
    "mount": (
        "work.state", "work.moisture", "work.condition", "machine.kind", "person.extraction", "person.respirator",
        "person.asthma", "person.reacted_before",
    ),
    "hold": (
        "work.grain", "work.state", "work.moisture", "work.purpose", "work.condition", "machine.kind", "hold.method",
        "hold.kit", "cut.operation",
    ),
    "speed": (
        "work.grain", "work.state", "work.condition", "machine.mass", "machine.min_rpm", "machine.max_rpm",
        "hold.method", "cut.wanted_rpm",
    ),
    "thrust": (
        "work.state", "work.moisture", "work.finished_diameter", "work.condition", "machine.handwheel_lead",
        "hold.method", "hold.tail.kind",
    ),
}  # fmt: skip
"""The fields that each question begins with."""

BEHIND = {
    "rim-speed": ("work.state", "work.form"),
    "walking": (
        "work.offset", "work.mass", "machine.mass", "machine.bolted_down", "machine.stand", "machine.base_width",
    ),
    "hold": ("hold.method", "hold.overhang", "hold.chuck.grip", "hold.tenon.diameter", "hold.screws.count"),
    "whirl": ("work.thinnest_diameter", "work.finished_diameter", "hold.steady.position"),
    "rear-overhang": ("hold.rear_overhang", "machine.spindle_bore"),
    "crack": ("work.crack.along", "work.crack.across", "work.crack.runs"),
    "burst": ("work.condition", "work.moisture"),
    "joint": ("hold.glue.kind", "hold.glue.cured"),
    "jaws-at-speed": ("hold.chuck.grip",),
    "device-mark": ("hold.chuck.max_rpm",),
    "heat": ("hold.tail.kind",),
    "operation": ("cut.operation",),
    "machine-maximum": ("machine.max_rpm",),
    "crushing": ("hold.tail.kind", "work.moisture"),
    "splitting": ("hold.tail.kind", "work.condition"),
    "buckling": ("work.thinnest_diameter", "work.finished_diameter", "hold.steady.position"),
    "short-column": ("work.thinnest_diameter",),
    "center-rating": ("hold.tail.kind", "hold.tail.rating"),
}  # fmt: skip
"""The fields that move a limit, beside those every question has."""
