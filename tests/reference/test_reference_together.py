"""Tubes side by side against quadrature of their elements over a level back."""

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.optimize import minimize_scalar

from calc.uv.together import shape_together


def _one(height_m: float, aside_m: float, length_m: float) -> float:
    """Return π² L E/P of one tube by its elements: intensity sin φ, cosine at a level back."""

    def element(along: float) -> float:
        away2 = height_m**2 + aside_m**2 + along**2
        square = np.sqrt(height_m**2 + aside_m**2)
        return float(square / np.sqrt(away2) / away2 * height_m / np.sqrt(away2))

    return quad(element, -length_m / 2.0, length_m / 2.0, epsabs=1e-12)[0]


@pytest.mark.parametrize("count", [2, 3, 4])
@pytest.mark.parametrize("gap_m", [0.02, 0.1, 0.3, 0.8])
@pytest.mark.parametrize("height_m", [0.2, 0.4, 0.8])
def test_the_strongest_place_is_that_of_the_quadrature(
    count: int, gap_m: float, height_m: float
) -> None:
    tubes = gap_m * (np.arange(count) - (count - 1) / 2.0)

    def total(place: float) -> float:
        return sum(_one(height_m, place - tube, 0.519) for tube in tubes)

    # From every tube and every middle, so that no peak is missed.
    starts = np.linspace(tubes[0], tubes[-1], 2 * count - 1)
    step = gap_m / 2.0
    best = max(
        -minimize_scalar(lambda y: -total(y), bounds=(s - step, s + step), method="bounded").fun
        for s in starts
    )
    assert shape_together(height_m, 0.519, count, gap_m) == pytest.approx(best, rel=2e-3)
