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
]

ASSUMED_LIT_M = 0.519
"""The lit length [m] to which the class constant belongs: the shortest standard tube.

An assumption, not a finding: of the standard lengths it gives the largest constant, so a tube is
rather taken as too strong than as too weak. Source: uv_rules_length.
"""

_INCH_M = 0.0254
_STRONG_PERCENT = 12.0


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
    """Constant [UVI m], plain over polished [1], share of the screen [1].

    ``covariance`` is that of their logarithms, in this order; ``scatter`` one standard deviation
    of the twelve ends' logarithms about the fit.
    """

    constant_uvi_m: float
    plain: float
    screen: float
    covariance: NDArray[np.float64]
    scatter: float


@cache
def class_of_length(lit_length_m: float) -> ClassFit:
    """Return the class as the twelve ends give it where they were read under a known length.

    ln UVI = ln C + ln(strength) + plain ln p + screened ln s + ln g(d, L), least squares of
    logarithms

    Parameters
    ----------
    lit_length_m : lit length [m], 0.1 to 1.6

    Returns
    -------
    ClassFit
        Constant [UVI m], plain [1], screen [1].

    Notes
    -----
    The longer the tubes behind the rows, the smaller the constant for each metre of tube. The
    twelve ends say little about that length: left free it is 0.38 m, shorter than any standard
    tube, within a factor 1.6 at nine in ten if they were twelve things apart; but they are six
    pairs, rounded to two inches. So a typical length, with its spread, is an assumption.
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
    covariance = variance * np.asarray(np.linalg.inv(design.T @ design))
    constant, plain, screen = (exp(value) for value in solved)
    return ClassFit(constant, plain, screen, covariance, variance**0.5)


def _design() -> NDArray[np.float64]:
    return np.array([(1.0, float(e.is_plain), float(e.is_screened)) for e in ENDS])


def _logs(lit_length_m: float) -> NDArray[np.float64]:
    """Return what constant, plain and screen have to make up for [log UVI]."""
    return np.array(
        [log(e.uvi / e.strength / line_shape(e.distance_m, lit_length_m)) for e in ENDS]
    )


def _solved(lit_length_m: float) -> NDArray[np.float64]:
    return np.asarray(np.linalg.lstsq(_design(), _logs(lit_length_m), rcond=None)[0])
