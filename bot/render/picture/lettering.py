"""Setting words: how wide they are, where lines break, how labels keep clear of each other."""

import re
from collections.abc import Sequence
from typing import Any

from bot.render.picture import inks

__all__ = ["DPI", "WIDTH_IN", "halo", "line_height_in", "spread", "width_in", "wrapped"]

WIDTH_IN = 5.2
"""The width of a sheet [in]: the narrower, the larger its letters on a phone."""

DPI = 1200 / WIDTH_IN
_LEADING = 1.32
_POINTS_IN = 72.0
# A figure and its unit stay on one line.
_BETWEEN_WORDS = re.compile(r" (?!(?:%|in|cm|m|ft|W|h|min|°[CF])(?:\W|$))|(?<!\d) ")
# Letters are set on whole pixels, which makes a line a little longer than its outlines are.
_SET_WIDER = 1.03


def width_in(text: str, size: float, weight: str = "normal") -> float:
    """Return the width [in] of one line of text at a size in points."""
    from matplotlib.font_manager import FontProperties
    from matplotlib.textpath import text_to_path

    properties = FontProperties(family="DejaVu Sans", size=size, weight=weight)
    points, _, _ = text_to_path.get_text_width_height_descent(text, properties, False)
    return float(points) / _POINTS_IN * _SET_WIDER


def halo() -> list[Any]:
    """Return the paper-coloured edge that keeps words readable over lines."""
    from matplotlib.patheffects import withStroke

    return [withStroke(linewidth=3.4, foreground=inks.PAPER)]


def line_height_in(size: float) -> float:
    """Return how far apart [in] lines of a size in points are set."""
    return size * _LEADING / _POINTS_IN


def wrapped(text: str, room_in: float, size: float, weight: str = "normal") -> list[str]:
    """Return the text in lines no wider than the room; a longer word stands alone."""
    lines: list[str] = []
    for paragraph in text.splitlines():
        line = ""
        for word in filter(None, _BETWEEN_WORDS.split(paragraph)):
            longer = f"{line} {word}" if line else word
            if line and width_in(longer, size, weight) > room_in:
                lines.append(line)
                line = word
            else:
                line = longer
        lines.append(line)
    return lines


def spread(wished: Sequence[float], sizes: Sequence[float], low: float, high: float) -> list[float]:
    """Return middles near the wished ones, in their order, so that no size overlaps another.

    All stay within the bounds; where there is no room for all, they overlap evenly.
    """
    room = sum(sizes) or 1.0
    fitted = [size * min(1.0, (high - low) / room) for size in sizes]
    order = sorted(range(len(wished)), key=lambda index: wished[index])
    placed = [0.0] * len(wished)
    floor = low
    for index in order:
        placed[index] = max(wished[index], floor + fitted[index] / 2.0)
        floor = placed[index] + fitted[index] / 2.0
    ceiling = high
    for index in reversed(order):
        placed[index] = min(placed[index], ceiling - fitted[index] / 2.0)
        ceiling = placed[index] - fitted[index] / 2.0
    return placed
