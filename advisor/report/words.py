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
