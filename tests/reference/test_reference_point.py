"""The law of a small lamp against a glowing disc by quadrature, and its fit against scipy's."""

import numpy as np
import pytest
from scipy.integrate import dblquad
from scipy.optimize import least_squares

from calc.uv.point import PointSource, fit_point, point_uvi


def _disc(distance_m: float, radius_m: float) -> float:
    """Return the irradiance on the axis of an evenly glowing flat disc of radiance 1, facing it."""

    def of_ring(_turn: float, radius: float) -> float:
        away2 = distance_m**2 + radius**2
        return distance_m**2 / away2**2 * radius

    return float(dblquad(of_ring, 0.0, radius_m, 0.0, 2.0 * np.pi)[0])


@pytest.mark.parametrize("radius_m", [0.01, 0.03, 0.06])
@pytest.mark.parametrize("widths", [2.0, 3.0, 5.0, 10.0])
def test_a_glowing_disc_falls_as_the_point_from_twice_its_width_on(
    radius_m: float, widths: float
) -> None:
    far_m = 40.0 * radius_m
    strength = _disc(far_m, radius_m) * far_m**2
    distance_m = widths * 2.0 * radius_m
    source = PointSource(strength, 0.0, far_m)
    # The disc gives less than the point by (r/d)² or so: one sixteenth at twice its width.
    assert point_uvi(source, distance_m) == pytest.approx(
        _disc(distance_m, radius_m), rel=1.05 / (2.0 * widths) ** 2
    )


def test_the_fit_is_scipy_s_least_squares() -> None:
    random = np.random.default_rng(3)
    for _ in range(40):
        strength, depth = random.uniform(0.2, 3.0), random.uniform(0.02, 0.25)
        away = np.sort(random.uniform(0.15, 1.0, 6))
        uvis = strength / (away + depth) ** 2 * np.exp(random.normal(0.0, 0.03, 6))
        weights = random.uniform(100.0, 600.0, 6)

        def rest(
            at: np.ndarray,
            away: np.ndarray = away,
            uvis: np.ndarray = uvis,
            w: np.ndarray = weights,
        ) -> np.ndarray:
            left: np.ndarray = np.log(uvis) - at[0] + 2.0 * np.log(away + at[1])
            weighed: np.ndarray = left * np.sqrt(w)
            return weighed

        other = least_squares(
            rest, [np.log(strength), depth], bounds=([-10.0, 0.0], [10.0, 0.30]), xtol=1e-14
        )
        found = fit_point(away.tolist(), uvis.tolist(), weights.tolist())
        assert found.behind_m == pytest.approx(other.x[1], abs=1e-4)
        assert np.log(found.strength_uvi_m2) == pytest.approx(other.x[0], abs=2e-3)
