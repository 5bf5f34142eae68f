"""The few fixed phrases of the printed answer."""

HEADLINE = {
    "go": "GO.",
    "go-with-care": "GO, WITH CARE.",
    "ask-first": "ASK FIRST.",
    "do-not-mount": "DO NOT MOUNT.",
}
WINDOW_WORDS = {
    "open": "the window is open",
    "narrow": "the window is narrow",
    "empty": "the window is empty",
    "not-used": "no tailstock thrust",
}
METHOD_WORDS = {
    "spur-drive": "four-spur drive",
    "two-spur-drive": "two-spur drive",
    "toothed-ring-drive": "toothed-ring drive",
    "cup-drive": "cup drive",
    "faceplate-screws": "faceplate and wood screws",
    "jaws-on-tenon": "chuck jaws closed on a tenon",
    "jaws-in-recess": "chuck jaws opened in a recess",
    "three-jaw": "engineer's three-jaw chuck",
    "four-jaw-independent": "independent four-jaw chuck with pads",
    "split-bushing": "split bushing in the chuck",
}
