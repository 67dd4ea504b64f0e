"""Figures worked by hand from printed formulas: exact to their last digit."""

from math import cos, radians

import pytest

from calc.uv.dose import clear_sky_uvi, dose_sed, safe_time
from tests.published.printed import printed


@pytest.mark.parametrize(
    ("zenith", "uvi"),
    # UVI = 12.5 μ^2.42 (Ω/300)^-1.23 at 300 DU: Madronich 2007, abstract.
    [
        (0, "12.50"),
        (20, "10.75"),
        (30, "8.83"),
        (40, "6.56"),
        (50, "4.29"),
        (60, "2.34"),
        (70, "0.93"),
        (80, "0.18"),
    ],
)
def test_the_clear_sky_of_madronich(zenith: int, uvi: str) -> None:
    assert float(clear_sky_uvi(cos(radians(zenith)))) == printed(uvi)


def test_the_ozone_exponent() -> None:
    assert float(clear_sky_uvi(1.0, 150.0)) == pytest.approx(12.5 * 2.0**1.23)


def test_a_uv_index_for_an_hour_is_nine_tenths_of_a_standard_dose() -> None:
    # 0.025 W/m² for 3600 s over 100 J/m²: CIE 17-26-073 and CIE 125.
    assert dose_sed(1.0, 1.0) == pytest.approx(0.9)


@pytest.mark.parametrize(
    ("uvi", "seconds"), [(1.0, "1875"), (3.0, "625"), (5.0, "375"), (7.0, "268")]
)
def test_the_occupational_limit(uvi: float, seconds: str) -> None:
    # 30 J/m² effective (Directive 2006/25/EC, annex I, table 1.1 row a) over 0.64 UVI/40.
    assert safe_time(uvi).seconds == printed(seconds)
