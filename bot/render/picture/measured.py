"""Distances in a box: an arrow with its figure, beside the box where that is narrow."""

from bot.drawing import Dimension
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import leading, width
from bot.render.picture.page import BIG, Page
from bot.render.picture.placing import Label
from bot.render.picture.scaled import Scaled
from bot.render.picture.svg import Point, stroke

__all__ = ["ends_of", "measured"]

_LEAST_ARROW = 12.0
# How far what is beside a box is from it.
_ASIDE = 26.0


def ends_of(dimension: Dimension, box: Scaled) -> tuple[Point, Point]:
    """Return where on the sheet a distance begins and ends."""
    return (
        (box.x(dimension.x0), box.y(dimension.y0)),
        (box.x(dimension.x1), box.y(dimension.y1)),
    )


def measured(
    page: Page, dimension: Dimension, box: Scaled, inside: Rect, band: tuple[float, float]
) -> None:
    """Draw a distance with its figure, between two ends of the sheet."""
    start, end = ends_of(dimension, box)
    if abs(end[0] - start[0]) + abs(end[1] - start[1]) < _LEAST_ARROW:
        return
    page.arrow(start, end)
    level = abs(end[0] - start[0]) > abs(end[1] - start[1])
    middle = (start[0] + end[0]) / 2.0, (start[1] + end[1]) / 2.0
    liked = (0.0, -1.0) if level else (1.0, 0.0)
    lines = tuple(dimension.label.split(" (", 1))
    two = (lines[0], f"({lines[1]}") if len(lines) == 2 else lines
    told = [(dimension.label,)] if level else [two, (dimension.label,)]
    labels = [Label(words, middle, BIG, bold=True, away=10.0, liked=liked) for words in told]
    label = next((one for one in labels if page.has_place(one, inside)), labels[0])
    if page.has_place(label, inside) or not _outside(page, two, middle, box, band):
        page.place([label], inside, Ink.AIR)


def _outside(
    page: Page, lines: tuple[str, ...], at: Point, box: Scaled, band: tuple[float, float]
) -> bool:
    """Write what finds no room in a narrow box beside it, with a line to it, where that is free."""
    edge, (x, y) = box.rect, at
    tall = len(lines) * leading(BIG)
    wide = max(width(line, BIG, bold=True) for line in lines)
    for left, near, wall in (
        (edge.x1 + _ASIDE, edge.x1 + _ASIDE - 6.0, edge.x1),
        (edge.x0 - _ASIDE - wide, edge.x0 - _ASIDE + 6.0, edge.x0),
    ):
        there = Rect(left, y - tall / 2.0, left + wide, y + tall / 2.0)
        fits = band[0] <= there.x0 and there.x1 <= band[1]
        joined = (x, y), (near, y)
        if fits and page.is_free(there) and not page.strikes(joined):
            for number, line in enumerate(lines):
                page.text(left, there.y0 + BIG + number * leading(BIG), line, size=BIG, bold=True)
            page.draw_over(stroke(*joined, Ink.INK, 2.2))
            page.line((wall, y), (near, y))
            return True
    return False
