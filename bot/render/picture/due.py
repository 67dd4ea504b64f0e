"""When something happens, as a bar below a chart: an end that nobody knows is open."""

from bot.drawing import Due
from bot.render.picture.inks import Ink
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.plot import Plot
from bot.render.picture.svg import path, polygon, rect

__all__ = ["due_bar"]

_TALL = 18.0


def due_bar(page: Page, due: Due, plot: Plot) -> None:
    """Draw the bar from ``y`` on, its likeliest day as a diamond, and say it below."""
    field, y = plot.field, page.y + 16.0

    def x(value: float) -> float:
        return min(max(plot.x(value), field.x0), field.x1)

    low = field.x0 if due.low is None else x(due.low)
    high = field.x1 if due.high is None else x(due.high)
    page.draw(
        rect(low, y - _TALL / 2, max(high - low, 3.0), _TALL, fill=Ink.HEAT, fill_opacity=0.35)
    )
    for end, at, way in ((due.low, low, -1.0), (due.high, high, 1.0)):
        if end is None:
            d = f"M{at - 12 * way:.1f} {y - 13:.1f}l{12 * way:.0f} 13 {-12 * way:.0f} 13"
        else:
            d = f"M{at:.1f} {y - 14:.1f}v28"
        page.draw(path(d, stroke=Ink.HEAT, stroke_width=4.5, stroke_linejoin="round"))
    at = x(due.best)
    points = [(at, y - 16.0), (at + 16.0, y), (at, y + 16.0), (at - 16.0, y)]
    page.draw_over(
        polygon(points, fill=Ink.HEAT, stroke=Ink.PAPER, stroke_width=2.6, stroke_linejoin="round")
    )
    page.y = y + 26.0
    page.paragraph(due.label, room=WIDE - 2 * MARGIN, size=BIG, bold=True, ink=Ink.HEAT)
