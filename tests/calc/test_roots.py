"""Roots, against scipy's and exact ones."""

from collections.abc import Callable
from math import cos, exp, log

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.roots import rising_root


@pytest.mark.parametrize(
    ("of", "low", "high"),
    [
        (lambda x: x**3 - 2.0 * x - 5.0, 2.0, 3.0),
        (lambda x: x - cos(x), 0.0, 1.0),
        (lambda x: log(x / 0.3), 0.05, 1.5),
        (lambda x: 0.5 - exp(-40.0 * x), 0.0, 1.0),
    ],
)
def test_a_root_is_that_of_scipy(of: Callable[[float], float], low: float, high: float) -> None:
    # reference: scipy's brentq
    assert rising_root(of, low, high) == pytest.approx(brentq(of, low, high, xtol=1e-14), abs=1e-10)


@given(st.floats(-50.0, 50.0), st.floats(1e-3, 1e3), st.integers(0, 3))
def test_a_known_root_is_found(where: float, steep: float, bend: int) -> None:
    calls = []

    def of(x: float) -> float:
        calls.append(x)
        return steep * (x - where) * (1.0 + (x - where) ** 2) ** bend

    # exact
    assert rising_root(of, -60.0, 70.0) == pytest.approx(where, abs=1e-8)
    assert len(calls) < 150


def test_ends_count_and_no_root_is_refused() -> None:
    assert rising_root(lambda x: x, 0.0, 2.0) == pytest.approx(0.0, abs=1e-10)
    assert rising_root(lambda x: x - 2.0, 0.0, 2.0) == pytest.approx(2.0, abs=1e-10)
    with pytest.raises(ValueError, match="no root"):
        rising_root(lambda x: x + 1.0, 0.0, 2.0)
