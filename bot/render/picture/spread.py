"""Labels in a row: each near its place, none over another."""

from collections.abc import Sequence

__all__ = ["spread"]


def spread(wished: Sequence[float], sizes: Sequence[float], low: float, high: float) -> list[float]:
    """Return middles near the wished ones, in their order, so that no size overlaps another.

    All stay within the bounds; where there is no room for all, they overlap evenly.
    """
    room = sum(sizes) or 1.0
    fitted = [size * min(1.0, (high - low) / room) for size in sizes]
    order = sorted(range(len(wished)), key=lambda index: wished[index])
    found = [0.0] * len(wished)
    floor = low
    for index in order:
        found[index] = max(wished[index], floor + fitted[index] / 2.0)
        floor = found[index] + fitted[index] / 2.0
    ceiling = high
    for index in reversed(order):
        found[index] = min(found[index], ceiling - fitted[index] / 2.0)
        ceiling = found[index] - fitted[index] / 2.0
    return found
