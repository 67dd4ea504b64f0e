"""Where a rising function of one unknown passes nought, without a library that starts slowly."""

from collections.abc import Callable

__all__ = ["rising_root"]


def rising_root(
    function: Callable[[float], float],
    low: float,
    high: float,
    at_ends: tuple[float, float] | None = None,
) -> float:
    """Return where a rising function passes nought.

    regula falsi, the end that stays halved in its weight (Illinois); halving where that is slow

    Parameters
    ----------
    function : rising and continuous, at most 0 at ``low`` and at least 0 at ``high``
    low, high : the ends between which it is looked for [the unknown's own unit]
    at_ends : the function at both, where it was worked out before

    Returns
    -------
    float
        The place, to 1e-11 of the width between the ends.

    Notes
    -----
    Raises ValueError where the function does not pass nought between the ends.
    Source: dowell_jarratt1971.

    Examples
    --------
    >>> round(rising_root(lambda x: x * x - 2.0, 0.0, 2.0), 9)
    1.414213562
    """
    below, above = at_ends or (function(low), function(high))
    if below > 0.0 or above < 0.0:
        raise ValueError(f"no root between {low} and {high}")
    least, stayed, place, widths = 1e-11 * (high - low), 0, low, [2.0 * (high - low)] * 3
    while high - low > least and above > below:
        slow = high - low > widths.pop(0) / 2.0
        widths.append(high - low)
        place = (low * above - high * below) / (above - below)
        if slow:
            place = (low + high) / 2.0
        found = function(place)
        if found == 0.0:
            break
        if found < 0.0:
            low, below = place, found
            above *= 0.5 if stayed < 0 else 1.0
            stayed = -1
        else:
            high, above = place, found
            below *= 0.5 if stayed > 0 else 1.0
            stayed = 1
    return place
