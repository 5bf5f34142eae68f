"""Comparisons with what is printed elsewhere or solved apart, run for docs/models.md: each returns its line."""

from __future__ import annotations

import math
import statistics
from collections.abc import Callable

from advisor.center_command import center_answer
from advisor.centers.wording import two_figures
from advisor.models.wood_cells import carried_gravity, shrinkage
from advisor.physics import balance, burst, cutting, drying, screws, slender, vacuum
from tests.validation import (
    test_beams,
    test_center_cases,
    test_cleavage_1914,
    test_cutting_papers,
    test_discs,
    test_iso_2533,
    test_iso_21940,
    test_units_library,
    test_wood_gravity_relations,
    test_wood_handbook_fasteners,
    test_wood_handbook_relations,
    test_wood_handbook_shrinkage,
)

ENDS: tuple[slender.Ends, ...] = ("pinned-pinned", "fixed-pinned")


def share(difference: float) -> str:
    """A relative difference in percent, two figures."""
    return "under 0.01 %" if difference < 1e-4 else f"{two_figures(difference * 100)} %"


def fits() -> str:
    """Our power laws of gravity against the printed ones."""
    worst = 0.0
    for name, group, row, factor, exponent in test_wood_gravity_relations.PRINTED:
        fit = test_wood_gravity_relations.FITS[name, group, row]
        for gravity in (0.35, 0.5, 0.65):
            ours = fit.number("factor") * gravity ** fit.number("exponent")
            worst = max(worst, abs(ours / (factor * gravity**exponent) - 1))
    count = len(test_wood_gravity_relations.PRINTED)
    told = f"fits that fill missing cells: {count} relations printed in the Wood Handbook"
    return f"{told}; largest difference {share(worst)}"


def gravity() -> str:
    """Gravity at 12 % from the green one against the printed one."""
    cells, found = test_wood_handbook_relations.STRENGTH, []
    for (species, row), cell in cells.items():
        dry = cell.optional("specific_gravity") if row == "dry" else None
        green = cells[species, "green"].optional("specific_gravity")
        if dry is not None and green is not None:
            found.append(carried_gravity(green, None, 12.0) / dry - 1)
    return (
        f"gravity at 12 % from the green one: {len(found)} species whose two gravities are printed; "
        f"{share(-min(found))} below to {share(max(found))} above, median {share(abs(statistics.median(found)))}"
    )


def cleavage() -> str:
    """The splitting model against printed loads of the standard block."""
    found = test_cleavage_1914.shares()
    ends = f"{min(found):.2f} to {max(found):.2f}, median {statistics.median(found):.2f}"
    count = len(found)
    return f"cleavage of {count} green woods (Record, 1914, table XIII): model over the smaller printed load {ends}"


def beams() -> str:
    """Whirling of real profiles against the transfer matrix."""
    worst = 0.0
    for profile in test_beams.PROFILES.values():
        for ends in ENDS:
            found = slender.profile_whirl_speed(profile=profile, modulus=12, density=700, ends=ends)
            worst = max(worst, abs(found / test_beams.first_root(profile, 12, 700, ends, 0.0) - 1))
    count = len(test_beams.PROFILES) * len(ENDS)
    return f"`profile-whirl-speed`: {count} profiles by transfer matrices; largest difference {share(worst)}"


def discs() -> str:
    """Spinning discs against a two-point problem."""
    worst, rpm = 0.0, 100.0 * 30 / math.pi
    sizes = ((300.0, 0.0, 0.4), (350.0, 40.0, 0.4), (200.0, 120.0, 0.3), (250.0, 200.0, 0.35))
    for diameter, bore, poisson in sizes:
        expected = test_discs.disc_hoop(700, diameter / 2000, bore / 2000, 100.0, poisson)
        found = burst.disc_stress(density=700, diameter=diameter, rpm=rpm, poisson=poisson, bore=bore)
        worst = max(worst, abs(found * 1000 / expected - 1))
    return f"`disc-stress`: {len(sizes)} discs as two-point problems of elasticity; largest difference {share(worst)}"


def pressure() -> str:
    """Air pressure against the table of the standard atmosphere."""
    found = [abs(vacuum.air_pressure(altitude=h) / p - 1) for h, p in test_iso_2533.TABLE]
    return f"`air-pressure`: {len(found)} rows of ISO 2533; largest difference {share(max(found))}"


def grades() -> str:
    """Permissible offsets against the tabled ones."""
    found = [abs(balance.permissible_offset(grade=g, rpm=n) / e - 1) for g, n, e in test_iso_21940.TABLE]
    return f"`permissible-offset`: {len(found)} values tabled from ISO 21940-11; largest difference {share(max(found))}"


def lag_screws() -> str:
    """Lag screws against printed design values."""
    bench, found = test_wood_handbook_fasteners, []
    for gravity_, diameter, design in bench.LAG_TABLE:
        force = screws.screw_withdrawal(
            gravity=gravity_, diameter=diameter * bench.INCH, thread=bench.INCH, kind="lag", fiber="side"
        )
        found.append(abs(force / bench.POUND / (design * bench.LAG_ULTIMATE) - 1))
    return f"`screw-withdrawal`: {len(found)} printed lag screw values (NDS); largest difference {share(max(found))}"


def shrinking() -> str:
    """Change of size for one percent of moisture against the printed coefficients."""
    worst, count = 0.0, 0
    for species, printed in test_wood_handbook_shrinkage.PRINTED.items():
        for direction, coefficient in zip(("radial", "tangential"), printed, strict=True):
            total, _ = shrinkage(species, f"shrinkage_{direction}")
            found = drying.drying_shrinkage(total=total, from_moisture=10.0, to_moisture=9.0) / 100
            worst, count = max(worst, abs(found / coefficient - 1)), count + 1
    return f"`drying-shrinkage`: {count} coefficients of Wood Handbook Table 13-5; largest difference {share(worst)}"


def centers() -> str:
    """Lands of shop-made drive centers against solids."""
    bench, worst = test_center_cases, 0.0
    for row in bench.CASES:
        answer = center_answer(bench.asked(row)).as_dict()
        at_hole, _, _, rim = answer["at_radii"]
        lands = {"land_hole_in": at_hole["land_mm"], "land_mid_in": answer["land_mid_mm"], "land_od_in": rim["land_mm"]}
        worst = max(worst, *(abs(value - bench.size(row, name) * bench.INCH) for name, value in lands.items()))
    solids = f"lands of {len(bench.CASES)} solids cut by mesh booleans"
    return f"a milled drive center (`advisor center`): {solids}; largest difference {two_figures(worst * 1000)} µm"


def particleboard() -> str:
    """The level of the cutting model against a published measurement."""
    bench = test_cutting_papers
    found = [
        cutting.wood_cutting_force(width=10, thickness=0.1, density=density, mode="along", moisture=8)
        for density in bench.DENSITIES
    ]
    low, high = bench.PARTICLEBOARD
    ends = f"model {two_figures(min(found))} to {two_figures(max(found))}"
    return f"particleboard, chip 0.1 mm (Pałubicki, 2021): measured {low:g} to {high:g} N/mm², {ends}"


def units() -> str:
    """Factors of the units against the library's."""
    found = test_units_library.factors()
    worst = max(abs(found[name] / factor - 1) for name, factor in test_units_library.LIBRARY.items())
    count = len(test_units_library.LIBRARY)
    told = f"every unit that is read: {count} factors of scipy.constants"
    return f"{told}; largest difference {worst * 1e6:.1g} in a million"


PUBLISHED: tuple[tuple[str, Callable[[], str]], ...] = (
    ("0", fits),
    ("0", gravity),
    ("1.1", centers),
    ("2.3", cleavage),
    ("3", beams),
    ("4.3", grades),
    ("4.8", discs),
    ("5.5", lag_screws),
    ("5.9", pressure),
    ("5.11", shrinking),
    ("6.1", particleboard),
    ("7", units),
)
