"""Declarations of the wood and fastener tables of this folder."""

from advisor.data.tables import Number, Table, Text

MPA_PER_PSI = 4.4482216152605 / 25.4**2
N_PER_LBF = 4.4482216152605

# property: (column of the strength table, factor to MPa, GPa or N)
STRENGTH_COLUMNS = {
    "bending": ("bending_psi", MPA_PER_PSI),
    "modulus": ("modulus_1e6psi", MPA_PER_PSI * 1000),
    "crushing": ("crushing_psi", MPA_PER_PSI),
    "perpendicular": ("perpendicular_psi", MPA_PER_PSI),
    "shear": ("shear_psi", MPA_PER_PSI),
    "tension_perpendicular": ("tension_perpendicular_psi", MPA_PER_PSI),
    "hardness": ("side_hardness_lbf", N_PER_LBF),
}
SHRINKAGE_COLUMNS = {"shrinkage_radial": "radial_pct", "shrinkage_tangential": "tangential_pct"}

_SPECIES = Text("species_id")
_SOURCE = Text("source")
_GROUP = Text("group", one_of=("hardwood", "softwood"))
_ROW = Text("row", one_of=("dry", "green"))


def _optional(name: str, low: float, high: float) -> Number:
    return Number(name, low, high, required=False)


SPECIES = Table(
    "wood_species.csv",
    (_SPECIES, Text("title"), Text("label"), Text("botanical"), _GROUP,
     Text("origin", one_of=("North America", "tropical America", "Africa", "Asia and Oceania")), _SOURCE),
    key=("species_id",), rows=193)

NAMES = Table(
    "wood_names.csv",
    (Text("name"), Text("species_id", required=False),
     Text("kind", one_of=("trade", "family", "stand-in", "not-in-table", "unknown")), Text("note", required=False),
     _SOURCE),
    key=("name", "species_id"), rows=736)

STRENGTH = Table(
    "wood_strength.csv",
    (_SPECIES, _ROW, _optional("moisture_pct", 12, 15), _optional("specific_gravity", 0.1, 1.2),
     Text("gravity_basis", required=False, one_of=("volume at the stated moisture", "green volume")),
     _optional("bending_psi", 2000, 30000), _optional("modulus_1e6psi", 0.4, 5),
     _optional("crushing_psi", 1000, 20000), _optional("perpendicular_psi", 100, 3000),
     _optional("shear_psi", 250, 4000), _optional("tension_perpendicular_psi", 90, 1200),
     _optional("side_hardness_lbf", 150, 5000), _SOURCE),
    key=("species_id", "row"), rows=386)

CONFLICTS = Table(
    "wood_conflicts.csv",
    (_SPECIES, _ROW,
     Text("property", one_of=("gravity", "bending", "modulus", "crushing", "perpendicular", "shear", "hardness")),
     _optional("inch_pound_printed", 0.1, 30000), _optional("metric_printed", 0.1, 20000),
     Text("metric_unit", required=False, one_of=("MPa", "GPa", "N")), Text("note"), _SOURCE),
    key=("species_id", "row", "property"), rows=16)

SHRINKAGE = Table(
    "wood_shrinkage.csv",
    (_SPECIES, Text("label"), Number("radial_pct", 1.5, 10), _optional("tangential_pct", 3, 15),
     Number("volumetric_pct", 5, 25), _SOURCE, Text("verified"), Text("note", required=False)),
    key=("species_id",), rows=178)

ELASTIC_RATIOS = Table(
    "wood_elastic_ratios.csv",
    (_SPECIES, Text("label"), *(_optional(name, 0.001, 0.3) for name in (
        "ET_over_EL", "ER_over_EL", "GLR_over_EL", "GLT_over_EL", "GRT_over_EL")),
     *(_optional(name, 0.005, 1) for name in ("nu_LR", "nu_LT", "nu_RT", "nu_TR", "nu_RL", "nu_TL")),
     _SOURCE, Text("verified")),
    key=("species_id",), rows=35)

VARIATION = Table(
    "wood_variation.csv", (Text("property"), Number("variation_pct", 1, 60), _SOURCE), key=("property",), rows=12)

INTERSECTION = Table(
    "wood_intersection.csv", (_SPECIES, Number("intersection_pct", 15, 35), _SOURCE), key=("species_id",), rows=14)

TENSION_SUPPLEMENT = Table(
    "wood_tension_supplement.csv",
    (_SPECIES, _ROW, Number("tension_perpendicular_MPa", 0.5, 10), Text("relative"), _SOURCE),
    key=("species_id", "row"), rows=9)

UNKNOWN = Table(
    "wood_unknown.csv", (_GROUP, _ROW, Number("tension_perpendicular_over_gravity_MPa", 0.5, 10), _SOURCE),
    key=("group", "row"), rows=4)

FITS = Table(
    "wood_fits.csv",
    (Text("property"), _GROUP, _ROW, Number("factor", 0.1, 50000), Number("exponent", 0.1, 4),
     Number("scatter", 0.01, 0.5), Number("rows", 10, 200), Number("gravity_low", 0.1, 1),
     Number("gravity_high", 0.1, 1), _SOURCE),
    key=("property", "group", "row"), rows=32)

SLOPE_OF_GRAIN = Table(
    "wood_slope_of_grain.csv",
    (Text("slope"), _optional("run_per_unit_rise", 1, 100), Number("bending_pct", 1, 100),
     Number("impact_bending_pct", 1, 100), Number("crushing_pct", 1, 100), _SOURCE),
    key=("slope",), rows=6)

TEMPERATURE = Table(
    "wood_temperature.csv",
    (Text("property"), Text("moisture"), _optional("change_at_minus_50C_pct", 0, 150),
     _optional("change_at_plus_50C_pct", -60, 0), _SOURCE),
    key=("property", "moisture"), rows=20)

SCREW_GAUGE = Table(
    "fastener_screw_gauge.csv", (Number("gauge", 2, 30), Number("shank_diameter_mm", 2, 12), _SOURCE),
    key=("gauge",), rows=14)

NAIL = Table(
    "fastener_nail.csv", (Text("size"), Number("length_mm", 20, 200), Number("diameter_mm", 2, 8), _SOURCE),
    key=("size",), rows=10)

LATERAL = Table(
    "fastener_lateral.csv",
    (_GROUP, Number("gravity_low", 0.2, 1), Number("gravity_high", 0.2, 1), Number("nail_MPa", 10, 200),
     Number("wood_screw_MPa", 10, 100), Number("lag_screw_MPa", 10, 100), _SOURCE),
    key=("group", "gravity_low"), rows=6)

LAG_THICKNESS = Table(
    "fastener_lag_thickness.csv", (Number("thickness_over_diameter", 1, 10), Number("factor", 0.1, 2), _SOURCE),
    key=("thickness_over_diameter",), rows=10)

LAG_PERPENDICULAR = Table(
    "fastener_lag_perpendicular.csv", (Number("shank_diameter_mm", 1, 40), Number("factor", 0.1, 1), _SOURCE),
    key=("shank_diameter_mm",), rows=10)

ALL = (SPECIES, NAMES, STRENGTH, CONFLICTS, SHRINKAGE, ELASTIC_RATIOS, VARIATION, INTERSECTION, TENSION_SUPPLEMENT,
       UNKNOWN, FITS, SLOPE_OF_GRAIN, TEMPERATURE, SCREW_GAUGE, NAIL, LATERAL, LAG_THICKNESS, LAG_PERPENDICULAR)
