"""The action spectrum and the UV index against printed values (sources in uv_erythema.toml)."""

from typing import Any

import numpy as np
import pytest
from pvlib.spectrum import get_reference_spectra

from calc.uv.erythema import Variant, erythemal_weight, uv_index, uv_index_of_spectrum
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("uv_erythema")


@pytest.mark.parametrize("row", TABLE["weights"], ids=lambda row: f"{row['nm']} nm")
def test_weights_are_the_printed_ones(row: dict[str, Any]) -> None:
    for variant, printed in (
        (Variant.STANDARD, row["standard"]),
        (Variant.OF_1987, row["of_1987"]),
    ):
        weight = float(erythemal_weight(row["nm"], variant))
        assert weight == pytest.approx(float(printed), abs=half_digit(printed))


def test_the_two_variants_differ_by_one_factor_in_the_ultraviolet_a() -> None:
    # 10^-0.015 = 0.966051, from the printed constants 140 and 139.
    wave = np.linspace(328.1, 400.0, 50)
    ratio = erythemal_weight(wave, Variant.OF_1987) / erythemal_weight(wave)
    assert ratio == pytest.approx(np.full(50, 0.966051), abs=5e-7)


@pytest.mark.parametrize("row", TABLE["uvi"], ids=lambda row: row["source"])
def test_the_uv_index_of_an_irradiance_is_the_printed_one(row: dict[str, Any]) -> None:
    assert uv_index(row["erythemal_w_m2"]) == pytest.approx(
        float(row["uvi"]), abs=half_digit(row["uvi"])
    )


@pytest.mark.parametrize("row", TABLE["astm_g173"], ids=lambda row: row["column"])
def test_the_reference_sun_has_its_uv_index(row: dict[str, Any]) -> None:
    spectrum = get_reference_spectra(standard="ASTM G173-03").loc[280.0:400.0]
    wave = spectrum.index.to_numpy(dtype=float)
    for variant, printed in (
        (Variant.STANDARD, row["standard"]),
        (Variant.OF_1987, row["of_1987"]),
    ):
        value = uv_index_of_spectrum(wave, spectrum[row["column"]].to_numpy(dtype=float), variant)
        assert value == pytest.approx(float(printed), abs=half_digit(printed))
