"""The record of one material or condition of wood, and the closed lists of words it is written in."""

from collections.abc import Mapping
from typing import NamedTuple

from advisor.figure import Spread

VERDICT_ORDER = ("go", "go-with-care", "ask-first", "do-not-mount")
FAMILIES = (
    "plastic",
    "laminate",
    "resin",
    "hybrid",
    "animal",
    "stone",
    "metal",
    "plant",
    "board",
    "soft",
    "wood-condition",
)
HAZARDS = (
    "lung-sensitizer",
    "skin-sensitizer",
    "lung-irritant",
    "toxic",
    "carcinogen",
    "silica",
    "asbestos",
    "fiber",
    "biohazard",
    "fire",
    "explosible-dust",
    "conductive-dust",
    "fume",
    "splinters",
    "law",
)
NEEDS = {
    "extraction": "dust extraction at the tool, running before the first cut",
    "P2": "a filtering mask of class P2 at least",
    "P3": "a half mask with class P3 filters",
    "skin": "bare skin covered, barrier cream, a wash afterward; gloves only with the machine stopped",
    "wet": "work it wet, with the machine covered against the slurry",
    "certificate": "a certificate or a laboratory test that names what is in it",
    "cured": "a full cure, tried on a spare piece",
    "water": "a bucket of water for the chips, within reach",
    "class-D": "a class D extinguisher or dry sand within reach",
    "provenance": "knowing where it comes from",
    "clean": "a cleaned, boiled-out and dried piece, never a raw one",
    "no-sparks": "no grinding, no hot steel chips and no shared dust bag anywhere near",
    "covered-ways": "slideways covered so that the cover cannot be snatched",
    "sound-hold": "sound material where it is gripped",
    "metal-search": "a search with magnet, metal detector and bright light before the first cut",
}
REFUSALS = {
    "always": "whatever the setup",
    "raw": "it is raw, greasy or of unknown origin",
    "uncured": "it is not fully cured",
    "untested": "nothing says what is in it",
    "dry": "it would be cut dry",
    "no-extraction": "there is no extraction",
    "no-respirator": "there is no fitting mask",
    "no-water": "there is no water at hand",
    "no-class-D": "there is no class D extinguisher or dry sand",
    "sparks": "anything near it makes sparks",
    "stress-crazed": "it is crazed",
    "through-crack": "a crack runs through it or through the hold",
    "soft-hold": "it is soft or rotten where it is gripped",
    "void-at-hold": "a void or an inclusion lies in the hold",
    "asthma": "the person has asthma or has reacted to it",
    "painted": "it is painted and nobody has tested the paint",
    "large": "it is large for this material",
    "wet": "it is still wet",
    "screwed": "wood screws or spurs are to hold it",
    "untested-glue": "a joint in it has not been tested",
    "provenance": "nobody knows where it comes from",
}

# Every property a value can be of, and its unit.
PROPERTIES = {
    "speed-multiplier": "1",
    "speed-steel": "m/min",
    "speed-carbide": "m/min",
    "rake": "deg",
    "clearance": "deg",
    "feed": "mm",
    "nose": "mm",
    "heat-cap": "°C",
    "density": "kg/m³",
    "compressive": "MPa",
    "tensile": "MPa",
    "modulus": "GPa",
    "friction": "1",
    "cutting-k": "N/mm²",
    "rpm-cap": "rpm",
}


class Band(NamedTuple):
    """Lower and upper end of a published or practical band."""

    low: float
    high: float


class Value(NamedTuple):
    """One number of one material with its unit and its source key."""

    spread: Spread
    unit: str
    source: str
    note: str

    @property
    def band(self) -> Band:
        """Both ends, without the middle."""
        return Band(self.spread.low, self.spread.high)


class LookAlike(NamedTuple):
    """Another material easily taken for this one, and how to tell them apart without burning or sniffing."""

    other: str
    tell: str
    source: str


class Material(NamedTuple):
    """One material, or one condition of wood, as the trade knows it."""

    id: str
    title: str
    family: str
    verdict: str
    hard: tuple[str, ...]
    fails_by: str
    dust: str
    dust_control: tuple[str, ...]
    fire: str
    extinguisher: str
    holding: str
    tool: str
    coolant: str
    takes_glue: str
    brittle: bool
    hazards: tuple[str, ...]
    needs: tuple[str, ...]
    refuse_when: tuple[str, ...]
    never: str
    next_step: str
    ask_whom: str
    source: str
    names: tuple[str, ...]
    wide_names: tuple[str, ...]
    values: Mapping[str, Value]
    look_alikes: tuple[LookAlike, ...]
    case_words: tuple[str, ...] = ()

    def _band(self, key: str) -> Band | None:
        value = self.values.get(key)
        return value.band if value is not None else None

    def _spread(self, key: str) -> Spread | None:
        value = self.values.get(key)
        return value.spread if value is not None else None

    @property
    def is_wood(self) -> bool:
        """A condition of wood: wood's own strength and screws still apply."""
        return self.family == "wood-condition"

    @property
    def speed_multiplier(self) -> float | None:
        """Share of the trade's rim-speed band, the cautious end; None where only a cutting speed is known."""
        band = self._band("speed-multiplier")
        return band.low if band is not None else None

    @property
    def rpm_cap(self) -> float | None:
        """Highest spindle speed that practice gives for it whatever its size, rpm."""
        band = self._band("rpm-cap")
        return band.high if band is not None else None

    @property
    def surface_speed_steel(self) -> Band | None:
        """Cutting speed with a high-speed steel tool, m/min: start low, stop at high."""
        return self._band("speed-steel")

    @property
    def surface_speed_carbide(self) -> Band | None:
        """Cutting speed with a carbide tool, m/min."""
        return self._band("speed-carbide")

    @property
    def rake(self) -> Band | None:
        """Top rake, degrees; negative where the tool must not pull itself in."""
        return self._band("rake")

    @property
    def clearance(self) -> Band | None:
        """Front clearance, degrees."""
        return self._band("clearance")

    @property
    def feed(self) -> Band | None:
        """Feed, mm per turn."""
        return self._band("feed")

    @property
    def nose(self) -> Band | None:
        """Nose radius, mm."""
        return self._band("nose")

    @property
    def heat_cap(self) -> float | None:
        """Highest surface temperature, °C."""
        band = self._band("heat-cap")
        return band.low if band is not None else None

    @property
    def density(self) -> Spread:
        """Density, kg/m³."""
        return self.values["density"].spread

    @property
    def friction(self) -> Spread:
        """Friction on steel; low end for grip, high end for heat."""
        return self.values["friction"].spread

    @property
    def compressive(self) -> Spread | None:
        """Crushing strength in the weakest direction, MPa."""
        return self._spread("compressive")

    @property
    def tensile(self) -> Spread | None:
        """Tensile or bond strength in the weakest direction, MPa."""
        return self._spread("tensile")

    @property
    def modulus(self) -> Spread | None:
        """Stiffness, GPa."""
        return self._spread("modulus")

    @property
    def cutting_k(self) -> float | None:
        """Specific cutting force at 0.1 mm of chip, N/mm², the high end."""
        band = self._band("cutting-k")
        return band.high if band is not None else None

    @property
    def lung_sensitizer(self) -> bool:
        """Its dust can start asthma or set one off."""
        return "lung-sensitizer" in self.hazards

    @property
    def toxic_or_sensitizing(self) -> bool:
        """Enough to ask first when food or a toy is to be made of it."""
        return bool(set(self.hazards) & {"lung-sensitizer", "skin-sensitizer", "toxic", "carcinogen", "asbestos"})

    @property
    def dust_control_words(self) -> tuple[str, ...]:
        """Dust control in plain words."""
        return tuple(NEEDS[code] for code in self.dust_control)

    @property
    def sources(self) -> dict[str, str]:
        """Source key of every value, and of the words under "words"."""
        return {"words": self.source, **{key: value.source for key, value in self.values.items()}}
