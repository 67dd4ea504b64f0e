"""The bar of a thermometer: what is wanted or below what there is heat, and what was read."""

from collections.abc import Callable
from itertools import pairwise

from bot.drawing import Gauge
from bot.render.picture.inks import Ink
from bot.render.picture.page import Page
from bot.render.picture.svg import path, polygon, rect, stroke

__all__ = ["gauge_bar"]


def gauge_bar(
    page: Page, gauge: Gauge, to_x: Callable[[float], float], ends: tuple[float, float], y: float
) -> None:
    """Draw a gauge along a level line between two ends of it [SI], round ``y``."""
    first, last = map(to_x, ends)
    page.draw(stroke((first, y), (last, y), Ink.LINE, 3.0))
    if gauge.below is not None:
        _below(page, first, to_x(gauge.below), y)
    elif gauge.wanted:
        low, high = map(to_x, gauge.wanted)
        page.draw(
            rect(
                low, y - 11.0, max(high - low, 4.0), 22.0, rx=4.0, fill=Ink.COOL_PALE,
                stroke=Ink.COOL, stroke_width=3.0,
            )
        )  # fmt: skip
    if gauge.reading:
        low, high = gauge.reading
        if high > low:
            a, b = to_x(low), to_x(high)
            d = f"M{a:.1f} {y:.1f}H{b:.1f}M{a:.1f} {y - 8:.1f}v16M{b:.1f} {y - 8:.1f}v16"
            page.draw(path(d, stroke=Ink.INK, stroke_width=3.0))
        _reading(page, to_x, ends, y, (low + high) / 2.0)


def _below(page: Page, first: float, at: float, y: float) -> None:
    """Draw the mark below which there is heat: a threshold, and arrows towards the cold."""
    page.draw(stroke((at, y - 15.0), (at, y + 15.0), Ink.HEAT, 5.0))
    steps = [at - 8.0 - 22.0 * number for number in range(6)]
    d = "".join(f"M{x:.1f} {y - 7:.1f}l-8 7 8 7" for x, _ in pairwise(steps) if x - 10.0 > first)
    if d:
        page.draw(path(d, stroke=Ink.HEAT, stroke_width=3.0, stroke_linejoin="round"))


def _reading(
    page: Page, to_x: Callable[[float], float], ends: tuple[float, float], y: float, value: float
) -> None:
    """Draw a reading as a diamond, one off the bar as an arrow at its edge."""
    low, high = ends
    x = to_x(min(max(value, low), high))
    if low <= value <= high:
        points = [(x, y - 13.0), (x + 13.0, y), (x, y + 13.0), (x - 13.0, y)]
    else:
        way = 1.0 if value > high else -1.0
        points = [(x + 14.0 * way, y), (x - 8.0 * way, y - 13.0), (x - 8.0 * way, y + 13.0)]
    page.draw(
        polygon(points, fill=Ink.INK, stroke=Ink.PAPER, stroke_width=2.6, stroke_linejoin="round")
    )
