"""The action spectrum where it ends and what it refuses."""

import numpy as np
import pytest

from calc.uv.erythema import erythemal_irradiance, erythemal_weight, uv_index_of_spectrum
from calc.validity import OutsideModelError


def test_the_standard_spectrum_has_no_step_at_its_joints() -> None:
    for joint in (298.0, 328.0):
        below, above = erythemal_weight([joint, joint + 1e-9])
        assert above == pytest.approx(below, rel=1e-8)


def test_nothing_counts_above_400_nm() -> None:
    assert float(erythemal_weight(400.0)) > 0.0
    assert float(erythemal_weight(400.001)) == 0.0


@pytest.mark.parametrize("wave", [249.9, float("nan"), -1.0])
def test_below_250_nm_is_refused(wave: float) -> None:
    with pytest.raises(OutsideModelError):
        erythemal_weight(wave)


def test_a_flat_spectrum_below_298_nm_counts_in_full() -> None:
    wave = np.linspace(260.0, 298.0, 39)
    assert erythemal_irradiance(wave, np.full(39, 0.002)) == pytest.approx(0.002 * 38.0)


def test_twice_the_light_is_twice_the_index() -> None:
    wave = np.linspace(280.0, 400.0, 241)
    light = np.exp((wave - 310.0) / 10.0) * 1e-4
    once, twice = (uv_index_of_spectrum(wave, k * light) for k in (1.0, 2.0))
    assert twice == pytest.approx(2.0 * once, rel=1e-14)


@pytest.mark.parametrize("wave", [[300.0], [310.0, 300.0], [300.0, 300.0]])
def test_a_spectrum_that_does_not_rise_is_refused(wave: list[float]) -> None:
    with pytest.raises(ValueError, match="rising"):
        erythemal_irradiance(wave, np.ones(len(wave)))
