"""The class fit against scipy's least squares and numpy's, and quantiles against many draws."""

from math import exp, log

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.optimize import least_squares

from calc.unknowns import Between, Cases, Effect, Factor, Known, Spread, Unknown, combine
from calc.uv.class_fit import ENDS, class_of_length
from calc.uv.lamp import CLASS_CONSTANT_UVI_M, Fixture, Lamp
from calc.uv.lamp_unknowns import LENGTH_WEIGHTS, Cause, class_spread
from calc.validity import OutsideModelError
from tests.reference.lamp_world import LIT_M, ROWS, class_constant, shape

_INCH_M = 0.0254
# Strength, plain, screened, distance, UVI: the world's own copy of the rows, not the engine's.
TWELVE = [
    (strength / 12.0, not polished, passed < 1.0, inches * _INCH_M, uvi)
    for strength, polished, passed, near, far in ROWS
    for inches, uvi in ((near, 5.0), (far, 3.0))
]


def left(at: NDArray[np.float64]) -> NDArray[np.float64]:
    constant, plain, screen, length = at
    return np.array(
        [
            log(uvi / strength / shape(d, exp(length))) - constant - plain * p - screen * s
            for strength, p, s, d, uvi in TWELVE
        ]
    )


@pytest.mark.parametrize("lit_m", [0.3, 0.4, 0.519, 0.819, 1.119, 1.419])
def test_the_fit_of_a_known_length_is_that_of_lstsq(lit_m: float) -> None:
    design = np.array([(1.0, p, s) for _, p, s, _, _ in TWELVE], dtype=float)
    logs = np.array([log(uvi / k / shape(d, lit_m)) for k, _, _, d, uvi in TWELVE])
    solved, squared, _, _ = np.linalg.lstsq(design, logs, rcond=None)
    ours = class_of_length(lit_m)
    assert np.log((ours.constant_uvi_m, ours.plain, ours.screen)) == pytest.approx(solved, abs=1e-9)
    assert ours.scatter == pytest.approx(float(squared[0] / 9.0) ** 0.5)
    covariance = float(squared[0] / 9.0) * np.linalg.inv(design.T @ design)
    assert ours.covariance == pytest.approx(covariance, rel=1e-9)


@pytest.mark.parametrize("fixture", list(Fixture))
def test_what_the_rows_leave_open_of_a_class_is_what_lstsq_leaves(fixture: Fixture) -> None:
    """Of a polished tube the doubt of C, of a plain one that of C p, at 0.519 m and by length."""
    design = np.array([(1.0, p, s) for _, p, s, _, _ in TWELVE], dtype=float)
    of = np.array((1.0, float(fixture is Fixture.PLAIN), 0.0))
    logs, variances = [], []
    for lit_m in LIT_M:
        given = np.array([log(uvi / k / shape(d, lit_m)) for k, _, _, d, uvi in TWELVE])
        solved, squared, _, _ = np.linalg.lstsq(design, given, rcond=None)
        logs.append(float(of @ solved))
        variances.append(float(squared[0] / 9.0 * of @ np.linalg.inv(design.T @ design) @ of))
    spreads = {
        effect.unknown.name: effect.unknown.spread
        for effect in class_spread(Lamp(12.0, fixture)).effects
    }
    scatter, rules = spreads[Cause.CLASS], spreads[Cause.RULES]
    assert isinstance(scatter, Factor)
    assert log(scatter.factor) == pytest.approx(1.645 * variances[0] ** 0.5)
    assert isinstance(rules, Cases)
    factors, weights = zip(*rules.cases, strict=True)
    assert np.log(factors) == pytest.approx(np.array(logs) - logs[0], abs=1e-9)
    assert weights == LENGTH_WEIGHTS


def test_the_class_constant_is_that_of_the_shortest_standard_tube() -> None:
    """With the rows' screen taken at its word, 55 %, as the constant is; and within its doubt."""
    constant, plain = class_constant(0.519)
    assert pytest.approx(constant, abs=0.01) == CLASS_CONSTANT_UVI_M
    assert pytest.approx(plain, abs=0.01) == Fixture.PLAIN.factor
    free = class_of_length(0.519)
    assert (
        abs(log(free.constant_uvi_m / CLASS_CONSTANT_UVI_M)) < float(free.covariance[0, 0]) ** 0.5
    )


def test_the_ends_are_those_of_the_world() -> None:
    ours = [(e.strength, e.is_plain, e.is_screened, e.distance_m, e.uvi) for e in ENDS]
    assert sorted(ours) == sorted(TWELVE)


def test_the_ends_say_little_about_the_length() -> None:
    """Least squares with the length left free: shorter than any tube, and hardly known."""
    found = least_squares(left, [0.5, -0.3, -0.6, log(0.5)], xtol=1e-15, ftol=1e-15, gtol=1e-15)
    jac = np.asarray(found.jac, dtype=np.float64)
    scatter = float(np.sum(found.fun**2)) / (len(TWELVE) - 4)
    deviation = float((scatter * np.linalg.inv(jac.T @ jac))[3, 3]) ** 0.5
    assert exp(found.x[3]) == pytest.approx(0.38, abs=0.005)
    assert exp(1.645 * deviation) == pytest.approx(1.6, abs=0.05)


@pytest.mark.parametrize("lit_m", [0.099, 1.61])
def test_a_length_that_no_tube_has_is_refused(lit_m: float) -> None:
    with pytest.raises(OutsideModelError, match=r"^lit length") as refused:
        class_of_length(lit_m)
    assert (refused.value.low, refused.value.high, refused.value.unit) == (0.1, 1.6, "m")
    for end in (0.1, 1.6):
        assert class_of_length(end).constant_uvi_m > 0.0


def drawn(spread: Spread, rng: np.random.Generator, count: int) -> NDArray[np.float64]:
    match spread:
        case Factor(factor):
            return rng.normal(0.0, log(factor) / 1.6448536, count)
        case Between(least, most):
            return rng.uniform(log(least), log(most), count)
        case Cases(cases):
            factors, weights = np.array(cases).T
            return np.log(rng.choice(factors, count, p=weights / weights.sum()))


@pytest.mark.parametrize(
    "spreads",
    [
        (Factor(1.25), Between(0.6, 1.1), Factor(1.08), Between(0.94, 1.07)),
        (Factor(1.25), Cases(((1.0, 0.3), (0.82, 0.3), (0.75, 0.3), (0.73, 0.1)))),
        (
            Factor(1.25),
            Between(0.33, 0.85),
            Cases(((1.0, 0.3), (1.29, 0.3), (1.45, 0.3), (1.52, 0.1))),
            Cases(((1.0, 0.3), (0.82, 0.3), (0.75, 0.3), (0.73, 0.1))),
        ),
        (Factor(1.16), Cases(((1.0, 0.7), (1.35, 0.3))), Factor(1.04)),
    ],
)
def test_a_range_holds_nine_in_ten_of_many_draws(spreads: tuple[Spread, ...]) -> None:
    rng = np.random.default_rng(20261128)
    many = np.exp(sum(drawn(spread, rng, 400_000) for spread in spreads))
    whole = combine(
        Effect(Unknown(str(i), Known.UNKNOWN, spread, "memory")) for i, spread in enumerate(spreads)
    )
    below, above = float(np.mean(many < whole.at(0.05))), float(np.mean(many > whole.at(0.95)))
    assert 0.03 <= below <= 0.07
    assert 0.03 <= above <= 0.07
    assert 0.88 <= 1.0 - below - above <= 0.92
    for chance in (0.2, 0.5, 0.8):
        assert float(np.mean(many < whole.at(chance))) == pytest.approx(chance, abs=0.06)
