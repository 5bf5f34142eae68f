"""Exposure limits against what the agencies print.

OSHA page on wood dust (evaluating exposure): PNOR 15 total, 5 respirable; NIOSH 1; ACGIH 2007 0.5 and 1 mg/m³.
HSE EH40/2005, fourth edition 2020: hardwood 3, softwood 5 mg/m³ inhalable.
Directive (EU) 2017/2398: hardwood 2 mg/m³ from 2023.
29 CFR 1910.1053: silica 50 micrograms. 29 CFR 1910.1048: formaldehyde 0.75 ppm.
"""

import pytest

from advisor.models.exposure import exposure_limits
from advisor.sources import all_sources

SOURCES = ("osha-wood-dust", "hse-wood-dust", "hse-wis30", "eu-2017-2398", "osha-1910-1053", "osha-1910-1048")
LIMITS = {limit.id: limit for limit in exposure_limits()}
PRINTED = {
    "osha-total": (15, "mg/m³", "osha-wood-dust"),
    "osha-respirable": (5, "mg/m³", "osha-wood-dust"),
    "niosh-wood": (1, "mg/m³", "osha-wood-dust"),
    "acgih-cedar": (0.5, "mg/m³", "osha-wood-dust"),
    "acgih-other": (1, "mg/m³", "osha-wood-dust"),
    "hse-hardwood": (3, "mg/m³", "hse-wood-dust"),
    "hse-softwood": (5, "mg/m³", "hse-wood-dust"),
    "hse-old-sheet": (5, "mg/m³", "hse-wis30"),
    "eu-hardwood": (2, "mg/m³", "eu-2017-2398"),
    "osha-silica": (50 / 1000, "mg/m³", "osha-1910-1053"),
    "acgih-silica": (0.025, "mg/m³", "osha-1910-1053"),
    "osha-formaldehyde": (0.75, "ppm", "osha-1910-1048"),
}


@pytest.mark.parametrize("key", PRINTED)
def test_a_limit_is_the_printed_one(key: str) -> None:
    assert (LIMITS[key].value, LIMITS[key].unit, LIMITS[key].source) == PRINTED[key]
    assert LIMITS[key].read == "as printed in the copy read, 2026"


def test_what_was_not_read_says_so() -> None:
    remembered = {key for key, limit in LIMITS.items() if limit.source == "memory"}
    assert remembered == set(LIMITS) - set(PRINTED)
    assert all(LIMITS[key].read == "from memory" for key in remembered)


def test_every_source_exists() -> None:
    assert {limit.source for limit in LIMITS.values()} <= set(all_sources())


def test_the_superseded_sheet_is_called_superseded() -> None:
    assert "superseded" in LIMITS["hse-old-sheet"].note


@pytest.mark.parametrize("key", LIMITS)
def test_a_printed_line_names_agency_unit_time_and_reading_and_promises_nothing(key: str) -> None:
    text = LIMITS[key].text
    for part in (LIMITS[key].agency, f"{LIMITS[key].value:g} {LIMITS[key].unit}", "8 hours", LIMITS[key].read):
        assert part in text
    assert " safe" not in text
