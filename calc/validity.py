"""Where a formula may be believed: rule and words of a refusal come from one pair of ends.

``check`` is the way to hold a range: whoever compares by hand and raises by hand can write one
range into the rule and another into the words.
"""

from math import inf, isfinite
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from numpy.typing import ArrayLike

__all__ = ["OutsideModelError", "check"]


class OutsideModelError(ValueError):
    """A quantity lies outside the range in which the formula holds.

    ``is_open_low`` where the low end itself is refused too, such as a power of nothing.
    """

    def __init__(
        self,
        name: str,
        value: float,
        low: float,
        high: float,
        unit: str,
        *,
        is_open_low: bool = False,
    ) -> None:
        self.name = name
        self.value = value
        self.low = low
        self.high = high
        self.unit = unit
        self.is_open_low = is_open_low
        held = [f"{'above' if is_open_low else 'from'} {low:g}"] if isfinite(low) else []
        held += [f"up to {high:g}"] if isfinite(high) else []
        super().__init__(f"{name} is {value:g} {unit}; the model holds {' '.join(held)}")


def check(
    name: str,
    value: "ArrayLike",
    low: float,
    high: float = inf,
    unit: str = "",
    *,
    is_open_low: bool = False,
) -> None:
    """Raise OutsideModelError unless a value, or every one of many, is within both ends.

    Of many the one that is farthest outside is told. What is no number is outside.

    Examples
    --------
    >>> check("lamp time", 25.0, 0.0, 24.0, "h")
    Traceback (most recent call last):
        ...
    calc.validity.OutsideModelError: lamp time is 25 h; the model holds from 0 up to 24
    """
    if isinstance(value, float | int):
        # Root finding comes by here: plain floats stay out of numpy, as does who needs none.
        if low <= value <= high and not (is_open_low and value == low):
            return
        raise OutsideModelError(name, value, low, high, unit, is_open_low=is_open_low)
    import numpy as np

    values = np.asarray(value, dtype=np.float64)
    inside = (values > low if is_open_low else values >= low) & (values <= high)
    if not np.all(inside):
        outside = values[~inside]
        worst = outside[np.argmax(np.maximum(low - outside, outside - high))]
        raise OutsideModelError(name, float(worst), low, high, unit, is_open_low=is_open_low)
