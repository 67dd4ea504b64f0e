"""What the trade's distance rows say of the class: constant, plain fixture, screen and length.

The rows name no length. How long the tubes were under which they were read is a thing that this
fit can hardly tell, so a length is assumed; what that leaves open is a doubt of the class
constant (``lamp_unknowns``).
"""

from dataclasses import dataclass
from functools import cache
from math import exp, log

import numpy as np
from numpy.typing import NDArray

from calc.shape.line import line_shape
from calc.validity import check

__all__ = [
    "ASSUMED_LIT_M",
    "ENDS",
    "ClassFit",
    "End",
    "class_of_length",
    "fit_class",
]

ASSUMED_LIT_M = 0.519
"""The lit length [m] to which the class constant belongs: the shortest standard tube.

An assumption, not a finding: of the standard lengths it gives the largest constant, so a tube is
rather taken as too strong than as too weak. Source: uv_rules_length.
"""

_NINE_IN_TEN = 1.645
_INCH_M = 0.0254
_STRONG_PERCENT = 12.0
_ROUNDS = 60
_STILL = 1e-12


@dataclass(frozen=True, slots=True)
class End:
    """One end of a row: strength over 12 %, plain or not, screened or not, tube to back, UVI."""

    strength: float
    is_plain: bool
    is_screened: bool
    distance_m: float
    uvi: float


_ROWS = (
    (12.0, False, False, 16.0, 20.0),
    (12.0, True, False, 12.0, 16.0),
    (6.0, False, False, 10.0, 12.0),
    (6.0, True, False, 8.0, 10.0),
    (12.0, False, True, 10.0, 14.0),
    (12.0, True, True, 8.0, 10.0),
)
ENDS = tuple(
    End(percent / _STRONG_PERCENT, plain, screened, inches * _INCH_M, uvi)
    for percent, plain, screened, near, far in _ROWS
    for inches, uvi in ((near, 5.0), (far, 3.0))
)
"""The twelve ends of the six rows. Source: uv_distance_rows."""


@dataclass(frozen=True, slots=True)
class ClassFit:
    """Constant [UVI m], plain over polished [1], share of the screen [1], lit length [m].

    ``covariance`` is that of their logarithms, in this order; ``scatter`` one standard deviation
    of the twelve ends' logarithms about the fit. A length that was given has no variance.
    """

    constant_uvi_m: float
    plain: float
    screen: float
    lit_length_m: float
    covariance: NDArray[np.float64]
    scatter: float

    def factor(self, index: int) -> float:
        """Return the factor [1] about one of the four that holds nine in ten."""
        return exp(_NINE_IN_TEN * float(self.covariance[index, index]) ** 0.5)


def fit_class(assumed_lit_m: float | None = None, factor: float | None = None) -> ClassFit:
    """Fit constant, plain, screen and length together to the twelve ends.

    ln UVI = ln C + ln(strength) + plain ln p + screened ln s + ln g(d, L), least squares of
    logarithms; an assumed length joins as one more row, ln L about it with ln(factor)/1.645

    Parameters
    ----------
    assumed_lit_m : lit length that is assumed [m], 0.1 to 1.6; None: the ends alone
    factor : nine in ten lie within it [1], above 1; None with no assumed length

    Returns
    -------
    ClassFit
        Values and the covariance of their logarithms.

    Notes
    -----
    The twelve ends say little about the length. Alone they put it at 0.38 m, shorter than any
    standard tube, within a factor 1.6 at nine in ten if they were twelve things apart; but they
    are six pairs, rounded to two inches. At 0.40, 0.52 and 0.82 m they scatter by 10, 11 and
    14 %, and no row names a length. So a typical length, with its spread, is an assumption.
    Source: uv_distance_rows; uv_rules_length; keitz1971.

    Examples
    --------
    >>> alone = fit_class()
    >>> round(alone.lit_length_m, 2), round(alone.factor(3), 1)
    (0.38, 1.6)
    """
    if (assumed_lit_m is None) != (factor is None):
        raise ValueError("a length is assumed with its factor, or neither")
    weight = 0.0
    if assumed_lit_m is not None and factor is not None:
        check("lit length", assumed_lit_m, 0.1, 1.6, "m")
        check("factor", factor, 1.0 + 1e-9, 100.0, "")
        weight = _NINE_IN_TEN / log(factor)
    start = log(assumed_lit_m or ASSUMED_LIT_M)
    at = np.array([*_solved(exp(start)), start])
    for _ in range(_ROUNDS):
        step, scatter, squared = _step(at, start, weight)
        at = at + step
        if float(np.max(np.abs(step))) < _STILL:
            break
    constant, plain, screen, length = (float(value) for value in np.exp(at))
    covariance = np.asarray(np.linalg.inv(squared), dtype=np.float64)
    return ClassFit(constant, plain, screen, length, covariance, scatter)


@cache
def class_of_length(lit_length_m: float) -> ClassFit:
    """Return the class as the twelve ends give it where they were read under a known length.

    As ``fit_class``, with L given

    Parameters
    ----------
    lit_length_m : lit length [m], 0.1 to 1.6

    Returns
    -------
    ClassFit
        Constant [UVI m], plain [1], screen [1]; no variance of the length.

    Notes
    -----
    The longer the tubes behind the rows, the smaller the constant for each metre of tube.
    Source: uv_distance_rows; keitz1971.

    Examples
    --------
    >>> [round(class_of_length(lit).constant_uvi_m, 2) for lit in (0.519, 1.119)]
    [1.81, 1.36]
    """
    check("lit length", lit_length_m, 0.1, 1.6, "m")
    design = _design()
    solved = _solved(lit_length_m)
    left = _logs(lit_length_m) - design @ solved
    variance = float(left @ left) / (len(ENDS) - 3)
    covariance = np.zeros((4, 4))
    covariance[:3, :3] = variance * np.linalg.inv(design.T @ design)
    constant, plain, screen = (exp(value) for value in solved)
    return ClassFit(constant, plain, screen, lit_length_m, covariance, variance**0.5)


def _design() -> NDArray[np.float64]:
    return np.array([(1.0, float(e.is_plain), float(e.is_screened)) for e in ENDS])


def _logs(lit_length_m: float) -> NDArray[np.float64]:
    """Return what constant, plain and screen have to make up for [log UVI]."""
    return np.array(
        [log(e.uvi / e.strength / line_shape(e.distance_m, lit_length_m)) for e in ENDS]
    )


def _solved(lit_length_m: float) -> NDArray[np.float64]:
    return np.asarray(np.linalg.lstsq(_design(), _logs(lit_length_m), rcond=None)[0])


def _step(
    at: NDArray[np.float64], start: float, weight: float
) -> tuple[NDArray[np.float64], float, NDArray[np.float64]]:
    """Return a Gauss-Newton step, the scatter, and the inverse of the covariance."""
    length = exp(float(at[3]))
    growth = [_growth(e.distance_m, length) for e in ENDS]
    design = np.column_stack([_design(), growth])
    left = _logs(length) - _design() @ at[:3]
    scatter = (float(left @ left) / (len(ENDS) - 4)) ** 0.5
    squared = design.T @ design / scatter**2
    pull = design.T @ left / scatter**2
    squared[3, 3] += weight**2
    pull[3] += weight**2 * (start - float(at[3]))
    return np.linalg.solve(squared, pull), scatter, squared


def _growth(distance_m: float, lit_length_m: float) -> float:
    """Return d ln g/d ln L under the middle of a tube."""
    u = lit_length_m / 2.0 / distance_m
    return 2.0 * u / (1.0 + u * u) ** 2 / (distance_m * line_shape(distance_m, lit_length_m))
