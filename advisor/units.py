"""Quantities as people write them, read exactly, and printed back.

Every number is a `Fraction` until the last step, so `1 1/2 in` is 38.1 mm and not nearly so. Whatever can be read in
two ways is refused, and the refusal says what would be accepted.
"""

import re
from enum import Enum
from fractions import Fraction
from functools import cache
from math import ceil, floor, log10
from typing import Literal, NamedTuple

from advisor.data.tables import Table, Text, load

TABLE = Table(
    "units.csv",
    tuple(Text(name) for name in ("kind", "unit", "factor", "spellings", "source")),
    key=("kind", "unit"),
    rows=92,
)
MM_PER_INCH, NEWTONS_PER_POUND, NM_PER_INCH_POUND = 25.4, 4.4482216152605, 0.1129848290276167  # exact by definition
KG_PER_POUND = 0.45359237  # exact by definition
LARGEST = 10**100
LONGEST = 60  # characters; no quantity a person writes is longer


class System(str, Enum):
    """What a number without a unit is taken for, and what is printed."""

    INCH = "inch"
    METRIC = "metric"


class Kind(NamedTuple):
    """What sort of quantity: its canonical unit, its everyday units (the first is the one of a bare number), examples.

    `always_bare` marks kinds whose unit goes without saying in either system.
    """

    name: str
    unit: str
    inch: tuple[str, ...]
    metric: tuple[str, ...]
    example: str
    always_bare: bool = False

    def everyday(self, system: System) -> tuple[str, ...]:
        """Units of that system a person expects to see, the ordinary one first."""
        return self.inch if system is System.INCH else self.metric


LENGTH = Kind("length", "mm", ("in",), ("mm",), """10 in, 1 1/2 in, 3/4", 4 ft 2 in, 38 mm or 1.2 m""")
PER_TURN = Kind("per-turn", "mm", ("in",), ("mm",), "1/10 in, 2.5 mm or 0.1 mm/rev")
ALTITUDE = Kind("altitude", "m", ("ft",), ("m",), "5000 ft or 1500 m")
MASS = Kind("mass", "kg", ("lb", "oz"), ("kg", "g"), "11 lb, 2 lb 4 oz, 5 kg or 350 g")
FORCE = Kind("force", "N", ("lbf",), ("N",), "45 lbf, 200 N or 1.5 kN")
TORQUE = Kind("torque", "N·m", ("in-lbf",), ("N·m",), "40 in-lbf, 6 ft-lbf or 3 N-m")
STRESS = Kind("stress", "MPa", ("psi",), ("MPa", "GPa"), "7410 psi, 49 MPa or 12 GPa")
PRESSURE = Kind("pressure", "kPa", ("inHg",), ("kPa",), "20 inHg, 10 psi or 70 kPa")
ANGLE = Kind("angle", "deg", ("deg",), ("deg",), "60 deg, 22.5° or 1° 26'")
RPM = Kind("rpm", "rpm", ("rpm",), ("rpm",), "770 rpm or 770", always_bare=True)
CUTTING_SPEED = Kind("cutting-speed", "m/min", ("ft/min",), ("m/min",), "80 ft/min or 25 m/min")
SPEED = Kind("speed", "m/s", ("ft/s",), ("m/s",), "40 ft/s or 12 m/s")
TRAVERSE = Kind("traverse", "mm/s", ("in/s",), ("mm/s",), "0.2 in/s, 10 in/min or 120 mm/min")
POWER = Kind("power", "W", ("hp",), ("W", "kW"), "1 1/2 hp, 750 W or 1.5 kW")
DENSITY = Kind("density", "kg/m3", ("lb/ft3",), ("kg/m3",), "44 lb/ft3, 700 kg/m3 or 0.7 g/cm3")
FRACTURE_ENERGY = Kind("fracture-energy", "J/m2", ("J/m2",), ("J/m2",), "300 J/m2")
RISE = Kind("rise", "K", ("F",), ("K",), "30 K or 45 F (a difference)")
EXPANSION = Kind("expansion", "/K", ("/F",), ("/K",), "11.5e-6/K or 6.4e-6/F")
MASS_RADIUS = Kind("mass-radius", "kg·m", ("lb-in",), ("kg·m",), "0.1 kg-m or 9 lb-in")
TIME = Kind("time", "h", ("h",), ("h",), "90 min, 12 h or 2 days")
PERCENT = Kind("percent", "%", ("%",), ("%",), "12% or 12", always_bare=True)
NUMBER = Kind("number", "", ("",), ("",), "4, 0.35 or 1/3", always_bare=True)
SLOPE = Kind("slope", "1:n", ("1:n",), ("1:n",), "1:10")

COMPOUNDS = {"length": ("ft", "in"), "mass": ("lb", "oz"), "angle": ("deg", "arcmin", "arcsec")}


class UnitError(ValueError):
    """A text that is no quantity of its kind, or could be read in two ways."""

    def __init__(self, text: str, reason: str, kind: Kind) -> None:
        given = text if len(text) <= LONGEST else text[: LONGEST - 1] + "…"
        super().__init__(f"{given!r} {reason}; accepted: {kind.example}")
        self.given = given
        self.reason = reason
        self.accepted = kind.example


class _Units(NamedTuple):
    factors: dict[str, Fraction]
    names: dict[str, str]


@cache
def _units(kind: str) -> _Units:
    """The units of one kind: few answers need them all."""
    if kind == NUMBER.name:
        return _Units({"": Fraction(1)}, {})
    units = _Units({}, {})
    for row in load(TABLE):
        if row.text("kind") != kind:
            continue
        top, _, bottom = row.text("factor").partition("/")
        units.factors[row.text("unit")] = Fraction(top) / Fraction(bottom or 1)
        units.names.update({spelling: row.text("unit") for spelling in row.text("spellings").split(" ")})
        units.names[_key(row.text("unit"))] = row.text("unit")
    return units


ALIKE = str.maketrans({
    **dict.fromkeys("‘’′ʹ", "'"), **dict.fromkeys("“”″", '"'), **dict.fromkeys("−–—‐‑", "-"),
    "⁄": "/", "∕": "/", "²": "2", "³": "3", "µ": "µ", "μ": "µ",
    "¼": " 1/4", "½": " 1/2", "¾": " 3/4", "⅓": " 1/3", "⅔": " 2/3", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8",
})  # fmt: skip
NUMBER_TEXT = (
    r"(?:[0-9]+(?:[ ]+|-)[0-9]+[ ]?/[ ]?[0-9]+|[0-9]+[ ]?/[ ]?[0-9]+"
    r"|(?:[0-9]+\.[0-9]*|\.[0-9]+|[0-9]+)(?:[eE][-+]?[0-9]{1,3}(?![0-9]))?)"
)
ONE = re.compile(rf"([-+]?)({NUMBER_TEXT})(?![0-9.])(.*)")
MIXED = re.compile(r"(?:([0-9]+)(?: +|-))?([0-9]+) ?/ ?([0-9]+)")
RANGE = re.compile(rf"{NUMBER_TEXT}[^0-9]*?(?:-|to|\.\.)[ ]*{NUMBER_TEXT}")
SLOPE_TEXT = re.compile(rf"1 ?(?::|in) ?({NUMBER_TEXT})")


def _plain(text: str) -> str:
    return " ".join(text.translate(ALIKE).replace("''", '"').split())


def _key(unit: str) -> str:
    """A unit as it is looked up: case, spaces, dots, hyphens and carets make no difference."""
    key = re.sub(r"[\s.·⋅*^-]", "", re.sub(r"\s+per\s+", "/", f" {unit} ").casefold())
    return key.replace("°", "deg").replace("μ", "µ").replace("²", "2").replace("³", "3")


def _exact(number: str) -> Fraction | None:
    """The exact value of a number, None for a division by zero or a mixed number whose fraction is above one."""
    mixed = MIXED.fullmatch(number)
    if mixed is None:
        return Fraction(number)
    whole, top, bottom = mixed.group(1), int(mixed.group(2)), int(mixed.group(3))
    if bottom == 0 or (whole is not None and top >= bottom):
        return None
    return int(whole or 0) + Fraction(top, bottom)


def parse(text: str, kind: Kind, bare: System | None = None) -> float:
    """A quantity from text, in the canonical unit of its kind.

    `bare` says what a number without a unit is taken for; without it such a number is refused, save for kinds whose
    unit goes without saying. Exact: one rounding, from the exact fraction to a float.

    Raises UnitError: no number, an unknown unit or one of another kind, a comma, a range, two values, no unit.
    """
    exact = parse_exact(text, kind, bare)
    if abs(exact) > LARGEST:
        raise UnitError(text, "is larger than anything here", kind)
    return float(exact)


def parse_exact(text: str, kind: Kind, bare: System | None = None) -> Fraction:
    """As `parse`, without the rounding to a float."""
    plain = _plain(text) if len(text) <= LONGEST else ""
    if not plain:
        raise UnitError(text, "is too long for a quantity" if text.strip() else "is empty", kind)
    if kind is SLOPE:
        return _slope(text, plain)
    match = ONE.fullmatch(plain)
    if match is None:
        raise UnitError(text, _why_no_number(plain), kind)
    sign, number, rest = match.groups()
    value = _exact(number)
    if value is None:
        raise UnitError(text, f"holds {number}, which is no ordinary fraction", kind)
    factor = _factor(rest.strip(), kind, bare)
    if factor is not None:
        total: Fraction | None = value * factor
    else:
        total = _compound(plain[len(sign) :], kind)
    if total is None:
        raise UnitError(text, _why_no_unit(plain, rest.strip(), kind), kind)
    return -total if sign == "-" else total


def _factor(unit: str, kind: Kind, bare: System | None) -> Fraction | None:
    units = _units(kind.name)
    if unit:
        name = units.names.get(_key(unit))
        return None if name is None else units.factors[name]
    if bare is None and not kind.always_bare:
        return None
    return units.factors[kind.everyday(bare or System.METRIC)[0]]


def _compound(plain: str, kind: Kind) -> Fraction | None:
    """Feet and inches, pounds and ounces, degrees and minutes, each smaller part less than one of the part above."""
    names = COMPOUNDS.get(kind.name, ())
    parts = re.findall(rf"({NUMBER_TEXT})[ ]?([^0-9 -]+)", plain)
    if len(parts) < 2 or re.sub(r"[ -]", "", "".join(map("".join, parts))) != re.sub(r"[ -]", "", plain):
        return None
    units = _units(kind.name)
    total, last = Fraction(0), -1
    for number, unit in parts:
        name, value = units.names.get(_key(unit)), _exact(number)
        if name not in names or value is None or names.index(name) <= last:
            return None
        if last >= 0 and value * units.factors[name] >= units.factors[names[last]]:
            return None
        last = names.index(name)
        total += value * units.factors[name]
    return total


def _slope(text: str, plain: str) -> Fraction:
    match = SLOPE_TEXT.fullmatch(plain)
    value = _exact(match.group(1)) if match is not None else None
    if not value:
        raise UnitError(text, "is not a slope written as one to so many", SLOPE)
    return value


def _why_no_number(plain: str) -> str:
    if re.search(r"[0-9],[0-9]", plain):
        return "has a comma, which may stand for a decimal point or for thousands: write 1.5 or 1500"
    if re.match(r"(?:about|approx|ca|circa|~|≈|±|[<>≤≥])", plain, re.IGNORECASE):
        return "does not start with a number: write one plain value"
    if re.search(r"\d", plain) is None or re.match(r"[-+]?\.?(?:nan|inf)", plain, re.IGNORECASE):
        return "is not a number"
    return "cannot be read as one number"


def _why_no_unit(plain: str, rest: str, kind: Kind) -> str:
    if not rest:
        inch, metric = kind.inch[0], kind.metric[0]
        either = f"{plain} {inch} or {plain} {metric}" if inch != metric else f"{plain} {inch}"
        return f"has no unit: write {either}, or say units: inch or units: metric"
    if rest.startswith(","):
        return _why_no_number(plain)
    if RANGE.match(plain):
        return "is a range: write one value, the unfavorable end"
    if re.search(r"[0-9]", re.sub(r"[a-zA-Z/][23]|1/", "", rest)):
        return "holds more than one number, or one without a unit: write one value with its unit"
    kinds = dict.fromkeys(row.text("kind") for row in load(TABLE))
    others = [other for other in kinds if _key(rest) in _units(other).names]
    if others:
        return f"is a {others[0].replace('-', ' ')}, not a {kind.name.replace('-', ' ')}"
    return f"has a unit that is not known here ({rest})" if kind.unit else f"needs no unit ({rest})"


def convert(value: float, kind: Kind, unit: str) -> float:
    """A value in the canonical unit of its kind, in another unit. KeyError for a unit the kind does not have."""
    units = _units(kind.name)
    name = unit if unit in units.factors else units.names[_key(unit)]
    return float(Fraction(repr(float(value))) / units.factors[name])  # 25.4 is meant, not the binary number beside it


def spellings(kind: Kind) -> tuple[str, ...]:
    """Every unit of a kind by the name it is printed with."""
    return tuple(_units(kind.name).factors)


Rounding = Literal["down", "up", "near"]


def show(value: float, kind: Kind, system: System, round_: Rounding = "near", figures: int = 3) -> str:
    """A value in the canonical unit as a person would write it in that system, with its unit.

    Inch lengths come in shop fractions, thousandths below 1/8 in; everything else to `figures` figures. `round_` is
    the way the shown value may differ from the true one: "down" never shows more, "up" never less.
    """
    if kind is SLOPE:
        return f"1:{_decimal(Fraction(value), round_, figures)}"
    unit, amount = _everyday(Fraction(value), kind, system)
    if kind is LENGTH and system is System.INCH:
        return f"{_inches(amount, round_)} in"
    return f"{_decimal(amount, round_, figures)}{'' if unit.startswith('/') else ' '}{unit}".rstrip()


def _everyday(value: Fraction, kind: Kind, system: System) -> tuple[str, Fraction]:
    factors = _units(kind.name).factors
    names = sorted(kind.everyday(system), key=lambda name: factors[name])
    fitting = [name for name in names if abs(value) >= factors[name]]
    unit = fitting[-1] if fitting else names[0]
    return unit, value / factors[unit]


def two_figures(value: float, up: bool) -> float:
    """A number to two figures: a requirement up, a limit down."""
    if value <= 0:
        return 0.0
    step = 10.0 ** (floor(log10(value)) - 1)
    return (ceil(value / step - 1e-9) if up else floor(value / step + 1e-9)) * step


SNAP = Fraction(1, 10**9)  # relative; what lies this near to a step is on it


def _steps(value: Fraction, step: Fraction, round_: Rounding) -> int:
    """How many steps make up the value."""
    steps = value / step
    near = floor(steps + Fraction(1, 2))
    if round_ == "near" or abs(steps - near) <= SNAP * max(Fraction(1), abs(steps)):
        return near
    return floor(steps) if round_ == "down" else ceil(steps)


COARSEST = Fraction(16, 1000)  # a shop fraction is at most this share of the value
FINEST = Fraction(1, 64)


def _inches(value: Fraction, round_: Rounding) -> str:
    exact = _steps(value, FINEST, "near") * FINEST
    if exact and abs(value - exact) <= SNAP * max(Fraction(1), abs(value)):
        return _shop_fraction(exact)
    if abs(value) < Fraction(1, 8):
        if abs(value) < Fraction(1, 200):
            return _decimal(value, round_, 2)
        return _fixed(_steps(value, Fraction(1, 1000), round_), 3)
    step = next((Fraction(1, d) for d in (1, 2, 4, 8, 16, 32) if Fraction(1, d) <= COARSEST * abs(value)), FINEST)
    return _shop_fraction(_steps(value, step, round_) * step)


def _shop_fraction(value: Fraction) -> str:
    whole, part = divmod(abs(value), 1)
    text = f"{whole} {part}" if whole and part else f"{part or whole}"
    return f"-{text}" if value < 0 else text


def _decimal(value: Fraction, round_: Rounding, figures: int) -> str:
    if value == 0:
        return "0"
    power = int(f"{float(abs(value)):e}".partition("e")[2])
    least = power - figures + 1
    steps = _steps(value, Fraction(10) ** least, round_)
    if power < -4:
        return f"{float(steps * Fraction(10) ** least):.{figures}g}"
    return _fixed(steps, -least) if least < 0 else str(steps * 10**least)


def _fixed(steps: int, places: int) -> str:
    """So many steps of 10^-places, without an exponent and without trailing zeros."""
    whole, part = divmod(abs(steps), 10**places)
    text = f"{whole}.{part:0{places}d}".rstrip("0").rstrip(".")
    return f"-{text}" if steps < 0 else text
