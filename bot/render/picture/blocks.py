"""What an animal basks on, with its name in it where that fits."""

from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import Page
from bot.render.picture.things import stone

__all__ = ["lines_within", "named_stone"]

_SIDES = 36.0
# What a strip along the top takes of a block, and what is left free over and under its name.
_STRIP, _FREE = 14.0, 16.0


def named_stone(page: Page, name: str, where: Rect) -> None:
    """Draw a stone with a name in it where that fits; words keep off the rest of it."""
    page.draw(*stone(where))
    lines = lines_within(name, where)
    if not lines:
        page.thing(where)
        return
    tall, long = len(lines) * leading(SIZE), max(width(line, SIZE) for line in lines)
    x, top = (where.x0 + where.x1) / 2.0, where.y0 + _STRIP
    top += (where.y1 - top - tall) / 2.0
    page.lines(x, top + SIZE, lines, anchor="middle", halo=Ink.STONE)
    left, right, foot = x - long / 2.0 - 4.0, x + long / 2.0 + 4.0, top + tall
    for around in (
        Rect(where.x0, where.y0, where.x1, top),
        Rect(where.x0, foot, where.x1, where.y1),
        Rect(where.x0, top, left, foot),
        Rect(right, top, where.x1, foot),
    ):
        page.thing(around)


def lines_within(name: str, where: Rect) -> list[str]:
    """Return the lines of a name that fit into a block; none where they do not."""
    room = where.x1 - where.x0 - _SIDES
    lines = wrapped(name, max(room, 1.0), SIZE) if name else []
    fits = all(width(line, SIZE) <= room for line in lines)
    tall = len(lines) * leading(SIZE) + _STRIP + _FREE
    return lines if fits and tall <= where.y1 - where.y0 else []
