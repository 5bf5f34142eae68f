"""Words a case may use, each list once."""

from typing import Literal

UnitSystem = Literal["inch", "metric"]
Form = Literal[
    "square", "octagon", "round", "disc", "log", "half-log", "slab", "tube", "ring", "sphere", "segmented", "irregular"
]
Grain = Literal["along", "across", "diagonal", "none"]
State = Literal["not-round", "round", "finished"]
MoistureWord = Literal["dry", "air-dry", "wet", "green", "frozen"]
Use = Literal["food", "toy", "other"]
Condition = Literal[
    "sound", "check", "crack", "through-crack", "ring-shake", "spalted", "punky", "rot", "bark-inclusion", "live-edge",
    "knot", "pith", "void", "burl", "crotch", "worm-holes", "painted", "treated", "nails", "grit", "glued-joint",
    "uncured", "bowed", "oily", "stress-crazed", "untested-glue", "reaction-wood",
]  # fmt: skip
CrackRun = Literal["along-axis", "across-face", "pith-to-rim"]
Purpose = Literal[
    "spindle", "bowl", "platter", "box", "hollow-form", "bush", "handle", "ring", "sphere", "knob", "pen", "column",
    "rod", "tube", "disc", "other",
]  # fmt: skip
MarksAllowed = Literal["none", "holes", "ring", "any"]

MachineKind = Literal["wood-lathe", "metal-lathe"]
Nose = Literal["threaded", "cam-lock", "bolted-taper", "taper-only"]
Stand = Literal["heavy-iron", "ordinary", "light"]
Extinguisher = Literal["water", "powder", "class-D", "none"]

Method = Literal[
    "spur-drive", "two-spur-drive", "toothed-ring-drive", "cup-drive", "point-and-pin-drive", "square-socket-drive",
    "driving-dog", "mandrel", "friction-block",
    "faceplate-screws", "waste-block-faceplate", "screw-chuck", "pin-chuck",
    "jaws-on-tenon", "jaws-in-recess", "long-jaws", "rubber-button-jaws", "three-jaw", "four-jaw-independent",
    "soft-jaws", "collet", "collet-block", "split-bushing", "drill-chuck",
    "jam-chuck", "glue-block", "paper-joint", "double-sided-tape", "vacuum",
    "ring-clamp-plate", "sphere-cups", "offset-faceplate", "through-spindle", "clamped-faceplate", "keyed-stud",
]  # fmt: skip
Aid = Literal["steady-rest", "wrap", "tail-support"]
MethodOrAid = Literal[Method, Aid]
DriveKind = Literal["toothed", "toothed-ring", "cup", "point"]
TailKind = Literal["live-point", "live-cup", "live-cone", "live-pad", "dead-point", "dead-cup", "none"]
ScrewKind = Literal["wood", "sheet-metal", "structural", "lag", "plasterboard"]
GlueKind = Literal["pva", "epoxy", "cyanoacrylate", "polyurethane", "hot-melt", "tape", "other"]

Operation = Literal["roughing", "shaping", "hollowing", "finishing", "sanding", "drilling", "parting", "balancing"]
Rotation = Literal["forward", "reverse"]
Tool = Literal["hand", "carriage"]
ToolMaterial = Literal["steel", "carbide"]
Cooling = Literal["dry", "air", "wet"]
Respirator = Literal["none", "P2", "P3", "powered"]

OTHER_WORDS = {
    "ca": "cyanoacrylate",
    "super glue": "cyanoacrylate",
    "hot melt": "hot-melt",
    "hot glue": "hot-melt",
    "wood glue": "pva",
    "white glue": "pva",
    "yellow glue": "pva",
    "double-sided tape": "tape",
    "pur": "polyurethane",
}
"""Other ways people say a word of a glue."""
