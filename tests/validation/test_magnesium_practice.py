"""Magnesium against T.O. 1-1A-9 (TM 43-0106): dry, below 500 to 700 surface feet a minute, no water."""

from fractions import Fraction

from advisor.models import material

SOURCES = ("to-1-1a-9-magnesium",)
METERS_PER_FOOT = Fraction(3048, 10_000)


def test_the_speed_band_lies_below_the_printed_one() -> None:
    band = material.get("magnesium").surface_speed_steel
    assert band is not None
    assert 500 * METERS_PER_FOOT - 5 < band.low <= 500 * METERS_PER_FOOT
    assert 700 * METERS_PER_FOOT - 5 < band.high <= 700 * METERS_PER_FOOT


def test_carbide_buys_no_speed() -> None:
    record = material.get("magnesium")
    assert record.surface_speed_carbide == record.surface_speed_steel


def test_fine_feeds_and_rubbing_are_ruled_out() -> None:
    record = material.get("magnesium")
    assert record.feed is not None
    assert record.feed.low >= 0.1
    for words in ("no fine feeds", "no dwelling", "no rubbing"):
        assert words in record.tool


def test_what_puts_it_out_is_named_and_water_is_not_among_it() -> None:
    record = material.get("magnesium")
    for words in ("dry sand", "cast-iron chips", "graphite"):
        assert words in record.extinguisher
    assert record.extinguisher.endswith("never water")
    assert record.hard == ("no-class-D",)
