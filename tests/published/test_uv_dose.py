"""Doses, the sun, the hazard bound and vitamin D against printed figures (uv_dose.toml)."""

from math import cos, degrees, radians
from typing import Any

import pytest
from pvlib.solarposition import declination_cooper69
from pvlib.spectrum import get_reference_spectra

from calc.uncertainty import combined_factor
from calc.uv.dose import (
    ACTINIC_PER_ERYTHEMAL,
    SUN_DOUBTS,
    clear_sky_uvi,
    declination_rad,
    dose_sed,
    safe_time,
)
from calc.uv.erythema import erythemal_weight
from calc.uv.vitamin_d import vitamin_d_per_erythema, vitamin_d_weight
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("uv_dose")


@pytest.mark.parametrize("row", TABLE["madronich"], ids=lambda row: str(row["zenith_deg"]))
def test_the_clear_sky_is_that_of_madronich(row: dict[str, Any]) -> None:
    got = float(clear_sky_uvi(cos(radians(row["zenith_deg"]))))
    assert got == pytest.approx(float(row["uvi"]), abs=half_digit(row["uvi"]))


@pytest.mark.parametrize("row", TABLE["temis"], ids=lambda row: str(row["zenith_deg"]))
def test_another_formula_lies_within_the_doubt(row: dict[str, Any]) -> None:
    got = float(clear_sky_uvi(cos(radians(row["zenith_deg"]))))
    factor = combined_factor(SUN_DOUBTS)
    assert got / factor <= row["uvi"] <= got * factor


def test_the_ozone_exponent_is_the_printed_one() -> None:
    assert float(clear_sky_uvi(1.0, 150.0)) == pytest.approx(12.5 * 2.0**1.23)


@pytest.mark.parametrize("day", [1, 80, 172, 265, 355])
def test_the_declination_is_that_of_pvlib(day: int) -> None:
    assert degrees(declination_rad(day)) == pytest.approx(
        degrees(float(declination_cooper69(day))), abs=1e-9
    )


def test_a_uv_index_for_an_hour_is_nine_tenths_of_a_standard_dose() -> None:
    # 0.025 W/m² for 3600 s over 100 J/m²: CIE 17-26-073 and CIE 125.
    assert dose_sed(1.0, 1.0) == pytest.approx(0.9)


@pytest.mark.parametrize("row", TABLE["safe"], ids=lambda row: str(row["uvi"]))
def test_the_occupational_limit_is_reached_when_printed(row: dict[str, Any]) -> None:
    assert safe_time(row["uvi"]).seconds == pytest.approx(
        float(row["seconds"]), abs=half_digit(row["seconds"])
    )


@pytest.mark.parametrize("row", TABLE["hazard"], ids=lambda row: str(row["nm"]))
def test_the_hazard_weight_stays_under_the_bound(row: dict[str, Any]) -> None:
    assert row["weight"] / float(erythemal_weight(row["nm"])) <= ACTINIC_PER_ERYTHEMAL


@pytest.mark.parametrize("row", TABLE["vitamin_d"], ids=lambda row: str(row["nm"]))
def test_vitamin_d_weights_are_the_table(row: dict[str, Any]) -> None:
    assert float(vitamin_d_weight(row["nm"])) == row["weight"]


@pytest.mark.parametrize("row", TABLE["ratio"], ids=lambda row: row["column"])
def test_the_reference_sun_makes_vitamin_d_as_tabled(row: dict[str, Any]) -> None:
    spectrum = get_reference_spectra(standard="ASTM G173-03").loc[280.0:400.0]
    got = vitamin_d_per_erythema(
        spectrum.index.to_numpy(dtype=float), spectrum[row["column"]].to_numpy(dtype=float)
    )
    assert got == pytest.approx(float(row["ratio"]), abs=half_digit(row["ratio"]))
