"""How a refusal is checked: the documented ends hold, just beyond them the error tells all."""

from collections.abc import Callable
from dataclasses import dataclass
from math import isfinite

import pytest

from calc.validity import OutsideModelError

__all__ = ["Range", "assert_ends_hold", "assert_refused_beyond"]

_BEYOND = 1e-6


@dataclass(frozen=True)
class Range:
    """The documented range of one quantity, and a call that takes it.

    ``open_low`` and ``open_high`` mark an end that is itself refused; ``step`` is how far beyond
    an end is tried.
    """

    call: Callable[[float], object]
    name: str
    low: float
    high: float
    unit: str
    open_low: bool = False
    open_high: bool = False
    step: float = _BEYOND

    def __str__(self) -> str:
        return f"{self.name} {self.low:g} to {self.high:g} {self.unit}".strip()


def assert_ends_hold(given: Range) -> None:
    """Assert that both ends are taken, or that an open one is refused and what is inside is not."""
    for end, is_open, inwards in (
        (given.low, given.open_low, given.step),
        (given.high, given.open_high, -given.step),
    ):
        if not isfinite(end):
            continue
        if is_open:
            _assert_refused(given, end)
        given.call(end + inwards if is_open else end)


def assert_refused_beyond(given: Range) -> None:
    """Assert that just beyond each end the refusal names quantity, value, both ends and unit."""
    for end, outwards in ((given.low, -given.step), (given.high, given.step)):
        if isfinite(end):
            _assert_refused(given, end + outwards)


def _assert_refused(given: Range, value: float) -> None:
    with pytest.raises(OutsideModelError) as caught:
        given.call(value)
    error = caught.value
    assert error.name == given.name
    assert error.value == pytest.approx(value, rel=1e-12, abs=1e-12)
    assert (error.low, error.high) == pytest.approx((given.low, given.high), rel=1e-9)
    assert error.unit == given.unit
