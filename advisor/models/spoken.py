"""How a way of holding is called inside a sentence: its id as words, where the trade says it no better."""

_SPOKEN = {
    "spur-drive": "four-spur drive",
    "two-spur-drive": "two-spur drive",
    "toothed-ring-drive": "toothed-ring drive",
    "cup-drive": "cup drive",
    "faceplate-screws": "faceplate and wood screws",
    "waste-block-faceplate": "faceplate on a waste block",
    "jaws-on-tenon": "chuck jaws closed on a tenon",
    "jaws-in-recess": "chuck jaws opened in a recess",
    "three-jaw": "engineer's three-jaw chuck",
    "four-jaw-independent": "independent four-jaw chuck with pads",
    "split-bushing": "split bushing in the chuck",
    "double-sided-tape": "double-sided tape",
    "through-spindle": "bar held through the spindle",
    "clamped-faceplate": "clamps on a faceplate",
    "sphere-cups": "two soft cups",
}


def spoken(method: str) -> str:
    """A way of holding, or an aid, in the trade's words."""
    return _SPOKEN.get(method, method.replace("-", " "))
